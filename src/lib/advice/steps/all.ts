import { isMethod, type StepId } from '$shared/methods';
import { stepsAfter } from './after';
import { stepsBefore } from './before';
import { coveringSteps } from './cover';
import { crackSteps } from './cracks';
import { mainSteps } from './main';
import { steelSteps } from './steel';
import type { Reason } from '$lib/advice/types';
import { uses, workOrder, type Situation, type StepReason, type Work } from './work';

/** In the order in which the reasons of one step are told. */
const parts = [stepsBefore, mainSteps, crackSteps, steelSteps, stepsAfter, coveringSteps];

const reasonsOf = (id: StepId): readonly StepReason[] => parts.flatMap((part) => part[id] ?? []);

/** A step that is a method is done only where that is worked with; any other where a reason says so. */
const isLeftOut = (id: StepId, situation: Situation): boolean =>
  isMethod(id) && !uses(situation, id);

/** All the reasons a step can have, in the order in which they are told. */
export const reasonsFor = (id: StepId): readonly StepReason[] =>
  reasonsOf(id).map(
    (reason): StepReason =>
      (situation) =>
        !isLeftOut(id, situation) && reason(situation),
  );

const steps = workOrder.map((id) => ({ id, reasons: reasonsOf(id) }));

/** All the work a zone calls for when the method is settled, in order, whatever may still hold it up. */
export function workFor(situation: Situation): Work {
  const work: { id: StepId; why: readonly Reason[] }[] = [];
  for (const { id, reasons } of steps) {
    if (isLeftOut(id, situation)) continue;
    let why: Reason[] | null = null;
    for (const reason of reasons) {
      const found = reason(situation);
      if (found) (why ??= []).push(found);
    }
    if (why) work.push({ id, why });
  }
  return work;
}

// A set of steps is a number: bit i is the i-th of the order of work, so there is room for 32.
if (steps.length > 32) throw new Error('More steps than a set of bits holds.');

/** The steps a zone calls for, as a set of bits. */
export function stepsCalled(situation: Situation): number {
  let set = 0;
  steps.forEach(({ id, reasons }, place) => {
    if (!isLeftOut(id, situation) && reasons.some((reason) => reason(situation))) set |= 1 << place;
  });
  return set;
}
