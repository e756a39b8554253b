import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readResultCode, resultCode } from '$lib/keep/practice/result-code';
import { readSetLink, setLink } from '$lib/keep/practice/set-link';
import { authored } from '$lib/practice/authored';
import { gradeCall } from '$lib/practice/call';
import { adviceOn, callOf, calls, type Call } from '$lib/practice/case';
import { judge, mixUpsIn, rightIn, type SetResult } from '$lib/practice/given';
import { levelOf } from '$lib/practice/level';
import { findCase } from '$lib/practice/next';
import { practiseNext } from '$lib/practice/practise-next';
import { casesOf, type PracticeSet } from '$lib/practice/set';
import { anyResult } from '../helpers/any-result';
import { rounds } from '../helpers/rounds';

const set: PracticeSet = { cases: ['larch-row-oil', 'gannet-court-balcony', 'hall-steps-nosing'] };
const given = (...picked: Call[]): SetResult => ({
  set,
  calls: picked,
  minute: 29_500_000,
  mark: 1,
  name: '',
});

// Common practice, no source: oil is not washed (it spreads), a hollow balcony is for an engineer
// before anybody breaks anything out, a broken nosing is broken out to sound concrete.
const right = given('grind', 'engineer', 'break-out');
const three = [
  given('pressure-wash', 'break-out', 'break-out'),
  given('pressure-wash', 'break-out', 'pressure-wash'),
  given('grind', 'break-out', 'break-out'),
];

describe('what a learner picked', () => {
  it('is judged by the rules of this site, case by case', () => {
    expect(judge(right).map(({ grade }) => grade?.kind)).toEqual(['right', 'right', 'right']);
    expect(rightIn(judge(right))).toBe(3);
    expect(judge(given('pressure-wash', 'break-out', 'crew'))).toMatchObject([
      { pick: 'pressure-wash', grade: { kind: 'too-gentle', answer: 'grind' } },
      { pick: 'break-out', grade: { kind: 'must-wait', answer: 'engineer' } },
      { pick: 'crew', grade: { kind: 'need-not-wait', answer: 'break-out' } },
    ]);
  });

  it('carries no judgement: out of a code comes what the rules say now, as for every pick', () => {
    fc.assert(
      fc.property(anyResult, (result) => {
        const read = readResultCode(resultCode(result));
        if (!read.ok) throw new Error('not read');
        for (const { id, pick, grade } of judge(read.value)) {
          const one = findCase(id);
          expect(one && gradeCall(pick, adviceOn(one))).toMatchObject(grade ?? {});
        }
      }),
      { numRuns: 30 },
    );
  });

  it('of a case that is gone is neither right nor wrong', () => {
    const judged = judge({ set: { cases: ['no-such-case'] }, calls: ['grind'] });
    expect(judged).toEqual([{ id: 'no-such-case', pick: 'grind', grade: null }]);
    expect([rightIn(judged), mixUpsIn([judged])]).toEqual([0, []]);
  });
});

describe('what was mixed up', () => {
  it('is counted over all learners, the most frequent first', () => {
    expect(mixUpsIn(three.map(judge))).toEqual([
      { pick: 'break-out', answer: 'engineer', times: 3, kind: 'must-wait' },
      { pick: 'pressure-wash', answer: 'grind', times: 2, kind: 'too-gentle' },
      { pick: 'pressure-wash', answer: 'break-out', times: 1, kind: 'too-gentle' },
    ]);
    expect(mixUpsIn([judge(right)])).toEqual([]);
  });

  it('puts what can hurt somebody first where two are as frequent', () => {
    expect(
      mixUpsIn([judge(given('pressure-wash', 'break-out', 'crew'))]).map((each) => each.kind),
    ).toEqual(['must-wait', 'too-gentle', 'need-not-wait']);
  });

  it('comes to every pick that was not right, in whatever order the learners came', () => {
    fc.assert(
      fc.property(fc.array(anyResult, { maxLength: 4 }), (results) => {
        const judged = results.map(judge);
        const mixUps = mixUpsIn(judged);
        const wrong = judged.flat().filter(({ grade }) => grade && grade.kind !== 'right');
        expect(mixUps.reduce((sum, { times }) => sum + times, 0)).toBe(wrong.length);
        for (const { pick, answer, times } of mixUps)
          expect(
            wrong.filter((one) => one.pick === pick && one.grade?.answer === answer),
          ).toHaveLength(times);
        const times = mixUps.map((each) => each.times);
        expect(times).toEqual([...times].sort((one, other) => other - one));
        const key = ({ pick, answer, times, kind }: (typeof mixUps)[number]) =>
          `${pick} ${answer} ${String(times)} ${kind}`;
        expect(
          mixUpsIn([...judged].reverse())
            .map(key)
            .sort(),
        ).toEqual(mixUps.map(key).sort());
      }),
      { numRuns: rounds(15, 40) },
    );
  });
});

describe('what to practise next', () => {
  const callIn = (id: string) => callOf(adviceOn(findCase(id) as never));

  it('is to tell apart what was mixed up, on cases of both that were not in the set', () => {
    const next = practiseNext(set, mixUpsIn(three.map(judge)));
    expect(next.map((each) => 'apart' in each && each.apart)).toEqual([
      ['break-out', 'engineer'],
      ['pressure-wash', 'grind'],
      ['pressure-wash', 'break-out'],
    ]);
    const [washOrGrind] = next.slice(1);
    const asked = washOrGrind?.set.cases ?? [];
    expect(new Set(asked.map(callIn))).toEqual(new Set(['pressure-wash', 'grind']));
    expect(asked).not.toContain('larch-row-oil');
  });

  it('is a level up where nothing was mixed up, and the last level stays', () => {
    const hardest = Math.max(...set.cases.map((id) => levelOf(findCase(id) as never)));
    const [next] = practiseNext(set, []);
    expect(next).toMatchObject({ level: Math.min(4, hardest + 1) });
    for (const id of next?.set.cases ?? [])
      expect(levelOf(findCase(id) as never)).toBe(Math.min(4, hardest + 1));
    const top = authored.filter((one) => levelOf(one) === 4).map(({ id }) => id);
    expect(practiseNext({ cases: top }, [])).toMatchObject([{ level: 4 }]);
  });

  it('always opens: a few cases, none twice, whatever was mixed up', () => {
    fc.assert(
      fc.property(anyResult, (result) => {
        const next = practiseNext(result.set, mixUpsIn([judge(result)]));
        expect(next.length).toBeGreaterThan(0);
        expect(next.length).toBeLessThanOrEqual(3);
        for (const one of next) {
          const cases = casesOf(one.set);
          expect(cases.length).toBeGreaterThan(0);
          expect(new Set(cases).size).toBe(cases.length);
          expect(readSetLink(new URL(setLink(one.set, 'https://example.org/')).hash)).toEqual({
            ok: true,
            value: one.set,
          });
        }
      }),
      { numRuns: rounds(15, 40) },
    );
  });

  it('has cases for every call that can be right in an authored one', () => {
    for (const answer of new Set(authored.map(({ intended }) => intended.call)))
      for (const pick of calls.filter((call) => call !== answer)) {
        const [next] = practiseNext(set, [{ pick, answer, times: 1, kind: 'too-gentle' }]);
        expect(next?.set.cases.map(callIn)).toContain(answer);
      }
  });
});
