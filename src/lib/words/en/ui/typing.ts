import type { NumberProblem } from '$lib/answers/parse-number';
import { numberMessages } from '$lib/words/en/numbers';
import type { Say } from '$lib/words/types';

/** What is wrong with a typed number. */
export function problemWords(
  problem: NumberProblem,
  { typed, limit, unit }: { typed: string; limit: string; unit: string },
): string {
  switch (problem) {
    case 'empty':
      return numberMessages.empty;
    case 'not-a-number':
      return numberMessages.notNumber(typed);
    case 'negative':
      return numberMessages.negative;
    case 'too-small':
      return numberMessages.tooSmall(limit);
    case 'too-large':
      return numberMessages.tooLarge(limit);
    case 'deeper-than-slab':
      return numberMessages.deeperThanSlab(limit);
    case 'which-comma':
      return `“${typed}” can be read two ways. Leave the comma out, or use a point for decimals.`;
    case 'other-unit':
      return `That unit does not measure this. Type the number in ${unit}.`;
  }
}

/** A limit, spoken in the unit of its question. */
export const spokenLimit = (unit: 'mm' | 'm' | 'm2', limit: number, say: Say): string =>
  unit === 'mm' ? say.length(limit) : unit === 'm' ? say.distance(limit) : say.area(limit);
