import { describe, expect, it } from 'vitest';
import type { Case } from '$lib/practice/case';
import { isAside, picturesOf } from '$lib/practice/facts';
import { askedAt, levelOf, stepLevel, twists, twistsOf, type Twist } from '$lib/practice/level';
import { isOf, type Stratum } from '$lib/practice/strata';

/** A floor in the open whose thin flakes go before a thin paint, but for what is given. Invented. */
const caseOf = (zone: object = {}, site: object = {}): Case =>
  ({
    id: 'tin-yard',
    site: {
      ...{ element: 'slab', setting: 'open', salts: 'none', freezeThaw: 'rare' },
      ...{ thickness: 150, warnings: [] },
      ...site,
    },
    zone: {
      ...{ depth: 'under-3', looseness: 'flaking', contamination: [], texture: 'sandy' },
      ...{ cracks: 'none', steel: 'none-seen', finish: 'thin-film', area: 20 },
      ...zone,
    },
  }) as unknown as Case;
const hole = {
  ...{ depth: '20-to-50', depthMm: 40, looseness: 'hollow', texture: 'pitted', finish: 'rebuild' },
};
const firm = { depth: 'film', looseness: 'tight' };
const warned = (warning: string) => ({ warnings: [warning] });

/**
 * What is to be noticed about a case, by somebody long in the trade. Common practice, no source. How
 * much each weighs is this site's own: with one thing that stands out it is still a first case.
 */
const noticed: readonly [string, Twist[], number, object?, object?][] = [
  ['flakes on a floor', [], 1],
  ['a dirty floor that holds', [], 1, { ...firm, finish: 'sealer' }],
  ['a hole in a floor', [], 1, hole],
  ['off the floor, small enough to grind', ['off-floor'], 1, { area: 5 }, { element: 'steps' }],
  // Over 10 m2 nobody grinds by hand; under 1 m2 no machine is set up.
  ['a wide wall', ['off-floor', 'size-decides'], 2, {}, { element: 'wall' }],
  ['a spot', ['size-decides'], 1, { area: 0.5 }],
  ['oil', ['oil'], 1, { contamination: ['oil'] }],
  ['paint', ['coating'], 1, { contamination: ['thin-coating'] }],
  ['moss', ['growth-or-bloom'], 1, { contamination: ['growth'] }],
  [
    'a white crust under a paint',
    ['growth-or-bloom', 'stands-before'],
    2,
    { contamination: ['salt-bloom'] },
  ],
  [
    'a crack in frost under a sealer',
    ['crack', 'frost-on-bruise'],
    3,
    { cracks: 'open', finish: 'sealer' },
    { freezeThaw: 'often' },
  ],
  [
    'rust, and a sign that is none',
    ['steel', 'stands-before', 'harmless-sign'],
    3,
    { steel: 'rust-stain' },
    warned('buried-services'),
  ],
  ['a crack', ['crack'], 2, { cracks: 'hairline' }],
  [
    'a crack in frost',
    ['crack', 'frost-on-bruise'],
    3,
    { cracks: 'open' },
    { freezeThaw: 'often' },
  ],
  ['a hole in frost', ['frost-on-bruise'], 2, hole, { freezeThaw: 'often' }],
  ['rust', ['steel', 'stands-before'], 2, { steel: 'rust-stain' }],
  [
    'rust where salt comes',
    ['steel', 'stands-before', 'salts-at-steel'],
    3,
    { steel: 'rust-stain' },
    { salts: 'de-icing' },
  ],
  ['salt without a bar', [], 1, {}, { salts: 'de-icing' }],
  ['low spots', ['low-spots'], 2, { texture: 'pitted' }],
  [
    'a firm hole to fill',
    ['firm-hollow'],
    1,
    { ...hole, depth: '6-to-20', depthMm: 15, looseness: 'tight' },
  ],
  [
    'a closed face under an overlay',
    ['finish-steps-up'],
    2,
    { ...firm, texture: 'smooth', finish: 'overlay' },
  ],
  [
    'a weak face with pits under a thick paint',
    ['low-spots', 'finish-steps-up'],
    3,
    { depth: 'film', looseness: 'powdery', texture: 'pitted', finish: 'build-coat' },
  ],
  [
    'a hole under a thick paint',
    ['too-rough'],
    2,
    { ...hole, depth: '6-to-20', depthMm: 15, finish: 'build-coat' },
  ],
  [
    'a thick coating over pits',
    ['coating', 'low-spots', 'too-rough'],
    4,
    { ...firm, contamination: ['thick-coating'], texture: 'pitted' },
  ],
  [
    'a sheet that lets it be washed',
    ['sheet'],
    2,
    { ...firm, finish: 'overlay', makerProfile: 3, makerMoisture: 'damp' },
  ],
  [
    'a sheet that asks for the usual',
    ['finish-steps-up'],
    2,
    { finish: 'overlay', makerProfile: 5, makerMoisture: 'damp' },
  ],
  ['a sign that holds nothing up', ['harmless-sign'], 1, {}, warned('buried-services')],
  ['lines below what is broken out', ['stands-before'], 1, hole, warned('buried-services')],
  ['a slab that rocks', ['stands-before'], 1, {}, warned('settled-or-rocking')],
  ['a fire', ['stands-before'], 1, {}, warned('fire-or-chemical')],
  ['cracks like a map', ['stands-before'], 1, {}, warned('map-cracking')],
  ['an old coating', ['stands-before'], 1, {}, warned('old-coating-or-adhesive')],
  ['tendons where it is broken out', ['stands-before'], 1, hole, warned('tendons-possible')],
  ['what holds something up', ['stands-before'], 1, hole, warned('holds-something-up')],
];

