import type { Job, Zone } from '$lib/answers/job';
import { withRest } from '$lib/answers/rest';
import { give } from '$lib/interview/replay';
import type { AnswerGiven, InterviewContext, InterviewPlace } from '$lib/interview/machine';
import type { JobStore, JobSummary, PutResult, StoredJob, Unavailable } from '$lib/keep/store';
import { preferences } from './preferences.svelte';

/** How keeping the work is going. Everything but `idle`, `saving` and `saved` is told to the reader. */
export type Saving = 'idle' | 'saving' | 'saved' | Exclude<PutResult, { ok: true }>['why'];

export const firstZoneId = 'a';
const blankJob = (): Job => ({
  name: '',
  site: {},
  zones: [{ id: firstZoneId, name: '', answers: {} }],
});

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
  #newId = (): string => '';
  #revision = 0;
  #store: JobStore | undefined;
  #opening: Promise<void> | undefined;
  #writing: Promise<void> | undefined;
  #unsaved = false;

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
  /** False when work is held in this tab only. */
  get durable(): boolean {
    return this.#why === undefined;
  }
  /** Why work is held in this tab only; undefined where the device keeps it. */
  get why(): Unavailable | undefined {
    return this.#why;
  }
  /** What kept the last state of the job from being saved; null while nothing did. */
  get trouble(): Exclude<Saving, 'idle' | 'saving' | 'saved'> | null {
    const { saving } = this;
    return saving === 'idle' || saving === 'saving' || saving === 'saved' ? null : saving;
  }
  /** Whether another tab has deleted the job, or left what cannot be read. Told with `newer`. */
  get gone(): boolean {
    return this.#saving === 'newer' && !this.#theirs;
  }
  get started(): boolean {
    return Object.keys(this.#job.site).length > 0 || this.#job.zones.some(hasAnswers);
  }

  /** Opens the store and takes up the job last worked on. Safe to call again. */
  open(): Promise<void> {
    return (this.#opening ??= this.#openStore());
  }

  async #openStore(): Promise<void> {
    preferences.load();
    // Fetched apart: a question can be read and answered before the store's parser has arrived.
    const { newJobId, openStore } = await import('$lib/keep/store');
    this.#newId = newJobId;
    const store = await openStore();
    this.#store = store;
    this.#why = store.why;
    store.onChange((event) => void this.#changedElsewhere(event.id, event.kind));
    const stored = preferences.job ? await store.get(preferences.job) : undefined;
    if (stored) this.#take(stored);
    else this.#id = newJobId();
    this.#ready = true;
  }

  /** The zone by that id, or the first one. */
  zone(id: string | null): Zone {
    const { zones } = this.#job;
    return zones.find((zone) => zone.id === id) ?? (zones[0] as Zone);
  }

  /** All answers that count for one zone. */
  answersFor(id: string | null): InterviewContext {
    return { site: this.#job.site, zone: this.zone(id).answers };
  }

  /** Takes an answer, saves it, and says which question comes next. */
  async answer(zoneId: string | null, given: AnswerGiven): Promise<InterviewPlace> {
    await this.open();
    const { id } = this.zone(zoneId);
    const { answers, next } = give(this.answersFor(id), given);
    this.update(({ rest, ...job }) => ({
      ...job,
      // An area of its own makes the rest a zone like the others.
      ...(rest && !(rest === id && given.question === 'area') && { rest }),
      site: answers.site,
      zones: job.zones.map((zone) => (zone.id === id ? { ...zone, answers: answers.zone } : zone)),
    }));
    return next;
  }

  /** Changes the job and saves it. */
  update(change: (job: Job) => Job): void {
    this.#job = withRest(change(this.#job));
    this.#unsaved = true;
    this.#writing ??= this.#write();
  }

  /** Saves until nothing is unsaved; one write at a time, the last state wins. */
  async #write(): Promise<void> {
    await this.open();
    const store = this.#store as JobStore;
    while (this.#unsaved) {
      this.#unsaved = false;
      this.#saving = 'saving';
      const result = await store.put(this.#id, this.#job, this.#revision);
      if (result.ok) {
        this.#revision = result.revision;
        this.#saving = 'saved';
        preferences.job = this.#id;
      } else {
        this.#saving = result.why;
        this.#theirs = result.why === 'newer' ? result.stored : undefined;
        break;
      }
    }
    this.#writing = undefined;
  }

  /** Tries again to save. Over what another tab saved it never does: see `keepAsCopy`. */
  again(): void {
    this.update((job) => job);
  }

  /** Saves what this tab has as a job of its own, beside what another tab saved. */
  async keepAsCopy(name = this.#job.name): Promise<void> {
    await this.settled();
    this.#id = this.#newId();
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
    this.#saving = 'saved';
  }

  /** Waits until nothing is being written. */
  async settled(): Promise<void> {
    while (this.#writing) await this.#writing;
  }

  /** A deletion is not followed here: the next save is refused and the reader is asked. */
  async #changedElsewhere(id: string, kind: 'put' | 'remove'): Promise<void> {
    if (id !== this.#id || kind === 'remove') return;
    const stored = await this.#store?.get(id);
    const idle = !this.#unsaved && !this.#writing && this.#saving !== 'newer';
    if (stored && stored.id === this.#id && stored.revision > this.#revision && idle)
      this.#take(stored);
  }

  #take(stored: StoredJob): void {
    this.#id = stored.id;
    this.#revision = stored.revision;
    this.#job = stored.job.zones.length ? stored.job : { ...stored.job, zones: blankJob().zones };
    this.#theirs = undefined;
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
    this.#saving = 'idle';
    preferences.job = id;
    return true;
  }

  /** Puts the job in hand aside and starts an empty one, or the one given. It is saved at its first answer. */
  async startNew(job: Job = blankJob()): Promise<void> {
    await this.open();
    await this.settled();
    this.#id = this.#newId();
    this.#revision = 0;
    this.#theirs = undefined;
    this.#job = job;
    this.#saving = 'idle';
    preferences.job = null;
  }
}

const hasAnswers = (zone: Zone): boolean => Object.keys(zone.answers).length > 0;

export const session = new Session();
