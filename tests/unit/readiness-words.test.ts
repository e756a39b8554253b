import { describe, expect, it } from 'vitest';
import { checkIds } from '$lib/answers/readiness-record';
import { checks } from '$lib/readiness/checks';
import { needRules, problemIds, verdictRules, type Problem } from '$lib/readiness/rules';
import { readinessWords } from '$words/readiness';
import { formatter } from '$lib/words/format';

describe.each(['metric', 'us'] as const)('words of readiness, %s', (units) => {
  const say = formatter(units);
  const whole = (text: string) => {
    expect(text).toMatch(/^[A-Z“0-9]/);
    expect(text).toMatch(/[.:?)]$/);
    expect(text).not.toMatch(/undefined|NaN|null|\[object|\{|\}/);
  };

  it('say every check: how, what passes, each choice', () => {
    const words = readinessWords.checks(say);
    for (const id of checkIds) {
      for (const line of words[id].how) whole(line);
      whole(words[id].passes);
      expect(Object.keys(words[id].choices).sort()).toEqual([...checks[id].choices].sort());
    }
  });

  it('say why each check is needed, with and without what the rule saw', () => {
    for (const rule of needRules) {
      whole(readinessWords.needs[rule]({ rule }, say));
      const facts = { finish: 'overlay', steel: 'exposed' };
      const why = { rule, facts, figures: ['csp.needs.overlay'] as const };
      whole(readinessWords.needs[rule](why, say));
    }
  });

  it('say every verdict', () => {
    const facts = {
      ...{ failed: 1, have: 2, need: 3, low: 5, high: 10, mean: 1.2, asked: 1.7, open: 30 },
      ...{ voided: 1, lowest: 0.8, least: 1, by: 'rain' },
    };
    for (const rule of verdictRules) whole(readinessWords.verdicts[rule]({ rule, facts }, say));
  });

  it('say every problem with its row, field and limits', () => {
    for (const id of problemIds) {
      const problem: Problem = {
        ...{ id, check: 'pull-off', field: 'disc', row: 4, typed: 70 },
        limits: [10, 200],
      };
      whole(readinessWords.problems[id](problem, say));
      if (id !== 'too-many-rows')
        expect(readinessWords.problems[id](problem, say)).toMatch(/Test 4, disc diameter/);
    }
  });

  it('speak limits in the unit that is typed', () => {
    const problem: Problem = {
      ...{ id: 'out-of-range', check: 'pull-off', field: 'disc', row: 1, typed: 1 },
      limits: [10, 200],
    };
    expect(readinessWords.problems['out-of-range'](problem, say)).toContain(
      units === 'us' ? '7.87 in' : '200 mm',
    );
  });
});
