import { fromUs, type UnitSystem } from '$lib/answers/units';
import { placed, type Drawing } from '$lib/drawing/mark';

/** Strokes of a hand that letters a drawing, each in a box 4 wide and 6 high. */
const strokes: Readonly<Record<string, string>> = {
  '0': 'M2 0C4 0 4 6 2 6S0 0 2 0',
  '1': 'M.8 1.4 2.4 0V6',
  '2': 'M.2 1.4C.8-.6 4-.4 3.6 1.8 3.4 3 1 4.6.2 6H4',
  '3': 'M.4.6C2-.6 4 .4 3.6 1.6 3.4 2.6 2.4 2.8 1.6 2.8 3 2.8 4 3.6 3.8 4.6 3.4 6.4 1 6.2.2 5.2',
  '4': 'M3 6V0L0 4.2H4',
  '5': 'M3.6 0H.8L.4 2.6C2 1.8 4 2.6 3.8 4.2 3.6 6.2 1.2 6.4.2 5.4',
  '6': 'M3.4.4C1 .6 0 3 .2 4.6.6 6.6 3.6 6.4 3.8 4.4 3.8 2.4 1 2.4.3 4',
  '7': 'M.2 0H3.8L1.6 6',
  '8': 'M2 2.8C0 2.6 0 0 2 0S4 2.6 2 2.8 0 6 2 6 4 3 2 2.8',
  '9': 'M3.6 2C3 3.6.4 3.6.3 1.8.4-.4 3.6-.6 3.7 1.6 3.8 3.8 2.6 5.4.8 6',
  '.': 'M1 5.9h0',
  '/': 'M.2 6.6 3.8-.6',
  m: 'M0 6V2.2M0 3.2C.8 1.8 2 2 2 3.2V6M2 3.2C2.8 1.8 4 2 4 3.2V6',
  i: 'M1.4 2.4V6M1.4.6h0',
  n: 'M.2 6V2.2M.2 3.4C1 1.8 3.6 1.6 3.6 3.4V6',
};
/** How far one letter is from the next. */
const pitch = 5.4;

/** A width as it is lettered: one digit that counts, in the reader's units. */
function spoken(mm: number, units: UnitSystem): string {
  const value = units === 'us' ? mm / fromUs('mm', 1) : mm;
  const places = Math.max(0, -Math.floor(Math.log10(value)));
  return `${value.toFixed(places)} ${units === 'us' ? 'in' : 'mm'}`;
}

/** How wide something is, lettered from a place to the right. */
export const lettered = (mm: number, units: UnitSystem, left: number, top: number): Drawing =>
  [...spoken(mm, units)].flatMap((letter, index) => {
    const path = strokes[letter];
    return path ? placed([['ink', path]], left + index * pitch, top) : [];
  });
