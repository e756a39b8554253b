import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { openQuestions, settlesOf } from '$lib/advice/find-next';
import { adviseSettled } from '$lib/advice/settle';
import { standingOf } from '$lib/advice/standing';
import { survey } from '$lib/advice/survey';
import { targetParts, type Advice, type Hold, type Reason } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { anyAnswers } from '../helpers/any-answers';
import { completions, countCompletions, sets } from '../helpers/enumerate';
import { nightly, rounds } from '../helpers/rounds';
import { recess, thickOrRubbery } from '../helpers/tried-out';

/** Fewer and smaller than at night, where every completion of 5,000 sets of answers is looked at. */
const most = nightly ? 20_000 : 4000;
const atNight = 5000;

const answersArb = anyAnswers.filter((answers) => countCompletions(answers) <= most);

const keyOf = ({ rule, facts }: Reason) => JSON.stringify([rule, facts]);
const keysOf = (reasons: readonly Reason[]) => [...new Set(reasons.map(keyOf))].sort();
/** The reasons that stand in every one of some lists. */
const inAll = (lists: readonly (readonly Reason[])[]) => {
  const [first = [], ...rest] = lists.map(keysOf);
  return rest.reduce((still, list) => still.filter((key) => list.includes(key)), first);
};
const isEqual = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** Everything plain enumeration says of the answers. */
function enumerated(answers: Answers) {
  const outcomes = new Map<string, number>();
  const cautions = new Set<string>();
  const holds = new Set<string>();
  let inAll: string[] | null = null;
  let common: string[] | null = null;
  let total = 0;
  for (const { site, zone } of completions(answers)) {
    const advice = adviseSettled(site, zone);
    const key = `${advice.verdict} ${advice.underneath}`;
    outcomes.set(key, (outcomes.get(key) ?? 0) + 1);
    total += 1;
    for (const hazard of advice.cautions) cautions.add(hazard);
    const standing: string[] = advice.holds.map(({ rule }) => rule);
    for (const rule of standing) holds.add(rule);
    inAll = inAll ? inAll.filter((rule) => standing.includes(rule)) : standing;
    if (advice.verdict !== 'stop') {
      const ids: string[] = advice.steps.map(({ id }) => id);
      common = common ? common.filter((id) => ids.includes(id)) : ids;
    }
  }
  return { outcomes, cautions, holds, inAll: inAll ?? [], common: common ?? [], total };
}

describe('advice for open answers', () => {
  it('is the union over all completions, by plain enumeration', () => {
    fc.assert(
      fc.property(answersArb, (answers) => {
        const quick = survey(answers, answers);
        const plain = enumerated(answers);
        const shares = Object.fromEntries(
          quick.tallies.map((tally) => [`${tally.verdict} ${tally.method}`, tally.weight]),
        );
        expect(quick.total).toBe(plain.total);
        expect(shares).toEqual(Object.fromEntries(plain.outcomes));
        expect([...quick.commonSteps].sort()).toEqual([...plain.common].sort());
        expect([...quick.cautions].sort()).toEqual([...plain.cautions].sort());
        const rules = (list: readonly Hold[]) => list.map(({ rule }) => rule).sort();
        expect(rules(quick.holds)).toEqual([...plain.inAll].sort());
        expect(rules([...quick.holds, ...quick.possibleHolds])).toEqual([...plain.holds].sort());
      }),
      { numRuns: rounds(40, atNight), examples: [[recess], [thickOrRubbery]] },
    );
  });

  it('says as sure what every completion says, all of it and nothing else', () => {
    fc.assert(
      fc.property(answersArb, (answers) => {
        const quick = adviseZone(answers, answers, { margins: false });
        const all = [...completions(answers)].map(({ site, zone }) => adviseSettled(site, zone));
        const going = all.filter(({ verdict }) => verdict !== 'stop');
        for (const { id, why } of quick.steps) {
          // Of what only may be there: an if, and no reason of any one completion.
          const sure = why.filter(({ rule }) => rule !== 'drop-before-tools');
          const reasonsOf = ({ steps }: Advice) => steps.find((step) => step.id === id)?.why ?? [];
          expect(keysOf(sure), id).toEqual(inAll(going.map(reasonsOf)));
        }
        const oily = going.filter(({ steps }) => steps.some(({ id }) => id === 'degrease'));
        expect(
          quick.steps.some(({ why }) => why.some(({ rule }) => rule === 'drop-before-tools')),
        ).toBe(oily.length > 0 && oily.length < going.length);
        if (quick.verdict === 'prepare')
          expect(keysOf(quick.reasons.filter(({ likeliest }) => !likeliest))).toEqual(
            inAll(all.map(({ reasons }) => reasons)),
          );
        const open = targetParts.filter((part) =>
          all.some(
            ({ target, underneath }) =>
              (underneath || part !== 'leaves') && !isEqual(target[part], quick.target[part]),
          ),
        );
        expect(quick.openTargets).toEqual(open);
        for (const said of quick.rejections.filter(({ rule }) => rule !== 'held')) {
          const others = all.flatMap(({ rejections }) =>
            rejections.filter(({ method, rule }) => method === said.method && rule !== 'held'),
          );
          expect(said.likeliest, said.method).toBe(
            others.every((other) => keyOf(other) === keyOf(said)) ? undefined : true,
          );
        }
      }),
      {
        numRuns: rounds(25, atNight),

        examples: [[recess], [thickOrRubbery]],
      },
    );
  });

  it('ranks tests as full enumeration would', () => {
    fc.assert(
      fc.property(answersArb, (answers) => {
        const quick = survey(answers, answers);
        for (const { question } of openQuestions(answers, answers)) {
          const left = branches(answers, question).map(
            (branch) => enumerated(branch).outcomes.size,
          );
          const settles = settlesOf(quick, question);
          expect(settles.worst).toBe(Math.max(...left));
          expect(settles.expected).toBeCloseTo(
            left.reduce((sum, each) => sum + each, 0) / left.length,
            9,
          );
        }
      }),
      { numRuns: rounds(15, 60) },
    );
  });

  /** The answers with one question settled, in every way it can be. */
  function branches(answers: Answers, question: QuestionId): Answers[] {
    const answer = answers[question];
    if (question === 'warnings' || question === 'contamination')
      return sets(question, answer as never).map((yes) => ({
        ...answers,
        [question]: { yes, maybe: [] },
      }));
    return (answer as readonly string[]).map((choice) => ({ ...answers, [question]: [choice] }));
  }

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
