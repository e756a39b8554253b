import type { Advice, Reason } from '$lib/advice/types';
import { formatter, words } from '$lib/words';

const speakers = [formatter('metric'), formatter('us')];
const steps = words.steps(speakers[0] as never);
const hazards = words.hazards(speakers[0] as never);
const spoken = new Set<string>();
let calls = 0;
/** Every rule is spoken when it first comes up, and everything of one advice in so many. */
const oneIn = 4999;

/**
 * A rule, step or hazard of an advice that has no sentence, or one with a hole in it; null when all speak.
 * @param rules gathers the rules that came up
 */
export function unspoken(advice: Advice, rules?: Set<string>): string | null {
  calls += 1;
  const whole = calls % oneIn === 0;
  const { reasons, rejections, holds } = advice;
  const check = (reason: Reason): string | null => {
    rules?.add(reason.rule);
    if (!whole && spoken.has(reason.rule)) return null;
    spoken.add(reason.rule);
    for (const say of speakers) {
      const sentence = words.rules[reason.rule](reason, say);
      if (sentence.length < 8 || /undefined|NaN|\[object|null/.test(sentence))
        return `${reason.rule} says "${sentence}"`;
    }
    return null;
  };
  for (const list of [reasons, rejections, holds])
    for (const reason of list) {
      const fault = check(reason);
      if (fault) return fault;
    }
  for (const step of advice.steps) {
    for (const reason of step.why) {
      const fault = check(reason);
      if (fault) return fault;
    }
    if (!steps[step.id]?.name) return `no words for ${step.id}`;
  }
  for (const hazard of advice.cautions) if (!hazards[hazard]?.harm) return `no words for ${hazard}`;
  return null;
}
