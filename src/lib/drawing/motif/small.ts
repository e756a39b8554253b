import type { Drawing } from '$lib/drawing/mark';
import type { Point } from '$lib/drawing/points';

/** A drop of water, its belly at the point. */
export const dropPath = ([x, y]: Point, size = 1): string =>
  `M${x} ${y - 6 * size}c${1.6 * size} ${2.6 * size} ${2.8 * size} ${4 * size} ${2.8 * size} ${5.6 * size}a${2.8 * size} ${2.8 * size} 0 0 1 ${-5.6 * size} 0c0${-1.6 * size} ${1.2 * size}${-3 * size} ${2.8 * size}${-5.6 * size}z`;

/** A crystal of frost: six arms. */
export const flake = (size: number): Drawing => {
  const arms = [0, 60, 120].map((angle) => {
    const along = Math.cos((angle * Math.PI) / 180) * size;
    const across = Math.sin((angle * Math.PI) / 180) * size;
    return `M${(-along).toFixed(1)} ${(-across).toFixed(1)}L${along.toFixed(1)} ${across.toFixed(1)}`;
  });
  return [['ink', arms.join('')]];
};

/** A grain of salt: a small cube seen from a corner. */
export const saltPath = ([x, y]: Point, size = 2.6): string =>
  `M${x} ${y - size}l${size} ${size * 0.6}v${size}l${-size} ${size * 0.6}l${-size}${-size * 0.6}v${-size}zl0 0m0 ${size * 1.2}v${size}m0${-size}l${size}${-size * 0.6}m${-size} ${size * 0.6}l${-size}${-size * 0.6}`;

/** A mark of dimension: a line with arrow heads at both ends, from left to right. */
export const acrossArrow = (left: number, right: number, y: number): string =>
  `M${left} ${y}H${right}M${left + 4} ${y - 2.5}L${left} ${y} ${left + 4} ${y + 2.5}M${right - 4} ${y - 2.5}L${right} ${y} ${right - 4} ${y + 2.5}`;

/** The same from top to bottom. */
export const downArrow = (x: number, top: number, bottom: number): string =>
  `M${x} ${top}V${bottom}M${x - 2.5} ${top + 4}L${x} ${top} ${x + 2.5} ${top + 4}M${x - 2.5} ${bottom - 4}L${x} ${bottom} ${x + 2.5} ${bottom - 4}`;
