import type { FigureId } from './figures';
import lookedFor from './looked-for.json';

/** What is asked of every method. */
export const aspects = ['reach', 'profile', 'dust', 'noise', 'vibration', 'rate'] as const;
export type Aspect = (typeof aspects)[number];

/** What was found in print, and, where it is not enough, where it was looked for. */
export interface LookedFor {
  readonly figures?: readonly FigureId[];
  /** Words tried and what they gave, so that nobody looks in vain the same way. */
  readonly looked?: string;
}

/** By method (or other work), then by aspect. Last looked: November 2026, in stored copies. */
export const looked = lookedFor as Readonly<Record<string, unknown>> as Readonly<
  Record<string, Readonly<Partial<Record<Aspect, LookedFor>>>>
>;
