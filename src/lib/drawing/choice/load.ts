import {
  questions,
  type Choice,
  type NumberQuestion,
  type QuestionId,
} from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import type { Drawing } from '$lib/drawing/mark';
import { drawingIn, typedIn, type Drawn } from './not-sure';

type WithChoices = Exclude<QuestionId, NumberQuestion>;
type Drawings<Q extends WithChoices> = Readonly<Record<Choice<Q>, Drawn>>;

/**
 * The drawings of each question, apart: a page fetches those it shows. A missing one does not
 * compile. Damage is shown as somebody sees it who stands there; its section is drawn beside the form.
 */
const loaders: { readonly [Q in WithChoices]: () => Promise<Drawings<Q>> } = {
  element: async () => (await import('./element')).element,
  setting: async () => (await import('./setting')).setting,
  salts: async () => (await import('./salts')).salts,
  freezeThaw: async () => (await import('./freeze-thaw')).freezeThaw,
  warnings: async () => (await import('./warnings')).warnings,
  depth: async () => (await import('../view/depth')).depth,
  looseness: async () => (await import('../view/looseness')).looseness,
  contamination: async () => (await import('../view/contamination')).contamination,
  texture: async () => (await import('../view/texture')).texture,
  cracks: async () => (await import('../view/cracks')).cracks,
  steel: async () => (await import('../view/steel')).steel,
  barLoss: async () => (await import('../view/bar-loss')).barLoss,
  finish: async () => (await import('../view/finish')).finish,
  makerProfile: async () => (await import('./maker')).makerProfile,
  makerMoisture: async () => (await import('./maker')).makerMoisture,
};

const isTyped = (question: QuestionId): question is NumberQuestion =>
  questions[question].kind === 'number';

/**
 * The drawing of one choice, of `not-sure`, of `none`; for a typed number, of whatever was typed.
 * The units are those of what is lettered into it.
 */
export type PictureOf = (choice: string, units?: UnitSystem) => Drawing;

/** Fetches the drawings of one question. */
export async function loadPictures(question: QuestionId): Promise<PictureOf> {
  if (isTyped(question)) {
    const { typed } = await import('./typed');
    return (choice) => typedIn(typed[question], choice);
  }
  const own = await loaders[question]();
  return (choice, units) => drawingIn(own, choice, units);
}
