import { missingQuestions } from '$lib/advice/relevance';
import type { InterviewContext, InterviewPlace } from './context';

/**
 * Where the machine rests once it has been given the answers: the first question that is asked and
 * has none, or `done`. For pages that only link there and need no machine.
 */
export const restsAt = ({ site, zone }: InterviewContext): InterviewPlace =>
  missingQuestions(site, zone)[0] ?? 'done';
