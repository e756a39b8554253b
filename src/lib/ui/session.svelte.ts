import type { Job, Zone } from '$lib/answers/job';
import { withRest } from '$lib/answers/rest';
import type { AnswerGiven, InterviewContext, InterviewPlace } from '$lib/interview/context';
import { newJobId } from '$lib/keep/job-store';
import type { JobStore, JobSummary, StoredJob, Unavailable } from '$lib/keep/job-store';
import { blankJob, isStarted, openJobs, withZone, zoneOf } from './job-in-hand';
import { within } from './patience';
import { preferences } from './preferences.svelte';
import { troubleIn, type Saving, type Trouble } from './saving';

/** Milliseconds after which a write that has not ended is told as one that failed. */
const patience = 3000;
/** Milliseconds for which the next question waits until the answer before it is saved. */
const pause = 1000;
/** Fetched apart: a question can be read and ticked before the machine has arrived. */
const machine = () =>
  import('./with-answer').then(({ withAnswer }) => withAnswer).catch(() => undefined);

/**
 * The job in hand: what the reader said, saved on the device at every answer.
 * One for the page; it opens the store once a browser runs it.
 */
export class Session {
  #job = $state.raw<Job>(blankJob());
  #ready = $state(false);
  #saving = $state<Saving>('idle');
  #why = $state<Unavailable | undefined>(undefined);
  /** What another tab saved over the same job. */
  #theirs = $state.raw<StoredJob | undefined>(undefined);
  #id = $state('');
  #revision = 0;
  #store: JobStore | undefined;
  #opening: Promise<void> | undefined;
  #writing: Promise<void> | undefined;
  #unsaved = false;
  /** Changes made before the store was open; they belong to the job that is taken up from it. */
  #early: ((job: Job) => Job)[] = [];

  /** Id of the job on this device. */
  get id(): string {
    return this.#id;
  }
  get job(): Job {
    return this.#job;
  }
  get ready(): boolean {
    return this.#ready;
  }
  get saving(): Saving {
    return this.#saving;
  }
  /** Whether everything in hand is on the device. Said only after the last write has ended there. */
  get kept(): boolean {
    return this.durable && this.#saving === 'saved';
  }
  /** False when work is held in this tab only. */
  get durable(): boolean {
    return this.#why === undefined;
  }
  /** Why work is held in this tab only; undefined where the device keeps it. */
  get why(): Unavailable | undefined {
    return this.#why;
  }
  /** What kept the last state of the job from being saved; null while nothing did. */
  get trouble(): Trouble | null {
    return troubleIn(this.#saving);
  }
  /** Whether another tab has deleted the job, or left what cannot be read. Told with `newer`. */
  get gone(): boolean {
    return this.#saving === 'newer' && !this.#theirs;
  }
  get started(): boolean {
    return isStarted(this.#job);
  }

  /**
   * Opens the store and takes up the job last worked on. Safe to call again.
   * @throws Error when the part of the site that keeps jobs does not arrive; calling again tries again
   */
  open(): Promise<void> {
    return (this.#opening ??= this.#openStore().catch((error: unknown) => {
      this.#opening = undefined;
      this.#saving = 'unavailable';
      throw error;
    }));
  }

  async #openStore(): Promise<void> {
    preferences.load();
    void machine();
    const { store, stored } = await openJobs();
    this.#store = store;
    this.#why = store.why;
    store.onChange((event) => void this.#changedElsewhere(event.id, event.kind));
    if (stored) {
      this.#take(stored);
      this.#job = this.#early.reduce((job, change) => withRest(change(job)), this.#job);
    } else this.#id = newJobId();
    this.#early = [];
    this.#ready = true;
  }

