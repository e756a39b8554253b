import { capital } from '$lib/words/by-language';
import type { rejectionRules } from '$lib/advice/rules';
import { contaminantNames, looseNames, methodNames, reachNames } from '$words/names';
import type { RuleSentence } from '$lib/words/types';
import { amount, depthSaid, named, namedAll, saw } from './facts';

/** Why not that one. Each follows the name of the method and a colon. */
export const rejectionSentences: Readonly<Record<(typeof rejectionRules)[number], RuleSentence>> = {
  'leaves-loose': (reason) =>
    saw(reason, 'looseness', 'hollow')
      ? 'would leave the hollow layer where it is, and the repair would come off with it.'
      : `would leave ${named(reason, 'looseness', looseNames)} behind, and the repair would come off with it.`,
  'past-its-reach': (reason, say) =>
    `would stop too soon. The damage is ${depthSaid(reason, say)}, and on ${named(reason, 'looseness', looseNames)} this method reaches only ${named(reason, 'reach', reachNames(say))}.`,
  'leaves-contaminant': (reason, say) =>
    `would leave ${say.list(namedAll(reason, 'contamination', contaminantNames))} on the surface, and the repair would not stick.`,
  'washing-spreads-oil': () =>
    'would spread the oil and drive it deeper. Water alone does not lift it.',
  'glazes-coating': () =>
    'would skim the coating and glaze it. The heat smears it over the concrete.',
  'shot-bounces': () =>
    'would not get through the coating. Shot bounces off what is thick or soft.',
  'rides-over-pits': () => 'would ride over the pits, and leave what is in them.',
  'leaves-cracks-to-clean': () =>
    'would do, but leaves the open cracks to be cleaned apart from it.',
  'washing-leaves-closed-skin': () =>
    'would leave the closed, trowelled skin, and what it was cured with.',
  'washing-leaves-weak-skin': () => 'would leave the weak skin, which would go on dusting.',
  'texture-not-sure-enough': (reason, say) => {
    const leaves = amount(reason, 'leaves');
    const needs = amount(reason, 'needs');
    return leaves === null || needs === null
      ? 'leaves the texture as it is, and nobody can be sure that it is rough enough.'
      : `leaves the texture as it is. That may be no rougher than ${say.csp(leaves)}, and at least ${say.csp(needs)} is wanted.`;
  },
  'too-smooth-after': (reason, say) => {
    const leaves = amount(reason, 'leaves');
    const needs = amount(reason, 'needs');
    return leaves === null || needs === null
      ? 'would leave the surface too smooth for the finish to grip.'
      : `would leave the surface too smooth: ${say.csp(leaves)} at the roughest, and the finish needs at least ${say.csp(needs)} to grip.`;
  },
  'needs-a-floor': () => 'needs a floor to stand on and room to turn. There is none here.',
  'too-small-for-machine': (_, say) =>
    `is not worth setting up for less than ${say.figure('place.spot')}.`,
  'too-large-by-hand': (_, say) =>
    `is hand work here, and nobody does more than ${say.figure('place.wide')} of it by hand.`,
  'no-machine-in-a-hole': () => 'needs a flat surface, and gets into no hole.',
  'for-the-rest': () => 'is what the rest of the zone needs, beside the bar.',
  'leaves-bar-bound': () => 'would not free the bar. That takes breaking out along it.',
  'washing-after-stripping': () =>
    'would not be enough. Scraping the coating off leaves a residue that water does not lift.',
  'would-bruise-sound-concrete': () =>
    'would be too much here: its teeth bruise sound concrete, and only roughness is missing.',
  'harsher-than-needed': (reason) =>
    `would be too much here, and ${saw(reason, 'bruises', 'yes') ? 'harm' : 'take off'} sound concrete. ${capital(named(reason, 'chosen', methodNames))} is enough.`,
  'would-do-too': (reason) =>
    saw(reason, 'method', 'abrasive-blast')
      ? 'would do too, and does not bruise. It takes a compressor and a tent for the dust, which is much for so little.'
      : 'would do too, and bruises less: as good a choice where one is at hand and the floor is dry.',
  'not-on-this-ladder': (reason) =>
    saw(reason, 'bruises', 'no')
      ? 'would do, but it throws its dust into the open and has to be tented in. Keep it for when the advised method cannot be had.'
      : 'would do, but it is slow by hand and bruises the surface. Keep it for edges and small spots.',
  'specialist-alternative': (reason) =>
    saw(reason, 'small', 'yes')
      ? 'would do, and leaves no bruised skin. No specialist crew comes for so little.'
      : 'would do, and leaves no bruised skin. It takes a specialist crew and a site that can hold the water, so ask about it for a large area.',
  held: () => 'must wait. What stands in the way has to be cleared before any method is chosen.',
};
