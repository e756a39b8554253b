import { describe, expect, it } from 'vitest';
import { areaWorked, planJob } from '$lib/plan/plan';
import { endsOf } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

const hollow = { depth: 40, looseness: ['hollow'], area: 4 };
const powdery = { looseness: ['powdery'], area: 20 };

// Common practice, no source, unless a line says otherwise.
describe('the plan of a job', () => {
  it('tells how much is prepared with each method, gentlest first', () => {
    const { areas, zones } = planJob(tradeJob([hollow, powdery, { ...hollow, area: 6 }]));
    expect(areas.map(({ method }) => method)).toEqual([zones[1]?.method, 'break-out']);
    const [powder, broken] = areas.map(({ area }) => endsOf(area) as number[]);
    expect(powder).toEqual([20, 20, 20]);
    // Nobody drew them: 4 and 6 m2 and the strips that are broken out round them.
    expect(broken?.[0]).toBeGreaterThan(10);
    expect(broken?.[2]).toBeLessThan(20);
    expect(areas.every(({ area }) => area.unit === 'm2')).toBe(true);
    // What all of it comes from is the same ground, added up.
    const all = endsOf(
      areaWorked(planJob(tradeJob([hollow, powdery, { ...hollow, area: 6 }]))),
    ) as number[];
    for (const end of [0, 1, 2])
      expect(all[end]).toBeCloseTo((powder?.[end] ?? 0) + (broken?.[end] ?? 0), 6);
    expect(endsOf(areaWorked(planJob(tradeJob([powdery]))))).toEqual([20, 20, 20]);
    const open = planJob(tradeJob([hollow, { ...hollow, area: 'unknown' }])).areas;
    expect(open.map(({ method, area }) => [method, endsOf(area)])).toEqual([
      ['break-out', 'asks for area'],
    ]);
  });
  it('opens to cars 7 to 14 days after mortar, 1 to 7 after a coat, to lorries after 28', () => {
    const days = (zone: object, site: object = {}) => planJob(tradeJob([zone], site)).trafficDays;
    expect(days(hollow)).toEqual({ cars: [7, 14], heavy: [28, 28] });
    expect(days({ finish: ['sealer'], area: 20 })).toEqual({ cars: [1, 7], heavy: [28, 28] });
    // Where it may be a floor, cars may come.
    for (const element of [['slab', 'steps'], undefined])
      expect(days({ finish: ['sealer'], area: 20 }, { element })?.cars).toEqual([1, 7]);
    expect(days(powdery, { element: ['wall'] })).toBeNull();
    expect(planJob(tradeJob([])).trafficDays).toBeNull();
  });
  it('says which machine is lacking only to a crew that has said what it has', () => {
    const lacking = (machines?: readonly string[]) =>
      planJob(
        tradeJob([hollow, powdery], {}, { ...(machines && { machines: machines as never }) }),
      ).substitutes.map(({ zone, wanted }) => [zone, wanted]);
    expect(lacking()).toEqual([]);
    expect(lacking(['break-out'])).toEqual([['z1', expect.any(String)]]);
    expect(lacking([])).toHaveLength(2);
  });
  it('adds the hours of a step over its zones', () => {
    const { steps, tasks } = planJob(tradeJob([hollow, { ...hollow, area: 6 }]));
    const breaking = steps.find(({ id }) => id === 'break-out');
    const parts = tasks.flatMap(({ step, labour }) =>
      step === 'break-out' && labour ? [endsOf(labour) as readonly number[]] : [],
    );
    expect(parts).toHaveLength(2);
    expect(breaking?.hours?.unit).toBe('h');
    expect(endsOf(breaking?.hours)).toEqual(
      [0, 1, 2].map((end) =>
        expect.closeTo(
          parts.reduce((sum, part) => sum + (part[end] ?? 0), 0),
          6,
        ),
      ),
    );
  });
  it('names a tool once for each class it must be of', () => {
    // On a wide floor a hammer of 14 kg, on a spot a smaller one: UFC 3-270-03.
    const areas = [40, 0.3, 50].map((area) => ({ ...hollow, area }));
    const { steps } = planJob(tradeJob(areas));
    const breaking = steps.find(({ id }) => id === 'break-out');
    expect(breaking?.tools).toEqual(['chipping-hammer']);
    expect(breaking?.tooling).toEqual([
      { tool: 'chipping-hammer', class: 'hammer.large-patch' },
      { tool: 'chipping-hammer', class: 'hammer.small-patch' },
    ]);
  });
});
