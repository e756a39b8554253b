import { isOpen, type Answer, type ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId, ZoneQuestion } from '$lib/answers/questions';
import { speakAnswer } from '$lib/ui/speak-answer';
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

/** What was answered for a zone, short enough for its line in the list; what is open by name. */
export function glanceOf(answers: ZoneAnswers, asked: QuestionsWords, say: Say): readonly string[] {
  return telling.flatMap((id) => {
    const answer: Answer<QuestionId> | undefined = answers[id];
    if (answer === undefined || saysNothing(answer)) return [];
    const text = speakAnswer(id, answer, asked, say);
    return [isOpen(answer) || id === 'depth' ? `${asked[id].short}: ${text}` : text];
  });
}
