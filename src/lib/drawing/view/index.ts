import type { Choice, QuestionId } from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import { drawingOf } from '$lib/drawing/choice';
import { drawingIn, notSure, type Drawn } from '$lib/drawing/choice/not-sure';
import type { Drawing } from '$lib/drawing/mark';
import { barLoss } from './bar-loss';
import { contamination } from './contamination';
import { cracks } from './cracks';
import { depth } from './depth';
import { finish } from './finish';
import { looseness } from './looseness';
import { steel } from './steel';
import { texture } from './texture';

/** The questions whose choices are seen from where a person stands; the others have one drawing each. */
type Seen =
  'depth' | 'looseness' | 'contamination' | 'texture' | 'cracks' | 'steel' | 'barLoss' | 'finish';
const views: { readonly [Q in Seen]: Readonly<Record<Choice<Q>, Drawn>> } = {
  depth,
  looseness,
  contamination,
  texture,
  cracks,
  steel,
  barLoss,
  finish,
};

/** Whether a choice has two drawings: from where a person stands, and cut through. */
export const hasSection = (question: QuestionId): question is Seen => question in views;

/** One choice as somebody sees it who stands there. For pages made at build. */
export function viewOf(
  question: QuestionId,
  choice: string,
  units: UnitSystem = 'metric',
): Drawing {
  if (!hasSection(question)) return drawingOf(question, choice);
  if (choice === 'unknown') return notSure();
  return drawingIn(views[question], choice, units);
}
