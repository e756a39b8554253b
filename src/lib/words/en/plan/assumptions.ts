import { isOpen, type Answer } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import { zoneQuestionIds, type QuestionId } from '$lib/answers/questions';
import { isKnown } from '$lib/plan/amount';
import { coatingComesOff } from '$lib/plan/coating';
import type { Plan } from '$lib/plan/plan';
import { questionWords } from '$words/questions';
import type { Say } from '$lib/words/types';
import { verdictWords } from '$words/verdicts';
import { figures, valueOf, type FigureId } from '$shared/figures';
import { stepWords } from '$words/steps';
import { figureWords, planFigureNames } from './figure-field';
import { quantityWords } from './figures';
import { planPageWords } from './page';
import { rateSteps } from './rates';

const words = planPageWords.assumptions;

/** What a figure is called; a rate is called after its step. */
export function figureName(id: FigureId, say: Say): string {
  const step = rateSteps[id];
  return planFigureNames[id] ?? (step ? stepWords(say)[step].name : id);
}

/** What a plan takes for granted because nobody has said otherwise, and what the reader has put in. */
export function assumptionSentences(
  job: Job,
  plan: Plan,
  say: Say,
  nameOf: (zone: string) => string,
): string[] {
  const { own } = job;
  const lines: string[] = [];
  if (job.crew === undefined)
    lines.push(words.crew(planPageWords.short.people(valueOf('crew.size', own))));
  if (job.hoursPerDay === undefined) lines.push(words.hours(figureWords('crew.day', say, own)));
  if (plan.schedule.days.length) {
    const basis =
      own?.['crew.usable'] === undefined
        ? verdictWords.bases[figures['crew.usable'].basis].name
        : quantityWords.own.yours;
    lines.push(words.usable(figureWords('crew.usable', say, own), basis));
    if ((job.crew ?? valueOf('crew.size', own)) > 1) lines.push(words.hands);
  }
  const breaks = plan.zones.filter(({ method }) => method === 'break-out');
  if (breaks.length && (job.site.freezeThaw?.length ?? 2) > 1) lines.push(words.frost);
  const square = breaks.filter(({ patches }) => !patches).map(({ id }) => nameOf(id));
  if (square.length) lines.push(words.square(say.list(square)));
  if (breaks.length) lines.push(words.joints);
  if (plan.steps.some(({ id }) => id === 'check-ready')) lines.push(words.pullOff);
  if (coatingComesOff(plan)) lines.push(words.coating);
  const bags = plan.totals['fill-bags'];
  if (bags && isKnown(bags) && own?.['bag.yield'] === undefined)
    lines.push(words.yield(figureWords('bag.yield', say)));
  const asked = questionWords(say);
  for (const { id } of plan.zones) {
    const answers = job.zones.find((zone) => zone.id === id)?.answers ?? {};
    const open = zoneQuestionIds.filter((question: QuestionId) => {
      const answer = (answers as Partial<Record<QuestionId, Answer<QuestionId>>>)[question];
      return answer !== undefined && isOpen(answer);
    });
    if (open.length)
      lines.push(words.open(nameOf(id), say.list(open.map((each) => asked[each].short))));
  }
  for (const id of Object.keys(own ?? {}) as FigureId[])
    lines.push(words.own(figureName(id, say), figureWords(id, say, own)));
  return lines;
}
