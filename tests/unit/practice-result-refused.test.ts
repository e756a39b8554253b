import { describe, expect, it } from 'vitest';
import { withCheck } from '$lib/keep/practice/abacus';
import {
  carriesResult,
  codesIn,
  isResultName,
  minuteOf,
  readResultCode,
  resultCode,
  runOf,
} from '$lib/keep/practice/result-code';
import type { SetResult } from '$lib/practice/given';

const six: SetResult = {
  set: {
    cases: ['bakery-dust', 'larch-row-oil', 'hall-steps-nosing'],
    generated: { seed: 7, count: 3 },
  },
  calls: ['grind', 'pressure-wash', 'break-out', 'engineer', 'scarify', 'crew'],
  minute: minuteOf(Date.UTC(2026, 2, 2, 9)),
  mark: 4711,
  name: 'Mira',
};

describe('what stands behind # in an address', () => {
  it.each([
    ['#done1.abc', true],
    ['done1.abc', true],
    ['#done.abc', true],
    ['#done/1.abc', false],
    ['#undone1.abc', false],
    ['#done1', false],
  ])('%j carries a result: %s', (fragment, carries) => {
    expect(carriesResult(fragment)).toBe(carries);
  });

  it('is refused as a whole, by what it is', () => {
    const code = resultCode(six);
    const problem = (text: string) => {
      const read = readResultCode(text);
      return read.ok ? null : read.problem;
    };
    expect(problem(`x${code}`)).toMatchObject({ path: '', expected: { id: 'result-code' } });
    expect(problem(code.replace('done', 'do#ne'))).toMatchObject({
      expected: { id: 'result-code' },
    });
    expect(problem(`##${code}`)).toMatchObject({ expected: { id: 'result-code' } });
    expect(problem(`done9${code.slice(5)}`)).toMatchObject({
      path: '',
      expected: { id: 'result-version', known: ['1', '2'] },
      found: { text: '9' },
    });
    const whole = { path: '', expected: { id: 'whole-result' }, found: { id: 'broken' } };
    expect(problem(`${code}x`)).toEqual(whole);
    expect(problem(`done1.${'k'.repeat(294)}`)).toEqual(whole);
    expect(problem(`done1.${'k'.repeat(295)}`)).toMatchObject({
      path: '',
      expected: { id: 'smaller', limit: 300 },
      found: { length: 301 },
    });
    expect(problem(withCheck('done1.2'))).toEqual({
      path: '',
      expected: { id: 'possible-result' },
      found: { id: 'broken' },
    });
    expect(codesIn(`undone12.ab done12.ab`)).toEqual(['done12.ab']);
  });

  it('is of the same run for ever: results are kept under it', () => {
    const { minute, mark, calls } = six;
    expect(
      runOf({ set: { cases: ['larch-row-oil', 'bakery-dust'] }, calls, minute, mark, name: '' }),
    ) //
      .toBe('29540700-4711-4eb7f7c6');
  });
});

describe('what makes no code', () => {
  it('says what has no place', () => {
    expect(() => resultCode({ ...six, set: { cases: ['no-such-case'] } })).toThrow('no-such-case');
    expect(() => resultCode({ ...six, name: ' Mira' })).toThrow('name');
    expect(() => resultCode({ ...six, mark: -1 })).toThrow('number');
    // Twelve letters of four bytes each are more than a code takes.
    expect([isResultName('🧱'.repeat(9)), isResultName('🧱'.repeat(10))]).toEqual([true, false]);
  });
});
