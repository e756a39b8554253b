import type { Job } from '$lib/answers/job';
import { parseJob, readJobBlob, writeJob, type JobAndPhotos } from '$lib/keep/job-file';
import type { FilePhoto } from '$lib/keep/photos/photo-file';
import type { WholePhoto } from '$lib/answers/photo';
import { newJobId, type JobSummary, type StoredJob } from '$lib/keep/job-store';
import { session } from '$lib/ui/session.svelte';
import { problemSentence, putWords } from '$words/keep';
import { jobsWords as words } from '$words/ui/jobs';
import { copyName } from './files';

interface Said {
  readonly bad: boolean;
  readonly text: string;
}
interface Removed {
  readonly stored: StoredJob;
  /** Whether it was the job in hand. */
  readonly inHand: boolean;
  readonly photos: readonly WholePhoto[];
}

/** What keeps the photos, fetched when a job is moved about. */
const shelf = () => import('$lib/ui/photos/shelf');

const nameOf = ({ name }: { readonly name: string }): string => name || words.unnamed;

/**
 * What can be done with the jobs of this device. What a deletion took away is held until the tab
 * is closed or loaded anew. Every step says how it ended in `said`; none throws.
 */
class JobsState {
  jobs = $state.raw<readonly JobSummary[]>([]);
  /** Whether the list has been read, or could not be. */
  listed = $state(false);
  removed = $state.raw<readonly Removed[]>([]);
  said = $state.raw<readonly Said[]>([]);
  /** The job that came from outside last, until the next step: the way on leads to it. */
  added = $state<string | null>(null);
  /** A step that waits until the reader has said what becomes of unsaved work. */
  waiting = $state.raw<(() => Promise<unknown>) | null>(null);

  say(text: string, bad = false): void {
    this.said = [...this.said, { text, bad }];
  }
  hush(): void {
    this.said = [];
    this.added = null;
  }

  /** Looks at the list anew. */
  async refresh(): Promise<void> {
    try {
      this.jobs = await session.list();
    } catch {
      this.say(words.storageFailed, true);
    }
    this.listed = true;
  }

  /** The storage was taken away under the page: told where something went with it. */
  async lost(): Promise<void> {
    const before = this.jobs.length;
    await this.refresh();
    if (this.jobs.length < before) this.say(words.lost, true);
  }

  /** Lets go of everything, also of what could have been brought back. */
  async forget(): Promise<void> {
    this.removed = [];
    this.waiting = null;
    await session.startNew();
    await this.refresh();
  }

  /** Does one step; a device that fails is said, and the list is right afterwards. */
  async step(step: () => Promise<void>): Promise<void> {
    this.hush();
    try {
      await step();
    } catch {
      this.say(words.storageFailed, true);
    }
    await this.refresh();
  }

  /** Goes on to another job at once, or once the reader has agreed to leave unsaved work. */
  async leave(go: () => Promise<unknown>): Promise<void> {
    await session.settled();
    if (session.trouble) this.waiting = go;
    else await go();
  }
  async goOn(): Promise<void> {
    const go = this.waiting;
    this.waiting = null;
    await go?.();
    await this.refresh();
  }
  stay(): void {
    this.waiting = null;
  }

  /** Takes up a job and then calls `then`. */
  open(id: string, then: () => Promise<unknown>): Promise<void> {
    return this.step(async () => {
      if (id === session.id) await then();
      else
        await this.leave(async () => {
          if (await session.switchTo(id)) await then();
          else this.say(words.vanished, true);
        });
    });
  }

  /** The job by that id: as this tab has it when it is in hand. */
  async jobOf(id: string): Promise<Job | undefined> {
    if (id === session.id) return session.job;
    try {
      return (await (await session.store()).get(id))?.job;
    } catch {
      return undefined;
    }
  }

