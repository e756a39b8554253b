import type { OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { leftOfDay, nextMorning, stretches, workingAt, type Clock, type Stretch } from './clock';
import { edgesAmong } from './order';
import type { Past } from './past';
import type { OrderRule } from './precedence';
import { leastShare, type Reach, type Task } from './tasks';

/** A task in its place. Hours from the start of work on day 1, nights and days off counted. */
export interface Placed {
  readonly task: Task;
  /** Who does it, counted from 0; nobody for what goes on by itself. */
  readonly people: readonly number[];
  readonly from: number;
  readonly to: number;
  readonly stretches: readonly Stretch[];
  /** When what is left has dried or hardened; absent where nothing has to. */
  readonly dries?: number;
}

/** Which end of every range is laid. */
export type End = keyof Reach;

/** Precedences that hold over all zones: water, dirt and dust of one zone reach the next. The others hold in a zone. */
export const everywhere: readonly OrderRule[] = [
  'safe-first',
  'wet-before-dry',
  'dust-at-one-go',
  'dust-before-water',
  'wash-last',
];
/** Done in one go where it fits a day: the day that a surface may lie open runs from here. */
const inOneGo: readonly StepId[] = ['last-clean'];
const roundOff = 1e-9;
/** More than any way to the end, h. */
const begunFirst = 1e9;

interface Node {
  readonly task: Task;
  readonly index: number;
  readonly work: number;
  readonly lasting: number;
  readonly wait: number;
  /** Places in the list that have to be done before it, in its own zones. */
  readonly after: readonly number[];
  /** The one its wait is counted from. */
  readonly dries: number | null;
  readonly machine: ToolId | null;
  tail: number;
}

/** A machine there is one of. */
const machineOf = ({ shared, tool }: Task): ToolId | null =>
  shared || tool.tool === 'hand-tools' ? null : tool.tool;

function nodesOf(tasks: readonly Task[], end: End, past: Past | null): Node[] {
  const last = new Map<string, number>();
  const placeOf = new Map<string, number>();
  return tasks.map((task, index): Node => {
    const after = [...new Set(task.zones.flatMap((zone) => last.get(zone) ?? []))];
    for (const zone of task.zones) {
      last.set(zone, index);
      placeOf.set(`${zone} ${task.step}`, index);
    }
    const waited = task.wait && placeOf.get(`${task.zones[0] ?? ''} ${task.wait.after}`);
    return {
      task,
      index,
      work: (past?.told.get(task)?.left ?? task.hours?.atTask)?.[end] ?? 0,
      lasting: task.lasting?.[end] ?? 0,
      wait: waited === undefined ? 0 : (task.wait?.hours[end] ?? 0),
      after,
      dries: waited ?? null,
      machine: machineOf(task),
      tail: 0,
    };
  });
}

/** The steps that have to be done in all zones before a step is begun in any. */
function barriersAmong(tasks: readonly Task[]): ReadonlyMap<StepId, readonly StepId[]> {
  const present = [...new Set(tasks.map(({ step }) => step))];
  const found = new Map<StepId, StepId[]>();
  for (const { before, after, why } of edgesAmong(present))
    if (everywhere.includes(why)) found.set(after, [...(found.get(after) ?? []), before]);
  return found;
}

/** Longest way to the end from each task: what it holds up. */
function tailsOf(nodes: readonly Node[], barriers: ReadonlyMap<StepId, readonly StepId[]>): void {
  const behind = new Map<StepId, number>();
  const own = new Float64Array(nodes.length);
  for (const node of nodes.toReversed()) {
    node.tail =
      node.work + node.lasting + Math.max(own[node.index] ?? 0, behind.get(node.task.step) ?? 0);
    for (const place of node.after) own[place] = Math.max(own[place] ?? 0, node.tail + node.wait);
    for (const step of barriers.get(node.task.step) ?? [])
      behind.set(step, Math.max(behind.get(step) ?? 0, node.tail));
  }
}

/**
 * Lays tasks over people and machines. At every moment at which somebody is free, what may begin
 * is begun, first what holds up the longest way behind it; work goes on the next morning where the
 * day ends; drying and curing run through nights and days off. Each machine there is one of is in
 * one place; hand work is shared by whoever is free.
 * It is a heuristic: the tests hold it against the true optimum of small jobs.
 */
export function layTasks(
  tasks: readonly Task[],
  people: number,
  clock: Clock,
  end: End,
  own?: OwnFigures,
  past: Past | null = null,
): Placed[] {
  const nodes = nodesOf(tasks, end, past);
  const barriers = barriersAmong(tasks);
  tailsOf(nodes, barriers);
  // What somebody is at goes on before anything else is begun.
  for (const node of nodes) if (past?.told.get(node.task)?.running) node.tail += begunFirst;
  const least = leastShare(own);
  const placed: (Placed | undefined)[] = Array.from({ length: nodes.length });
  const openOf = new Map<StepId, number>();
  const doneAt = new Map<StepId, number>();
  for (const { task } of nodes) openOf.set(task.step, (openOf.get(task.step) ?? 0) + 1);
  const free = Array.from({ length: people }, () => 0);
  const machines = new Map<ToolId, number>();
  const startOf = new Float64Array(nodes.length).fill(-1);
  // Only what has nothing open before it in its own zones can be begun: at most one task a zone.
  const following: number[][] = nodes.map(() => []);
  const openBefore = nodes.map(({ after, index }) => {
    for (const place of after) following[place]?.push(index);
    return after.length;
  });
  let freed: Node[] = [];
  const start = past?.from ?? 0;
  let now = workingAt(start, clock);

  const put = (node: Node, from: number, to: number, hands: number[], laid: Stretch[]): void => {
    const { task, index } = node;
    const behind = past?.told.get(task);
    placed[index] = {
      task,
      people: behind ? [...new Set([...behind.people, ...hands])] : hands,
      from: behind?.stretches[0]?.from ?? from,
      to,
      stretches: behind ? [...behind.stretches, ...laid] : laid,
      ...(node.lasting > 0 && { dries: to }),
    };
    openOf.set(task.step, (openOf.get(task.step) ?? 1) - 1);
    doneAt.set(task.step, Math.max(doneAt.get(task.step) ?? 0, to));
    for (const place of following[index] ?? []) {
      openBefore[place] = (openBefore[place] ?? 1) - 1;
      const next = nodes[place];
      if (next && openBefore[place] === 0 && !placed[place]) freed.push(next);
    }
  };
  /** Drops what has been placed, and takes in what that has freed. */
  const turn = (): void => {
    open = [...open.filter(({ index }) => !placed[index]), ...freed];
    freed = [];
  };
  /** The earliest a task may begin; null while something before it has no place yet. */
  const mayStart = ({ task, after, dries, wait }: Node): number | null => {
    let at = start;
    for (const place of after) {
      const before = placed[place];
      if (!before) return null;
      at = Math.max(at, before.to);
    }
    for (const step of barriers.get(task.step) ?? []) {
      if (openOf.get(step)) return null;
      at = Math.max(at, doneAt.get(step) ?? 0);
    }
    return dries === null ? at : Math.max(at, (placed[dries]?.to ?? 0) + wait);
  };

  for (const node of nodes) {
    const done = past?.told.get(node.task)?.done ?? null;
    if (done !== null) put(node, done, done, [], []);
  }
  let open = nodes.filter(({ index }) => !placed[index] && openBefore[index] === 0);
  freed = [];
  while (open.length) {
    const ready: Node[] = [];
    let next = Infinity;
    let moved = false;
    for (const node of open) {
      const { index, work, lasting } = node;
      if ((startOf[index] ?? -1) < 0) {
        const at = mayStart(node);
        if (at === null) continue;
        startOf[index] = at;
      }
      const at = startOf[index] ?? 0;
      if (work <= roundOff) {
        put(node, at, at + lasting, [], []);
        moved = true;
      } else if (at <= now + roundOff) ready.push(node);
      else next = Math.min(next, workingAt(at, clock));
    }
    if (moved) {
      turn();
      continue;
    }
    const idle = free.flatMap((until, person) => (until <= now + roundOff ? [person] : []));
    if (idle.length) ready.sort((one, other) => other.tail - one.tail || one.index - other.index);
    let waiting = ready.length;
    for (const node of ready) {
      if (!idle.length) break;
      const { task, work, machine } = node;
      if (machine === null || (machines.get(machine) ?? 0) <= now + roundOff) {
        const most = Math.max(1, Math.floor(work / least + roundOff));
        const hands = task.shared ? Math.min(most, Math.ceil(idle.length / waiting)) : 1;
        const each = work / hands;
        if (
          inOneGo.includes(task.step) &&
          each <= clock.hoursPerDay + roundOff &&
          each > leftOfDay(now, clock) + roundOff
        ) {
          startOf[node.index] = nextMorning(now, clock);
          next = Math.min(next, startOf[node.index] ?? Infinity);
        } else {
          const laid = stretches(now, each, clock);
          const to = laid.at(-1)?.to ?? now;
          const chosen = idle.splice(0, hands);
          for (const person of chosen) free[person] = to;
          if (machine !== null) machines.set(machine, to);
          put(node, now, to, chosen, laid);
          moved = true;
        }
      }
      waiting -= 1;
    }
    if (moved) turn();
    for (const until of [...free, ...machines.values()])
      if (until > now + roundOff) next = Math.min(next, workingAt(until, clock));
    if (!moved && next === Infinity) break;
    if (next < Infinity) now = Math.max(now, next);
  }
  return placed.flatMap((each) => each ?? []);
}
