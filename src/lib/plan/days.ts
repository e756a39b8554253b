import type { StepId } from '$shared/methods';
import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { tools, type ToolId } from '$shared/tools';
import type { Span } from './amount';
import { dayOf, type Clock } from './clock';
import type { Past } from './past';
import { layTasks, type End, type Placed } from './schedule';
import type { Reach, Task } from './tasks';
import { hireOf } from './hire';

/** A piece of a step laid on a day. Hours from the start of that day's work. */
export interface Laid {
  readonly step: StepId;
  readonly from: number;
  readonly to: number;
}

/** A day of the calendar, from the first to the last on which somebody works. */
export interface Day {
  readonly number: number;
  readonly laid: readonly Laid[];
  /** Hours of drying that begin on this day before the step named can begin. */
  readonly waiting: readonly { readonly before: StepId; readonly hours: number }[];
  /** People at work. */
  readonly people: number;
}

/** A machine, from which day to which it is needed. */
export interface Hire {
  readonly tool: ToolId;
  readonly from: number;
  readonly to: number;
  /** The most it may weigh, by class, where the work says so. */
  readonly classes: readonly FigureId[];
  /** Days on which it runs. */
  readonly days: readonly number[];
}

/** From the last cleaning of a zone to its covering. Hours from the start of work on day 1. */
export interface Covering {
  /** The end of the last cleaning. */
  readonly last: number;
  /** The start of the covering; null where nothing is to go on, or nobody has said what. */
  readonly cover: number | null;
}

/** Hours a cleaned zone lies open before it is covered; null where nothing is to cover it yet. */
export const openHours = ({ last, cover }: Covering): number | null =>
  cover === null ? null : cover - last;

/** Zones that would lie open longer than a cleaning holds (figure `open.limit`). */
export const openTooLong = (covering: Schedule['covering'], own?: OwnFigures): string[] =>
  Object.entries(covering).flatMap(([zone, each]) =>
    (openHours(each) ?? 0) > valueOf('open.limit', own) ? [zone] : [],
  );

/** Days that count for the neighbours and for the hire. */
export interface Tally {
  /** Days on which somebody works. */
  readonly worked: number;
  /** Days with a tool as loud as `noise.niosh-criterion`, or of which nobody has published how loud. */
  readonly loud: number;
  /** Days with a tool that throws dust of concrete. */
  readonly dusty: number;
  /** Days of each machine, added up. */
  readonly hired: number;
}

/** How the days of a job are counted. */
export interface Calendar {
  readonly crew?: number | undefined;
  readonly hoursPerDay?: number | undefined;
  /** Days of the job, counted from 1, on which nobody works. */
  readonly off?: ((day: number) => boolean) | undefined;
}

export interface Schedule {
  /** Laid with typical values. */
  readonly days: readonly Day[];
  /** Days on which somebody works: fewest and most, and with typical values. */
  readonly count: Span;
  readonly typicalCount: number;
  /** The same in days, at each end of every range. */
  readonly tally: Readonly<Record<keyof Reach, Tally>>;
  /** Days on which somebody still has to work, as `count` and `typicalCount`, and the first of them; null before work began. */
  readonly left: {
    readonly count: Span;
    readonly typical: number;
    readonly first: number | null;
  } | null;
  /** Days from the first to the last on which somebody works, days of waiting counted. */
  readonly calendarDays: number;
  readonly placed: readonly Placed[];
  readonly covering: Readonly<Record<string, Covering>>;
  readonly hire: readonly Hire[];
  /** Steps whose hours are not known, so that they take no room here. */
  readonly unknown: readonly StepId[];
  readonly crew: number;
  readonly hoursPerDay: number;
}

/** Fewest and most of what is tallied: shorter work can, rarely, fall out less handily. */
export function spanOf(tally: Schedule['tally'], of: keyof Tally): Span {
  const ends = [tally.low[of], tally.typical[of], tally.high[of]];
  return [Math.min(...ends), Math.max(...ends)];
}

const hoursInDay = 24;
const startOf = (day: number): number => (day - 1) * hoursInDay;

/** When anybody works; the usual length of a day where none is given. */
export const clockOf = ({ hoursPerDay, off }: Calendar, own?: OwnFigures): Clock => ({
  hoursPerDay: hoursPerDay ?? valueOf('crew.day', own),
  off: off ?? (() => false),
});

/**
 * The days of a job.
 * @param pastFor what of it lies behind; the rest is laid from there on
 */
