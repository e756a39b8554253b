import { possibilitiesFor } from '$lib/advice/completions';
import { missingQuestions } from '$lib/advice/relevance';
import type { InterviewContext } from '$lib/interview/context';

/** Whether an answer looks open, told before the advice has been worked out: it may not matter in the end. */
export const mayBeOpen = ({ site, zone }: InterviewContext): boolean =>
  missingQuestions(site, zone).length > 0 ||
  Object.values({ ...site, ...zone }).some((answer) => {
    if (Array.isArray(answer)) return answer.length > 1;
    return typeof answer === 'object' && 'maybe' in answer && answer.maybe.length > 0;
  });

/** Combinations of answers up to which advice is there within a tap's time on a slow phone. */
const soon = 10_000;

/** Whether so much is open that working out the advice would keep a tap waiting. */
export const takesLong = ({ site, zone }: InterviewContext): boolean =>
  Object.values(possibilitiesFor(site, zone)).reduce((all, { length }) => all * length, 1) > soon;
