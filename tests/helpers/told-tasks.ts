import type { TaskLog } from '$lib/answers/day-log';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { at } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

// What a crew told of its work, reckoned by hand. Invented.
export const job = tradeJob([{}, {}]);
export const task = (
  step: StepId,
  zone: string | null,
  hours: readonly [number, number, number] | null,
  more: object = {},
): Task => {
  const reach = hours && { low: hours[0], typical: hours[1], high: hours[2] };
  return {
    ...{ step, zone, zones: zone === null ? ['z0', 'z1'] : [zone], tool: { tool: 'hand-tools' } },
    ...{ amount: null, shared: true, leaves: null },
    hours: reach && { running: reach, atTask: reach },
    labour: hours && { span: [hours[0], hours[2]], typical: hours[1], unit: 'h', working: [] },
    ...more,
  } as Task;
};
export type Told = readonly [string | null, StepId, TaskLog];
export const hour = (time: string) => Date.parse(at(4, time));
