import { describe, expect, it } from 'vitest';
import { authored } from '$lib/practice/authored';
import type { CallKind } from '$lib/practice/call';
import { calls, senses, type Call } from '$lib/practice/case';
import { judge, mixUpsIn, rightIn, type JudgedCall } from '$lib/practice/given';
import { levelOf, type Level } from '$lib/practice/level';
import { dueSquares, nextSquare, patchCases, patchFaults, resultOf } from '$lib/practice/patches';
import { practiseNext } from '$lib/practice/practise-next';
import * as progress from '$lib/practice/progress';
import { methodIds } from '$shared/methods';

const picked = (pick: Call, answer: Call, kind: CallKind): JudgedCall => ({
  ...{ id: 'tin-yard', pick },
  grade: { kind, answer },
});
const gone: JudgedCall = { id: 'no-such-case', pick: 'grind', grade: null };
const ids = (of: (one: (typeof authored)[number]) => boolean) =>
  authored.filter(of).map(({ id }) => id);
const ofCall = (call: Call) => ids(({ intended }) => intended.call === call);
const ofLevel = (level: Level) => ids((one) => levelOf(one) === level);

it('a call is a method, or whoever comes first; a fact is seen, heard, felt or told', () => {
  expect(calls).toEqual([
    ...methodIds,
    ...['engineer', 'concrete-contractor', 'laboratory', 'locator', 'crew'],
  ]);
  expect(senses).toEqual(['see', 'hear', 'scrape', 'drop', 'owner']);
});

describe('what was mixed up in a set', () => {
  // What can hurt somebody, then what makes the repair fail, then what costs more than is needed.
  const gravest = [
    ...(['must-wait', 'not-yet-enough', 'someone-else', 'too-gentle'] as const),
    ...(['wrong-tool', 'harsher', 'would-do', 'need-not-wait'] as const),
  ];
  it('goes by how often, then by how grave', () => {
    const once = gravest.map((kind, at) => picked(calls[at] as Call, 'water-jet', kind));
    const often = [
      picked('crew', 'grind', 'need-not-wait'),
      picked('crew', 'grind', 'need-not-wait'),
    ];
    const mixUps = mixUpsIn([[...once].reverse(), often]);
    expect(mixUps.map(({ kind }) => kind)).toEqual(['need-not-wait', ...gravest]);
    expect(mixUps[0]).toEqual({ pick: 'crew', answer: 'grind', times: 2, kind: 'need-not-wait' });
  });
  it('is as grave as it was at its worst, whichever came first', () => {
    const two = [picked('grind', 'scarify', 'harsher'), picked('grind', 'scarify', 'must-wait')];
    for (const order of [two, [...two].reverse()])
      expect(mixUpsIn([order])).toEqual([
        { pick: 'grind', answer: 'scarify', times: 2, kind: 'must-wait' },
      ]);
  });
  it('is nothing that was right, or of a case that is gone', () => {
    const right = picked('grind', 'grind', 'right');
    expect(mixUpsIn([[right, gone], [right]])).toEqual([]);
    expect(rightIn([right, gone, picked('grind', 'crew', 'must-wait'), right])).toBe(2);
  });
  it('has a pick for each case of the set', () => {
    const set = { cases: ['larch-row-oil', 'bakery-dust'] };
    expect(() => judge({ set, calls: ['grind'] })).toThrow('No pick for case 1 of a set.');
    expect(judge({ set, calls: ['grind', 'pressure-wash'] })).toMatchObject([
      { id: 'larch-row-oil', grade: { kind: 'right' } },
      { id: 'bakery-dust', grade: { kind: 'too-gentle', answer: 'grind' } },
    ]);
  });
});

describe('what to practise next', () => {
  const mixed = (pick: Call, answer: Call) =>
    ({ pick, answer, times: 1, kind: 'too-gentle' }) as const;
  const after = (cases: string[], ...mixUps: ReturnType<typeof mixed>[]) =>
    practiseNext({ cases }, mixUps);
  it('is three cases of each call, first those that were not in the set', () => {
    const [first, ...rest] = ofCall('grind');
    expect(after([first ?? ''], mixed('pressure-wash', 'grind'))).toEqual([
      {
        apart: ['pressure-wash', 'grind'],
        set: { cases: [...rest.slice(0, 3), ...ofCall('pressure-wash').slice(0, 3)] },
      },
    ]);
    // All were in the set: then those again.
    const [only] = ofCall('needle-scale');
    expect(after(ofCall('needle-scale'), mixed('water-jet', 'needle-scale'))).toEqual([
      { apart: ['water-jet', 'needle-scale'], set: { cases: [only] } },
    ]);
  });
  it('is three pairs at the most, each once whichever was taken for the other', () => {
    const apart = after(
      [],
      mixed('grind', 'pressure-wash'),
      mixed('pressure-wash', 'grind'),
      mixed('engineer', 'grind'),
      mixed('crew', 'engineer'),
      mixed('scarify', 'shotblast'),
    ).map((each) => 'apart' in each && each.apart);
    // A method stands before whoever comes first.
    expect(apart).toEqual([
      ['grind', 'pressure-wash'],
      ['grind', 'engineer'],
      ['crew', 'engineer'],
    ]);
    expect(after([], mixed('grind', 'engineer'))).toMatchObject([{ apart: ['grind', 'engineer'] }]);
    expect(after([], mixed('water-jet', 'water-jet'))).toEqual([]);
  });
  it('is a level above the hardest of the set, six cases of it, where nothing was', () => {
    const next = (...cases: string[]) => after(cases);
    expect(next('bakery-dust')).toEqual([{ level: 2, set: { cases: ofLevel(2).slice(0, 6) } }]);
    expect(next('larch-row-pits', 'bakery-dust')).toEqual([
      { level: 3, set: { cases: ofLevel(3).slice(0, 6) } },
    ]);
    expect(next('no-such-case')).toMatchObject([{ level: 2 }]);
    const [first, ...rest] = ofLevel(4);
    expect(next(first ?? '')).toEqual([{ level: 4, set: { cases: [...rest, first] } }]);
  });
});

