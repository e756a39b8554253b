import type { Drawing } from '$lib/drawing/mark';
import { pathOf, rectangle } from '$lib/drawing/points';
import { face, rule } from './ground';
import { cells, cracksBetween } from './net';
import type { Box } from './scaling';

/** Scale of the view from standing height that map cracking is drawn at, the rule along its foot. */
const farPerMm = 0.36;
/** Mean width in mm of the cells drawn. */
export const mapMesh = 45;

/** A net of fine cracks all over. */
export function mapCracking(mesh = mapMesh, seed = 981): Drawing {
  const box: Box = [0, 0, 120, 60];
  const net = cells(box, mesh * farPerMm, seed);
  return [
    ...face(seed, 60),
    ['ink', cracksBetween(net, box, seed)],
    ['body', pathOf(rectangle(0, 60, 120, 72), true)],
    ...rule(6, 62.5, farPerMm),
  ];
}
