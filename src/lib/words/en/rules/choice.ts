import type { choiceRules } from '$lib/advice/rules';
import { depthNames, looseNames, methodNames } from '$lib/words/en/names';
import type { RuleSentence } from '$lib/words/types';
import { named, saw } from './facts';

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Why this method. */
export const choiceSentences: Readonly<Record<(typeof choiceRules)[number], RuleSentence>> = {
  'meets-all': (reason) =>
    `${capital(named(reason, 'method', methodNames))} is the gentlest method that does all this surface needs.`,
  'nothing-to-remove': (reason) =>
    saw(reason, 'depth', 'film')
      ? 'The concrete is sound, so nothing has to be taken off.'
      : 'The hole has a firm bottom, so nothing has to be taken off. It is a form to fill.',
  'thin-weak-skin': () =>
    'Only a powdery skin is weak, and water under pressure takes that off without hurting what holds.',
  'skims-to-sound': (reason, say) =>
    `The ${named(reason, 'looseness', looseNames)} is ${named(reason, 'depth', depthNames(say))}. Grinding reaches ${say.figure('depth.thin')}, so it gets down to sound concrete.`,
  'cuts-to-sound': (reason, say) =>
    `What is loose here is ${named(reason, 'depth', depthNames(say))}. This method cuts down to ${say.figure('depth.shallow')}, and so to sound concrete.`,
  'reaches-into-pits': (reason) =>
    saw(reason, 'below', 'cracks')
      ? 'There are open cracks. This method gets in between their edges, where a flat tool would pass over them.'
      : 'The surface is pitted. This method cleans the bottom of the pits, where a flat tool would pass over them.',
  'lifts-coating': () =>
    'The teeth of a scarifier lift a thick or rubbery coating. Other floor tools glaze it, skim it or bounce off.',
  'lifts-coating-then-pits': () =>
    'The coating bridges the low spots, so the teeth of a scarifier can lift it. What lies in the low spots is left for blasting afterwards.',
  'profile-without-bruises': () =>
    'A gentler method would take off all that has to go, and only the finish asks for more roughness. Shotblasting gives it without bruising sound concrete.',
  'steps-up-for-profile': () =>
    'A gentler method would do but for the finish: it would leave the surface too smooth.',
  'deep-or-loose-in-depth': (reason, say) =>
    saw(reason, 'looseness', 'hollow')
      ? 'A hollow layer has let go underneath. It has to come out whole, down to sound concrete, and only breaking out does that.'
      : saw(reason, 'looseness', 'rotten')
        ? 'The concrete is rotten in depth. Nothing holds until you reach sound concrete, and only breaking out gets there.'
        : `What is loose here is ${named(reason, 'depth', depthNames(say))}. Breaking out is the gentlest method here that clears it.`,
  'off-floor-blast': (reason, say) =>
    `What is loose here is ${named(reason, 'depth', depthNames(say))}. No floor machine can work here, and this method follows any shape.`,
  'oil-rules-out-washing': () =>
    'There is oil. Washing alone would spread it, so the surface is degreased first and then worked with a tool.',
  'after-stripping': () =>
    'A scraper takes the coating off first. What it leaves behind needs more than water.',
  'takes-off-thin-coating': () => 'It takes off the thin coating too.',
};
