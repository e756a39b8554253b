import { describe, expect, it } from 'vitest';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { checks } from '$lib/readiness/checks';
import { countFor } from '$lib/readiness/sampling';
import { valueOf } from '$shared/figures';

/**
 * How each check is done: what is written down, in what unit, what else has to be known, and where.
 * Common practice, no source, but for the methods in the next table.
 */
const done: Readonly<Record<CheckId, readonly unknown[]>> = {
  sounding: ['choice', ['clear', 'dull'], undefined, [], 'everywhere'],
  edges: ['choice', ['square', 'not-square'], undefined, [], 'everywhere'],
  'bars-free': ['number', ['still-bonded'], 'mm', ['aggregate'], 'each-bar'],
  'bars-clean': ['choice', ['clean', 'rusty'], undefined, [], 'each-bar'],
  chloride: ['number', [], 'percent', [], 'random-spots'],
  carbonation: ['number', [], 'mm', ['cover'], 'random-spots'],
  'half-cell': ['number', [], 'mV', [], 'random-spots'],
  'slurry-ph': ['number', [], 'pH', [], 'each-vessel'],
  ph: ['number', [], 'pH', ['rinse'], 'random-spots'],
  profile: ['number', [], 'CSP', [], 'random-spots'],
  'pull-off': ['pull-off', [], 'MPa', [], 'random-spots'],
  'water-drop': ['choice', ['spreads', 'beads'], undefined, [], 'random-spots'],
  absorption: ['number', [], 'min', [], 'random-spots'],
  'fill-cured': ['choice', ['cured', 'young', 'dull', 'closed'], undefined, [], 'everywhere'],
  'plastic-sheet': ['choice', ['dry', 'damp'], undefined, [], 'random-spots'],
  humidity: ['number', [], 'percent', [], 'random-spots'],
  'dust-tape': ['number', [], 'count', [], 'random-spots'],
  'surface-damp': ['choice', ['damp', 'dry', 'wet'], undefined, [], 'everywhere'],
  'dew-point': ['number', [], 'C', ['air', 'humidity'], 'coldest'],
  'open-time': ['clock', [], undefined, [], 'everywhere'],
};

/** The published way of doing it, as the standards' own titles have it; none: common practice. */
const byStandard: Readonly<Partial<Record<CheckId, readonly string[]>>> = {
  sounding: ['astm-d4580'],
  edges: ['ufgs-03931'],
  'bars-free': ['icri-310.1r', 'aci-364.6'],
  'bars-clean': ['aci-364.6'],
  chloride: ['aci-364.6t', 'concrete-society-chlorides'],
  carbonation: ['en-14630'],
  'half-cell': ['astm-c876'],
  'slurry-ph': ['cfr-40-261.22'],
  ph: ['astm-d4262'],
  profile: ['icri-310.2r', 'astm-d7682'],
  'pull-off': ['astm-c1583', 'as-1012.24'],
  absorption: ['astm-f3191'],
  'plastic-sheet': ['astm-d4263'],
  humidity: ['astm-f710', 'astm-f2170'],
  'dust-tape': ['iso-8502-3'],
  'dew-point': ['iso-8502-4'],
  'open-time': ['ufc-3-270-03'],
};

/** What passes, as a reader is shown it beside the reading. */
const passes: Readonly<Partial<Record<CheckId, readonly string[]>>> = {
  edges: ['patch.min-corner', 'sawcut.depth'],
  'bars-free': ['bar.clear', 'bar.clear-over-aggregate', 'bar.bonded-share'],
  'bars-clean': ['bar.along'],
  chloride: ['chloride.old-low', 'chloride.high', 'chloride.prestressed'],
  carbonation: ['carbonation.ph'],
  'half-cell': ['halfcell.low', 'halfcell.high'],
  'slurry-ph': ['hazard.wash-water-ph'],
  ph: ['ph.from-rinse'],
  profile: ['csp.scale'],
  'pull-off': ['pulloff.least-tests', 'pulloff.glue-void', 'pulloff.confidence'],
  absorption: ['absorption.time'],
  'plastic-sheet': ['sheet.side', 'sheet.time'],
  humidity: ['humidity.most', 'humidity.depth', 'humidity.wait'],
  'dust-tape': ['dust.most', 'dust.scale'],
  'dew-point': ['cover.above-dew', 'place.temperature', 'place.temperature-least'],
  'open-time': ['open.limit'],
};

