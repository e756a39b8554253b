import { placed, type Drawing } from '$lib/drawing/mark';
import { air, unsound } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { standing } from '$lib/drawing/motif/people';
import { hammer, ringing } from '$lib/drawing/motif/tools';
import { soundFace } from '$lib/drawing/motif/work';

/** A barrier round the work, and what is hidden in the slab found and marked. */
export const makeSafe = (): Drawing => [
  ...soundFace(41),
  ['form', 'M10 22H76V31H10z'],
  ['solid', 'M16 22H24L18 31H10zM36 22H44L38 31H30zM56 22H64L58 31H50z'],
  ['ink', 'M18 31 14 46M18 31 24 46M68 31 62 46M68 31 74 46M16 22V16M70 22V16'],
  ['dashed', 'M0 58C30 54 60 62 120 57'],
  ...placed(standing, 98, 45, 0, 1.15),
];

/** Where it rings dull: marked round with the crayon. */
export const soundAndMark = (): Drawing => [
  ...air,
  ['body', 'M4 62 30 18H116L104 62z'],
  ['ink', 'M4 62 30 18H116L104 62z'],
  ...unsound(
    [
      [40, 52],
      [48, 32],
      [84, 30],
      [88, 50],
      [70, 56],
    ],
    5,
  ),
  ['crayon', 'M30 58 42 26H94L90 57z'],
  ...placed(hammer, 62, 40, 0, 0.95),
];

export const reSound = (): Drawing => [
  ...air,
  ...soundFace(42).slice(1),
  ['air', 'M22 40H98V58H22z'],
  ['body', 'M0 46H22V72H0zM98 46H120V72H98z'],
  ['heavy', 'M0 46H22V58l8 1 7-2 8 2 9-1 8 1 9-2 8 2 9-1 10 1V46H120'],
  ...placed(ringing, 50, 54, 0, 0.9),
  ...placed(ringing, 78, 54, 180, 0.9),
  ...placed(hammer, 64, 56.5),
];

/** Dust taken up with a nozzle, not swept. */
export const vacuum = (): Drawing => [
  ...soundFace(43),
  ['form', 'M36 46 40 38H70L74 46z'],
  ['form', 'M52 38 58 38 88 8 82 4z'],
  ['heavy', 'M86 6C98-4 108 8 120 4'],
  ['grain', 'M8 44h0M13 42h0M17 44h0M22 43h0M26 41h0M30 44h0M32 42h0M19 40h0M11 39h0M27 44.4h0'],
  ['ink', 'M10 34H30M25.5 30.5 30.5 34 25.5 37.5'],
  ['fine', 'M44 38v8M50 38v8M56 38v8M62 38v8M68 38v8'],
];

/** Repair mortar drawn level over what is too rough. */
export const fillLevel = (): Drawing => [
  ...soundFace(44).slice(0, 1),
  ...soundFace(44).slice(1, -1),
  ['air', 'M0 44H120V48H0z'],
  ['body', 'M0 52l8-3 7 4 9-4 8 5 9-5 8 4 9-4 9 5 9-5 8 4 9-4 9 4 9-4 9 3V60H0z'],
  ['tone', 'M0 44H72L66 52l-9-3-9 4-8-4-9 5-8-5-9 4-7-4-8 3z'],
  ['ink', 'M0 44H72'],
  ['heavy', 'M0 52l8-3 7 4 9-4 8 5 9-5 8 4 9-4 9 5 9-5 8 4 9-4 9 4 9-4 9 3'],
  ['form', 'M52 44 96 36 97 39.5 56 45z'],
  ['form', 'M70 40 74 26 78 25 78 38z'],
  ['form', 'M64 27 90 20 91 25 66 31z'],
];

/** The checks at the end: a drop that spreads, tape that comes up clean, the hammer's clear ring. */
export const checkReady = (): Drawing => [
  ...soundFace(45),
  ['form', dropPath([22, 28], 1.7)],
  ['ink', 'M10 45C14 40 30 40 34 45'],
  ['form', 'M46 45H64C70 45 72 36 70 30L75 29C78 40 74 47.5 66 47.5H46z'],
  ...placed(ringing, 92, 42, 0, 0.7),
  ...placed(hammer, 99, 44.5, -24, 0.7),
];
