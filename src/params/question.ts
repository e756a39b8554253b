import { questions } from '$lib/answers/questions';

/** Whether a part of an address names a question. */
export const match = (part: string): boolean => Object.hasOwn(questions, part);
