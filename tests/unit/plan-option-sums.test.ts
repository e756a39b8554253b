import { describe, expect, it } from 'vitest';
import { optionOf, replacing, replacingParts, restoring } from '$lib/plan/options';
import { cutThrough, longest, some, stepsKept } from '$lib/plan/option-parts';
import { nothing } from '$lib/plan/full-depth';
import type { Amount } from '$lib/plan/amount';
import { endsOf, quantitiesWith, reach } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

const near = (values: readonly number[]) => values.map((value) => Math.round(value * 1e9) / 1e9);

describe('parts that are cut out', () => {
  const kept = (method: string, beside: string | null) =>
    (
      [
        'make-safe',
        'sound-and-mark',
        'saw-cut',
        'break-out',
        'chase-crack',
        'free-bar',
        're-sound',
        'blast-clean',
        'clean-bar',
        'vacuum',
        'final-wash',
      ] as const
    ).filter(stepsKept({ method, advice: { beside } } as never));
  it('are found and sawn round as a patch is; the rest of a zone beside bars keeps its own steps', () => {
    const outline = ['make-safe', 'sound-and-mark', 'saw-cut'];
    expect(kept('break-out', null)).toEqual(outline);
    expect(kept('break-out', 'break-out')).toEqual(outline);
    expect(kept('scarify', 'grind')).toEqual(outline);
    expect(kept('break-out', 'scarify')).toEqual([...outline, 'vacuum', 'final-wash']);
  });
  it('that no plan has outlined are sawn round square: 9 m2 are 12 m, at 6 to 20 m/h', () => {
    const job = tradeJob([{ area: 9 }, { area: 'unknown' }, { area: 4 }]);
    const plan = { zones: [{ id: 'z2' }] } as never;
    expect(cutThrough(plan, job, ['z0', 'z1', 'z2']).map(endsOf)).toEqual([
      ...[[0.6, 1, 2], 'asks for area'],
    ]);
    expect(cutThrough(plan, job, [])).toEqual([]);
    expect(cutThrough(plan, job, ['z0'])[0]).toMatchObject({
      unit: 'h',
      working: [
        { what: 'perimeter', unit: 'm' },
        { figure: 'rate.saw-cut', by: 'over' },
      ],
    });
  });
  it('take the longest of what runs side by side, end by end', () => {
    const days = longest('d', reach('d', [7, 7, 14]), reach('d', [1, 10, 12]));
    expect(days).toEqual({ span: [7, 14], typical: 10, unit: 'd', working: [] });
    const open: Amount = { missing: ['thickness'], unit: 'd' };
    expect(longest('d', reach('d', [7, 7, 14]), open)).toBe(open);
    expect([some(open), some(reach('m3', [0, 0, 1])), some(nothing('m3'))]).toEqual([
      ...[true, true, false],
    ]);
  });
});

