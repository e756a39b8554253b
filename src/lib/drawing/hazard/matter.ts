import type { Drawing } from '$lib/drawing/mark';
import { dropPath } from '$lib/drawing/motif/small';

/** A jet through skin. */
export const waterInjection = (): Drawing => [
  ['form', 'M30 3 38 3 37 11 34 14 31 11z'],
  ['form', 'M3 30C3 26 8 24 14 24H45V36H14C8 36 3 34 3 30z'],
  ['fine', 'M6 30c2-1 4-1 6 0M45 28H40M45 32H41'],
  ['heavy', 'M34 15V44'],
  ['ink', 'M31 20l-3-3M37 20l3-3M30 42l-3 3M38 42l3 3'],
];

/** A liquid on bare skin. */
export const chemicals = (): Drawing => [
  ['form', 'M7 6H19V11L23 17V24H3V17L7 11z', 'rotate(-52 14 15) translate(4 8)'],
  ['form', dropPath([34, 24], 1)],
  ['form', 'M4 46V38C10 32 22 32 28 34L44 36C47 37 47 41 44 41L32 41 26 46z'],
  ['ink', 'M27 31c2-3 0-4 2-6M38 31c2-3 0-4 2-6M33 31v-4'],
];

/** Old skins lifting off, and fibres from them. */
export const leadAsbestos = (): Drawing => [
  ['form', 'M3 36H45V45H3z'],
  ['tone', 'M3 30H30L28 36H3z'],
  ['ink', 'M3 30H30L28 36M3 33H29'],
  ['form', 'M28 34C34 34 40 30 42 23L45 25C43 33 37 38 29 37z'],
  ['ink', 'M8 22l6-8M12 24l1-9M20 20l7-6M22 25l8-3M30 8l4-6M14 7l7-3M36 16l6-2M5 12l2-7M26 8l-3 5'],
];

/** Used water kept from the drain. */
export const washWater = (): Drawing => [
  ['tone', 'M3 24C8 19 13 19 18 24V32H3z'],
  ['ink', 'M3 24C8 19 13 19 18 24'],
  ['heavy', 'M3 32H24M44 32H46'],
  ['ink', 'M24 32V44M44 32V44M28 32V37M32 32V37M36 32V37M40 32V37M24 32H44'],
  ['form', 'M20 18H25V32H20z'],
  ['heavy', 'M29 13 41 25M41 13 29 25'],
  ['grain', 'M6 28h0M10 26h0M14 29h0'],
];
