import { instantOf, spellsOf, stateOf, type LogState, type TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt } from '$lib/answers/task-log';
import type { Span } from '$lib/plan/amount';
import type { Plan } from '$lib/plan/plan';
import { hoursBetween } from '$lib/plan/spent';
import type { Task } from '$lib/plan/tasks';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';

/** One step of a day in the zones in which it lies there. */
interface LogRow {
  readonly step: StepId;
  readonly tasks: readonly Task[];
  /** As many as the plan has at it. */
  readonly people: number;
}

/** The steps that lie on some days, in the order of the plan. */
export function rowsOn({ schedule, steps }: Plan, [first, last]: Span): LogRow[] {
  const rows = new Map<StepId, LogRow>();
  for (const { task, people, stretches } of schedule.placed) {
    if (!stretches.some(({ day }) => day >= first && day <= last)) continue;
    const before = rows.get(task.step);
    rows.set(task.step, {
      step: task.step,
      tasks: [...(before?.tasks ?? []), task],
      people: Math.max(before?.people ?? 1, people.length),
    });
  }
  return steps.flatMap(({ id }) => rows.get(id) ?? []);
}

/** What several tasks are together: one goes on where any does, and all have to be done. */
export function stateOfAll(job: Job, tasks: readonly Task[]): LogState {
  const states = tasks.map((task) => stateOf(logAt(job, task)));
  if (states.every((state) => state === 'done')) return 'done';
  if (states.includes('running')) return 'running';
  return states.some((state) => state !== 'open') ? 'stopped' : 'open';
}

/** Whether what goes on has gone on for so long that its stop was forgotten (figure `log.longest`). */
export const forgotten = (log: TaskLog, now: number): boolean =>
  spellsOf(log).some(
    ({ from, to }) =>
      to === undefined && hoursBetween(instantOf(from), now) > valueOf('log.longest'),
  );
