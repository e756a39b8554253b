import type { Drawing } from '$lib/drawing/mark';
import { circlePath, type Point } from '$lib/drawing/points';

/** A steel bar cut across: a ring within its outline. */
export const barEnd = (centre: Point, radius = 3.4): Drawing => [
  ['form', circlePath(centre, radius)],
  ['solid', circlePath(centre, radius * 0.42)],
];

/** A steel bar along the sheet, with its ribs. */
export function barAlong(left: number, right: number, y: number, radius = 3.2): Drawing {
  const ribs: string[] = [];
  for (let x = left + 4; x < right - 2; x += 5) ribs.push(`M${x} ${y - radius}l2.4 ${radius * 2}`);
  return [
    ['form', `M${left} ${y - radius}H${right}V${y + radius}H${left}z`],
    ['fine', ribs.join('')],
  ];
}
