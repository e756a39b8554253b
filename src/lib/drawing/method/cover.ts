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

/** The mixed pail with its trowel, ready beside the zone: what tells the last cleaning from all others. */
export const readyPail: Drawing = [
  ['form', 'M91 27H117L114 46H94z'],
  ['tone', 'M92 31H116L115.6 34.4H92.4z'],
  ['ink', 'M91 27C93 14 115 14 117 27'],
  ['form', 'M95 27 106 9 109 11 101 27z'],
];
/** The last dust is taken up, the pail beside it: what it is covered with waits for nothing else. */
export const lastClean = (): Drawing => [
  ...soundFace(172),
  ...readyPail,
  ['form', 'M34 46 38 39.5H62L66 46z'],
  ['fine', 'M42 39.5V46M48 39.5V46M54 39.5V46M60 39.5V46'],
  ['form', 'M46.6 39.5H52.6L72 11 66.4 7.6z'],
  ['heavy', 'M69 9C76 0 82 6 88 2'],
  ['grain', 'M6 45h0M10 44h0M14 45h0M19 44.6h0M23 45h0M27 44h0M30 45h0'],
  ['ink', 'M10 35H28M23.5 31.5 28.5 35 23.5 38.5'],
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
