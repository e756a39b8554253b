import {
  questions,
  type Choice,
  type NumberQuestion,
  type QuestionId,
} from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { barLoss } from './bar-loss';
import { contamination } from './contamination';
import { cracks } from './cracks';
import { depth } from './depth';
import { element } from './element';
import { finish } from './finish';
import { freezeThaw } from './freeze-thaw';
import { looseness } from './looseness';
import { makerMoisture, makerProfile } from './maker';
import { drawingIn, notSure, typedIn } from './not-sure';
import { salts } from './salts';
import { setting } from './setting';
import { steel } from './steel';
import { texture } from './texture';
import { typed } from './typed';
import { warnings } from './warnings';

type WithChoices = Exclude<QuestionId, NumberQuestion>;

/** A drawing for every choice of every question: a missing one does not compile. For pages made at build. */
const drawings: { readonly [Q in WithChoices]: Readonly<Record<Choice<Q>, () => Drawing>> } = {
  element,
  setting,
  salts,
  freezeThaw,
  warnings,
  depth,
  looseness,
  contamination,
  texture,
  cracks,
  steel,
  barLoss,
  finish,
  makerProfile,
  makerMoisture,
};

const isTyped = (question: QuestionId): question is NumberQuestion =>
  questions[question].kind === 'number';

/**
 * The drawing of one choice. Beside the choices of the question there are `not-sure`,
 * `none` (of a list, where nothing applies), and for a typed number whatever was typed.
 */
export function drawingOf(question: QuestionId, choice: string): Drawing {
  if (choice === 'not-sure' || choice === 'unknown') return notSure();
  if (isTyped(question)) return typedIn(typed[question], choice);
  return drawingIn(drawings[question], choice);
}