/** The widest a reading can be and still be one; out of it somebody mistyped, or took another unit. */
const seriously: Readonly<Partial<Record<CheckId, string>>> = {
  'bars-free': 'limit.bar-clear',
  chloride: 'limit.chloride',
  carbonation: 'limit.carbonation',
  'half-cell': 'limit.halfcell',
  'slurry-ph': 'limit.ph',
  ph: 'limit.ph',
  profile: 'csp.scale',
  'pull-off': 'limit.stress',
  absorption: 'limit.absorption',
  humidity: 'limit.humidity',
  'dust-tape': 'dust.scale',
  'dew-point': 'limit.temperature',
};

/** Counted by no area and no bar: the whole surface, every bar, every vessel is looked at. */
const whole: readonly CheckId[] = [
  ...(['sounding', 'edges', 'bars-free', 'bars-clean', 'slurry-ph', 'surface-damp'] as const),
  ...(['fill-cured', 'dew-point', 'open-time'] as const),
];

describe('every check', () => {
  it.each(checkIds)('%s is done as the trade does it', (id) => {
    const { kind, choices, unit, given, where, sources, figures, limit, beside } = checks[id];
    expect([kind, choices, unit, given, where]).toEqual(done[id]);
    expect(sources).toEqual(byStandard[id] ?? []);
    expect(figures).toEqual(passes[id] ?? []);
    expect(limit).toBe(seriously[id]);
    expect(beside ?? false).toBe(id === 'slurry-ph');
    expect(countFor(id, 1000, undefined, []) === null).toBe(whole.includes(id));
  });

  // Common practice, no source: three places tell one bad place from a bad surface.
  it.each(['chloride', 'carbonation', 'half-cell', 'profile', 'dust-tape', 'water-drop'] as const)(
    '%s is taken in three places, whatever the area',
    (id) => {
      for (const area of [1, 1000, 'unknown'] as const)
        expect(countFor(id, area, undefined, [])).toEqual({
          tests: valueOf('sampling.least'),
          by: 'practice',
          figures: ['sampling.least'],
          areaOpen: false,
        });
    },
  );

  it.each([
    ['ph', ['ph.tests', 'ph.area']],
    ['plastic-sheet', ['sheet.tests', 'sheet.area']],
    ['absorption', ['absorption.first-tests', 'absorption.first-area', 'absorption.more-area']],
    ['humidity', ['humidity.first-tests', 'humidity.first-area', 'humidity.more-area']],
    ['pull-off', ['pulloff.least-tests']],
  ] as const)('%s names the figures its number comes from', (id, figures) => {
    expect(countFor(id, 'unknown', undefined, [])).toMatchObject({
      figures,
      by: 'rule',
      areaOpen: id !== 'pull-off',
    });
    expect(countFor(id, 20, 400, [])).toMatchObject({ figures, by: 'own', areaOpen: false });
  });

  it('takes a number of tests from 1 to the most there is room for, and asks nothing of a blank', () => {
    const problems: Parameters<typeof countFor>[3] = [];
    expect(countFor('dust-tape', 5, 500, problems)?.tests).toBe(500);
    expect(countFor('dust-tape', 5, 1, problems)?.tests).toBe(1);
    expect(countFor('ph', 5, 2, problems)).toMatchObject({ tests: 2, by: 'rule' });
    expect(countFor('dust-tape', 5, '', problems)).toMatchObject({ tests: 3, by: 'practice' });
    expect(problems).toEqual([]);
    countFor('dust-tape', 5, 501, problems);
    expect(problems).toEqual([
      { id: 'out-of-range', check: 'dust-tape', field: 'count', typed: 501, limits: [1, 500] },
    ]);
  });
});
