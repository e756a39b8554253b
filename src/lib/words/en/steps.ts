import type { StepId } from '$shared/methods';
import type { Say, StepWords } from '$lib/words/types';
import { aroundSteps } from './steps/around';
import { finishSteps } from './steps/finish';
import { methodSteps } from './steps/methods';

/** How each step is done, in English. */
export const stepWords = (say: Say): Readonly<Record<StepId, StepWords>> => ({
  ...aroundSteps(say),
  ...methodSteps(say),
  ...finishSteps(say),
});
