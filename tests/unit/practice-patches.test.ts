import { describe, expect, it } from 'vitest';
import { dueCases } from '$lib/practice/next';
import {
  dueSquares,
  nextSquare,
  outcomesOf,
  patchCases,
  patchFaults,
  resultOf,
  type PatchCase,
} from '$lib/practice/patches';
import { standingOf, type Progress } from '$lib/practice/progress';
import { parseProgress, writeProgress } from '$lib/keep/practice/progress-file';
import { outcomeKinds } from '$lib/trial/outcome';

describe('squares to practise on', () => {
  it('come to what the trade says, and for its reason', () => {
    expect(patchFaults()).toEqual([]);
  });

  it('teach every way a try can go on', () => {
    expect(new Set(patchCases.map(({ intended }) => intended))).toEqual(new Set(outcomeKinds));
    expect(new Set(patchCases.map(({ id }) => id)).size).toBe(patchCases.length);
  });

  it('are tried in the order the answers before led to', () => {
    for (const one of patchCases)
      for (const [index, outcome] of outcomesOf(one).slice(0, -1).entries()) {
        const { notch, passes } = one.squares[index + 1] ?? {};
        expect([one.id, outcome.next]).toEqual([one.id, { notch, passes }]);
      }
  });

  it('are refused where the engine comes to something else', () => {
    const [one] = patchCases;
    expect(one && patchFaults([{ ...one, intended: 'go-on' }])).toHaveLength(1);
    expect(one && patchFaults([{ ...one, why: 'bruised' }])).toHaveLength(1);
  });
});

describe('progress in reading squares', () => {
  const [first, second] = patchCases as unknown as [PatchCase, PatchCase];
  const minutes = (count: number) => Date.UTC(2026, 10, 26) + count * 60_000;
  const read = (one: PatchCase, at: number, rating: 'good' | 'again') => ({
    case: resultOf(one),
    at: minutes(at),
    rating,
  });

  it('asks what is new, then what has come back first, and in turn once all are known', () => {
    expect(nextSquare(standingOf([]), minutes(0))).toBe(first);
    const missed = standingOf([read(first, 0, 'again')]);
    expect(nextSquare(missed, minutes(0), first)).toBe(second);
    expect(dueSquares(missed, minutes(60))).toEqual([first]);
    expect(nextSquare(missed, minutes(60), second)).toBe(first);
    const all = standingOf(patchCases.map((one) => read(one, 0, 'good')));
    expect(nextSquare(all, minutes(0), patchCases.at(-1))).toBe(first);
    expect(nextSquare(all, minutes(0), first)).toBe(second);
  });

  it('is kept with that in cases, counts as tried, and moves no level of theirs', () => {
    const progress: Progress = patchCases.map((one, at) => read(one, at, 'good'));
    const standing = standingOf(progress);
    expect(standing.known.size).toBe(patchCases.length);
    expect(standing.level).toBe(1);
    expect(dueCases(standing, minutes(1e7))).toEqual([]);
    expect(parseProgress(writeProgress(progress))).toEqual({ ok: true, value: progress });
  });
});
