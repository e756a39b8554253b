import {
  openResultStore,
  resultsName,
  type KeptResult,
  type KeptResults,
  type ResultStore,
} from '$lib/keep/practice/result-store';
import { siteName } from '$lib/ui/site-name';
import { bringAll, type Outcome } from './bring';
import { setsOf } from './sets';

/** Results that learners gave back: what the device keeps, and what can be done with them. */
class Given {
  #store: ResultStore | undefined;
  #opening: Promise<void> | undefined;
  #ready = $state(false);
  #durable = $state(true);
  #kept = $state.raw<KeptResults>({ results: [], damaged: [] });
  /** Results as they were before the last change, for the way back. */
  #before = $state.raw<readonly KeptResult[]>();

  readonly sets = $derived(setsOf(this.#kept.results));
  get ready() {
    return this.#ready;
  }
  /** False where nothing can be kept on this device. */
  get durable() {
    return this.#durable;
  }
  get results() {
    return this.#kept.results;
  }
  get damaged() {
    return this.#kept.damaged;
  }
  get canUndo() {
    return this.#before !== undefined;
  }

  /** Opens what is kept, or reads it again. */
  async open(): Promise<void> {
    if (this.#ready) await this.refresh();
    else await (this.#opening ??= this.#open());
  }
  /** Lets go of all that this tab holds, once it is deleted on the device. */
  drop(): void {
    this.#kept = { results: [], damaged: [] };
    this.#before = undefined;
  }
  async #open() {
    this.#store = await openResultStore({ name: siteName(resultsName) });
    this.#durable = this.#store.kind === 'device';
    await this.refresh();
    this.#ready = true;
  }
  /** Reads again what is kept, also by other tabs. @returns false where the device did not answer */
  async refresh(): Promise<boolean> {
    try {
      if (this.#store) this.#kept = await this.#store.read();
      return true;
    } catch {
      return false;
    }
  }

  /** Adds every result in a text. */
  async bring(text: string): Promise<{ outcomes: readonly Outcome[]; left: string }> {
    await this.open();
    this.#before = undefined;
    const done = await bringAll(this.#store as ResultStore, text);
    await this.refresh();
    return done;
  }

  /** Takes the names off results, with a way back. @returns false where the device refused */
  removeNames(keys: readonly string[]): Promise<boolean> {
    const named = this.#kept.results.filter(({ key, result }) => keys.includes(key) && result.name);
    return this.#change(named, (store) =>
      store.put(named.map(({ result }) => ({ ...result, name: '' }))),
    );
  }
  /** Deletes a result, with a way back. @returns false where the device refused */
  remove(key: string): Promise<boolean> {
    const gone = this.#kept.results.filter((one) => one.key === key);
    return this.#change(gone, (store) => store.remove([key]));
  }
  async #change(
    touched: readonly KeptResult[],
    write: (store: ResultStore) => Promise<{ readonly ok: boolean }>,
  ): Promise<boolean> {
    const done = this.#store ? await write(this.#store) : { ok: false };
    if (done.ok) this.#before = touched;
    await this.refresh();
    return done.ok;
  }
  async undo(): Promise<boolean> {
    const before = this.#before ?? [];
    const done = await this.#store?.put(before.map(({ result }) => result));
    if (done?.ok) this.#before = undefined;
    await this.refresh();
    return done?.ok ?? false;
  }

  /** What cannot be read, as it is kept, as one text. */
  async rawDamaged(): Promise<string> {
    const all = await Promise.all(this.damaged.map(({ key }) => this.#store?.raw(key)));
    return `[${all.filter((text) => text !== undefined).join(',\n')}]\n`;
  }
  async removeDamaged(): Promise<boolean> {
    const done = await this.#store?.remove(this.damaged.map(({ key }) => key));
    await this.refresh();
    return done?.ok ?? false;
  }
}

export const given = new Given();
