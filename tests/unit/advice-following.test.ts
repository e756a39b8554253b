import { describe, expect, it } from 'vitest';
import { possibilitiesFor } from '$lib/advice/completions';
import { showsBar } from '$lib/advice/demands';
import {
  dirtSteps,
  everyStep,
  following,
  followingFor,
  followingOf,
  mostCuts,
  mostHoldsAs,
  stepsIn,
  worksFor,
  type Next,
} from '$lib/advice/following';
import { fullDepthHold } from '$lib/advice/hole';
import { holdsOf, reachOf } from '$lib/advice/holds';
import { groupsOf } from '$lib/advice/groups';
import { stepsCalled } from '$lib/advice/steps/all';
import { workOrder } from '$lib/advice/steps/work';
import { siteWith, situationOn, zoneWith } from '../helpers/settled';
import { slab } from '../helpers/sure-answers';

const bars = { barLoss: ['within-limit', 'one-bar', 'neighbours'] } as const;
const nexts = followingOf(possibilitiesFor({}, bars));
const oneCrack = followingOf(possibilitiesFor({}, { ...bars, cracks: ['none', 'open'] }));
/** What several come to, by their number. */
function byNumber(
  list: readonly Next[],
  name: 'holdsAs' | 'worksAs',
  comesTo: (next: Next) => unknown,
) {
  const all = new Map<number, Set<string>>();
  for (const next of list) {
    const same = all.get(next[name]) ?? new Set();
    all.set(next[name], same.add(JSON.stringify(comesTo(next))));
  }
  return all;
}

// Common practice, no source: salts matter where steel or its rust shows.
describe('cracks, steel, frost and salts together', () => {
  it('stand for every completion of them, salts told apart only where steel or its rust shows', () => {
    expect(nexts.reduce((sum, { weight }) => sum + weight, 0)).toBe(5 * (2 + 2 * 3) * 3 * 3);
    // Of steel six ways: none, a stain, and a bar whose loss is within the limit or past it.
    expect(nexts).toHaveLength(5 * 3 * (1 + 5 * 2));
    for (const { zone, seen } of nexts) {
      const both = zone.steel === 'none-seen';
      expect(seen.salts === 3, zone.steel).toBe(both);
    }
    const places = (name: 'cracks' | 'steel' | 'freezeThaw' | 'salts') =>
      [...new Set(nexts.map(({ seen }) => seen[name]))].sort((one, other) => one - other);
    expect(places('cracks')).toEqual([1, 2, 4, 8, 16]);
    expect(places('steel')).toEqual([1, 2, 4, 8, 16, 32]);
    expect(places('freezeThaw')).toEqual([1, 2, 4]);
    expect(places('salts')).toEqual([1, 2, 3]);
  });
  it('of one number come to the same holds; cracks only by whether there are any, and whether they move', () => {
    const all = byNumber(nexts, 'holdsAs', ({ site, zone }) =>
      (['slab', 'wall'] as const).flatMap((element) =>
        (['shotblast', 'break-out'] as const).map((method) => {
          const here = siteWith({ ...site, element });
          const there = zoneWith(zone);
          const reach = reachOf(here, there, method);
          // A groove, which the steps tell of, is left out.
          return holdsOf(
            here,
            there,
            { ...reach, cuts: true, deep: true },
            fullDepthHold(here, there),
          );
        }),
      ),
    );
    expect(all.size).toBe((1 + 5 * 2) * 3);
    for (const [holdsAs, { size }] of all) {
      expect(size).toBe(1);
      expect(holdsAs).toBeLessThan(mostHoldsAs);
    }
  });
  it('of one number call for the same steps; steel by whether rust or a bar shows', () => {
    for (const [list, cracks] of [
      [nexts, 5],
      [oneCrack, 2],
    ] as const) {
      const all = byNumber(list, 'worksAs', ({ site, zone }) =>
        stepsCalled(situationOn({ ...zone, finish: 'build-coat' }, site)),
      );
      expect(all.size).toBe(cracks * 3 * (1 + 2 * 2));
      for (const { size } of all.values()) expect(size).toBe(1);
    }
  });
  it('have room for eight ways steel can be, and say so where there are more', () => {
    const possibilities = possibilitiesFor({}, bars);
    const [first] = possibilities.steel;
    const last = possibilities.steel.at(-1);
    const steel = (count: number) =>
      Array.from({ length: count }, (_, at) => (at ? last : first) as NonNullable<typeof last>);
    const most = followingOf({ ...possibilities, steel: steel(8) }).map(({ holdsAs }) => holdsAs);
    expect(Math.max(...most)).toBe(mostHoldsAs - 1);
    expect(Math.min(...most)).toBe(0);
    expect(() => followingOf({ ...possibilities, steel: steel(9) })).toThrow(
      'Steel has more than 8 possibilities.',
    );
  });
  it.each([
    [false, false],
    [false, true],
    [true, false],
    [true, true],
  ])('go with the demands they make: cracks open %s, a bar %s', (openCracks, bar) => {
    const cracks = openCracks ? ['open', 'crumbling'] : ['none', 'hairline', 'moving'];
    const fitting = nexts.filter(
      ({ zone }) => cracks.includes(zone.cracks) && showsBar(zone) === bar,
    );
    expect(fitting.length).toBeGreaterThan(0);
    const { demands } = situationOn({
      cracks: openCracks ? 'open' : 'hairline',
      steel: bar ? 'exposed' : 'rust-stain',
    });
    expect(followingFor(nexts)(demands)).toEqual(fitting);
  });
});

