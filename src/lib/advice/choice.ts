import { methodIds, methods, type MethodId } from '$shared/methods';
import type { Demands } from './demands';
import { methodRules } from './methods';
import type { Shortfall } from './methods/judge';
import type { Reason, Rejection } from './types';

/** The two ladders, gentlest first. Methods on neither are named as alternatives, not chosen. */
export const ladders = {
  floor: ['pressure-wash', 'grind', 'scarify', 'shotblast', 'break-out'],
  offFloor: ['pressure-wash', 'grind', 'abrasive-blast', 'needle-scale', 'break-out'],
} as const satisfies Record<string, readonly MethodId[]>;

/** For each method, the first demand it fails; null where it is sufficient. */
export type Judgement = Readonly<Record<MethodId, Shortfall | null>>;

export interface Choice {
  readonly method: MethodId;
  readonly reasons: readonly Reason[];
  readonly judgement: Judgement;
  /** The ladder's gentler sufficient method that was passed over so as not to bruise sound concrete. */
  readonly spared: MethodId | null;
}

/** Judges every method against the demands. */
export function judgeAll(demands: Demands): Judgement {
  const judgement = {} as Record<MethodId, Shortfall | null>;
  for (const id of methodIds) judgement[id] = methodRules[id].shortfall(demands);
  return judgement;
}

interface Picked {
  readonly method: MethodId;
  readonly spared: MethodId | null;
  /** Whether washing or grinding would do but for the profile. */
  readonly profileOnly: boolean;
}

/**
 * The gentlest sufficient method on the ladder of the place.
 * Where washing or grinding would take off all that must go and only the profile asks for more,
 * sound concrete is not to be bruised: shotblasting goes before scarifying.
 * Source: common practice, no published source.
 */
function pick(floor: boolean, shortfallOf: (method: MethodId) => Shortfall | null): Picked {
  const ladder: readonly MethodId[] = floor ? ladders.floor : ladders.offFloor;
  // Break-out meets every demand, so the ladder always ends in a method (proven over every route).
  const first = ladder.find((method) => !shortfallOf(method)) ?? 'break-out';
  const failsOnlyProfile = (method: MethodId) => shortfallOf(method)?.demand === 'profile';
  const profileOnly = failsOnlyProfile('pressure-wash') || failsOnlyProfile('grind');
  const spare = first === 'scarify' && profileOnly && !shortfallOf('shotblast');
  return { method: spare ? 'shotblast' : first, spared: spare ? first : null, profileOnly };
}

/** The method alone, for walking many possibilities: no method is judged without need. */
export const methodFor = (demands: Demands): MethodId =>
  pick(demands.floor, (method) => methodRules[method].shortfall(demands)).method;

/** The method, with the reasons for it and the judgement of every other. */
export function choose(demands: Demands): Choice {
  const judgement = judgeAll(demands);
  const { method, spared, profileOnly } = pick(demands.floor, (id) => judgement[id]);
  return {
    method,
    judgement,
    spared,
    reasons: reasonsFor(method, demands, { spare: spared !== null, profileOnly }),
  };
}

function reasonsFor(
  method: MethodId,
  demands: Demands,
  { spare, profileOnly }: { spare: boolean; profileOnly: boolean },
): Reason[] {
  const { band: depth, looseness } = demands.remove;
  const facts = { depth, looseness };
  const reasons: Reason[] = [];
  if (looseness === 'tight') reasons.push({ rule: 'nothing-to-remove', facts });
  else if (method === 'pressure-wash') reasons.push({ rule: 'thin-weak-skin', facts });
  else if (method === 'grind') reasons.push({ rule: 'skims-to-sound', facts });
  else if (method === 'break-out') reasons.push({ rule: 'deep-or-loose-in-depth', facts });
  else if (method === 'abrasive-blast' || method === 'needle-scale')
    reasons.push({ rule: 'off-floor-blast', facts });
  else reasons.push({ rule: 'cuts-to-sound', facts, figures: ['depth.thin', 'depth.shallow'] });

  if ((method === 'shotblast' || method === 'abrasive-blast') && demands.belowPlane)
    reasons.push({ rule: 'reaches-into-pits', facts: { below: demands.belowPlane } });
  if (method === 'scarify' && demands.heavyCoating)
    reasons.push({ rule: demands.belowPlane ? 'lifts-coating-then-pits' : 'lifts-coating' });
  if (spare) reasons.push({ rule: 'profile-without-bruises' });
  else if (profileOnly && method !== 'pressure-wash' && method !== 'grind')
    reasons.push({ rule: 'steps-up-for-profile' });
  if (demands.contaminants.includes('thin-coating') && !demands.heavyCoating)
    reasons.push({ rule: 'takes-off-thin-coating' });
  if (demands.oil) reasons.push({ rule: 'oil-rules-out-washing' });
  if (demands.stripped) reasons.push({ rule: 'after-stripping' });
  reasons.push({ rule: 'meets-all', facts: { method } });
  return reasons;
}

/** A reason against every method but the chosen one. */
export function rejectionsFor(choice: Choice, demands: Demands): Rejection[] {
  const ladder: readonly MethodId[] = demands.floor ? ladders.floor : ladders.offFloor;
  const rejections: Rejection[] = [];
  for (const method of methodIds) {
    if (method === choice.method) continue;
    const shortfall = choice.judgement[method];
    if (shortfall) {
      const { rule, facts, figures } = shortfall;
      rejections.push({
        method,
        rule,
        wouldDo: false,
        ...(facts && { facts }),
        ...(figures && { figures }),
      });
    } else if (method === 'water-jet') {
      rejections.push({ method, rule: 'specialist-alternative', wouldDo: true });
    } else if (method === choice.spared) {
      rejections.push({ method, rule: 'would-bruise-sound-concrete', wouldDo: true });
    } else if (ladder.includes(method)) {
      rejections.push({
        method,
        rule: 'harsher-than-needed',
        wouldDo: true,
        facts: { chosen: choice.method },
      });
    } else {
      rejections.push({
        method,
        rule: 'not-on-this-ladder',
        wouldDo: true,
        facts: { bruises: methods[method].bruises },
      });
    }
  }
  return rejections;
}
