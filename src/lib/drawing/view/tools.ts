import type { Drawing } from '$lib/drawing/mark';

/** A hand hammer from above, its striking face at the origin, handle to the upper right. */
export const hammerAbove: Drawing = [
  ['form', 'M-6 2 2 8 15-8 7-14z'],
  ['fine', 'M-3-2 5 4'],
  ['form', 'M10-11 13-7 50-33 46-38z'],
];

/** A scraper from above, its edge to the lower left of the origin, handle to the upper right. */
export const scraperAbove: Drawing = [
  ['form', 'M-9-6V8L12 5V-3z'],
  ['form', 'M12-3.5H40C44-3.5 44 5.5 40 5.5H12z'],
];
