import type { Way } from '$lib/answers/number-text';
import { readNumber, type NumberField, type Unread } from '$lib/answers/parse-number';
import { numberMessages } from '$words/numbers';
import { problemWords, spokenLimit } from '$words/ui/typing';
import type { Say } from '$lib/words/types';
import { rangeOf, type FigureId } from '$shared/figures';

/** What is wrong with a typed text, and the readings to choose from where it has two. */
export interface Wrong {
  readonly problem: string;
  readonly ways?: readonly Way[];
}
/** What became of a typed text: taken, or what is wrong with it. An empty field takes the value away. */
export type Taken =
  { readonly ok: true; readonly value: number | undefined } | ({ readonly ok: false } & Wrong);

/** What the field of a length or an area takes, within the limit that a figure names. */
export const measureField = (
  unit: 'mm' | 'm' | 'm2' | 'MPa',
  limit: FigureId,
  { units }: Say,
): NumberField => ({ unit, range: rangeOf(limit), units });

/** Reads what was typed in a field; comes back in the engine unit. */
export function take(text: string, field: NumberField, say: Say): Taken {
  if (!text.trim()) return { ok: true, value: undefined };
  const read = readNumber(text, field);
  return read.ok
    ? read
    : {
        ok: false,
        problem: wordsOf(read, text, field, say),
        ...(read.ways && { ways: read.ways }),
      };
}

/** Less than this is told as nothing. */
const nothing = 0.001;

function wordsOf({ problem, limit }: Unread, typed: string, field: NumberField, say: Say): string {
  const { unit, factor = 1 } = field;
  if (unit !== 'plain') {
    const spoken = limit === undefined ? '' : spokenLimit(unit, limit, say);
    return problemWords(problem, { typed, limit: spoken, unit: say.unitOf(unit as 'mm') });
  }
  const shown = (limit ?? 0) * factor;
  if (problem === 'too-small' && shown > 0 && shown < nothing) return numberMessages.aboveZero;
  return problemWords(problem, { typed, limit: say.number(shown), unit: '' });
}

/** What a field of plain numbers takes. */
export interface PlainField {
  readonly least: number;
  readonly most: number;
  /** How many of the typed unit one engine unit is. */
  readonly factor?: number;
  readonly whole?: boolean;
}
export const plainField = ({ least, most, ...more }: PlainField): NumberField => ({
  unit: 'plain',
  range: [least, most],
  units: 'metric',
  ...more,
});

/** Reads a plain number from `least` to `most`. */
export const takeNumber = (text: string, { say, ...field }: PlainField & { say: Say }): Taken =>
  take(text, plainField(field), say);
