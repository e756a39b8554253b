import { rangeOfBand } from '$lib/answers/depth';
import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { pathOf, rectangle, type Point, type Polygon } from '$lib/drawing/points';
import { air, concrete, earth, unsound } from '$lib/drawing/motif/concrete';
import { chord, lens, slice } from '$lib/drawing/motif/lens';
import { valueOf } from '$shared/figures';

const [left, right, top, bottom] = [18, 116, 12, 62];
/** The series stands on one slab of the usual thickness, so its pictures can be compared. */
const thickness = valueOf('thickness.usual-slab');
const perMm = (bottom - top) / thickness;
/** Sheet units per mm in the lens. */
const magnified = 2.6;

const slab: Drawing = [
  ...air,
  ...concrete(rectangle(left, top, right, bottom), 17, { radii: [5, 1.6], tries: 150 }),
  ...earth(left, right, bottom),
  ['ink', `M${left - 2} ${bottom}H${right + 2}M${left} ${top}V${bottom}`],
  ['fine', `M11 ${top}V${bottom}M7 ${top}h4M7 ${bottom}h4M9 ${(top + bottom) / 2}h2`],
];

/** Damage from the surface down to `depth` mm, with the crayon along its bottom. */
function hollowed(depth: number): Drawing {
  const reach = depth * perMm;
  const slope = Math.min(7, reach * 0.6);
  const [from, to] = [34, 100];
  const floor = roughLine([from + slope, top + reach], [to - slope, top + reach], 1.6, 7, 4);
  const field: Polygon = [[from, top], ...floor, [to, top]];
  return [
    ...unsound(field, 4),
    ['heavy', `M${left - 2} ${top}H${from}M${to} ${top}H${right + 2}`],
    ['ink', pathOf(roughLine([from, top], [to, top], 2.4, 6, 9))],
    ['crayon', pathOf([[from, top], ...floor, [to, top]])],
  ];
}

/** Damage too thin for the slab's scale: a line on the slab, and a lens over it. */
function throughLens(depth: number): Drawing {
  const centre: Point = [80, 40];
  const radius = 25;
  const surface = centre[1] - 11;
  const floor = surface + depth * magnified;
  return [
    ['heavy', `M${left - 2} ${top}H${right + 2}`],
    ['crayon', `M24 ${(top + Math.max(1.4, depth * perMm)).toFixed(1)}H50`],
    ...lens(
      centre,
      radius,
      surface,
      [38, top],
      [
        ...unsound(slice(centre, radius - 1, surface, floor), 3.4),
        ['ink', pathOf(roughLine(...chord(centre, radius, surface), 1.4, 4, 9))],
        ['crayon', pathOf(roughLine(...chord(centre, radius - 2, floor + 1), 1, 6, 2))],
      ],
    ),
  ];
}

/** Drawn depth in mm: the most the band allows, or its middle where it ends with the slab. */
const drawn = (band: Choice<'depth'>): number => {
  const [least, most] = rangeOfBand(band, thickness);
  return band === 'over-50' ? (least + most) / 2 : most;
};

const thin = (band: Choice<'depth'>) => (): Drawing => [...slab, ...throughLens(drawn(band))];
const deep = (band: Choice<'depth'>) => (): Drawing => [...slab, ...hollowed(drawn(band))];

/** How deep the damage goes, to scale on one slab; a lens over what is too thin to see. */
export const depth: Record<Choice<'depth'>, () => Drawing> = {
  film: thin('film'),
  'under-3': thin('under-3'),
  '3-to-6': thin('3-to-6'),
  '6-to-20': deep('6-to-20'),
  '20-to-50': deep('20-to-50'),
  'over-50': deep('over-50'),
  through: deep('through'),
};
