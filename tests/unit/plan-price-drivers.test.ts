import { describe, expect, it } from 'vitest';
import { askedHere, offeredHere } from '$lib/plan/ask';
import { planJob } from '$lib/plan/plan';
import { priceDrivers } from '$lib/plan/price-drivers';
import { formatter } from '$lib/words/format';
import { priceDriverSentence } from '$words/owner-asks';
import { endsOf } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

const plan = (zones: readonly object[], site: object = {}) => planJob(tradeJob(zones, site));
const driving = (zones: readonly object[], site: object = {}) =>
  priceDrivers(plan(zones, site)).map(({ id }) => id);
const hollow = { depth: 40, looseness: ['hollow'], area: 4 };

// Common practice, no source: what an estimator takes off first, and only what the job has.
describe('what drives the price', () => {
  it('of washing is the days and the water, and no breaking', () => {
    const ids = driving([{}]);
    expect(ids).toContain('water');
    expect(ids).toContain('days');
    for (const id of ['break-out', 'saw-cut', 'debris', 'bars', 'cracks', 'depth-open'])
      expect(ids).not.toContain(id);
  });
  it('of breaking out is what comes off, the edges and the haul', () =>
    expect(driving([hollow])).toEqual(
      expect.arrayContaining(['break-out', 'saw-cut', 'debris', 'machines', 'days']),
    ));
  it('is first of all what nobody has measured', () => {
    expect(driving([{ ...hollow, depth: ['6-to-20', '20-to-50'] }])[0]).toBe('depth-open');
    expect(driving([{ ...hollow, depth: ['20-to-50'] }])).not.toContain('depth-open');
  });
  it('is the place, where dust stays in or no machine can stand', () => {
    expect(driving([{}], { setting: ['indoors'] })).toContain('indoors');
    expect(driving([{}], { element: ['steps'] })).toContain('by-hand');
    expect(driving([{}])).not.toContain('by-hand');
  });
  it('is each part made new, through the slab, where its size and the thickness are known', () => {
    const gone = { depth: 150, looseness: ['rotten'], area: 4 };
    const madeNew = (zones: readonly object[], site: object = {}) =>
      priceDrivers(plan(zones, site)).flatMap((driver) =>
        driver.id === 'made-new' ? [endsOf(driver.amount)] : [],
      );
    // 4 and 6 m2 through 150 mm: 0.6 and 0.9 m3.
    expect(madeNew([gone])).toEqual([[0.6, 0.6, 0.6]]);
    expect(madeNew([hollow, gone, { ...gone, area: 6 }])).toEqual([[1.5, 1.5, 1.5]]);
    expect(madeNew([{ ...gone, area: 'unknown' }])).toEqual([]);
    // An engineer's crack stops a zone too, and makes nothing new.
    expect(madeNew([hollow, { cracks: ['moving'], area: 20, crackLength: 3 }])).toEqual([]);
    expect(madeNew([hollow])).toEqual([]);
  });
  it('is no hall where nobody has said whether it stands in one', () =>
    expect(driving([{}], { setting: undefined })).not.toContain('indoors'));
  it('says at least so many days where the hours of some of the work are not known', () => {
    const days = (zone: object) => {
      const driver = priceDrivers(plan([zone])).find(({ id }) => id === 'days');
      return driver ? priceDriverSentence(driver, formatter('metric')) : '';
    };
    expect(days({ ...hollow, cracks: ['still'], crackLength: 'unknown' })).toMatch(/^At least \d/);
    expect(days({ ...hollow, cracks: ['still'], crackLength: 3 })).toMatch(/^\d/);
  });
  it('is said in a sentence each, with the amount of the plan', () => {
    const say = formatter('us');
    const told = priceDrivers(plan([hollow])).map((driver) => priceDriverSentence(driver, say));
    expect(new Set(told).size).toBe(told.length);
    for (const sentence of told) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(told.join(' ')).toMatch(/Sawing [\d.]+ to [\d.]+ ft of edge/);
  });
});

describe('what an owner asks for', () => {
  it('bears on this job: no waste where there is none, no question about breaking where nothing is broken', () => {
    expect(askedHere(plan([{}]))).not.toContain('far');
    expect(askedHere(plan([hollow]))).toContain('far');
    expect(offeredHere(plan([hollow]))).toContain('waste');
    const { zones, totals } = plan([hollow]);
    const nothing = { ...totals, 'debris-mass': null, 'wash-water': null };
    expect(offeredHere({ ...plan([hollow]), zones, totals: nothing })).not.toContain('waste');
  });
});
