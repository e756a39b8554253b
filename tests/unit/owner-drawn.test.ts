import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { isKnown } from '$lib/plan/amount';
import { readForOwner } from '$lib/plan/conclusion';
import { priceDrivers } from '$lib/plan/price-drivers';
import { planJob } from '$lib/plan/plan';
import { rectangle } from '../helpers/drawings';
import { goodDrawing, readDrawn } from '../helpers/drawn-file';

const spot = (x: number, depth?: number) => ({
  kind: 'spot',
  corners: rectangle(x, 1000, 400, 500),
  zone: 'b',
  ...(depth !== undefined && { depth }),
});
/** All of the slab, 6 x 8 m and 200 mm thick, is zone b, hollow, 40 mm deep as answered; a chain went over it. */
const slab = (marks: readonly object[], lanes = 450): Job => {
  const painted = { kind: 'zone', zone: 'b', corners: rectangle(0, 0, 6000, 8000) };
  const job = readDrawn({ slab: goodDrawing.slab, marks: [painted, ...marks], lanes });
  return { ...job, zones: job.zones.filter(({ id }) => id === 'b') };
};
const sheet = (job: Job) => {
  const plan = planJob(job);
  return { plan, ...readForOwner(job, plan) };
};
// By hand: each spot 400 x 500 mm, and 100 mm past it on each side: 0.6 x 0.7 m.
const patch = 0.42;

// Common practice, no source: where all of it was heard, what lies between the spots that were drawn rings.
describe('the owner’s sheet of a zone in which the spots are drawn', () => {
  it('counts the spots as broken out and what lies between them as sound', () => {
    const { conditions, rings } = sheet(slab([spot(500), spot(4000)]));
    expect(conditions.of).toEqual({ b: 'break-out' });
    expect(conditions.area['break-out']).toBeCloseTo(2 * patch, 9);
    expect(conditions.area.sound).toBeCloseTo(48 - 2 * patch, 9);
    expect(rings).toBeCloseTo(1 - (2 * patch) / 48, 9);
  });
  it('counts all of it where none is', () => {
    const { conditions, rings } = sheet(slab([]));
    expect(conditions.area['break-out']).toBeCloseTo(48, 9);
    expect(rings).toBe(0);
  });

  describe('one of them past half of the slab', () => {
    const deep = sheet(slab([spot(500), spot(4000, 120)]));
    it('counts that one as replaced, the other as broken out, and no more of the zone', () => {
      expect(deep.conditions.of).toEqual({ b: 'replace' });
      expect(deep.conditions.area.replace).toBeCloseTo(patch, 9);
      expect(deep.conditions.area['break-out']).toBeCloseTo(patch, 9);
      expect(deep.rings).toBeCloseTo(1 - (2 * patch) / 48, 9);
      // Debris: the spots 200 mm deep at 2.3 to 2.5 t/m3, from memory; of all 48 m2 it would be 22 t and more.
      const debris = deep.options.parts?.debris;
      expect(debris && isKnown(debris) && debris.span[1]).toBeLessThan(2 * patch * 0.2 * 2500);
      // One through 200 mm; the other 40 mm deep as answered, and 13 mm into sound concrete.
      const { volume } = deep.shares;
      expect(volume?.low).toBeCloseTo((patch * (0.2 + 0.053)) / (48 * 0.2), 9);
      const measured = sheet(slab([spot(500, 30), spot(4000, 120)])).shares.volume;
      expect(measured?.low).toBeCloseTo((patch * (0.2 + 0.043)) / (48 * 0.2), 9);
      // Two spots are nothing for which all of a slab is broken up.
      expect(deep.conclusion).not.toBe('replace');
    });
    it('is no slab to restore: that part is made new, whatever else is done', () => {
      const { zones } = slab([spot(500), spot(4000, 120)]);
      const sound = { id: 'c', name: 'C', answers: { ...zones[0]?.answers, area: 10, depth: 40 } };
      const job = slab([spot(500), spot(4000, 120)]);
      const both = sheet({ ...job, zones: [...job.zones, sound] });
      expect(both.plan.zones.map(({ id }) => id)).toEqual(['c']);
      expect(both.options.restore).toBeNull();
      expect(both.options.parts).not.toBeNull();
    });
    it('drives the price by what is made new', () => {
      const [first] = priceDrivers(deep.plan);
      expect(first).toMatchObject({ id: 'made-new' });
      // By hand: one patch of 0.42 m2, 200 mm deep.
      const amount = first && 'amount' in first && first.amount;
      expect(amount && isKnown(amount) && amount.span).toEqual([
        expect.closeTo(patch * 0.2, 9),
        expect.closeTo(patch * 0.2, 9),
      ]);
      expect(priceDrivers(sheet(slab([spot(500)])).plan).map(({ id }) => id)).not.toContain(
        'made-new',
      );
    });
    it('says for which spot the zone waits, so that it can have a zone of its own', () => {
      expect(deep.plan.held.map(({ madeNewFor }) => madeNewFor)).toEqual([2]);
      expect(sheet(slab([spot(500, 120), spot(4000, 110)])).plan.held[0]?.madeNewFor).toBe(1);
    });
    it('says none of a zone that is no more than its spot: nothing else there can be planned', () => {
      const { survey: _painted, ...job } = slab([]);
      const alone = readDrawn({ slab: goodDrawing.slab, marks: [spot(4000, 120)] }).survey;
      const { held } = planJob({ ...job, ...(alone && { survey: alone }) });
      expect(held.map(({ id, madeNewFor }) => [id, madeNewFor])).toEqual([['b', null]]);
    });
    it('replaces all that is drawn where the zone was answered that deep itself', () => {
      const job = slab([spot(500), spot(4000, 130)]);
      const [zone] = job.zones;
      const answered = { id: 'b', name: 'B', answers: { ...zone?.answers, depth: 130 } };
      expect(sheet({ ...job, zones: [answered] }).conditions.area.replace).toBeCloseTo(
        2 * patch,
        9,
      );
    });
    it('says none where the zone was answered that deep itself', () => {
      const job = slab([spot(500)]);
      const [zone] = job.zones;
      const deeper = { id: 'b', name: 'B', answers: { ...zone?.answers, depth: 120 } };
      const answered = { ...job, zones: [deeper] };
      expect(planJob(answered).held.map(({ madeNewFor }) => madeNewFor)).toEqual([null]);
    });
  });
});

