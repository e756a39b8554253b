import { describe, expect, it } from 'vitest';
import { optionOf, replacing, replacingParts, restoring } from '$lib/plan/options';
import { cutThrough, longest, some, stepsKept } from '$lib/plan/option-parts';
import { nothing } from '$lib/plan/full-depth';
import { quantitiesOf, totalsOf, zoneQuantityIds } from '$lib/plan/quantities';
import { wholeBays } from '$lib/plan/whole-bays';
import type { Amount } from '$lib/plan/amount';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

const near = (values: readonly number[]) => values.map((value) => Math.round(value * 1e9) / 1e9);
const all = (change: object, answers: object = {}, own?: object) =>
  Object.fromEntries(
    Object.entries(quantitiesOf(workOf(change, answers), own)).flatMap(([id, amount]) =>
      amount ? [[id, endsOf(amount as Amount)]] : [],
    ),
  );

// Hand sums: 13 mm into sound concrete (UFC 3-270-03); 5 to 10 % waste, usually 7; 2,323 to 2,403 kg/m3,
// usually 2,400; loose 1.69 to 2.9 times, usually 1.69; a skip of 4 m3; bags of 14.16 L and 25 kg.
describe('how much there is of everything in a zone', () => {
  const patches = [
    { area: 2, saw: 6, depth: 37 },
    { area: 1, saw: 4 },
  ];
  it('broken out patch by patch: 2 m2 to 37 + 13 mm, and 1 m2 to the zone’s 40 + 13', () => {
    const removed = 0.1 + 0.053;
    const found = all({ patches, steps: ['saw-cut'] });
    expect(found).toEqual({
      area: [30, 30, 30],
      'patch-area': [3, 3, 3],
      removed: near([removed, removed, removed]),
      'debris-mass': near([removed * 2323, removed * 2400, removed * 2403]),
      'debris-loose': near([removed * 1.69, removed * 1.69, removed * 2.9]),
      skips: near([(removed * 1.69) / 4, (removed * 1.69) / 4, (removed * 2.9) / 4]),
      // 355 to 368 kg in bags of 25; 161 to 168 L of mortar in bags of 14.16.
      'rubble-bags': [15, 15, 15],
      fill: near([removed * 1.05, removed * 1.07, removed * 1.1]),
      'fill-bags': [12, 12, 12],
      'saw-cut': [10, 10, 10],
      // 5 to 20 L/m of the saw, usually 10.
      'wash-water': [50, 100, 200],
    });
    const deep = [{ area: 2, saw: 6, depth: 37 }];
    expect(all({ patches: deep })['removed']).toEqual([0.1, 0.1, 0.1]);
    expect(all({ patches: [{ area: 2, saw: 6 }] })['removed']).toEqual([0.106, 0.106, 0.106]);
  });
  it('asks for the depth, where a patch is as deep as the zone', () => {
    expect(all({ patches }, { depth: undefined })['removed']).toBe('asks for depth');
    expect(all({}, { depth: undefined, area: 'unknown' })['removed']).toBe(
      'asks for depth and area',
    );
    expect(all({}, { area: 'unknown' })).toMatchObject({
      ...{ area: 'asks for area', 'patch-area': 'asks for area', fill: 'asks for area' },
    });
  });
  it('of a skin that a machine takes off: as deep as it goes, nothing to fill', () => {
    const skin = { breaks: false, method: 'scarify', steps: ['scarify'] };
    expect(all(skin, { depth: 4 })).toMatchObject({ removed: [0.12, 0.12, 0.12] });
    expect(all(skin, { depth: 4 })).not.toHaveProperty('fill');
    expect(all(skin, { depth: 4 })).not.toHaveProperty('patch-area');
    expect(all(skin, { depth: undefined })['removed']).toBe('asks for depth');
    expect(all({ ...skin, method: 'pressure-wash' })).toEqual({ area: [30, 30, 30] });
  });
  it('of a firm hollow: nothing comes off, it is filled, unless it is but a film', () => {
    const firm = { breaks: false, tight: true, method: 'abrasive-blast', steps: ['saw-cut'] };
    expect(all(firm)).toMatchObject({ fill: near([1.26, 1.284, 1.32]) });
    expect(all(firm)).not.toHaveProperty('removed');
    expect(all(firm)).toHaveProperty('saw-cut');
    for (const depth of [3.1, ['film'], ['under-3'], ['film', 'under-3'], undefined])
      expect(all(firm, { depth }), String(depth)).not.toHaveProperty('fill');
    for (const depth of [3.2, ['film', '6-to-20']])
      expect(all(firm, { depth }), String(depth)).toHaveProperty('fill');
    expect(all({ ...firm, thickness: 'unknown' }, { depth: ['over-50'] })['fill']).toBe(
      'asks for depth',
    );
  });
  it('of a crack: 4 m chased 40 to 100 mm wide and 25 to 50 deep; routed 6 mm and 6 to 25', () => {
    const crack = { breaks: false, tight: true, method: 'abrasive-blast' };
    const chased = all({ ...crack, steps: ['chase-crack'] }, { crackLength: 4, depth: undefined });
    const cut = [4 * 1e-6 * 1000, 4 * 1e-6 * 1800, 4 * 1e-6 * 5000] as const;
    expect(chased).toMatchObject({
      'crack-chased': [4, 4, 4],
      removed: near(cut),
      fill: near([cut[0] * 1.05, cut[1] * 1.07, cut[2] * 1.1]),
    });
    expect(chased).not.toHaveProperty('crack-routed');
    const routed = all({ ...crack, steps: ['route-crack'] }, { crackLength: 4, depth: undefined });
    const groove = [4 * 1e-6 * 36, 4 * 1e-6 * 93, 4 * 1e-6 * 150] as const;
    expect(routed).toMatchObject({
      'crack-routed': [4, 4, 4],
      removed: near(groove),
      // In litres, with the waste.
      'crack-filler': near([groove[0] * 1050, groove[1] * 1070, groove[2] * 1100]),
    });
    expect(routed).not.toHaveProperty('fill');
    for (const crackLength of [undefined, 'unknown'])
      expect(all({ ...crack, steps: ['chase-crack'] }, { crackLength })['crack-chased']).toBe(
        'asks for crackLength',
      );
  });
  it('of bars: the metres freed, and what comes off behind them beside the hole', () => {
    const bar = { barLength: 3, barDiameter: 10, barCover: 30 };
    const laid = { patches: [{ area: 2, saw: 6, depth: 40 }], steps: ['free-bar'] };
    // 2 m2 x 53 mm, and 3 m x 48 mm x (59 - 53) mm.
    const off = 0.106 + 3 * 0.048 * 0.006;
    const found = all(laid, bar);
    expect(found).toMatchObject({ 'bars-freed': [3, 3, 3], removed: near([off, off, off]) });
    expect(found['fill']).toEqual(near([off * 1.05, off * 1.07, off * 1.1]));
    // Along the bars alone: the strip as deep as behind the bar, 59 mm; nothing where none is freed.
    const along = { alongBars: true, steps: ['free-bar'] };
    const strip = (width: number) => 3 * width * 0.059;
    expect(all(along, bar)['removed']).toEqual(near([strip(0.16), strip(0.185), strip(0.21)]));
    expect(all({ ...along, steps: [] }, bar)).not.toHaveProperty('removed');
  });
  it('of water: every wash over what is opened, the rinse after degreasing over the zone, the saw', () => {
    const water = (...steps: string[]) => all({ patches, steps })['wash-water'];
    expect(water('final-wash')).toEqual([15, 30, 60]);
    expect(water('pressure-wash')).toEqual([15, 30, 60]);
    expect(water('pressure-wash', 'final-wash')).toEqual([15, 30, 60]);
    expect(water('degrease')).toEqual([150, 300, 600]);
    expect(water('degrease', 'final-wash', 'saw-cut')).toEqual([215, 430, 860]);
    expect(water('vacuum')).toBeUndefined();
  });
  it('shows what was summed as one factor', () => {
    const found = quantitiesOf(workOf({ patches, steps: ['saw-cut'] }));
    const factors = (amount: Amount | null) =>
      amount && 'working' in amount ? amount.working.map(({ what }) => what) : [];
    expect(factors(found.removed)).toEqual(['removed']);
    expect(factors(found['debris-mass'])).toEqual(['removed', 'density']);
    expect(factors(found['debris-loose'])).toEqual(['removed', 'bulking']);
    expect(factors(found.skips)).toEqual(['removed', 'bulking', 'skip']);
    expect(factors(found.fill)).toEqual(['hole', 'waste']);
    expect(factors(found['fill-bags'])).toEqual(['hole', 'waste', 'yield']);
    const square = quantitiesOf(workOf({ patches: [{ area: 2, saw: 6, depth: 37 }] }));
    expect(factors(square.removed)).toEqual(['patches', 'drawn-depth']);
    expect(factors(quantitiesOf(workOf()).removed)).toEqual(['patch-area', 'depth-into-sound']);
    const skin = quantitiesOf(workOf({ breaks: false, method: 'scarify' }));
    expect(factors(skin.removed)).toEqual(['area', 'depth']);
    const firm = quantitiesOf(workOf({ breaks: false, tight: true, method: 'grind' }));
    expect(factors(firm.fill)).toEqual(['area', 'hollow-depth', 'waste']);
  });
});

