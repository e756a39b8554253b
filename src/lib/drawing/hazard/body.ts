import type { Drawing } from '$lib/drawing/mark';

/** Dust in the lungs. */
export const breath = (): Drawing => [
  ['ink', 'M24 6V20M24 20L19 25M24 20l5 5'],
  ['form', 'M19 23C19 17 15 14 12 18C7 26 6 36 8 41C12 43 18 40 19 36z'],
  ['form', 'M29 23C29 17 33 14 36 18C41 26 42 36 40 41C36 43 30 40 29 36z'],
  [
    'grain',
    'M13 26h0M11 33h0M15 35h0M11 38h0M15.5 30h0M35 26h0M37 33h0M33 35h0M37 38h0M32.5 30h0M20 8h0M28 5h0M29 11h0M18 13h0M33 9h0M15 7h0',
  ],
];

/** Blows against the ear. */
export const ears = (): Drawing => [
  ['ink', 'M20 22C18 8 40 6 41 19C42 27 35 28 34 34C33 43 23 44 22 36'],
  ['ink', 'M25 22C25 14 36 14 35.5 21C35 26 29 25 29 31'],
  ['heavy', 'M14 10 4 6M13 18 2 17M13 26 2 29M15 33 6 40'],
];

/** A hand on a grip that shakes. */
export const hands = (): Drawing => [
  ['form', 'M6 22H42V30H6z'],
  [
    'form',
    'M14 19C14 14 20 14 20 18C20 14 26 14 26 18C26 14 32 14 32 18C32 15 37 15 37 20V34C37 40 32 42 25 42H20C15 42 13 38 13 34z',
  ],
  ['fine', 'M20 18V30M26 18V30M32 18V30'],
  ['ink', 'M12 10l4-4 4 4 4-4 4 4 4-4 4 4'],
  ['ink', 'M3 16l-2 3 3 3-3 3 3 3-3 3 2 3M45 16l2 3-3 3 3 3-3 3 3 3-2 3'],
];

/** Pieces flying at an eye. */
export const eyes = (): Drawing => [
  ['form', 'M14 28C20 17 38 17 45 28C38 39 20 39 14 28z'],
  ['solid', 'M24 28a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0-11 0z'],
  ['form', 'M4 9l6-3 4 4-3 5-6 0zM18 5l4-2 3 3-3 4-4-1zM2 24l4-2 3 3-3 3-4 0z'],
  ['ink', 'M13 14l6 5M24 10l3 6M9 25l4 1'],
];
