import type { Place } from '$lib/answers/survey';
import type { Ring } from '$lib/survey/geometry';
import { outlineOf } from '$lib/survey/outline';
import { rectangle } from './drawings';

/** A slab of 6 m by 8 m, its outline, and a joint across the middle; mm. */
export const slab = { length: 6000, width: 8000 };
export const ring = outlineOf(slab);
export const across: Place[] = [
  [3000, 0],
  [3000, 8000],
];

/** Rings that are reckoned in the head: 100, 400 and 200 units of area. */
export const square = rectangle(0, 0, 10, 10);
export const angle: Ring = [
  [0, 0],
  [30, 0],
  [30, 10],
  [10, 10],
  [10, 20],
  [0, 20],
];
export const diamond: Ring = [
  [10, 0],
  [20, 10],
  [10, 20],
  [0, 10],
];