describe('of the whole job', () => {
  const zone = (loose: number, bags: number) =>
    quantitiesWith({
      'debris-loose': reach('m3', [loose, loose, loose]),
      skips: reach('count', [loose / 4, loose / 4, loose / 4]),
      'fill-bags': reach('count', [bags, bags, bags]),
    });
  it('zones are added, skips are whole once, and what arises nowhere stays none', () => {
    const totals = totalsOf([zone(1, 6), zone(4, 2)]);
    expect(endsOf(totals.skips)).toEqual([2, 2, 2]);
    expect(endsOf(totals['fill-bags'])).toEqual([8, 8, 8]);
    expect(endsOf(totals['debris-loose'])).toEqual([5, 5, 5]);
    expect(totals.fill).toBeNull();
    expect(totalsOf([])).toEqual(quantitiesWith({}));
  });
  it('less than half a cubic metre takes no skip', () => {
    expect(totalsOf([zone(0.49, 1)]).skips).toBeNull();
    expect(endsOf(totalsOf([zone(0.5, 1)]).skips)).toEqual([1, 1, 1]);
    expect(totalsOf([zone(2, 1)], { 'skip.least': 3 }).skips).toBeNull();
    expect(zoneQuantityIds).not.toContain('skips');
    expect(zoneQuantityIds).toHaveLength(14);
  });
});

