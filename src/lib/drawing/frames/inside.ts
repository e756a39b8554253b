import type { CheckId } from '$lib/answers/readiness-record';
import { placed, type Drawing } from '$lib/drawing/mark';
import { circlePath, dotsPath, rectangle } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { barAlong, barEnd } from '$lib/drawing/motif/bar';
import { air, concrete } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { hammer } from '$lib/drawing/motif/tools';
import { bare, bright, either, tick, type Ends } from './motif';
import type { surfaceEnds } from './surface';

/** Rust along a bar. */
export const rust = (left: number, right: number, y: number, seed: number): Drawing => [
  ['grain', dotsPath(strewSand(rectangle(left, y - 6, right, y + 6), [], seed, 60))],
];
/** A meter with its needle at a share of its way. */
const meter = (x: number, y: number, share: number): Drawing => {
  const angle = Math.PI * (1 - share);
  return placed(
    [
      ['form', 'M-22-16H22V14H-22z'],
      ['ink', 'M-15 8A15 15 0 0 1 15 8'],
      [
        'heavy',
        `M0 8 ${(Math.cos(angle) * 12).toFixed(1)} ${(8 - Math.sin(angle) * 12).toFixed(1)}`,
      ],
    ],
    x,
    y,
  );
};
const drill = (x: number): Drawing =>
  placed(
    [
      ['form', 'M-2 62V30H2V62L0 65z'],
      ['fine', 'M-2 58l4-4M-2 52l4-4M-2 46l4-4M-2 40l4-4'],
      ['form', 'M-7 30V24H7V30zM-13 6H21V24H-13zM11 24H20V40H13z'],
    ],
    x,
    0,
  );
const plastic = (left: number, right: number): Drawing => [
  ['form', `M${left} 45C${left + 8} 36 ${right - 8} 36 ${right} 45z`],
];
const hole: Drawing = [
  ['air', 'M30 21H90V24H30z'],
  ['air', 'M30 22 36 62H84L90 22z'],
  ['heavy', 'M0 22H30L36 62H84L90 22H120'],
];
const block = (seed: number): Drawing => [...air, ...concrete(rectangle(0, 22, 120, 72), seed)];
/** A broken face: what has lost its alkali above, what still has it below, and the end of a bar. */
const guarded = (left: number, right: number, clear: number, seed: number): Drawing => [
  ...concrete(rectangle(left, 24, right, 72), seed, { tries: 50 }),
  ['tone', `M${left} ${clear}H${right}V72H${left}z`],
  ['heavy', `M${left} 24H${right}`],
  ['ink', `M${left} ${clear}H${right}`],
  ...barEnd([(left + right) / 2, 50], 6),
];

type Inside = Exclude<CheckId, keyof typeof surfaceEnds>;

