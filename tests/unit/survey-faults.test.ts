import { describe, expect, it } from 'vitest';
import type { Mark, Place, Survey } from '$lib/answers/survey';
import { faultOf, markFault, outlineFault, remarksOn } from '$lib/survey/faults';
import { outlineOf } from '$lib/survey/outline';
import { rectangle } from '../helpers/drawings';

const slab = { length: 6000, width: 8000 };
const ring = outlineOf(slab);
const across: Place[] = [
  [3000, 0],
  [3000, 8000],
];

describe('what cannot be drawn', () => {
  const fault = (marks: readonly object[], more: Partial<Survey> = {}) =>
    faultOf({ slab, marks: marks as Mark[], ...more });
  const spot = (corners: readonly Place[]) => ({ kind: 'spot', corners });
  const line = (...places: Place[]) => ({ kind: 'crack', line: places });
  it('is named at its place', () => {
    expect(fault([])).toBeNull();
    expect(
      fault([spot(rectangle(100, 100, 300, 300)), line([0, 0], [900, 900])], { joints: [across] }),
    ).toBeNull();
    expect(
      faultOf({
        slab: {
          corners: [
            [0, 0],
            [900, 900],
          ],
        },
      }),
    ).toEqual({ path: ['slab', 'corners'], fault: 'not-closed' });
    expect(faultOf({ slab: { length: 299, width: 100 } })).toEqual({
      path: ['slab'],
      fault: 'wrong-unit',
    });
    expect(faultOf({ slab: { length: 300, width: 100 } })).toBeNull();
    expect(faultOf({ slab: { length: 100, width: 500_001 } })?.fault).toBe('wrong-unit');
    const joint = (...places: Place[]) => fault([], { joints: [across, places] });
    expect(joint([0, 0], [0, 4], [0, 0])).toEqual({ path: ['joints', 1], fault: 'closed-joint' });
    expect(joint([9, 9], [9, 9])?.fault).toBe('wrong-unit');
    expect(joint([9, 9], [9, 13])?.fault).toBe('wrong-unit');
    expect(joint([7000, 0], [7000, 900])?.fault).toBe('off-slab');
    expect(joint([-100, 4000], [7000, 4000])).toBeNull();
    const first = { kind: 'tap', at: [5, 5], rings: true };
    expect(fault([first, line([7000, 0], [7000, 90])])).toEqual({
      path: ['marks', 1, 'line'],
      fault: 'off-slab',
    });
    expect(fault([{ kind: 'tap', at: [6002, 5], rings: true }])).toEqual({
      path: ['marks', 0, 'at'],
      fault: 'off-slab',
    });
    expect(fault([{ kind: 'tap', at: [6000.5, 5], rings: true }])).toBeNull();
    expect(
      fault([
        spot([
          [0, 0],
          [9, 9],
        ]),
      ]),
    ).toEqual({ path: ['marks', 0, 'corners'], fault: 'not-closed' });
    expect(fault([spot(rectangle(1, 1, 4, 4))])?.fault).toBe('wrong-unit');
    expect(fault([spot(rectangle(1, 1, 5, 5))])).toBeNull();
    expect(
      fault([
        spot([
          [0, 0],
          [90, 90],
          [90, 0],
          [0, 90],
        ]),
      ])?.fault,
    ).toBe('crosses-itself');
  });
  it('lies off the surface, though its line or corner may touch it', () => {
    const off = (mark: object) => markFault(mark as Mark, ring)?.fault;
    for (const corners of [
      ...[rectangle(7000, 0, 900, 900), rectangle(6000, 0, 900, 900), rectangle(-900, 0, 900, 900)],
      ...[
        rectangle(0, 8000, 900, 900),
        rectangle(0, -900, 900, 900),
        rectangle(7000, 8000, 90, 90),
      ],
    ])
      expect(off(spot(corners))).toBe('off-slab');
    for (const corners of [
      ...[
        rectangle(5990, 0, 900, 900),
        rectangle(-900, -900, 9000, 9900),
        rectangle(-90, 4000, 9000, 90),
      ],
      ...[rectangle(0, 0, 6000, 8000), rectangle(-90, -90, 95, 95)],
    ])
      expect(off(spot(corners))).toBeUndefined();
    expect(off(line([-500, 4000], [-100, 4000]))).toBe('off-slab');
    for (const places of [
      [
        [0, 0],
        [0, 900],
      ],
      [
        [-90, 4000],
        [9000, 4000],
      ],
      [
        [6000.5, 10],
        [6900, 10],
      ],
    ] as Place[][])
      expect(off(line(...places))).toBeUndefined();
  });
  it('is an outline that is open, crosses or covers nothing', () => {
    const square = rectangle(0, 0, 100, 100);
    expect([outlineFault(square), outlineFault([...square, [0, 0]])]).toEqual([null, null]);
    expect([
      outlineFault([]),
      outlineFault([[0, 0]]),
      outlineFault([
        [0, 0],
        [9, 0],
        [0, 0],
      ]),
    ]).toEqual(Array(3).fill('not-closed'));
    expect(
      outlineFault([
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 100],
      ]),
    ).toBe('crosses-itself');
    expect(
      outlineFault([
        [0, 0],
        [100, 0],
        [50, 0],
        [50, 50],
      ]),
    ).toBe('crosses-itself');
    // A corner on another side touches it.
    expect(
      outlineFault([
        [0, 0],
        [100, 0],
        [100, 100],
        [50, 0],
        [0, 100],
      ]),
    ).toBe('crosses-itself');
    expect(
      outlineFault([
        [0, 0],
        [1, 0],
        [0, 1.9],
      ]),
    ).toBe('no-area');
    expect(
      outlineFault([
        [0, 0],
        [1, 0],
        [0, 2.1],
      ]),
    ).toBeNull();
  });
  it('is a heap of taps in another unit', () => {
    const taps = (by: number, count = 3) =>
      fault(
        Array.from({ length: count }, (_, at) => ({ kind: 'tap', at: [at * by, 5], rings: true })),
      );
    expect(taps(19)).toEqual({ path: ['marks', 0, 'at'], fault: 'wrong-unit' });
    expect([taps(21), taps(1, 2)]).toEqual([null, null]);
  });
  it('or what may be a slip is told of, and drawn', () => {
    const remarks = (marks: readonly object[], joints: Place[][] = []) =>
      remarksOn({ slab, joints, marks: marks as Mark[] }, ['a']).map(({ path, remark }) =>
        [...path, remark].join(' '),
      );
    const zone = (corners: readonly Place[], name = 'a') => ({ kind: 'zone', zone: name, corners });
    expect(remarks([spot(rectangle(0, 0, 100, 100)), line([0, 0], [9000, 0])])).toEqual([]);
    expect(remarks([spot(rectangle(5990, 0, 100, 100))])).toEqual(['marks 0 corners over-edge']);
    expect(remarks([spot(rectangle(5900, 0, 100.5, 100))])).toEqual([]);
    expect(
      remarks([zone(rectangle(2000, 0, 2000, 900)), zone(rectangle(3000, 0, 900, 900))], [across]),
    ).toEqual(['marks 0 corners cut-by-joint']);
    expect(
      remarks([zone(rectangle(0, 0, 900, 900), 'z'), { ...line([0, 0], [9, 9]), zone: 'y' }]),
    ).toEqual([...['marks 0 zone unknown-zone', 'marks 1 zone unknown-zone']]);
    expect(
      remarks(
        [],
        [
          across,
          [
            [6000, 4000],
            [4000, 4000],
          ],
        ],
      ),
    ).toEqual(['joints 1 joint-taken-on']);
    // A flight's folds part it as joints do.
    const steps = { count: 2, tread: 280, riser: 170, width: 1200 };
    const over = { slab: { steps }, marks: [zone(rectangle(0, 0, 300, 900)) as Mark] };
    expect(remarksOn(over, ['a'])).toEqual([
      { path: ['marks', 0, 'corners'], remark: 'cut-by-joint' },
    ]);
  });
});