// One zone of 10 m2 that is broken out, 0.5 m3 of it, in a slab of 40 m2 and 150 mm; worked by hand.
describe('what an option takes', () => {
  const quantities = quantitiesWith({
    'debris-mass': reach('kg', [1100, 1200, 1300]),
    fill: reach('m3', [0.5, 0.5, 0.5]),
    'fill-bags': reach('count', [36, 36, 36]),
    'wash-water': reach('L', [100, 200, 300]),
    'patch-area': reach('m2', [10, 10, 10]),
  });
  const task = (step: string, hours: number, more: object = {}) => ({
    ...{
      step,
      zone: 'z0',
      zones: ['z0'],
      tool: { tool: 'hand-tools' },
      shared: false,
      amount: null,
    },
    hours: {
      running: { low: hours, typical: hours, high: hours },
      atTask: { low: hours, typical: hours, high: hours },
    },
    labour: reach('h', [hours, hours, hours]),
    ...more,
  });
  const cure = (figure: string) => ({
    ...task('cure', 0, { hours: null, labour: null }),
    lasting: { low: 168, typical: 168, high: 336, figure },
  });
  const planOf = (tasks: object[], steps: string[] = []) =>
    ({
      tasks,
      zones: [{ id: 'z0', method: 'break-out', steps, quantities, advice: { beside: null } }],
    }) as never;
  const job = tradeJob(
    [{ area: 10 }],
    { thickness: 150 },
    { totalArea: 40, crew: 1, hoursPerDay: 8 },
  );
  const plan = planOf([task('make-safe', 1), task('break-out', 5), cure('traffic.cars')]);

  it('to restore: what comes off, the mortar, its hours and 7 to 14 days until cars', () => {
    const option = restoring(plan, job);
    expect(endsOf(option?.debris)).toEqual([1100, 1200, 1300]);
    expect(endsOf(option?.material)).toEqual([0.5, 0.5, 0.5]);
    expect(endsOf(option?.water)).toEqual([100, 200, 300]);
    // 1 + 5 h, and 0.5 m3 of mortar at 10 to 30 h, usually 18.
    expect(endsOf(option?.hours)).toEqual([11, 15, 21]);
    // One day laid; 5 to 15 h of placing at 60 to 80 %, usually 70, of 8 hours; then 7 to 14 days.
    expect(endsOf(option?.['days-closed'])).toEqual(
      near([1 + 5 / 6.4 + 7, 1 + 9 / 5.6 + 7, 1 + 15 / 4.8 + 14]),
    );
    for (const id of ['noise-days', 'dust-days', 'hire-days'] as const)
      expect(endsOf(option?.[id]), id).toEqual([0, 0, 0]);
    // Mortar of 2,000 to 2,300 kg/m3 at 0.2 to 0.737 kgCO2e; both loads hauled 10 to 50 km at 0.12 to 0.25 per t km.
    const haul = (kg: number, rate: number, km: number) => (kg / 1000) * rate * km;
    const [low, , high] = endsOf(option?.carbon) as number[];
    expect(low).toBeCloseTo(1000 * 0.2 + haul(1100, 0.12, 10) + haul(1000, 0.12, 10), 6);
    expect(high).toBeCloseTo(1150 * 0.737 + haul(1300, 0.25, 50) + haul(1150, 0.25, 50), 6);
    expect(option?.cost).toBeNull();
    expect(restoring({ ...(plan as object), zones: [] } as never, job)).toBeNull();
  });
  it('is told in the units of its measures, known or not', () => {
    const units = {
      ...{ debris: 'kg', material: 'm3', water: 'L', hours: 'h', 'days-closed': 'd', carbon: 'kg' },
      ...{ 'noise-days': 'd', 'dust-days': 'd', 'hire-days': 'd', cost: 'count' },
    };
    const prices = { perHour: 1, perBag: 1, perTonne: 1, perConcrete: 1 };
    const open = tradeJob([{ area: 'unknown' }], { thickness: 'unknown' });
    for (const option of [
      restoring(plan, job, prices),
      replacing(plan, job, prices),
      replacing(plan, open, prices),
      replacingParts(plan, job, ['z0'], prices),
    ])
      for (const [id, amount] of Object.entries(option ?? {}))
        if (amount) expect(amount.unit, id).toBe(units[id as keyof typeof units]);
    expect(cutThrough({ zones: [] } as never, open, ['z0'])[0]?.unit).toBe('h');
  });
  it('costs what the reader pays for it, once every price that is needed is there', () => {
    const prices = { perHour: 10, perBag: 2, perTonne: 100 };
    // 11 to 21 h, 36 bags, 1.1 to 1.3 t.
    expect(endsOf(restoring(plan, job, prices)?.cost)).toEqual([292, 342, 412]);
    expect(restoring(plan, job, { perHour: 10, perBag: 2 })?.cost).toBeNull();
    expect(replacing(plan, job, prices).cost).toBeNull();
    const poured = { ...prices, perConcrete: 50 };
    expect(endsOf(replacing(plan, job, poured).cost)).not.toBe('none');
  });
  it('to fill before a coat: its hours are among the tasks, and a coat carries after 1 to 7 days', () => {
    const level = planOf([task('fill-level', 9), cure('traffic.coated')], ['fill-level']);
    const option = restoring(level, job);
    expect(endsOf(option?.hours)).toEqual([9, 9, 9]);
    expect(endsOf(option?.['days-closed'])).toEqual([3, 5, 9]);
  });
  it('to replace all: 40 m2 of 150 mm broken out, hauled and poured again', () => {
    const option = replacing(plan, job);
    expect(endsOf(option.debris)).toEqual([6 * 2323, 6 * 2400, 6 * 2403]);
    expect(endsOf(option.material)).toEqual([6.3, 6.42, 6.6]);
    expect(option.water).toBeNull();
    // Made safe in 0.5 to 2 h; 6 m3 broken at 1.9 to 3.2 h; 6.3 to 6.6 m3 placed at 2 to 5 h.
    const hours = [0.5 + 11.4 + 12.6, 1 + 15 + 6.42 * 3.5, 2 + 19.2 + 33] as const;
    expect(endsOf(option.hours)).toEqual(near(hours));
    expect(endsOf(option['days-closed'])).toEqual(
      near([hours[0] / 6.4 + 7, hours[1] / 5.6 + 10.5, hours[2] / 4.8 + 14]),
    );
    // One breaker: 11.4 to 19.2 h at 60 to 80 % of 8 hours, in whole days.
    for (const id of ['noise-days', 'dust-days', 'hire-days'] as const)
      expect(endsOf(option[id]), id).toEqual([2, 3, 4]);
    const [low] = endsOf(option.carbon) as number[];
    expect(low).toBeCloseTo(6.3 * 257 + (6 * 2.323 * 10 + 6.3 * 2.323 * 10) * 0.12, 6);
  });
  it('is as large as its zones, where they come to more, and asks for what is not known', () => {
    const zones = [{ area: 30 }, { area: 20 }, { area: 'unknown' }];
    const small = tradeJob(zones, { thickness: 100 }, { totalArea: 40 });
    expect(endsOf(replacing(planOf([]), small).material)).toEqual(near([5.25, 5.35, 5.5]));
    const open = tradeJob([{ area: 10 }], { thickness: 'unknown' });
    expect(endsOf(replacing(planOf([]), open).material)).toBe('asks for area and thickness');
  });
  it('to make a part new: its ground through the full depth, found and sawn as a patch', () => {
    const steps = [task('sound-and-mark', 2), task('saw-cut', 3), task('break-out', 5)];
    const option = replacingParts(planOf(steps), job, ['z0']);
    // 10 m2 of 150 mm.
    expect(endsOf(option?.debris)).toEqual([1.5 * 2323, 1.5 * 2400, 1.5 * 2403]);
    const hours = (safe: number, demolish: number, place: number) => safe + 5 + demolish + place;
    expect(endsOf(option?.hours)).toEqual(
      near([hours(0.5, 2.85, 3.15), hours(1, 3.75, 1.605 * 3.5), hours(2, 4.8, 8.25)]),
    );
    expect(replacingParts(plan, job, [])).toBeNull();
    // Where no plan is, the zone as far as it goes.
    const bare = { tasks: [], zones: [], held: [] } as never;
    expect(endsOf(replacingParts(bare, job, ['z0'])?.material)).toEqual(near([1.575, 1.605, 1.65]));
    // Made safe already.
    const safe = planOf([task('make-safe', 1), ...steps]);
    expect(endsOf(replacingParts(safe, job, ['z0'])?.hours)).toEqual(
      near([hours(1, 2.85, 3.15), hours(1, 3.75, 1.605 * 3.5), hours(1, 4.8, 8.25)]),
    );
  });
  it('takes no water where nothing is washed, and that is told as none', () => {
    const { 'wash-water': _, ...dry } = quantities;
    const zone = { id: 'z0', method: 'break-out', steps: [], advice: { beside: null } };
    const zones = [{ ...zone, quantities: { ...dry, 'wash-water': null } }];
    expect(restoring({ tasks: [], zones } as never, job)?.water).toMatchObject({
      ...{ span: [0, 0], unit: 'L' },
    });
  });
  it('waits for cars wherever it may be a floor', () => {
    const either = tradeJob([{ area: 10 }], { element: ['slab', 'wall'] }, { totalArea: 10 });
    const cured = planOf([cure('traffic.cars')], ['fill-level']);
    expect(endsOf(restoring(cured, either)?.['days-closed'])).toEqual([7, 7, 14]);
  });
  it('opens for nobody where nobody drives', () => {
    const stair = tradeJob(
      [{ area: 10 }],
      { thickness: 150, element: ['steps'] },
      { totalArea: 10 },
    );
    expect(
      endsOf(restoring(planOf([cure('traffic.cars')], ['fill-level']), stair)?.['days-closed']),
    ).toEqual([0, 0, 0]);
    const slab = { ...stair, site: {} };
    expect(
      endsOf(restoring(planOf([cure('traffic.cars')], ['fill-level']), slab)?.['days-closed']),
    ).toEqual([7, 7, 14]);
    expect(
      endsOf(
        optionOf(planOf([cure('traffic.cars')]), slab, { restored: [], replaced: nothing('m3') })[
          'days-closed'
        ],
      ),
    ).toEqual([0, 0, 0]);
  });
});
