import { describe, expect, it } from 'vitest';
import type { Mark, Survey } from '$lib/answers/survey';
import { baysOf } from '$lib/survey/bays';
import { gap } from '$lib/survey/geometry';
import { cornersFromSides, evenJoints, outlineOf } from '$lib/survey/outline';
import { layPatches, rectangleRing, type Patch } from '$lib/survey/patches';
import { surveyOf, type SurveyResult } from '$lib/survey/survey';
import { valueOf } from '$shared/figures';
import { drawn, rectangle } from '../helpers/drawings';

const slab = { length: 6000, width: 8000 };
const joint: [number, number][] = [
  [3000, 0],
  [3000, 8000],
];
const spot = (x: number, y: number, length: number, width: number, more = {}): Mark => ({
  kind: 'spot',
  corners: rectangle(x, y, length, width),
  ...more,
});
const of = (survey: Survey, zones = ['a', 'b'], site = {}): SurveyResult =>
  surveyOf(drawn(survey, zones, site)) as SurveyResult;
const at = ({ x, y, length, width }: Patch) =>
  [x, y, length, width].map((mm) => Math.round(mm * 1e6) / 1e6);

/** FHWA, Partial-depth repairs, 4.2, for the geometry; where it is silent: common practice, no source. */
describe('a patch', () => {
  it('goes past the damage on every side, square to the surface', () => {
    const { patches } = of({
      slab,
      marks: [
        {
          kind: 'spot',
          corners: [
            [1000, 1000],
            [1400, 1200],
            [1100, 1500],
          ],
        },
      ],
    });
    expect(patches.map(at)).toEqual([[900, 900, 600, 700]]);
  });

  it('ends at a joint, and damage on both sides of it becomes two patches', () => {
    const { patches, sawCut } = of({ slab, joints: [joint], marks: [spot(2800, 1000, 400, 300)] });
    expect(patches.map(at)).toEqual([
      [2700, 900, 300, 500],
      [3000, 900, 300, 500],
    ]);
    expect(patches.map(({ bay }) => bay)).toEqual(['1', '2']);
    // Each is sawn on three sides: 300 + 500 + 300; the joint is there already.
    expect(sawCut).toBeCloseTo(2.2, 9);
  });

  it('takes no sound concrete across a joint for the margin alone', () => {
    const { patches } = of({ slab, joints: [joint], marks: [spot(2500, 1000, 450, 300)] });
    expect(patches.map(at)).toEqual([[2400, 900, 600, 500]]);
  });

  it('ends at the edge of the surface, where nothing is sawn', () => {
    const { patches, sawCut } = of({ slab, marks: [spot(-20, -20, 520, 420)] });
    expect(patches.map(at)).toEqual([[0, 0, 600, 500]]);
    expect(sawCut).toBeCloseTo(1.1, 9);
  });

  it('is merged with one closer than 300 mm, but never over a joint', () => {
    const near = [
      spot(2000, 1000, 300, 300),
      spot(2700, 1000, 200, 300),
      spot(3150, 1000, 300, 300),
    ];
    // Without the joint: 200 mm and then 50 mm between the patches, all one.
    expect(of({ slab, marks: near }).patches.map(at)).toEqual([[1900, 900, 1650, 500]]);
    expect(of({ slab, joints: [joint], marks: near }).patches.map(at)).toEqual([
      [1900, 900, 1100, 500],
      [3050, 900, 500, 500],
    ]);
    // Exactly 300 mm apart they stay two.
    expect(
      of({ slab, marks: [spot(1000, 1000, 200, 300), spot(1700, 1000, 200, 300)] }).patches,
    ).toHaveLength(2);
  });

  it('is never smaller than 300 by 100 mm, and moves off the joint to be so', () => {
    const own = { 'patch.past-damage-frost': 1 };
    const job = { ...drawn({ slab, joints: [joint], marks: [spot(2800, 1000, 190, 20)] }), own };
    expect(surveyOf(job)?.patches.map(at)).toEqual([[2700, 960, 300, 100]]);
  });

  it('leaves a spall under 150 mm long and 38 mm wide', () => {
    const { skipped, patches } = of({
      slab,
      marks: [spot(1000, 1000, 140, 30), spot(4000, 1000, 160, 30)],
    });
    expect(skipped).toEqual([0]);
    expect(patches).toHaveLength(1);
  });

  it('has no re-entrant corner round the corner of an angled surface, and the cut between its parts is sawn once', () => {
    const corners: [number, number][] = [
      [0, 0],
      [6000, 0],
      [6000, 3000],
      [3000, 3000],
      [3000, 6000],
      [0, 6000],
    ];
    const angled: [number, number][] = [
      [2600, 2600],
      [3400, 2600],
      [3400, 2900],
      [2900, 2900],
      [2900, 3400],
      [2600, 3400],
    ];
    const { patches, sawCut } = of({
      slab: { corners },
      marks: [{ kind: 'spot', corners: angled }],
    });
    expect(patches).toHaveLength(2);
    expect(patches.every((patch) => patch.corners === undefined)).toBe(true);
    // 1 m by 1 m less the quarter that is no surface.
    expect(patches.reduce((sum, patch) => sum + patch.area, 0)).toBeCloseTo(0.75, 6);
    // 1 + 0.5 + 0.5 + 1 m round it, 0.5 m between its parts; nothing along the free edges.
    expect(sawCut).toBeCloseTo(3.5, 3);
  });

  it('keeps the side an askew joint gives it', () => {
    const { patches } = of({
      slab,
      joints: [
        [
          [2000, 0],
          [4000, 8000],
        ],
      ],
      marks: [spot(2600, 3700, 300, 300)],
    });
    const [patch] = patches;
    expect(patches).toHaveLength(1);
    expect(patch?.corners).toBeDefined();
    expect(patch?.area).toBeLessThan(((patch?.length ?? 0) * (patch?.width ?? 0)) / 1e6);
  });

  it('is chalked on from the nearer joint or edge each way', () => {
    const { patches } = of({ slab, joints: [joint], marks: [spot(3300, 7000, 300, 300)] });
    expect(patches[0]?.chalk).toEqual({
      along: { from: 'low', distance: 200 },
      across: { from: 'high', distance: 600 },
      measuredIn: 'bay',
    });
  });

  it('belongs to the zone of most of its damage', () => {
    const marks = [
      spot(1000, 1000, 300, 300, { zone: 'a' }),
      spot(1400, 1000, 600, 300, { zone: 'b' }),
    ];
    expect(of({ slab, marks }).patches.map(({ zone }) => zone)).toEqual(['b']);
    const painted: Mark = { kind: 'zone', zone: 'b', corners: rectangle(0, 0, 3000, 8000) };
    expect(of({ slab, marks: [painted, spot(1000, 1000, 300, 300)] }).patches[0]?.zone).toBe('b');
    // The one zone nothing is drawn for is the rest.
    expect(of({ slab, marks: [painted, spot(4000, 1000, 300, 300)] }).patches[0]?.zone).toBe('a');
  });
});

