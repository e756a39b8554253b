import { describe, expect, it } from 'vitest';
import { rejectionRules } from '$lib/advice/rules';
import type { Advice } from '$lib/advice/types';
import { gradeCall, type CallKind } from '$lib/practice/call';
import { callOf, type Call } from '$lib/practice/case';

const reasons = [{ rule: 'cuts-evenly' }];
/** Advice to grind, but for what is given. */
const advice = (more: object = {}) =>
  ({
    ...{ verdict: 'prepare', method: 'grind', holds: [], rejections: [], reasons },
    ...more,
  }) as unknown as Advice;

/** What a foreman says of whoever picks a method in spite of a reason. Common practice, no source. */
const saidOf: Readonly<Partial<Record<CallKind, readonly string[]>>> = {
  // It would leave what has to go, or not reach what it has to.
  'too-gentle': [
    ...['leaves-loose', 'past-its-reach', 'leaves-contaminant', 'leaves-bar-bound'],
    ...['washing-spreads-oil', 'washing-after-stripping', 'rides-over-pits', 'for-the-rest'],
    ...['texture-not-sure-enough', 'washing-leaves-closed-skin', 'washing-leaves-weak-skin'],
    'too-smooth-after',
  ],
  // It cannot do the work there, however hard it is driven.
  'wrong-tool': [
    ...['too-small-for-machine', 'too-large-by-hand', 'no-machine-in-a-hole', 'needs-a-floor'],
    ...['glazes-coating', 'shot-bounces'],
  ],
  harsher: ['would-bruise-sound-concrete', 'harsher-than-needed'],
  // The surface would be as good; something else speaks for the other.
  'would-do': [
    ...['would-do-too', 'not-on-this-ladder', 'specialist-alternative', 'leaves-cracks-to-clean'],
  ],
};

describe('a method that was picked', () => {
  it.each(Object.entries(saidOf).flatMap(([kind, rules]) => rules.map((rule) => [rule, kind])))(
    'against which %s speaks: %s',
    (rule, kind) => {
      const against = { method: 'scarify', rule };
      const others = [{ method: 'shotblast', rule: 'held' }, against];
      expect(gradeCall('scarify', advice({ rejections: others }))).toEqual({
        kind,
        pick: 'scarify',
        answer: 'grind',
        against: [against],
        reasons,
      });
    },
  );
  it('is judged whatever speaks against it', () => {
    const judged = ['held', ...Object.values(saidOf).flat()];
    expect([...judged].sort()).toEqual([...rejectionRules].sort());
    expect(() => gradeCall('scarify', advice())).toThrow('Nothing speaks against scarify.');
  });
  it('is right where it is the advised one', () => {
    expect(gradeCall('grind', advice())).toEqual({
      kind: 'right',
      pick: 'grind',
      answer: 'grind',
      against: [],
      reasons,
    });
  });
});

describe('where somebody comes before the work', () => {
  const loose = { method: 'pressure-wash', rule: 'leaves-loose' };
  const stopped = advice({
    verdict: 'stop',
    method: null,
    holds: [
      { rule: 'old-coating', verdict: 'find-out-first', who: 'laboratory' },
      { rule: 'structure-before-removal', verdict: 'stop', who: 'engineer' },
      { rule: 'buried-services', verdict: 'stop', who: 'locator' },
    ],
    rejections: [loose, { method: 'break-out', rule: 'held' }],
  });
  it.each<[Call, CallKind, object[]]>([
    ['engineer', 'right', []],
    // Several have to come, each as urgent: whichever is called first.
    ['locator', 'right', []],
    ['laboratory', 'not-yet-enough', []],
    ['crew', 'someone-else', []],
    // Whoever picks a method hears why it has to wait, or why it would not do then either.
    ['break-out', 'must-wait', [{ method: 'break-out', rule: 'held' }]],
    ['pressure-wash', 'must-wait', [loose]],
  ])('%s: %s', (pick, kind, against) => {
    expect(gradeCall(pick, stopped)).toEqual({
      ...{ kind, pick, against },
      // Whoever is called first of several is what the page names.
      answer: kind === 'right' ? pick : 'engineer',
      reasons,
    });
  });
  // The engineer says how far the damage goes and what a new part must stand; only then is it
  // replaced, or the new one is eaten, or moves, like the old. Common practice, no source.
  it.each(['engineer first', 'contractor first'])(
    'nobody replaces the part before: %s',
    (order) => {
      const holds = [
        { rule: 'fire-or-chemical', verdict: 'stop', who: 'engineer' },
        { rule: 'full-depth', verdict: 'stop', who: 'concrete-contractor' },
      ];
      if (order === 'contractor first') holds.reverse();
      const both = advice({ verdict: 'stop', method: null, holds });
      expect(gradeCall('concrete-contractor', both)).toMatchObject({
        ...{ kind: 'not-yet-enough', pick: 'concrete-contractor', answer: 'engineer' },
      });
      expect(gradeCall('engineer', both)).toMatchObject({ kind: 'right', answer: 'engineer' });
      const full = { ...both, holds: both.holds.filter(({ rule }) => rule === 'full-depth') };
      expect(gradeCall('concrete-contractor', full)).toMatchObject({ kind: 'right' });
    },
  );
  it('nobody, where the work may be done', () => {
    expect(gradeCall('engineer', advice())).toMatchObject({ kind: 'need-not-wait', against: [] });
  });
  it('the call is the method, or whoever clears the gravest hold', () => {
    expect(callOf(advice())).toBe('grind');
    expect(callOf(stopped)).toBe('engineer');
    expect(() => callOf(advice({ method: null }))).toThrow('Advice without a method has a hold.');
  });
});
