import type { StepId } from '$shared/methods';
import { placed, type Drawing } from '$lib/drawing/mark';
import { roughLine } from '$lib/drawing/lines';
import { pathOf, rectangle } from '$lib/drawing/points';
import { readyPail } from '$lib/drawing/method/cover';
import { barAlong } from '$lib/drawing/motif/bar';
import { air, unsound } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { hammer, ringing } from '$lib/drawing/motif/tools';
import { rust } from './inside';
import { bare, bright, clock, litter, pit, tick, type Ends } from './motif';

const fill: Drawing = [
  ['tone', 'M22 46 28 60 70 62 76 46z'],
  ['ink', 'M22 46 28 60 70 62 76 46'],
];
const rough = roughLine([0, 52], [120, 52], 8, 7, 44);
const list = (done: boolean): Drawing => [
  ['form', 'M34 4H86V68H34z'],
  ['form', 'M50 1H70V8H50z'],
  ['ink', 'M42 16H50V24H42zM42 34H50V42H42zM42 52H50V60H42z'],
  ['fine', 'M56 20H80M56 38H80M56 56H80'],
  ...(done ? ([['heavy', 'M41 19l4 5 8-11M41 37l4 5 8-11M41 55l4 5 8-11']] as const) : []),
];
const sun: Drawing = [
  ['form', 'M84 20a9 9 0 1 0 18 0a9 9 0 1 0-18 0z'],
  ['ink', 'M93 7V3M93 33v4M80 20h-4M106 20h4M84 11l-3-3M102 11l3-3M84 29l-3 3M102 29l3 3'],
];
const sheetOver: Drawing = [
  [
    'form',
    'M10 46C14 34 20 33 28 33H92C100 33 106 34 110 46H104C102 40 98 38 92 38H28C22 38 18 40 16 46z',
  ],
];
const layer = (to: number): Drawing => [
  ['tone', `M0 34H${to}V46H0z`],
  ['ink', `M0 34H${to}V46`],
];
type After = Extract<
  StepId,
  | 're-sound'
  | 'edge-work'
  | 'blast-clean'
  | 'clean-bar'
  | 'vacuum'
  | 'final-wash'
  | 'fill-level'
  | 'check-ready'
  | 'wet-or-dry'
  | 'fill-cure'
  | 'moisture-test'
  | 'last-clean'
  | 'cover'
  | 'cure'
>;