export function layDays(
  tasks: readonly Task[],
  calendar: Calendar,
  own?: OwnFigures,
  pastFor?: (people: number, hoursPerDay: number) => Past,
): Schedule {
  const crew = calendar.crew ?? valueOf('crew.size', own);
  const clock = clockOf(calendar, own);
  const { hoursPerDay } = clock;
  const people = Math.max(1, Math.round(crew));
  const past = pastFor?.(people, hoursPerDay) ?? null;
  const laid = (end: End) => layTasks(tasks, people, clock, end, own, past);
  const [low, placed, high] = [laid('low'), laid('typical'), laid('high')];
  const tally = { low: tallyOf(low, own), typical: tallyOf(placed, own), high: tallyOf(high, own) };
  const typicalCount = tally.typical.worked;
  return {
    days: daysOf(placed),
    count: spanOf(tally, 'worked'),
    typicalCount,
    tally,
    left: past && daysAfter(past.from, [low, placed, high]),
    calendarDays: workedOn(placed).at(-1) ?? 0,
    placed,
    covering: coveringOf(placed),
    hire: hireOf(placed),
    unknown: [
      ...new Set(tasks.flatMap(({ without, step }) => (without === 'missing' ? [step] : []))),
    ],
    crew,
    hoursPerDay,
  };
}

/** Days on which somebody works, in order. */
export const workedOn = (placed: readonly Placed[]): number[] =>
  [...new Set(placed.flatMap(({ stretches }) => stretches.map(({ day }) => day)))].sort(
    (one, other) => one - other,
  );

/** Days with work that is still to come, at each end of every range. */
function daysAfter(hour: number, ends: readonly (readonly Placed[])[]): Schedule['left'] {
  const days = ends.map((placed) =>
    placed.flatMap(({ stretches }) =>
      stretches.flatMap(({ day, from, to }) => (to > from && from >= hour ? [day] : [])),
    ),
  );
  const counts = days.map((each) => new Set(each).size);
  const usual = days[1] ?? [];
  return {
    count: [Math.min(...counts), Math.max(...counts)],
    typical: counts[1] ?? 0,
    first: usual.length ? Math.min(...usual) : null,
  };
}

function daysOf(placed: readonly Placed[]): Day[] {
  const last = workedOn(placed).at(-1) ?? 0;
  const laid = Array.from({ length: last }, (): Laid[] => []);
  const hands = Array.from({ length: last }, () => new Set<number>());
  const waiting = Array.from({ length: last }, () => new Map<StepId, number>());
  for (const { task, people, from, stretches } of placed) {
    for (const { day, from: begin, to } of stretches) {
      laid[day - 1]?.push({ step: task.step, from: begin - startOf(day), to: to - startOf(day) });
      for (const person of people) hands[day - 1]?.add(person);
    }
    if (task.wait) {
      const here = waiting[dayOf(Math.max(0, from - task.wait.hours.typical)) - 1];
      here?.set(task.step, Math.max(here.get(task.step) ?? 0, task.wait.hours.typical));
    }
  }
  return laid.map((pieces, index) => ({
    number: index + 1,
    laid: joined(pieces),
    waiting: [...(waiting[index] ?? [])].map(([before, hours]) => ({ before, hours })),
    people: hands[index]?.size ?? 0,
  }));
}

/** Pieces of one step that touch or overlap are one: it is the same machine going on in the next zone. */
export function joined(pieces: readonly Laid[]): Laid[] {
  const found: Laid[] = [];
  for (const piece of pieces.toSorted((one, other) => one.from - other.from)) {
    const index = found.findLastIndex(
      ({ step, to }) => step === piece.step && piece.from <= to + 1e-6,
    );
    const before = found[index];
    if (before) found[index] = { ...before, to: Math.max(before.to, piece.to) };
    else found.push(piece);
  }
  return found;
}

function coveringOf(placed: readonly Placed[]): Record<string, Covering> {
  const found: Record<string, Covering> = {};
  for (const { task, to } of placed)
    if (task.step === 'last-clean')
      for (const zone of task.zones)
        found[zone] = {
          last: to,
          cover:
            placed.find(({ task: other }) => other.step === 'cover' && other.zones.includes(zone))
              ?.from ?? null,
        };
  return found;
}

function tallyOf(placed: readonly Placed[], own?: OwnFigures): Tally {
  // A vacuum takes dust up: it throws none.
  const daysWith = (counts: (tool: ToolId) => boolean) =>
    workedOn(placed.filter(({ task }) => counts(task.tool.tool))).length;
  const criterion = valueOf('noise.niosh-criterion', own);
  const loud = (tool: ToolId) => {
    const { noise, power } = tools[tool];
    if (noise === 'quiet') return false;
    return noise === null ? power.length > 0 : rangeOf(noise, own)[1] >= criterion;
  };
  return {
    worked: workedOn(placed).length,
    loud: daysWith(loud),
    dusty: daysWith((tool) => tools[tool].dust && tool !== 'vacuum'),
    hired: hireOf(placed).reduce((sum, { days }) => sum + days.length, 0),
  };
}
