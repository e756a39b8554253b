import { whyNotAsked } from '$lib/advice/relevance';
import type { Job, Zone } from '$lib/answers/job';
import type { ZoneQuestion } from '$lib/answers/questions';
import type { FigureId, OwnFigures } from '$shared/figures';

/** A zone taken out, with what is needed to put it back as it was. */
export interface Removed {
  readonly zone: Zone;
  readonly place: number;
  readonly wasRest: boolean;
}

const letters = 'abcdefghijklmnopqrstuvwxyz';

/** The letters of a column of a table: a, b … z, aa, ab … */
const letterId = (index: number): string =>
  (index >= letters.length ? letterId(Math.floor(index / letters.length) - 1) : '') +
  letters.charAt(index % letters.length);

/** The first id that no zone has; ids of zones taken out stay theirs, so that undoing brings no two together. */
export function freeId(job: Job, kept: readonly string[] = []): string {
  const taken = new Set([...job.zones.map(({ id }) => id), ...kept]);
  let index = 0;
  while (taken.has(letterId(index))) index += 1;
  return letterId(index);
}

/** "Ramp 2" after "Ramp", "Ramp 3" after that: the first number no zone has. A zone without a name has copies without one. */
export function copyName(name: string, taken: readonly string[]): string {
  if (!name.trim()) return '';
  const base = name.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${base} ${number}`)) number += 1;
  return `${base} ${number}`;
}

export const withZone = (job: Job, zone: Zone): Job => ({ ...job, zones: [...job.zones, zone] });

/** A job of one zone about which nothing is known: what is added takes its place. */
const isBlank = ({ zones: [first, ...more] }: Job): boolean =>
  !!first && !more.length && !first.name && !Object.keys(first.answers).length;

/** How many zones the job still takes. */
export const roomFor = (job: Job, most: number): number =>
  Math.max(0, most - (isBlank(job) ? 0 : job.zones.length));

/** The job with several zones more, behind the others. */
export function withZones(
  job: Job,
  added: readonly Pick<Zone, 'name' | 'answers'>[],
  kept: readonly string[] = [],
): { job: Job; ids: readonly string[] } {
  const start = isBlank(job) ? { ...job, zones: [] } : job;
  const taken = [...kept, ...job.zones.map(({ id }) => id)];
  const ids: string[] = [];
  const zones = added.map(({ name, answers }): Zone => {
    const id = freeId(start, [...taken, ...ids]);
    ids.push(id);
    return { id, name, answers };
  });
  return { job: { ...start, zones: [...start.zones, ...zones] }, ids };
}

/** The job without zones that were added; those somebody has since answered more of stay. */
export function withoutAdded(job: Job, added: readonly Zone[]): Job {
  const gone = new Set(added);
  const zones = job.zones.filter((zone) => !gone.has(zone));
  return { ...job, zones: zones.length ? zones : [{ id: freeId(job), name: '', answers: {} }] };
}

/** How much of it there is: of one place, and measured there. */
const amounts: ReadonlySet<ZoneQuestion> = new Set<ZoneQuestion>([
  'area',
  'crackLength',
  'barLength',
  'borderLength',
]);

/**
 * The zone once more, right behind itself. Patches, amounts and what was found when it was checked
 * stay behind: they are of one place. So do answers that count for nothing: they could count again unseen.
 */
export function withCopy(job: Job, id: string, copy: { id: string; name: string }): Job {
  const place = placeOf(job, id);
  const zone = job.zones[place];
  if (!zone) return job;
  const stays = (question: ZoneQuestion) =>
    amounts.has(question) || whyNotAsked(question, job.site, zone.answers) !== null;
  const like = Object.entries(zone.answers).filter(([id]) => !stays(id as ZoneQuestion));
  const next: Zone = { ...copy, answers: Object.fromEntries(like) };
  return { ...job, zones: job.zones.toSpliced(place + 1, 0, next) };
}

export const withChange = (job: Job, id: string, change: (zone: Zone) => Zone): Job => ({
  ...job,
  zones: job.zones.map((zone) => (zone.id === id ? change(zone) : zone)),
});

/** The zone moved to a place counted from 0; past either end it stays at that end. */
export function withMove(job: Job, id: string, to: number): Job {
  const zone = job.zones.find((each) => each.id === id);
  if (!zone) return job;
  const others = job.zones.filter((each) => each !== zone);
  const place = Math.max(0, Math.min(others.length, to));
  return { ...job, zones: others.toSpliced(place, 0, zone) };
}

/** The job without a zone, and what puts it back; null when there is no such zone, or it is the only one. */
export function withoutZone(job: Job, id: string): { job: Job; removed: Removed } | null {
  const place = placeOf(job, id);
  const zone = job.zones[place];
  if (!zone || job.zones.length === 1) return null;
  const { rest, ...others } = job;
  const wasRest = rest === id;
  const zones = job.zones.toSpliced(place, 1);
  return {
    job: { ...others, ...(rest && !wasRest && { rest }), zones },
    removed: { zone, place, wasRest },
  };
}

/** Puts a zone back where it was; under another id where another tab has given its own to a new zone. */
export function withRestored(
  job: Job,
  { zone, place, wasRest }: Removed,
): { job: Job; id: string } {
  const taken = job.zones.some(({ id }) => id === zone.id);
  const id = taken ? freeId(job) : zone.id;
  const zones = job.zones.toSpliced(place, 0, { ...zone, id });
  return { job: { ...job, zones, ...(wasRest && !job.rest && { rest: id }) }, id };
}

/** An object without one of its fields. */
const less = <T extends object>(from: T, field: string): T =>
  Object.fromEntries(Object.entries(from).filter(([key]) => key !== field)) as T;

/** A field of the job set, or taken out when there is nothing to set. */
export const withField = <K extends 'crew' | 'hoursPerDay' | 'totalArea' | 'machines' | 'calendar'>(
  job: Job,
  field: K,
  value: Job[K] | undefined,
): Job => (value === undefined ? less(job, field) : { ...job, [field]: value });

/** The reader's own value put over a figure of the trade, or taken off again. */
export function withOwn(job: Job, figure: FigureId, value: number | undefined): Job {
  const { own = {} } = job;
  const next: OwnFigures = value === undefined ? less(own, figure) : { ...own, [figure]: value };
  return Object.keys(next).length ? { ...job, own: next } : less(job, 'own');
}

const placeOf = (job: Job, id: string): number => job.zones.findIndex((zone) => zone.id === id);
