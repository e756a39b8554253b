import type { holdRules } from '$lib/advice/rules';
import type { RuleSentence } from '$lib/words/types';
import { amount } from './facts';

type PossibleHold =
  | Exclude<(typeof holdRules)[number], 'answers-differ' | 'same-part-in-doubt'>
  | 'no-method-left'
  | 'stopped-on-patch';

/** What would stand before the work if an open answer turned out so. Nothing here is said as a fact. */
export const possibleHoldSentences: Readonly<Record<PossibleHold, RuleSentence>> = {
  'structure-before-removal': () =>
    'If the work cuts into what carries load, an engineer says first what may go and what must be propped.',
  'tendons-before-depth': (_, say) =>
    `If there are stretched steel cables inside, nothing may be sawn, drilled or taken deeper than ${say.figure('tendon.depth')} until they are located and marked.`,
  'hollow-unmeasured': () =>
    'If it is hollow where it hangs free, an engineer has its depth measured before anything is taken off.',
  'settled-or-rocking': () =>
    'If the concrete has sunk or rocks, a repair on top cracks again until the ground under it is put right.',
  'moving-crack': () =>
    'If a crack opens and closes, a stiff filling breaks beside it, and someone has to say why it moves.',
  'rust-with-salts': () =>
    'If rust shows where salt reaches, the chloride has to be measured before anything goes over it.',
  'rust-at-crack': () =>
    'If rust comes out of a crack, the crack has to be opened to the bar before it is sealed.',
  'nothing-over-rust': () =>
    'If there is a rust stain, one spot has to be opened before anything goes over it.',
  'bloom-under-dry-finish': () =>
    'If there is salt bloom, the water that carries it has to be found and stopped before a finish that wants it dry.',
  'fire-or-chemical': () =>
    'If there was a fire or a spill of chemicals, the concrete may be weak further in than you can see.',
  'map-cracking': () =>
    'If there are fine cracks like a map, the concrete itself may be failing, and will not hold a patch.',
  'old-coating': () =>
    'If there is an old coating or glue, it may hold lead or asbestos. Make no dust before a sample has been tested.',
  'buried-services': () =>
    'If cables or pipes may lie where you would cut or break, they have to be found and marked first.',
  'full-depth': (reason, say) => {
    const half = amount(reason, 'half');
    const from = half === null ? '' : ` (${say.length(half)} here)`;
    return `If loose concrete reaches ${say.fraction(say.valueOf('depth.full-limit'))} of the thickness or more${from}, this part has to be replaced through its full depth.`;
  },
  through: () => 'If the damage goes right through, this part is replaced through its full depth.',
  'thickness-decides': (_, say) =>
    `If the loose concrete goes deep, depth and thickness have to be measured first: from ${say.fraction(say.valueOf('depth.full-limit'))} of the thickness this part has to be replaced.`,
  'bar-section-loss': (_, say) =>
    `If rust has taken more than ${say.figure('bar.loss-one')} of a bar, or ${say.figure('bar.loss-neighbours')} of bars side by side, an engineer decides about props and new steel.`,
  'no-method-left': () =>
    'If an open answer turns out so, no method is left that has not failed on your test squares.',
  'stopped-on-patch': () => 'If a test square stopped, what stopped it has to be found out first.',
};

/** The sentence for a hold that may stand. */
export const possibleHoldSentence: RuleSentence = (reason, say) =>
  possibleHoldSentences[reason.rule as PossibleHold](reason, say);
