import type { CheckId } from '$lib/answers/readiness-record';
import { placed, type Drawing } from '$lib/drawing/mark';
import { rectangle } from '$lib/drawing/points';
import { unsound } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { hammer, ringing } from '$lib/drawing/motif/tools';
import { bare, bright, clock, cross, either, litter, pit, tick, type Ends } from './motif';

/** A pipette with a drop under it. */
const pipette = (x: number): Drawing => [
  ['form', `M${x - 4} 4H${x + 4}V16L${x + 1.5} 22H${x - 1.5}L${x - 4} 16z`],
  ['form', `M${x - 6}-6H${x + 6}V4H${x - 6}z`],
  ['form', dropPath([x, 34], 1.3)],
];
/** A strip of paper and the scale it is held to; the pointer stands at a field. */
const scale = (field: number): Drawing => [
  ['form', 'M20 12H100V28H20z'],
  ['tone', 'M40 12H60V28H40z'],
  ['hatch', 'M60 28l10-16M64 28l10-16M68 28l10-16M72 28l8-13M60 22l6-10'],
  ['solid', 'M80 12H100V28H80z'],
  ['ink', 'M20 12H100V28H20zM40 12V28M60 12V28M80 12V28'],
  ['form', `M${26 + field * 20} 34H${34 + field * 20}V64H${26 + field * 20}z`],
  [
    field > 2 ? 'solid' : 'tone',
    `M${26 + field * 20} 34H${34 + field * 20}V48H${26 + field * 20}z`,
  ],
  ['ink', `M${26 + field * 20} 34H${34 + field * 20}V64H${26 + field * 20}z`],
];
const chip = (x: number, y: number, height: number): Drawing => [
  [
    'form',
    `M${x} ${y + 14}V${y}l5 ${height} 5${-height} 5 ${height} 5${-height} 5 ${height} 5${-height}V${y + 14}z`,
  ],
];
const fill: Drawing = [
  ['tone', 'M26 46H94L84 60H36z'],
  ['ink', 'M26 46 36 60H84L94 46'],
];
const disc: Drawing = [['form', 'M44 38H76V45H44z']];

type Surface = Extract<
  CheckId,
  | 'sounding'
  | 'edges'
  | 'profile'
  | 'pull-off'
  | 'ph'
  | 'slurry-ph'
  | 'dust-tape'
  | 'water-drop'
  | 'absorption'
  | 'fill-cured'
  | 'open-time'
  | 'dew-point'
>;

