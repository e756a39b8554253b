import type { TaskLog } from '$lib/answers/day-log';
import { keyText, logAt, withLogs, type TaskKey } from '$lib/answers/task-log';
import { session } from '$lib/ui/session.svelte';
import { logWords as words } from '$words/safety/log';

type Logs = readonly (TaskKey & { readonly log: TaskLog })[];

interface Last {
  readonly job: string;
  readonly said: string;
  readonly before: Logs;
  readonly after: Logs;
}

const logsOf = (keys: readonly TaskKey[]): Logs =>
  keys.map(({ zone, step }) => ({ zone, step, log: logAt(session.job, { zone, step }) }));

/** Everything the crew tells goes through here: it is saved with the job and can be undone. */
class LogState {
  #last = $state.raw<Last | null>(null);
  /** What is said once it has been undone. */
  told = $state('');

  get last(): Last | null {
    return this.#last?.job === session.id ? this.#last : null;
  }

  /** Changes what is told of some steps; steps it leaves alike are not touched. */
  change(
    keys: readonly TaskKey[],
    said: string,
    to: (log: TaskLog, key: TaskKey) => TaskLog,
  ): void {
    const before = logsOf(keys);
    const after = before.map(({ log, ...key }) => ({ ...key, log: to(log, key) }));
    session.update((job) => withLogs(job, after));
    this.told = '';
    this.#last = { job: session.id, said, before, after };
  }

  /** Puts back what the last change found, where nothing has changed it since. */
  undo(): void {
    const { last } = this;
    if (!last) return;
    const now = new Map(logsOf(last.after).map(({ log, ...key }) => [keyText(key), log]));
    const same = last.after.every(
      ({ log, ...key }) => JSON.stringify(now.get(keyText(key))) === JSON.stringify(log),
    );
    if (same) session.update((job) => withLogs(job, last.before));
    this.told = same ? words.back : words.elsewhere;
    this.#last = null;
  }

  /** Nothing to undo: another page was opened. */
  clear(): void {
    this.#last = null;
    this.told = '';
  }
}

export const logState = new LogState();
