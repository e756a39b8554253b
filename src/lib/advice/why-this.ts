import { lacksProfileOnly, type Choice } from './choice';
import { removalFacts } from './demands';
import { afterFailed, failedHere } from './tried-out';
import type { Reason } from './types';

/** One reason for the method, told where it holds. Each looks at no more than it needs. */
export type ChoiceReason = (choice: Choice) => Reason | false;

const forPatches: ChoiceReason = ({ demands }) => {
  const failed = failedHere(demands);
  return failed.length > 0 && afterFailed(failed);
};

const forBar: ChoiceReason = ({ demands, method, rest }) =>
  demands.bar && {
    rule: 'bar-leads',
    ...(rest !== method && { facts: { rest } }),
    figures: ['bar.clear', 'bar.along'],
  };

/** What comes off, and with what; beside a bar, with what the rest is worked. */
const forRemoval: ChoiceReason = ({ demands, rest: method }) => {
  const { looseness } = demands.remove;
  if (looseness === 'tight') return { rule: 'nothing-to-remove', facts: removalFacts(demands) };
  if (method === 'pressure-wash') return { rule: 'thin-weak-skin', facts: removalFacts(demands) };
  if (method === 'grind') return { rule: 'skims-to-sound', facts: removalFacts(demands) };
  if (method === 'break-out')
    return { rule: 'deep-or-loose-in-depth', facts: removalFacts(demands) };
  if (method === 'water-jet') return false;
  if (looseness === 'hollow')
    return { rule: 'thin-skin-let-go', facts: { method }, figures: ['depth.shallow'] };
  const { place } = demands;
  if (place !== 'floor')
    return {
      rule: place === 'floor-spot' ? 'hand-tools-here' : 'off-floor-blast',
      // Off floors blasting goes before needles, except on a spot.
      facts: {
        ...removalFacts(demands),
        ...(place === 'off-floor-spot' && method === 'needle-scale' && { small: 'yes' }),
      },
    };
  return {
    rule: 'cuts-to-sound',
    facts: removalFacts(demands),
    figures: ['depth.thin', 'depth.shallow'],
  };
};

const forProfile: ChoiceReason = ({ rest: method, passedOver, shortfallOf }) =>
  passedOver
    ? {
        rule: passedOver.why === 'bruises' ? 'profile-without-bruises' : 'cleans-open-cracks',
        facts: { spared: passedOver.method },
      }
    : method !== 'pressure-wash' &&
      method !== 'grind' &&
      lacksProfileOnly(shortfallOf) && { rule: 'steps-up-for-profile' };

/** Every reason there can be for a method, in the order in which they are told. */
export const choiceReasons: readonly ChoiceReason[] = [
  forPatches,
  forBar,
  forRemoval,
  ({ demands }) => demands.place === 'recess' && { rule: 'form-to-fill' },
  ({ demands, rest: method }) =>
    method !== 'break-out' &&
    demands.skin !== null && {
      rule: demands.skin === 'dusting' ? 'dusting-is-weak' : 'trowelled-is-closed',
    },
  ({ demands, rest: method }) =>
    (method === 'shotblast' || method === 'abrasive-blast') &&
    demands.belowPlane && { rule: 'reaches-into-pits' },
  ({ demands, rest: method }) =>
    method === 'scarify' &&
    demands.heavyCoating && {
      rule: demands.belowPlane ? 'lifts-coating-then-pits' : 'lifts-coating',
    },
  forProfile,
  ({ demands }) =>
    demands.contaminants.includes('thin-coating') &&
    !demands.heavyCoating && { rule: 'takes-off-thin-coating' },
  ({ demands }) => demands.oil && { rule: 'oil-rules-out-washing' },
  ({ demands }) => demands.stripped && { rule: 'after-stripping' },
  ({ demands, method }) => ({
    rule: 'meets-all',
    facts: { method, ...(failedHere(demands).length && { left: 'yes' }) },
  }),
];

/** Why this method. */
export function whyThis(choice: Choice): Reason[] {
  const why: Reason[] = [];
  for (const reason of choiceReasons) {
    const found = reason(choice);
    if (found) why.push(found);
  }
  return why;
}
