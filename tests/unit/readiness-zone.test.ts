import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { ReadinessRecord, CheckResult, CheckId } from '$lib/answers/readiness-record';
import { checks } from '$lib/readiness/checks';
import { needsOf } from '$lib/readiness/open-needs';
import { figuresBehind, sourcesBehind } from '$lib/readiness/sources';
import { judgeJob, judgeZone, type ZoneCircumstances } from '$lib/readiness/zone';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { wholeFigures } from '$shared/figure-notes';
import { sources as allSources } from '$shared/sources';

// The ramp of the Tidewell community hall, Marrow Quay (invented): broken out round a rusted bar.
const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['de-icing'],
  freezeThaw: ['often'],
  thickness: 200,
  warnings: { yes: [], maybe: [] },
};
const answers: ZoneAnswers = {
  depth: 40,
  looseness: ['hollow'],
  contamination: { yes: ['oil'], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['corroded'],
  barLoss: ['within-limit'],
  finish: ['overlay'],
  area: 20,
};
const advice = adviseZone(site, answers);
const around: ZoneCircumstances = {
  needs: needsOf(site, answers, advice),
  area: 20,
  method: advice.method,
  floor: true,
  held: false,
  now: '2026-05-04T12:00:00Z',
};

const result = (...readings: CheckResult['readings']): CheckResult => ({ readings });
const allGood: ReadinessRecord = {
  seed: 7,
  results: {
    sounding: result('clear'),
    edges: result('square'),
    'bars-free': result(22, 25),
    'bars-clean': result('clean'),
    chloride: result(0.1, 0.05, 0.12),
    carbonation: { readings: [5, 8, 6], given: { cover: 40 } },
    profile: result(8, 7, 9),
    ph: { readings: [8, 8.5], given: { rinse: 7.5 } },
    'dust-tape': result(0, 1, 0),
    'water-drop': result('spreads', 'spreads', 'spreads'),
    absorption: result(0.3, 0.4, 0.5),
    'surface-damp': result('damp'),
    'dew-point': result(18),
  },
  pullOff: {
    requirement: { id: 'overlay-control' },
    tests: [1.9, 2.1, 1.8].map((stress) => ({ stress, shares: { base: 100 } })),
  },
  clock: { prepared: '2026-05-04T08:00:00Z', spoiled: [] },
};
const withResult = (check: CheckId, changed: CheckResult | undefined): ReadinessRecord => {
  const others = Object.entries(allGood.results).filter(([id]) => id !== check);
  return {
    ...allGood,
    results: { ...Object.fromEntries(others), ...(changed && { [check]: changed }) },
  };
};
const verdict = (record: ReadinessRecord, check: CheckId, circumstances = around) =>
  judgeZone(record, circumstances).checks.find((one) => one.need.check === check)?.verdict;

describe('a zone', () => {
  it('is ready when every check it needs is', () => {
    const readiness = judgeZone(allGood, around);
    expect(readiness.problems).toEqual([]);
    expect(readiness.checks.filter((c) => c.counts && c.verdict.state !== 'ready')).toEqual([]);
    expect(readiness.state).toBe('ready');
  });

  it('is not ready by what was found before the method changed', () => {
    const taken: ReadinessRecord = {
      ...allGood,
      results: { ...allGood.results, sounding: { readings: ['clear'], under: ['shotblast', '4'] } },
    };
    expect(judgeZone(taken, { ...around, under: ['shotblast', '4'] }).state).toBe('ready');
    const now = { ...around, under: ['break-out', '40'] };
    expect(judgeZone(taken, now).state).toBe('not-yet-checked');
    expect(verdict(taken, 'sounding', now)?.rule).toBe('taken-before');
    expect(verdict(taken, 'profile', now)?.rule).toBe('passed');
  });

  it('is not yet checked before anything is typed', () => {
    expect(judgeZone({ seed: 7, results: {} }, around).state).toBe('not-yet-checked');
  });

  it('is not ready while any one needed check is missing', () => {
    const needed = around.needs.needs.filter(
      ({ check, level }) => level === 'needed' && !checks[check].beside,
    );
    for (const { check } of needed) {
      const { pullOff, clock, ...rest } = withResult(check, undefined);
      const record: ReadinessRecord = {
        ...rest,
        ...(check !== 'pull-off' && pullOff && { pullOff }),
        ...(check !== 'open-time' && clock && { clock }),
      };
      expect([check, judgeZone(record, around).state]).toEqual([check, 'not-yet-checked']);
    }
    expect(needed.length).toBeGreaterThan(12);
  });

  it('does not wait for a check only a specification would ask, unless it does, or it was done', () => {
    expect(verdict(allGood, 'half-cell')?.state).toBe('not-yet-checked');
    const asked: ReadinessRecord = { ...allGood, asked: ['half-cell'] };
    expect(judgeZone(asked, around).state).toBe('not-yet-checked');
    const bad = withResult('half-cell', result(-420, -410, -400));
    expect(judgeZone(bad, around).state).toBe('not-ready');
  });

  // The slurry is somebody's trouble whatever its pH; the face it came from is none the worse.
  it('does not wait for what is done beside it, and still judges it', () => {
    expect(around.needs.needs.map(({ check }) => check)).toContain('slurry-ph');
    const strong = withResult('slurry-ph', result(12.9));
    expect(verdict(strong, 'slurry-ph')).toMatchObject({ rule: 'slurry-corrosive' });
    expect(judgeZone(strong, around).state).toBe('ready');
  });

  it('is never ready while its advice holds the work', () => {
    const readiness = judgeZone(allGood, { ...around, held: true });
    expect(readiness).toMatchObject({ state: 'not-yet-checked', held: true });
    // What is not ready stays that: the hold makes nothing better.
    const rusty = withResult('bars-clean', result('rusty'));
    expect(judgeZone(rusty, { ...around, held: true }).state).toBe('not-ready');
  });

  it('takes the profile of the overlay rule where the finish would accept less', () => {
    const coated = { ...around, needs: { ...around.needs, profile: [3, 5] as const } };
    const record = withResult('profile', result(4, 4, 4));
    expect(verdict(record, 'profile', coated)?.rule).toBe('too-smooth');
    const specified = { requirement: { id: 'own', mean: 1 }, tests: [] } as const;
    expect(verdict({ ...record, pullOff: specified }, 'profile', coated)?.rule).toBe('passed');
  });

  it('names its sources, each once', () => {
    const sources = sourcesBehind(judgeZone(allGood, around).checks);
    expect(new Set(sources).size).toBe(sources.length);
    expect(sources).toEqual(
      expect.arrayContaining(['astm-d4580', 'astm-c1583', 'aci-548.8m', 'astm-d4262', 'astm-c876']),
    );
    expect(figuresBehind(judgeZone(allGood, around).checks)).toContain('csp.needs.overlay');
    // One reading of three is not judged yet, and leans on no figure of its own.
    const begun = judgeZone(withResult('dust-tape', result(0)), around).checks;
    expect(figuresBehind(begun).filter((id) => !(id in wholeFigures))).toEqual([]);
    for (const all of [sources, sourcesBehind(begun)])
      expect(all.filter((id) => !(id in allSources))).toEqual([]);
  });
});

describe('a failed check leads back into the work', () => {
  it.each([
    ['sounding', result('dull'), 'sounds-dull', ['break-out', 're-sound']],
    ['edges', result('not-square'), 'edge-not-square', ['saw-cut']],
    ['bars-free', result(22, 12), 'bar-too-close', ['free-bar']],
    ['bars-clean', result('clean', 'rusty'), 'bar-rusty', ['clean-bar']],
    ['dust-tape', result(0, 3, 0), 'dust-left', ['last-clean']],
    ['water-drop', result('spreads', 'beads', 'spreads'), 'drop-beads', ['degrease']],
    ['absorption', result(0.3, 4, 0.3), 'drinks-too-slowly', ['degrease']],
    ['profile', result(8, 4, 9), 'too-smooth', ['break-out']],
    ['dew-point', result(3), 'too-cold', []],
    ['surface-damp', result('wet'), 'surface-wet', ['wet-or-dry']],
  ] as const)('%s', (check, typed, rule, steps) => {
    const record = withResult(check, typed);
    const found = verdict(record, check);
    expect(found).toMatchObject({ state: 'not-ready', rule });
    expect(found?.redo.steps).toEqual(expect.arrayContaining([...steps]));
    expect(judgeZone(record, around).state).toBe('not-ready');
  });

  it('a low base failure: the bruised skin off, then deeper, and the answers looked at again', () => {
    const tests = [1, 1.1, 0.9].map((stress) => ({ stress, shares: { base: 100 } }));
    const record = {
      ...allGood,
      pullOff: { requirement: { id: 'overlay-control' }, tests },
    } as const;
    const found = verdict(record, 'pull-off');
    expect(found).toMatchObject({ state: 'not-ready', rule: 'mean-low-base' });
    expect(found?.redo.steps).toEqual(['blast-clean', 'break-out', 're-sound']);
    expect(found?.redo.ask).toEqual(['looseness', 'depth']);
  });

  it('a smooth washed floor goes to shotblasting, a washed wall to abrasive blasting', () => {
    const washed = { ...around, method: 'pressure-wash' } as const;
    const record = withResult('profile', result(1, 1, 1));
    expect(verdict(record, 'profile', washed)?.redo.steps[0]).toBe('shotblast');
    const wall = { ...washed, floor: false };
    expect(verdict(record, 'profile', wall)?.redo.steps[0]).toBe('abrasive-blast');
  });

  it('corrosion goes to an engineer', () => {
    expect(verdict(withResult('chloride', result(1.4, 0.1, 0.1)), 'chloride')?.redo.who).toBe(
      'engineer',
    );
  });
});

describe('a job', () => {
  it('is as ready as its worst zone', () => {
    const job = (...states: Parameters<typeof judgeJob>[0][number]['state'][]) =>
      judgeJob(states.map((state) => ({ state })));
    expect(job('ready', 'ready')).toBe('ready');
    expect(job('ready', 'not-yet-checked')).toBe('not-yet-checked');
    expect(job('not-yet-checked', 'retest')).toBe('retest');
    expect(job('retest', 'not-ready', 'ready')).toBe('not-ready');
    expect(job()).toBe('not-yet-checked');
  });
});

it('every check that takes numbers has a unit and limits', () => {
  for (const { kind, unit, limit } of Object.values(checks))
    if (kind === 'number') expect([unit, limit]).not.toContain(undefined);
});
