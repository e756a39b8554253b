import {
  choicesOf,
  questions,
  type Choice,
  type DepthQuestion,
  type ManyQuestion,
  type NumberQuestion,
  type OneQuestion,
  type QuestionId,
  type SiteQuestion,
  type ZoneQuestion,
} from './questions';

/**
 * An answer is what is still possible. Four states are kept apart:
 * not asked (the interview skips the question), not answered (the key is missing),
 * not sure (more than one choice is possible), and answered (one is).
 */

/** Choices still possible, never empty; one of them means the reader is sure. */
export type OneAnswer<C extends string> = readonly [C, ...C[]];

/** For "tick all that apply": what is there, and what may be there. */
export interface ManyAnswer<C extends string> {
  readonly yes: readonly C[];
  readonly maybe: readonly C[];
}

/** A number in the question's engine unit, or the reader does not know it. */
export type NumberAnswer = number | 'unknown';

/** A measured depth in mm, or the bands still possible. */
export type DepthAnswer = number | OneAnswer<Choice<'depth'>>;

export type Answer<Q extends QuestionId> = Q extends OneQuestion
  ? OneAnswer<Choice<Q>>
  : Q extends ManyQuestion
    ? ManyAnswer<Choice<Q>>
    : Q extends NumberQuestion
      ? NumberAnswer
      : Q extends DepthQuestion
        ? DepthAnswer
        : never;

export type Answers<Q extends QuestionId = QuestionId> = { readonly [K in Q]?: Answer<K> };
export type SiteAnswers = Answers<SiteQuestion>;
export type ZoneAnswers = Answers<ZoneQuestion>;

/** Everything that was ticked as there, or as perhaps there. */
export const mayBeThere = <C extends string>({ yes, maybe }: ManyAnswer<C>): readonly C[] => [
  ...yes,
  ...maybe,
];

/** Warning signs that are there, or may be; null where nobody was asked. */
export const warnedOf = ({
  warnings,
}: Pick<SiteAnswers, 'warnings'>): readonly Choice<'warnings'>[] | null =>
  warnings ? mayBeThere(warnings) : null;

/** "Not sure" with nothing ruled out. */
export function notSure<Q extends QuestionId>(id: Q): Answer<Q> {
  const { kind } = questions[id];
  const all = choicesOf(id);
  if (kind === 'number') return 'unknown' as Answer<Q>;
  if (kind === 'many') return { yes: [], maybe: all } as unknown as Answer<Q>;
  return all as unknown as Answer<Q>;
}

/** A single certain choice as an answer. */
export function sure<Q extends OneQuestion | DepthQuestion>(_id: Q, choice: Choice<Q>): Answer<Q> {
  return [choice] as unknown as Answer<Q>;
}

/** Whether an answer is this choice and can be no other. */
export const isSurely = (answer: readonly string[] | undefined, choice: string): boolean =>
  answer?.length === 1 && answer[0] === choice;

/** Whether an answer leaves more than one possibility. */
export function isOpen(answer: Answer<QuestionId>): boolean {
  if (answer === 'unknown') return true;
  if (typeof answer === 'number') return false;
  return 'yes' in answer ? answer.maybe.length > 0 : answer.length > 1;
}