describe('a bay that may be treated whole', () => {
  const planned = (id: string, removed: Amount | null, ground: Amount | null) => ({
    ...{ id, quantities: quantitiesWith({ removed, 'patch-area': ground }) },
  });
  const m3 = (value: number) => reach('m3', [value, value, value]);
  const m2 = (value: number) => reach('m2', [value, value, value]);
  const survey = {
    bays: [
      { id: '1', whole: true, patched: 3, area: 4 },
      { id: '2', whole: false, patched: 1, area: 4 },
    ],
    patches: [
      { bay: '1', zone: 'a' },
      { bay: '1', zone: 'b' },
      { bay: '2', zone: 'c' },
    ],
  } as never;
  const bays = (...zones: object[]) => wholeBays(survey, zones as never);
  it('goes as deep as the patches of its zones: 50 mm the least, 100 mm the deepest', () => {
    const [bay, ...more] = bays(
      planned('a', m3(0.1), m2(2)),
      planned('b', m3(0.1), m2(1)),
      planned('c', m3(9), m2(1)),
    );
    expect(more).toEqual([]);
    expect(bay?.id).toBe('1');
    expect(endsOf(bay?.patched.area)).toEqual([3, 3, 3]);
    expect(endsOf(bay?.whole.area)).toEqual([4, 4, 4]);
    expect(endsOf(bay?.patched.removed)).toEqual([0.15, 0.225, 0.3]);
    expect(endsOf(bay?.whole.removed)).toEqual([0.2, 0.3, 0.4]);
    // 0.21 to 0.44 m3 with waste, usually 0.321, in bags of 14.16 L.
    expect(endsOf(bay?.whole.bags)).toEqual([15, 23, 32]);
    expect(bay?.whole.area).toMatchObject({ working: [{ what: 'area', unit: 'm2' }] });
    expect('working' in (bay?.whole.removed ?? {}) && bay?.whole.removed).toMatchObject({
      working: [{ what: 'area' }, { what: 'depth', unit: 'm' }],
    });
  });
  it('asks for the depth where one of its zones has none', () => {
    const open: Amount = { missing: ['depth'], unit: 'm3' };
    for (const zone of [
      planned('b', open, m2(1)),
      planned('b', null, m2(1)),
      planned('b', m3(0.1), null),
      planned('b', m3(0.1), { missing: ['area'], unit: 'm2' }),
    ])
      expect(endsOf(bays(planned('a', m3(0.1), m2(2)), zone)[0]?.whole.removed)).toBe(
        'asks for depth',
      );
    expect(endsOf(bays()[0]?.patched.bags)).toBe('asks for depth');
    expect(wholeBays(null, [])).toEqual([]);
  });
});

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
    const bare = { tasks: [], zones: [] } as never;
    expect(endsOf(replacingParts(bare, job, ['z0'])?.material)).toEqual(near([1.575, 1.605, 1.65]));
    // Made safe already.
    const safe = planOf([task('make-safe', 1), ...steps]);
    expect(endsOf(replacingParts(safe, job, ['z0'])?.hours)).toEqual(
      near([hours(1, 2.85, 3.15), hours(1, 3.75, 1.605 * 3.5), hours(1, 4.8, 8.25)]),
    );
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
