import type { QuestionId } from '$lib/answers/questions';

/** Diameter in mm of the coin that gives the pictures of choices their scale. */
export const coinWidth = 24;

const shown: readonly QuestionId[] = [
  'depth',
  'looseness',
  'contamination',
  'texture',
  'cracks',
  'barLoss',
  'finish',
];

/** Whether a coin lies in pictures of the choices of a question. */
export const hasCoin = (question: QuestionId): boolean => shown.includes(question);
