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
  ['form', 'M38 32 76 27.5 76.6 31 38.4 35.4z'],
  ['ink', 'M60 29.5 59 22H66'],
  ['form', 'M62 18 84 15.6 84.6 20.4 62.6 22.8z'],
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

/** A filled hollow under a sheet, and the clock it is given before anything goes over it. */
export const fillCure = (): Drawing => [
  ...soundFace(175),
  ['tone', 'M22 46 28 60 70 62 76 46z'],
  ['ink', 'M22 46 28 60 70 62 76 46'],
  ['fine', 'M34 50h5M46 54h5M58 50h5M38 57h5M60 57h5'],
  [
    'form',
    'M12 46C13 41 16 40.5 20 40.5H78C82 40.5 85 41 86 46H82C81 44 80 43.5 78 43.5H20C18 43.5 17 44 16 46z',
  ],
  ['form', 'M86 20a13 13 0 1 0 26 0a13 13 0 1 0-26 0z'],
  ['ink', 'M99 11V20L106 24'],
  ['form', dropPath([36, 28], 1.2) + dropPath([50, 24], 1.2) + dropPath([64, 28], 1.2)],
];
