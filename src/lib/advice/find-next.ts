import { isOpen, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import { openMany, possible } from './completions';
import { showsBar } from './demands';
import { partedBy, testsFor } from './find-tests';
import type { Survey, Walked } from './survey';
import type { RuleId } from './rules';
import type { FindOut } from './types';
import { isCoatedUntested, waitsForSample } from './untested-coating';
import type { Assumption, Outcome, RankedFindOut } from './zone-advice';

/** The outcomes one answer to a question would leave, and how many of its choices leave just these. */
export interface Branch {
  readonly outcomes: number;
  readonly weight: number;
}

/** What each possible answer to a question leaves, from the survey of all completions. */
export function branchesOf(survey: Survey, question: QuestionId): readonly Branch[] {
  const { possibilities, tallies } = survey;
  const reached = (name: Walked, bits: number) =>
    tallies.filter((tally) => (tally.seen[name] & bits) !== 0).length;
  /** Possibilities of two questions walked together, looked at from one of them. */
  const through = <T>(
    name: 'depthAndLooseness' | 'steel',
    side: (member: T) => string | undefined,
  ): Branch[] => {
    const list = possibilities[name] as readonly { readonly members: readonly unknown[] }[];
    const bits = new Map<string, number>();
    // Members the question does not touch (no bar to measure) stay possible whatever its answer.
    let untouched = 0;
    list.forEach(({ members }, index) => {
      for (const member of members as readonly T[]) {
        const choice = side(member);
        if (choice === undefined) untouched |= 1 << index;
        else bits.set(choice, (bits.get(choice) ?? 0) | (1 << index));
      }
    });
    return [...bits.values()].map((mask) => ({
      outcomes: reached(name, mask | untouched),
      weight: 1,
    }));
  };
  switch (question) {
    case 'depth':
      return through<{ depth: string; depthMm?: number }>(
        'depthAndLooseness',
        ({ depth }) => depth,
      );
    case 'looseness':
      return through<{ looseness: string }>('depthAndLooseness', ({ looseness }) => looseness);
    case 'steel':
      return through<{ steel: string }>('steel', ({ steel }) => steel);
    case 'barLoss':
      return through<{ barLoss?: string }>('steel', ({ barLoss }) => barLoss);
    case 'warnings':
      return survey.warningSets.map((_, index) => ({
        outcomes: tallies.filter((tally) => tally.warnings.has(index)).length,
        weight: 1,
      }));
    case 'element':
    case 'contamination':
    case 'texture':
    case 'cracks':
    case 'finish':
    case 'freezeThaw':
    case 'salts':
      return possibilities[question].map(({ weight }, index) => ({
        outcomes: reached(question, 1 << index),
        weight,
      }));
    default:
      return [{ outcomes: tallies.length, weight: 1 }];
  }
}

/** How much knowing the answer would settle: outcomes left on average over its choices, and at worst. */
export const settlesOf = (survey: Survey, question: QuestionId): RankedFindOut['settles'] =>
  settledBy(survey, branchesOf(survey, question));

function settledBy(survey: Survey, branches: readonly Branch[]): RankedFindOut['settles'] {
  const weight = branches.reduce((sum, branch) => sum + branch.weight, 0);
  return {
    now: survey.tallies.length,
    expected: branches.reduce((sum, branch) => sum + branch.outcomes * branch.weight, 0) / weight,
    worst: Math.max(...branches.map((branch) => branch.outcomes)),
  };
}

/** The questions that leave more than one possibility, with what is still possible. */
export function openQuestions(
  site: SiteAnswers,
  zone: ZoneAnswers,
): { question: QuestionId; among: readonly string[] }[] {
  const answers = { ...site, ...zone };
  const deciding: QuestionId[] = [
    'element',
    'setting',
    'salts',
    'freezeThaw',
    'warnings',
    'depth',
    'looseness',
    'contamination',
    'texture',
    'cracks',
    'steel',
    'finish',
  ];
  const mayShow = !zone.steel || zone.steel.some((steel) => showsBar({ steel }));
  if (zone.barLoss && mayShow) deciding.push('barLoss');
  return deciding
    .filter((id) => answers[id] === undefined || isOpen(answers[id]))
    .map((question) => {
      const answer = answers[question];
      if (question === 'warnings' || question === 'contamination')
        return { question, among: openMany(question, answer as never).maybe };
      return { question, among: Array.isArray(answer) ? answer : possible(question, undefined) };
    });
}

/** Every open answer, and whether settling it could change the outcome. */
export function assumptionsOf(survey: Survey, site: SiteAnswers, zone: ZoneAnswers): Assumption[] {
  return openQuestions(site, zone).map(({ question, among }) => {
    const { expected, now } = settlesOf(survey, question);
    return { question, among, matters: expected < now };
  });
}

/** Where a hold that stops the work is seen. Watching whether a crack moves takes weeks, and waits. */
const seenBy: Readonly<Partial<Record<RuleId, QuestionId>>> = {
  'fire-or-chemical': 'warnings',
  'settled-or-rocking': 'warnings',
  'structure-before-removal': 'warnings',
  'tendons-before-depth': 'warnings',
  'bar-section-loss': 'barLoss',
  through: 'depth',
  'full-depth': 'depth',
};

/** Whether a test may show what stops the work. A bar is looked for before it is measured. */
function showsStop({ possibleHolds }: Survey, zone: ZoneAnswers) {
  const questions = possibleHolds
    .filter(({ verdict }) => verdict === 'stop')
    .map(({ rule }) => seenBy[rule])
    .map((question) =>
      question === 'barLoss' && (!zone.steel || isOpen(zone.steel)) ? 'steel' : question,
    );
  return ({ question, test }: FindOut): boolean =>
    questions.includes(question) && test !== 'lead-asbestos-test';
}

/**
 * What to find out, most useful first: what the holds ask for, then the open questions, those that
 * may show what stops the work before those that only change the method, each by how many outcomes
 * a minute of testing would settle. Before all of it the sample of a coating that is there; what throws dust from a coating that nobody has tested comes last.
 * Source: common practice, no published source.
 */
export function rankFindOut(
  survey: Survey,
  site: SiteAnswers,
  zone: ZoneAnswers,
  outcomes: readonly Outcome[],
): (FindOut | RankedFindOut)[] {
  const waits = ({ test }: FindOut) => waitsForSample(site, test);
  if (outcomes.length === 1) {
    const { findOut } = (outcomes[0] as Outcome).example;
    // What may be oil decides the degreasing, though it leaves the method where it is.
    const drop: FindOut = { question: 'contamination', test: 'water-drop' };
    const maybeOil = zone.contamination?.maybe.includes('oil') ?? !zone.contamination;
    const known = findOut.some(({ test }) => test === 'water-drop');
    // A bar that shows, drawn or told, has lost what nobody has measured: whether it only lies open or rusts.
    const bar: FindOut = { question: 'barLoss', test: 'measure-bar' };
    const rusts =
      !zone.barLoss &&
      !!zone.steel?.includes('corroded') &&
      zone.steel.every((steel) => showsBar({ steel })) &&
      !findOut.some(({ question }) => question === 'barLoss');
    const tests = [...findOut, ...(rusts ? [bar] : []), ...(maybeOil && !known ? [drop] : [])];
    return tests.sort((one, other) => +waits(one) - +waits(other));
  }
  const stops = showsStop(survey, zone);
  const coated = isCoatedUntested(site, zone);
  const samples = ({ test }: FindOut) => coated && test === 'lead-asbestos-test';
  return openQuestions(site, zone)
    .flatMap(({ question }): RankedFindOut[] =>
      testsFor(question, site, zone).map((test) => ({
        question,
        test,
        settles: settledBy(
          survey,
          partedBy(survey, question, test) ?? branchesOf(survey, question),
        ),
      })),
    )
    .filter(({ settles }) => settles.expected < settles.now)
    .sort(
      (one, other) =>
        +samples(other) - +samples(one) ||
        +waits(one) - +waits(other) ||
        +stops(other) - +stops(one) ||
        worth(other) - worth(one),
    );
}

const worth = ({ test, settles }: RankedFindOut): number =>
  (settles.now - settles.expected) / valueOf(`test.${test}`);
