import { isKnown, type Amount } from '$lib/plan/amount';
import type { FigureId } from '$shared/figures';

const behind = (amount: Amount): readonly FigureId[] =>
  isKnown(amount)
    ? [
        ...amount.working.flatMap(({ figure }) => figure ?? []),
        ...(amount.added ?? []).flatMap(behind),
      ]
    : [];

/** The figures that amounts were worked out with, each once. */
export const figuresBehind = (amounts: readonly Amount[]): readonly FigureId[] => [
  ...new Set(amounts.flatMap(behind)),
];
