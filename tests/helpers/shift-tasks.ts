import type { CrewHazard } from '$lib/safety/crew-hazards';
import { safetyOf, type Safety } from '$lib/safety/safety-of';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import type { HazardId, StepId } from '$shared/methods';

/** Work of one person on a day, and the day of several, with nothing in it but what is named. */
export const at = (change: Partial<ShiftTask> = {}): ShiftTask => ({
  ...{ step: 'break-out', setting: 'open', hours: [1, 1], ...change },
});
export const shaking = (ownVibration: number, hours: number, change: Partial<ShiftTask> = {}) =>
  at({ hours: [hours, hours], ownVibration, ownVibrationFrom: 'measured', ...change });
export const day = (...people: readonly (readonly ShiftTask[])[]): Safety => {
  const workers = people.map((tasks, index) => ({ id: String(index + 1), tasks }));
  const result = safetyOf({ region: 'us', workers });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.safety;
};
export const brings = (hazard: HazardId, ...steps: StepId[]): CrewHazard => ({ hazard, steps });

/** Work that neither is heard nor shakes, but for what is named. */
export const task = (hours: number, change: Partial<ShiftTask> = {}) =>
  settleTask({
    ...{ step: 'break-out', setting: 'open', hours: [hours, hours], ownLevel: 60 },
    ...{ ownVibration: 0, ownVibrationFrom: 'measured', ...change },
  });
/** HSE ready reckoner: 2 a2 points an hour, 100 at the action value, 400 at the limit. */
export const settledShaking = (hours: number, ownVibration = 10, change: Partial<ShiftTask> = {}) =>
  task(hours, { ownVibration, ...change });
