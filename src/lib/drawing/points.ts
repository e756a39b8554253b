/** A place on the sheet: x to the right, y down, in the units of the drawing's viewBox. */
export type Point = readonly [x: number, y: number];
/** Corners in order; the last joins the first. */
export type Polygon = readonly Point[];

/** A number with one decimal at most, as short as SVG allows. */
const short = (value: number): string =>
  String(Math.round(value * 10) / 10).replace(/^(-?)0\./, '$1.');

/**
 * Points as SVG path data, relative and with one decimal, so that many drawings stay small.
 * Each step is taken from the rounded place before it, so that rounding does not add up.
 */
export function pathOf(points: readonly Point[], closed = false): string {
  let before: Point = [0, 0];
  const parts = points.map(([x, y], index) => {
    const here: Point = [Math.round(x * 10) / 10, Math.round(y * 10) / 10];
    const across = short(here[0] - before[0]);
    const down = short(here[1] - before[1]);
    before = here;
    const gap = down.startsWith('-') ? '' : ' ';
    if (index === 0) return `M${across}${gap}${down}`;
    return `${index === 1 ? 'l' : across.startsWith('-') ? '' : ' '}${across}${gap}${down}`;
  });
  return parts.join('') + (closed ? 'z' : '');
}

/** Several polygons as one path. */
export const polygonsPath = (polygons: readonly Polygon[]): string =>
  polygons.map((polygon) => pathOf(polygon, true)).join('');

/** Dots as one path of strokes without length, round at the ends. */
export const dotsPath = (dots: readonly Point[]): string =>
  dots.map(([x, y]) => `M${short(x)} ${short(y)}h0`).join('');

/** A circle as a path. */
export const circlePath = ([x, y]: Point, radius: number): string =>
  `M${short(x - radius)} ${short(y)}a${short(radius)} ${short(radius)} 0 1 0 ${short(radius * 2)} 0a${short(radius)} ${short(radius)} 0 1 0 ${short(-radius * 2)} 0z`;

/** The four corners of an upright rectangle. */
export const rectangle = (left: number, top: number, right: number, bottom: number): Polygon => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** The sides of a polygon, from corner to corner. */
export const sidesOf = (polygon: Polygon): readonly (readonly [Point, Point])[] =>
  polygon.map((corner, index) => [corner, polygon[(index + 1) % polygon.length] ?? corner]);

/**
 * How far inside a polygon a point lies, for many points of one polygon: the distance to the
 * nearest side, or a negative number outside. The
 * sides are worked out once.
 */
export function depthInside(polygon: Polygon): (point: Point) => number {
  // Plain numbers, side after side: it is asked of hundreds of points while a page comes.
  const sides = sidesOf(polygon).flatMap(([[x1, y1], [x2, y2]]) => {
    const [dx, dy] = [x2 - x1, y2 - y1];
    return [x1, y1, y2, dx, dy, dx * dx + dy * dy];
  });
  const count = sides.length;
  return ([x, y]) => {
    let inside = false;
    let nearest = Infinity;
    for (let at = 0; at < count; at += 6) {
      const x1 = sides[at] as number;
      const y1 = sides[at + 1] as number;
      const dx = sides[at + 3] as number;
      const dy = sides[at + 4] as number;
      const length = sides[at + 5] as number;
      if (y1 > y !== (sides[at + 2] as number) > y && x < x1 + ((y - y1) / dy) * dx)
        inside = !inside;
      const along = length ? ((x - x1) * dx + (y - y1) * dy) / length : 0;
      const share = along > 1 ? 1 : along < 0 ? 0 : along;
      const ax = x - x1 - share * dx;
      const ay = y - y1 - share * dy;
      const far = ax * ax + ay * ay;
      if (far < nearest) nearest = far;
    }
    return inside ? Math.sqrt(nearest) : -1;
  };
}

/** Left, top, right and bottom of a polygon. */
export function boundsOf(polygon: Polygon): readonly [number, number, number, number] {
  const xs = polygon.map(([x]) => x);
  const ys = polygon.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/**
 * Hatching of a polygon: parallel strokes rising to the right at 45 degrees, cut to its outline.
 * @param spacing between strokes, along x
 */
export function hatch(polygon: Polygon, spacing: number): string {
  const [left, top, right, bottom] = boundsOf(polygon);
  const strokes: string[] = [];
  for (
    let sum = Math.ceil((left + top) / spacing) * spacing;
    sum < right + bottom;
    sum += spacing
  ) {
    const crossings = sidesOf(polygon)
      .flatMap(([[x1, y1], [x2, y2]]) => {
        const one = x1 + y1 - sum;
        const other = x2 + y2 - sum;
        return one > 0 === other > 0 ? [] : [x1 + (one / (one - other)) * (x2 - x1)];
      })
      .sort((one, other) => one - other);
    for (let index = 0; index + 1 < crossings.length; index += 2) {
      const from = crossings[index] ?? 0;
      const to = crossings[index + 1] ?? 0;
      if (to - from > 0.4)
        strokes.push(
          pathOf([
            [from, sum - from],
            [to, sum - to],
          ]),
        );
    }
  }
  return strokes.join('');
}
