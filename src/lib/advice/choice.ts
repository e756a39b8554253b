import { methodIds, methods, type MethodId } from '$shared/methods';
import { removalFacts, type Demands } from './demands';
import { methodRules } from './methods';
import type { Shortfall } from './methods/judge';
import { ladders } from './place';
import { afterFailed, failedHere, judgeTried } from './tried-out';
import type { Reason, Rejection } from './types';

/** For each method, the first demand it fails; null where it is sufficient. */
export type Judgement = Readonly<Record<MethodId, Shortfall | null>>;

export interface Choice {
  readonly method: MethodId;
  /** Where a bar leads with breaking out: what the rest of the zone needs; else the method itself. */
  readonly rest: MethodId;
  readonly reasons: readonly Reason[];
  readonly judgement: Judgement;
  /** The ladder's gentler sufficient method that was passed over, and why. */
  readonly passedOver: PassedOver | null;
  /** Every method that would do has failed on a test patch: the one named has, too. */
  readonly spent: boolean;
}

interface PassedOver {
  readonly method: MethodId;
  readonly why: 'bruises' | 'cracks';
}

/** Judges a method against the demands, and then by what the test patches have settled. */
function judgeBy(demands: Demands): (method: MethodId) => Shortfall | null {
  const failed = failedHere(demands);
  return (method) => methodRules[method].shortfall(demands) ?? judgeTried(method, failed);
}

/** Judges every method against the demands. */
export function judgeAll(demands: Demands): Judgement {
  const judgement = {} as Record<MethodId, Shortfall | null>;
  const judge = judgeBy(demands);
  for (const id of methodIds) judgement[id] = judge(id);
  return judgement;
}

interface Picked {
  readonly method: MethodId;
  readonly passedOver: PassedOver | null;
  /** Whether washing or grinding would do but for the roughness, or the skin, that is wanted. */
  readonly profileOnly: boolean;
}

const isBruising = (method: MethodId): boolean =>
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
function pick(demands: Demands, shortfallOf: (method: MethodId) => Shortfall | null): Picked {
  const ladder = ladderFor(demands);
  // Break-out meets every demand, so the ladder always ends in a method (proven over every route).
  const first = ladder.find((method) => !shortfallOf(method)) ?? 'break-out';
  const failsOnlyProfile = (method: MethodId) => {
    const demand = shortfallOf(method)?.demand;
    return demand === 'profile' || demand === 'skin';
  };
  const profileOnly = failsOnlyProfile('pressure-wash') || failsOnlyProfile('grind');
  const why =
    profileOnly && isBruising(first)
      ? 'bruises'
      : demands.openCracks && first === 'scarify'
        ? 'cracks'
        : null;
  const spare =
    why &&
    first !== 'break-out' &&
    ladder
      .slice(ladder.indexOf(first) + 1)
      .find((method) => method !== 'water-jet' && !isBruising(method) && !shortfallOf(method));
  return spare
    ? { method: spare, passedOver: { method: first, why }, profileOnly }
    : { method: first, passedOver: null, profileOnly };
}

function ladderFor(demands: Demands): readonly MethodId[] {
  const ladder: readonly MethodId[] = ladders[demands.place];
  if (!failedHere(demands).length) return ladder;
  const last: readonly MethodId[] = ['break-out', 'water-jet'];
  const first = [...ladder, ...methodIds].filter((method) => !last.includes(method));
  return [...new Set([...first, ...last])];
}

/** The method, and what the zone needs beside its bars; without bars the method itself. */
interface Methods {
  readonly method: MethodId;
  readonly rest: MethodId;
  readonly spent: boolean;
}

/** Breaking out frees a bar; where that has failed on a patch, a specialist's jet does. */
function withBar(
  { bar }: Demands,
  rest: MethodId,
  shortfallOf: (method: MethodId) => Shortfall | null,
): Methods {
  const leads = () => (['break-out', 'water-jet'] as const).find((each) => !shortfallOf(each));
  const method = bar ? (leads() ?? 'break-out') : rest;
  const spent = shortfallOf(method)?.demand === 'trial';
  return { method, rest: shortfallOf(rest)?.demand === 'trial' ? method : rest, spent };
}

/** What `choose` comes to without its reasons, no method judged without need. */
export function methodsFor(demands: Demands): Methods {
  const judge = judgeBy(demands);
  return withBar(demands, pick(demands, judge).method, judge);
}

/** The method, with the reasons for it and the judgement of every other. */
export function choose(demands: Demands): Choice {
  const judgement = judgeAll(demands);
  const picked = pick(demands, (id) => judgement[id]);
  const { passedOver } = picked;
  const found = withBar(demands, picked.method, (id) => judgement[id]);
  return {
    ...found,
    judgement,
    passedOver,
    reasons: reasonsFor(found, demands, picked),
  };
}

