import { describe, expect, it } from 'vitest';
import { choose, type Methods } from '$lib/advice/choice';
import { fixedOf, possibilitiesFor } from '$lib/advice/completions';
import { demandsOf, hasCoating, opensBelow, showsBar } from '$lib/advice/demands';
import { dirtSteps, stepsIn } from '$lib/advice/following';
import { choosing, groupsOf, type Choosing, type Group } from '$lib/advice/groups';
import { fullDepthHold } from '$lib/advice/hole';
import { holdsOf, reachOf } from '$lib/advice/holds';
import { stepsCalled } from '$lib/advice/steps/all';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { methodIds } from '$shared/methods';
import { completions } from '../helpers/enumerate';
import { maybe, slab } from '../helpers/sure-answers';

const base = { thickness: 150, setting: 'open' } as const;
const cases: Readonly<Record<string, Answers & TriedAnswers>> = {
  'damage on floors and walls': {
    ...slab,
    ...base,
    element: ['slab', 'soffit'],
    setting: ['open'],
    depth: ['under-3', '3-to-6', '6-to-20', 'over-50'],
    looseness: ['tight', 'powdery', 'flaking', 'hollow', 'rotten'],
    texture: ['smooth'],
    cracks: ['none', 'open'],
    steel: ['none-seen', 'exposed'],
    finish: ['sealer', 'thin-film', 'rebuild'],
  },
  'dirt under every finish': {
    ...slab,
    ...base,
    element: ['slab', 'wall'],
    setting: ['open'],
    looseness: ['tight', 'flaking'],
    contamination: maybe('oil', 'thin-coating', 'thick-coating', 'salt-bloom', 'growth'),
    texture: ['smooth', 'sandy', 'pitted'],
    finish: ['sealer', 'build-coat', 'self-levelling', 'overlay', 'undecided'],
  },
  'methods that failed on a patch': {
    ...slab,
    ...base,
    element: ['slab', 'wall'],
    setting: ['open'],
    looseness: ['tight', 'flaking', 'rotten'],
    depth: ['under-3', '20-to-50'],
    contamination: maybe('thick-coating', 'rubbery-coating'),
    finish: ['sealer', 'rebuild'],
    steel: ['none-seen', 'corroded'],
    triedOut: [
      { method: 'break-out', because: 'too-much', why: ['bruised'] },
      { method: 'water-jet', because: 'too-much', why: ['bruised'] },
      { method: 'pressure-wash', because: 'too-little', why: ['still-loose'] },
    ],
  },
  'a jet alone is left, under finishes whose sheet says dry': {
    ...slab,
    ...base,
    setting: ['open'],
    looseness: ['flaking', 'hollow', 'rotten'],
    depth: ['under-3', '20-to-50'],
    contamination: maybe('salt-bloom'),
    finish: ['sealer', 'undecided', 'thin-film', 'overlay'],
    makerMoisture: ['dry'],
    triedOut: methodIds
      .filter((method) => method !== 'water-jet')
      .map((method) => ({ method, because: 'too-much', why: ['bruised'] })),
  },
};
/** As many as there were when this was written: a walk that tells more apart takes longer for nothing. */
const mostOf: Readonly<Record<string, { groups: number; choices: number }>> = {
  'damage on floors and walls': { groups: 272, choices: 160 },
  'dirt under every finish': { groups: 54, choices: 288 },
  'methods that failed on a patch': { groups: 38, choices: 84 },
  'a jet alone is left, under finishes whose sheet says dry': { groups: 35, choices: 6 },
};
const nameOf = ({ method, rest, spent }: Methods) => `${method} ${rest} ${spent}`;
const withoutDirt = (zone: SettledZone): SettledZone => ({ ...zone, contamination: [] });
const sufficient = ({ demands }: Pick<Group, 'demands'>) =>
  methodIds.filter((method) => !choose(demands).shortfallOf(method));
/** What the work is, but for what the dirt asks for. */
const workOf = (site: SettledSite, zone: SettledZone, { method, rest }: Methods) => {
  const bare = withoutDirt(zone);
  return stepsCalled({ site, zone: bare, demands: demandsOf(site, bare), method, rest });
};

/**
 * What stands before it where rust shows that no bar does: with nothing else, and with every warning,
 * with salts and, where no crack is open, one that moves.
 */
function holdsAround(where: SettledSite, zone: SettledZone, { method, spent }: Methods) {
  const rusty: SettledZone = { ...zone, ...(!showsBar(zone) && { steel: 'rust-stain' }) };
  const moving: SettledZone = { ...rusty, ...(!opensBelow(zone.cracks) && { cracks: 'moving' }) };
  const warned = { ...where, warnings: choicesOf('warnings'), salts: 'de-icing' } as const;
  const told = (site: SettledSite, here: SettledZone) =>
    holdsOf(site, here, reachOf(site, here, method, spent), fullDepthHold(site, here))
      .map(({ rule, verdict, who }) => `${rule} ${verdict} ${who}`)
      .join();
  return `${told(where, rusty)}; ${told(warned, moving)}`;
}

