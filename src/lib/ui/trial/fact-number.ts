import { readNumber, showNumber, type NumberField } from '$lib/answers/parse-number';
import type { Wrong } from '$lib/ui/job/take-number';
import { numberMessages } from '$words/numbers';
import type { Say } from '$lib/words/types';
import { figures, rangeOf, type FigureId } from '$shared/figures';

export type FactField = Pick<NumberField, 'unit' | 'units' | 'factor'> & {
  /** What is taken seriously. */
  readonly limit: FigureId;
};

const fieldOf = ({ limit, ...field }: FactField): NumberField => ({
  ...field,
  range: rangeOf(limit),
});

/** A number typed to see what follows from it; `value` is undefined where the field is emptied. */
export function takeFact(
  text: string,
  field: FactField,
  say: Say,
): Wrong | { readonly ok: true; readonly value: number | undefined } {
  const read = readNumber(text, fieldOf(field));
  if (read.ok) return { ok: true, value: read.value };
  if (read.problem === 'empty') return { ok: true, value: undefined };
  const { unit } = figures[field.limit];
  const [low, high] = rangeOf(field.limit);
  const limit = (value: number) =>
    unit === 'MPa' ? say.pressure(value) : say.between(unit, value, value);
  const problem = read.ways
    ? numberMessages.twoWays(text)
    : read.problem === 'too-small'
      ? numberMessages.tooSmall(limit(low))
      : read.problem === 'too-large'
        ? numberMessages.tooLarge(limit(high))
        : read.problem === 'negative'
          ? numberMessages.negative
          : numberMessages.notNumber(text);
  return { problem, ...(read.ways && { ways: read.ways }) };
}

/** A value in such a field, three digits at the most. */
export const showFact = (value: number, field: FactField): string =>
  showNumber(Number(value.toPrecision(3)), fieldOf(field));
