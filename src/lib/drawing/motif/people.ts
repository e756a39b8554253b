import type { Drawing } from '$lib/drawing/mark';

/** Somebody standing, feet at the origin, about 24 units tall: gives the scale. */
export const standing: Drawing = [
  ['solid', 'M-2.9-21a2.9 2.9 0 1 0 5.8 0a2.9 2.9 0 1 0-5.8 0z'],
  ['ink', 'M0-17V-8.5L-3.2 0M0-8.5 3.2 0M-4.6-9 0-16 4.6-9'],
];

/** Somebody reaching up. */
export const reaching: Drawing = [
  ['solid', 'M-2.9-21a2.9 2.9 0 1 0 5.8 0a2.9 2.9 0 1 0-5.8 0z'],
  ['ink', 'M0-17V-8.5L-3.2 0M0-8.5 3.2 0M-4.6-9 0-16 6.5-25'],
];
