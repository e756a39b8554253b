import { describe, expect, it } from 'vitest';
import { fromUs } from '$lib/answers/units';
import { axisOf, dotsOf } from '$lib/ui/ready/dot-plot';
import { entryOf, textOf } from '$lib/ui/ready/entry-text';
import { testsFrom } from '$lib/ui/ready/paste';
import { newRecord, withReadings } from '$lib/ui/ready/record-changes';
import { readPullOff } from '$lib/readiness/pull-off';

describe('pasting pull-off results', () => {
  it('reads stress and plane from a spreadsheet, with a line of names', () => {
    const text = 'Strength MPa\tFailure mode\n1.9\tSubstrate\n2,1\tbond line\n0.4\tadhesive\n';
    expect(testsFrom(text, 'metric')).toEqual([
      { stress: 1.9, shares: { base: 100 } },
      { stress: 2.1, shares: { bond: 100 } },
      { stress: 0.4, shares: { glue: 100 } },
    ]);
  });

  it('reads force, disc and plane by position', () => {
    expect(testsFrom('3.53,50,base\n3.93,50,base', 'metric')).toEqual([
      { force: 3.53, disc: 50, shares: { base: 100 } },
      { force: 3.93, disc: 50, shares: { base: 100 } },
    ]);
  });

  it('reads psi, pounds-force and inches where the reader uses them', () => {
    expect(testsFrom('250\tbase', 'us')[0]?.stress).toBeCloseTo(1.7237, 4);
    const [test] = testsFrom('785.4;2;repair', 'us');
    expect(test).toEqual({
      force: fromUs('kN', 785.4),
      disc: fromUs('mm', 2),
      shares: { repair: 100 },
    });
  });

  it('reads shares from columns of their own', () => {
    const text = 'stress,base,bond,glue\n1.8,60,30,10';
    expect(testsFrom(text, 'metric')).toEqual([
      { stress: 1.8, shares: { base: 60, bond: 30, glue: 10 } },
    ]);
  });

  it('takes over what it cannot read, for the check to name', () => {
    const tests = testsFrom('about 2\tsomewhere\n2\tbase', 'metric');
    expect(tests[0]).toEqual({ stress: 'about 2', shares: { base: 'somewhere' } });
    const problems: Parameters<typeof readPullOff>[1] = [];
    readPullOff(tests, problems);
    expect(problems).toMatchObject([
      { id: 'not-a-number', row: 1, field: 'stress', typed: 'about 2' },
      { id: 'not-a-number', row: 1, field: 'base', typed: 'somewhere' },
    ]);
  });

  it('finds nothing in nothing, and reads 10,000 lines without a stall', () => {
    expect(testsFrom('  \n \n', 'metric')).toEqual([]);
    const start = process.cpuUsage();
    expect(testsFrom('1.8\tbase\n'.repeat(10_000), 'metric')).toHaveLength(10_000);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(8000);
  });
});

describe('a typed result', () => {
  it.each([
    ['1.8', 1.8],
    ['1,8', 1.8],
    ['-250', -250],
    ['\u2212250', -250],
    ['', ''],
    ['damp', 'damp'],
    ['1e400', '1e400'],
    ['99999999999', '99999999999'],
  ])('%j becomes %j', (text, entry) => {
    expect(entryOf(text, 'plain', 'metric')).toBe(entry);
  });
  it('shows again what was typed, in either system', () => {
    for (const units of ['metric', 'us'] as const)
      for (const kind of ['MPa', 'kN', 'mm', 'm', 'plain'] as const)
        for (const text of ['1.8', '250', '0.75'])
          expect(textOf(entryOf(text, kind, units), kind, units)).toBe(text);
  });
});

it('readings keep their places; empty ones at the end fall away', () => {
  const record = withReadings({ ...newRecord(), seed: 1 }, 'ph', 2, [7.5]);
  expect(record.results.ph?.readings).toEqual(['', '', 7.5]);
  expect(withReadings(record, 'ph', 2, ['']).results.ph?.readings).toEqual([]);
});

describe('the dot plot', () => {
  it('has round ticks from zero past the highest value, seven steps at most', () => {
    for (const highest of [0.3, 1, 1.7, 2.9, 5, 12, 20])
      for (const units of ['metric', 'us'] as const) {
        const { most, ticks } = axisOf(highest, units);
        expect(most).toBeGreaterThan(highest);
        expect(ticks[0]?.value).toBe(0);
        expect(ticks.length).toBeLessThanOrEqual(8);
      }
  });
  it('hides no dot behind another, for up to five alike', () => {
    const row = { stress: 2, shares: { base: 100 } };
    const [first] = dotsOf(readPullOff([row, row, row, row, row], []), (stress) => stress * 100);
    expect(new Set(first?.dots.map((dot) => dot.lift)).size).toBe(5);
  });
});
