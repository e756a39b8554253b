import { describe, expect, it } from 'vitest';
import type { Mark, Place, Survey } from '$lib/answers/survey';
import { patchPlan } from '$lib/drawing/plan/patches';
import { drawnJob, drawnPatches, spotsOf } from '$lib/survey/drawn';
import { patchNumber, type PatchLayout } from '$lib/survey/patches';
import { outlineOf } from '$lib/survey/outline';
import { groundsOf, surveyOf, type SurveyResult } from '$lib/survey/survey';
import { lengthByZone, zoneGrounds, zoneOf } from '$lib/survey/zones';
import { drawn, rectangle } from '../helpers/drawings';

const near = (value: number) => expect.closeTo(value, 6) as number;
const slab = { length: 6000, width: 8000 };
const ring = outlineOf(slab);

describe('zones on a drawing', () => {
  const claim = (zone: string, ...box: Parameters<typeof rectangle>) => ({
    zone,
    ring: rectangle(...box),
  });
  it('have what their spots claim before what is painted, in the order of the job; the rest has the rest', () => {
    const grounds = (rest?: string) =>
      zoneGrounds(
        ring,
        ['a', 'b', 'c'],
        [claim('b', 1000, 1000, 1000, 1000), claim('b', 1500, 1000, 1000, 1000)],
        [
          claim('a', 0, 0, 3000, 8000),
          claim('b', 2000, 0, 2000, 8000),
          claim('z', 0, 0, 6000, 8000),
        ],
        rest,
      );
    const areas = (rest?: string) => grounds(rest).zones.map(({ id, area }) => [id, area]);
    expect(areas()).toEqual([
      ['a', near(22.5)],
      ['b', near(9.5)],
    ]);
    expect(grounds().unclaimed).toBeCloseTo(16, 6);
    expect(areas('c')).toEqual([
      ['a', near(22.5)],
      ['b', near(9.5)],
      ['c', near(16)],
    ]);
    expect(grounds('c').unclaimed).toBe(0);
    expect(areas('a')[0]).toEqual(['a', near(38.5)]);
    expect(grounds('gone').unclaimed).toBeCloseTo(16, 6);
    expect(areas('gone')).toEqual(areas());
  });
  it('leave nothing for the rest where all is claimed', () => {
    const all = [claim('a', 0, 0, 6000, 8000)];
    const { zones: found, unclaimed } = zoneGrounds(ring, ['a', 'b'], [], all, 'b');
    expect(found.map(({ id }) => id)).toEqual(['a']);
    expect(unclaimed).toBe(0);
  });
  const { zones } = zoneGrounds(
    ring,
    ['a', 'b'],
    [],
    [claim('a', 0, 0, 3000, 8000), claim('b', 3000, 0, 2000, 8000)],
    undefined,
  );
  it('are looked up by ground and measured along lines, to both sides where a line is an outline', () => {
    expect(zoneOf(rectangle(2500, 0, 1500, 100), zones)).toBe('b');
    expect(zoneOf(rectangle(2500, 0, 900, 100), zones)).toBe('a');
    expect(zoneOf(rectangle(5500, 0, 100, 100), zones)).toBeUndefined();
    const along = (line: Place[], beside?: number) =>
      Object.fromEntries(lengthByZone(line, zones, beside));
    expect(
      along([
        [1000, 500],
        [6000, 500],
      ]),
    ).toEqual({ a: near(2), b: near(2) });
    expect(
      along([
        [1000, 500],
        [1000, 900],
        [4000, 900],
      ]),
    ).toEqual({ a: near(2.4), b: near(1) });
    expect(
      along(
        [
          [0, 0],
          [0, 8000],
        ],
        5,
      ),
    ).toEqual({ a: near(8) });
    expect(
      along(
        [
          [3000, 0],
          [3000, 8000],
        ],
        5,
      ),
    ).toEqual({ a: near(8), b: near(8) });
    expect(
      along(
        [
          [0, 8000],
          [5000, 8000],
        ],
        5,
      ),
    ).toEqual({ a: near(3), b: near(2) });
    expect(
      along(
        [
          [0, 0],
          [5000, 0],
        ],
        5,
      ),
    ).toEqual({ a: near(3), b: near(2) });
    expect(
      along([
        [5500, 0],
        [5500, 800],
      ]),
    ).toEqual({});
  });
});