describe.each(Object.entries(cases))('what comes to the same, as one: %s', (name, answers) => {
  const open = possibilitiesFor(answers, answers);
  const { groups, choices, mostHolds } = groupsOf(open, base, fixedOf(answers));
  const all = [...completions(answers)].map(({ site, zone }) => {
    const { depth, looseness, contamination, texture, finish } = zone;
    const here: Readonly<Record<Choosing, unknown>> = {
      ...{ element: site.element, depthAndLooseness: { depth, looseness } },
      ...{ contamination, texture, finish },
    };
    const bits = choosing.map((name) => {
      const list = open[name] as readonly { readonly members: readonly unknown[] }[];
      const is = JSON.stringify(here[name]);
      return (
        1 << list.findIndex(({ members }) => members.some((each) => JSON.stringify(each) === is))
      );
    });
    const demands = demandsOf(site, zone);
    const { method, rest, spent } = choose(demands);
    return { site, zone, demands, bits, method, rest, spent };
  });
  const fits = (group: Group, one: (typeof all)[number]) =>
    nameOf(group) === nameOf(one) &&
    choosing.every((name, place) => (group.seen[name] & (one.bits[place] as number)) !== 0);

  it('every completion is in a group of the same method, hole and work, with its dirt', () => {
    for (const one of all) {
      const { site, zone } = one;
      const depthHold = JSON.stringify(fullDepthHold(site, zone));
      const holds = holdsAround(site, zone, one);
      const work = workOf(site, zone, one);
      const dirt = dirtSteps(one);
      const coated = hasCoating(zone.contamination);
      const found = groups.some(
        (group) =>
          fits(group, one) &&
          JSON.stringify(group.depthHold) === depthHold &&
          holdsAround(group.site, group.zone, group) === holds &&
          workOf(group.site, group.zone, group) === work &&
          (dirt & ~group.dirtAny) === 0 &&
          (group.dirtAll & ~dirt) === 0 &&
          (coated ? group.coatedSome : group.coatedNever),
      );
      expect(found, JSON.stringify([site, zone])).toBe(true);
    }
  });
  it('none is lost or counted twice', () => {
    expect(groups.reduce((sum, { weight }) => sum + weight, 0)).toBe(all.length);
    expect(groups.length).toBeLessThanOrEqual(mostOf[name]?.groups ?? 0);
  });
  it('groups of one number call for the same work, or come to the same holds if that cuts the same', () => {
    /** More than one where groups of one key come to different things. */
    const most = (key: (group: Group) => string, comesTo: (group: Group) => unknown) => {
      const all = new Map<string, Set<unknown>>();
      for (const group of groups)
        all.set(key(group), (all.get(key(group)) ?? new Set()).add(comesTo(group)));
      return Math.max(...[...all.values()].map(({ size }) => size));
    };
    const work = (group: Group) => workOf(group.site, group.zone, group);
    const cuts = (group: Group) =>
      stepsIn(work(group)).filter((id) => /^(saw-cut|chase-crack|free-bar|route-crack)$/.test(id));
    expect(most(({ worksAs }) => `${worksAs}`, work)).toBe(1);
    expect(
      most(
        (group) => `${group.holdsAs} ${group.zone.cracks} ${group.zone.steel} ${cuts(group)}`,
        (group) => JSON.stringify(group.depthHold) + holdsAround(group.site, group.zone, group),
      ),
    ).toBe(1);
  });
  it('a group holds nothing that is nowhere in it', () => {
    for (const group of groups) {
      const own = all.filter((one) => fits(group, one));
      for (const [place, name] of choosing.entries())
        expect(group.seen[name]).toBe(
          own.reduce((sum, { bits }) => sum | (bits[place] as number), 0) & group.seen[name],
        );
      if (group.coatedSome)
        expect(own.some(({ zone }) => hasCoating(zone.contamination))).toBe(true);
      if (group.coatedNever)
        expect(own.some(({ zone }) => !hasCoating(zone.contamination))).toBe(true);
      expect(group.holdsAs).toBeLessThan(mostHolds);
    }
    expect(new Set(groups.map(({ worksAs, holdsAs }) => `${worksAs} ${holdsAs}`)).size).toBe(
      groups.length,
    );
  });
  it('each way to choose is there, hardly one twice, and no other', () => {
    const ways = (list: readonly Pick<Group, 'demands'>[]) =>
      new Set(list.map((each) => `${nameOf(choose(each.demands))}: ${sufficient(each).join()}`));
    expect(ways(choices)).toEqual(ways(all));
    expect(new Set(choices.map(nameOf))).toEqual(new Set(all.map(nameOf)));
    expect(choices.length).toBeLessThanOrEqual(mostOf[name]?.choices ?? 0);
    expect(groupsOf(open, base, fixedOf(answers), false)).toEqual({
      groups: [],
      choices,
      mostHolds: 0,
    });
  });
});

it('an answer with more possibilities than a number has bits is refused', () => {
  const open = possibilitiesFor(slab, slab);
  const of = (count: number) => ({
    ...open,
    texture: Array.from({ length: count }, () => open.texture[0] as (typeof open.texture)[0]),
  });
  expect(() => groupsOf(of(33), base, fixedOf(slab))).toThrow(
    'More possibilities of an answer than 32 bits hold.',
  );
  expect(groupsOf(of(32), base, fixedOf(slab)).groups).toHaveLength(1);
});
