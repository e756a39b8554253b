import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { rectangle } from '$lib/drawing/points';
import { air, concrete, earth } from '$lib/drawing/motif/concrete';
import { standing } from '$lib/drawing/motif/people';

const slab: Drawing = [
  ...air,
  ...concrete(rectangle(4, 54, 116, 64), 31, { radii: [3, 1.1], tries: 90 }),
  ...earth(2, 118, 64),
  ['ink', 'M2 64H118'],
  ['heavy', 'M3 54H117'],
];
const rain = (from: number, to: number): Drawing => {
  const strokes: string[] = [];
  for (let x = from; x < to; x += 9)
    strokes.push(`M${x} 24l-3 7M${x + 3} 36l-3 7M${x - 1} 45l-2 5`);
  return [['fine', strokes.join('')]];
};
const cloud = (x: number): Drawing => [
  ['form', `M${x} 19a7 7 0 0 1 2-13.6A10 10 0 0 1 ${x + 20} 5a7.2 7.2 0 0 1 7 14z`],
];

const indoors = (): Drawing => [
  ...slab,
  ['form', 'M12 54V24H108V54H102V29H18V54z'],
  ['ink', 'M6 26 60 4 114 26'],
  ['fine', 'M66 37H86V50M66 37V50H86M76 37V50M60 29V33M57 33h6l2 4h-10z'],
  ...placed(standing, 36, 53, 0, 0.95),
];

const sheltered = (): Drawing => [
  ...slab,
  ...rain(88, 118),
  ['form', 'M6 20 76 12 76 16 6 24.5z'],
  ['form', 'M14 24V54H18V23.5z'],
  ['ink', 'M66 17V54'],
  ...placed(standing, 40, 53, 0, 0.95),
];

const open = (): Drawing => [
  ...slab,
  ...rain(44, 84),
  ...cloud(46),
  [
    'ink',
    'M14 18a8 8 0 1 0 16 0a8 8 0 1 0-16 0zM22 5V1M22 31v4M9 18H5M35 18h4M12.8 8.8 10 6M31.2 27.2 34 30M12.8 27.2 10 30M31.2 8.8 34 6',
  ],
  ...placed(standing, 98, 53, 0, 0.95),
];

/** Where it lies: what weather reaches it. */
export const setting: Record<Choice<'setting'>, () => Drawing> = { indoors, sheltered, open };
