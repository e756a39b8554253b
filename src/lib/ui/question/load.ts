import { questions, type QuestionId } from '$lib/answers/questions';
import { loadPictures } from '$lib/drawing/choice/load';
import { loadQuestionWords } from '$words/questions/load';

/** The field for a number and what reads it. */
async function loadTyping() {
  const [{ default: NumberField }, { numberFrom, numberTrouble }] = await Promise.all([
    import('./NumberField.svelte'),
    import('./typed'),
  ]);
  return { NumberField, numberFrom, numberTrouble };
}
export type Typing = Awaited<ReturnType<typeof loadTyping>>;

/** What one question is shown with; the parts of the others are fetched when they are met. */
export async function loadParts(question: QuestionId) {
  const { kind } = questions[question];
  const [wordsOf, pictureOf, typing] = await Promise.all([
    loadQuestionWords(question),
    loadPictures(question),
    kind === 'number' || kind === 'depth' ? loadTyping() : null,
  ]);
  return { wordsOf, pictureOf, typing };
}
export type QuestionParts = Awaited<ReturnType<typeof loadParts>>;
