import type { MethodId, StepId } from '$shared/methods';
import { placed, type Drawing } from '$lib/drawing/mark';
import { rectangle } from '$lib/drawing/points';
import { barEnd } from '$lib/drawing/motif/bar';
import { air, unsound } from '$lib/drawing/motif/concrete';
import { standing } from '$lib/drawing/motif/people';
import { dropPath } from '$lib/drawing/motif/small';
import { hammer, ringing } from '$lib/drawing/motif/tools';
import { bare, bright, pit, tick, type Ends } from './motif';
import type { afterEnds } from './steps-after';

const cable: Drawing = [['dashed', 'M0 58C30 54 60 62 120 57']];
const slab: Drawing = [
  ...air,
  ['body', 'M4 62 30 18H116L104 62z'],
  ['ink', 'M4 62 30 18H116L104 62z'],
];
const crackPath = 'M60 46l-4 7 3 6-4 7 1 6';
const crack: Drawing = [['ink', crackPath]];
const oil: Drawing = [
  [
    'dark',
    'M22 46C30 43 88 43 98 46C90 55 82 51 74 60C69 53 62 56 56 64C50 54 46 57 40 54C34 51 28 53 22 46z',
  ],
];
const tuft: Drawing = [
  ['tone', 'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0z'],
  [
    'ink',
    'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0M-4-10C-5-16-8-18-9-19M4-9C5-17 4-20 3-22',
  ],
];

type Before = Exclude<StepId, MethodId | keyof typeof afterEnds>;

/** Each step before the main one and beside it before it starts, and when it is done. */
export const beforeEnds: Readonly<Record<Before, Ends>> = {
  'make-safe': () => [
    [
      ...bare(41),
      ...cable,
      ...placed(standing, 60, 45, 0, 1.15),
      ['ink', 'M84 26C84 20 94 20 94 26C94 31 89 31 89 35'],
      ['solid', 'M87.6 40a1.4 1.4 0 1 0 2.8 0a1.4 1.4 0 1 0-2.8 0z'],
    ],
    [
      ...bare(41),
      ...cable,
      ['form', 'M6 22H114V30H6z'],
      [
        'solid',
        'M12 22H20L14 30H6zM32 22H40L34 30H26zM52 22H60L54 30H46zM72 22H80L74 30H66zM92 22H100L94 30H86z',
      ],
      ['ink', 'M14 30 10 46M14 30 20 46M104 30 98 46M104 30 110 46'],
      ['crayon', 'M40 58l10 8M50 58l-10 8M78 56l10 8M88 56l-10 8'],
    ],
  ],
  degrease: () => [
    [...bare(14), ...oil, ['form', dropPath([46, 42], 1.4) + dropPath([74, 42], 1.2)]],
    [...bare(14), ['form', 'M26 46C34 41.5 86 41.5 94 46z'], ...tick(60, 26)],
  ],
  'strip-growth': () => [
    [...bare(15), ...[22, 52, 80, 104].flatMap((x) => placed(tuft, x, 46))],
    [
      ...bare(15),
      ...bright(30, 40),
      ...bright(66, 40),
      ...placed(tuft, 102, 46, 0, 0.7),
      ...placed(tuft, 106, 38, 24, 0.6),
    ],
  ],
  'strip-coating': () => [
    [...bare(37), ['tone', 'M0 39H120V46H0z'], ['ink', 'M0 39H120']],
    [
      ...bare(37),
      ...bright(34, 40),
      ['tone', 'M88 46C84 36 96 30 104 36S112 46 108 46z'],
      ['ink', 'M88 46C84 36 96 30 104 36S112 46 108 46M92 44C92 38 98 36 102 40'],
    ],
  ],
  'sound-and-mark': () => [
    [...slab, ...placed(hammer, 56, 42, 0, 0.95), ...placed(ringing, 50, 38, 0, 0.8)],
    [
      ...slab,
      ...unsound(
        [
          [40, 52],
          [48, 32],
          [84, 30],
          [88, 50],
          [70, 56],
        ],
        5,
      ),
      ['crayon', 'M30 58 42 26H94L90 58z'],
    ],
  ],
  'tap-crack': () => [
    [...bare(38), ...crack, ...placed(hammer, 44, 30)],
    [
      ...bare(38),
      ...unsound(
        [
          [61, 46],
          [84, 46],
          [76, 54],
          [58, 59],
        ],
        4,
      ),
      ...crack,
      ['heavy', 'M0 46H120'],
      ['crayon', 'M38 46V54M86 46V54'],
    ],
  ],
  'saw-cut': () => [
    [
      ...bare(32),
      ...unsound(
        [
          [64, 46],
          [120, 46],
          [120, 60],
          [70, 62],
        ],
        4,
      ),
      ['heavy', 'M0 46H120'],
      ['crayon', 'M56 42V50'],
    ],
    [
      ...bare(32),
      ...unsound(
        [
          [64, 46],
          [120, 46],
          [120, 60],
          [70, 62],
        ],
        4,
      ),
      ['heavy', 'M0 46H120'],
      ['air', 'M54 45H58V61H54z'],
      ['heavy', 'M54 46V61H58V46'],
    ],
  ],
  'chase-crack': () => [
    [
      ...bare(33),
      ...unsound(
        [
          [40, 46],
          [80, 46],
          [58, 60],
        ],
        4,
      ),
      ...crack,
      ['heavy', 'M0 46H120'],
    ],
    [...pit(36, 84, 12, 33), ['ink', 'M58 58l-3 4 4 4-3 6'], ...tick(60, 30)],
  ],
  'route-crack': () => [
    [...bare(34), ...crack],
    [...pit(51, 67, 13, 34, 0.6), ['ink', 'M59 59l-3 4 4 4-2 5']],
  ],
  'free-bar': () => [
    [
      ...pit(24, 96, 2, 35),
      ...unsound(rectangle(30, 49, 90, 58), 4),
      ...barEnd([60, 57], 7),
      ['crayon', 'M24 48 34 70H86L96 48'],
    ],
    [
      ...pit(24, 96, 22, 35),
      ...barEnd([60, 55], 7),
      ['ink', 'M60 63V67M40 55H50M45 52 40 55 45 58M80 55H70M75 52 80 55 75 58'],
    ],
  ],
};
