import { standingOf } from '$lib/advice/standing';
import { furtherOf } from './further';

/** What takes longer to work out than a tap may wait. */
export const thoughts = { further: furtherOf, standing: standingOf } as const;

export type Thought = keyof typeof thoughts;
export type Asked<T extends Thought> = Parameters<(typeof thoughts)[T]>;
export type Found<T extends Thought> = ReturnType<(typeof thoughts)[T]>;
/** What the worker is asked. */
export interface Question<T extends Thought = Thought> {
  readonly thought: T;
  readonly asked: Asked<T>;
}

export const thinkOf = <T extends Thought>({ thought, asked }: Question<T>): Found<T> =>
  (thoughts[thought] as unknown as (...asked: Asked<T>) => Found<T>)(...asked);
