import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { air, concrete, evenSurface, section } from '$lib/drawing/motif/concrete';
import { chord, lens, slice } from '$lib/drawing/motif/lens';
import { rangeOf, type FigureId } from '$shared/figures';

const surface = 44;
/** Sheet units per mm: layers on the slab, and the thinnest ones through the lens. */
const perMm = 3;
const magnified = 18;

const slab = (seed: number): Drawing => section(evenSurface(surface), seed);
const thickest = (figure: FigureId): number => rangeOf(figure)[1];

/** A layer to scale on the slab, open at its right end. */
function layer(depth: number): Drawing {
  const top = surface - depth;
  return [
    ['tone', `M0 ${top}H92L90 ${surface}H0z`],
    ['ink', `M0 ${top}H92L90 ${surface}`],
    ['heavy', pathOf(evenSurface(surface))],
  ];
}

/** A layer too thin to see on the slab: the same, through a lens. */
function film(depth: number, seed: number, soaked: boolean): Drawing {
  const centre: Point = [80, 36];
  const radius = 27;
  const bottom = centre[1] + 4;
  const top = bottom - Math.max(1.2, depth * magnified);
  return [
    ...slab(seed),
    ['heavy', pathOf(evenSurface(surface))],
    ...lens(
      centre,
      radius,
      bottom,
      [18, surface],
      [
        ['tone', pathOf(slice(centre, radius - 1, top, bottom), true)],
        ['ink', pathOf(roughLine(...chord(centre, radius, top), 0.6, 8, seed))],
        ['ink', pathOf(roughLine(...chord(centre, radius, bottom), 1.4, 5, seed))],
        // A sealer goes into the pores rather than onto them.
        ...(soaked
          ? ([
              [
                'grain',
                dotsPath(strewSand(slice(centre, radius - 2, bottom, bottom + 10), [], 8, 60)),
              ],
            ] as const)
          : []),
      ],
    ),
  ];
}

/** Stones and sand of the repair, on the old concrete. */
function overlay(): Drawing {
  const depth = 24;
  return [
    ...slab(116),
    ['tone', `M0 ${surface - depth}H92L90 ${surface}H0z`],
    ...concrete(rectangle(0, surface - depth + 1, 90, surface - 1), 117, {
      radii: [3.4, 1.4],
      tries: 60,
    }).slice(1),
    ['ink', `M0 ${surface - depth}H92L90 ${surface}`],
    ['heavy', pathOf(roughLine([0, surface], [120, surface], 4, 6, 5))],
  ];
}

const rebuild = (): Drawing => [
  ...air,
  ...concrete(rectangle(0, 20, 52, 64), 118),
  ['tone', 'M52 20H94V64H52z'],
  ...concrete(rectangle(54, 22, 92, 62), 119, { radii: [4, 1.4] }).slice(1),
  ['heavy', pathOf(roughLine([52, 20], [52, 64], 5, 6, 3))],
  ['ink', 'M0 20H94M0 64H118'],
  // The form: a board with its stake and brace.
  ['form', 'M94 16H99V64H94zM99 24 118 64H113L99 34z'],
  ['fine', 'M95.5 18V62M97.5 18V62'],
  ['form', 'M58 0H84L80 14H62z'],
  ['ink', 'M66 14V20M71 14V20M76 14V20'],
];

const undecided = (): Drawing => [
  ...slab(120),
  ['dashed', `M0 ${surface - 14}H120M0 ${surface - 5}H120`],
  ['heavy', pathOf(evenSurface(surface))],
  ['heavy', 'M50 8C51 0 69 0 69 8.5C69 14 60 14.5 60 21'],
  ['solid', 'M57.8 26.5a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0-4.4 0z'],
];

/** What goes on next, each layer to scale. */
export const finish: Record<Choice<'finish'>, () => Drawing> = {
  sealer: () => film(thickest('finish.sealer'), 111, true),
  'thin-film': () => film(thickest('finish.thin-film'), 112, false),
  'build-coat': () => film(thickest('finish.build-coat'), 113, false),
  'self-levelling': () => [...slab(114), ...layer(thickest('finish.self-levelling') * perMm)],
  'thin-overlay': () => [...slab(115), ...layer(thickest('finish.thin-overlay') * perMm)],
  overlay,
  rebuild,
  undecided,
};
