import { isKnown, type Amount } from '$lib/plan/amount';
import type { FigureId } from '$shared/figures';

/** The figures that amounts were worked out with, each once. */
export const figuresBehind = (amounts: readonly Amount[]): readonly FigureId[] => [
  ...new Set(
    amounts.flatMap((amount) =>
      isKnown(amount) ? amount.working.flatMap(({ figure }) => figure ?? []) : [],
    ),
  ),
];
