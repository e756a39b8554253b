import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { pathOf, rectangle, type Polygon } from '$lib/drawing/points';
import { barEnd } from '$lib/drawing/motif/bar';
import { air, concrete, earth, evenSurface, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { mapCracking } from '$lib/drawing/view/map-cracking';

const fine = { radii: [3.6, 1.2] as const, tries: 90 };

function settled(): Drawing {
  const tilted: Polygon = [
    [62, 30],
    [115, 46],
    [111, 58.5],
    [58, 42.5],
  ];
  return [
    ...air,
    ...concrete(rectangle(4, 30, 56, 43), 51, fine),
    ...concrete(tilted, 52, fine),
    ['tone', 'M4 43H57V53C74 56 92 58 111 60V61H4z'],
    ...earth(2, 118, 61),
    ['ink', 'M4 28.5V61M3 61H118M4 43H56V30M62 30 58 42.5M115 46 111 58.5 58 42.5'],
    ['heavy', 'M3 30H56M62 30 116 46.3'],
    ['dashed', 'M62 30H116'],
    ['fine', 'M108 31.5V42M105.8 38.5 108 43 110.2 38.5M88 10a26 26 0 0 1 12 12M96 20l4 2.4 1-4.8'],
  ];
}

const holdsUp = (): Drawing => [
  ...air,
  ...concrete(rectangle(4, 40, 116, 53), 53, fine),
  ...concrete(rectangle(8, 53, 20, 70), 54, fine),
  ...concrete(rectangle(100, 53, 112, 70), 55, fine),
  ['form', 'M50 40V16H70V40z'],
  ['fine', 'M50 22H70M50 28H70M50 34H70M60 16v6M55 22v6M65 22v6M60 28v6M55 34v6M65 34v6'],
  ['ink', 'M4 38.5V53H20V71M8 53V71M100 71V53H116V38.5M20 53H100M112 53V71'],
  ['heavy', 'M3 40H117'],
  [
    'ink',
    'M60 1V13M55.5 8 60 13.5 64.5 8M28 18V36M24.5 32 28 36.5 31.5 32M92 18V36M88.5 32 92 36.5 95.5 32',
  ],
];

const tendons = (): Drawing => [
  ...air,
  ...concrete(rectangle(10, 24, 110, 54), 56, { radii: [4, 1.4], tries: 60 }),
  ['ink', 'M10 22.5V55.5M110 22.5V55.5M8 24H112M8 54H112'],
  ['body', 'M10 30C40 54 80 54 110 30V37C80 58 40 58 10 37z'],
  ['fine', 'M10 30C40 51 80 51 110 30M10 37C40 58 80 58 110 37'],
  ['ink', 'M4 31.5C38 55.5 82 55.5 116 31.5M4 33.5C38 57.5 82 57.5 116 33.5'],
  ['form', 'M3 26 10 28V39L3 41zM117 26 110 28V39L117 41z'],
  ...barEnd([60, 12], 6.5),
  ['fine', 'M60 5.5v13M53.5 12h13M55.4 7.4l9.2 9.2M64.6 7.4l-9.2 9.2'],
];

const fire = (): Drawing => [
  ...section(evenSurface(48), 57),
  ['tone', 'M14 48H66C58 58 24 58 14 48z'],
  ['heavy', pathOf(evenSurface(48))],
  [
    'form',
    'M40 47C24 45 22 33 30 25C31 30 34 31 35 30C33 20 39 12 46 7C45 15 56 22 57 32C58 41 52 46 40 47z',
  ],
  ['ink', 'M40 46C33 42 35 35 40 31C41 35 48 37 46 42C45 44.5 43 46 40 46z'],
  ['form', 'M82 8H96V13L93 16V20H85V16L82 13z', 'rotate(38 89 14)'],
  ['form', dropPath([79, 34]) + dropPath([78, 44], 0.8)],
  ['ink', 'M72 48c2 4 4 2 6 5s5-2 7 1 4-3 6-6'],
];

const oldCoating = (): Drawing => [
  ...section(evenSurface(48), 58),
  ['heavy', pathOf(evenSurface(48))],
  [
    'tone',
    'M0 48c3-6 7-6 10 0s7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0z',
  ],
  [
    'ink',
    'M0 48c3-6 7-6 10 0s7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0 7-6 10 0',
  ],
  ['form', 'M1 37H30V43H1zM33 37H62V43H33z'],
  ['form', 'M0 0H29V6H0z', 'translate(66 38) rotate(-32)'],
  ['fine', 'M70 46l3-5M76 46l4-9M84 46l5-13'],
  ['fine', 'M104 18l3-5M109 23l5-3M99 14l1-6M110 30h5'],
];

const services = (): Drawing => [
  ...section(evenSurface(18), 59),
  ['heavy', pathOf(evenSurface(18))],
  ['body', 'M0 40H120V72H0z'],
  ['fine', 'M0 40H120'],
  ['form', 'M-2 47H122V57H-2z'],
  ['fine', 'M-2 49.5H122M40 46v12M44 46v12'],
  ['form', dropPath([24, 54.5], 0.75)],
  ['heavy', 'M-2 31C20 27 40 35 60 31S100 27 122 31'],
  ['form', 'M86 21 77 33H83L79 43 91 29H85L90 21z'],
];

/** What makes somebody else look first. */
export const warnings: Record<Choice<'warnings'>, () => Drawing> = {
  'settled-or-rocking': settled,
  'holds-something-up': holdsUp,
  'tendons-possible': tendons,
  'fire-or-chemical': fire,
  'map-cracking': () => mapCracking(),
  'old-coating-or-adhesive': oldCoating,
  'buried-services': services,
};
