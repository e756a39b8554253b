import type { Answer, NumberAnswer } from '$lib/answers/answers';
import { notSure } from '$lib/answers/answers';
import type { TypedQuestion, Unread } from '$lib/answers/parse-number';
import { choicesOf, questions, type QuestionId } from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import { unsureChoice } from './unsure-choice';

/** What was typed, and in which units; kept as it is when the units are switched. */
export interface Typed {
  readonly text: string;
  readonly units: UnitSystem;
}

/** An answer while it is being given. */
export interface Draft {
  readonly way: 'choices' | 'number' | 'none' | 'unsure' | null;
  readonly picked: readonly string[];
  readonly maybe: readonly string[];
  /** Whether more than one choice may be ticked. */
  readonly several: boolean;
  /** A number as it stands in the answer; untouched by switching units. */
  readonly value: number | null;
  readonly typed: Typed | null;
}

export const emptyDraft: Draft = {
  way: null,
  picked: [],
  maybe: [],
  several: false,
  value: null,
  typed: null,
};

/** Whether a draft says something of what is there. */
export const saysSomething = ({ way, picked, maybe, value, typed }: Draft): boolean =>
  way === 'none' ||
  way === 'unsure' ||
  picked.length + maybe.length > 0 ||
  value !== null ||
  !!typed?.text.trim();

/** The draft that stands for an answer given before. */
export function draftOf(question: QuestionId, answer: Answer<QuestionId> | undefined): Draft {
  const unsure = unsureChoice(question);
  if (unsure && !(Array.isArray(answer) && answer.length === 1))
    return { ...emptyDraft, way: 'choices', picked: [unsure] };
  if (answer === undefined) return emptyDraft;
  if (typeof answer === 'number') return { ...emptyDraft, way: 'number', value: answer };
  if (answer === 'unknown') return { ...emptyDraft, way: 'unsure' };
  const all = choicesOf(question).length;
  if ('yes' in answer) {
    const { yes, maybe } = answer;
    if (!yes.length && maybe.length === all) return { ...emptyDraft, way: 'unsure' };
    if (!yes.length && !maybe.length) return { ...emptyDraft, way: 'none' };
    return { ...emptyDraft, way: 'choices', picked: yes, maybe };
  }
  if (answer.length === all) return { ...emptyDraft, way: 'unsure' };
  return { ...emptyDraft, way: 'choices', picked: answer, several: answer.length > 1 };
}

export type Drafted =
  | { readonly ok: true; readonly answer: Answer<QuestionId> }
  | Unread
  | { readonly ok: false; readonly problem: 'nothing-picked' };

/** Reads a typed number; null for a question that takes none. */
export type NumberFrom = (
  question: TypedQuestion,
  draft: Draft,
  thickness: NumberAnswer,
) => Drafted;

/** The answer a draft comes to, or what is wrong with it. */
export function answerFrom(
  question: QuestionId,
  draft: Draft,
  numberFrom: NumberFrom | null,
  thickness: NumberAnswer = 'unknown',
): Drafted {
  const { kind } = questions[question];
  const nothing = { ok: false, problem: 'nothing-picked' } as const;
  if (draft.way === 'unsure') return { ok: true, answer: notSure(question) };
  if (draft.way === 'number' && numberFrom)
    return numberFrom(question as TypedQuestion, draft, thickness);
  if (kind === 'many') {
    if (draft.way === 'none') return { ok: true, answer: { yes: [], maybe: [] } };
    const { picked, maybe } = draft;
    if (!picked.length && !maybe.length) return nothing;
    const inOrder = (list: readonly string[]) =>
      choicesOf(question).filter((each) => list.includes(each));
    return { ok: true, answer: { yes: inOrder(picked), maybe: inOrder(maybe) } as never };
  }
  if (kind === 'number') return { ok: false, problem: 'empty' };
  const picked = choicesOf(question).filter((each) => draft.picked.includes(each));
  return picked.length ? { ok: true, answer: picked as never } : nothing;
}
