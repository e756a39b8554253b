import { untrack } from 'svelte';
import type { Job } from '$lib/answers/job';
import { codeOf, type Code } from '$lib/keep/code';
import { linkPage } from './link-page';
import { shareLink } from '$lib/keep/share-link';

interface Made {
  readonly job: Job;
  /** Null where the link is too long for a code, or the browser cannot make one. */
  readonly code: Code | null;
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
    let code: Code | null = null;
    try {
      const made = await shareLink(job, linkPage());
      if (made.ok) code = await codeOf(made.link);
    } catch {
      // A browser that cannot pack a link: the sheet names the file instead.
    }
    if (this.#making === job) this.#made = { job, code };
  }
}

export const jobCode = new JobCode();