/** Each check of what lies inside before it starts, and with its result. */
export const insideEnds: Readonly<Record<Inside, Ends>> = {
  'bars-free': () => [
    [...block(81), ...hole, ...barEnd([60, 40], 8)],
    either(
      [
        ...air,
        ['body', 'M0 22H14L18 66H44L48 22H60V72H0z'],
        ['heavy', 'M0 22H14L18 66H44L48 22H58'],
        ...barEnd([31, 42], 7),
        ['form', 'M27 50H35V65H27z'],
      ],
      [
        ['body', 'M62 22H72L76 50H104L108 22H120V72H62z'],
        ['heavy', 'M62 22H72L76 50H104L108 22H120'],
        ...barEnd([90, 43], 7),
      ],
    ),
  ],
  'bars-clean': () => [
    [
      ...air,
      ...concrete(rectangle(0, 58, 120, 72), 82),
      ['heavy', 'M0 24H10L14 58H106L110 24H120'],
      ...barAlong(12, 108, 44, 5),
      ...rust(14, 106, 44, 82),
    ],
    either(
      [
        ...air,
        ...concrete(rectangle(0, 60, 120, 72), 82),
        ...barAlong(2, 56, 44, 6),
        ...bright(28, 36),
      ],
      [...barAlong(64, 118, 44, 6), ...rust(66, 116, 44, 83)],
    ),
  ],
  chloride: () => [
    [...bare(83), ...drill(44)],
    [
      ...bare(83),
      ['form', 'M20 12H46V40H20z'],
      ['tone', 'M20 28C28 24 38 30 46 27V40H20z'],
      ['ink', 'M20 12H46V40H20zM18 14H48M54 26H68M63 21 69 26 63 31'],
      ['form', 'M84 6H96V18L108 40H72L84 18z'],
      ['tone', 'M79 28H101L106 39H74z'],
      ['ink', 'M82 6H98M84 6V18L72 40H108L96 18V6'],
    ],
  ],
  carbonation: () => [
    [
      ...air,
      ...concrete(rectangle(0, 22, 78, 72), 84),
      ['heavy', 'M0 22H78V72'],
      ['form', 'M86 58l8-4 8 5-4 8-10 0zM100 44l6-3 5 5-5 5z'],
      ...placed(hammer, 82, 40),
    ],
    either([...air, ...guarded(4, 54, 34, 84)], guarded(66, 116, 58, 85)),
  ],
  'half-cell': () => [
    [
      ...bare(85),
      ['air', 'M14 45H36V64H14z'],
      ['heavy', 'M14 46V60H36V46'],
      ...barAlong(0, 120, 60, 3),
      ['form', 'M20 50H30V58H20z'],
      ['ink', 'M25 50C25 30 60 40 62 24'],
      ...meter(70, 16, 0.5),
    ],
    either(
      [...bare(85), ...barAlong(0, 58, 60, 3), ...placed(meter(0, 0, 0.75), 36, 30, 0, 0.72)],
      [
        ...barAlong(62, 120, 60, 3),
        ...rust(66, 116, 60, 86),
        ...placed(meter(0, 0, 0.12), 84, 30, 0, 0.72),
      ],
    ),
  ],
  'plastic-sheet': () => [
    [
      ...bare(86),
      ...plastic(16, 104),
      ['tone', 'M6 42H24V46H6z'],
      ['ink', 'M6 42H24V46H6z'],
      ['form', 'M92 26a10 10 0 1 0 20 0a10 10 0 1 0-20 0z'],
      ['ink', 'M98 26a4 4 0 1 0 8 0a4 4 0 1 0-8 0zM92 27V45'],
    ],
    either(
      [
        ...bare(86),
        ['form', 'M6 46C14 40 30 40 36 34S48 18 54 20L52 24C46 26 44 40 30 44S12 46 6 46z'],
      ],
      [
        ['tone', 'M66 47H114V60H66z'],
        ['heavy', 'M62 46H120'],
        ['form', 'M64 46C72 41 84 42 90 37S100 24 106 26L104 30C99 31 98 41 86 45S70 46 64 46z'],
        ['form', dropPath([78, 38], 0.6) + dropPath([87, 34], 0.6) + dropPath([95, 26], 0.6)],
      ],
    ),
  ],
  humidity: () => [
    [...bare(87), ['air', 'M54 45H66V66H54z'], ...drill(60)],
    [
      ...bare(87),
      ['air', 'M54 45H66V66H54z'],
      ['ink', 'M54 46V66H66V46'],
      ['form', 'M57 36H63V62H57z'],
      ['solid', circlePath([60, 61], 3.4)],
      ['ink', 'M60 36C60 26 40 30 38 26'],
      ...meter(30, 20, 0.6),
      ['form', dropPath([30, 60], 1)],
      ...tick(94, 24),
    ],
  ],
  'surface-damp': () => [
    [
      ...bare(88),
      ['tone', 'M4 46C20 40 100 40 116 46z'],
      ['ink', 'M4 46C20 40 100 40 116 46'],
      ['form', 'M50 6H74V22H50z'],
      ['form', 'M74 10 88 4 90 9 76 16z'],
      ['form', dropPath([86, 24], 1) + dropPath([94, 32], 1) + dropPath([82, 36], 1)],
    ],
    either(
      [...bare(88), ['tone', 'M0 47H58V62H0z'], ['heavy', 'M0 46H58']],
      [['tone', 'M62 47H120V62H62z'], ['form', 'M66 46C74 40 106 40 114 46z'], ...bright(90, 38)],
    ),
  ],
};
