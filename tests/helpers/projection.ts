import { questionIds } from '$lib/answers/questions';
import { whyNotAsked } from '$lib/advice/relevance';
import { answerOf } from '$lib/interview/context';
import type { InterviewState } from '$lib/interview/replay';

/** What was worked out of each state, which is asked for again and again. */
const worked = new WeakMap<InterviewState, string>();

/** What the guards read: which questions are asked, which are answered. The rest cannot steer. */
export function projection(state: InterviewState): string {
  const known = worked.get(state);
  if (known !== undefined) return known;
  const key = JSON.stringify([
    state.value,
    questionIds.map((id) => [
      whyNotAsked(id, state.context.site, state.context.zone),
      answerOf(state.context, id) !== undefined,
    ]),
    state.context.zone.depth,
    state.context.zone.looseness,
    state.context.site.thickness,
  ]);
  worked.set(state, key);
  return key;
}
