import type { UnitSystem } from '$lib/answers/units';
import type { Drawing } from '$lib/drawing/mark';
import { air } from '$lib/drawing/motif/concrete';

/** How a choice is drawn; the units are those of what is lettered into it. */
export type Drawn = (units: UnitSystem) => Drawing;

/** Every possibility kept open: a slab not drawn in yet, and a question over it. */
export const notSure = (): Drawing => [
  ...air,
  ['dashed', 'M10 46H110V64H10z'],
  ['heavy', 'M50 16C51 7 69 6 70 16C70.5 22 60 22.5 60 31'],
  ['solid', 'M57.6 38a2.4 2.4 0 1 0 4.8 0a2.4 2.4 0 1 0-4.8 0z'],
];

/** None of what is listed: sound concrete, with nothing on it and nothing wrong. */
export const none = (): Drawing => [
  ...air,
  ['body', 'M6 42H114V62H6z'],
  ['ink', 'M6 40.5V63.5M114 40.5V63.5M4 62H116'],
  ['heavy', 'M4 42H116'],
  ['ink', 'M48 24a12 12 0 1 0 24 0a12 12 0 1 0-24 0zM51.5 32.5 68.5 15.5'],
];

/**
 * One drawing among those of a question. Beside its choices there are `not-sure` (also `unknown`)
 * and `none`, of a list where nothing applies.
 */
export const drawingIn = (
  own: Readonly<Record<string, Drawn>>,
  choice: string,
  units: UnitSystem = 'metric',
): Drawing => (own[choice] ?? (choice === 'none' ? none : notSure))(units);

/** The same where a number is typed: the drawing of what is measured, whatever was typed. */
export const typedIn = (own: () => Drawing, choice: string): Drawing =>
  (choice === 'not-sure' ? notSure : choice === 'none' ? none : own)();
