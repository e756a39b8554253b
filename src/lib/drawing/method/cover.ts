import type { Drawing } from '$lib/drawing/mark';
import { dropPath } from '$lib/drawing/motif/small';
import { soundFace } from '$lib/drawing/motif/work';

/** A probe in its sleeve, and the clock it is given. */
export const moistureTest = (): Drawing => [
  ...soundFace(171),
  ['air', 'M36 46H44V62H36z'],
  ['ink', 'M36 46V62H44V46'],
  ['form', 'M33 26H47V46H33z'],
  ['fine', 'M36 31H44M36 35H44'],
  ['form', 'M74 26a14 14 0 1 0 28 0a14 14 0 1 0-28 0z'],
  ['ink', 'M88 16V26L96 31'],
  ['form', dropPath([40, 54], 1)],
];

/** A strip of tape peeled from the surface, clean. */
export const lastClean = (): Drawing => [
  ...soundFace(172),
  ['form', 'M18 44H62C76 44 82 36 86 24L92 26C88 40 80 47.5 62 47.5H18z'],
  ['fine', 'M30 44v3.5M44 44v3.5M58 44v3.5'],
  ['ink', 'M96 14l6-6M100 20h8M90 12V4'],
];

/** Fresh mortar spread from one side, a thermometer on what is still bare. */
export const cover = (): Drawing => [
  ...soundFace(173),
  ['tone', 'M0 34H50L62 46H0z'],
  ['ink', 'M0 34H50L62 46'],
  ['form', 'M46 32 66 44 68 41 50 29z'],
  ['form', 'M54 33 72 18 75 21 58 36z'],
  ['form', 'M94 12a4 4 0 0 1 8 0V34a7 7 0 1 1-8 0z'],
  ['solid', 'M94.5 39a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0zM97 24h2v14h-2z'],
];

/** Wet cloth and a sheet over the repair, weighted at its edges. */
export const cure = (): Drawing => [
  ...soundFace(174),
  ['tone', 'M22 38H98V46H22z'],
  ['ink', 'M22 46V38H98V46'],
  [
    'form',
    'M10 46C14 34 20 33 28 33H92C100 33 106 34 110 46H104C102 40 98 38 92 38H28C22 38 18 40 16 46z',
  ],
  ['form', 'M8 38H18V46H8zM102 38H112V46H102z'],
  ['form', dropPath([46, 22], 1.4) + dropPath([60, 17], 1.4) + dropPath([74, 22], 1.4)],
];
