import type { Substitute } from '$lib/plan/machines';
import type { MethodId } from '$shared/methods';
import { methodNames } from '$words/names';
import type { Say } from '$lib/words/types';

/** What a machine the crew has does worse than the one advised: each after its name. */
export const costNames: Readonly<Record<Substitute['costs'][number], string>> = {
  'bruises-more': 'bruises more of the concrete',
  rougher: 'leaves it rougher, for more material',
  slower: 'is slower',
  harsher: 'takes off more than is needed',
};

/** What to do where the machine that is advised is missing. */
export function substituteSentence(
  { wanted, instead, costs }: Pick<Substitute, 'wanted' | 'instead' | 'costs'>,
  zones: string,
  say: Say,
): string {
  const need = `${zones}: ${methodNames[wanted]} is advised, and you have no machine for it. The plan runs a hired one.`;
  if (!instead) return `${need} Nothing you have would do it.`;
  const cost = costs.length ? ` It ${say.list(costs.map((id) => costNames[id]))}.` : '';
  return `${need} Of what you have, ${methodNames[instead]} would do it too.${cost}`;
}

/** What a crew that does a method has: the machine, as ticked in a list. */
export const machineNames: Readonly<Record<MethodId, string>> = {
  'pressure-wash': 'Pressure washer',
  grind: 'Grinder',
  'abrasive-blast': 'Abrasive-blast outfit',
  scarify: 'Scarifier or scabbler',
  shotblast: 'Shotblaster',
  'needle-scale': 'Needle scaler',
  'break-out': 'Breaker or chipping hammer',
  'water-jet': 'Water-jetting outfit',
};