describe('a job with a drawing', () => {
  const spot = (x: number, more = {}): Mark => ({
    kind: 'spot',
    corners: rectangle(x, 1000, 400, 300),
    ...more,
  });
  const line = (y: number): Place[] => [
    [500, y],
    [2500, y],
  ];
  const marks: Mark[] = [
    { kind: 'zone', zone: 'a', corners: rectangle(0, 0, 3000, 8000) },
    spot(1000, { depth: 30 }),
    { kind: 'crack', line: line(4000), crack: 'open' },
    { kind: 'crack', line: line(5000) },
    { kind: 'crack', line: line(5500), crack: 'open', zone: 'b' },
    { kind: 'bar', line: line(6000) },
    {
      kind: 'upright',
      line: [
        [0, 0],
        [0, 8000],
      ],
    },
    spot(4000, { zone: 'b', depth: 40 }),
    spot(4400, { zone: 'b' }),
    { kind: 'spot', corners: rectangle(5000, 5000, 100, 20) },
  ];
  const survey: Survey = { slab, marks };
  const job = drawn(survey, ['a', 'b', 'c', 'd'], { thickness: 150, freezeThaw: ['often'] });
  const result = surveyOf(job) as SurveyResult;

  it('comes to areas, lengths, patches and what they take off', () => {
    expect(result).toMatchObject({
      ...{ area: 48, skipped: [9], unclaimed: near(24 - 0.24), bars: 2, upright: 8 },
      ...{ areas: { a: near(24), b: near(0.24) }, cracks: { open: 4, 'not-sure': 2 } },
      ...{ cracksByZone: { a: near(4), b: 2 }, uprightByZone: { a: near(8) } },
      patches: [
        { spots: [1], zone: 'a', depth: 30, x: 900, length: 600 },
        { spots: [7, 8], zone: 'b', x: 3900, length: 1000 },
      ],
      removal: { volume: near(0.3 * 0.043), share: null, withoutDepth: [1] },
      ...{ chained: null, spacing: null, found: null, hollow: null, untapped: [], remarks: [] },
    });
    expect(result.patches[1]).not.toHaveProperty('depth');
    expect(result.sawCut).toBeCloseTo(2.2 + 3, 6);
    expect(surveyOf(job)).toBe(result);
    expect(surveyOf({ ...job, own: { 'patch.merge': 1 } })).not.toBe(result);
    expect(surveyOf(drawn({ slab }, []))?.areas).toEqual({});
    const { survey: _none, ...bare } = job;
    expect([surveyOf(bare), groundsOf(bare)]).toEqual([null, []]);
    expect(groundsOf(job).map(({ id }) => id)).toEqual(['a', 'b']);
  });

  it('gives what is drawn for what was typed, and leaves what it says nothing about', () => {
    const typed = {
      ...job,
      zones: job.zones.map((zone) => ({
        ...zone,
        answers: { area: 5, crackLength: 7, borderLength: 9 },
      })),
    };
    const after = drawnJob(typed, result);
    expect(after.totalArea).toBe(48);
    expect(after.zones.map(({ answers }) => answers)).toEqual([
      // A bar of 2 m, and 150 mm past each end.
      {
        ...{ area: near(24), crackLength: near(4), borderLength: near(8) },
        ...{ barLength: near(2.3), depth: 30 },
      },
      {
        ...{ area: near(0.24), crackLength: 2, borderLength: 0 },
        // One of its spots was not measured: as deep as the other, or deeper.
        depth: ['20-to-50', 'over-50', 'through'],
      },
      { area: 5, crackLength: 7, borderLength: 9 },
      { area: 5, crackLength: 7, borderLength: 9 },
    ]);
    expect(drawnJob(typed, null)).toBe(typed);
    const bare = surveyOf(drawn({ slab, marks: [marks[0] as Mark] }, ['a', 'b', 'c', 'd']));
    expect(drawnJob(typed, bare).zones[0]?.answers).toEqual({
      area: near(24),
      crackLength: 7,
      borderLength: 9,
    });
  });

  it('takes no area that is less than any zone has, nor cracks where none is drawn', () => {
    const tiny: Mark[] = [
      { kind: 'spot', corners: rectangle(1000, 1000, 30, 30), zone: 'a' },
      { kind: 'spot', corners: rectangle(2000, 1000, 40, 25), zone: 'b' },
    ];
    const zones = ['a', 'b', 'c', 'd'];
    const typed = drawn({ slab, marks: tiny }, zones);
    const after = drawnJob(typed, surveyOf(typed));
    // 0.0009 and 0.001 m2: a thousandth is the least that a field takes.
    expect(after.zones.map(({ answers }) => answers)).toEqual([{}, { area: near(0.001) }, {}, {}]);
  });

  it('has the patches of a zone, with its spots counted anew', () => {
    const layout = drawnPatches('b', result);
    expect(layout).toEqual({ patches: [result.patches[1]], skipped: [] });
    expect([drawnPatches('c', result), drawnPatches('a', null)]).toEqual([null, null]);
    const { spots, layout: counted } = spotsOf(survey, layout as never);
    expect(spots).toEqual([4000, 4400].map((x) => ({ x, y: 1000, length: 400, width: 300 })));
    expect(counted.patches[0]?.spots).toEqual([0, 1]);
  });

  // Whoever chalks by one sheet and breaks out by the other must not take one patch for another.
  it('has each patch by one number on the slab, the chalk sheet, and the zone’s own drawing', () => {
    const layout = drawnPatches('b', result) as PatchLayout;
    const { spots, layout: own } = spotsOf(survey, layout);
    const numbers = patchPlan(spots, own, 'metric').labels.filter(({ of }) => of === 'number');
    expect(numbers.map(({ text }) => text)).toEqual(['2']);
    expect(result.patches.map(patchNumber)).toEqual(result.patches.map((_, place) => place + 1));
    expect(own.patches.map(patchNumber)).toEqual([2]);
    // Spots of two patches are counted together, in the order of the marks.
    const two = { patches: [{ spots: [8] }, { spots: [1, 7] }], skipped: [] } as never;
    const again = spotsOf(survey, two);
    expect(again.spots.map(({ x }) => x)).toEqual([1000, 4000, 4400]);
    expect(again.layout.patches.map(({ spots: of }) => of)).toEqual([[2], [0, 1]]);
  });
});
