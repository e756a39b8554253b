import {
  openProgressStore,
  progressName,
  type ProgressStore,
  type Written,
} from '$lib/keep/practice/progress-store';
import { marks, minuteOf } from '$lib/keep/practice/result-code';
import type { Problem } from '$lib/keep/problem';
import type { Case } from '$lib/practice/case';
import { levelOf, type Level } from '$lib/practice/level';
import { lastSeed } from '$lib/practice/generate';
import { grade, type Attempt, type Grade, type Rating } from '$lib/practice/grade';
import { dueCases, findCase, nextCase, type Next } from '$lib/practice/next';
import { merged, standingOf, withResult, type Progress } from '$lib/practice/progress';
import { giveWay } from '$lib/ui/in-turn';
import { siteName } from '$lib/ui/site-name';
import type { PracticeSet } from '$lib/practice/set';
import { freshRun, keepRun, keptRun, type Run } from './run';

/** Why results are in this tab only. */
export type Trouble = Extract<Written, { ok: false }>['why'] | null;

/** Seeds come from the device's dice: nothing hangs on where they begin. */
export const anySeed = (most: number = lastSeed): number => Math.floor(Math.random() * (most + 1));

/** The practice in hand: the case, how it was graded, and what the device keeps of it. */
class Practice {
  #store: ProgressStore | undefined;
  #opening: Promise<void> | undefined;
  #ready = $state(false);
  #durable = $state(true);
  #progress = $state.raw<Progress>([]);
  #trouble = $state<Trouble>(null);
  #problem = $state.raw<Problem>();
  #forgotten = $state.raw<Progress>();
  #next = $state.raw<Next>();
  #grade = $state.raw<Grade>();
  #run = $state.raw<Run>();
  #level = $state<Level | null>(null);
  /** Told anew after each result: what has come back hangs on the time. */
  #now = $state(0);

  readonly standing = $derived(standingOf(this.#progress));
  readonly due = $derived(dueCases(this.standing, this.#now));
  readonly one: Case | undefined = $derived(this.#next && findCase(this.#next.id));

  get ready() {
    return this.#ready;
  }
  /** False where nothing can be kept on this device. */
  get durable() {
    return this.#durable;
  }
  get progress() {
    return this.#progress;
  }
  get trouble() {
    return this.#trouble;
  }
  /** What is wrong with what is kept, where it cannot be read. */
  get problem() {
    return this.#problem;
  }
  get next() {
    return this.#next;
  }
  get grade() {
    return this.#grade;
  }
  get run() {
    return this.#run;
  }
  /** The level the learner asked for, for as long as this tab is open; null where it goes with them. */
  get level() {
    return this.#level;
  }
  set level(level: Level | null) {
    this.#level = level;
    // What was just graded is left to be read.
    if (!this.#run && !this.#grade) this.#pick();
  }
  get now() {
    return this.#now;
  }
  /** Whether there is forgotten progress to bring back. */
  get canUndo() {
    return this.#forgotten !== undefined;
  }

  /** Opens what is kept and picks a case. Safe to call again. */
  open(): Promise<void> {
    return (this.#opening ??= this.#open());
  }
  async #open() {
    this.#store = await openProgressStore({ name: siteName(progressName) });
    this.#durable = this.#store.kind === 'device';
    try {
      const read = await this.#store.read();
      if (read.ok) this.#progress = read.value;
      else [this.#trouble, this.#problem] = ['damaged', read.problem];
    } catch {
      this.#trouble = 'unavailable';
    }
    // Reckoned apart from the page that shows it, so that neither keeps a tap waiting long.
    const next = nextCase(this.standing, Date.now(), anySeed());
    const one = findCase(next.id);
    if (one) levelOf(one);
    await giveWay();
    this.#pick(next);
    this.#ready = true;
  }

  #pick(next?: Next) {
    this.#now = Date.now();
    this.#grade = undefined;
    const id = this.#run?.ids[this.#run.at];
    if (this.#run) this.#next = id === undefined ? undefined : { id, why: 'new' };
    else {
      const wish = { level: this.#level, after: this.#next?.id };
      this.#next = next ?? nextCase(this.standing, this.#now, anySeed(), wish);
    }
  }

  /** Grades what the learner decided, and keeps the result. */
  async check(attempt: Attempt): Promise<void> {
    const { one } = this;
    if (!one || this.#grade) return;
    const graded = grade(one, attempt);
    this.#grade = graded;
    if (this.#run) this.#record(this.#run, attempt, graded);
    await this.note(one.id, graded.rating);
  }

  /** Keeps how something went that was tried and graded elsewhere. */
  async note(id: string, rating: Rating): Promise<void> {
    this.#now = Date.now();
    const result = { case: id, at: this.#now, rating };
    this.#progress = withResult(this.#progress, result);
    // After a failed write everything is tried again, not the last result alone.
    const store = this.#store;
    this.#take(await (this.#trouble ? store?.merge(this.#progress) : store?.add(result)));
  }

  /** Lets go of all results in this tab, once they are deleted on the device. */
  drop(): void {
    this.#progress = [];
    this.#forgotten = undefined;
    [this.#trouble, this.#problem] = [null, undefined];
    if (this.#ready) this.#pick();
  }

  /** Another tab may have added results; what could not be written stays in this tab. */
  #take(written: Written | undefined) {
    if (!written) return;
    if (written.ok) this.#progress = merged(this.#progress, written.progress);
    this.#trouble = written.ok ? null : written.why;
  }

  /** On to the next case; one of a set is not passed over. */
  goOn(): void {
    if (this.#run) this.#run = { ...this.#run, at: this.#run.at + 1 };
    this.#pick();
  }

  /** Adds a case to the run in hand; with the last one it ends. */
  #record(run: Run, { call }: Attempt, { rating }: Grade) {
    const calls = [...run.calls, call];
    const ended = calls.length === run.ids.length;
    const end = { minute: minuteOf(this.#now), mark: anySeed(marks - 1) };
    this.#run = { ...run, calls, went: [...run.went, rating], ...(ended && { end }) };
    keepRun(this.#run);
  }

  /** Takes up a set where this tab left it, or from its first case. */
  take(set: PracticeSet): void {
    this.#run = keptRun(set);
    this.#pick();
  }
  /** Starts a set from its first case. */
  start(set: PracticeSet): void {
    keepRun(null);
    this.#run = freshRun(set);
    this.#pick();
  }
  leaveSet(): void {
    keepRun(null);
    this.#run = undefined;
    this.#pick();
  }

  /** Adds results from a file. @returns how many were new; null where the device refused */
  async add(progress: Progress): Promise<number> {
    const before = this.#progress.length;
    this.#progress = merged(this.#progress, progress);
    const added = this.#progress.length - before;
    this.#take(await this.#store?.merge(progress));
    return added;
  }

  /** Forgets all results, with a way back. @returns false where the device refused */
  async forget(): Promise<boolean> {
    const kept = await this.#store?.forget();
    if (!kept) return false;
    this.#forgotten = merged(this.#progress, kept);
    this.#progress = [];
    this.#trouble = null;
    this.#problem = undefined;
    return true;
  }
  /** Clears what cannot be read, and keeps what was done in this tab since. */
  async afresh(): Promise<void> {
    const mine = this.#progress;
    if (!(await this.forget())) return;
    this.#forgotten = undefined;
    await this.add(mine);
  }
  async undo(): Promise<void> {
    const progress = this.#forgotten;
    this.#forgotten = undefined;
    if (progress) await this.add(progress);
  }

  raw = async (): Promise<string> => (await this.#store?.raw()) ?? '';
}

export const practice = new Practice();
