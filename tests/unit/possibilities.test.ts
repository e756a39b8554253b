import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { adviseSettled } from '$lib/advice/settle';
import { standingOf } from '$lib/advice/standing';
import { anyAnswers } from '../helpers/any-answers';
import { enumerated, expectRanking, expectSure, expectUnion } from '../helpers/by-enumeration';
import { completions, countCompletions } from '../helpers/enumerate';
import { nightly, rounds } from '../helpers/rounds';
import { recess, thickOrRubbery } from '../helpers/tried-out';

/** Fewer and smaller than at night, where every completion of 5,000 sets of answers is looked at. */
const most = nightly ? 20_000 : 4000;
const atNight = 5000;

const answersArb = anyAnswers.filter((answers) => countCompletions(answers) <= most);

describe('advice for open answers', () => {
  it('is the union over all completions, by plain enumeration', () => {
    fc.assert(fc.property(answersArb, expectUnion), {
      numRuns: rounds(40, atNight),
      examples: [[recess], [thickOrRubbery]],
    });
  });

  it('says as sure what every completion says, all of it and nothing else', () => {
    fc.assert(fc.property(answersArb, expectSure), {
      numRuns: rounds(25, atNight),

      examples: [[recess], [thickOrRubbery]],
    });
  });

  it('ranks tests as full enumeration would', () => {
    fc.assert(fc.property(answersArb, expectRanking), { numRuns: rounds(15, 60) });
  });

  it('is a method only when every completion prepares by it', () => {
    fc.assert(
      fc.property(answersArb, (answers) => {
        const advice = adviseZone(answers, answers);
        const { outcomes } = enumerated(answers);
        if (advice.verdict === 'prepare')
          expect([...outcomes.keys()]).toEqual([`prepare ${advice.method}`]);
        if (advice.verdict === 'stop')
          expect([...outcomes.keys()].every((key) => key.startsWith('stop'))).toBe(true);
        if (advice.verdict === 'find-out-first') expect(advice.method).toBeNull();
        const rejected = advice.rejections.map(({ method }) => method);
        expect(rejected.length + (advice.method ? 1 : advice.methods.length)).toBe(8);
      }),
      { numRuns: rounds(15, 100) },
    );
  });

  it('keeps a method standing while some completion goes on with it, and only while one chooses it', () => {
    fc.assert(
      // While the answers come in, nothing has been tried yet.
      fc.property(answersArb, ({ triedOut: _, stopped: __, ...answers }) => {
        const chosen = new Set<string>();
        const goingOn = new Set<string>();
        for (const { site, zone } of completions(answers)) {
          const { method } = choose(demandsOf(site, zone));
          chosen.add(method);
          if (adviseSettled(site, zone).verdict !== 'stop') goingOn.add(method);
        }
        const standing = standingOf(answers, answers)
          .filter(({ state }) => state === 'standing')
          .map(({ method }) => method);
        expect([...chosen]).toEqual(expect.arrayContaining(standing));
        expect(standing).toEqual(expect.arrayContaining([...goingOn]));
      }),
      { numRuns: rounds(15, 60) },
    );
  });

  it('copes with nothing answered but a failed test patch', () => {
    const { triedOut } = thickOrRubbery;
    expect(adviseZone({}, { triedOut }).methods).not.toContain('needle-scale');
  });

  it('copes with nothing answered at all', () => {
    const advice = adviseZone({}, {});
    expect(advice.verdict).toBe('find-out-first');
    expect(advice.methods).toContain('pressure-wash');
    expect(advice.methods).toContain('break-out');
    expect(advice.findOut.length).toBeGreaterThan(0);
  });
});