/** Each step after the main one before it starts, and when it is done. */
export const afterEnds: Readonly<Record<After, Ends>> = {
  're-sound': () => [
    [...pit(22, 98, 12, 42), ...litter(30, 90, 10, 42, 2)],
    [
      ...pit(22, 98, 12, 42),
      ...placed(ringing, 46, 54, 0, 0.7),
      ...placed(ringing, 74, 54, 180, 0.7),
      ...tick(60, 30),
    ],
  ],
  'edge-work': () => [
    [
      ...pit(0, 66, 3.5, 22, 0.8),
      ...unsound(rectangle(66, 46, 92, 50), 4),
      ['body', 'M92 0H120V54H92z'],
      ['heavy', 'M92 0V46H66'],
      ['stone', 'M100 10l6-3 6 4-2 7-8-1zM104 30l5-2 4 4-4 5-5-3z'],
      ['crayon', 'M66 50H92'],
    ],
    [
      ...pit(-4, 92, 3.5, 22, 0.8),
      ['body', 'M92 0H120V54H92z'],
      ['heavy', 'M92 0V50'],
      ['stone', 'M100 10l6-3 6 4-2 7-8-1zM104 30l5-2 4 4-4 5-5-3z'],
    ],
  ],
  'blast-clean': () => [
    [
      ...pit(14, 106, 12, 26, 3),
      ...unsound(rectangle(15, 59, 105, 65), 4),
      ['fine', 'M30 58l3 5M48 59l-2 5M66 58l3 6M84 59l-2 5'],
      ['crayon', 'M15 66H105'],
    ],
    [...pit(14, 106, 18, 26, 3.4), ...bright(40, 54), ...bright(80, 54)],
  ],
  'clean-bar': () => [
    [...pit(8, 112, 20, 36), ...barAlong(8, 112, 52, 4.5), ...rust(10, 110, 52, 36)],
    [...pit(8, 112, 20, 36), ...barAlong(8, 112, 52, 4.5), ...bright(40, 45), ...bright(80, 45)],
  ],
  vacuum: () => [
    [...bare(43), ...litter(4, 116, 120, 43, 9)],
    [...bare(43), ...bright(30, 40), ...bright(60, 40), ...bright(90, 40)],
  ],
  'final-wash': () => [
    [...bare(13), ['tone', 'M0 46C20 41 40 44 60 41S100 44 120 42V46z'], ...litter(0, 120, 60, 13)],
    [
      ...bare(13),
      ['tone', 'M0 47H120V56C90 60 60 54 30 58L0 56z'],
      ['heavy', 'M0 46H120'],
      ...bright(60, 38),
    ],
  ],
  'fill-level': () => [
    [
      ...air,
      ['body', `${pathOf([...rough, [120, 72], [0, 72]], true)}`],
      ['stone', 'M20 64l5-4 6 3-2 5-7 0zM60 66l5-4 5 3-2 5-6 0zM96 64l5-3 5 3-3 5z'],
      ['heavy', pathOf(rough)],
    ],
    [
      ...air,
      ['body', `${pathOf([...rough, [120, 72], [0, 72]], true)}`],
      ['tone', pathOf([[0, 43], [120, 43], ...[...rough].reverse()], true)],
      ['stone', 'M20 64l5-4 6 3-2 5-7 0zM60 66l5-4 5 3-2 5-6 0zM96 64l5-3 5 3-3 5z'],
      ['ink', pathOf(rough)],
      ['heavy', 'M0 43H120'],
    ],
  ],
  'check-ready': () => [
    [...air, ...list(false)],
    [...air, ...list(true)],
  ],
  'wet-or-dry': () => [
    [
      ...bare(16),
      ['form', dropPath([24, 26], 1.4) + dropPath([40, 20], 1.4)],
      ['ink', 'M60 8V40'],
      ...sun,
    ],
    [
      ...bare(16),
      ['tone', 'M0 47H58V60C40 64 20 56 0 60z'],
      ['heavy', 'M0 46H120'],
      ['ink', 'M60 8V68'],
      ...tick(30, 28),
      ...tick(90, 28),
    ],
  ],
  'fill-cure': () => [
    [
      ...bare(175),
      ...fill,
      ['form', dropPath([36, 44], 0.7) + dropPath([50, 44], 0.7) + dropPath([64, 44], 0.7)],
      ...clock(98, 22, 1),
    ],
    [
      ...bare(175),
      ...fill,
      ['heavy', 'M0 46H120'],
      ...placed(ringing, 40, 40, 0, 0.7),
      ...placed(ringing, 58, 40, 180, 0.7),
      ...placed(hammer, 49, 44.5, 0, 0.9),
      ...tick(102, 22),
    ],
  ],
  'moisture-test': () => [
    [
      ...bare(171),
      ['air', 'M36 46H44V62H36z'],
      ['ink', 'M36 46V62H44V46'],
      ['form', 'M37 60V24H43V60L40 63z'],
      ['fine', 'M37 54l6-4M37 47l6-4M37 40l6-4M37 33l6-4'],
      ['form', 'M32 24V10H48V24zM48 12H62V20H48z'],
    ],
    [
      ...bare(171),
      ['air', 'M36 46H44V62H36z'],
      ['ink', 'M36 46V62H44V46'],
      ['form', 'M33 30H47V46H33z'],
      ['ink', 'M40 30C40 16 56 12 66 16'],
      ['form', 'M66 6H108V32H66z'],
      ['heavy', 'M74 26 84 12'],
      ['ink', 'M72 26A15 15 0 0 1 102 26'],
      ...tick(94, 22),
    ],
  ],
  'last-clean': () => [
    [...bare(172), ...litter(4, 88, 60, 172, 2.5), ...readyPail],
    [
      ...bare(172),
      ['tone', 'M84 46V39.5L66 40.5C58 41.5 54 44 52 46z'],
      ['ink', 'M84 39.5 66 40.5C58 41.5 54 44 52 46'],
      ['form', 'M50 41 78 32.5 79.2 35.6 51.4 44.2z'],
      ['form', 'M60 27 78 21.6 79.4 26 61.4 31.4z'],
      ['ink', 'M68 33 67 29'],
      ...bright(16, 40),
      ...bright(40, 40),
      ...readyPail,
      ...clock(22, 17, 1, 10),
    ],
  ],
  cover: () => [
    [
      ...bare(173),
      ['tone', 'M0 47H120V56H0z'],
      ['heavy', 'M0 46H120'],
      ['form', 'M74 30 112 25.5 112.6 29 74.4 33.4z'],
      ['form', 'M84 16 106 13.6 106.6 18.4 84.6 20.8z'],
      ['ink', 'M96 27 95 20'],
    ],
    [...bare(173), ...layer(120), ['heavy', 'M0 34H120']],
  ],
  cure: () => [
    [
      ...bare(174),
      ...layer(120),
      ['form', dropPath([30, 26], 1.2) + dropPath([60, 22], 1.2) + dropPath([90, 26], 1.2)],
    ],
    [
      ...bare(174),
      ...layer(120),
      ['heavy', 'M0 34H120'],
      ...sheetOver.map(([ink]): Drawing[number] => [
        ink,
        'M92 34C84 28 92 22 100 26S110 34 104 34z',
      ]),
      ...tick(50, 20),
    ],
  ],
};
