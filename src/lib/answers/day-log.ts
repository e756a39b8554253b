import type { StepId } from '$shared/methods';
import { isDate } from './dates';

/**
 * What a crew tells of its day, step by step: when it was started and stopped, when it was done,
 * a note. Plain data, kept with the zone (or with the job, where a step is done once for it). Hours
 * and pace are worked out from it again each time.
 */

/**
 * A moment as the clock on the wall had it there, with its distance from UTC (RFC 3339, to the
 * second): "2026-05-04T07:30:00+02:00". So hours stay right over a change of the clocks, and a
 * print made elsewhere shows the time that was on site.
 */
export type Moment = string;

/** One go at a step, kept under the moment it was started. */
export interface Spell {
  /** When it was stopped; absent while it goes on. */
  readonly to?: Moment;
  /** How many are at it. */
  readonly people: number;
  /** It went over several zones: those in which its step was begun at the same moment. */
  readonly together?: true;
}

export interface TaskLog {
  /** By start, so that two devices' logs of one step are brought together go by go. */
  readonly spells?: Readonly<Record<Moment, Spell>>;
  readonly done?: Moment;
  readonly note?: string;
}

/** What was told of each step of a zone. */
export type DayLog = Readonly<Partial<Record<StepId, TaskLog>>>;

const pattern = /^.{10}T([01]\d|2[0-3]):[0-5]\d:[0-5]\d[+-](0\d|1[0-4]):[0-5]\d$/;

/** Whether a text is a moment that there is. */
export const isMoment = (text: string): boolean => pattern.test(text) && isDate(dateOf(text));

/** Milliseconds since 1970. */
export const instantOf = (moment: Moment): number => Date.parse(moment);

/** The date on the wall, as in ISO 8601. */
export const dateOf = (moment: Moment): string => moment.slice(0, 10);

export type LogState = 'open' | 'running' | 'stopped' | 'done';

/** A log's spells, the earliest first. */
export const spellsOf = ({ spells = {} }: TaskLog): readonly (Spell & { from: Moment })[] =>
  Object.entries(spells)
    .map(([from, spell]) => ({ from, ...spell }))
    .sort((one, other) => instantOf(one.from) - instantOf(other.from));

export function stateOf(log: TaskLog = {}): LogState {
  if (log.done !== undefined) return 'done';
  const spells = spellsOf(log);
  if (!spells.length) return 'open';
  return spells.some(({ to }) => to === undefined) ? 'running' : 'stopped';
}

/** The same without a field. */
export const without = <T extends object>(from: T, field: keyof T & string): T =>
  Object.fromEntries(Object.entries(from).filter(([key]) => key !== field)) as T;

/** Begins a go; a step that was done is taken up again. Nothing new where one goes on. */
export function started(log: TaskLog, at: Moment, people: number, together = false): TaskLog {
  if (stateOf(log) === 'running') return log;
  const spell: Spell = { people, ...(together && { together }) };
  return { ...without(log, 'done'), spells: { ...log.spells, [at]: spell } };
}

/** Ends what goes on. A second start of the same instant ends with the first. */
export function stopped(log: TaskLog, at: Moment): TaskLog {
  if (!log.spells) return log;
  const ended = Object.entries(log.spells).map(([from, spell]) => [
    from,
    spell.to === undefined ? { ...spell, to: at } : spell,
  ]);
  return { ...log, spells: Object.fromEntries(ended) as TaskLog['spells'] & object };
}

/** Ends what goes on, and the step. */
export const finished = (log: TaskLog, at: Moment): TaskLog => ({ ...stopped(log, at), done: at });

/** A wrong "done" taken back; the hours stay. */
export const takenUp = (log: TaskLog): TaskLog => without(log, 'done');

export const noted = (log: TaskLog, note: string): TaskLog =>
  note.trim() ? { ...log, note } : without(log, 'note');

/** A go put in or put right; `was` is the start under which it stood. */
export function withSpell(
  log: TaskLog,
  was: Moment | null,
  { from, ...spell }: Spell & { readonly from: Moment },
): TaskLog {
  const others = was === null ? { ...log.spells } : without({ ...log.spells }, was);
  return { ...log, spells: { ...others, [from]: spell } };
}

export function withoutSpell(log: TaskLog, from: Moment): TaskLog {
  const spells = without({ ...log.spells }, from);
  return Object.keys(spells).length ? { ...log, spells } : without(log, 'spells');
}
