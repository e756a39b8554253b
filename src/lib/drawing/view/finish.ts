import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import {
  dotsPath,
  hatch,
  pathOf,
  polygonsPath,
  rectangle,
  type Polygon,
} from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { dropPath } from '$lib/drawing/motif/small';
import { rangeOf, type FigureId } from '$shared/figures';
import { all, coin, face } from './ground';
import { shadow } from './hollow';

/** Sheet units per mm. */
const perMm = 0.6;
const beside = coin([109, 61], perMm);
const thickest = (figure: FigureId): number => rangeOf(figure)[1] * perMm;

/** A roller from above, at the right of its stroke. */
const roller: Drawing = [
  ['form', 'M-6-16H6V16H-6z'],
  ['fine', 'M-6-10H6M-6 10H6'],
  ['ink', 'M0 16V21H12V0H18'],
  ['form', 'M18-3H42V3H18z'],
];

/** A layer from the left edge to a broken front; the front throws shade as broad as it is thick. */
function layer(
  to: number,
  thick: number,
  seed: number,
  rough = 3,
): { field: Polygon; marks: Drawing } {
  const front = roughLine([to, 0], [to, 72], rough, 8, seed);
  const field: Polygon = [...front, [0, 72], [0, 0]];
  return {
    field,
    marks: [
      ...(thick > 0.8 ? ([['dark', shadow(field, -thick)]] as const) : []),
      ['tone', pathOf(field, true)],
      ['ink', pathOf(front)],
    ],
  };
}

/** It soaks in: the concrete is only darker, its grains show as before. */
const sealer = (): Drawing => [
  ...face(901, 0),
  ['tone', 'M0 14H62V52H0z'],
  ['sand', dotsPath(strewSand(all, [], 902, 170))],
  ['grain', dotsPath(strewSand(rectangle(0, 14, 60, 52), [], 903, 60))],
  ['form', dropPath([22, 32], 1.5) + dropPath([36, 44], 1.1) + dropPath([12, 46], 1)],
  ...placed(roller, 66, 33),
  ...beside,
];

/** A film as of house paint: one even stroke, and an open pot of it. */
const thinFilm = (): Drawing => [
  ...face(911, 120),
  ['solid', 'M0 4H60V36H0z'],
  ...placed(roller, 66, 20),
  ['form', 'M12 54a14 14 0 1 0 28 0a14 14 0 1 0-28 0z'],
  ['solid', 'M16 54a10 10 0 1 0 20 0a10 10 0 1 0-20 0z'],
  ['ink', 'M12 54C4 68 48 68 40 54'],
  ...beside,
];

/** Coat upon coat: three edges, one behind the other. */
const buildCoat = (): Drawing => [
  ...face(921, 120),
  ['tone', 'M0 0H94V72H0z'],
  ['hatch', hatch(rectangle(0, 0, 66, 72), 3)],
  ['ink', 'M94 0V72M66 0V72'],
  ['solid', 'M0 0H38V72H0z'],
  ...placed(roller, 42, 34, 0, 0.9),
  ...beside,
];

/** Poured from a pail: it runs out in round tongues and lies flat as water. */
const selfLevelling = (): Drawing => [
  ...face(931, 120),
  ['dark', 'M2 2H78C92 4 90 16 97 24S91 40 83 44S73 62 60 64S38 74 22 74H2z'],
  ['tone', 'M0 0H76C90 2 88 14 95 22S89 38 81 42S71 60 58 62S36 72 20 72H0z'],
  ['ink', 'M76 0C90 2 88 14 95 22S89 38 81 42S71 60 58 62S36 72 20 72'],
  ['fine', 'M8 30C8 50 50 50 52 34M2 22C-2 62 62 62 64 34M20 32C22 40 38 40 40 34'],
  ['form', 'M14 4H50L44 26C40 30 24 30 20 26z'],
  ['dark', 'M20 26C24 22 40 22 44 26C40 30 24 30 20 26z'],
  ['tone', 'M24 27C26 34 22 36 30 38S40 34 39 27z'],
  ['ink', 'M14 4C14-2 50-2 50 4'],
  ...beside,
];

/** Mortar spread thin with a long trowel. */
function thinOverlay(): Drawing {
  const { field, marks } = layer(70, thickest('finish.thin-overlay'), 941);
  return [
    ...face(942, 120),
    ...marks,
    ['sand', dotsPath(strewSand(field, [], 943, 120))],
    ['fine', 'M4 66C10 36 30 20 60 12M2 44C8 24 24 10 46 4M20 70C26 48 40 34 62 28'],
    ['form', 'M34 40 84 26 87.5 38 37.5 52z'],
    ['form', 'M52 36.6 72 31 73.4 36 53.4 41.6z'],
    ...beside,
  ];
}

/** Mortar with stones in it, thick, drawn level with a board. */
function overlay(): Drawing {
  const thick = thickest('finish.thin-overlay') * 3;
  const { field, marks } = layer(56, thick, 951, 5);
  const stones = packStones(field, { seed: 952, radii: [5, 1.8], gap: 1.6, tries: 150 });
  return [
    ...face(953, 120),
    ...marks,
    ['form', polygonsPath(stones.map(({ corners }) => corners))],
    ['sand', dotsPath(strewSand(field, stones, 954, 80))],
    ['form', 'M44-4 54-4 62 76 52 76z'],
    ['fine', 'M49-4 57 76'],
    ['ink', 'M84 30H70M75 25.5 69.5 30 75 34.5'],
    ...beside,
  ];
}

/** Boards all round, bars inside them, and fresh concrete that fills them from one end. */
function rebuild(): Drawing {
  const fresh: Polygon = [[16, 14], ...roughLine([62, 14], [54, 56], 8, 7, 961), [16, 56]];
  const stones = packStones(fresh, { seed: 962, radii: [4.6, 1.6], gap: 1.4, tries: 120 });
  return [
    ...face(963, 60),
    ['body', 'M16 14H102V56H16z'],
    ['form', 'M16 24H102V27H16zM16 43H102V46H16z'],
    ['form', 'M72 14H75V56H72zM90 14H93V56H90z'],
    ['tone', pathOf(fresh, true)],
    ['form', polygonsPath(stones.map(({ corners }) => corners))],
    ['ink', pathOf(fresh, true)],
    ['form', 'M6 6H112V14H6zM6 56H112V64H6zM8 14H16V56H8zM102 14H110V56H102z'],
    [
      'fine',
      'M10 9H108M10 11.5H108M10 59H108M10 61.5H108M11 16V54M13.5 16V54M105 16V54M107.5 16V54',
    ],
    ['solid', 'M22 2h5v5h-5zM58 2h5v5h-5zM92 2h5v5h-5zM22 63h5v5h-5zM58 63h5v5h-5zM92 63h5v5h-5z'],
  ];
}

const undecided = (): Drawing => [
  ...face(971, 140),
  ['heavy', 'M46 20C47 6 75 6 75 21C75 32 60 32 60 45'],
  ['solid', 'M57 54a3 3 0 1 0 6 0a3 3 0 1 0-6 0z'],
  ...beside,
];

/** What goes on next, seen from above while it goes on. */
export const finish: Record<Choice<'finish'>, () => Drawing> = {
  sealer,
  'thin-film': thinFilm,
  'build-coat': buildCoat,
  'self-levelling': selfLevelling,
  'thin-overlay': thinOverlay,
  overlay,
  rebuild,
  undecided,
};
