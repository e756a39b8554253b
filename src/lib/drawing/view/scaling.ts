import type { Drawing } from '$lib/drawing/mark';
import { polygonsPath, type Point, type Polygon } from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';
import { packStones, type Packing } from '$lib/drawing/stones';

/** Side of the net over which the loss is laid, in sheet units: the facets of its edges. */
const step = 3;

/** A piece of the surface: left, top, right, bottom. */
export type Box = readonly [left: number, top: number, right: number, bottom: number];

export interface Scaled {
  /** Outlines of what has come off; what turns the other way is an island left in it. */
  readonly outlines: readonly Polygon[];
  /**
   * What of the loss the light reaches, where it comes from the upper left at 45 degrees: beside it
   * lies the shade of the rim, as broad as the loss is deep.
   */
  readonly lit: readonly Polygon[];
  /** How far inside what is lit a place lies; below 0 it is shaded, or still whole. */
  readonly inside: (place: Point) => number;
}

/** Heights over a net: broad waves, finer ones, and a jag at every knot, so that edges are ragged. */
function heights(columns: number, rows: number, seed: number, broad: number): number[][] {
  const octave = (wave: number, strength: number, own: number) => {
    const next = randomFrom(own);
    const across = Math.ceil((columns * step) / wave) + 2;
    const knots = Array.from({ length: Math.ceil((rows * step) / wave) + 2 }, () =>
      Array.from({ length: across }, () => next()),
    );
    return (column: number, row: number) => {
      const [x, y] = [(column * step) / wave, (row * step) / wave];
      const [i, j] = [Math.floor(x), Math.floor(y)];
      const at = (right: number, down: number) => knots[j + down]?.[i + right] ?? 0;
      const [u, v] = [x - i, y - j];
      const top = at(0, 0) * (1 - u) + at(1, 0) * u;
      return strength * (top * (1 - v) + (at(0, 1) * (1 - u) + at(1, 1) * u) * v);
    };
  };
  const waves = [
    octave(broad, 1, seed),
    octave(broad / 2.6, 0.5, seed + 1),
    octave(step * 1.9, 0.22, seed + 2),
    octave(step, 0.07, seed + 3),
  ];
  return Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (__, column) =>
      waves.reduce((sum, wave) => sum + wave(column, row), 0),
    ),
  );
}

/** The outlines of all that lies above a level, the higher ground to the right of each line. */
function contours(net: readonly (readonly number[])[], level: number): Polygon[] {
  const next = new Map<number, { to: number; point: Point }>();
  const at = (column: number, row: number) => (net[row]?.[column] ?? -1) - level;
  /** Where a side of the net, from one knot to the next, is crossed. */
  const crossing = (a: Point, b: Point): Point => {
    const share = at(...a) / (at(...a) - at(...b));
    return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  };
  // A side is named by its middle: no two have the same.
  const name = (a: Point, b: Point) => (a[1] + b[1] + 4) * 4096 + a[0] + b[0] + 4;
  /** One triangle of the net; its odd corner is cut off from the other two. */
  const cutOff = (one: Point, two: Point, three: Point) => {
    const high = [at(...one) > 0, at(...two) > 0, at(...three) > 0] as const;
    const alone = high[0] === high[1] ? 2 : high[1] === high[2] ? 0 : 1;
    const [lone, after, before] =
      alone === 0 ? [one, two, three] : alone === 1 ? [two, three, one] : [three, one, two];
    const [from, to] = high[alone] ? [before, after] : [after, before];
    next.set(name(lone, from), { to: name(lone, to), point: crossing(lone, from) });
  };
  for (let row = -1; row < net.length; row++)
    for (let column = -1; column < (net[0]?.length ?? 0); column++) {
      const [a, b, c, d] = [
        at(column, row) > 0,
        at(column + 1, row) > 0,
        at(column, row + 1) > 0,
        at(column + 1, row + 1) > 0,
      ];
      // Two triangles a square: no case is in doubt.
      if (a !== b || b !== c) cutOff([column, row], [column + 1, row], [column, row + 1]);
      if (b !== d || d !== c) cutOff([column + 1, row], [column + 1, row + 1], [column, row + 1]);
    }
  const loops: Polygon[] = [];
  while (next.size) {
    const loop: Point[] = [];
    let [key] = next.keys();
    while (key !== undefined) {
      const here = next.get(key);
      if (!here) break;
      next.delete(key);
      loop.push(here.point);
      key = here.to;
    }
    loops.push(loop);
  }
  return loops;
}

/** The level above which a share of the net lies. */
function levelOf(net: readonly (readonly number[])[], share: number): number {
  let [low, high] = [0, 3];
  for (let turn = 0; turn < 16; turn++) {
    const level = (low + high) / 2;
    let sum = 0;
    let count = 0;
    for (let row = 0; row + 1 < net.length; row++) {
      const [upper = [], lower = []] = [net[row], net[row + 1]];
      // Each corner is read once: this is gone over tens of thousands of times while a page comes.
      let [a, c] = [(upper[0] ?? 0) - level, (lower[0] ?? 0) - level];
      for (let column = 1; column < upper.length; column++) {
        const b = (upper[column] ?? 0) - level;
        const d = (lower[column] ?? 0) - level;
        sum += shareAbove(a, b, c) + shareAbove(b, d, c);
        count += 2;
        a = b;
        c = d;
      }
    }
    if (sum / count > share) low = level;
    else high = level;
  }
  return (low + high) / 2;
}

