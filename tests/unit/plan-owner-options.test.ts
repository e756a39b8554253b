import { describe, expect, it } from 'vitest';
import { isKnown, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { readForOwner } from '$lib/plan/conclusion';
import { measureText } from '$lib/ui/owner/amount-text';
import { formatter } from '../helpers/plain-formatter';
import { tradeJob } from '../helpers/trade-jobs';

// What a senior of the trade tells an owner. Common practice, no source, unless a line says otherwise.

const read = (zones: object[], site: object = {}, more: object = { totalArea: 100 }) => {
  const job = tradeJob(zones, site, more);
  return readForOwner(job, planJob(job));
};
const spanOf = (amount: Amount | null | undefined) => {
  if (!amount || !isKnown(amount)) throw new Error('not known');
  return amount.span;
};
const ids = (list: readonly { id: string }[] = []) => list.map(({ id }) => id);
const hollow = { depth: 40, looseness: ['hollow'], area: 4 };

describe('what speaks for and against', () => {
  it('the life of patches speaks only where something is patched', () => {
    const washed = read([{ area: 40 }]).points.restore;
    expect(ids(washed?.speaksFor)).not.toContain('patch-life');
    expect(ids(washed?.against)).not.toContain('patch-life');
    const patched = read([hollow], { thickness: 150 }).points.restore;
    expect(ids(patched?.speaksFor)).toContain('patch-life');
    expect(ids(patched?.against)).toContain('patch-life');
  });
  it('what holds something up needs props to replace it as well', () => {
    const { points } = read([hollow], { element: ['suspended-slab'], thickness: 200 });
    expect(ids(points.replace?.speaksFor)).not.toContain('structure');
    expect(ids(points.replace?.against)).toContain('props-for-all');
    // Nothing can be restored before an engineer has looked, and the sheet says so.
    expect(ids(points.restore?.against)).toContain('structure');
  });
  it('what moves the slab moves new concrete too', () => {
    const { points } = read([{ cracks: ['moving'], area: 20, crackLength: 3 }]);
    expect(ids(points.replace?.speaksFor)).not.toContain('moving-crack');
    expect(ids(points.replace?.against)).toContain('cause-stays');
  });
  it('days of hire are never weighed: small machines are no breaker', () => {
    for (const option of Object.values(read([hollow], { thickness: 150 }).points))
      for (const { measures = [] } of [...option.speaksFor, ...option.against])
        expect(measures).not.toContain('hire-days');
  });
});

describe('every option', () => {
  it('makes the place safe: 0.5 to 2 h', () => {
    const { options } = read([hollow], { thickness: 150 });
    // 100 m2 of 150 mm: 15 m3 at 1.9 to 3.2 h (as reported), poured again with 5 to 10 % more at 2 to 5 h.
    const [low, high] = spanOf(options.replace.hours);
    expect(low).toBeCloseTo(0.5 + 15 * 1.9 + 15 * 1.05 * 2, 6);
    expect(high).toBeCloseTo(2 + 15 * 3.2 + 15 * 1.1 * 5, 6);
  });
  it('that makes a bar’s part new still does the rest of its zone', () => {
    const scale = {
      ...{ depth: ['3-to-6'], looseness: ['flaking'], texture: ['pitted'], area: 20 },
      ...{ steel: ['corroded'], barLoss: ['within-limit'], barCover: 30, barDiameter: 10 },
      barLength: 2,
    };
    const { options } = read([scale], { thickness: 200 });
    // Shotblasting 20 m2 at 7.5 to 30 m2/h is 0.67 h at the least, and the strip is soon broken out.
    expect(spanOf(options.parts?.hours)[0]).toBeGreaterThan(0.5 + 20 / 30);
  });
  it('that patches takes 10 to 30 h of hands for each cubic metre of mortar', () => {
    const plan = planJob(tradeJob([hollow], { thickness: 150 }));
    const fill = spanOf(plan.totals.fill);
    const work = plan.steps.flatMap(({ hours }) => (hours ? [spanOf(hours)] : []));
    const [low, high] = spanOf(read([hollow], { thickness: 150 }).options.restore?.hours);
    expect(low).toBeCloseTo(
      work.reduce((sum, each) => sum + each[0], 10 * fill[0]),
      6,
    );
    expect(high).toBeCloseTo(
      work.reduce((sum, each) => sum + each[1], 30 * fill[1]),
      6,
    );
  });
});

describe('days closed', () => {
  const closed = (zone: object, site: object = {}) =>
    spanOf(read([zone], site).options.restore?.['days-closed']);
  it('a sealed floor waits 1 to 7 days for cars, a mortared one 7 to 14, a wall for nobody', () => {
    const days = (zone: object, site: object = {}) =>
      planJob(tradeJob([zone], site)).schedule.count;
    const sealed = { finish: ['sealer'], area: 20 };
    expect(closed(sealed)).toEqual([days(sealed)[0] + 1, days(sealed)[1] + 7]);
    const overlaid = { looseness: ['powdery'], area: 20 };
    expect(closed(overlaid)).toEqual([days(overlaid)[0] + 7, days(overlaid)[1] + 14]);
    const wall = { looseness: ['powdery'], area: 20 };
    const onWall = { element: ['wall'] };
    expect(closed(wall, onWall)).toEqual([...days(wall, onWall)]);
    expect(planJob(tradeJob([wall], onWall)).trafficDays).toBeNull();
  });
  it('washing throws no dust', () => {
    const washed = { finish: ['sealer'], area: 20 };
    expect(spanOf(read([washed]).options.restore?.['dust-days'])).toEqual([0, 0]);
  });
});

describe('what is not counted', () => {
  it('is not told as none: new material, carbon, dust', () => {
    const option = read([{ contamination: { yes: ['thin-coating'], maybe: [] }, area: 20 }]).options
      .restore;
    const say = formatter('metric');
    expect(measureText('material', option?.material ?? null, say)).toMatch(/not counted/i);
    expect(measureText('carbon', option?.carbon ?? null, say)).toMatch(/not counted/i);
  });
});
