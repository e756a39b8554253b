import type { StepId } from '$shared/methods';
import { dateOf, without, type DayLog, type Moment, type TaskLog } from './day-log';
import type { Job } from './job';

/** Which step where; the zone is null where the step is done once for the job. */
export interface TaskKey {
  readonly zone: string | null;
  readonly step: StepId;
}

export const keyText = ({ zone, step }: TaskKey): string => JSON.stringify([zone, step]);

/** What was told of a step; nothing while nobody has. */
export function logAt(job: Job, { zone, step }: TaskKey): TaskLog {
  const log = zone === null ? job.log : job.zones.find(({ id }) => id === zone)?.log;
  return log?.[step] ?? {};
}

/** A log with a step's part put in, or taken out where nothing is told of it. */
function put(all: DayLog = {}, step: StepId, log: TaskLog): DayLog {
  return Object.keys(log).length ? { ...all, [step]: log } : without(all, step);
}

/** The same with `log` set, or without it where nothing is told. */
const bearing = <T extends { readonly log?: DayLog }>(of: T, log: DayLog): T =>
  Object.keys(log).length ? { ...of, log } : (without({ ...of }, 'log') as T);

/** The job with another log of some steps. A zone that is not there takes none. */
export function withLogs(job: Job, logs: readonly (TaskKey & { readonly log: TaskLog })[]): Job {
  return logs.reduce<Job>((all, { zone, step, log }) => {
    if (zone === null) return bearing(all, put(all.log, step, log));
    const zones = all.zones.map((each) =>
      each.id === zone ? bearing(each, put(each.log, step, log)) : each,
    );
    return { ...all, zones };
  }, job);
}

/** The job without a word of the crew's. */
export const withoutLogs = (job: Job): Job =>
  bearing({ ...job, zones: job.zones.map((zone) => bearing(zone, {})) }, {});

/** Whether anything has been told of the work. */
export const isLogged = ({ log, zones }: Job): boolean => !!log || zones.some((zone) => zone.log);

/** What of a job tells of its days. */
type Told = Partial<Pick<Job, 'log' | 'zones'>>;

/** Every moment told, in no order. */
export const momentsOf = ({ log, zones = [] }: Told): Moment[] =>
  [log, ...zones.map((zone) => zone.log)].flatMap((each) =>
    Object.values(each ?? {}).flatMap(({ spells = {}, done }) => [
      ...Object.entries(spells).flatMap(([from, { to }]) => (to === undefined ? from : [from, to])),
      ...(done === undefined ? [] : [done]),
    ]),
  );

/** The first date told, on which work began; null while nothing has. */
export const beganOn = (job: Told): string | null => momentsOf(job).map(dateOf).sort()[0] ?? null;