// Scaling by salt and frost: NRMCA CIP 2, from memory. What made it goes on after any repair.
describe('salt and frost that go on', () => {
  const ids = (site: Partial<Job['site']>, looseness: 'flaking' | 'tight' | 'hollow') => {
    const job = slab([]);
    const zones = job.zones.map((zone) => ({
      ...zone,
      answers: { ...zone.answers, depth: 5, looseness: [looseness] as const },
    }));
    const { points } = sheet({ ...job, site: { ...job.site, ...site }, zones });
    return points.restore?.against.some(({ id }) => id === 'salts-stay') ?? false;
  };
  const salted = { salts: ['de-icing'], freezeThaw: ['often'] } as const;
  it('speak against a repair where they made it scale; that new concrete scales too is in the sentence', () => {
    expect(ids(salted, 'flaking')).toBe(true);
  });
  it('are not told where it does not freeze, is not salted, or did not scale', () => {
    expect(ids({ ...salted, freezeThaw: ['rare'] }, 'flaking')).toBe(false);
    expect(ids({ ...salted, salts: ['none', 'de-icing'] }, 'flaking')).toBe(false);
    expect(ids(salted, 'tight')).toBe(false);
    expect(ids(salted, 'hollow')).toBe(false);
  });
});

// Common practice, no source: the days closed have no covering in them while nobody knows what it is.
it('a finish nobody has decided on is told as not known, beside the days closed', () => {
  const job = slab([spot(500)]);
  const told = (finish: 'overlay' | 'undecided') => {
    const zones = job.zones.map((zone) => ({
      ...zone,
      answers: { ...zone.answers, finish: [finish] as const },
    }));
    return sheet({ ...job, zones }).notKnown.find(({ id }) => id === 'finish-undecided');
  };
  expect(told('undecided')?.zones).toEqual(['b']);
  expect(told('overlay')).toBeUndefined();
});