function reasonsFor(
  { method: leads, rest: method }: Methods,
  demands: Demands,
  { passedOver, profileOnly }: Picked,
): Reason[] {
  const { looseness } = demands.remove;
  const facts = removalFacts(demands);
  const failed = failedHere(demands);
  const reasons: Reason[] = failed.length ? [afterFailed(failed)] : [];
  if (demands.bar) {
    reasons.push({
      rule: 'bar-leads',
      ...(method !== leads && { facts: { rest: method } }),
      figures: ['bar.clear', 'bar.along'],
    });
  }
  if (looseness === 'tight') reasons.push({ rule: 'nothing-to-remove', facts });
  else if (method === 'pressure-wash') reasons.push({ rule: 'thin-weak-skin', facts });
  else if (method === 'grind') reasons.push({ rule: 'skims-to-sound', facts });
  else if (method === 'break-out') reasons.push({ rule: 'deep-or-loose-in-depth', facts });
  else if (looseness === 'hollow' && method !== 'water-jet')
    reasons.push({ rule: 'thin-skin-let-go', facts: { method }, figures: ['depth.shallow'] });
  else if (demands.place !== 'floor' && (method === 'abrasive-blast' || method === 'needle-scale'))
    reasons.push({
      rule: demands.place === 'floor-spot' ? 'hand-tools-here' : 'off-floor-blast',
      facts,
    });
  else if (method !== 'water-jet')
    reasons.push({ rule: 'cuts-to-sound', facts, figures: ['depth.thin', 'depth.shallow'] });

  if (demands.place === 'recess') reasons.push({ rule: 'form-to-fill' });
  if (demands.skin && method !== 'pressure-wash' && method !== 'break-out')
    reasons.push({ rule: demands.skin === 'dusting' ? 'dusting-is-weak' : 'trowelled-is-closed' });
  if ((method === 'shotblast' || method === 'abrasive-blast') && demands.belowPlane)
    reasons.push({ rule: 'reaches-into-pits' });
  if (method === 'scarify' && demands.heavyCoating)
    reasons.push({ rule: demands.belowPlane ? 'lifts-coating-then-pits' : 'lifts-coating' });
  if (passedOver)
    reasons.push({
      rule: passedOver.why === 'bruises' ? 'profile-without-bruises' : 'cleans-open-cracks',
      facts: { spared: passedOver.method },
    });
  else if (profileOnly && method !== 'pressure-wash' && method !== 'grind')
    reasons.push({ rule: 'steps-up-for-profile' });
  if (demands.contaminants.includes('thin-coating') && !demands.heavyCoating)
    reasons.push({ rule: 'takes-off-thin-coating' });
  if (demands.oil) reasons.push({ rule: 'oil-rules-out-washing' });
  if (demands.stripped) reasons.push({ rule: 'after-stripping' });
  reasons.push({
    rule: 'meets-all',
    facts: { method: leads, ...(failed.length && { left: 'yes' }) },
  });
  return reasons;
}

const harsherThan = (chosen: MethodId, method: MethodId): Rejection => ({
  method,
  rule: 'harsher-than-needed',
  wouldDo: true,
  facts: { chosen, bruises: isBruising(method) ? 'yes' : 'no' },
});

/** A reason against every method but the chosen one. */
export function rejectionsFor(choice: Choice, demands: Demands): Rejection[] {
  const ladder: readonly MethodId[] = ladders[demands.place];
  const rejections: Rejection[] = [];
  for (const method of methodIds) {
    // Where none is left, the one that is named for want of another has failed as well.
    if (method === choice.method && !choice.spent) continue;
    const shortfall = choice.judgement[method];
    if (method === choice.rest && !choice.spent) {
      rejections.push({ method, rule: 'for-the-rest', wouldDo: true });
    } else if (shortfall) {
      const { rule, facts, figures } = shortfall;
      rejections.push({
        method,
        rule,
        wouldDo: false,
        ...(facts && { facts }),
        ...(figures && { figures }),
      });
    } else if (demands.bar && method !== 'water-jet') {
      rejections.push({ method, rule: 'leaves-bar-bound', wouldDo: false });
    } else if (choice.method === 'pressure-wash') {
      // Nothing that holds has to come off: whatever takes off more takes it off sound concrete.
      rejections.push(harsherThan(choice.method, method));
    } else if (method === 'water-jet') {
      const small = demands.place.endsWith('-spot') && { facts: { small: 'yes' } };
      rejections.push({ method, rule: 'specialist-alternative', wouldDo: true, ...small });
    } else if (method === choice.passedOver?.method) {
      rejections.push({
        method,
        rule:
          choice.passedOver.why === 'bruises'
            ? 'would-bruise-sound-concrete'
            : 'leaves-cracks-to-clean',
        wouldDo: true,
      });
    } else if (ladder.includes(method) && isBruising(choice.method) && !isBruising(method)) {
      // It stands higher on the ladder for what it takes to set up, not for what it does to the concrete.
      rejections.push({ method, rule: 'would-do-too', wouldDo: true, facts: { method } });
    } else if (ladder.includes(method)) {
      rejections.push(harsherThan(choice.method, method));
    } else {
      rejections.push({
        method,
        rule: 'not-on-this-ladder',
        wouldDo: true,
        facts: { method, place: demands.place, bruises: methods[method].bruises },
      });
    }
  }
  return rejections;
}
