import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { checksFor, type CheckSituation } from '$lib/readiness/needs';
import { needsOf } from '$lib/readiness/open-needs';

const plain: CheckSituation = {
  site: { element: 'slab', setting: 'open', salts: 'none' },
  zone: { steel: 'none-seen', finish: 'overlay', area: 5, contamination: [] },
  steps: [],
};
const zone = (change: Partial<CheckSituation['zone']>) => ({
  ...plain,
  zone: { ...plain.zone, ...change },
});
const levels = (situation: CheckSituation) =>
  Object.fromEntries(checksFor(situation).map(({ check, level }) => [check, level]));

describe('the checks a settled zone calls for', () => {
  it('always: sound, rough enough, clean, open, fresh', () => {
    for (const finish of choicesOf('finish'))
      expect(levels(zone({ finish }))).toMatchObject({
        sounding: 'needed',
        profile: 'needed',
        'dust-tape': 'needed',
        'water-drop': 'needed',
        absorption: 'needed',
        'open-time': 'needed',
      });
  });

  it('bars where they show, rust where they show', () => {
    for (const steel of ['exposed', 'corroded'] as const)
      expect(levels(zone({ steel }))).toMatchObject({
        'bars-free': 'needed',
        'bars-clean': 'needed',
      });
    expect(levels(zone({ steel: 'rust-stain' }))).not.toHaveProperty('bars-free');
  });

  it('chloride and half-cell only where steel and salt meet', () => {
    for (const steel of choicesOf('steel'))
      for (const salts of choicesOf('salts')) {
        const found = levels({ ...zone({ steel }), site: { ...plain.site, salts } });
        const meet = steel !== 'none-seen' && salts !== 'none';
        expect('chloride' in found).toBe(meet);
        expect('half-cell' in found).toBe(meet);
      }
  });

  it('carbonation by need where a bar has corroded, on request where steel is near', () => {
    expect(levels(zone({ steel: 'corroded' })).carbonation).toBe('needed');
    expect(levels(zone({ steel: 'exposed' })).carbonation).toBe('if-specified');
    expect(levels(zone({ steel: 'none-seen' }))).not.toHaveProperty('carbonation');
  });

  it('pull-off under a bonded build-up on a large area, otherwise where it is specified', () => {
    expect(levels(zone({ area: 10 }))['pull-off']).toBe('needed');
    expect(levels(zone({ area: 'unknown' }))['pull-off']).toBe('needed');
    expect(levels(zone({ area: 9.9 }))['pull-off']).toBe('if-specified');
    expect(levels(zone({ area: 50, finish: 'sealer' }))['pull-off']).toBe('if-specified');
  });

  it('dry under coatings, damp under cement', () => {
    const coating = levels(zone({ finish: 'build-coat' }));
    expect(coating['plastic-sheet']).toBe('needed');
    expect(coating).not.toHaveProperty('surface-damp');
    const cement = levels(zone({ finish: 'overlay' }));
    expect(cement['surface-damp']).toBe('needed');
    expect(cement).not.toHaveProperty('plastic-sheet');
  });

  it('humidity in the slab only under a tight film on an indoor floor', () => {
    const indoors = { ...plain.site, setting: 'indoors' } as const;
    expect(levels({ ...zone({ finish: 'build-coat' }), site: indoors })).toHaveProperty('humidity');
    expect(levels(zone({ finish: 'build-coat' }))).not.toHaveProperty('humidity');
    const wall = { ...indoors, element: 'wall' } as const;
    expect(levels({ ...zone({ finish: 'build-coat' }), site: wall })).not.toHaveProperty(
      'humidity',
    );
  });

  it('pH after degreasing, square edges after sawing', () => {
    expect(levels(zone({ contamination: ['oil'] })).ph).toBe('needed');
    expect(levels(plain)).not.toHaveProperty('ph');
    expect(levels({ ...plain, steps: ['saw-cut'] }).edges).toBe('needed');
    expect(levels(plain)).not.toHaveProperty('edges');
  });

  it('comes in the order the checks are done, each once', () => {
    const found = checksFor(zone({ steel: 'corroded', contamination: ['oil'] })).map(
      ({ check }) => check,
    );
    expect(found).toEqual(checkIds.filter((id) => found.includes(id)));
  });
});

