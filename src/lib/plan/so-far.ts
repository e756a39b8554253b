import type { Job } from '$lib/answers/job';
import { isLogged } from '$lib/answers/task-log';
import type { Learnt } from '$lib/trial/learn';
import { valueOf, type OwnFigures } from '$shared/figures';
import { figureTerm, product, times, type Amount } from './amount';
import type { StepId } from '$shared/methods';
import { isBelieved, kindOf, paceOf, type Observed } from './pace';
import type { Plan } from './plan';
import { spentOn, type LogFault, type Spent } from './spent';
import { reachOf, type Reach, type Task } from './tasks';

/** A task about which something was told, as the rest of the plan reckons with it. */
export interface TaskSoFar {
  readonly spent: Spent;
  /** Hours at the task still to come; null where they are not known. */
  readonly left: Reach | null;
}

/** How far a job has come, and what that says of the rest. Hours are hours at the task. */
export interface SoFar {
  readonly told: ReadonlyMap<Task, TaskSoFar>;
  /** Tasks of the crew's own: those of which hours are known or somebody has told. */
  readonly tasks: number;
  readonly done: number;
  readonly running: number;
  /** All that has counted, of tasks that go on too. */
  readonly taken: number;
  /** How many times as long finished tasks took as they were reckoned; null while none tells. */
  readonly ratio: number | null;
  /** Finished tasks it comes from. */
  readonly counted: number;
  /** Finished ones so far off that they are not believed, and not among these. */
  readonly doubted: readonly Task[];
  /** Hours still to come. */
  readonly left: Reach;
  /** How many times as long they are reckoned to take for it; null where nothing is left. */
  readonly pace: Learnt | null;
  readonly faults: readonly LogFault[];
}

const none: Reach = { low: 0, typical: 0, high: 0 };
const each = (reach: Reach, of: (hours: number) => number): Reach => ({
  low: of(reach.low),
  typical: of(reach.typical),
  high: of(reach.high),
});
const added = (one: Reach, other: Reach): Reach => ({
  low: one.low + other.low,
  typical: one.typical + other.typical,
  high: one.high + other.high,
});

/** How many of a step's tasks are done, of how many; nothing of steps of which nobody has told. */
export function doneOf({ tasks, soFar }: Pick<Plan, 'tasks' | 'soFar'>, step: StepId) {
  const mine = tasks.filter((task) => task.step === step);
  const done = mine.filter((task) => soFar?.told.get(task)?.spent.state === 'done').length;
  return done ? { done, all: mine.length } : null;
}

/** What a finished task took, where that is told and was reckoned. */
function tookOf(task: Task, spent: Spent | undefined): { took: number; reckoned: number } | null {
  if (spent?.state !== 'done' || !spent.sure || !spent.pieces.length || !task.hours) return null;
  return { took: spent.hours, reckoned: task.hours.atTask.typical };
}

/**
 * Finished tasks as the pace reads them. Zones gone over in one go tell one thing together, not one
 * each. What was reckoned shorter than `pace.least` tells nothing, nor does what is not believed.
 */
function observedIn(told: ReadonlyMap<Task, Spent>): {
  observed: readonly Observed[];
  tasks: readonly Task[];
  doubted: readonly Task[];
} {
  const gone = new Map<string, { tasks: Task[]; took: number; reckoned: number }>();
  for (const [task, spent] of told) {
    const found = tookOf(task, spent);
    if (!found) continue;
    const key = JSON.stringify([task.step, spent.together ?? task.zone]);
    const before = gone.get(key) ?? { tasks: [], took: 0, reckoned: 0 };
    gone.set(key, {
      tasks: [...before.tasks, task],
      took: before.took + found.took,
      reckoned: before.reckoned + found.reckoned,
    });
  }
  const long = [...gone.values()].filter(({ reckoned }) => reckoned >= valueOf('pace.least'));
  const sure = long.filter(({ took, reckoned }) => isBelieved(took / reckoned));
  return {
    observed: sure.map(({ tasks: [first], took, reckoned }) => ({
      kind: kindOf((first as Task).step),
      ratio: took / reckoned,
    })),
    tasks: sure.flatMap(({ tasks }) => tasks),
    doubted: long.filter((each) => !sure.includes(each)).flatMap(({ tasks }) => tasks),
  };
}

