import type { CheckId } from '$lib/answers/readiness-record';
import { checkDrawings } from '$lib/drawing/check';
import type { Drawing } from '$lib/drawing/mark';
import { methodDrawings } from '$lib/drawing/method';
import type { StepId } from '$shared/methods';

/** Begin, middle, done. */
export type Three = readonly [begin: Drawing, middle: Drawing, done: Drawing];

export const methodFrames = (id: StepId): Three => {
  const drawing = methodDrawings[id]();
  return [drawing, drawing, drawing];
};
export const checkFrames = (id: CheckId): Three => {
  const drawing = checkDrawings[id]();
  return [drawing, drawing, drawing];
};
