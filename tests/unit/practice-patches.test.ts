import { describe, expect, it } from 'vitest';
import { outcomesOf, patchCases, patchFaults } from '$lib/practice/patches';
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
