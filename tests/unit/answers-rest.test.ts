import { describe, expect, it } from 'vitest';
import { dustHoursIds, regionOf, regions, turnsIds } from '$lib/answers/crew-day';
import { inOrder, inPairs, stages, type Photo } from '$lib/answers/photo';
import { restOf, withRest, zonesTogether } from '$lib/answers/rest';
import { usFactor, usPricedUnit } from '$lib/answers/units';
import { tradeJob } from '../helpers/trade-jobs';

describe('what the zones leave of the whole surface', () => {
  const job = (total: number | undefined, ...areas: (number | 'unknown')[]) => ({
    ...tradeJob(areas.map((area) => ({ area }))),
    ...(total !== undefined && { totalArea: total }),
    rest: 'z0',
  });
  it('is an area, nothing, too much, or not to be told', () => {
    expect(restOf(job(10, 4, 2.5, 3))).toEqual({ id: 'left', area: 4.5 });
    expect(restOf(job(10, 4, 8, 3))).toEqual({ id: 'over', area: 1 });
    expect(restOf(job(10, 4, 7, 3))).toEqual({ id: 'nothing' });
    expect(restOf(job(undefined, 4, 7))).toEqual({ id: 'no-total' });
    expect(restOf(job(10, 4, 'unknown', 3))).toEqual({ id: 'no-area', zones: ['z1'] });
    // 0.3 less 0.1 and 0.1 is 0.09999999999999998 to a machine; less than a thousandth is no zone.
    expect(restOf(job(0.3, 4, 0.1, 0.1))).toEqual({ id: 'left', area: 0.1 });
    expect(restOf(job(10, 4, 9.999))).toEqual({ id: 'left', area: 0.001 });
    expect(restOf(job(1000, 4, 999.7))).toEqual({ id: 'left', area: 0.3 });
    expect(restOf(job(10, 4, 9.9991))).toEqual({ id: 'nothing' });
    expect(restOf(job(10, 4, 10.0009))).toEqual({ id: 'nothing' });
    const { rest: _none, ...all } = job(10, 4, 5);
    expect(restOf(all)).toEqual({ id: 'left', area: 1 });
  });

  it('is all that the zones come to, where each has its area', () => {
    expect(zonesTogether(job(undefined, 4, 7))).toBe(11);
    expect(zonesTogether(job(undefined, 0.1, 0.2))).toBe(0.3);
    expect(zonesTogether(job(undefined, 4, 'unknown'))).toBeNull();
    expect(zonesTogether({ zones: [] })).toBeNull();
  });

  it('is the area of the rest, and of no other zone', () => {
    const areas = (whole: ReturnType<typeof job>) =>
      withRest(whole).zones.map(({ answers }) => answers.area);
    expect(areas(job(10, 4, 2.5, 3))).toEqual([4.5, 2.5, 3]);
    expect(areas(job(10, 4, 8, 3))).toEqual(['unknown', 8, 3]);
    expect(areas(job(undefined, 4, 8))).toEqual(['unknown', 8]);
    const same = job(10, 4.5, 2.5, 3);
    expect(withRest(same)).toBe(same);
    const gone = { ...same, rest: 'gone', totalArea: 20 };
    expect(withRest(gone)).toBe(gone);
    const changed = withRest(job(10, 4, 2.5, 3));
    expect(changed).toEqual({ ...job(10, 4.5, 2.5, 3) });
  });
});

describe('photos of a zone', () => {
  const photo = (id: string, stage: Photo['stage'], place = 0, addedAt = 0) =>
    ({ id, stage, place, addedAt }) as Photo;
  const ids = (photos: readonly Photo[]) => photos.map(({ id }) => id).join('');
  it('stand by place, then by when they were added', () => {
    const some = [photo('d', 'other', 2, 1), photo('c', 'other', 1, 9), photo('b', 'other', 1, 3)];
    expect(ids(inOrder([...some, photo('a', 'other', 0, 99)]))).toBe('abcd');
    expect(ids(some)).toBe('dcb');
  });
  it('stand before beside after, then what stands alone', () => {
    expect(stages).toEqual(['before', 'after', 'other']);
    const all = [
      photo('x', 'other'),
      photo('a', 'after'),
      photo('b', 'before'),
      photo('y', 'other'),
      photo('c', 'before'),
    ];
    expect(inPairs(all).map(ids)).toEqual(['ba', 'c', 'x', 'y']);
    expect(inPairs([photo('a', 'after')]).map(ids)).toEqual(['a']);
  });
});

describe('whose rules come first', () => {
  it('are those chosen, or as the units have it', () => {
    expect([regions, turnsIds, dustHoursIds]).toEqual([
      ['us', 'elsewhere'],
      ['one-operator', 'equal'],
      ['at-task', 'tool-running'],
    ]);
    expect([regionOf(undefined, 'us'), regionOf({}, 'metric')]).toEqual(['us', 'elsewhere']);
    expect(regionOf({ region: 'us' }, 'metric')).toBe('us');
    expect(regionOf({ region: 'elsewhere' }, 'us')).toBe('elsewhere');
  });
});

// International yard and pound agreement of 1959, and standard gravity: exact by definition.
describe('what prices in US units are given for', () => {
  it('a cubic yard, a short ton; a pound-force of a disc pulled off', () => {
    expect(usPricedUnit.m3).toBeCloseTo(0.764554857984, 12);
    expect(usPricedUnit.t).toBeCloseTo(0.90718474, 12);
    expect(usFactor.kN).toBeCloseTo(0.0044482216152605, 14);
  });
});
