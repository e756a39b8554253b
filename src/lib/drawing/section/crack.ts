import type { Cracks } from '$lib/answers/questions';
import { roughLine, shifted } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import type { Point } from '$lib/drawing/points';
import { reach, type Frame } from './frame';

/** Where the crack starts on the face: clear of the lens. */
export const crackAt = (frame: Frame): number => frame.length * 0.36;

/**
 * A crack from the face into the concrete.
 * @param start depth it is seen from, sheet units: the damage's floor
 */
export function crackMarks(frame: Frame, cracks: Cracks | null, start: number): Drawing {
  if (!cracks || cracks === 'none') return [];
  const along = crackAt(frame);
  const through = cracks === 'moving' ? reach : Math.max(start + 40, reach * 0.72);
  const line = roughLine([along, start], [along - 7, through], 7, 15, 77);
  if (cracks === 'hairline') return [['ink', frame.path(line)]];
  const width = cracks === 'moving' ? 3.4 : cracks === 'crumbling' ? 5 : 4.2;
  const wedge: Point[] = [
    ...line,
    ...[...line]
      .reverse()
      .map(([at, into]): Point => [
        at + width * (cracks === 'moving' ? 1 : 1 - (into - start) / (through - start)),
        into,
      ]),
  ];
  const gap: Drawing = [['dark', frame.path(wedge, true)]];
  if (cracks === 'open') return gap;
  if (cracks === 'crumbling') {
    const edge: Point[] = [
      [along - 17, start],
      [along - 11, start + 9],
      [along - 12, start + 17],
      [along - 5, start + 26],
      [along - 4, start + 36],
      [along + 7, start + 27],
      [along + 11, start + 15],
      [along + 18, start + 10],
      [along + 22, start],
    ];
    const chip = (at: number, into: number): Point[] =>
      [
        [0, 0],
        [5, -3],
        [8, 1],
        [4, 5],
      ].map(([x = 0, y = 0]): Point => [along + at + x, start + into + y]);
    return [
      ['wash', frame.path(edge, true)],
      [
        'fine',
        [-8, -2, 6, 13]
          .map((at) =>
            frame.path([
              [along + at, start + 2],
              [along + at - 5, start + 11],
            ]),
          )
          .join(''),
      ],
      ...gap,
      ['ink', frame.path(edge)],
      [
        'form',
        [chip(-13, 5), chip(9, 4), chip(-6, 15)].map((each) => frame.path(each, true)).join(''),
      ],
    ];
  }
  // Moving: the two sides still work against each other.
  const arrow = (at: number, from: number, to: number) => {
    const back = from < to ? -5 : 5;
    return (
      frame.path([
        [at, from],
        [at, to],
      ]) +
      frame.path([
        [at - 4, to + back],
        [at, to],
        [at + 4, to + back],
      ])
    );
  };
  const middle = (start + reach) / 2;
  return [
    ...gap,
    [
      'body',
      frame.path(
        shifted(
          [
            [-28, -27],
            [-12, -27],
            [-12, 27],
            [-28, 27],
          ],
          along,
          middle,
        ),
        true,
      ),
    ],
    [
      'body',
      frame.path(
        shifted(
          [
            [10, -27],
            [26, -27],
            [26, 27],
            [10, 27],
          ],
          along,
          middle,
        ),
        true,
      ),
    ],
    [
      'heavy',
      arrow(along - 20, middle + 20, middle - 20) + arrow(along + 18, middle - 20, middle + 20),
    ],
  ];
}
