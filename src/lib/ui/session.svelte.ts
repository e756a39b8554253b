import type { Job, Zone } from '$lib/answers/job';
import { withRest } from '$lib/answers/rest';
import type { InterviewContext } from '$lib/interview/context';
import { newJobId, type JobStore, type JobSummary } from '$lib/keep/job-store';
import type { StoredJob, Unavailable } from '$lib/keep/job-store';
import { blankJob, isStarted, openJobs, unsavedId, withZone, zoneOf } from './job-in-hand';
import { within } from './patience';
import { preferences } from './preferences.svelte';
import { troubleIn, type Saving, type Trouble } from './saving';

/** Milliseconds after which a write that has not ended is told as one that failed. */
const patience = 3000;

/**
 * The job in hand: what the reader said, saved on the device at every answer.
 * One for the page; it opens the store once a browser runs it.
 */
export class Session {
  #job = $state.raw<Job>(blankJob());
  #ready = $state(false);
  /** Set from outside only where a part of the site has not arrived, so that nothing can be saved. */
  saving = $state<Saving>('idle');
  #why = $state<Unavailable | undefined>(undefined);
  /** What another tab saved over the same job. */
  #theirs = $state.raw<StoredJob | undefined>(undefined);
  #id = $state('');
  /** Counts the jobs taken into hand: another number is another job, but a copy kept is the same. */
  hand = $state(0);
  #lost = $state(false);
  #revision = 0;
  #store: JobStore | undefined;
  #opening: Promise<void> | undefined;
  #writing: Promise<void> | undefined;
  #unsaved = false;
  /** Whether the job in hand is another than the one at its revision on the device. */
  #differs = false;
  /** Changes made before the store was open; they belong to the job that is taken up from it. */
  #early: ((job: Job) => Job)[] = [];

  /** Id of the job on this device. */
  get id(): string {
    return this.#id;
  }
  get job(): Job {
    return this.#job;
  }
  /** Whether the job last worked on was not there any more, so that this is an empty one. */
  get lost(): boolean {
    return this.#lost && !this.started;
  }
  /** Whether something in hand is not on the device, and would go with this tab. */
  get losable(): boolean {
    return this.started && (!this.durable || this.saving === 'saving' || this.trouble !== null);
  }
  get ready(): boolean {
    return this.#ready;
  }
  /** Whether everything in hand is on the device. Said only after the last write has ended there. */
  get kept(): boolean {
    return this.durable && this.saving === 'saved';
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
    return troubleIn(this.saving);
  }
  /** Whether another tab has deleted the job, or left what cannot be read. Told with `newer`. */
  get gone(): boolean {
    return this.saving === 'newer' && !this.#theirs;
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
      this.saving = 'unavailable';
      throw error;
    }));
  }

  async #openStore(): Promise<void> {
    preferences.load();
    const { store, stored, lost } = await openJobs();
    this.#lost = lost;
    this.#store = store;
    this.#why = store.why;
    store.onChange((event) => void this.#changedElsewhere(event.id));
    if (stored) {
      this.#take(stored);
      this.#job = this.#early.reduce((job, change) => withRest(change(job)), this.#job);
    } else this.#id = unsavedId();
    this.#early = [];
    this.#ready = true;
  }

  /** The zone by that id, or none; the first where none is named. */
  zone(id: string | null): Zone | undefined {
    return zoneOf(this.#job, id);
  }

  /** All answers that count for one zone; none when it is not there. A job in hand has a first one. */
  answersFor(id: null): InterviewContext;
  answersFor(id: string | null): InterviewContext | undefined;
  answersFor(id: string | null): InterviewContext | undefined {
    const zone = this.zone(id);
    return zone && { site: this.#job.site, zone: zone.answers };
  }

  /** Changes the job and saves it. */
  update(change: (job: Job) => Job): void {
    if (!this.#ready) this.#early.push(change);
    this.#job = withRest(change(this.#job));
    this.#unsaved = this.#differs = true;
    if (!this.trouble) this.saving = 'saving';
    this.#writing ??= this.#write();
  }

  /** Saves until nothing is unsaved; one write at a time, the last state wins. */
  async #write(): Promise<void> {
    try {
      await this.open();
      while (this.#unsaved && (await this.#writeOnce()));
    } catch {
      this.saving = 'unavailable';
    }
    this.#writing = undefined;
  }

  /** Saves what is in hand now. Whether it was. */
  async #writeOnce(): Promise<boolean> {
    this.#unsaved = false;
    this.saving = 'saving';
    const putting = (this.#store as JobStore).put(this.#id, this.#job, this.#revision);
    // A device that does not answer is told like one that refuses; its answer still counts.
    if (!(await within(patience, putting))) this.saving = 'unavailable';
    const result = await putting;
    if (result.ok) {
      this.#revision = result.revision;
      this.#differs = this.#unsaved;
      // Between two writes it is not saved: something has changed since.
      this.saving = this.#unsaved ? 'saving' : 'saved';
      preferences.job = this.#id;
    } else {
      this.saving = result.why;
      this.#theirs = result.why === 'newer' ? result.stored : undefined;
    }
    return result.ok;
  }

  /** Tries again to save. Over what another tab saved it never does: see `keepAsCopy`. */
  again(): Promise<void> {
    this.update((job) => job);
    return this.settled();
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
    const stored = await this.#store?.get(this.#id).catch(() => this.#theirs);
    return stored ? this.#take(stored) : this.startNew();
  }

  /** Until nothing is being written. */
  async settled(): Promise<void> {
    while (this.#writing) await this.#writing;
  }

  /** A deletion is told, not followed: the reader says what becomes of it. */
  async #changedElsewhere(id: string): Promise<void> {
    if (id !== this.#id || this.#revision === 0) return; // what cannot be read is told later
    const stored = await this.#store?.get(id).catch(() => null);
    if (stored === null || id !== this.#id || this.#unsaved || this.#writing) return;
    if (this.trouble && !this.gone) return;
    if (!stored) this.saving = 'newer';
    else if (stored.revision > this.#revision && !this.#differs) this.#take(stored);
    else if (stored.revision > this.#revision) this.#theirs = stored;
    else if (this.gone && this.#differs) void this.again();
    else if (this.gone) this.saving = 'saved';
  }

  #take(stored: StoredJob): void {
    if (stored.id !== this.#id) this.hand += 1;
    this.#id = stored.id;
    this.#revision = stored.revision;
    this.#job = withZone(stored.job);
    this.#differs = false;
    this.#theirs = undefined;
    this.saving = 'saved';
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
    this.#id = unsavedId(true);
    this.hand += 1;
    this.#revision = 0;
    this.#theirs = undefined;
    this.#job = job;
    this.#differs = false;
    this.saving = 'idle';
    preferences.job = null;
  }
}

export const session = new Session();
