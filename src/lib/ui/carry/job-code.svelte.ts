import { untrack } from 'svelte';
import type { Job } from '$lib/answers/job';
import { isLogged, withoutLogs } from '$lib/answers/task-log';
import { codeOf, type Code } from '$lib/keep/code';
import { shareLink } from '$lib/keep/share-link';
import { linkPage } from './link-page';

interface Made {
  readonly job: Job;
  /** Null where the link is too long for a code, or the browser cannot make one. */
  readonly code: Code | null;
  /** The crew's log had to stay out of it. */
  readonly withoutLog: boolean;
}

async function codeFor(job: Job): Promise<Code | null> {
  try {
    const made = await shareLink(job, linkPage());
    return made.ok ? await codeOf(made.link) : null;
  } catch {
    // A browser that cannot pack a link: the sheet names the file instead.
    return null;
  }
}

/**
 * The code of a job's link, made once for all sheets of a page and anew when the job changes. A code
 * of an older state is never shown: `of` gives it only for the job it was made of.
 */
class JobCode {
  #made = $state.raw<Made>();
  #making: Job | undefined;

  of(job: Job): Made | undefined {
    return this.#made?.job === job ? this.#made : undefined;
  }

  async make(job: Job): Promise<void> {
    if (this.#making === job || untrack(() => this.#made?.job) === job) return;
    this.#making = job;
    const whole = await codeFor(job);
    const withoutLog = !whole && isLogged(job);
    const code = withoutLog ? await codeFor(withoutLogs(job)) : whole;
    if (this.#making === job) this.#made = { job, code, withoutLog };
  }
}

export const jobCode = new JobCode();
