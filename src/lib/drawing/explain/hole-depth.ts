import { rangeOf, valueOf } from '$shared/figures';

/** Thickness in mm of the slab in the drawing, and the depth in mm of the damage that is seen in it. */
const thickness = 150;
const damage = 30;

/**
 * Depths in mm below the face of the slab in the drawing of the finished hole. The hole goes on
 * behind the bar, so it is deeper than the damage by cover, bar and the space behind it.
 */
export const depths = {
  damage,
  barTop: valueOf('draw.cover'),
  barBottom: valueOf('draw.cover') + valueOf('draw.bar'),
  hole: valueOf('draw.cover') + valueOf('draw.bar') + valueOf('bar.clear'),
  third: rangeOf('depth.partial-limit')[0] * thickness,
  half: rangeOf('depth.full-limit')[0] * thickness,
  thickness,
} as const;
