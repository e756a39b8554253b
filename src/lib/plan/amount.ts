import type { QuestionId } from '$lib/answers/questions';
import { figures, rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { Unit } from '$shared/types';

/** Something known only between two ends. Same unit at both. */
export type Span = readonly [number, number];

/** What a number in a working is: the words for it are in `words/`. */
export type TermId =
  | 'area'
  | 'patch-area'
  | 'rim-area'
  | 'depth'
  | 'depth-into-sound'
  | 'hollow-depth'
  | 'drawn-depth'
  | 'perimeter'
  | 'crack-length'
  | 'border-length'
  | 'bar-length'
  | 'bar-strip'
  | 'bar-room'
  | 'bar-depth'
  | 'groove-width'
  | 'groove-depth'
  | 'removed'
  | 'loose'
  | 'hole'
  | 'fill'
  | 'both-sides'
  | 'unit'
  | 'density'
  | 'bulking'
  | 'waste'
  | 'yield'
  | 'skip'
  | 'bag'
  | 'rate'
  | 'passes'
  | 'water'
  | 'patches'
  | 'zones'
  | 'hours'
  | 'taken'
  | 'pace'
  | 'share'
  | 'mass';

/** One factor of a working: multiplied in, or divided by. */
export interface Term {
  readonly what: TermId;
  readonly span: Span;
  /** Where in the span it usually lies; the middle when not given. */
  readonly typical?: number;
  readonly unit: Unit;
  readonly by?: 'times' | 'over';
  readonly figure?: FigureId;
  /** The figure after what the reader's own test patch measured. */
  readonly fromPatch?: true;
}

/** Patches told by the hollow area alone: at the least one square, at the most many spots and a rest. */
export interface Ground {
  readonly of: 'area' | 'perimeter';
  /** Hollow, m2. */
  readonly area: number;
  /** Past the damage, least and most, mm. */
  readonly past: Span;
  /** Of it in spots, m2, so many of them, each so long on a side, m. */
  readonly inSpots: number;
  readonly spots: number;
  readonly side: number;
  /** Times the patches are larger than the spots. */
  readonly times: number;
}

/** A number with its working, or what is missing to work it out. Never zero for want of knowing. */
export type Amount =
  | {
      readonly span: Span;
      /** Within the span; the middle when not given. */
      readonly typical?: number;
      readonly unit: Unit;
      readonly working: readonly Term[];
      /** What it was added up from, where that is not told zone by zone. */
      readonly added?: readonly Amount[];
      /** How the ground of patches nobody has drawn was worked out, at its two ends. */
      readonly ground?: Ground;
    }
  | { readonly missing: readonly QuestionId[]; readonly unit: Unit };

export const isKnown = (amount: Amount): amount is Extract<Amount, { span: Span }> =>
  'span' in amount;

/** The product of its terms, low with low; dividing by a range turns it round. */
export function product(unit: Unit, terms: readonly Term[]): Amount {
  let [low, typical, high] = [1, 1, 1];
  for (const term of terms) {
    const { span, by } = term;
    if (by === 'over')
      [low, typical, high] = [low / span[1], typical / typicalOf(term), high / span[0]];
    else [low, typical, high] = [low * span[0], typical * typicalOf(term), high * span[1]];
  }
  return { span: [low, high], typical, unit, working: terms };
}

/** What an amount, or a factor, usually is; always within its span. */
export const typicalOf = ({
  span: [low, high],
  typical = (low + high) / 2,
}: {
  readonly span: Span;
  readonly typical?: number;
}): number => Math.min(high, Math.max(low, typical));

/** A figure as a factor. */
export const figureTerm = (what: TermId, id: FigureId, own?: OwnFigures, by?: 'over'): Term => {
  const { typical, unit } = figures[id];
  return {
    what,
    span: rangeOf(id, own),
    ...(typical !== undefined && own?.[id] === undefined && { typical }),
    unit,
    figure: id,
    ...(by && { by }),
  };
};

/** Adds what is known; anything missing makes the sum missing, and says what. */
export function sum(unit: Unit, amounts: readonly Amount[]): Amount {
  const missing = [
    ...new Set(amounts.flatMap((amount) => (isKnown(amount) ? [] : amount.missing))),
  ];
  if (missing.length) return { missing, unit };
  const known = amounts.filter(isKnown);
  return {
    span: [
      known.reduce((total, { span }) => total + span[0], 0),
      known.reduce((total, { span }) => total + span[1], 0),
    ],
    typical: known.reduce((total, amount) => total + typicalOf(amount), 0),
    unit,
    // A sum shows its parts zone by zone; only a single part keeps its own working.
    working: [],
    ...(known.length === 1 && workingOf(known[0])),
  };
}

/** How an amount came about, whichever way that is told. */
const workingOf = (amount: Extract<Amount, { span: Span }> | undefined) =>
  amount && {
    working: amount.working,
    ...(amount.added && { added: amount.added }),
    ...(amount.ground && { ground: amount.ground }),
  };

/** The amount as one factor of what follows from it, where its own working was lost in a sum. */
export function asFactor(what: TermId, amount: Amount): Amount {
  if (!isKnown(amount) || amount.working.length) return amount;
  const { span, typical, unit } = amount;
  return { ...amount, working: [{ what, span, ...(typical !== undefined && { typical }), unit }] };
}

/** Multiplies an amount on, from what it comes to; what is missing stays missing. */
export function times(unit: Amount['unit'], amount: Amount, ...terms: Term[]): Amount {
  if (!isKnown(amount)) return { missing: amount.missing, unit };
  const factor = product(unit, terms);
  if (!isKnown(factor)) return factor;
  return {
    span: [amount.span[0] * factor.span[0], amount.span[1] * factor.span[1]],
    typical: typicalOf(amount) * typicalOf(factor),
    unit,
    working: [...amount.working, ...terms],
  };
}

/** One and the waste of a figure. */
export function wasteTerm(figure: FigureId, own?: OwnFigures): Term {
  const { span, ...term } = figureTerm('waste', figure, own);
  return {
    ...term,
    span: [1 + span[0], 1 + span[1]],
    typical: 1 + typicalOf({ span, ...term }),
    unit: 'ratio',
  };
}

/** Adds what arises; null where nothing does. */
export function together(unit: Amount['unit'], parts: readonly (Amount | null)[]): Amount | null {
  const there = parts.flatMap((part) => part ?? []);
  const [only] = there;
  if (there.length < 2) return only ?? null;
  const all = sum(unit, there);
  return isKnown(all) ? { ...all, added: there } : all;
}

/** Pieces are bought whole: both ends, and the usual, go up to the next. */
export function wholePieces(amount: Amount): Amount {
  if (!isKnown(amount)) return amount;
  // What arithmetic left a hair above a whole number is that number.
  const up = (value: number) => Math.max(0, Math.ceil(value - 1e-9));
  const [low, high] = amount.span;
  return { ...amount, span: [up(low), up(high)], typical: up(typicalOf(amount)) };
}
