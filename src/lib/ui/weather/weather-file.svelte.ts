import type { Layout, Problem, Roles } from '$lib/climate/file/types';
import type { Weather } from '$lib/climate/types';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Chosen, FromFileReader, ReadSummary, ToFileReader } from './file-reader';

/** How far a file has come. */
export type Stage = 'none' | 'reading' | 'stopped' | 'confirm' | 'counted' | 'failed';

const megabyte = 1e6;

/** The reader's weather file: read in a worker, confirmed, counted. Nothing of it leaves the device. */
export class WeatherFile {
  stage = $state<Stage>('none');
  name = $state('');
  /** Read so far, 0 to 1. */
  share = $state(0);
  problem = $state.raw<Problem | null>(null);
  layout = $state.raw<Layout | null>(null);
  read = $state.raw<ReadSummary | null>(null);
  weather = $state.raw<Weather | null>(null);
  /** The reader's own number of days that may be missing; null for the usual one. */
  allowed = $state<number | null>(null);
  #chosen: Chosen = {};
  #worker: Worker | null = null;

  get #own(): OwnFigures {
    return this.allowed === null ? {} : { 'weather.missing-days': this.allowed };
  }

  /** Begins to read. A file too large is refused before a byte of it is read. */
  async open(file: File): Promise<void> {
    this.forget();
    this.name = file.name;
    const limit = valueOf('weather.file-limit');
    if (file.size > limit * megabyte) return this.#stop({ id: 'too-large', count: limit });
    this.stage = 'reading';
    try {
      const bytes = await file.arrayBuffer();
      // Cancelled, or another file chosen, while the bytes came in.
      if (this.stage !== 'reading' || this.name !== file.name) return;
      // The address is fixed when the site is built; nothing reacts to it.
      // eslint-disable-next-line svelte/prefer-svelte-reactivity
      this.#worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
      this.#worker.onmessage = ({ data }: MessageEvent<FromFileReader>) => this.#take(data);
      this.#worker.onerror = () => this.#fail();
      this.#worker.postMessage({ kind: 'open', bytes } satisfies ToFileReader, [bytes]);
    } catch {
      this.#fail();
    }
  }

  /** Takes the reader's word for a column, a unit, the order of dates or the station. */
  choose(roles: Roles, chosen: Chosen): void {
    this.#chosen = { ...this.#chosen, ...chosen };
    this.#send({ kind: 'fit', roles, chosen: this.#chosen });
  }

  count(): void {
    this.#send({ kind: 'count', own: this.#own });
  }

  /** The reader's own number of missing days, or null for the usual; counts again. */
  allow(days: number | null): void {
    this.allowed = days;
    if (this.stage === 'counted') this.count();
  }

  /** Back to the columns and units, with the count given up. */
  reconsider(): void {
    this.weather = null;
    this.stage = 'confirm';
  }

  /** Stops whatever is going on and gives up the file. */
  forget(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#chosen = {};
    this.stage = 'none';
    this.name = '';
    this.share = 0;
    this.problem = null;
    this.layout = null;
    this.read = null;
    this.weather = null;
  }

  #send(request: ToFileReader): void {
    this.#worker?.postMessage(request);
  }

  #take(answer: FromFileReader): void {
    if (answer.kind === 'progress') this.share = answer.share;
    else if (answer.kind === 'stopped') this.#stop(answer.problem);
    else if (answer.kind === 'layout') {
      this.layout = answer.layout;
      this.read = answer.read;
      this.weather = null;
      this.stage = 'confirm';
    } else {
      this.weather = answer.weather;
      this.stage = 'counted';
    }
  }

  #stop(problem: Problem): void {
    this.problem = problem;
    this.stage = 'stopped';
  }

  #fail(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.stage = 'failed';
  }
}