describe('what makes a case harder', () => {
  it.each(noticed)('%s: %j, level %i', (_, met, level, zone, site) => {
    const one = caseOf(zone, site);
    expect([...twistsOf(one)].sort()).toEqual([...met].sort());
    expect(levelOf(one)).toBe(level);
  });
  it('is all looked at, and told in one order', () => {
    const met = new Set(noticed.flatMap(([, all]) => all));
    expect(twists.filter((twist) => !met.has(twist))).toEqual([]);
    const several = twistsOf(
      caseOf({ ...firm, contamination: ['thick-coating'], texture: 'pitted' }),
    );
    expect(several).toEqual(twists.filter((twist) => several.includes(twist)));
  });
  it('asks for more from level to level, and ends at the first and the last', () => {
    expect(askedAt).toEqual({
      1: { steps: false, hazards: false },
      2: { steps: true, hazards: false },
      3: { steps: true, hazards: true },
      4: { steps: true, hazards: true },
    });
    expect([stepLevel(1, -1), stepLevel(1, 1), stepLevel(4, 1), stepLevel(4, -1)]).toEqual([
      1, 2, 4, 3,
    ]);
  });
});

describe('a kind of case', () => {
  const sheet = { ...firm, finish: 'overlay', makerProfile: 3 };
  const bar = { ...hole, looseness: 'tight', steel: 'exposed' };
  it.each<[Stratum['id'], Case]>([
    ['spot-by-hand', caseOf({ area: 0.5 })],
    ['wide-off-floor', caseOf({}, { element: 'wall' })],
    ['suspended-steps', caseOf({ area: 5 }, { element: 'suspended-steps' })],
    ['sheet-decides', caseOf(sheet)],
    ['sheet-decides', caseOf({ ...sheet, makerMoisture: 'damp' })],
    ['bar-leads', caseOf(bar, { thickness: 300 })],
  ])('%s is met there, not on a plain floor, and not while the work waits', (id, one) => {
    const stratum = { kind: 'turn', id } as Stratum;
    expect([isOf(one, stratum), isOf(caseOf(), stratum)]).toEqual([true, false]);
    const burnt = { ...one, site: { ...one.site, ...warned('fire-or-chemical') } } as Case;
    expect(isOf(burnt, stratum)).toBe(false);
    expect(isOf(burnt, { kind: 'hold', id: 'fire-or-chemical' })).toBe(true);
    expect(isOf(one, { kind: 'hold', id: 'fire-or-chemical' })).toBe(false);
  });
  it('by its method is met where that is advised', () => {
    expect(isOf(caseOf(), { kind: 'method', id: 'grind' })).toBe(true);
    expect(isOf(caseOf(), { kind: 'method', id: 'scarify' })).toBe(false);
  });
});

describe('a fact that may stand folded', () => {
  const aside = (about: readonly string[], zone?: object, site?: object) =>
    isAside(caseOf(zone, site), { about: about as never });
  it('tells of nothing that decides a first case', () => {
    for (const id of ['cracks', 'freezeThaw', 'salts', 'setting', 'element', 'area', 'steel'])
      expect(aside([id]), id).toBe(true);
    for (const id of ['depth', 'looseness', 'texture', 'contamination', 'warnings', 'barLoss'])
      expect([id, aside(['cracks', id])]).toEqual([id, false]);
  });
  it('is not the place where that is no floor, nor the size where that decides', () => {
    for (const id of ['element', 'area']) {
      expect(aside([id], { area: 5 }, { element: 'steps' }), id).toBe(false);
      expect(aside([id], { area: 0.5 }), id).toBe(false);
    }
    expect(aside(['setting'], { area: 0.5 })).toBe(true);
  });
  it('is not a bar in sight', () => {
    const bar = { ...hole, steel: 'exposed' };
    const thick = { thickness: 300 };
    expect(levelOf(caseOf(bar, thick))).toBe(1);
    expect([aside(['steel'], bar, thick), aside(['cracks'], bar, thick)]).toEqual([false, true]);
  });
  it('is none in a harder case', () => {
    expect(aside(['freezeThaw'], { texture: 'pitted' })).toBe(false);
  });
});

describe('the pictures beside the facts', () => {
  const pictures = (zone: object, ...about: string[][]) => seen(zone, {}, about);
  const seen = (zone: object, site: object, about: string[][]) =>
    picturesOf(caseOf(zone, site), about.map((ids) => ({ about: ids })) as never).map(
      (picture) => picture && `${picture.question} ${picture.choice}`,
    );
  it('show the most telling of each fact, nothing twice, and nothing that is not there', () => {
    const all = ['depth', 'steel', 'cracks', 'texture', 'looseness', 'contamination'];
    const there = { contamination: ['growth'], cracks: 'open', steel: 'exposed' };
    expect(pictures(there, all, all, all, all, all, all, all, ['element'])).toEqual([
      ...['contamination growth', 'looseness flaking', 'texture sandy', 'cracks open'],
      ...['steel exposed', 'depth under-3', null, null],
    ]);
    expect(pictures({}, ['contamination'], ['cracks', 'steel'], ['depth'], ['looseness'])).toEqual([
      ...[null, null, 'depth under-3', 'looseness flaking'],
    ]);
  });
  it('show the sign of danger that is told, where it is the only one', () => {
    const told = [['element'], ['warnings']];
    expect(seen({}, { warnings: ['buried-services'] }, told)).toEqual([
      ...[null, 'warnings buried-services'],
    ]);
    expect(seen({}, { warnings: ['buried-services', 'sunk-or-rocking'] }, told)).toEqual([
      ...[null, null],
    ]);
  });
});
