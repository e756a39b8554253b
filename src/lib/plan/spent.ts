import { instantOf, spellsOf, stateOf, type LogState, type Moment } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt, type TaskKey } from '$lib/answers/task-log';
import { valueOf } from '$shared/figures';
import type { Task } from './tasks';

/** What cannot be as it was told. It is said, at its place; what is wrong is not counted, the rest is. */
export type LogFaultId =
  /** It was stopped before it was started. */
  | 'stop-first'
  /** Nobody goes on for so long without a stop (figure `log.longest`). */
  | 'too-long'
  /** It began while another go at the same step went on; each hour counts once. */
  | 'overlap'
  /** The step is done, and this was never stopped. */
  | 'left-running';

export interface LogFault extends TaskKey {
  readonly fault: LogFaultId;
  /** The start of the go it is about. */
  readonly from: Moment;
}

/** A part of a go that counts for one task. */
export interface Piece {
  /** As it was told; the start of the go it is a part of. */
  readonly start: Moment;
  /** Milliseconds since 1970. */
  readonly from: number;
  readonly to: number;
  readonly people: number;
  readonly together: boolean;
}

/** What was told of one task. */
export interface Spent {
  readonly state: LogState;
  readonly pieces: readonly Piece[];
  /** Hours of one machine or one pair of hands, as the task is reckoned. */
  readonly hours: number;
  /** Whether everything told of it counts, so that its hours are what it took. */
  readonly sure: boolean;
  /** The start of a go over several zones, the first of them; null where it had none. */
  readonly together: Moment | null;
  /** The start of the go that goes on. */
  readonly open: Moment | null;
  readonly done: Moment | null;
}

const msPerHour = 3_600_000;
export const hoursBetween = (from: number, to: number): number => (to - from) / msPerHour;

/** What is wrong with a go by itself; null where nothing is. */
export function faultOf(
  { from, to }: { readonly from: Moment; readonly to?: Moment },
  state: LogState,
): LogFaultId | null {
  if (to === undefined) return state === 'done' ? 'left-running' : null;
  const hours = hoursBetween(instantOf(from), instantOf(to));
  return hours < 0 ? 'stop-first' : hours > valueOf('log.longest') ? 'too-long' : null;
}

/**
 * What speaks against a time that is typed; null where nothing does. Nobody can tell what is still to come.
 * @param now milliseconds since 1970
 */
export function typedFault(
  spell: { readonly from: Moment; readonly to?: Moment },
  now: number,
): LogFaultId | 'to-come' | null {
  const { from, to = from } = spell;
  return Math.max(instantOf(from), instantOf(to)) > now ? 'to-come' : faultOf(spell, 'open');
}

/** One task's own goes, those that overlap cut so that each hour counts once. */
function ownPieces(job: Job, key: TaskKey): { pieces: Piece[]; faults: LogFault[] } {
  const log = logAt(job, key);
  const state = stateOf(log);
  const pieces: Piece[] = [];
  const faults: LogFault[] = [];
  const tell = (fault: LogFaultId, from: Moment) => faults.push({ ...key, fault, from });
  let until = -Infinity;
  for (const spell of spellsOf(log)) {
    const { from: start, to, people, together = false } = spell;
    const fault = faultOf(spell, state);
    if (fault) tell(fault, start);
    if (fault || to === undefined) continue;
    const begin = instantOf(start);
    if (begin < until) tell('overlap', start);
    const from = Math.max(begin, until);
    const end = instantOf(to);
    if (end >= from) pieces.push({ start, from, to: end, people, together });
    until = Math.max(until, end);
  }
  return { pieces, faults };
}

const weightOf = ({ hours }: Task): number => hours?.atTask.typical ?? 0;

/**
 * What was told of each task that somebody has told of. One go over several zones counts once: it is
 * shared out as their hours are reckoned, one zone after the other.
 */
export function spentOn(
  tasks: readonly Task[],
  job: Job,
): { spent: ReadonlyMap<Task, Spent>; faults: readonly LogFault[] } {
  const told = tasks.flatMap((task) => {
    const log = logAt(job, task);
    return Object.keys(log).length ? [{ task, log, ...ownPieces(job, task) }] : [];
  });
  const together = new Map<string, Task[]>();
  const goOf = ({ step }: Task, { from, to }: Piece) => `${step} ${from} ${to}`;
  for (const { task, pieces } of told)
    for (const piece of pieces.filter((each) => each.together)) {
      const go = goOf(task, piece);
      together.set(go, [...(together.get(go) ?? []), task]);
    }
  const shareOf = (task: Task, piece: Piece): Piece => {
    const all = together.get(goOf(task, piece)) ?? [];
    const sum = all.reduce((total, each) => total + weightOf(each), 0);
    const part = (each: Task) => (sum > 0 ? weightOf(each) / sum : 1 / all.length);
    const before = all.slice(0, all.indexOf(task)).reduce((total, each) => total + part(each), 0);
    const at = (share: number) => piece.from + (piece.to - piece.from) * share;
    return !piece.together || all.length < 2
      ? piece
      : { ...piece, from: at(before), to: at(Math.min(1, before + part(task))) };
  };
  const spent = new Map<Task, Spent>();
  for (const { task, log, pieces, faults } of told) {
    const mine = pieces.map((piece) => shareOf(task, piece));
    spent.set(task, {
      state: stateOf(log),
      pieces: mine,
      hours: mine.reduce(
        (sum, { from, to, people }) => sum + hoursBetween(from, to) * (task.shared ? people : 1),
        0,
      ),
      sure: faults.every(({ fault }) => fault === 'overlap'),
      together: mine.find((each) => each.together)?.start ?? null,
      open: spellsOf(log).find(({ to }) => to === undefined)?.from ?? null,
      done: log.done ?? null,
    });
  }
  return { spent, faults: told.flatMap(({ faults }) => faults) };
}
