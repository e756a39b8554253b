import type { FieldUnit, NumberProblem } from '$lib/answers/parse-number';
import { numberInWords } from '$words/number-in-words';
import { numberMessages } from '$words/numbers';
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
    case 'two-ways':
      return numberMessages.twoWays(typed);
    case 'not-whole':
      return numberMessages.notWhole;
    case 'negative':
      return numberMessages.negative;
    case 'too-small':
      return numberMessages.tooSmall(limit);
    case 'too-large':
      return numberMessages.tooLarge(limit);
    case 'deeper-than-slab':
      return numberMessages.deeperThanSlab(limit);
    case 'other-unit':
      return numberMessages.otherUnit(unit);
  }
}

/** One of two readings, on its button. */
export const wayWords = ({ text, number }: { text: string; number: number }): string =>
  `${text} (${numberInWords(number)})`;

/** A limit, spoken in the unit of its field. */
export function spokenLimit(unit: Exclude<FieldUnit, 'plain'>, limit: number, say: Say): string {
  switch (unit) {
    case 'mm':
      return say.length(limit);
    case 'm':
      return say.distance(limit);
    case 'm2':
      return say.area(limit);
    case 'C':
      return say.temperature(limit);
    case 'MPa':
      return say.stress(limit);
    case 'kN':
      return say.number(limit);
  }
}
