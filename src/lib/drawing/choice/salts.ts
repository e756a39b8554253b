import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { pathOf, type Point } from '$lib/drawing/points';
import { evenSurface, section } from '$lib/drawing/motif/concrete';
import { flake, saltPath } from '$lib/drawing/motif/small';

const slab = (): Drawing => [...section(evenSurface(48), 41), ['heavy', pathOf(evenSurface(48))]];
const grains = (points: readonly Point[], size = 2.6): Drawing => [
  ['form', points.map((point) => saltPath(point, size)).join('')],
];

const none = (): Drawing => [
  ...slab(),
  ...grains(
    [
      [53, 23],
      [61, 29],
      [66, 19],
    ],
    3.4,
  ),
  ['heavy', 'M44 24a16 16 0 1 0 32 0a16 16 0 1 0-32 0zM48.7 35.3 71.3 12.7'],
];

const deIcing = (): Drawing => [
  ...slab(),
  ['form', 'M12 30a18 18 0 1 0 36 0a18 18 0 1 0-36 0z'],
  ['ink', 'M20 30a10 10 0 1 0 20 0a10 10 0 1 0-20 0z'],
  ['fine', 'M30 20V27M30 33v7M20 30h7M33 30h7M14.4 39l5-3M45.6 39l-5-3M14.4 21l5 3M45.6 21l-5 3'],
  ['solid', 'M28 30a2 2 0 1 0 4 0a2 2 0 1 0-4 0z'],
  ...grains([
    [58, 45],
    [66, 44.5],
    [75, 45],
    [84, 44.5],
    [94, 45],
    [104, 44.5],
    [113, 45],
    [70, 39],
    [89, 38],
    [100, 36],
  ]),
  ...placed(flake(7), 76, 18),
  ...placed(flake(5), 100, 13),
];

const seaOrPool = (): Drawing => [
  ...section(
    [
      [44, 20],
      [120, 20],
    ],
    43,
  ).map((mark): Drawing[number] => mark),
  ['air', 'M0 0H44V72H0z'],
  ['tone', 'M0 40C6 34 12 34 18 40S32 46 44 36V72H0z'],
  ['ink', 'M0 40C6 34 12 34 18 40S32 46 44 36'],
  ['fine', 'M0 50c6-5 12-5 18 0s14 5 26-3M0 60c6-5 12-5 18 0s14 5 26-3'],
  ['heavy', 'M44 72V20H120'],
  ['ink', 'M40 30l-5-8M36 33l-9-6M43 26l-2-9'],
  ...grains([
    [54, 17],
    [66, 16.5],
    [80, 17],
    [58, 9],
    [48, 8],
  ]),
];

/** Salts that reach it. */
export const salts: Record<Choice<'salts'>, () => Drawing> = {
  none,
  'de-icing': deIcing,
  'sea-or-pool': seaOrPool,
};
