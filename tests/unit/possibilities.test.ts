import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { openQuestions, settlesOf } from '$lib/advice/find-next';
import { adviseSettled } from '$lib/advice/settle';
import { standingOf } from '$lib/advice/standing';
import { survey } from '$lib/advice/survey';
import { targetParts, type Hold, type Reason } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';
import { completions, countCompletions, sets } from '../helpers/enumerate';
import { rounds } from '../helpers/rounds';
import { thickOrRubbery } from '../helpers/tried-out';

/** Random answers, mostly sure, some open, small enough to enumerate. */
const one = (id: QuestionId) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...choicesOf(id)).map((choice) => [choice]) },
    { weight: 1, arbitrary: fc.shuffledSubarray([...choicesOf(id)], { minLength: 1 }) },
  );
const many = (id: QuestionId) =>
  fc
    .tuple(
      fc.subarray([...choicesOf(id)], { maxLength: 2 }),
      fc.subarray([...choicesOf(id)], { maxLength: 3 }),
    )
    .map(([yes, maybe]) => ({ yes, maybe: maybe.filter((each) => !yes.includes(each)) }));
/** A method that failed on a test patch: settled, whatever is open beside it. */
const failed = fc.record({
  method: fc.constantFrom(...methodIds),
  because: fc.constantFrom('too-much', 'too-little', 'both'),
  why: fc.constantFrom(['bruised'], ['too-deep'], ['too-smooth'], ['bruised', 'still-loose']),
});
const answersArb = fc
  .record({
    element: one('element'),
    setting: one('setting'),
    salts: one('salts'),
    freezeThaw: one('freezeThaw'),
    thickness: fc.constantFrom('unknown' as const, 60, 100, 150, 300),
    warnings: fc.oneof(
      { weight: 2, arbitrary: fc.constant({ yes: [], maybe: [] }) },
      { weight: 1, arbitrary: many('warnings') },
    ),
    depth: fc.oneof(one('depth'), fc.constantFrom(0, 0.5, 2, 5, 6.2, 6.4, 12, 40, 50, 75, 120)),
    looseness: one('looseness'),
    contamination: many('contamination'),
    texture: one('texture'),
    cracks: one('cracks'),
    steel: one('steel'),
    barLoss: fc.option(one('barLoss'), { nil: undefined }),
    finish: one('finish'),
    area: fc.constantFrom('unknown' as const, 0.5, 5, 20),
    makerProfile: fc.constantFrom(undefined, ['no-sheet'], ['csp-2'], ['csp-3'], ['csp-9']),
    makerMoisture: fc.constantFrom(undefined, ['no-sheet'], ['damp'], ['dry']),
    borderLength: fc.constantFrom(undefined, 'unknown' as const, 0, 12),
    barCover: fc.constantFrom(undefined, 'unknown' as const, 15, 60),
    stopped: fc.oneof(
      { weight: 3, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constant(['hollow-below']) },
    ),
    triedOut: fc.oneof(
      { weight: 2, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.array(failed, { minLength: 1, maxLength: 3 }) },
    ),
  })
  .map((raw) => JSON.parse(JSON.stringify(raw)) as Answers & TriedAnswers)
  .filter((answers) => countCompletions(answers) <= 6000);

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
      { numRuns: rounds(100, 300), examples: [[thickOrRubbery]] },
    );
  });

  it('says of open answers only what every completion says', () => {
    fc.assert(
      fc.property(answersArb, (answers) => {
        const quick = adviseZone(answers, answers, { margins: false });
        const all = [...completions(answers)].map(({ site, zone }) => adviseSettled(site, zone));
        const key = ({ rule, facts }: Reason) => JSON.stringify([rule, facts]);
        for (const { id, why } of quick.steps)
          // Of what only may be there: an if, and no reason of any one completion.
          for (const reason of why.filter(({ rule }) => rule !== 'drop-before-tools'))
            for (const { verdict, steps } of all) {
              if (verdict === 'stop') continue;
              const there = steps.find((step) => step.id === id)?.why.map(key);
              expect(there, id).toContain(key(reason));
            }
        const going = all.filter(({ verdict }) => verdict !== 'stop');
        const oily = going.filter(({ steps }) => steps.some(({ id }) => id === 'degrease'));
        expect(
          quick.steps.some(({ why }) => why.some(({ rule }) => rule === 'drop-before-tools')),
        ).toBe(oily.length > 0 && oily.length < going.length);
        if (quick.verdict === 'prepare')
          for (const reason of quick.reasons)
            if (!reason.likeliest)
              for (const { reasons } of all) expect(reasons.map(key)).toContain(key(reason));
        for (const part of targetParts)
          if (!quick.openTargets.includes(part))
            for (const { target, underneath } of all)
              if (underneath || part !== 'leaves')
                expect(target[part], part).toEqual(quick.target[part]);
        for (const said of quick.rejections)
          if (!said.likeliest && said.rule !== 'held')
            for (const { rejections } of all) {
              const other = rejections.find(({ method }) => method === said.method);
              if (other && other.rule !== 'held') expect(key(other)).toBe(key(said));
            }
      }),
      { numRuns: rounds(50, 150) },
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
      { numRuns: rounds(35, 100) },
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
