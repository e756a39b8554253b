import { layTasks, type Placed } from '$lib/plan/schedule';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';

// Laid by hand: a day of 8 hours, one or two people. Day n begins at 24 (n - 1).
export const same = (value: number) => ({ low: value, typical: value, high: value });
export const task = (
  step: StepId,
  zone: string | null,
  hours: number | readonly [number, number, number] | null,
  more: object = {},
): Task => {
  const [low, typical, high] =
    typeof hours === 'number' ? [hours, hours, hours] : (hours ?? [0, 0, 0]);
  const at = { low, typical, high };
  return {
    ...{ step, zone, zones: zone === null ? ['a', 'b'] : [zone], tool: { tool: 'hand-tools' } },
    ...{ amount: null, labour: null, shared: false, leaves: null },
    hours: hours === null ? null : { running: at, atTask: at },
    ...more,
  } as Task;
};
export const tool = (id: ToolId, kg?: string) => ({ tool: { tool: id, ...(kg && { class: kg }) } });
export const clock = { hoursPerDay: 8, off: () => false };
export const lay = (
  tasks: readonly Task[],
  people = 1,
  end: 'low' | 'typical' | 'high' = 'typical',
) =>
  layTasks(tasks, people, clock, end).map(({ task: { step, zone }, people: who, from, to }) => [
    ...[`${step} ${zone ?? 'job'}`, who, from, to],
  ]);

export const placed = (
  of: Task,
  day: number,
  from: number,
  to: number,
  people: number[] = [0],
): Placed => ({
  ...{ task: of, people, from, to },
  stretches: [{ day, from, to }],
});
