import { rateFigureOf } from '$lib/plan/hours';
import type { FigureId } from '$shared/figures';
import { stepIds, type StepId } from '$shared/methods';

/** The step a rate is of; the first one where several share it. */
export const rateSteps: Readonly<Partial<Record<FigureId, StepId>>> = Object.fromEntries(
  [...stepIds].reverse().flatMap((step) => {
    const figure = rateFigureOf(step);
    return figure ? [[figure, step]] : [];
  }),
);