describe('the checks of a zone with open answers', () => {
  const site: SiteAnswers = {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['some'],
    thickness: 120,
    warnings: { yes: [], maybe: [] },
  };
  const answers: ZoneAnswers = {
    depth: 3,
    looseness: ['tight'],
    contamination: { yes: [], maybe: [] },
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['overlay'],
    area: 5,
  };
  const needs = (s: SiteAnswers, z: ZoneAnswers) => needsOf(s, z, adviseZone(s, z));
  const nothingAdvised = {
    steps: [],
    outcomes: [{ example: { steps: [{ id: 'saw-cut' as const }] } }],
  };
  const find = (s: SiteAnswers, z: ZoneAnswers, check: CheckId) =>
    needs(s, z).needs.find((need) => need.check === check);

  it('are certain where nothing that matters is open', () => {
    expect(needs(site, answers).needs.every((need) => need.certain)).toBe(true);
    expect(needs(site, answers).profile).toEqual([5, 10]);
  });

  it('hold a check that any possibility needs, and name the answer it hangs on', () => {
    const z: ZoneAnswers = { ...answers, steel: ['none-seen', 'exposed'] };
    expect(find(site, z, 'bars-free')).toMatchObject({
      level: 'needed',
      certain: false,
      depends: ['steel'],
    });
    const oily: ZoneAnswers = { ...answers, contamination: { yes: [], maybe: ['oil'] } };
    expect(find(site, oily, 'ph')).toMatchObject({ certain: false, depends: ['contamination'] });
  });

  it('hold the edge check where breaking out is one of the possibilities', () => {
    const z: ZoneAnswers = { ...answers, depth: ['6-to-20'], looseness: ['tight', 'hollow'] };
    expect(find(site, z, 'edges')).toMatchObject({ certain: false, depends: ['looseness'] });
    const hollow: ZoneAnswers = { ...answers, depth: ['6-to-20'], looseness: ['hollow'] };
    expect(find(site, hollow, 'edges')).toMatchObject({ certain: true });
  });

  it('take the profile that every possible finish accepts, or none', () => {
    expect(needs(site, { ...answers, finish: ['overlay', 'thin-overlay'] }).profile).toEqual([
      5, 9,
    ]);
    expect(needs(site, { ...answers, finish: ['overlay', 'sealer'] }).profile).toBeNull();
    expect(needs(site, { ...answers, finish: ['undecided'] }).profile).toBeNull();
  });

  it('miss no check that a completion needs, whatever is open', () => {
    const some = <T>(all: readonly T[]) => fc.subarray([...all], { minLength: 1 });
    fc.assert(
      fc.property(
        some(choicesOf('salts')),
        some(choicesOf('steel')),
        some(choicesOf('finish')),
        some(choicesOf('setting')),
        (salts, steel, finish, setting) => {
          const s = { ...site, salts, setting } as unknown as SiteAnswers;
          const z = { ...answers, steel, finish } as unknown as ZoneAnswers;
          const open = needsOf(s, z, nothingAdvised).needs;
          for (const one of salts)
            for (const bar of steel)
              for (const next of finish)
                for (const place of setting)
                  for (const { check, level } of checksFor({
                    site: { element: 'slab', setting: place, salts: one },
                    zone: { steel: bar, finish: next, area: 5, contamination: [] },
                    steps: [],
                  })) {
                    const found = open.find((need) => need.check === check);
                    expect(found).toBeDefined();
                    if (level === 'needed') expect(found?.level).toBe('needed');
                  }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('answer at once when nothing at all is known', () => {
    const start = performance.now();
    expect(needsOf({}, {}, nothingAdvised).needs).toHaveLength(checkIds.length);
    expect(performance.now() - start).toBeLessThan(8000);
  });
});
