import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { checksFor } from '$lib/readiness/needs';
import { needsOf } from '$lib/readiness/open-needs';
import { rounds } from '../helpers/rounds';

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
  const needs = (s: SiteAnswers, z: ZoneAnswers) =>
    needsOf(s, z, adviseZone(s, z, { margins: false }));
  const nothingAdvised = {
    steps: [],
    outcomes: [{ example: { steps: [{ id: 'saw-cut' as const }, { id: 'fill-level' as const }] } }],
  };
  const find = (s: SiteAnswers, z: ZoneAnswers, check: CheckId) =>
    needs(s, z).needs.find((need) => need.check === check);

  it('are certain where nothing that matters is open', () => {
    expect(needs(site, answers).needs.every((need) => need.certain)).toBe(true);
    expect(needs(site, answers).profile).toEqual([5, 10]);
  });

  // Common practice, no source: a sealer soaks into the texture it finds.
  it('compare no roughness under a sealer on what is only washed, and do where it may be ground', () => {
    const washed: ZoneAnswers = { ...answers, finish: ['sealer'] };
    expect(find(site, washed, 'profile')).toBeUndefined();
    expect(needs(site, washed).profile).toBeNull();
    const perhaps: ZoneAnswers = { ...washed, depth: ['under-3'], looseness: ['tight', 'flaking'] };
    expect(find(site, perhaps, 'profile')).toMatchObject({ level: 'needed', certain: false });
    expect(needs(site, perhaps).profile).toEqual([1, 2]);
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

  // Common practice; no sawing and no drilling before tendons are located: PTI GN01, as reported.
  it('that cut into the concrete wait for what may lie hidden there', () => {
    const thick: ZoneAnswers = { ...answers, area: 60, finish: ['build-coat'] };
    const locate = (warnings: SiteAnswers['warnings'], check: CheckId) =>
      find({ ...site, setting: ['indoors'], ...(warnings && { warnings }) }, thick, check)?.locate;
    for (const check of ['pull-off', 'humidity'] as const) {
      expect(locate({ yes: [], maybe: [] }, check)).toEqual([]);
      expect(locate({ yes: ['tendons-possible'], maybe: [] }, check)).toEqual(['tendons-possible']);
      expect(locate({ yes: ['map-cracking'], maybe: ['buried-services'] }, check)).toEqual([
        'buried-services',
      ]);
    }
    expect(locate({ yes: ['tendons-possible'], maybe: [] }, 'sounding')).toEqual([]);
    const { needs: all } = needsOf({}, { steel: ['corroded'] }, nothingAdvised);
    expect(all.filter((need) => need.locate.length).map(({ check }) => check)).toEqual([
      ...(['chloride', 'carbonation', 'half-cell', 'pull-off', 'humidity'] as const),
    ]);
    expect(all.find(({ check }) => check === 'chloride')?.locate).toHaveLength(2);
  });

  it('hold the edge check where breaking out is one of the possibilities', () => {
    const z: ZoneAnswers = { ...answers, depth: ['6-to-20'], looseness: ['tight', 'hollow'] };
    expect(find(site, z, 'edges')).toMatchObject({ certain: false, depends: ['looseness'] });
    const hollow: ZoneAnswers = { ...answers, depth: ['6-to-20'], looseness: ['hollow'] };
    expect(find(site, hollow, 'edges')).toMatchObject({ certain: true });
  });

  it('take profile and moisture from the data sheet where there is one', () => {
    const sheet: ZoneAnswers = {
      ...answers,
      finish: ['overlay', 'sealer'],
      makerProfile: ['csp-3'],
      makerMoisture: ['dry'],
    };
    expect(needs(site, sheet).profile).toEqual([3, 3]);
    expect(needs(site, { ...sheet, finish: ['overlay'] }).profile).toEqual([3, 10]);
    expect(needs(site, sheet).wantsDry).toBe(true);
    expect(find(site, sheet, 'plastic-sheet')?.why.rule).toBe('sheet-wants-dry');
    const none: ZoneAnswers = {
      ...answers,
      makerProfile: ['no-sheet'],
      makerMoisture: ['no-sheet'],
    };
    expect(needs(site, none)).toEqual(needs(site, answers));
    expect(needs(site, answers).wantsDry).toBe(false);
  });

  it('count tendons as possible until they are ruled out', () => {
    expect(needs(site, answers).tendons).toBe(false);
    const maybe = { yes: [], maybe: ['tendons-possible'] } as const;
    expect(needs({ ...site, warnings: maybe }, answers).tendons).toBe(true);
    const unasked: SiteAnswers = { ...site };
    delete (unasked as { warnings?: unknown }).warnings;
    expect(needs(unasked, answers).tendons).toBe(true);
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
      { numRuns: rounds(15, 40) },
    );
  });

  it('answer at once when nothing at all is known', () => {
    const start = process.cpuUsage();
    expect(needsOf({}, {}, nothingAdvised).needs).toHaveLength(checkIds.length);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(8000);
  });
});
