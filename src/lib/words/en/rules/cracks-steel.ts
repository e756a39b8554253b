import type { stepRules } from '$lib/advice/rules';
import { saw } from './facts';
import type { RuleSentence, Say } from '$lib/words/types';

type CrackOrSteelRule = Extract<
  (typeof stepRules)[number],
  | 'hairline-rout-or-bridge'
  | 'hairline-tap-first'
  | 'open-rout-or-chase'
  | 'routed-crack-sealed'
  | 'chased-crack-filled'
  | 'bar-cleaned-round'
  | 'open-in-frost-chase'
  | 'crumbling-chase'
  | 'rust-open-to-bar'
  | 'bar-undercut'
  | 'bar-clean-may-stay'
  | 'bar-follow-rust'
  | 'bar-light-hammer'
  | 'stain-look-beneath'
  | 'measure-the-bar'
>;

const groove = (say: Say) =>
  `a groove at least ${say.figure('rout.width')} wide and ${say.figure('rout.depth')} deep`;

/** Why cracks and steel are treated as they are. */
export const crackAndSteelSentences: Readonly<Record<CrackOrSteelRule, RuleSentence>> = {
  'hairline-rout-or-bridge': (_, say) =>
    `A hairline crack is too fine to fill. Rout ${groove(say)}, or leave it if the finish can bridge it.`,
  'hairline-tap-first': () =>
    'Where it freezes often, the edges of a fine crack may have let go already. Tap along it. If the edges sound dull or give, treat it as crumbling.',
  'open-rout-or-chase': (_, say) =>
    `The edges are firm, so a crack that does not move only has to be opened and cleaned. Rout ${groove(say)}.`,
  'routed-crack-sealed': (_, say) =>
    `Seal the routed crack before anything goes over it: dry, at ${say.figure('seal.temperature')} or warmer. Clean the groove once more on the day you seal it.`,
  'chased-crack-filled': () =>
    'Fill the chased crack before anything goes over it: clean and damp faces, repair mortar, and its own cure.',
  'open-in-frost-chase': () =>
    'Where it freezes often, an open crack is usually loose further than it looks. Chase its whole length on both sides, until both edges ring.',
  'crumbling-chase': () =>
    'The edges have let go. Chase the crack along its whole length on both sides, until both edges ring. It is usually wider than it looked.',
  'rust-open-to-bar': () =>
    'There is rust at this concrete. Open the crack down to the bar and look, or leave it to an engineer. Never seal over a bar that rusts.',
  'bar-undercut': (_, say) =>
    `The repair has to grip all round the bar. Clear ${say.figure('bar.clear')} behind it, or the largest stone in the repair material plus ${say.figure('bar.clear-over-aggregate')}, whichever is more. One US military guide asks for ${say.figure('bar.clear-military')}.`,
  'bar-clean-may-stay': (_, say) =>
    `Where a bar is clean and the concrete still grips more than ${say.fraction(say.valueOf('bar.bonded-share'))} of the way round it, leave it as it is.`,
  'bar-cleaned-round': () =>
    'Blast the bar with grit or brush it with wire, all round. A hand grinder does not reach behind it. Rust that stays goes on under the repair.',
  'bar-follow-rust': (_, say) =>
    `Rust goes on under the concrete. Follow the bar until it is clean, and at least ${say.figure('bar.along')} past the last rust.`,
  'bar-light-hammer': (_, say) =>
    `A heavy blow on a bar breaks its grip further along. Use no more than a ${say.figure('hammer.above-steel')} class hammer above the steel, and a ${say.figure('hammer.at-steel')} class around it.`,
  'stain-look-beneath': (reason) =>
    `A rust stain means that steel may be rusting out of sight. ${
      saw(reason, 'who', 'crew')
        ? 'Sound all round it, and open one spot to look.'
        : 'Sound all round it. Where it carries load, a licensed structural engineer says where one spot is opened to look.'
    }`,
  'measure-the-bar': (_, say) =>
    `Nobody has measured the bars yet. Once they are clean, measure them. If one has lost more than ${say.figure('bar.loss-one')}, or two side by side more than ${say.figure('bar.loss-neighbours')}, stop and call an engineer.`,
};