  /** Gives a job another name. What is wrong with the name, or nothing. */
  async rename(id: string, name: string): Promise<string> {
    const stored = await this.stored(id);
    const job = id === session.id ? session.job : stored?.job;
    if (!job) return words.vanished;
    const read = parseJob(writeJob({ ...job, name }));
    if (!read.ok) return words.badName(problemSentence(read.problem));
    await this.step(async () => {
      if (id === session.id) {
        session.update((each) => ({ ...each, name }));
        await session.settled();
        return;
      }
      const put = await (await session.store()).put(id, { ...job, name }, stored?.revision ?? 0);
      if (!put.ok) this.say(put.why === 'newer' ? words.changedElsewhere : putWords[put.why], true);
    });
    return '';
  }
  async stored(id: string): Promise<StoredJob | undefined> {
    try {
      return await (await session.store()).get(id);
    } catch {
      return undefined;
    }
  }

  copy(id: string): Promise<void> {
    return this.step(async () => {
      const job = await this.jobOf(id);
      if (!job) return this.say(words.vanished, true);
      const copied = { ...job, name: copyName(job.name) };
      const kept = await this.#keep(copied);
      if (!kept) return;
      this.say(words.copied(copied.name));
      if (!(await (await shelf()).copyPhotos(id, kept))) this.say(words.photosLeft, true);
    });
  }

  /** Keeps a job beside the others: its id, or nothing when the device would not. */
  async #keep(job: Job, photos: readonly FilePhoto[] = []): Promise<string | undefined> {
    const id = newJobId();
    const put = await (await session.store()).put(id, job, 0);
    if (put.ok) {
      if (photos.length && !(await (await shelf()).addPhotos(id, photos)))
        this.say(words.photosLeft, true);
      return id;
    }
    this.say(words.file.notKept(nameOf(job), putWords[put.why]), true);
    return undefined;
  }

  /** Takes a job from outside into the list and into hand; the one in hand before stays in the list. */
  add(job: Job, photos: readonly FilePhoto[] = []): Promise<void> {
    return this.step(async () => {
      const id = await this.#keep(job, photos);
      if (!id) return;
      this.say(words.file.added(nameOf(job)));
      this.added = id;
      await this.leave(() => session.switchTo(id));
    });
  }

  /** Opens job files, each as a new job. A file that is wrong changes nothing and is named. */
  async openFiles(files: readonly File[]): Promise<void> {
    const problems: string[] = [];
    const refused = (file: File, problem: string) =>
      problems.push(words.file.refused(file.name, problem));
    const jobs: JobAndPhotos[] = [];
    for (const file of files) {
      try {
        const read = await readJobBlob(file);
        if (read.ok) jobs.push(read.value);
        else refused(file, problemSentence(read.problem));
      } catch {
        refused(file, words.file.unreadable);
      }
    }
    const [only, ...others] = jobs;
    if (only && others.length === 0) await this.add(only.job, only.photos);
    else
      await this.step(async () => {
        for (const { job, photos } of jobs)
          if (await this.#keep(job, photos)) this.say(words.file.added(nameOf(job)));
      });
    for (const problem of problems) this.say(problem, true);
  }

  /** Deletes a job; `undo` brings it back while the tab lives. */
  remove(id: string): Promise<void> {
    const inHand = id === session.id;
    const take = async () => {
      const stored = await (await session.store()).remove(id);
      const photos = await (await shelf()).takePhotos(id);
      // Both at once, so that the way back stands where the job stood before focus moves.
      this.jobs = this.jobs.filter((each) => each.id !== id);
      if (stored) this.removed = [{ stored, inHand, photos }, ...this.removed];
      if (inHand) await session.startNew();
    };
    return this.step(() => (inHand ? this.leave(take) : take()));
  }

  undo(removed: Removed): Promise<void> {
    const name = nameOf(removed.stored.job);
    return this.step(async () => {
      const put = await (await session.store()).restore(removed.stored);
      if (!put.ok) return this.say(words.undoFailed(name), true);
      this.removed = this.removed.filter((each) => each !== removed);
      if (!(await (await shelf()).putPhotosBack(removed.photos))) this.say(words.photosLeft, true);
      if (removed.inHand && !session.started) await session.switchTo(removed.stored.id);
      this.say(words.undone(name));
    });
  }

  /** What the device has under an id, whatever it is. */
  async raw(id: string): Promise<string | undefined> {
    try {
      const text = await (await session.store()).raw(id);
      if (text === undefined) this.say(words.vanished, true);
      return text;
    } catch {
      this.say(words.storageFailed, true);
      return undefined;
    }
  }
}

export const jobsState = new JobsState();
