import type { Job } from '$lib/answers/job';
import { parseJob, writeJob } from './job-file';
import type { Checked } from './problem';

/**
 * Two states of one job brought together, one kept here and one brought from another device. Field
 * by field: what only one of them has comes along, what both have alike stays, and what differs is
 * handed back for the reader to choose. Until then what is here stands.
 */

/** Where a field stands: `['site', 'salts']`, `['zones', 'a', 'answers', 'depth']`. */
export type Place = readonly string[];

export interface Field {
  readonly place: Place;
  readonly value: unknown;
}

/** A field both have, otherwise in each. */
export interface Difference {
  readonly place: Place;
  readonly here: unknown;
  readonly brought: unknown;
}

export interface Merge {
  /** What is here, with what only the other has. */
  readonly job: Job;
  /** Fields that came along. */
  readonly taken: readonly Field[];
  readonly differing: readonly Difference[];
}

type Tree = Readonly<Record<string, unknown>>;
const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Parts of a job, and of a zone, whose own fields are merged one by one, and how many levels down;
 * all else is one field. A crew's log goes down to each go at each step: step, its goes, the go.
 */
const opened: Readonly<Record<'job' | 'zone', Readonly<Record<string, number>>>> = {
  job: { site: 1, calendar: 1, prices: 1, own: 1, toolLevels: 1, crewDay: 1, log: 4 },
  zone: { answers: 1, readiness: 1, log: 4 },
};

export const keyOf = (place: Place): string => JSON.stringify(place);

/** A value as text, the same whatever order its own fields stand in. */
const text = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) =>
    isTree(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  );

function flat(
  tree: Tree,
  levels: (name: string) => number,
  at: Place,
  into: Map<string, Field>,
): void {
  for (const [name, value] of Object.entries(tree)) {
    if (value === undefined) continue;
    const more = levels(name);
    if (more > 0 && isTree(value)) flat(value, () => more - 1, [...at, name], into);
    else into.set(keyOf([...at, name]), { place: [...at, name], value });
  }
}

/** Every field of a job by its place. A zone's own id is its place. */
export function fieldsOf({ zones, ...rest }: Job): ReadonlyMap<string, Field> {
  const all = new Map<string, Field>();
  flat(rest, (name) => opened.job[name] ?? 0, [], all);
  for (const { id, ...zone } of zones)
    flat(zone, (name) => opened.zone[name] ?? 0, ['zones', id], all);
  return all;
}

interface Open {
  [name: string]: unknown;
}

/** The job that has these fields, its zones in this order. */
function jobOf(fields: Iterable<Field>, order: readonly string[]): Job {
  const job: Open = { site: {} };
  const zones = new Map(order.map((id) => [id, { id, answers: {} } as Open]));
  for (const { place, value } of fields) {
    const [root, from] =
      place[0] === 'zones' ? [zones.get(place[1] as string) as Open, 2] : [job, 0];
    const names = place.slice(from);
    const last = names.pop() as string;
    const leaf = names.reduce<Open>((at, name) => (at[name] ??= {}) as Open, root);
    leaf[last] = value;
  }
  return { ...job, zones: [...zones.values()] } as unknown as Job;
}

const zoneIds = ({ zones }: Job) => zones.map(({ id }) => id);

/** Two zones of one id that were begun apart: each device named one after the same letter. */
export const begunApart = (here: Job, brought: Job): readonly string[] =>
  here.zones
    .filter(({ id, name }) => {
      const other = brought.zones.find((each) => each.id === id);
      return !!other && !!name && !!other.name && other.name !== name;
    })
    .map(({ id }) => id);

/** The brought job with new ids for these zones, so that they come beside those here. */
export function besideHere(here: Job, brought: Job, apart: readonly string[]): Job {
  const taken = new Set([...zoneIds(here), ...zoneIds(brought)]);
  const free = (id: string): string => {
    let number = 2;
    while (taken.has(`${id}${String(number)}`)) number += 1;
    const found = `${id}${String(number)}`;
    taken.add(found);
    return found;
  };
  const renamed = new Map(apart.map((id) => [id, free(id)]));
  const { rest } = brought;
  return {
    ...brought,
    zones: brought.zones.map((zone) => ({ ...zone, id: renamed.get(zone.id) ?? zone.id })),
    ...(rest !== undefined && { rest: renamed.get(rest) ?? rest }),
  };
}

/**
 * Brings a job into another.
 * @param chosen keys of the differing fields of which the brought value was chosen
 * @returns a problem where what comes of it is no job; both stay as they were
 */
export function mergeJobs(
  here: Job,
  brought: Job,
  chosen: ReadonlySet<string> = new Set(),
): Checked<Merge> {
  const mine = fieldsOf(here);
  const theirs = fieldsOf(brought);
  const all = new Map(mine);
  const taken: Field[] = [];
  const differing: Difference[] = [];
  for (const [key, field] of theirs) {
    const own = mine.get(key);
    if (!own) {
      all.set(key, field);
      taken.push(field);
    } else if (text(own.value) !== text(field.value)) {
      differing.push({ place: field.place, here: own.value, brought: field.value });
      if (chosen.has(key)) all.set(key, field);
    }
  }
  const order = [...new Set([...zoneIds(here), ...zoneIds(brought)])];
  const read = parseJob(writeJob(jobOf(all.values(), order)));
  return read.ok ? { ok: true, value: { job: read.value, taken, differing } } : read;
}
