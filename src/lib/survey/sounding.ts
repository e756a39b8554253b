import { valueOf, type OwnFigures } from '$shared/figures';

/**
 * The chance that a hollow disc is hit by at least one tap of a square grid laid anyhow over it.
 * Up to half the spacing the discs round the taps stand apart: pi r^2 / G^2. Beyond, what
 * neighbouring discs share is taken off, and from G / sqrt 2 on nothing can be missed.
 * Geometric probability, as in ASTM D6982 (hot spots on a grid); two circles' lens by school geometry.
 * @param radius of the hollow, mm
 * @param spacing of the grid, mm
 */
export function hitChance(radius: number, spacing: number): number {
  const r = radius / spacing;
  if (r >= Math.SQRT1_2) return 1;
  if (r <= 0.5) return Math.PI * r ** 2;
  return Math.PI * r ** 2 - 4 * r ** 2 * Math.acos(1 / (2 * r)) + Math.sqrt(4 * r ** 2 - 1);
}

/**
 * The radius of the smallest round hollow that a grid finds with the figure's chance (nine times
 * in ten), mm: 0.56 of the spacing.
 */
export function smallestFound(spacing: number, own?: OwnFigures): number {
  const wanted = valueOf('sounding.found', own) / 100;
  let [low, high] = [0, Math.SQRT1_2];
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    if (hitChance(middle, 1) < wanted) low = middle;
    else high = middle;
  }
  return high * spacing;
}

/** What counting taps says of the hollow area, m2 least to most; or that the grid is too wide for it. */
export type HollowArea =
  { readonly span: readonly [number, number] } | { readonly refused: 'spacing' };

/**
 * The hollow area from counts alone. Only for grids up to the figure's spacing: on a wider one a
 * count says too little, and outlines are asked for.
 * The range is E. B. Wilson's interval for a share (1927), as if taps were independent; on an even
 * grid they are better than that.
 * @param area that was tapped, m2
 */
export function hollowArea(
  dull: number,
  taps: number,
  spacing: number,
  area: number,
  own?: OwnFigures,
): HollowArea {
  if (spacing > valueOf('sounding.grid-counts', own) || taps === 0) return { refused: 'spacing' };
  const z = valueOf('sounding.range-z', own);
  const share = dull / taps;
  const middle = share + z ** 2 / (2 * taps);
  const half = z * Math.sqrt((share * (1 - share)) / taps + z ** 2 / (4 * taps ** 2));
  const whole = 1 + z ** 2 / taps;
  return {
    span: [
      dull === 0 ? 0 : (area * (middle - half)) / whole,
      dull === taps ? area : (area * (middle + half)) / whole,
    ],
  };
}
