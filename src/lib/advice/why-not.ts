import { methodIds, methods, type MethodId } from '$shared/methods';
import { isBruising, type Choice } from './choice';
import { ladders } from './place';
import type { Rejection } from './types';

const harsherThan = (chosen: MethodId, method: MethodId): Rejection => ({
  method,
  rule: 'harsher-than-needed',
  wouldDo: true,
  facts: { chosen, bruises: isBruising(method) ? 'yes' : 'no' },
});

/** Why not this method; null for the chosen one. */
export function whyNot(choice: Choice, method: MethodId): Rejection | null {
  const { demands, spent } = choice;
  // Where none is left, the one that is named for want of another has failed as well.
  if (method === choice.method && !spent) return null;
  if (method === choice.rest && !spent) return { method, rule: 'for-the-rest', wouldDo: true };
  const shortfall = choice.shortfallOf(method);
  if (shortfall) {
    const { rule, facts, figures } = shortfall;
    return { method, rule, wouldDo: false, ...(facts && { facts }), ...(figures && { figures }) };
  }
  if (demands.bar && method !== 'water-jet')
    return { method, rule: 'leaves-bar-bound', wouldDo: false };
  // Nothing that holds has to come off: whatever takes off more takes it off sound concrete.
  if (choice.method === 'pressure-wash') return harsherThan(choice.method, method);
  if (method === 'water-jet') {
    const small = demands.place.endsWith('-spot') && { facts: { small: 'yes' } };
    return { method, rule: 'specialist-alternative', wouldDo: true, ...small };
  }
  const { passedOver } = choice;
  if (method === passedOver?.method)
    return {
      method,
      rule: passedOver.why === 'bruises' ? 'would-bruise-sound-concrete' : 'leaves-cracks-to-clean',
      wouldDo: true,
    };
  const ladder: readonly MethodId[] = ladders[demands.place];
  if (!ladder.includes(method))
    return {
      method,
      rule: 'not-on-this-ladder',
      wouldDo: true,
      facts: { method, place: demands.place, bruises: methods[method].bruises },
    };
  // It stands higher on the ladder for what it takes to set up, not for what it does to the concrete.
  if (isBruising(choice.method) && !isBruising(method))
    return { method, rule: 'would-do-too', wouldDo: true, facts: { method } };
  return harsherThan(choice.method, method);
}

/** A reason against every method but the chosen one. */
export function whyNotOthers(choice: Choice): Rejection[] {
  const others: Rejection[] = [];
  for (const method of methodIds) {
    const rejection = whyNot(choice, method);
    if (rejection) others.push(rejection);
  }
  return others;
}