describe('the steps of a group', () => {
  const open = {
    ...slab,
    ...bars,
    cracks: undefined,
    steel: undefined,
    salts: undefined,
    freezeThaw: undefined,
    looseness: ['fractured'],
    depth: ['20-to-50'],
    finish: ['rebuild'],
    contamination: { yes: ['oil'], maybe: [] },
  } as const;
  const { groups } = groupsOf(
    possibilitiesFor(open as never, open as never),
    { thickness: 300, setting: 'open' },
    { area: 20 },
  );
  it('are those of its work with each combination, but for what its dirt asks for; what cuts alike and holds alike is one', () => {
    expect(groups.length).toBeGreaterThan(1);
    const cut = ['saw-cut', 'chase-crack', 'free-bar', 'route-crack'];
    const cuts = new Map<string, number>();
    for (const group of groups) {
      const { method, rest } = group;
      const fitting = followingFor(nexts)(group.demands).map((next) => {
        const situation = situationOn(
          { ...group.zone, ...next.zone, contamination: [] },
          { ...group.site, ...next.site },
          { method, rest },
        );
        const steps = stepsCalled(situation);
        const named = stepsIn(steps).filter((id) => cut.includes(id));
        return { next, steps, named: named.join() };
      });
      const works = worksFor(
        group,
        fitting.map(({ next }) => next),
      );
      const seenIn = new Set<Next>();
      for (const { next, cuts: number, weight, seen, all, any } of works) {
        const own = fitting.find((each) => each.next === next);
        const alike = fitting.filter(
          (each) => each.named === own?.named && each.next.holdsAs === next.holdsAs,
        );
        for (const each of alike) seenIn.add(each.next);
        expect(weight).toBe(alike.reduce((sum, each) => sum + each.next.weight, 0));
        expect(stepsIn(all)).toEqual(stepsIn(alike.reduce((set, { steps }) => set & steps, -1)));
        expect(stepsIn(any)).toEqual(stepsIn(alike.reduce((set, { steps }) => set | steps, 0)));
        for (const name of following)
          expect(seen[name]).toBe(alike.reduce((set, each) => set | each.next.seen[name], 0));
        // A number for what is cut, the same for the same.
        const name = own?.named ?? '';
        expect(number).toBe(cuts.get(name) ?? number);
        expect(number).toBeGreaterThanOrEqual(0);
        expect(number).toBeLessThan(mostCuts);
        cuts.set(name, number);
      }
      expect(seenIn.size).toBe(fitting.length);
      expect(works.length).toBeLessThan(fitting.length);
    }
    expect(new Set(cuts.values()).size).toBe(cuts.size);
    expect(cuts.size).toBeGreaterThan(3);
  });
  it.each([
    [['oil'], ['degrease']],
    [['growth'], ['strip-growth']],
    [
      ['oil', 'growth'],
      ['degrease', 'strip-growth'],
    ],
    [[], []],
  ] as const)('and of dirt, %j, what it adds: %j', (contamination, steps) => {
    expect(stepsIn(dirtSteps(situationOn({ contamination })))).toEqual(steps);
  });
  it('a heavy coating is scraped where no machine can stand', () => {
    const wall = situationOn({ contamination: ['thick-coating'] }, { element: 'wall' });
    expect(stepsIn(dirtSteps(wall))).toEqual(['strip-coating']);
  });
  it('and where one can, the pits that were under it are blasted', () => {
    const floor = situationOn({
      contamination: ['thick-coating'],
      texture: 'pitted',
      finish: 'sealer',
    });
    expect(floor.method).toBe('scarify');
    expect(stepsIn(dirtSteps(floor))).toEqual(['blast-clean']);
  });
  it('all of them are the order of work', () => {
    expect(stepsIn(everyStep)).toEqual(workOrder);
    expect(stepsIn(0)).toEqual([]);
  });
});
