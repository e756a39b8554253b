import type { Drawing } from '$lib/drawing/mark';

/** An engine's exhaust under a roof, and somebody down. */
export const carbonMonoxide = (): Drawing => [
  ['heavy', 'M3 14 24 4 45 14M6 13V42M42 13V42M4 42H44'],
  ['form', 'M10 29H22V40H10z'],
  ['ink', 'M12 40v2M20 40v2M22 31h4'],
  ['fine', 'M10 33H22M14 29V40'],
  ['ink', 'M27 31c4 0 2-5 6-5s2-4 5-5M28 27c3-1 1-4 4-5s1-4 3-5'],
  ['solid', 'M25 37.6a3 3 0 1 0 6 0a3 3 0 1 0-6 0z'],
  ['heavy', 'M32 40H40M33.5 40 37 36.5'],
];
