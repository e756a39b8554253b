import { isOpen, type Answer, type ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId, ZoneQuestion } from '$lib/answers/questions';
import { speakAnswer } from '$lib/ui/speak-answer';
import { jobPageWords } from '$words/plan/job';
import type { QuestionsWords, Say } from '$lib/words/types';

/** What tells zones apart at a glance, in this order. */
const telling = [
  'depth',
  'looseness',
  'contamination',
  'cracks',
  'steel',
  'finish',
] as const satisfies readonly ZoneQuestion[];

/** Answers that say nothing is there. */
const nothing = new Set<unknown>(['none', 'none-seen']);
const saysNothing = (answer: Answer<QuestionId>): boolean =>
  typeof answer === 'object' &&
  ('yes' in answer
    ? answer.yes.length + answer.maybe.length === 0
    : answer.length === 1 && nothing.has(answer[0]));

/** Whether an answer is what the drawing measures or shows, and not what was answered. */
export const isDrawn = (id: ZoneQuestion, shown: ZoneAnswers, given: ZoneAnswers): boolean =>
  shown[id] !== undefined && key(shown[id]) !== key(given[id]);

/** Of one of several the order says nothing. */
const key = (answer: ZoneAnswers[ZoneQuestion]): string =>
  JSON.stringify(Array.isArray(answer) ? answer.toSorted() : answer);

/**
 * What is known of a zone, short enough for its line in the list; what is open by name.
 * @param given what was answered, where `answers` has what is drawn: that is told as drawn
 */
export function glanceOf(
  answers: ZoneAnswers,
  asked: QuestionsWords,
  say: Say,
  given = answers,
): readonly string[] {
  return telling.flatMap((id) => {
    const answer: Answer<QuestionId> | undefined = answers[id];
    if (answer === undefined || saysNothing(answer)) return [];
    const said = speakAnswer(id, answer, asked, say);
    const text = isDrawn(id, answers, given) ? jobPageWords.drawn(said) : said;
    return [isOpen(answer) || id === 'depth' ? `${asked[id].short}: ${text}` : text];
  });
}
