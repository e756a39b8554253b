import type { Answer } from '$lib/answers/answers';
import { choicesOf, questions, type QuestionId } from '$lib/answers/questions';
import { questionPageWords as labels } from '$words/ui/question';
import type { QuestionsWords, QuestionWords, Say } from '$lib/words/types';
import { choiceIn } from './choice-words';

/** An answer in a few words, for lists. */
export function speakAnswer<Q extends QuestionId>(
  question: Q,
  answer: Answer<QuestionId>,
  words: Pick<QuestionsWords, Q>,
  say: Say,
): string {
  if (answer === 'unknown') return labels.unsureAnswer;
  if (typeof answer === 'number') {
    const none = (words[question] as QuestionWords).number?.none;
    if (answer === 0 && none) return none.name;
    const about = questions[question];
    const unit = 'unit' in about ? about.unit : 'mm';
    return unit === 'mm'
      ? say.length(answer)
      : unit === 'm'
        ? say.distance(answer)
        : say.area(answer);
  }
  const name = (choice: string) => choiceIn(words[question] as QuestionWords, choice).name;
  const all = choicesOf(question).length;
  if ('yes' in answer) {
    const { yes, maybe } = answer;
    if (!yes.length && !maybe.length) return labels.noneAnswer;
    if (!yes.length && maybe.length === all) return labels.unsureAnswer;
    return [...yes.map(name), ...maybe.map((each) => labels.maybeAnswer(name(each)))].join('; ');
  }
  if (answer.length === all) return labels.unsureAnswer;
  if (answer.length === 1) return name(answer[0] as string);
  return labels.possible(say.either(answer.map(name)));
}

/** The words of a choice whose question is only known at run time. */
export const choiceWords = (words: QuestionsWords, question: QuestionId, choice: string) =>
  choiceIn(words[question], choice);
