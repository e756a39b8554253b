import type { Drawing } from '$lib/drawing/mark';

/** A hand hammer, its striking face at the origin, handle to the upper right. */
export const hammer: Drawing = [
  ['form', 'M-4-1 4-1 4.6-8H8.5V-13H-5L-4.6-8z'],
  ['form', 'M8.5-12.3 34-16.6 34.6-13 8.5-8.8z'],
];

/** Sound waves round the origin, clear: evenly spaced whole arcs. */
export const ringing: Drawing = [
  ['fine', 'M-9-5A10 10 0 0 0-9 5M-14-8A16 16 0 0 0-14 8M-19-11A22 22 0 0 0-19 11'],
];

/** A scraper, its edge at the origin, handle to the upper right. */
export const scraper: Drawing = [
  ['form', 'M0 0 5-7 13-1.5 12-.2z'],
  ['form', 'M6.5-6 8.5-9 13.5-6.2 12-2.6z'],
  ['form', 'M10-8.2 30-22 33-18 13-5z'],
];

/** A stiff brush, bristle ends along y = 0 round the origin. */
export const brush: Drawing = [
  [
    'fine',
    'M-13-7-15 0M-9-7-10.5 0M-5-7-6 0M-1-7-1.5 0M3-7V0M7-7 7.5 0M11-7 12 0M-11-7-12.5 0M-7-7-8 0M-3-7-3.5 0M1-7 .8 0M5-7 5.2 0M9-7 9.8 0',
  ],
  ['form', 'M-15-12H13V-7H-15z'],
  ['form', 'M2-12C8-20 22-18 30-20L31-16C24-14 16-15 13-12z'],
];
