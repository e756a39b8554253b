import { describe, expect, it } from 'vitest';
import { approachTo, begunHere } from '$lib/advice/approach';
import { approachFor } from '$lib/advice/approach-asked';
import type { SiteAnswers } from '$lib/answers/answers';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import type { TestId } from '$lib/advice/types';

// Common practice, no source: nobody is sent under what may fall. A crew sounds it from a tower or a
// lift beside it, takes nothing off before the engineer has looked, and an owner keeps away.
describe('a test where people are kept from under', () => {
  const of = (test: TestId, toOwner = false) => approachTo(test, 'keep-from-under', toOwner);
  it.each<[TestId, ReturnType<typeof of>, ReturnType<typeof of>]>([
    ['hammer-tap', 'from-beside', 'leave'],
    ['sound-round-stain', 'from-beside', 'leave'],
    ['tap-crack', 'from-beside', 'leave'],
    ['measure-depth', 'leave', 'leave'],
    ['scrape', 'leave', 'leave'],
    ['measure-bar', 'leave', 'leave'],
    ['chloride-test', 'leave', 'leave'],
    ['ask-engineer', 'as-usual', 'as-usual'],
    ['ask-owner', 'as-usual', 'as-usual'],
  ])('%s', (test, crew, owner) => {
    expect([of(test), of(test, true)]).toEqual([crew, owner]);
  });

  it('is an owner’s nowhere that people are kept away from, and a crew’s as ever beside a wall', () => {
    expect(approachTo('hammer-tap', 'keep-off', true)).toBe('leave');
    expect(approachTo('hammer-tap', 'keep-off', false)).toBe('as-usual');
    expect(approachTo('hammer-tap', null, true)).toBe('as-usual');
  });

  it('begins with closing it off and sounding it from beside it, never with scrubbing', () => {
    const now = ['make-safe', 'degrease', 'strip-growth', 'sound-and-mark', 'tap-crack'] as const;
    expect(begunHere(now, 'keep-from-under')).toEqual({
      now: ['make-safe', 'sound-and-mark', 'tap-crack'],
      approach: 'from-beside',
    });
    expect(begunHere(['make-safe'], 'keep-from-under').approach).toBe('as-usual');
    expect(begunHere(now, 'keep-off')).toEqual({ now, approach: 'as-usual' });
  });
});

// Common practice, no source: the same before anything is known of it.
describe('finding out an answer', () => {
  const at = (element: string): SiteAnswers => ({ element: [element] }) as never;
  const of = (question: QuestionId, site: SiteAnswers) =>
    [false, true].map((toOwner) => approachFor(question, site, toOwner));
  it.each(['suspended-slab', 'suspended-steps', 'soffit'])(
    'sends no owner onto or under %s, and a crew beside it',
    (element) => {
      for (const question of ['looseness', 'depth', 'steel', 'cracks', 'thickness'] as const)
        expect(of(question, at(element)), question).toEqual(['from-beside', 'leave']);
      expect(of('warnings', at(element))).toEqual(['from-beside', 'from-beside']);
      expect(of('finish', at(element))).toEqual(['as-usual', 'as-usual']);
    },
  );
  it('counts what may hang as hanging', () => {
    const unsure = { element: choicesOf('element') } as SiteAnswers;
    expect(of('looseness', unsure)).toEqual(['from-beside', 'leave']);
  });
  it('is as usual on the ground; of warning signs an owner looks from beside it there too', () => {
    expect(of('looseness', at('slab'))).toEqual(['as-usual', 'as-usual']);
    expect(of('warnings', at('slab'))).toEqual(['as-usual', 'from-beside']);
  });
});
