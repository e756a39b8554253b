import type { StepId } from '$shared/methods';
import { stepsAfter } from './after';
import { stepsBefore } from './before';
import { coveringSteps } from './cover';
import { crackSteps } from './cracks';
import { mainSteps } from './main';
import { steelSteps } from './steel';
import { workOrder, type Situation, type StepReason, type Work } from './work';

/** In the order in which the reasons of one step are told. */
const parts = [stepsBefore, mainSteps, crackSteps, steelSteps, stepsAfter, coveringSteps];

/** All the reasons a step can have, in the order in which they are told. */
export const reasonsFor = (id: StepId): readonly StepReason[] =>
  parts.flatMap((part) => part[id] ?? []);

const steps = workOrder.map((id) => ({ id, reasons: reasonsFor(id) }));

/** All the work a zone calls for when the method is settled, whatever may still hold it up. */
export function workFor(situation: Situation): Work {
  const work: Work = {};
  for (const { id, reasons } of steps) {
    const why = [];
    for (const reason of reasons) {
      const found = reason(situation);
      if (found) why.push(found);
    }
    if (why.length) work[id] = why;
  }
  return work;
}
