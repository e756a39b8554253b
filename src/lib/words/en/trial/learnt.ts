import { lowered } from '$lib/words/by-language';
import { isKnown, type Term } from '$lib/plan/amount';
import type { Plan } from '$lib/plan/plan';
import { methodWords } from '$words/methods';
import type { Say } from '$lib/words/types';
import type { Unit } from '$shared/types';
import { methodIds, type MethodId, type StepId } from '$shared/methods';
import { fromPatchLine, triedWords } from './tried';

const isMethod = (step: StepId): step is MethodId =>
  (methodIds as readonly string[]).includes(step);

/** An estimate has two digits that mean something. */
const two = (value: number): number => Number(value.toPrecision(2));

/** A learnt range, in the reader's units. */
export const rateWords = (
  { low, high, unit }: { readonly low: number; readonly high: number; readonly unit: Unit },
  say: Say,
): string => say.between(unit, two(low), two(high));

/** How many passes the plan reckons with; empty where it is one. */
export function passWords(working: readonly Term[], say: Say): string {
  const term = working.find(({ what, fromPatch }) => fromPatch && what === 'passes');
  if (!term || term.span[1] <= 1) return '';
  const [low, high] = term.span.map(two) as [number, number];
  return triedWords.times(say.ends(say.number(low), say.number(high)));
}

/** A line for every zone whose rate or passes are learnt from its own test patches. */
export function fromPatchLines(plan: Plan, say: Say, nameOf: (zone: string) => string): string[] {
  const methods = methodWords(say);
  return plan.tasks.flatMap(({ labour, step, zone }) => {
    if (!labour || !isKnown(labour) || zone === null || !isMethod(step)) return [];
    const passes = passWords(labour.working, say);
    const term = labour.working.find(({ what, fromPatch }) => fromPatch && what === 'rate');
    const rate = term
      ? rateWords({ low: term.span[0], high: term.span[1], unit: term.unit }, say)
      : '';
    const learnt = triedWords.learntOf(rate, passes);
    return learnt ? [fromPatchLine(nameOf(zone), lowered(methods[step].name), learnt)] : [];
  });
}
