import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { baysOf, openGround, somewhereIn } from '$lib/survey/bays';
import { inside } from '$lib/survey/geometry';
import { stopsShort, takenOn } from '$lib/survey/joints';
import { cornersFromSides, evenJoints, foldsOf, outlineOf } from '$lib/survey/outline';
import { rectangle } from '../helpers/drawings';
import { across, ring, slab } from '../helpers/plain-rings';

const near = (value: number) => expect.closeTo(value, 6) as number;

describe('the outline of a surface', () => {
  it('is a rectangle, corners, or a flight laid flat with its folds', () => {
    expect(ring).toEqual(rectangle(0, 0, 6000, 8000));
    expect(outlineOf({ corners: [...rectangle(0, 0, 6000, 8000)].reverse() })).toHaveLength(4);
    const flight = { steps: { count: 2, tread: 280, riser: 170, width: 1200 } };
    expect(outlineOf(flight)).toEqual(rectangle(0, 0, 900, 1200));
    // Riser, tread, riser, tread: folds at 170, 450 and 620.
    expect(foldsOf(flight)).toEqual(
      [170, 450, 620].map((x) => [
        [x, 0],
        [x, 1200],
      ]),
    );
    expect(foldsOf(slab)).toEqual([]);
  });
  it('is parted evenly by joints at most so far apart', () => {
    expect(evenJoints(slab, 2000, 4000)).toEqual([
      ...[2000, 4000].map((x) => [
        [x, 0],
        [x, 8000],
      ]),
      [
        [0, 4000],
        [6000, 4000],
      ],
    ]);
    expect(evenJoints(slab, 6000, 9000)).toEqual([]);
    expect(evenJoints({ length: 6001, width: 100 }, 6000, 100)).toHaveLength(1);
  });
  it('comes of taped sides and turns, and tells how far it does not close', () => {
    const side = (length: number, turn = 90) => ({ length, turn });
    const { corners, open } = cornersFromSides([
      side(30),
      side(10),
      side(20),
      side(10, -90),
      side(10),
      side(20),
    ]);
    expect(corners.map((place) => place.map((mm) => Math.round(mm) + 0))).toEqual([
      ...[
        [0, 0],
        [30, 0],
        [30, 10],
        [10, 10],
        [10, 0],
        [0, 0],
      ],
    ]);
    expect(open).toBeCloseTo(20, 6);
    expect(cornersFromSides([])).toEqual({ corners: [], open: 0 });
  });
});

describe('joints', () => {
  const taken = (...joints: Place[][]) =>
    takenOn(ring, joints).map((joint) => joint.map((place) => place.map((mm) => Math.round(mm))));
  it('that end inside are taken on straight to the next edge or joint', () => {
    expect(
      taken([
        [1000, 0],
        [1000, 500],
      ]),
    ).toEqual([
      [
        [1000, 0],
        [1000, 500],
        [1000, 8000],
      ],
    ]);
    expect(
      taken([
        [1000, 500],
        [1000, 900],
      ]),
    ).toEqual([
      [
        [1000, 0],
        [1000, 500],
        [1000, 900],
        [1000, 8000],
      ],
    ]);
    expect(
      taken(across, [
        [6000, 4000],
        [4000, 4000],
      ])[1],
    ).toEqual([
      ...[
        [6000, 4000],
        [4000, 4000],
        [3000, 4000],
      ],
    ]);
    // Askew, and round a bend: on along its last piece.
    expect(
      taken([
        [0, 0],
        [1000, 1000],
        [1000, 2000],
      ])[0]?.at(-1),
    ).toEqual([1000, 8000]);
    expect(
      taken([
        [1000, 1000],
        [2000, 2000],
      ]),
    ).toEqual([
      [
        [0, 0],
        [1000, 1000],
        [2000, 2000],
        [6000, 6000],
      ],
    ]);
  });
  it('that end on a line, outside, or a slip past a line stay as they are', () => {
    for (const joint of [
      across,
      [
        [3000, -100],
        [3000, 8100],
      ],
    ] as Place[][])
      expect(taken(joint)).toEqual([joint]);
    const past: Place[] = [
      [6000, 4000],
      [2985, 4000],
    ];
    expect(taken(across, past)[1]).toEqual(past);
    const tooFar: Place[] = [
      [6000, 4000],
      [2970, 4000],
    ];
    expect(taken(across, tooFar)[1]).toEqual([...tooFar, [0, 4000]]);
    expect(
      taken([
        [1000, 1000],
        [1000, 1000],
      ]),
    ).toEqual([
      [
        [1000, 1000],
        [1000, 1000],
      ],
    ]);
    const short = (joint: Place[]) => stopsShort(ring, [across, joint], 1);
    expect([
      short([
        [6000, 4000],
        [4000, 4000],
      ]),
      short([
        [6000, 4000],
        [3000, 4000],
      ]),
    ]).toEqual([true, false]);
    expect([
      short([
        [6000, 4000],
        [3039, 4000],
      ]),
      short([
        [6000, 4000],
        [3041, 4000],
      ]),
    ]).toEqual([false, true]);
  });
  it('part the surface into bays, counted along and then across', () => {
    const bays = baysOf(ring, evenJoints(slab, 3000, 4000));
    expect(bays.map(({ id, box, area }) => [id, box.x0, box.y0, area])).toEqual([
      ['1', 0, 0, near(12)],
      ['2', 3000, 0, near(12)],
      ['3', 0, 4000, near(12)],
      ['4', 3000, 4000, near(12)],
    ]);
    expect(baysOf(ring, [])).toEqual([
      { id: '1', ring, box: { x0: 0, y0: 0, x1: 6000, y1: 8000 }, area: 48 },
    ]);
    // In whatever order and direction the joints are given.
    const three: Place[][] = [
      across,
      [
        [0, 4000],
        [6000, 4000],
      ],
      [
        [4500, 0],
        [4500, 4000],
      ],
    ];
    const areas = (joints: Place[][]) => baysOf(ring, joints).map(({ id, area }) => [id, area]);
    for (const joints of [three, three.toReversed(), three.map((joint) => joint.toReversed())])
      expect(areas(joints)).toEqual(
        [12, 6, 6, 12, 12].map((area, at) => [String(at + 1), near(area)]),
      );
    // Two joints a hair apart leave a sliver, which is no bay.
    const hair: Place[] = [
      [3000.0002, 0],
      [3000.0002, 8000],
    ];
    expect(areas([across, hair])).toEqual([
      ['1', expect.closeTo(24, 5)],
      ['2', expect.closeTo(24, 5)],
    ]);
    // A loose end parts nothing: it is taken on; what hangs on nothing does not.
    const cross = baysOf(ring, [
      across,
      [
        [0, 4000],
        [6000, 4000],
      ],
      [
        [0, 0],
        [3000, 4000],
      ],
    ]);
    expect(cross.map(({ area }) => area)).toEqual([6, 6, 12, 12, 12].map(near));
    for (const bay of cross) expect(inside(somewhereIn(bay.ring), bay.ring, 0)).toBe(true);
    expect(openGround).toMatchObject({
      id: '',
      area: Infinity,
      box: { x0: -Infinity, y1: Infinity },
    });
  });
});
