import { describe, expect, it } from 'vitest';
import { quantitiesOf, totalsOf, zoneQuantityIds } from '$lib/plan/quantities';
import { wholeBays } from '$lib/plan/whole-bays';
import type { Amount } from '$lib/plan/amount';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';

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
  it('of a firm hollow: the ring inside the square cut comes off, all is filled, unless it is but a film', () => {
    const firm = { breaks: false, tight: true, method: 'abrasive-blast', steps: ['saw-cut'] };
    // One square of 30 m2, cut 75 mm past it on each side, 40 mm deep: what lies between is chipped out.
    const ring = ((Math.sqrt(30) + 0.15) ** 2 - 30) * 0.04;
    const cut = quantitiesOf(workOf(firm));
    expect(endsOf(cut.removed)[0]).toBeCloseTo(ring, 9);
    expect(endsOf(cut.fill)[0]).toBeCloseTo((30 * 0.04 + ring) * 1.05, 9);
    expect(endsOf(cut.fill)[2]).toBeGreaterThan(30 * 0.04 * 1.1 + ring);
    expect(all(firm)).toHaveProperty('saw-cut');
    // Drawn, the ring is what the patch has more than the zone; and without a saw there is none.
    const drawn = quantitiesOf(workOf({ ...firm, patches: [{ area: 32, saw: 24 }] }));
    expect(endsOf(drawn.removed)[0]).toBeCloseTo(2 * 0.04, 9);
    const unsawn = all({ ...firm, steps: [] });
    expect(unsawn).toMatchObject({ fill: near([1.26, 1.284, 1.32]) });
    expect(unsawn).not.toHaveProperty('removed');
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
