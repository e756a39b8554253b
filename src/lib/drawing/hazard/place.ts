import type { Drawing } from '$lib/drawing/mark';
import { dropPath } from '$lib/drawing/motif/small';

/** A lead in the wet. */
export const electric = (): Drawing => [
  ['ink', 'M3 12C12 12 10 22 18 22'],
  ['form', 'M18 16H28V28H18z'],
  ['ink', 'M28 19H34M28 25H34'],
  ['solid', 'M42 6 33 22H39L35 36 46 17H40z'],
  ['form', dropPath([11, 36], 1) + dropPath([22, 40], 0.9)],
  ['ink', 'M3 44H45'],
];

/** A foot that goes from under somebody. */
export const slips = (): Drawing => [
  ['tone', 'M8 40H42L38 44H12z'],
  ['heavy', 'M3 44H45'],
  ['solid', 'M10 12a4.2 4.2 0 1 0 8.4 0a4.2 4.2 0 1 0-8.4 0z'],
  ['heavy', 'M16 18 23 29 38 26M23 29 34 36 40 31M18 20 28 17M18 21 9 27'],
  ['ink', 'M5 36l5-4M9 39l4-3M42 20l3-4M38 18l2-4'],
];

/** A bent back over a load. */
export const lifting = (): Drawing => [
  ['heavy', 'M3 44H45'],
  ['form', 'M29 32H43V43H29z'],
  ['solid', 'M29 11a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
  ['heavy', 'M29 17C20 14 12 18 12 27L18 35 14 43M29 17 34 32'],
  ['ink', 'M8 12l3 3M14 7l1 4M5 19l4 1'],
];

/** Something that carries gives way. */
export const structure = (): Drawing => [
  ['form', 'M3 14H21L19 19 22 23H3zM45 14H27L25 18 28 23H45z'],
  ['ink', 'M24 3V10M20.5 7 24 10.5 27.5 7'],
  ['form', 'M5 23H11V44H5zM37 23H43V44H37z'],
  ['heavy', 'M3 44H45'],
  ['form', 'M18 29l5-3 4 3-2 5-6 0zM25 37l4-1 3 3-3 4-5-1z'],
];

/** Pieces that come down on a head. */
export const overhead = (): Drawing => [
  ['form', 'M3 3H45V11L38 13 33 10 27 13 20 10 12 12 3 11z'],
  ['form', 'M20 17l5-2 4 3-2 5-6 0zM33 21l4-2 3 3-3 4-4-1z'],
  ['ink', 'M19 14v-2M37 17v-3M29 15v-3'],
  ['form', 'M13 37C13 28 31 28 31 37z'],
  ['heavy', 'M9 37H35'],
  ['form', 'M15 37.5V40C15 46 29 46 29 40V37.5z'],
];

/** Somebody going over an edge that has no rail. */
export const falls = (): Drawing => [
  ['form', 'M3 18H24V45H3z'],
  ['heavy', 'M3 18H24V45'],
  ['dashed', 'M5 18V6M21 18V6M5 8H21'],
  ['solid', 'M30 16a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
  ['heavy', 'M34 20 36 31 29 38M36 31 44 35M34 23 43 17M34 23 27 27'],
  ['ink', 'M40 8l2-4M45 10l2-3M29 10l-2-3'],
];

/** Frost on the wet, heat on the worker. */
export const weather = (): Drawing => [
  ['form', 'M20 8a4 4 0 0 1 8 0V29a8 8 0 1 1-8 0z'],
  ['solid', 'M19 35.5a5 5 0 1 0 10 0a5 5 0 1 0-10 0z'],
  ['solid', 'M22.6 18H25.4V34H22.6z'],
  ['ink', 'M10 8V26M2.2 12.5 17.8 21.5M2.2 21.5 17.8 12.5'],
  [
    'ink',
    'M34 17a5 5 0 1 0 10 0a5 5 0 1 0-10 0zM39 8V5M39 26v3M32 12l-2-2M46 12l1-1M32 22l-2 2M46 22l1 1',
  ],
];