  /** The zone by that id, or the first one. */
  zone(id: string | null): Zone {
    return zoneOf(this.#job, id);
  }

  /** All answers that count for one zone. */
  answersFor(id: string | null): InterviewContext {
    return { site: this.#job.site, zone: this.zone(id).answers };
  }

  /**
   * Takes an answer, saves it, and says which question comes next once it is saved, or told not to
   * be, or after a second at most.
   */
  async answer(zoneId: string | null, given: AnswerGiven): Promise<InterviewPlace> {
    // Without the store the answer is taken all the same, and the reader is told.
    const [take] = await Promise.all([machine(), this.open().catch(() => undefined)]);
    if (!take) {
      this.#saving = 'unavailable';
      return given.question;
    }
    const { next } = take(this.#job, zoneId, given);
    this.update((job) => take(job, zoneId, given).job);
    await within(pause, this.settled());
    return next;
  }

  /** Changes the job and saves it. */
  update(change: (job: Job) => Job): void {
    if (!this.#ready) this.#early.push(change);
    this.#job = withRest(change(this.#job));
    this.#unsaved = true;
    if (!this.trouble) this.#saving = 'saving';
    this.#writing ??= this.#write();
  }

  /** Saves until nothing is unsaved; one write at a time, the last state wins. */
  async #write(): Promise<void> {
    try {
      await this.open();
      while (this.#unsaved && (await this.#writeOnce()));
    } catch {
      this.#saving = 'unavailable';
    }
    this.#writing = undefined;
  }

  /** Saves what is in hand now. Whether it was. */
  async #writeOnce(): Promise<boolean> {
    this.#unsaved = false;
    this.#saving = 'saving';
    const putting = (this.#store as JobStore).put(this.#id, this.#job, this.#revision);
    // A device that does not answer is told like one that refuses; its answer still counts.
    if (!(await within(patience, putting))) this.#saving = 'unavailable';
    const result = await putting;
    if (result.ok) {
      this.#revision = result.revision;
      // Between two writes it is not saved: something has changed since.
      this.#saving = this.#unsaved ? 'saving' : 'saved';
      preferences.job = this.#id;
    } else {
      this.#saving = result.why;
      this.#theirs = result.why === 'newer' ? result.stored : undefined;
    }
    return result.ok;
  }

  /** Tries again to save. Over what another tab saved it never does: see `keepAsCopy`. */
  again(): void {
    this.update((job) => job);
  }

  /** Saves what this tab has as a job of its own, beside what another tab saved. */
  async keepAsCopy(name = this.#job.name): Promise<void> {
    await this.settled();
    this.#id = newJobId();
    this.#revision = 0;
    this.#theirs = undefined;
    this.update((job) => ({ ...job, name }));
    await this.settled();
  }

  /** Gives up what this tab has for what another tab saved; for an empty job when it deleted it. */
  async takeTheirs(): Promise<void> {
    await this.settled();
    if (!this.#theirs) return this.startNew();
    this.#take(this.#theirs);
  }

  /** Waits until nothing is being written. */
  async settled(): Promise<void> {
    while (this.#writing) await this.#writing;
  }

  /** A deletion is not followed here: the next save is refused and the reader is asked. */
  async #changedElsewhere(id: string, kind: 'put' | 'remove'): Promise<void> {
    if (id !== this.#id || kind === 'remove') return;
    // What cannot be read is told when this tab next saves.
    const stored = await this.#store?.get(id).catch(() => undefined);
    const idle = !this.#unsaved && !this.#writing && !this.trouble;
    if (stored && stored.id === this.#id && stored.revision > this.#revision && idle)
      this.#take(stored);
  }

  #take(stored: StoredJob): void {
    this.#id = stored.id;
    this.#revision = stored.revision;
    this.#job = withZone(stored.job);
    this.#theirs = undefined;
    this.#saving = 'saved';
  }

  /** Where the jobs are, for the pages that look after them. */
  async store(): Promise<JobStore> {
    await this.open();
    return this.#store as JobStore;
  }

  /** The jobs on this device, last changed first. */
  async list(): Promise<readonly JobSummary[]> {
    return (await this.store()).list();
  }

  /** Takes up another job of this device; false when it cannot be read. */
  async switchTo(id: string): Promise<boolean> {
    const stored = await (await this.store()).get(id);
    if (!stored) return false;
    await this.settled();
    this.#take(stored);
    preferences.job = id;
    return true;
  }

  /** Puts the job in hand aside and starts an empty one, or the one given. It is saved at its first answer. */
  async startNew(job: Job = blankJob()): Promise<void> {
    await this.open();
    await this.settled();
    this.#id = newJobId();
    this.#revision = 0;
    this.#theirs = undefined;
    this.#job = job;
    this.#saving = 'idle';
    preferences.job = null;
  }
}

export const session = new Session();
