import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import {
  around,
  between,
  boxOf,
  distanceTo,
  distanceToRing,
  gap,
  inside,
  isBox,
  lengthOf,
  meetings,
  piecesOf,
  ringOf,
  same,
  sidesOf,
  signedArea,
  tidy,
  turn,
  within,
} from '$lib/survey/geometry';
import { angle, diamond, square } from '../helpers/plain-rings';

// School geometry, by hand.
describe('outlines', () => {
  it('have sides, the closing one too, and an area with a sign for the way round', () => {
    expect(sidesOf(square)).toHaveLength(4);
    expect(sidesOf(square)[3]).toEqual([
      [0, 10],
      [0, 0],
    ]);
    expect(piecesOf(square)).toEqual(sidesOf(square).slice(0, 3));
    expect([signedArea(square), signedArea([...square].reverse()), signedArea([])]).toEqual([
      ...[100, -100, 0],
    ]);
    expect([signedArea(angle), signedArea(diamond)]).toEqual([400, 200]);
    expect(
      lengthOf([
        [0, 0],
        [3, 4],
        [3, 10],
      ]),
    ).toBe(11);
    expect(turn([0, 0], [10, 0], [0, 5])).toBe(50);
    expect(turn([1, 1], [11, 1], [1, -4])).toBe(-50);
    expect([same([0, 0], [0, 0.0009]), same([0, 0], [0.0011, 0])]).toEqual([true, false]);
  });

  it('are worked with tidy: nothing twice, no corner on a straight side, anticlockwise', () => {
    expect(
      tidy([
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ]),
    ).toEqual(square);
    expect(tidy([...square, [0, 0]])).toHaveLength(4);
    expect(signedArea(tidy([...square].reverse()))).toBe(100);
    expect(
      tidy([
        [0, 0],
        [5, 0.5],
        [10, 0],
        [10, 10],
        [0, 10],
      ]),
    ).toHaveLength(5);
    expect([
      tidy([]),
      tidy([[1, 1]]),
      tidy([
        [1, 1],
        [2, 2],
      ]),
    ]).toEqual([[], [], []]);
  });

  it('have boxes, with the clear distance between them', () => {
    const box = { x0: 0, y0: 0, x1: 20, y1: 20 };
    expect(boxOf(diamond)).toEqual(box);
    expect(ringOf({ x0: 0, y0: 0, x1: 10, y1: 10 })).toEqual(square);
    const off = (x: number, y: number) => ({ x0: x, y0: y, x1: x + 5, y1: y + 5 });
    expect([
      gap(box, off(23, 24)),
      gap(box, off(-8, -9)),
      gap(box, off(20, 5)),
      gap(box, off(9, 9)),
    ]).toEqual([...[5, 5, 0, 0]]);
    expect([gap(box, off(5, 27)), gap(box, off(5, -12)), gap(off(28, 3), box)]).toEqual([7, 7, 8]);
    expect(around(box, off(-8, 30))).toEqual({ x0: -8, y0: 0, x1: 20, y1: 35 });
    expect(around(off(30, -8), box)).toEqual({ x0: 0, y0: -8, x1: 35, y1: 20 });
    expect(within(box, box)).toBe(true);
    expect([off(0, 0), off(15, 15)].map((each) => within(each, box))).toEqual([true, true]);
    expect(
      [off(-1, 5), off(5, -1), off(16, 5), off(5, 16)].map((each) => within(each, box)),
    ).toEqual(Array(4).fill(false));
    expect([isBox(square), isBox(diamond), isBox(angle)]).toEqual([true, false, false]);
    expect(
      isBox([
        [0, 0],
        [10, 0],
        [12, 10],
        [0, 10],
      ]),
    ).toBe(false);
  });

  it('have an inside, with the line itself where it is asked for', () => {
    for (const [place, there] of [
      [[5, 5], true],
      [[25, 5], true],
      [[5, 15], true],
      [[15, 15], false],
      [[31, 5], false],
      [[-1, 10], false],
      [[5, 21], false],
      [[5, -1], false],
      // Level with corners.
      [[20, 10.5], false],
      [[5, 10], true],
    ] as const)
      expect([place, inside(place, angle, 0)]).toEqual([place, there]);
    expect([
      inside([10, 10], diamond, 0),
      inside([1, 1], diamond, 0),
      inside([25, 10], diamond, 0),
    ]).toEqual([...[true, false, false]]);
    for (const place of [
      [10.0005, 5],
      [10, 5],
      [5, -0.0005],
      [0, 0],
    ] as const)
      expect(inside(place, square)).toBe(true);
    expect([
      inside([10.002, 5], square),
      inside([10.5, 5], square, 1),
      inside([11.5, 5], square, 1),
    ]).toEqual([...[false, true, false]]);
  });
});

describe('distances', () => {
  const piece: [Place, Place] = [
    [0, 0],
    [10, 0],
  ];
  it('go to the nearest of a straight piece', () => {
    expect(
      [
        [4, 3],
        [-3, 4],
        [13, -4],
        [10, 2],
      ].map((place) => distanceTo(place as never, piece)),
    ).toEqual([...[3, 5, 5, 2]]);
    expect(
      distanceTo(
        [3, 4],
        [
          [0, 0],
          [0, 0],
        ],
      ),
    ).toBe(5);
    expect(
      distanceTo(
        [0, 10],
        [
          [0, 0],
          [10, 10],
        ],
      ),
    ).toBeCloseTo(Math.sqrt(50), 9);
    expect([distanceToRing([5, 3], square), distanceToRing([5, 14], square)]).toEqual([3, 4]);
    expect(between([2, 2], [12, 22], 0.25)).toEqual([4.5, 7]);
  });

  it('are none where two pieces meet, told as shares of the first', () => {
    const meet = (...other: [Place, Place]) =>
      meetings(piece, other).map((at) => Number(at.toFixed(6)));
    expect(meet([4, -5], [4, 5])).toEqual([0.4]);
    expect(meet([4, 5], [4, -5])).toEqual([0.4]);
    expect(meet([2, -5], [7, 5])).toEqual([0.45]);
    expect(meet([10, 0], [15, 9])).toEqual([1]);
    expect(meet([-3, -3], [0, 0])).toEqual([0]);
    expect(meet([7, 0.0005], [7, 9])).toEqual([0.7]);
    expect(meet([7, 0.01], [7, 9])).toEqual([]);
    expect(meet([11, -5], [11, 5])).toEqual([]);
    expect(meet([-1, -5], [-1, 5])).toEqual([]);
    expect(meet([4, -5], [4, -1])).toEqual([]);
    // Along each other: where what they share begins and ends.
    expect(meet([3, 0], [6, 0])).toEqual([0.3, 0.6]);
    expect(meet([-3, 0], [6, 0])).toEqual([0.6, 0]);
    expect(meet([6, 0], [16, 0])).toEqual([0.6, 1]);
    expect(meet([-3, 0], [16, 0])).toEqual([0, 1]);
    expect(meet([10, 0], [16, 0])).toEqual([1]);
    expect([meet([12, 0], [16, 0]), meet([3, 2], [6, 2]), meet([3, 3], [3, 3])]).toEqual([
      [],
      [],
      [],
    ]);
    expect(
      meetings(
        [
          [1, 1],
          [1, 1],
        ],
        piece,
      ),
    ).toEqual([]);
  });
});
