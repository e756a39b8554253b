import type { QuestionId } from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import { drawingOf } from '$lib/drawing/choice';
import type { Drawing } from '$lib/drawing/mark';

/** One choice as somebody sees it who stands there. For pages made at build. */
export function viewOf(
  question: QuestionId,
  choice: string,
  _units: UnitSystem = 'metric',
): Drawing {
  return drawingOf(question, choice);
}
