import { findLayout, fitLayout } from '$lib/climate/file/layout';
import { readDays, type FileRead } from '$lib/climate/file/read';
import {
  isFatal,
  type DateOrder,
  type FileUnits,
  type Layout,
  type Problem,
  type Roles,
  type Table,
} from '$lib/climate/file/types';
import type { Day, Weather } from '$lib/climate/types';
import { readWeather } from '$lib/climate/weather';
import type { OwnFigures } from '$shared/figures';
import { readTable } from './table';

/** What the reader settled about a file; the rest stays a guess. */
export type Chosen = Partial<FileUnits> & {
  readonly order?: DateOrder | null;
  readonly station?: string | null;
};

/** What the page asks of the worker. */
export type ToFileReader =
  | { readonly kind: 'open'; readonly bytes: ArrayBuffer }
  | { readonly kind: 'fit'; readonly roles: Roles; readonly chosen: Chosen }
  | { readonly kind: 'count'; readonly own: OwnFigures };

/** What a layout makes of the file, small enough to hand over. */
export interface ReadSummary {
  readonly rows: number;
  readonly days: number;
  /** The first day, and the coldest, warmest, wettest and snowiest: a wrong unit shows in them. */
  readonly sample: readonly Day[];
  readonly problems: readonly Problem[];
  /** Problems there are beyond those handed over. */
  readonly more: number;
  readonly stopped: boolean;
}

/** What the worker answers. */
export type FromFileReader =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'stopped'; readonly problem: Problem }
  | { readonly kind: 'layout'; readonly layout: Layout; readonly read: ReadSummary }
  | { readonly kind: 'weather'; readonly weather: Weather };

/** Problems of rows handed over; nobody reads a thousand. */
const shown = 20;

function most(days: readonly Day[], of: (day: Day) => number | null): Day | null {
  let [best, value]: [Day | null, number] = [null, -Infinity];
  for (const day of days) {
    const here = of(day);
    if (here !== null && here > value) [best, value] = [day, here];
  }
  return best;
}

function summarise({ rows, days, problems }: FileRead): ReadSummary {
  const sample = [
    days[0] ?? null,
    most(days, ({ min }) => (min === null ? null : -min)),
    most(days, ({ max }) => max),
    most(days, ({ rain }) => rain),
    most(days, ({ snow }) => snow || null),
  ].filter((day) => day !== null);
  const inOrder = [...new Set(sample)].sort((a, b) => a.at - b.at);
  return {
    rows,
    days: days.length,
    sample: inOrder,
    problems: problems.slice(0, shown),
    more: Math.max(0, problems.length - shown),
    stopped: problems.some(isFatal),
  };
}

/** Holds one file and answers about it. Runs in the worker, and in tests without one. */
export class FileReading {
  #table: Table = [];
  #odd = false;
  #layout: Layout | null = null;
  #days: readonly Day[] = [];
  readonly #post: (answer: FromFileReader) => void;

  constructor(post: (answer: FromFileReader) => void) {
    this.#post = post;
  }

  take(request: ToFileReader): void {
    if (request.kind === 'open') this.#open(new Uint8Array(request.bytes));
    else if (request.kind === 'fit') this.#fit(request.roles, request.chosen);
    else if (this.#days.length)
      this.#post({ kind: 'weather', weather: readWeather(this.#days, request.own) });
  }

  #open(bytes: Uint8Array): void {
    const read = readTable(bytes, (share) => this.#post({ kind: 'progress', share }));
    if ('problem' in read) return this.#post({ kind: 'stopped', problem: read.problem });
    const found = findLayout(read.table);
    if ('problem' in found) return this.#post({ kind: 'stopped', problem: found.problem });
    this.#table = read.table;
    this.#odd = read.odd;
    this.#read(found.layout);
  }

  #fit(roles: Roles, { order, station, ...units }: Chosen): void {
    if (!this.#layout) return;
    const fitted = fitLayout(this.#table, this.#layout.header, roles);
    this.#read({
      ...fitted,
      order: order ?? fitted.order,
      station: station && fitted.stations.includes(station) ? station : fitted.station,
      units: { ...fitted.units, ...units },
      unsure: fitted.unsure.filter((role) => !(role in units)),
    });
  }

  #read(layout: Layout): void {
    this.#layout = layout;
    const read = readDays(this.#table, layout);
    this.#days = read.days;
    const odd: readonly Problem[] = this.#odd ? [{ id: 'odd-encoding' }] : [];
    const problems = [...read.problems, ...odd];
    this.#post({ kind: 'layout', layout, read: summarise({ ...read, problems }) });
  }
}
