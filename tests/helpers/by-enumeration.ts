import { expect } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { openQuestions, settlesOf } from '$lib/advice/find-next';
import { adviseSettled } from '$lib/advice/settle';
import { survey } from '$lib/advice/survey';
import { targetParts, type Advice, type Hold, type Reason } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { completions, sets } from './enumerate';

/** What is said of open answers, held against what every completion of them comes to by itself. */
const keyOf = ({ rule, facts }: Reason) => JSON.stringify([rule, facts]);
const keysOf = (reasons: readonly Reason[]) => [...new Set(reasons.map(keyOf))].sort();
/** The reasons that stand in every one of some lists. */
const inAll = (lists: readonly (readonly Reason[])[]) => {
  const [first = [], ...rest] = lists.map(keysOf);
  return rest.reduce((still, list) => still.filter((key) => list.includes(key)), first);
};
const isEqual = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** Everything plain enumeration says of the answers. */
export function enumerated(answers: Answers) {
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

/** The survey is the union over all completions: what they come to, how often, by which steps and holds. */
export function expectUnion(answers: Answers): void {
  const quick = survey(answers, answers);
  const plain = enumerated(answers);
  const shares = Object.fromEntries(
    quick.tallies.map((tally) => [`${tally.verdict} ${tally.method}`, tally.weight]),
  );
  expect(quick.total).toBe(plain.total);
  expect(shares).toEqual(Object.fromEntries(plain.outcomes));
  expect([...quick.commonSteps].sort()).toEqual([...plain.common].sort());
  expect([...quick.cautions].sort()).toEqual([...plain.cautions].sort());
  expectHolds(answers, [...quick.holds, ...quick.possibleHolds]);
  const rules = (list: readonly Hold[]) => list.map(({ rule }) => rule).sort();
  expect(rules(quick.holds)).toEqual([...plain.inAll].sort());
  expect(rules([...quick.holds, ...quick.possibleHolds])).toEqual([...plain.holds].sort());
}

/** A hold is as grave as it may be, lifted by whoever may have to, and tells what is so in every case. */
function expectHolds(answers: Answers, holds: readonly Hold[]): void {
  const all = [...completions(answers)].flatMap(
    ({ site, zone }) => adviseSettled(site, zone).holds,
  );
  // Walls and soffits, and ways to be loose, are one possibility: of these some are not named.
  const told = ({ facts = {} }: Hold) =>
    Object.entries(facts).filter(([name]) => name !== 'element' && name !== 'looseness');
  for (const hold of holds) {
    const same = all.filter(({ rule }) => rule === hold.rule);
    const agreed = told(same[0] as Hold).filter((fact) =>
      same.every((each) => told(each).some((other) => isEqual(other, fact))),
    );
    expect(told(hold), hold.rule).toEqual(agreed);
    const any = (is: (hold: Hold) => boolean) => same.some(is);
    expect(hold.who === 'engineer', hold.rule).toBe(any(({ who }) => who === 'engineer'));
    expect(hold.verdict === 'stop', hold.rule).toBe(any(({ verdict }) => verdict === 'stop'));
  }
}

/** What is told as sure is what every completion says, all of it and nothing else. */
export function expectSure(answers: Answers): void {
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
  expect(quick.steps.some(({ why }) => why.some(({ rule }) => rule === 'drop-before-tools'))).toBe(
    oily.length > 0 && oily.length < going.length,
  );
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
}

/** What a test settles is what full enumeration of each of its results says. */
export function expectRanking(answers: Answers): void {
  const quick = survey(answers, answers);
  for (const { question } of openQuestions(answers, answers)) {
    const left = branches(answers, question).map((branch) => enumerated(branch).outcomes.size);
    const settles = settlesOf(quick, question);
    expect(settles.worst).toBe(Math.max(...left));
    expect(settles.expected).toBeCloseTo(
      left.reduce((sum, each) => sum + each, 0) / left.length,
      9,
    );
  }
}

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
