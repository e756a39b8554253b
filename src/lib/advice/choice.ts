import { methodIds, methods, type MethodId } from '$shared/methods';
import type { Demands } from './demands';
import { methodRules } from './methods';
import type { Shortfall } from './methods/judge';
import { ladders } from './place';
import { failedHere, judgeTried } from './tried-out';

/** The first demand a method fails; null where it is sufficient. */
export type ShortfallOf = (method: MethodId) => Shortfall | null;

/** What a zone is worked with. */
export interface Methods {
  readonly method: MethodId;
  /** Where a bar leads with breaking out: what the rest of the zone needs; else the method itself. */
  readonly rest: MethodId;
  /** Every method that would do has failed on a test patch: the one named has, too. */
  readonly spent: boolean;
}

export interface Choice extends Methods {
  readonly demands: Demands;
  /** The ladder's gentler sufficient method that was passed over, and why. */
  readonly passedOver: PassedOver | null;
  readonly shortfallOf: ShortfallOf;
}

interface PassedOver {
  readonly method: MethodId;
  readonly why: 'bruises' | 'cracks';
}

/** Judges methods against the demands, and then by what the test patches have settled, each once. */
export function judgeBy(demands: Demands): ShortfallOf {
  const failed = failedHere(demands);
  const known: Partial<Record<MethodId, Shortfall | null>> = {};
  return (method) => {
    let found = known[method];
    if (found === undefined)
      known[method] = found = methodRules[method].shortfall(demands) ?? judgeTried(method, failed);
    return found;
  };
}

interface Picked {
  readonly method: MethodId;
  readonly passedOver: PassedOver | null;
}

/** Whether washing or grinding would do but for the roughness, or the skin, that is wanted. */
export const lacksProfileOnly = (shortfallOf: ShortfallOf): boolean =>
  (['pressure-wash', 'grind'] as const).some((method) => {
    const demand = shortfallOf(method)?.demand;
    return demand === 'profile' || demand === 'skin';
  });

export const isBruising = (method: MethodId): boolean =>
  methods[method].bruises === 'yes' || methods[method].bruises === 'most';

/**
 * The gentlest sufficient method on the ladder of the place.
 * Where washing or grinding would take off all that must go and only the profile asks for more,
 * sound concrete is not to be bruised: the next method that does not bruise goes first. On a floor
 * with open cracks shotblasting goes before scarifying, since it cleans them in the same pass.
 * Where a method has failed on a test patch, those beside the ladder are had before breaking out,
 * and a specialist's last.
 * Source: common practice, no published source.
 */
function pick(demands: Demands, shortfallOf: ShortfallOf): Picked {
  const ladder = ladderFor(demands);
  // Break-out meets every demand, so the ladder always ends in a method (proven over every route).
  const first = ladder.find((method) => !shortfallOf(method)) ?? 'break-out';
  const why = whyPassedOver(first, demands, shortfallOf);
  // What is passed over bruises, so what is found is another; a specialist's jet is never gone to for it.
  const spare =
    why &&
    ladder.find((method) => method !== 'water-jet' && !isBruising(method) && !shortfallOf(method));
  return spare
    ? { method: spare, passedOver: { method: first, why } }
    : { method: first, passedOver: null };
}

function whyPassedOver(
  first: MethodId,
  demands: Demands,
  shortfallOf: ShortfallOf,
): PassedOver['why'] | null {
  if (isBruising(first) && lacksProfileOnly(shortfallOf)) return 'bruises';
  return first === 'scarify' && demands.openCracks ? 'cracks' : null;
}

function ladderFor(demands: Demands): readonly MethodId[] {
  const ladder: readonly MethodId[] = ladders[demands.place];
  if (!failedHere(demands).length) return ladder;
  const last: readonly MethodId[] = ['break-out', 'water-jet'];
  const first = [...ladder, ...methodIds].filter((method) => !last.includes(method));
  return [...new Set([...first, ...last])];
}

/** Breaking out frees a bar; where that has failed on a patch, a specialist's jet does. */
function withBar({ bar }: Demands, rest: MethodId, shortfallOf: ShortfallOf): Methods {
  const leads = () => (['break-out', 'water-jet'] as const).find((each) => !shortfallOf(each));
  const method = bar ? (leads() ?? 'break-out') : rest;
  const spent = shortfallOf(method)?.demand === 'trial';
  return { method, rest, spent };
}

/** Chooses the method; no other is judged without need. */
export function choose(demands: Demands): Choice {
  const shortfallOf = judgeBy(demands);
  const { method: picked, passedOver } = pick(demands, shortfallOf);
  const { method, rest, spent } = withBar(demands, picked, shortfallOf);
  return { demands, method, rest, spent, passedOver, shortfallOf };
}
