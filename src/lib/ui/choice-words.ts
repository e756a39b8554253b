import type { ChoiceWords, QuestionWords } from '$lib/words/types';

/** The words of one choice of a question that is only known at run time. */
export const choiceIn = (words: QuestionWords, choice: string): ChoiceWords =>
  (words.choices as Readonly<Record<string, ChoiceWords>>)[choice] ?? { name: choice, hint: '' };
