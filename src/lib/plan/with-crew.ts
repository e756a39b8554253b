import type { Job } from '$lib/answers/job';
import { momentsOf } from '$lib/answers/task-log';
import { calendarOf } from './calendar';
import { clockOf } from './days';
import { pastOf } from './past';
import type { Plan } from './plan';
import { layTasks, type Placed } from './schedule';

/** The same work as a plan lays it with usual values, for another number of people. */
export function laidWith(
  { tasks, soFar }: Pick<Plan, 'tasks' | 'soFar'>,
  job: Job,
  people: number,
): readonly Placed[] {
  const clock = clockOf(calendarOf(job), job.own);
  const past = soFar && pastOf(soFar, momentsOf(job), people, clock.hoursPerDay);
  return layTasks(tasks, people, clock, 'typical', job.own, past);
}
