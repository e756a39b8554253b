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
  last = $state.raw<{
    readonly id: string;
    readonly before: Job;
    readonly photos: readonly string[];
  } | null>(null);

  begin(job: Job, from: string | null = null): void {
    jobsState.hush();
    this.last = null;
    this.job = job;
    this.from = from;
  }
  leave(): void {
    this.job = null;
  }

  /**
   * Puts what came of it in the place of a job; what that was can be put back.
   * @param zones the zone there, by the zone brought: photos of a job of this device come along
   */
  put(id: string, job: Job, said: string, zones?: ReadonlyMap<string, string>): Promise<void> {
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
      const photos = this.from && zones ? await this.#photos(this.from, id, zones) : [];
      this.job = null;
      this.last = { id, before, photos };
    });
  }

  /** Ids of the photos that came along; what had to stay is said. */
  async #photos(
    from: string,
    to: string,
    zones: ReadonlyMap<string, string>,
  ): Promise<readonly string[]> {
    const { bringPhotos } = await import('$lib/ui/photos/shelf');
    const { came, left } = await bringPhotos(from, to, zones);
    if (came.length) jobsState.say(words.bring.photos(came.length));
    if (left) jobsState.say(words.photosLeft, true);
    return came;
  }

  async undo(): Promise<void> {
    if (!this.last) return;
    const { id, before, photos } = this.last;
    await this.put(id, before, words.bring.undone);
    if (photos.length) await (await import('$lib/ui/photos/shelf')).takeBack(photos);
    this.last = null;
  }
}

export const bringing = new Bringing();
