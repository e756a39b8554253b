import type { TestId } from '$lib/advice/types';
import type { Say, TestWords } from '$lib/words/types';
import { fieldTests } from './tests/field';
import { expertTests } from './tests/expert';

/** The tests that settle an answer, in English. */
export const testWords = (say: Say): Readonly<Record<TestId, TestWords>> => ({
  ...fieldTests(say),
  ...expertTests(say),
});
