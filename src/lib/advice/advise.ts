import type { SiteAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import type { MethodId, StepId } from '$shared/methods';
import { beginningOf } from './begin';
import { assumptionsOf, rankFindOut } from './find-next';
import { marginsOf } from './margins';
import { methodsLeft } from './methods-left';
import { adviseSettled } from './settle';
import { workOrder } from './steps/work';
import { survey, type Survey, type Tally } from './survey';
import { TrueOfAll } from './true-of-all';
import type { Advice, Reason, Verdict } from './types';
import type { Outcome, ZoneAdvice } from './zone-advice';

/** The likeliest first of those that go on, then of those that are stopped. */
const stoppedLast = <T extends { readonly verdict: Verdict }>(
  likeliestFirst: readonly T[],
): T[] => [
  ...likeliestFirst.filter(({ verdict }) => verdict !== 'stop'),
  ...likeliestFirst.filter(({ verdict }) => verdict === 'stop'),
];

/**
 * Advice for a zone, whatever is still open about it.
 * What is not answered counts as not sure; every possibility is carried through, and the advice
 * is what they have in common.
 * @param options.margins whether to work out what would change settled advice, the costly part
 */
export function adviseZone(
  site: SiteAnswers,
  zone: TriedAnswers,
  { margins = true }: { margins?: boolean } = {},
): ZoneAdvice {
  const surveyed = survey(site, zone);
  const outcomes = surveyed.tallies.map((tally): Outcome => ({
    verdict: tally.verdict,
    method: tally.method,
    share: tally.weight / surveyed.total,
    example: adviseSettled(tally.site, tally.zone),
  }));
  const likeliest = (outcomes[0] as Outcome).example;
  const verdict = overall(outcomes);
  const settled = outcomes.length === 1;
  // What the likeliest cases say is told as sure only where all the others say it too.
  const [going] = stoppedLast(surveyed.tallies) as [Tally];
  const all = new TrueOfAll(site, zone, surveyed);
  const left = methodsLeft(outcomes);
  return {
    verdict,
    method: verdict === 'prepare' ? (likeliest.method as MethodId) : null,
    beside: verdict === 'prepare' ? likeliest.beside : null,
    methods: left,
    steps: dropFirst(
      stepsInCommon(outcomes, surveyed).map((step) => all.step(step, going)),
      surveyed,
    ),
    reasons: reasonsFor({ verdict, settled, likeliest, methods: left, surveyed, all }),
    holds: surveyed.holds,
    possibleHolds: surveyed.possibleHolds,
    rejections: all.rejections(left, stoppedLast(outcomes.map(({ example }) => example))),
    target: likeliest.target,
    openTargets: all.openTargets(likeliest.target),
    cautions: surveyed.cautions,
    findOut: rankFindOut(surveyed, site, zone, outcomes),
    beginning: settled || verdict === 'stop' ? null : beginningOf(surveyed, left),
    margins: settled && margins ? marginsOf(site, zone) : [],
    outcomes,
    assumptions: assumptionsOf(surveyed, site, zone),
  };
}

/** `prepare` only when all completions agree on it and on the method. */
function overall(outcomes: readonly Outcome[]): Verdict {
  if (outcomes.every(({ verdict }) => verdict === 'stop')) return 'stop';
  if (outcomes.length === 1) return (outcomes[0] as Outcome).verdict;
  return 'find-out-first';
}

/** The steps every completion calls for, told as in the likeliest that is not stopped. */
function stepsInCommon(outcomes: readonly Outcome[], { commonSteps }: Survey): Advice['steps'] {
  const going = outcomes.find(({ verdict }) => verdict !== 'stop');
  return going ? going.example.steps.filter(({ id }) => commonSteps.includes(id)) : [];
}

/**
 * Where there may be oil and there may be none, degreasing is no step of every case: the water drop
 * comes before whatever is done after it, so that no tool drives oil in.
 */
function dropFirst(
  steps: Advice['steps'],
  { commonSteps, anySteps }: Pick<Survey, 'commonSteps' | 'anySteps'>,
): Advice['steps'] {
  if (!anySteps.includes('degrease') || commonSteps.includes('degrease')) return steps;
  const place = (id: StepId) => workOrder.indexOf(id);
  const first =
    steps.find(({ id }) => place(id) > place('degrease') && place(id) < place('vacuum')) ??
    steps[0];
  return steps.map((step) =>
    step === first ? { ...step, why: [{ rule: 'drop-before-tools' }, ...step.why] } : step,
  );
}

/** Why it comes to that: the choice of the method, or what stands before the work. */
function reasonsFor({
  verdict,
  settled,
  likeliest,
  methods,
  surveyed: { holds, tallies },
  all,
}: {
  verdict: Verdict;
  settled: boolean;
  likeliest: Advice;
  methods: readonly MethodId[];
  surveyed: Survey;
  all: TrueOfAll;
}): readonly Reason[] {
  if (verdict === 'prepare') return all.reasons(likeliest.reasons, tallies[0] as Tally);
  if (settled || verdict === 'stop') return holds;
  return [{ rule: 'answers-differ', facts: { methods } }, ...holds];
}
