import { adviseZone } from '$lib/advice/advise';
import { standingOf } from '$lib/advice/standing';
import type { SiteAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { furtherOf } from './further';

/** The advice itself; what would change it is thought about after. */
const adviceOf = (site: SiteAnswers, zone: TriedAnswers) =>
  adviseZone(site, zone, { margins: false });

/** What takes longer to work out than a tap may wait. */
export const thoughts = { advice: adviceOf, further: furtherOf, standing: standingOf } as const;

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
