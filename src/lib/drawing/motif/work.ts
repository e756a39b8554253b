import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { pathOf, type Point } from '$lib/drawing/points';
import { evenSurface, section, sheet, unsound } from './concrete';

/** Where the face lies on the sheet while a tool works on it, and where the tool has got to. */
export const faceAt = 46;
export const workAt = 58;

/** How a tool leaves the concrete. Sheet units. */
export interface Work {
  /** How much it takes off. */
  readonly depth: number;
  /** Peak to valley of what it leaves. */
  readonly height: number;
  /** Mean length of a facet. */
  readonly step: number;
  readonly seed: number;
}

/** Concrete half done: prepared on the left, still unsound on the right of the tool, the crayon under it. */
export function halfDone({ depth, height, step, seed }: Work): Drawing {
  const floor = roughLine([0, faceAt + depth], [workAt, faceAt + depth], height, step, seed);
  const [right, bottom] = [sheet.width, faceAt + depth];
  const surface: readonly Point[] = [...floor, [workAt, faceAt], [right, faceAt]];
  return [
    ...section([...floor, [workAt, bottom], [right, bottom]], seed),
    ...unsound(
      [
        [workAt, faceAt],
        [right, faceAt],
        [right, bottom],
        [workAt, bottom],
      ],
      4,
    ),
    [
      'ink',
      pathOf([
        [workAt, bottom],
        [workAt, faceAt],
        [right, faceAt],
      ]),
    ],
    ['heavy', pathOf(surface.slice(0, floor.length))],
    ['crayon', pathOf(roughLine([workAt, bottom + 0.5], [right, bottom + 0.5], 1, 9, seed))],
  ];
}

/** Sound concrete with an even face, to stand a tool on. */
export const soundFace = (seed: number): Drawing => [
  ...section(evenSurface(faceAt), seed),
  ['heavy', pathOf(evenSurface(faceAt))],
];
