import { rangeOf, type FigureId } from '$shared/figures';
import type { ShiftTask, WorkerDay } from './types';

export const shiftProblemIds = [
  'not-a-number',
  'level-outside',
  'vibration-outside',
  'wheel-outside',
  'hours-negative',
  'hours-over-a-day',
  'hours-wrong-way-round',
  'day-too-long',
  'crew-outside',
] as const;
export type ShiftProblemId = (typeof shiftProblemIds)[number];

/** Something wrong with what was typed, and where. The caller keeps its last good result. */
export interface ShiftProblem {
  readonly problem: ShiftProblemId;
  /** Path of the field in the input, such as `workers[0].tasks[2].ownLevel`. */
  readonly field: string;
  /** What was found there. */
  readonly got: number;
  /** The figure that says what was expected; absent where no range is to blame. */
  readonly limit?: FigureId;
}

const numberLimits = [
  ['ownLevel', 'level-outside', 'limit.noise-level'],
  ['ownVibration', 'vibration-outside', 'limit.vibration'],
  ['wheel', 'wheel-outside', 'limit.wheel'],
] as const;

/** One number against its range: what is wrong with it, if anything. */
function outside(
  got: number,
  field: string,
  problem: ShiftProblemId,
  limit: FigureId,
): ShiftProblem[] {
  if (!Number.isFinite(got)) return [{ problem: 'not-a-number', field, got, limit }];
  const [least, most] = rangeOf(limit);
  return got < least || got > most ? [{ problem, field, got, limit }] : [];
}

function hoursProblems(task: ShiftTask, path: string): ShiftProblem[] {
  const found = task.hours.flatMap((hours, end): ShiftProblem[] => {
    const field = `${path}.hours[${String(end)}]`;
    const problem = hours < 0 ? 'hours-negative' : 'hours-over-a-day';
    return outside(hours, field, problem, 'limit.exposure-hours');
  });
  const [least, most] = task.hours;
  return found.length || least <= most
    ? found
    : [{ problem: 'hours-wrong-way-round', field: `${path}.hours`, got: least }];
}

function taskProblems(task: ShiftTask, path: string): ShiftProblem[] {
  const numbers = numberLimits.flatMap(([name, problem, limit]): ShiftProblem[] => {
    const got = task[name];
    return got === undefined ? [] : outside(got, `${path}.${name}`, problem, limit);
  });
  return [...hoursProblems(task, path), ...numbers];
}

/** A day's work against the 24 h it must fit into, at its fewest hours. */
function dayProblem(worker: WorkerDay, path: string): ShiftProblem[] {
  const limit: FigureId = 'limit.exposure-hours';
  const got = worker.tasks.reduce((sum, task) => sum + task.hours[0], 0);
  return got > rangeOf(limit)[1]
    ? [{ problem: 'day-too-long', field: `${path}.tasks`, got, limit }]
    : [];
}

/** Everything wrong with the numbers of a day, in the order of the input; empty when it can be reckoned. */
export function shiftProblems(workers: readonly WorkerDay[], crew?: number): ShiftProblem[] {
  const found = workers.flatMap((worker, index) => {
    const path = `workers[${String(index)}]`;
    const inTasks = worker.tasks.flatMap((task, at) =>
      taskProblems(task, `${path}.tasks[${String(at)}]`),
    );
    return inTasks.length ? inTasks : dayProblem(worker, path);
  });
  return crew === undefined ? found : [...found, ...crewProblems(crew)];
}

/** The people there are: a whole number within its range. */
function crewProblems(crew: number): ShiftProblem[] {
  const limit: FigureId = 'limit.crew';
  const found = outside(crew, 'crew', 'crew-outside', limit);
  if (found.length || Number.isInteger(crew)) return found;
  return [{ problem: 'crew-outside', field: 'crew', got: crew, limit }];
}
