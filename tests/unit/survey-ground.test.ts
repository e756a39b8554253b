import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { facesOf } from '$lib/survey/faces';
import { outlineOf } from '$lib/survey/outline';
import { common, groundArea, joined, less, shared, withoutReentrant } from '$lib/survey/clip';
import { boxOf, signedArea, type Ring } from '$lib/survey/geometry';
import { rectangle } from '../helpers/drawings';
import { angle, diamond, square } from '../helpers/plain-rings';

const area = (rings: readonly Ring[]) => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

// School geometry, by hand.
describe('ground', () => {
  const other = rectangle(5, 5, 10, 10);
  const far = rectangle(50, 50, 10, 10);
  it('is joined, shared and taken off', () => {
    expect(groundArea(joined([square, other]))).toBeCloseTo(175, 1);
    expect(groundArea(joined([square, far]))).toBeCloseTo(200, 1);
    expect(groundArea(shared([square], [other]))).toBeCloseTo(25, 1);
    expect(groundArea(less([square], [other]))).toBeCloseTo(75, 1);
    // With a hole in it, which runs the other way round.
    const holed = less([rectangle(0, 0, 30, 30)], [rectangle(10, 10, 10, 10)]);
    expect(holed).toHaveLength(2);
    expect(groundArea(holed)).toBeCloseTo(800, 1);
    const one = [square];
    expect([joined(one), less(one, []), less([], one)]).toEqual([one, one, []]);
    expect([shared(one, []), shared([], one), groundArea([])]).toEqual([[], [], 0]);
  });

  it('two outlines have in common is an outline or more, and no crumbs', () => {
    expect(common(square, other)).toEqual([rectangle(5, 5, 5, 5)]);
    expect(common(square, rectangle(2, 2, 3, 3))).toEqual([rectangle(2, 2, 3, 3)]);
    expect(common(diamond, rectangle(0, 0, 20, 20))).toEqual([diamond]);
    expect(area(common(diamond, rectangle(0, 0, 10, 20)))).toBeCloseTo(100, 1);
    expect(area(common(rectangle(0, 0, 10, 20), diamond))).toBeCloseTo(100, 1);
    for (const beside of [
      [30, 0],
      [-30, 0],
      [0, 30],
      [0, -30],
      [10, 0],
      [0, 10],
    ] as const)
      expect(common(square, rectangle(beside[0], beside[1], 10, 10))).toEqual([]);
    expect(common(square, rectangle(9.9, 0, 9, 9))).toEqual([]);
    // A corner of the box, but none of the ring.
    expect(common(diamond, rectangle(0, 0, 4, 4))).toEqual([]);
    // Two pieces on either side of a notch.
    const notched: Ring = [
      [0, 0],
      [30, 0],
      [30, 20],
      [20, 20],
      [20, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ];
    const pieces = common(rectangle(0, 12, 30, 8), notched);
    expect(pieces.map((ring) => Math.round(signedArea(ring)))).toEqual([80, 80]);
  });

  it('has no re-entrant corner: such a side is taken on straight', () => {
    expect(withoutReentrant(square)).toEqual([square]);
    const parts = withoutReentrant(angle);
    expect(parts.map((ring) => Math.round(signedArea(ring))).toSorted((a, b) => a - b)).toEqual([
      100, 300,
    ]);
    expect(parts.every(isBoxNearly)).toBe(true);
    const notched: Ring = [
      [0, 0],
      [30, 0],
      [30, 20],
      [20, 20],
      [20, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ];
    const three = withoutReentrant(notched);
    expect(area(three)).toBeCloseTo(500, 0);
    expect(three.length).toBeGreaterThanOrEqual(3);
    expect(three.every(isBoxNearly)).toBe(true);
    // Askew as well: the side of the dent is taken on.
    const dent: Ring = [
      [0, 0],
      [40, 0],
      [20, 10],
      [40, 40],
      [0, 40],
    ];
    const askew = withoutReentrant(dent);
    expect(askew.length).toBe(2);
    expect(area(askew)).toBeCloseTo(signedArea(dent), 0);
    for (const ring of askew) expect(withoutReentrant(ring)).toEqual([ring]);
  });
  const isBoxNearly = (ring: Ring) => {
    const { x0, y0, x1, y1 } = boxOf(ring);
    return Math.abs((x1 - x0) * (y1 - y0) - signedArea(ring)) < 0.5;
  };
});

describe('a net of lines', () => {
  const ring = outlineOf({ length: 6000, width: 8000 });
  const across: Place[] = [
    [3000, 0],
    [3000, 8000],
  ];
  const areas = (...lines: Place[][]) =>
    facesOf(ring, lines).map((face) => Math.round(signedArea(face) / 1e6));
  it('parts the ground by what goes through, and by no loose end', () => {
    expect(areas()).toEqual([48]);
    expect(areas(across)).toEqual([24, 24]);
    expect(
      areas(across, [
        [0, 4000],
        [6000, 4000],
      ]),
    ).toEqual([12, 12, 12, 12]);
    expect(
      areas([
        [3000, 0],
        [3000, 4000],
      ]),
    ).toEqual([48]);
    expect(
      areas(
        [
          [3000, 0],
          [3000, 4000],
        ],
        [
          [3000, 4000],
          [3500, 4500],
        ],
      ),
    ).toEqual([48]);
    // A ring that hangs on nothing is no face, nor a hole.
    expect(
      areas([
        [1000, 1000],
        [2000, 1000],
        [1500, 2000],
        [1000, 1000],
      ]),
    ).toEqual([48]);
    expect(
      areas([
        [0, 0],
        [6000, 8000],
      ]).toSorted(),
    ).toEqual([24, 24]);
    expect(
      areas([
        [3000, 0],
        [3000, 4000],
        [6000, 4000],
      ]).toSorted((a, b) => a - b),
    ).toEqual([12, 36]);
  });
});
