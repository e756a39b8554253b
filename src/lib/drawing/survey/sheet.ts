import type { UnitSystem } from '$lib/answers/units';
import type { Place, Survey } from '$lib/answers/survey';
import { niceLength } from '$lib/drawing/plan/patches';
import type { Point } from '$lib/drawing/points';
import { boxOf } from '$lib/survey/geometry';
import { outlineOf } from '$lib/survey/outline';

/** Room round the surface on the sheet: for what stands upright, the corner and the scale bar. */
const margin = { side: 14, top: 14, foot: 34 };

/** How a surface lies on a sheet. The reader's y grows away from them: up on the sheet. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Sheet units to the mm. */
  readonly scale: number;
  readonly at: (place: Place) => Point;
  readonly back: (point: Point) => Place;
}

/**
 * @param width sheet units there are across
 * @param tallest sheet units there are up and down
 * @param zoom how many times larger than the whole surface in that room
 */
export function sheetOf(survey: Survey, width: number, tallest: number, zoom = 1): Sheet {
  const { x0, y0, x1, y1 } = boxOf(outlineOf(survey.slab));
  const fit = Math.min(
    (width - 2 * margin.side) / (x1 - x0),
    (tallest - margin.top - margin.foot) / (y1 - y0),
  );
  const scale = fit * zoom;
  const high = (y1 - y0) * scale;
  const left = Math.max(margin.side, (width * zoom - (x1 - x0) * scale) / 2);
  return {
    scale,
    width: Math.max(width, (x1 - x0) * scale + 2 * margin.side),
    height: high + margin.top + margin.foot,
    at: ([x, y]) => [left + (x - x0) * scale, margin.top + high - (y - y0) * scale],
    back: ([x, y]) => [x0 + (x - left) / scale, y0 + (margin.top + high - y) / scale],
  };
}

/** The scale bar of a sheet that is `wide` units across: how long, and for how many mm. */
export function barOf(
  { scale }: Sheet,
  wide: number,
  units: UnitSystem,
): { length: number; mm: number } {
  const mm = niceLength((wide * 0.35) / scale, units);
  return { mm, length: mm * scale };
}