describe('a bay', () => {
  it('more than half patched is offered to be treated whole', () => {
    const joints = [joint];
    const half = of({ slab, joints, marks: [spot(100, 100, 2800, 3800)] });
    expect(half.bays).toMatchObject([
      { id: '1', area: 24, patched: 3 * 4, whole: false },
      { id: '2', area: 24, patched: 0, whole: false },
    ]);
    expect(half.ifWhole).toBeNull();
    const more = of({
      slab,
      joints,
      marks: [spot(100, 100, 2800, 3900), spot(4000, 4000, 300, 300)],
    });
    expect(more.bays[0]).toMatchObject({ whole: true, patched: expect.closeTo(12.3, 9) });
    // As patches: one side of 3 m across the bay, and 4 x 500 mm round the other. The bay whole has
    // joints and edges all round, and leaves the other patch to saw.
    expect(more.bays.map(({ saw }) => saw)).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
    expect(more.sawCut).toBeCloseTo(5, 9);
    expect(more.ifWhole).toEqual({ area: 24.25, sawCut: expect.closeTo(2, 9) });
  });

  it('comes of a typed spacing, a joint that ends on another, and one that stops short', () => {
    expect(baysOf(outlineOf(slab), evenJoints(slab, 2000, 2000))).toHaveLength(12);
    const side: [number, number][] = [
      [3000, 4000],
      [6000, 4000],
    ];
    expect(baysOf(outlineOf(slab), [joint, side]).map(({ area }) => area)).toEqual([24, 12, 12]);
    const short: [number, number][] = [
      [6000, 4000],
      [4000, 4000],
    ];
    expect(baysOf(outlineOf(slab), [joint, short]).map(({ area }) => area)).toEqual([24, 12, 12]);
    expect(of({ slab, joints: [joint, short] }).remarks).toEqual([
      { path: ['joints', 1], remark: 'joint-taken-on' },
    ]);
  });

  it('is not parted by a line that hangs on nothing', () => {
    const alone: [number, number][] = [
      [1000, 1000],
      [2000, 1000],
      [1500, 2000],
      [1000.4, 1000.4],
    ];
    const bays = baysOf(outlineOf(slab), [alone]);
    expect(bays.reduce((sum, { area }) => sum + area, 0)).toBeCloseTo(48, 6);
  });
});

describe('a slab', () => {
  it('taped side by side closes, or tells how far it does not', () => {
    const sides = [6000, 8000, 6000, 8000].map((length) => ({ length, turn: 90 }));
    const { corners, open } = cornersFromSides(sides);
    expect(open).toBeLessThan(1e-6);
    expect(corners).toHaveLength(4);
    expect(cornersFromSides(sides.with(3, { length: 7900, turn: 90 })).open).toBeCloseTo(100, 6);
  });

  it('of steps is a flight laid flat with a bay for each face', () => {
    const steps = { count: 3, tread: 280, riser: 170, width: 1200 };
    const { bays, area } = of({ slab: { steps } });
    expect(area).toBeCloseTo(3 * (0.28 + 0.17) * 1.2, 9);
    expect(bays.map((bay) => Math.round(bay.area * 1000))).toEqual([204, 336, 204, 336, 204, 336]);
  });
});

describe('typed spots without a drawing', () => {
  it('are laid by the same rules, with nothing that ends a patch', () => {
    const typed = { x: 0, y: 0, length: 400, width: 300 };
    const { patches } = layPatches([rectangleRing(typed)], 'often');
    expect(patches.map(at)).toEqual([[-100, -100, 600, 500]]);
    expect(patches[0]?.saw).toBeCloseTo(2.2, 9);
    expect(gap({ x0: 0, y0: 0, x1: 1, y1: 1 }, { x0: 4, y0: 5, x1: 6, y1: 6 })).toBe(5);
    expect(valueOf('patch.merge')).toBe(300);
  });
});
