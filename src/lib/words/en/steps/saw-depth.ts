import type { Reason } from '$lib/advice/types';
import type { RuleSentence } from '$lib/words/types';
import { amount, saw } from '$words/rules/facts';

/** A cut that nothing here makes shallower. */
export const anySaw: Reason = { rule: 'saw-depth' };

/** How deep the saw goes here: the step and its reason say it alike. */
export const sawDepthHere: RuleSentence = (reason, say) => {
  const deepest = amount(reason, 'deepest');
  if (deepest === null)
    return `Saw ${say.figure('sawcut.depth')} deep, and no deeper than the hole will be.`;
  if (saw(reason, 'why', 'steel'))
    return deepest < say.valueOf('sawcut.by-hand')
      ? 'The steel lies too shallow here to saw above it. Cut the edge by hand.'
      : `Saw no deeper than ${say.length(deepest)} here, to stay clear of the steel.`;
  return saw(reason, 'why', 'thickness')
    ? `Saw no deeper than ${say.length(deepest)} here, ${say.fraction(say.valueOf('depth.partial-limit'))} of the thickness, and no deeper than the hole will be.`
    : `Saw no deeper than the hole will be: ${say.length(deepest)} at most.`;
};
