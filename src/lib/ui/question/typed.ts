import {
  parseNumber,
  questionField,
  showNumber,
  type TypedQuestion,
} from '$lib/answers/parse-number';
import { questions } from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import { problemWords, spokenLimit } from '$words/ui/typing';
import type { Say } from '$lib/words/types';
import type { Draft, Drafted, NumberFrom } from './draft';

/** The number of a draft, or what is wrong with it. */
export const numberFrom: NumberFrom = (question, draft, thickness) => {
  if (draft.typed) {
    const parsed = parseNumber(question, draft.typed.text, draft.typed.units, thickness);
    return parsed.ok ? { ok: true, answer: parsed.value } : parsed;
  }
  if (draft.value === null) return { ok: false, problem: 'empty' };
  // An answer taken over as it is still has to fit a thickness changed since.
  const whole = question === 'depth' && thickness !== 'unknown' && draft.value > thickness;
  return whole
    ? { ok: false, problem: 'deeper-than-slab', limit: thickness }
    : { ok: true, answer: draft.value };
};

/** What the field shows: what was typed, or the number in the reader's units. */
export function fieldText(question: TypedQuestion, draft: Draft, units: UnitSystem): string {
  const { typed, value } = draft;
  const shown = (of: number) => showNumber(of, questionField(question, units));
  if (!typed) return value === null ? '' : shown(value);
  if (typed.units === units) return typed.text;
  const parsed = parseNumber(question, typed.text, typed.units);
  return parsed.ok ? shown(parsed.value) : typed.text;
}

/** What is wrong with the number of a draft, in words. */
export function numberTrouble(
  question: TypedQuestion,
  draft: Draft,
  { problem, limit }: Extract<Drafted, { readonly ok: false }> & { readonly limit?: number },
  unitName: string,
  say: Say,
): string {
  if (problem === 'nothing-picked') return '';
  return problemWords(problem, {
    typed: fieldText(question, draft, say.units),
    limit: limit === undefined ? '' : spokenLimit(questions[question].unit, limit, say),
    unit: unitName,
  });
}
