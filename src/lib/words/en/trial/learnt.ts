import { isKnown } from '$lib/plan/amount';
import type { Plan } from '$lib/plan/plan';
import { methodWords } from '$lib/words/en/methods';
import type { Say } from '$lib/words/types';
import type { Unit } from '$shared/types';
import { methodIds, type MethodId, type StepId } from '$shared/methods';
import { fromPatchLine } from './page';

const isMethod = (step: StepId): step is MethodId =>
  (methodIds as readonly string[]).includes(step);

/** An estimate has two digits that mean something. */
const two = (value: number): number => Number(value.toPrecision(2));

/** A learnt range, in the reader's units. */
export const rateWords = (
  { low, high, unit }: { readonly low: number; readonly high: number; readonly unit: Unit },
  say: Say,
): string => say.between(unit, two(low), two(high));

/** A line for every zone whose rate is learnt from its own test patches. */
export function fromPatchLines(plan: Plan, say: Say, nameOf: (zone: string) => string): string[] {
  const methods = methodWords(say);
  return plan.tasks.flatMap(({ labour, step, zone }) => {
    const term =
      labour && isKnown(labour) ? labour.working.find(({ fromPatch }) => fromPatch) : undefined;
    if (!term || zone === null || !isMethod(step)) return [];
    const [low, high] = term.span;
    const rate = rateWords({ low, high, unit: term.unit }, say);
    return [fromPatchLine(nameOf(zone), methods[step].name.toLowerCase(), rate)];
  });
}
