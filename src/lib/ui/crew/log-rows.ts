import { instantOf, spellsOf, stateOf, type LogState, type TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { keyText, logAt, type TaskKey } from '$lib/answers/task-log';
import type { Span } from '$lib/plan/amount';
import { untimedOn } from '$lib/plan/day-rows';
import type { Plan, PlannedZone } from '$lib/plan/plan';
import { mustWait, waitsAt } from '$lib/plan/waiting';
import { hoursBetween, type LogFault, type LogFaultId } from '$lib/plan/spent';
import type { Task } from '$lib/plan/tasks';
import { valueOf } from '$shared/figures';
import type { StepThere } from '$lib/safety/task-views';
import type { StepId } from '$shared/methods';

/** One step of a day in the zones in which it lies there. */
export interface LogRow {
  readonly step: StepId;
  readonly tasks: readonly Task[];
  /** As many as the plan has at it. */
  readonly people: number;
  /** Zones in which nobody may begin it yet; empty where nothing stands before it. */
  readonly held: readonly string[];
}

/** Zones that wait in which the work was begun all the same: whoever began it said that they are cleared. */
const begunThere = (plan: Plan): Set<string> => {
  const waits = mustWait(plan);
  const told = plan.soFar?.told;
  return new Set(
    plan.tasks.flatMap((task) =>
      waits(task) && (told?.get(task)?.spent.state ?? 'open') !== 'open' ? task.zones : [],
    ),
  );
};

/**
 * The steps that lie on some days, in the order of the plan. What waits to be cleared in some zones
 * is a row of its own: it is planned for, and no work yet.
 * @param cleared zones of which somebody says that what they waited for is done
 */
export function rowsOn(plan: Plan, [first, last]: Span, cleared: readonly string[] = []): LogRow[] {
  const { schedule, steps } = plan;
  const waiting = mustWait(plan);
  const begun = begunThere(plan);
  const may = (zone: string) => cleared.includes(zone) || begun.has(zone);
  const waits = (task: Task) => waiting(task) && !task.zones.every(may);
  const rows = new Map<string, LogRow>();
  const days = Array.from({ length: last - first + 1 }, (_, at) => first + at);
  for (const placed of schedule.placed) {
    const { task, people, stretches } = placed;
    const timed = stretches.some(({ day }) => day >= first && day <= last);
    if (!timed && !days.some((day) => untimedOn(placed, day))) continue;
    const held = waits(task) ? task.zones : [];
    const key = `${task.step} ${held.length ? 'held' : 'free'}`;
    const before = rows.get(key);
    rows.set(key, {
      step: task.step,
      tasks: [...(before?.tasks ?? []), task],
      people: Math.max(before?.people ?? 1, people.length),
      held: [...new Set([...(before?.held ?? []), ...held])],
    });
  }
  return steps.flatMap(({ id }) =>
    ['free', 'held'].flatMap((kind) => rows.get(`${id} ${kind}`) ?? []),
  );
}

/** What must be cleared before some rows are begun, each with the zones that wait for it and their steps. */
export function heldBy(
  plan: Plan,
  rows: readonly LogRow[],
  whatOf: (zone: PlannedZone) => string,
): {
  readonly what: string;
  readonly zones: readonly string[];
  readonly steps: readonly StepId[];
}[] {
  const found = new Map<string, string[]>();
  for (const zone of plan.zones)
    if (rows.some(({ held }) => held.includes(zone.id)))
      found.set(whatOf(zone), [...(found.get(whatOf(zone)) ?? []), zone.id]);
  return [...found].map(([what, zones]) => ({
    what,
    zones,
    steps: rows.flatMap(({ step, held }) =>
      zones.some((zone) => held.includes(zone)) ? [step] : [],
    ),
  }));
}

/**
 * Where each step is done on some days, in which of these zones nobody may begin yet, and with what
 * tool of what class.
 * @param nameOf the name of a zone
 */
export function thereOn(
  plan: Plan,
  days: Span,
  nameOf: (zone: string) => string,
): (step: StepId) => Required<StepThere> {
  const rows = rowsOn(plan, days);
  const waitsThere = waitsAt(plan);
  const waits = mustWait(plan);
  return (id) => {
    const tasks = rows.flatMap(({ step, tasks: some }) => (step === id ? some : []));
    const all = tasks.flatMap(({ zones }) => zones);
    const there = plan.zones.map(({ id: zone }) => zone).filter((zone) => all.includes(zone));
    return {
      zones: there.filter((zone) => !waitsThere(id, zone)).map(nameOf),
      waits: there.filter((zone) => waitsThere(id, zone)).map(nameOf),
      tooling: tasks.filter((task) => !waits(task)).map(({ tool }) => tool),
    };
  };
}

/** Steps begun on those days with hours that nobody has said, where they may be begun. */
export const untimedSteps = (plan: Plan, [first, last]: Span): StepId[] => [
  ...new Set(
    plan.dayRows.flatMap(({ from, to, untimed, waiting }) =>
      from <= last && to >= first ? untimed.filter((step) => !waiting.includes(step)) : [],
    ),
  ),
];

/** What a row's buttons are found by on the page. */
export const logId = (tasks: readonly TaskKey[]): string =>
  `log-${tasks.map(keyText).join()}`.replace(/[^\w-]+/g, '_');

/** Faults of these tasks' times, each once: as they are counted, or times still to come. */
export function faultsOf(
  tasks: readonly Task[],
  logs: readonly TaskLog[],
  faults: readonly LogFault[],
  now: number,
): (LogFaultId | 'to-come')[] {
  const counted = faults.flatMap(({ zone, step, fault }) =>
    tasks.some((task) => task.zone === zone && task.step === step) ? fault : [],
  );
  const toCome = logs.some((log) =>
    spellsOf(log).some(
      ({ from, to = from }) => Math.max(instantOf(from), instantOf(to)) > now + 60_000,
    ),
  );
  return [...new Set([...counted, ...(toCome ? (['to-come'] as const) : [])])];
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