/** A task as it was reckoned, at another pace. Its ends stay as far apart as the tables have them. */
function paced(task: Task, pace: number): Task {
  if (!task.hours || !task.labour) return task;
  const by = (hours: number) => hours * pace;
  return {
    ...task,
    hours: { running: each(task.hours.running, by), atTask: each(task.hours.atTask, by) },
    labour: times('h', task.labour, { what: 'pace', span: [pace, pace], unit: 'ratio' }),
  };
}

/** A finished task at the hours it took; where nobody has told them, as it was reckoned. */
function took(task: Task, { hours, pieces, sure }: Spent, own?: OwnFigures): Task {
  if (!pieces.length || !sure || !task.hours) return task;
  const usable = reachOf('crew.usable', own);
  return {
    ...task,
    hours: {
      running: each(usable, (share) => hours * share),
      atTask: { low: hours, typical: hours, high: hours },
    },
    labour: product('h', [
      { what: 'taken', span: [hours, hours], unit: 'h' },
      figureTerm('share', 'crew.usable', own),
    ]),
  };
}

/**
 * What is still to come of a task that was begun: what it is reckoned to take, less what it has
 * taken. Where that is used up, the least a task is shared out in (figure `share.step`).
 */
function partOf(
  task: Task,
  { hours }: Spent,
  own?: OwnFigures,
): { task: Task; left: Reach | null } {
  if (!task.hours) return { task, left: null };
  const least = valueOf('share.step', own);
  const left = each(task.hours.atTask, (all) => Math.max(all - hours, Math.min(all, least)));
  const atTask = each(left, (more) => more + hours);
  const usable = reachOf('crew.usable', own);
  const running = {
    low: atTask.low * usable.high,
    typical: atTask.typical * usable.typical,
    high: atTask.high * usable.low,
  };
  const labour: Amount = {
    span: [running.low, running.high],
    typical: running.typical,
    unit: 'h',
    working: [],
  };
  return { task: { ...task, hours: { running, atTask }, labour }, left };
}

/**
 * The tasks of a job with what the crew has told of them: the finished at the hours they took, the
 * others at the pace that the finished ones teach. Without a word of the crew's, the very tasks given.
 */
export function withSoFar(
  tasks: readonly Task[],
  job: Job,
  own?: OwnFigures,
): { readonly tasks: readonly Task[]; readonly soFar: SoFar | null } {
  if (!isLogged(job)) return { tasks, soFar: null };
  const { spent, faults } = spentOn(tasks, job);
  if (!spent.size) return { tasks, soFar: null };
  const { observed, tasks: counted, doubted } = observedIn(spent);
  const paceFor = paceOf(observed);
  const told = new Map<Task, TaskSoFar>();
  let [left, asReckoned] = [none, 0];
  let pace: Learnt = { low: 0, typical: 0, high: 0 };
  let taken = 0;
  const next = tasks.map((task): Task => {
    const known = spent.get(task);
    taken += known?.hours ?? 0;
    if (known?.state === 'done') {
      const done = took(task, known, own);
      told.set(done, { spent: known, left: none });
      return done;
    }
    const kind = paceFor(kindOf(task.step));
    const slower = observed.length ? paced(task, kind.typical) : task;
    const { task: all, left: more } = known?.pieces.length
      ? partOf(slower, known, own)
      : { task: slower, left: slower.hours?.atTask ?? null };
    if (known) told.set(all, { spent: known, left: more });
    if (more) {
      left = added(left, more);
      const part = more.typical / kind.typical;
      asReckoned += part;
      pace = added(
        pace,
        each(kind, (by) => by * part),
      );
    }
    return all;
  });
  const finished = counted.flatMap((task) => tookOf(task, spent.get(task)) ?? []);
  const sum = (of: 'took' | 'reckoned') => finished.reduce((total, one) => total + one[of], 0);
  const states = [...spent.values()].map(({ state }) => state);
  return {
    tasks: next,
    soFar: {
      told,
      tasks: tasks.filter((task) => task.hours || spent.has(task)).length,
      done: states.filter((state) => state === 'done').length,
      running: states.filter((state) => state === 'running').length,
      taken,
      ratio: finished.length ? sum('took') / sum('reckoned') : null,
      counted: counted.length,
      doubted,
      left,
      pace: asReckoned > 0 && observed.length ? each(pace, (by) => by / asReckoned) : null,
      faults,
    },
  };
}
