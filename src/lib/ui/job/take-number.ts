import { parseMeasure, readQuantity, type NumberProblem } from '$lib/answers/parse-number';
import { numberMessages } from '$lib/words/en/numbers';
import { problemWords, spokenLimit } from '$lib/words/en/ui/typing';
import type { Say } from '$lib/words/types';
import { rangeOf, type FigureId } from '$shared/figures';

/** What became of a typed text: taken, or what is wrong with it. An empty field takes the value away. */
export type Taken =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly problem: string };

/** Reads a length or an area within the limit that a figure names; comes back in the engine unit. */
export function takeMeasure(
  text: string,
  unit: 'mm' | 'm' | 'm2',
  limit: FigureId,
  say: Say,
): Taken {
  if (!text.trim()) return { ok: true, value: undefined };
  const parsed = parseMeasure(text, unit, rangeOf(limit), say.units);
  if (parsed.ok) return parsed;
  const spoken = parsed.limit === undefined ? '' : spokenLimit(unit, parsed.limit, say);
  return {
    ok: false,
    problem: problemWords(parsed.problem, { typed: text, limit: spoken, unit: say.unitOf(unit) }),
  };
}

/**
 * Reads a plain number from `least` to `most`.
 * @param factor how many of the typed unit one engine unit is
 */
export function takeNumber(
  text: string,
  { least, most, factor = 1, say }: { least: number; most: number; factor?: number; say: Say },
): Taken {
  if (!text.trim()) return { ok: true, value: undefined };
  const read = readQuantity(text);
  if (typeof read !== 'number')
    return {
      ok: false,
      problem: problemWords(read as NumberProblem, { typed: text, limit: '', unit: '' }),
    };
  const value = read / factor;
  if (value < 0) return { ok: false, problem: numberMessages.negative };
  if (value < least)
    return { ok: false, problem: numberMessages.tooSmall(say.number(least * factor)) };
  if (value > most)
    return { ok: false, problem: numberMessages.tooLarge(say.number(most * factor)) };
  return { ok: true, value };
}
