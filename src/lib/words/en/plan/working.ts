import type { Amount, Ground, Term } from '$lib/plan/amount';
import type { Say } from '$lib/words/types';
import { amountWords, spanWords } from './amounts';
import { quantityWords as words } from './figures';
import { termNames } from './quantities';
import { triedWords } from '$words/trial/tried';

const mmPerMetre = 1000;
/** A factor is said closer than what comes out, so that it multiplies to it. */
const termDigits = 3;
const depths: readonly Term['what'][] = [
  'depth',
  'depth-into-sound',
  'hollow-depth',
  'drawn-depth',
];

/** The value of one factor. Depths are kept in m for the arithmetic, and spoken as the lengths they are. */
export function termValue({ what, span, unit }: Term, say: Say): string {
  if (depths.includes(what)) return say.lengths(span[0] * mmPerMetre, span[1] * mmPerMetre);
  if (unit === 'ratio') {
    return say.ends(say.number(span[0]), say.number(span[1]));
  }
  return spanWords(span, unit, say, span[1], termDigits);
}

/** "× 40 mm (depth of the damage)" */
export const termWords = (term: Term, place: number, say: Say): string => {
  const sign = place === 0 ? '' : `${term.by === 'over' ? words.over : words.times} `;
  const named = termNames[term.what];
  const tried = term.what === 'passes' ? `${named}, ${triedWords.ownFigure}` : triedWords.ownFigure;
  const name = term.fromPatch ? tried : named;
  return `${sign}${termValue(term, say)} (${name})`;
};

/** "60 m² × 5 to 20 L/m² + 31 m × 5 to 20 L/m = ..."; empty where a part cannot be told. */
function addedLine(parts: readonly Amount[], result: string, say: Say): string {
  const lines = parts.map((part) => workingLine(part, say).split(` ${words.gives} `)[0] ?? '');
  return lines.every(Boolean) ? `${lines.join(' + ')} ${words.gives} ${result}` : '';
}

/** The two formulas of ground that is told by its hollow area alone: one square, and many spots. */
function groundLine(
  { of, area, past, inSpots, spots, side, times }: Ground,
  result: string,
  say: Say,
): string {
  const closer = (m2: number) => spanWords([m2, m2], 'm2', say, m2, termDigits);
  const grown = (what: string, mm: number) => `(${what} + 2 × ${say.length(mm)})`;
  const square = (m2: number, mm: number) => {
    const across = grown(`√${closer(m2)}`, mm);
    return of === 'area' ? `${across}²` : `4 × ${across}`;
  };
  const inAll =
    of === 'area'
      ? `${closer(inSpots)} × ${say.number(times)}`
      : `${say.number(spots)} × 4 × ${grown(say.length(side * mmPerMetre), past[1])}`;
  const rest = area > inSpots ? ` + ${square(area - inSpots, past[1])}` : '';
  const ends = say.ends(
    `${square(area, past[0])} (${words.ground.square})`,
    `${inAll}${rest} (${words.ground.spots})`,
  );
  return `${ends} ${words.gives} ${result}`;
}

/** The whole working in one line; empty where there is none of its own. */
export function workingLine(amount: Amount, say: Say): string {
  if (!('working' in amount)) return '';
  if (amount.ground) return groundLine(amount.ground, amountWords(amount, say) ?? '', say);
  if (amount.added) return addedLine(amount.added, amountWords(amount, say) ?? '', say);
  if (amount.working.length < 2) return '';
  // What only turns one unit into another is no number to multiply by: the units stand there.
  const told = amount.working.filter(({ what }) => what !== 'unit');
  const terms = told.map((term, place) => termWords(term, place, say));
  if (terms.length < 2) return '';
  return `${terms.join(' ')} ${words.gives} ${amountWords(amount, say)}`;
}
