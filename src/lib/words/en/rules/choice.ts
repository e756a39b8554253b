import { capital } from '$lib/words/by-language';
import type { choiceRules } from '$lib/advice/rules';
import { looseNames, methodNames } from '$words/names';
import type { RuleSentence } from '$lib/words/types';
import { depthSaid, named, saw } from './facts';
import { holdSentences } from './holds';
import { trialSentences } from './trial';

/** Why this method. */
export const choiceSentences: Readonly<Record<(typeof choiceRules)[number], RuleSentence>> = {
  'meets-all': (reason) =>
    `${capital(named(reason, 'method', methodNames))} is the gentlest method${saw(reason, 'left', 'yes') ? ' left' : ''} that does all this surface needs.`,
  'nothing-to-remove': (reason) =>
    saw(reason, 'depth', 'film') ||
    saw(reason, 'depth', 'under-3') ||
    saw(reason, 'depth', '3-to-6')
      ? 'The surface is sound: nothing on it is loose.'
      : 'The hole has a firm bottom: nothing in it is loose. It is a form to fill.',
  'thin-weak-skin': () =>
    'Only a powdery skin is weak, and water under pressure takes that off without hurting what holds.',
  'skims-to-sound': (reason, say) =>
    `The ${named(reason, 'looseness', looseNames)} is ${depthSaid(reason, say)}. Grinding reaches ${say.figure('depth.thin')}, so it gets down to sound concrete.`,
  'cuts-to-sound': (reason, say) =>
    `What is loose here is ${depthSaid(reason, say)}. This method cuts down to ${say.figure('depth.shallow')}, and so to sound concrete.`,
  'reaches-into-pits': () =>
    'The surface is pitted. This method cleans the bottom of the pits, where a flat tool would pass over them.',
  'cleans-open-cracks': () =>
    'Scarifying would do too. Shotblasting goes first because it cleans the open cracks in the same pass.',
  'lifts-coating': () =>
    'The teeth of a scarifier lift a thick or rubbery coating. Other floor tools glaze it, skim it or bounce off.',
  'lifts-coating-then-pits': () =>
    'The coating bridges the low spots, so the teeth of a scarifier can lift it. What lies in the low spots is left for blasting afterwards.',
  'profile-without-bruises': () =>
    'A gentler method would take off all that has to go, and only the finish asks for more roughness. This method gives it without bruising sound concrete.',
  'steps-up-for-profile': () =>
    'A gentler method would do but for the finish: it would leave the surface too smooth.',
  'deep-or-loose-in-depth': (reason, say) =>
    saw(reason, 'looseness', 'hollow')
      ? 'A hollow layer has let go underneath. It has to come out whole, down to sound concrete, and only breaking out does that.'
      : saw(reason, 'looseness', 'rotten')
        ? 'Rotten in depth: only breaking out reaches sound concrete.'
        : `What is loose here is ${depthSaid(reason, say)}. Breaking out is the gentlest method here that clears it.`,
  'off-floor-blast': (reason, say) =>
    `What is loose here is ${depthSaid(reason, say)}. No floor machine can work here, and ${
      saw(reason, 'small', 'yes')
        ? `on less than ${say.figure('place.spot')} needles are set up sooner than blasting.`
        : 'this method follows any shape.'
    }`,
  'hand-tools-here': (_, say) =>
    `The zone is smaller than ${say.figure('place.spot')}. No machine that you walk behind is worth setting up for that, so it is done with hand tools.`,
  'thin-skin-let-go': (_, say) =>
    `Only a thin skin has let go, no more than ${say.figure('depth.shallow')}: on a floor, often for being smoothed too early. It comes off as a layer, and what lies under it is sounded again.`,
  'form-to-fill': () =>
    'The hole is filled up, so it gets a square edge, and its old face is cleaned inside. No machine on wheels gets into it.',
  'bar-leads': (reason) => {
    const rest = named(reason, 'rest', methodNames);
    return `A bar shows, and the repair has to grip all round it. Break out along the bar first.${rest ? ` The rest of the zone needs only ${rest}.` : ''}`;
  },
  'trowelled-is-closed': () =>
    'The surface is smooth from the trowel or the form. Its closed skin, and what it was cured with, have to come off before anything can grip.',
  'dusting-is-weak': () =>
    'A surface that dusts is weak, not dirty. Washed, it would dust again, and take the coating with it.',
  'oil-rules-out-washing': () =>
    'There is oil. Washing alone would spread it, so the surface is degreased first and then worked with a tool.',
  'after-stripping': () =>
    'A scraper takes the coating off first. What it leaves behind needs more than water.',
  'takes-off-thin-coating': () => 'It takes off the thin coating too.',
};

/** All that may stand as the reason for an advice: the choice, what stands before it, a test patch. */
const reasons = { ...choiceSentences, ...holdSentences, ...trialSentences };

/** A reason for the advice, by its rule alone. */
export const choiceSentence: RuleSentence = (reason, say) =>
  reasons[reason.rule as keyof typeof reasons](reason, say);