/** The share of a triangle that lies above 0, by the heights of its corners. */
function shareAbove(one: number, two: number, three: number): number {
  const low = Math.min(one, two, three);
  if (low >= 0) return 1;
  const high = Math.max(one, two, three);
  if (high <= 0) return 0;
  const middle = one + two + three - low - high;
  if (middle <= 0) return (high / (high - middle)) * (high / (high - low));
  return 1 - (low / (low - middle)) * (low / (low - high));
}

/** The signed area of a polygon; islands take the other sign. */
const signedArea = (polygon: Polygon): number =>
  polygon.reduce((sum, [x, y], index) => {
    const [nx, ny] = polygon[(index + 1) % polygon.length] ?? [x, y];
    return sum + (x * ny - nx * y) / 2;
  }, 0);

/**
 * Scaling over a share of a box: broken patches whose areas together make that share, to within
 * a hundredth of it. Found by halving the level at which a rough ground is cut.
 * @param share of the box that has come off, 0 to 1
 * @param depth how deep it is, and `broad` how wide the patches are about, in sheet units
 */
export function scale(
  [left, top, right, bottom]: Box,
  share: number,
  { seed, depth, broad }: { seed: number; depth: number; broad: number },
): Scaled {
  const columns = Math.round((right - left) / step);
  const rows = Math.round((bottom - top) / step);
  const net = heights(columns, rows, seed, broad);
  const size = [(right - left) / columns, (bottom - top) / rows] as const;
  // Beyond the edge the ground falls away in a hair's breadth, so that outlines close there.
  const placed = ([column, row]: Point): Point => [
    left + Math.min(columns, Math.max(0, column)) * size[0],
    top + Math.min(rows, Math.max(0, row)) * size[1],
  ];
  const cut = (level: number, ground = net) =>
    contours(ground, level)
      .map((loop) => loop.map(placed))
      // Crumbs and pinholes are left out.
      .filter((loop) => Math.abs(signedArea(loop)) > 5);
  const whole = (right - left) * (bottom - top);
  const lost = (loops: readonly Polygon[]) =>
    Math.abs(loops.reduce((sum, loop) => sum + signedArea(loop), 0));
  // The level by the net's own triangles; then again, for the crumbs that were left out.
  let aim = share;
  let level = levelOf(net, aim);
  for (let turn = 0; turn < 4; turn++) {
    const off = lost(cut(level)) / whole - share;
    if (Math.abs(off) < share / 300) break;
    aim -= off;
    level = levelOf(net, aim);
  }
  const shaded = lowestTowards(net, (depth * Math.SQRT1_2) / step);
  return {
    outlines: cut(level),
    lit: cut(level, shaded),
    inside: ([x, y]) =>
      (shaded[Math.round((y - top) / size[1])]?.[Math.round((x - left) / size[0])] ?? 0) - level,
  };
}

/** At every knot the lowest ground from there towards the light, as far as `reach` knots both ways. */
function lowestTowards(net: readonly (readonly number[])[], reach: number): number[][] {
  const height = (row: number, column: number): number => {
    const [i, j] = [Math.max(0, Math.floor(row)), Math.max(0, Math.floor(column))];
    const [v, u] = [Math.max(0, row - i), Math.max(0, column - j)];
    const at = (down: number, right: number) => net[i + down]?.[j + right] ?? 0;
    return (at(0, 0) * (1 - u) + at(0, 1) * u) * (1 - v) + (at(1, 0) * (1 - u) + at(1, 1) * u) * v;
  };
  const steps = Math.max(1, Math.ceil(reach));
  return net.map((line, row) =>
    line.map((own, column) => {
      let lowest = own;
      for (let turn = 1; turn <= steps; turn++) {
        const back = (turn / steps) * reach;
        // Beyond the sheet there is no rim that could throw shade.
        if (row >= back && column >= back)
          lowest = Math.min(lowest, height(row - back, column - back));
      }
      return lowest;
    }),
  );
}

/** Stones that show where it has come off. */
export const stonesIn = ({ inside }: Scaled, box: Box, packing: Packing): readonly Polygon[] =>
  packStones(
    [
      [box[0], box[1]],
      [box[2], box[1]],
      [box[2], box[3]],
      [box[0], box[3]],
    ],
    packing,
  )
    .filter(({ centre, radius }) =>
      [0, 1, 2, 3].every((quarter) => {
        const angle = (quarter * Math.PI) / 2;
        return (
          inside([
            centre[0] + Math.cos(angle) * radius * 0.8,
            centre[1] + Math.sin(angle) * radius * 0.8,
          ]) > 0
        );
      }),
    )
    .map(({ corners }) => corners);

/** The loss, its rim in shade, and its edges. */
export const drawnLoss = ({ outlines, lit }: Scaled, inside: Drawing = []): Drawing => [
  ['dark', polygonsPath(outlines)],
  ['tone', polygonsPath(lit)],
  ...inside,
];
