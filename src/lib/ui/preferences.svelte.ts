import type { UnitSystem } from '$lib/answers/units';
import { preferencesKey as key } from './site-name';

/** How the reader wants it shown. Changes what is shown first and how, never the advice. */
export const readers = ['work', 'own', 'explain'] as const;
export type Reader = (typeof readers)[number];

interface Kept {
  /** Null until the reader has chosen. */
  readonly units: UnitSystem | null;
  /** What whoever sent a job was shown, for a reader who has chosen nothing. */
  readonly offered: UnitSystem | null;
  readonly reader: Reader | null;
  /** The job last worked on in this browser. */
  readonly job: string | null;
}

/** Reads what was kept; anything unreadable counts as not kept. */
function read(): Partial<Record<keyof Kept, unknown>> {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    return typeof found === 'object' && found !== null ? found : {};
  } catch {
    return {};
  }
}

/** People in the United States are met in feet and inches until they choose. */
const guessUnits = (): UnitSystem => (/-US$/i.test(navigator.language) ? 'us' : 'metric');

const unitsIn = (found: unknown): UnitSystem | null =>
  found === 'us' || found === 'metric' ? found : null;

/** Units, way of reading and current job, kept in this browser. Works without storage, for this tab only. */
class Preferences {
  #units = $state<UnitSystem | null>(null);
  /** Shown until the reader chooses. */
  #offered = $state<UnitSystem | null>(null);
  #reader = $state<Reader | null>(null);
  #job: string | null = null;
  #forgotten = false;

  /** Takes up what was kept. Called once the page runs in a browser. */
  load(): void {
    const { units, offered, reader, job } = read();
    this.#units = unitsIn(units);
    this.#offered = unitsIn(offered) ?? guessUnits();
    this.#reader = readers.find((each) => each === reader) ?? null;
    this.#job = typeof job === 'string' ? job : null;
    this.#forgotten = job === undefined;
  }

  /** Whether nothing is known of a job: never kept, or lost with what the browser had not yet written. */
  get forgotten(): boolean {
    return this.#forgotten;
  }

  get units(): UnitSystem {
    return this.#units ?? this.#offered ?? 'metric';
  }
  set units(units: UnitSystem) {
    this.#units = units;
    this.#keep();
  }

  /** Takes up the units of a job that was sent, where the reader has not chosen others. */
  offer(units: unknown): void {
    this.#offered = unitsIn(units) ?? this.#offered;
    this.#keep();
  }

  get reader(): Reader | null {
    return this.#reader;
  }
  set reader(reader: Reader | null) {
    this.#reader = reader;
    this.#keep();
  }

  get job(): string | null {
    return this.#job;
  }
  set job(job: string | null) {
    this.#job = job;
    this.#keep();
  }

  #keep(): void {
    const kept: Kept = {
      units: this.#units,
      offered: this.#offered,
      reader: this.#reader,
      job: this.#job,
    };
    try {
      localStorage.setItem(key, JSON.stringify(kept));
    } catch {
      // No storage, or none left: the choice holds for this tab.
    }
  }
}

export const preferences = new Preferences();
