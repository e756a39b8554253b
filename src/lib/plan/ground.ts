import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { pastDamage, squarePatch } from '$lib/survey/patches';
import {
  isKnown,
  product,
  typicalOf,
  type Amount,
  type Ground,
  type Span,
  type Term,
} from './amount';
import { stripOf } from './bars';
import type { Quantities } from './quantities';
import type { ZoneWork } from './zone-work';

const exact = (value: number): Span => [value, value];

/** The ground to saw and break out, from the patches laid or from the area alone. */
export function groundOf(work: ZoneWork, own?: OwnFigures): { area: Amount; perimeter: Amount } {
  const { patches } = work;
  const strip = work.alongBars ? stripOf(work, own) : null;
  if (strip) return strip;
  if (patches) {
    const area = patches.reduce((total, patch) => total + patch.area, 0);
    const saw = patches.reduce((total, patch) => total + patch.saw, 0);
    return {
      area: product('m2', [{ what: 'patches', span: exact(area), unit: 'm2' }]),
      perimeter: product('m', [{ what: 'perimeter', span: exact(saw), unit: 'm' }]),
    };
  }
  const { area } = work.zone.answers;
  if (area === undefined || area === 'unknown')
    return { area: { missing: ['area'], unit: 'm2' }, perimeter: { missing: ['area'], unit: 'm' } };
  return groundFromArea(area, work, own);
}

/**
 * The ground where only the area is known. The least is one square taken past the damage. The most
 * is the same area in many spots, each taken past its own damage (figures `patch.scattered`,
 * `patch.scattered-spot`), as far as it is so many (`patch.scattered-spots`), the rest in one piece,
 * and no more than the whole surface. Drawing the spots narrows it.
 * Between the two the typical value is the geometric mean. Source: common practice for that.
 */
function groundFromArea(area: number, { frost, whole }: ZoneWork, own?: OwnFigures) {
  const square = squarePatch(area, frost, own);
  const side = rangeOf('patch.scattered-spot', own)[1];
  const inSpots = Math.min(area, valueOf('patch.scattered-spots', own) * side ** 2);
  const inOne = squarePatch(area - inSpots, frost, own);
  const spots = Math.max(1, inSpots / side ** 2);
  const spot = squarePatch(Math.min(area, side ** 2), frost, own);
  const scattered =
    inSpots * rangeOf('patch.scattered', own)[1] + (area > inSpots ? inOne.area[1] : 0);
  const most = Math.min(Math.max(square.area[1], scattered), Math.max(whole ?? Infinity, area));
  const round = Math.max(
    square.perimeter[1],
    spots * spot.perimeter[1] + (area > inSpots ? inOne.perimeter[1] : 0),
  );
  // Told where the two formulas are all of it: whole spots, and no end of the surface.
  const rest = area - inSpots;
  const plain = area >= side ** 2 && (rest === 0 || rest >= side ** 2);
  const told = (of: Ground['of'], formula: boolean) =>
    plain && formula
      ? {
          ground: {
            ...{ of, area, past: pastDamage(frost, own), inSpots, spots, side },
            times: rangeOf('patch.scattered', own)[1],
          },
        }
      : {};
  return {
    area: {
      ...scatteredAmount(
        'm2',
        [Math.min(square.area[0], most), most],
        ['patch.scattered', 'patch-area'],
      ),
      ...told('area', most === scattered),
    },
    perimeter: {
      ...scatteredAmount('m', [square.perimeter[0], round], ['patch.scattered-spot', 'perimeter']),
      ...told('perimeter', round > square.perimeter[1]),
    },
  };
}

/**
 * The ring of sound concrete between a firm hollow and the square cut round it, m2: it is chipped out
 * and filled with the hollow. Null where the cut takes in no more than the zone.
 * Source: common practice, no published source, for chipping it out; the rest is arithmetic.
 */
export function rimOf(work: ZoneWork, area: Amount, own?: OwnFigures): Amount | null {
  const { area: ground } = groundOf(work, own);
  if (!isKnown(area) || !isKnown(ground)) return null;
  const beyond = (of: number, inside: number) => Math.max(0, of - inside);
  const span: Span = [beyond(ground.span[0], area.span[1]), beyond(ground.span[1], area.span[0])];
  const typical = beyond(typicalOf(ground), typicalOf(area));
  return span[1] > 0 ? product('m2', [{ what: 'rim-area', span, typical, unit: 'm2' }]) : null;
}

const scatteredAmount = (
  unit: 'm' | 'm2',
  span: Span,
  [figure, what]: [FigureId, Term['what']],
): Amount => product(unit, [{ what, span, typical: Math.sqrt(span[0] * span[1]), unit, figure }]);

/** What the crew leaves open and cleans, m2: the patches as broken out, and the zone where it is more than they. */
export const surfaceOf = (
  { alongBars }: Pick<ZoneWork, 'alongBars'>,
  { area, 'patch-area': patches }: Pick<Quantities, 'area' | 'patch-area'>,
): Amount => (alongBars ? null : patches) ?? area ?? { missing: ['area'], unit: 'm2' };
