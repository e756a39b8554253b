import type { Job } from '$lib/answers/job';
import type { Mark, Place } from '$lib/answers/survey';
import { ringOf, type Box, type Ring } from '$lib/survey/geometry';
import { rectangleRing } from '$lib/survey/patches';

/** Zones whose area was typed and that are not on the drawing yet; the rest takes what is left. */
export const typedAreas = ({
  zones,
  rest,
  survey,
}: Job): readonly { readonly zone: string; /** m2 */ readonly area: number }[] =>
  zones.flatMap(({ id, answers: { area }, patches }) => {
    const drawn = survey?.marks?.some((mark) => 'zone' in mark && mark.zone === id);
    return typeof area === 'number' && id !== rest && !drawn && !patches?.length
      ? [{ zone: id, area }]
      : [];
  });

/** Spots typed on the plan, while none is on the drawing. */
export const typedSpots = ({ zones, survey }: Job): readonly Mark[] =>
  survey?.marks?.some(({ kind }) => kind === 'spot')
    ? []
    : zones.flatMap(({ id, patches = [] }) =>
        patches.map((patch): Mark => ({ kind: 'spot', corners: rectangleRing(patch), zone: id })),
      );

/**
 * A typed area round a place: square, or as long as it takes where the surface is narrower; moved to
 * lie on the surface's box.
 * @param area m2
 */
export function areaRound([x, y]: Place, area: number, { x0, y0, x1, y1 }: Box): Ring {
  const side = Math.sqrt(area) * 1000;
  // Not broader than the surface; where it is short, broad enough to fit along it.
  const width = Math.min(y1 - y0, Math.max(side, (area * 1e6) / (x1 - x0)));
  const length = (area * 1e6) / width;
  const held = (at: number, long: number, low: number, high: number) =>
    Math.max(low, Math.min(at - long / 2, high - long));
  const round = (value: number) => Math.round(value * 10) / 10;
  const left = round(held(x, length, x0, x1));
  const near = round(held(y, width, y0, y1));
  return ringOf({ x0: left, y0: near, x1: round(left + length), y1: round(near + width) });
}
