import type { TaskLog } from '$lib/answers/day-log';
import { keyText, logAt, withLogs, type TaskKey } from '$lib/answers/task-log';
import type { Task } from '$lib/plan/tasks';
import { planned } from '$lib/ui/job/plan.svelte';
import { session } from '$lib/ui/session.svelte';
import { logWords as words } from '$words/safety/log';

type Logs = readonly (TaskKey & { readonly log: TaskLog })[];

/** Some steps were told of: `lay` has the plan follow. */
export type Told = (tasks: readonly Task[], lay: () => void) => void;

interface Last {
  readonly job: string;
  readonly said: string;
  readonly before: Logs;
  readonly after: Logs;
}

const logsOf = (keys: readonly TaskKey[]): Logs =>
  keys.map(({ zone, step }) => ({ zone, step, log: logAt(session.job, { zone, step }) }));

/** Steps back that are kept. */
const most = 100;

/**
 * Everything the crew tells goes through here: it is saved with the job, and can be undone change by
 * change, the last one first, as long as the page stands.
 */
class LogState {
  #done = $state.raw<readonly Last[]>([]);
  /** What is said once it has been undone. */
  told = $state('');

  get last(): Last | null {
    const last = this.#done.at(-1);
    return last?.job === session.id ? last : null;
  }

  /**
   * Changes what is told of some steps; steps it leaves alike are not touched. The plan follows.
   * @param around does what belongs right before and after the plan changes, which `lay` does
   */
  change(
    keys: readonly TaskKey[],
    said: string,
    to: (log: TaskLog, key: TaskKey) => TaskLog,
    around?: (lay: () => void) => void,
  ): void {
    const before = logsOf(keys);
    const after = before.map(({ log, ...key }) => ({ ...key, log: to(log, key) }));
    planned.follows(() => session.update((job) => withLogs(job, after)), around);
    this.told = '';
    const earlier = this.last ? this.#done : [];
    this.#done = [...earlier, { job: session.id, said, before, after }].slice(-most);
  }

  /**
   * Puts back what the last change found, where nothing has changed it since; where something has,
   * what came before it cannot be told apart either and nothing more is offered.
   */
  undo(): void {
    const { last } = this;
    if (!last) return;
    const now = new Map(logsOf(last.after).map(({ log, ...key }) => [keyText(key), log]));
    const same = last.after.every(
      ({ log, ...key }) => JSON.stringify(now.get(keyText(key))) === JSON.stringify(log),
    );
    if (same) planned.follows(() => session.update((job) => withLogs(job, last.before)));
    this.told = same ? words.undone(last.said) : words.elsewhere;
    this.#done = same ? this.#done.slice(0, -1) : [];
  }

  /** Nothing to undo: another page was opened. */
  clear(): void {
    this.#done = [];
    this.told = '';
  }
}

export const logState = new LogState();
