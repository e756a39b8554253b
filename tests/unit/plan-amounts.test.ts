import { describe, expect, it } from 'vitest';
import { parseJob } from '$lib/keep/job-file';
import { isKnown, product, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { zoneQuantityIds } from '$lib/plan/quantities';
import { workingLine } from '$words/plan/working';
import { wholeJobs } from '../cases/golden-jobs';
import { formatter, untied } from '../helpers/plain-formatter';
import { onTrial } from '../helpers/rounds';
import { tradeJob } from '../helpers/trade-jobs';

// What a senior of the trade reckons with. Rates are common practice, no source, unless a line says otherwise.

const jobs = wholeJobs.filter((_job, place) => place % onTrial(1, 9) === 0);
const spanOf = (amount: Amount | null | undefined) => {
  if (!amount || !isKnown(amount)) throw new Error('not known');
  return amount.span;
};
const zoneOf = (zone: object, site: object = {}) => {
  const plan = planJob(tradeJob([zone], site));
  const hours = (step: string) => spanOf(plan.steps.find(({ id }) => id === step)?.hours);
  return { plan, hours, quantities: plan.zones[0]?.quantities };
};
const patch = { depth: 30, looseness: ['hollow'], area: 2 };

describe('a patch without steel', () => {
  const { plan, hours, quantities } = zoneOf(patch);
  it('is broken out with a light hammer of the 30 lb class, at the rate of patches', () => {
    // UFC 3-270-03 14.3: 30 lb (14 kg) for large patches.
    const task = plan.tasks.find(({ step }) => step === 'break-out');
    expect(task?.tool).toEqual({ tool: 'chipping-hammer', class: 'hammer.large-patch' });
    const [low, high] = spanOf(quantities?.removed);
    expect(hours('break-out')[0]).toBeCloseTo(low * 5, 9);
    expect(hours('break-out')[1]).toBeCloseTo(high * 25, 9);
  });
  it('is washed, vacuumed and sounded over what is opened, not over the damage alone', () => {
    const [low, high] = spanOf(quantities?.['patch-area']);
    expect(low).toBeGreaterThan(2);
    for (const [step, slow, quick] of [
      ['vacuum', 40, 120],
      ['re-sound', 30, 100],
      ['final-wash', 20, 60],
      ['last-clean', 60, 150],
    ] as const) {
      expect(hours(step)[0], step).toBeCloseTo(low / quick, 9);
      expect(hours(step)[1], step).toBeCloseTo(high / slow, 9);
    }
    const [least, most] = spanOf(quantities?.['saw-cut']);
    // 5 to 20 L/m2 of the wash and 5 to 20 L/m of the saw, all to be caught.
    expect(spanOf(quantities?.['wash-water'])[0]).toBeCloseTo(5 * low + 5 * least, 6);
    expect(spanOf(quantities?.['wash-water'])[1]).toBeCloseTo(20 * high + 20 * most, 6);
  });
});

describe('a crack chased in a sound floor', () => {
  const { hours } = zoneOf({ cracks: ['crumbling'], crackLength: 4, area: 40 });
  it('is blasted and sounded along its 4 m, in 5 to 20 minutes', () => {
    expect(hours('blast-clean')[0]).toBeCloseTo(4 / 50, 9);
    expect(hours('blast-clean')[1] * 60).toBeCloseTo(20, 9);
    expect(hours('re-sound')).toEqual([4 / 60, 4 / 20]);
  });
});

describe('a hole that is filled before a coat', () => {
  it('takes the hours of its mortar: 10 to 30 h for a cubic metre', () => {
    const { hours, quantities, plan } = zoneOf({ ...patch, finish: ['thin-film'] });
    const [low, high] = spanOf(quantities?.fill);
    expect(plan.zones[0]?.steps).toContain('fill-level');
    expect(hours('fill-level')[0]).toBeCloseTo(10 * low, 9);
    expect(hours('fill-level')[1]).toBeCloseTo(30 * high, 9);
  });
});

describe('water of degreasing', () => {
  it('is caught too', () => {
    const oily = { contamination: { yes: ['oil'], maybe: [] }, finish: ['sealer'], area: 9 };
    expect(spanOf(zoneOf(oily).quantities?.['wash-water'])).toEqual([45, 180]);
  });
});

describe('spots and one piece', () => {
  it('damage of 30 m2 is not taken three times', () => {
    // 1.44 m2 in nine spots of 0.4 m at 3.4 times, the other 28.56 m2 in one piece with 100 mm round it.
    const most = 1.44 * 3.4 + (Math.sqrt(28.56) + 0.2) ** 2;
    const { quantities } = zoneOf({ ...patch, area: 30 });
    expect(spanOf(quantities?.['patch-area'])[1]).toBeCloseTo(most, 9);
    expect(most / 30).toBeLessThan(1.2);
  });
});

describe('along a bar', () => {
  it('the strip is the bar and 75 to 100 mm on both sides of it', () => {
    // FHWA, Partial-depth repairs: 3 to 4 in past the damage.
    const bar = { steel: ['corroded'], barLoss: ['within-limit'], barCover: 30, barDiameter: 10 };
    const { quantities } = zoneOf({ ...bar, barLength: 2, area: 20 }, { thickness: 300 });
    expect(spanOf(quantities?.['patch-area'])[0]).toBeCloseTo(2 * 0.16, 9);
    expect(spanOf(quantities?.['patch-area'])[1]).toBeCloseTo(2 * 0.21, 9);
  });
});

describe('pieces', () => {
  it('a few kilograms take no skip, and nothing is less than nothing', () => {
    for (const { file } of jobs) {
      const read = parseJob(file);
      if (!read.ok) throw new Error('a job');
      const { totals } = planJob(read.value);
      const { skips, 'debris-loose': loose } = totals;
      if (skips && loose && isKnown(loose)) expect(loose.span[1]).toBeGreaterThanOrEqual(0.5);
      for (const amount of Object.values(totals) as (Amount | null)[])
        if (amount && isKnown(amount) && amount.unit === 'count')
          for (const end of amount.span) expect(Object.is(end, -0)).toBe(false);
    }
  });
});

describe('workings', () => {
  it.each(jobs)('of $id come to what they say', ({ file, units }) => {
    const read = parseJob(file);
    if (!read.ok) throw new Error('a job');
    const { zones, steps, totals } = planJob(read.value);
    const say = formatter(units);
    for (const amount of [
      ...zones.flatMap(({ quantities }) => zoneQuantityIds.map((id) => quantities[id])),
      ...(Object.values(totals) as (Amount | null)[]),
      ...steps.map(({ hours }) => hours),
    ]) {
      if (!amount || !isKnown(amount) || amount.working.length < 2) continue;
      const line = untied(workingLine(amount, say));
      const worked = product(amount.unit, amount.working);
      if (!isKnown(worked)) throw new Error('not known');
      const pieces = amount.unit === 'count' ? Math.ceil : (value: number) => value;
      for (const end of [0, 1] as const)
        expect(pieces(worked.span[end] - 1e-9), line).toBeCloseTo(amount.span[end], 6);
      expect(line).not.toMatch(/[×÷] 0 \(/);
      expect(line).not.toMatch(/\((?:volume|units)\)/);
    }
  });
});
