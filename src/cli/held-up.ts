import type { QuestionId } from '$lib/answers/questions';
import type { RuleId } from '$lib/advice/rules';
import type { Hold } from '$lib/advice/types';
import type { Plan } from '$lib/plan/plan';

/** Zones the plan leaves out, gathered: which, and what each would have to be cleared of. */
export interface HeldUp {
  /** Of all zones of the job, how many. */
  readonly zones: number;
  readonly of: number;
  /** Ids of zones that must not be worked on. */
  readonly stop: readonly string[];
  /** Ids of zones that wait until something is found out. */
  readonly findOutFirst: readonly string[];
  /** What holds zones up in every case, what only may, and which open answers decide: most zones first. */
  readonly holds: readonly { readonly rule: RuleId; readonly zones: readonly string[] }[];
  readonly possibleHolds: readonly { readonly rule: RuleId; readonly zones: readonly string[] }[];
  readonly open: readonly { readonly question: QuestionId; readonly zones: readonly string[] }[];
}

/** Gathers the ids of zones by what is said of each. */
function gathered<K extends string>(
  held: Plan['held'],
  saidOf: (zone: Plan['held'][number]) => readonly K[],
): [K, string[]][] {
  const by = new Map<K, string[]>();
  for (const zone of held)
    for (const said of new Set(saidOf(zone))) by.set(said, [...(by.get(said) ?? []), zone.id]);
  return [...by].sort(([, one], [, other]) => other.length - one.length);
}

const rulesOf = (holds: readonly Hold[]) => holds.map(({ rule }) => rule);
const byVerdict = (held: Plan['held'], wanted: string) =>
  held.filter(({ verdict }) => verdict === wanted).map(({ id }) => id);

/** What stands in the way of the zones that a plan leaves out. */
export function heldUp({ held, zones }: Plan): HeldUp {
  return {
    zones: held.length,
    of: held.length + zones.length,
    stop: byVerdict(held, 'stop'),
    findOutFirst: byVerdict(held, 'find-out-first'),
    holds: gathered(held, ({ holds }) => rulesOf(holds)).map(([rule, zones]) => ({ rule, zones })),
    possibleHolds: gathered(held, ({ possibleHolds }) => rulesOf(possibleHolds)).map(
      ([rule, zones]) => ({ rule, zones }),
    ),
    open: gathered(held, ({ open }) => open).map(([question, zones]) => ({ question, zones })),
  };
}