/** Each check of the surface before it starts, and with its result; between them it is drawn at work. */
export const surfaceEnds: Readonly<Record<Surface, Ends>> = {
  sounding: () => [
    [...bare(61), ...placed(hammer, 58, 26)],
    either(
      [...bare(61), ...placed(ringing, 24, 42, 0, 0.7), ...placed(ringing, 36, 42, 180, 0.7)],
      [
        ...unsound(rectangle(74, 48, 110, 58), 4),
        ['crayon', 'M70 44H114V62H70z'],
        ['fine', 'M84 34q4-4 8 0M82 28q6-4 12 0'],
      ],
    ),
  ],
  edges: () => [
    [
      ...pit(30, 120, 16, 62),
      ['ink', 'M10 30C14 24 26 24 30 30C26 36 14 36 10 30z'],
      ['solid', 'M18 30a2.4 2.4 0 1 0 4.8 0a2.4 2.4 0 1 0-4.8 0z'],
    ],
    either(
      [
        ['air', 'M0 0H120V72H0z'],
        ['body', 'M0 34H26V60H60V72H0z'],
        ['heavy', 'M0 34H26V60H58'],
      ],
      [
        ['body', 'M62 34H78L104 58H120V72H62z'],
        ['heavy', 'M62 34H76L104 60H120'],
      ],
    ),
  ],
  profile: () => [
    [...bare(64), ...chip(14, 14, 1), ...chip(46, 14, 4), ...chip(78, 14, 8)],
    [...pit(-4, 124, 2, 64, 5), ...chip(44, 22, 5), ...tick(60, 12)],
  ],
  'pull-off': () => [
    [
      ...bare(66),
      ['air', 'M40 45H44V60H40zM76 45H80V60H76z'],
      ['ink', 'M40 46V60H44V46M76 46V60H80V46'],
      ['form', 'M54-2H66V12H54zM40 12H80V20H40zM40 20H44V54H40zM76 20H80V54H76z'],
      ['ink', 'M74 6A12 4 0 0 1 92 6M88 2 92 6 87 8'],
    ],
    [
      ...bare(66),
      ['air', 'M40 45H80V60H40z'],
      ['ink', 'M40 46V60M80 46V60M40 60l8-2 8 3 8-3 8 3 8-1'],
      ...placed(
        [
          ...disc,
          ['body', 'M44 45H76V55l-8 2-8-3-8 3-8-2z'],
          ['ink', 'M44 45V55l8 2 8-3 8 3 8-2V45'],
        ],
        0,
        -32,
      ),
      ['ink', 'M60 44V30M55 35 60 29 65 35'],
      ['form', 'M90 8H116V28H90z'],
      ['heavy', 'M98 24 106 13'],
    ],
  ],
  ph: () => [
    [
      ...bare(67),
      ['tone', 'M10 46C22 41 98 41 110 46z'],
      ['form', dropPath([44, 32], 1.4) + dropPath([64, 26], 1.4) + dropPath([82, 32], 1.2)],
      ['ink', 'M60 6V16M52 12 50 18M68 12 70 18'],
    ],
    [['air', 'M0 0H120V72H0z'], ...scale(1), ...tick(82, 50)],
  ],
  'slurry-ph': () => [
    [
      ...bare(89),
      ['form', 'M58 10H98V45H58z'],
      ['heavy', 'M58 10V45H98V10'],
      ['tone', 'M4 42H40L58 26V34L44 46H4z'],
      ['ink', 'M4 42H40L58 26M58 34 44 46'],
      ['grain', 'M12 44h0M22 44h0M32 43h0M42 42h0M50 35h0M66 40h0M76 42h0M88 40h0'],
    ],
    [['air', 'M0 0H120V72H0z'], ...scale(3), ...cross(52, 50)],
  ],
  'dust-tape': () => [
    [
      ...bare(68),
      ...litter(10, 110, 30, 68, 2),
      ['form', 'M16 42H92V46H16z'],
      ['form', 'M50 42C46 30 50 20 58 12L74 20C70 30 70 38 66 42z'],
      ['fine', 'M52 38C54 32 60 32 62 38'],
    ],
    either(
      [
        ['air', 'M0 0H120V72H0z'],
        ['form', 'M12 26H50V58H12z'],
        ['grain', 'M24 40h0M38 34h0'],
      ],
      [
        ['form', 'M70 26H108V58H70z'],
        [
          'grain',
          'M74 30h0M80 34h0M86 30h0M92 36h0M98 31h0M104 36h0M76 40h0M83 43h0M90 41h0M97 44h0M103 42h0M75 48h0M82 51h0M88 49h0M94 53h0M101 50h0M79 55h0M91 55h0M105 54h0',
        ],
      ],
    ),
  ],
  'water-drop': () => [
    [...bare(69), ...pipette(60)],
    either(
      [...bare(69), ['form', 'M8 46C16 41 44 41 52 46z']],
      [['form', 'M82 46C76 40 80 31 90 31S104 40 98 46z']],
    ),
  ],
  absorption: () => [
    [...bare(70), ...pipette(34), ...clock(92, 24, 0, 15)],
    either(
      [
        ...bare(70),
        ['tone', 'M14 47C16 58 46 58 48 47z'],
        ['heavy', 'M0 46H58'],
        ...clock(40, 22, 1, 11),
      ],
      [['form', 'M70 46C76 39 104 39 110 46z'], ...clock(84, 20, 7, 11)],
    ),
  ],
  'fill-cured': () => [
    [
      ...bare(72),
      ...fill,
      ['form', dropPath([46, 43], 0.7) + dropPath([60, 43], 0.7) + dropPath([74, 43], 0.7)],
      ...clock(60, 20, 1, 14),
    ],
    either(
      [
        ...bare(72),
        ['tone', 'M8 46H54L48 58H14z'],
        ['ink', 'M8 46 14 58H48L54 46'],
        ...placed(ringing, 25, 42, 0, 0.6),
        ...placed(ringing, 37, 42, 180, 0.6),
      ],
      [
        ['tone', 'M66 46H112L106 58H72z'],
        ['ink', 'M66 46 72 58H106L112 46M74 48l8 5-3 4M94 48l-4 6 6 3'],
      ],
    ),
  ],
  'open-time': () => [
    [
      ...bare(71),
      ...litter(78, 116, 18, 71, 3),
      ['form', 'M36 46 40 38H68L72 46z'],
      ['form', 'M50 38 56 38 84 8 78 4z'],
      ...bright(18, 40),
      ...clock(104, 18, 0, 11),
    ],
    either(
      [...bare(71), ['tone', 'M0 36H58V46H0z'], ['ink', 'M0 36H58'], ...clock(40, 18, 9, 12)],
      [
        ...litter(62, 118, 30, 72, 3),
        ['form', 'M66 24c-4-6 2-10 6-8c2-5 10-5 11 1c5-1 7 6 2 7z'],
        ['ink', 'M70 29l-2 6M78 29l-2 6M85 29l-2 6'],
      ],
    ),
  ],
  'dew-point': () => [
    [
      ...bare(73),
      ['form', 'M26 4H34V24A8 8 0 1 1 26 24z'],
      ['solid', 'M26 30a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
      ['ink', 'M30 30V12M37 8h4M37 14h4M37 20h4'],
      ['form', 'M82 14H90V32A8 8 0 1 1 82 32z'],
      ['solid', 'M82 38a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
      ['ink', 'M86 38V22M93 18h4M93 24h4M93 30h4'],
    ],
    either(
      [
        ...bare(73),
        ['form', 'M26 12H34V32A8 8 0 1 1 26 32z'],
        ['solid', 'M26 38a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
        ['ink', 'M30 38V16'],
        ['dashed', 'M12 26H50'],
      ],
      [
        ['form', 'M84 12H92V32A8 8 0 1 1 84 32z'],
        ['solid', 'M84 38a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
        ['ink', 'M88 38V32'],
        ['dashed', 'M70 26H108'],
        ['form', dropPath([72, 44], 0.7) + dropPath([104, 44], 0.7) + dropPath([112, 45], 0.5)],
      ],
    ),
  ],
};
