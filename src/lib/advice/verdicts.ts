import { mayBeThere, type ManyAnswer } from '$lib/answers/answers';
import type { Warning } from '$lib/answers/questions';
import type { HazardId } from '$shared/methods';
import { hazardsOfHolds } from './cautions';
import { isStiff, showsBar } from './demands';
import type { Group } from './groups';
import {
  holdsOf,
  isHollowUnmeasured,
  isBeyondSurface,
  surfaceHolds,
  reachOf,
  verdictOf,
  warnsBeyondSurface,
} from './holds';
import type { RuleId } from './rules';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

/** What one state of the work comes to under some of the sets of warnings. */
interface VerdictUnder {
  readonly verdict: Verdict;
  /** Whether no surface method stands. */
  readonly beyond: boolean;
  /** Indices of the sets of warnings. */
  readonly sets: number[];
}

/** What one state of the work comes to under every set of warnings. */
export interface Verdicts {
  readonly list: readonly VerdictUnder[];
  /** Whether it is not stopped under some set. */
  readonly goesOn: boolean;
  /** Whether a surface method stands under some set. */
  readonly surface: boolean;
  /** Every hold under some set. */
  readonly holds: readonly Hold[];
  /** Holds under every set: warnings only add to them, so those of the least set. */
  readonly everywhere: readonly Hold[];
  readonly hazards: readonly HazardId[];
}

const grave = (verdict: Verdict): number =>
  verdict === 'stop' ? 2 : verdict === 'find-out-first' ? 1 : 0;
const verdicts = ['prepare', 'find-out-first', 'stop'] as const;

/**
 * What the work comes to under every set of warnings that is possible. Each warning brings its hold
 * whatever the others are, so one look at each warning tells of all sets.
 */
export class UnderWarnings {
  readonly #warnings: readonly Warning[];
  readonly #least: readonly Warning[];
  /** For each set: bit i is set when it holds the i-th warning. */
  readonly #sets: readonly number[];
  readonly #known = new Map<string, Verdicts>();
  readonly #lists = new Map<string, readonly VerdictUnder[]>();

