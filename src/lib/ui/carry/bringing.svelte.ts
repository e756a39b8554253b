import type { Job } from '$lib/answers/job';
import { jobsState } from '$lib/ui/jobs/jobs-state.svelte';
import { session } from '$lib/ui/session.svelte';
import { putWords } from '$words/keep';
import { jobsWords as words } from '$words/ui/jobs';

/** A job that comes back from another place, on its way into one that is kept here. */
class Bringing {
  /** The job the reader wants to bring into one of those here. */
  job = $state.raw<Job | null>(null);
  /** Its own place in the list, where it has one: nothing is brought into itself. */
  from = $state.raw<string | null>(null);
  /** What a job was before another was brought into it. */
  last = $state.raw<{ readonly id: string; readonly before: Job } | null>(null);

  begin(job: Job, from: string | null = null): void {
    jobsState.hush();
    this.last = null;
    this.job = job;
    this.from = from;
  }
  leave(): void {
    this.job = null;
  }

  /** Puts what came of it in the place of a job; what that was can be put back. */
  put(id: string, job: Job, said: string): Promise<void> {
    return jobsState.step(async () => {
      const before = await jobsState.jobOf(id);
      if (!before) return jobsState.say(words.vanished, true);
      if (id === session.id) {
        session.update(() => job);
        await session.settled();
      } else {
        const stored = await jobsState.stored(id);
        const put = await (await session.store()).put(id, job, stored?.revision ?? 0);
        if (!put.ok)
          return jobsState.say(
            put.why === 'newer' ? words.changedElsewhere : putWords[put.why],
            true,
          );
      }
      jobsState.say(said);
      this.job = null;
      this.last = { id, before };
    });
  }

  async undo(): Promise<void> {
    if (!this.last) return;
    const { id, before } = this.last;
    await this.put(id, before, words.bring.undone);
    this.last = null;
  }
}

export const bringing = new Bringing();