const minute = 60_000;
const start = Date.UTC(2026, 0, 5, 9);
const result = (id: string, at: number, rating: progress.Result['rating']): progress.Result => ({
  ...{ case: id, rating },
  at: start + at * minute,
});

describe('what is kept of a learner', () => {
  const { standingOf, withResult, merged, mostResults } = progress;
  it('is no more than can be read quickly: the oldest go', () => {
    const many = Array.from({ length: mostResults }, (_, at) => result('bakery-dust', at, 'good'));
    const late = result('larch-row-oil', mostResults, 'hard');
    expect(withResult(many, late)).toEqual([...many.slice(1), late]);
    expect(withResult([], late)).toEqual([late]);
    expect(merged(many, [late])).toEqual([...many.slice(1), late]);
  });
  it('is put together oldest first, each result once', () => {
    const [one, two, three] = [
      result('bakery-dust', 1, 'good'),
      result('bakery-dust', 2, 'good'),
      result('larch-row-oil', 2, 'good'),
    ];
    const again = { ...two, rating: 'again' as const };
    expect(merged([two, three], [one, two, again])).toEqual([one, two, three, again]);
  });
  it('is how often each case was tried, how it went last, and which was the last', () => {
    const standing = standingOf([
      result('bakery-dust', 0, 'again'),
      result('bakery-dust', 9, 'hard'),
    ]);
    const [one, two, three] = ['bakery-dust', 'museum-floor', 'larch-row-oil'] as const;
    const tried = [one, two, three].map((id, at) => result(id, at, 'good'));
    expect(standingOf(tried).last).toBe(three);
    expect(standing.last).toBe('bakery-dust');
    expect([...standing.known.values()]).toMatchObject([
      { case: 'bakery-dust', tried: 2, last: 'hard' },
    ]);
    expect(standingOf([])).toEqual({ known: new Map(), level: 1, last: null });
  });
  it('rises with each three that are right in a row, and falls with each two that are not', () => {
    const level = (...how: progress.Result['rating'][]) =>
      standingOf(how.map((rating, at) => result('bakery-dust', at, rating))).level;
    const good = (count: number) => Array.from({ length: count }, () => 'good' as const);
    expect([2, 3, 5, 6, 9, 12].map((count) => level(...good(count)))).toEqual([1, 2, 2, 3, 4, 4]);
    expect(level(...good(9), 'again', 'again', 'again')).toBe(3);
    expect(level(...good(9), 'again', 'again', 'again', 'again')).toBe(2);
    expect(level(...good(9), 'again', 'good', 'again')).toBe(4);
  });
  it('counts a square read by its id alone, and moves no level with it', () => {
    const right = [0, 1, 2].map((at) => result('square-tin-yard', at, 'good'));
    expect(standingOf(right).level).toBe(1);
    expect([progress.isSquare('square-tin-yard'), progress.isSquare('tin-square-yard')]).toEqual([
      ...[true, false],
    ]);
  });
});

describe('the square to read now', () => {
  const [first, second, third] = patchCases;
  if (!first || !second || !third) throw new Error('no squares');
  const known = (...of: [string, number][]): progress.Standing => ({
    ...{ level: 1, last: null },
    known: new Map(of.map(([id, at]) => [id, { case: id, due: at, tried: 1, last: 'good' }])),
  });
  it('is the longest overdue, and no case is one', () => {
    const standing = known(
      [resultOf(second), 4],
      [resultOf(third), 3],
      ['bakery-dust', 1],
      ['square-gone', 1],
      [resultOf(first), 6],
    );
    expect(dueSquares(standing, 4)).toEqual([third, second]);
    expect(nextSquare(standing, 5, first)).toBe(third);
    const all = known(...patchCases.map((one): [string, number] => [resultOf(one), 9]));
    // What is new comes before what would be next in turn.
    const some = known([resultOf(first), 9], [resultOf(third), 9]);
    expect(nextSquare(some, 5, third)).toBe(second);
    expect(nextSquare(all, 5)).toBe(first);
    expect(nextSquare(all, 5, second)).toBe(third);
    expect(nextSquare(all, 5, patchCases.at(-1))).toBe(first);
  });
  it('is told where the engine comes to something else than was meant', () => {
    expect(patchFaults([first, { ...first, intended: 'stop' }])).toEqual([
      'boat-shed-smooth: meant stop for too-smooth, is harsher',
    ]);
    expect(patchFaults([{ ...first, why: 'bruised' }])).toEqual([
      'boat-shed-smooth: meant harsher for bruised, is for too-smooth',
    ]);
    const [square] = first.squares;
    const dusty = square && { ...square, left: 'dust' as const, depths: [1] };
    expect(
      patchFaults([
        {
          ...first,
          ...{ intended: 'another-pass', why: 'bruised' },
          squares: dusty ? [dusty] : [],
        },
      ]),
    ).toEqual(['boat-shed-smooth: meant another-pass for bruised, is for still-dusts, too-smooth']);
    expect(patchFaults([{ ...first, squares: [] }])).toEqual([
      'boat-shed-smooth: meant harsher for too-smooth, is undefined',
    ]);
  });
});
