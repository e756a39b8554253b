import type { QuestionId } from '$lib/answers/questions';

/**
 * The choice that says by itself that it is not known: what a data sheet asks for, with none at
 * hand. It is ticked beforehand, and neither "Not sure" nor several choices stand beside it.
 */
const unsureChoices: Readonly<Partial<Record<QuestionId, string>>> = {
  makerProfile: 'no-sheet',
  makerMoisture: 'no-sheet',
};

/** That choice of a question; undefined where "Not sure" is asked for apart. */
export const unsureChoice = (question: QuestionId): string | undefined => unsureChoices[question];