  constructor(warned: ManyAnswer<Warning>, sets: readonly (readonly Warning[])[]) {
    this.#warnings = [...new Set(mayBeThere(warned))];
    this.#least = warned.yes;
    this.#sets = sets.map((set) =>
      set.reduce((bits, warning) => bits | (1 << this.#warnings.indexOf(warning)), 0),
    );
  }

  verdictsOf(
    site: SettledSite,
    zone: SettledZone,
    { method, depthHold, depthAs, spent }: Group,
  ): Verdicts {
    const reach = reachOf(site, zone, method, spent);
    const { removes, chases, cuts, deep } = reach;
    const loss = showsBar(zone) ? zone.barLoss : undefined;
    const moves = zone.cracks === 'moving';
    let key = `${site.element} ${removes} ${chases} ${cuts} ${deep} ${spent} ${loss} ${moves} ${isStiff(zone)} ${isHollowUnmeasured(zone)} ${depthAs}`;
    for (const { rule } of surfaceHolds(site, zone)) key += ` ${rule}`;
    const known = this.#known.get(key);
    if (known) return known;
    const holdsWith = (warnings: readonly Warning[]) =>
      holdsOf({ ...site, warnings }, zone, reach, depthHold);
    const plain = holdsWith([]);
    const single = this.#warnings.map((warning) => holdsWith([warning]));
    const gravity = single.map((holds) => grave(verdictOf(holds)));
    const beyondBy = single.map(isBeyondSurface);
    const list = this.#listOf(grave(verdictOf(plain)), isBeyondSurface(plain), gravity, beyondBy);
    const warnedSite = { ...site, warnings: this.#warnings };
    const holds = holdsWith(this.#warnings);
    const verdicts: Verdicts = {
      list,
      goesOn: list.some(({ verdict }) => verdict !== 'stop'),
      surface: list.some(({ beyond }) => !beyond),
      holds,
      everywhere: holdsWith(this.#least),
      hazards: hazardsOfHolds(holds, warnedSite, zone),
    };
    this.#known.set(key, verdicts);
    return verdicts;
  }

  /** The verdict under each set of warnings; many states of the work come to the same list. */
  #listOf(
    plain: number,
    plainBeyond: boolean,
    gravity: readonly number[],
    beyondBy: readonly boolean[],
  ): readonly VerdictUnder[] {
    const key = [plain, plainBeyond, ...gravity, ...beyondBy].join();
    const known = this.#lists.get(key);
    if (known) return known;
    const list: VerdictUnder[] = [];
    this.#sets.forEach((bits, index) => {
      let worst = plain;
      let beyond = plainBeyond;
      for (let place = 0; place < gravity.length; place += 1)
        if (bits & (1 << place)) {
          worst = Math.max(worst, gravity[place] as number);
          beyond ||= beyondBy[place] as boolean;
        }
      const verdict = verdicts[worst] as Verdict;
      const same = list.find((each) => each.verdict === verdict && each.beyond === beyond);
      if (same) same.sets.push(index);
      else list.push({ verdict, beyond, sets: [index] });
    });
    this.#lists.set(key, list);
    return list;
  }

  /** The holds of everything looked at, each rule once: those that stand however it turns out, and the rest. */
  holds(): { readonly certain: readonly Hold[]; readonly possible: readonly Hold[] } {
    const seen = [...this.#known.values()];
    const rules = new Set(seen.flatMap(({ holds }) => holds.map(({ rule }) => rule)));
    const sure = new Set(rules);
    for (const { everywhere } of seen) {
      const standing = new Set(everywhere.map(({ rule }) => rule));
      for (const rule of sure) if (!standing.has(rule)) sure.delete(rule);
      if (!sure.size) break;
    }
    // Who lifts a hold may hang on a warning: of the fewest and of the most both are looked at.
    const all: ReadonlyMap<RuleId, readonly Hold[]> = byRule(
      seen.flatMap(({ everywhere, holds }) => [everywhere, holds]),
    );
    const told = (rule: RuleId) => together(all.get(rule) as readonly [Hold, ...Hold[]]);
    return {
      certain: [...sure].map(told),
      possible: [...rules].filter((rule) => !sure.has(rule)).map(told),
    };
  }

  /** The hazards that what stands before the work brings. */
  hazards(): readonly HazardId[] {
    return [...this.#known.values()].flatMap(({ hazards }) => hazards);
  }
}

function byRule(lists: readonly (readonly Hold[])[]): Map<RuleId, Hold[]> {
  const all = new Map<RuleId, Hold[]>();
  for (const list of lists)
    for (const hold of list) {
      const same = all.get(hold.rule);
      if (same) same.push(hold);
      else all.set(hold.rule, [hold]);
    }
  return all;
}

/**
 * One hold for all of one rule: as grave as any of them, lifted by an engineer where one may have to,
 * with only those facts on which they agree.
 */
function together(all: readonly [Hold, ...Hold[]]): Hold {
  const [one, ...rest] = all;
  const first: Hold = {
    ...one,
    verdict: all.some(({ verdict }) => verdict === 'stop') ? 'stop' : one.verdict,
    who: all.some(({ who }) => who === 'engineer') ? 'engineer' : one.who,
  };
  if (!first.facts) return first;
  const agreed = Object.entries(first.facts).filter(([name, value]) =>
    rest.every(({ facts }) => facts?.[name] === value),
  );
  return { ...first, facts: Object.fromEntries(agreed) };
}

/** The largest set of warnings that still leaves a surface method: hazards only grow with warnings. */
export const worstShortOfStop = ({ yes, maybe }: ManyAnswer<Warning>): Warning[] => [
  ...new Set([...yes, ...maybe.filter((warning) => !warnsBeyondSurface(warning))]),
];
