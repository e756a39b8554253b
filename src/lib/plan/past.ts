import { dateOf, instantOf, type Moment } from '$lib/answers/day-log';
import type { Stretch } from './clock';
import type { SoFar, TaskSoFar } from './so-far';
import { hoursBetween } from './spent';
import type { Reach, Task } from './tasks';

/** Work of a task that lies behind. Hours from the start of work on day 1. */
interface Behind {
  readonly people: readonly number[];
  readonly stretches: readonly Stretch[];
  /** When it was done; null while it is not. */
  readonly done: number | null;
  readonly running: boolean;
  /** Hours at the task still to come. */
  readonly left: Reach | null;
}

/** What lies behind a schedule. */
export interface Past {
  readonly told: ReadonlyMap<Task, Behind>;
  /** From when on the rest is laid. */
  readonly from: number;
}

const hoursInDay = 24;
const msPerDay = 86_400_000;
const roundOff = 1e-9;
const ms = (date: string): number => Date.parse(`${date}T00:00:00Z`);

/** Moments in the hours of a schedule: day 1 is the first day told, and each day's work begins with its first moment. */
function hoursOf(moments: readonly Moment[]): (moment: Moment) => number {
  const begins = new Map<string, number>();
  for (const moment of moments) {
    const date = dateOf(moment);
    begins.set(date, Math.min(begins.get(date) ?? Infinity, instantOf(moment)));
  }
  const first = [...begins.keys()].sort()[0] ?? '';
  return (moment) => {
    const date = dateOf(moment);
    const day = Math.round((ms(date) - ms(first)) / msPerDay);
    const into = hoursBetween(begins.get(date) ?? instantOf(moment), instantOf(moment));
    return day * hoursInDay + Math.min(into, hoursInDay - roundOff);
  };
}

/** Who is free when: a day's hours of each person, filled from the front. */
class Hands {
  readonly #until = new Map<number, number>();
  readonly #people: number;
  constructor(people: number) {
    this.#people = people;
  }
  /** The first so many who are free then; where too few are, those who are soonest. */
  free(count: number, at: number): number[] {
    const all = Array.from({ length: this.#people }, (_, person) => person);
    const late = (person: number) => Math.max(0, (this.#until.get(person) ?? 0) - at - roundOff);
    return all.toSorted((one, other) => late(one) - late(other) || one - other).slice(0, count);
  }
  soonest(from: number): number {
    const [person = 0] = this.free(1, from);
    return Math.max(from, this.#until.get(person) ?? 0);
  }
  take(people: readonly number[], until: number): void {
    for (const person of people)
      this.#until.set(person, Math.max(until, this.#until.get(person) ?? 0));
  }
}

/**
 * Where the work told lies in a schedule. What was ticked off without hours lies on the day of its
 * tick for as long as it was reckoned, so that the day keeps what its people breathe and hold.
 * @param people on the crew; more than these are not told apart
 */
export function pastOf(
  { told }: SoFar,
  moments: readonly Moment[],
  people: number,
  hoursPerDay: number,
): Past {
  const hourOf = hoursOf(moments);
  const hands = new Hands(people);
  const found = new Map<Task, Behind>();
  const put = (task: Task, who: readonly number[], stretch: Stretch): void => {
    const { spent, left } = told.get(task) as TaskSoFar;
    const before = found.get(task) ?? { people: [], stretches: [], done: null };
    hands.take(who, stretch.to);
    found.set(task, {
      ...before,
      left,
      running: spent.state === 'running',
      people: [...new Set([...before.people, ...who])].sort((one, other) => one - other),
      stretches: [...before.stretches, stretch],
    });
  };
  const goes = [...told].flatMap(([task, { spent }]) =>
    spent.pieces.map((piece) => {
      const into = hoursBetween(instantOf(piece.start), piece.from);
      const from = hourOf(piece.start) + into;
      return { task, piece, from, to: from + hoursBetween(piece.from, piece.to) };
    }),
  );
  for (const { task, piece, from, to } of goes.toSorted((one, other) => one.from - other.from)) {
    const day = Math.floor(hourOf(piece.start) / hoursInDay) + 1;
    put(task, hands.free(task.shared ? piece.people : 1, from), { day, from, to });
  }
  for (const [task, { spent }] of told) {
    if (spent.state === 'running' && spent.open !== null) {
      // What goes on stands on the day on which it was begun.
      const at = hourOf(spent.open);
      put(task, [], { day: Math.floor(at / hoursInDay) + 1, from: at, to: at });
    }
    if (spent.done === null) continue;
    const at = hourOf(spent.done);
    if (!found.has(task)) {
      const day = Math.floor(at / hoursInDay) + 1;
      const morning = (day - 1) * hoursInDay;
      const long = Math.min(task.hours?.atTask.typical ?? 0, hoursPerDay);
      const from = Math.min(hands.soonest(morning), morning + hoursInDay - long);
      put(task, hands.free(1, from), { day, from, to: from + long });
    }
    const behind = found.get(task) as Behind;
    found.set(task, { ...behind, done: Math.max(at, behind.stretches.at(-1)?.to ?? 0) });
  }
  const last = Math.max(0, ...moments.map(hourOf));
  return { told: found, from: Math.max(last, ...endsOn(found, last)) };
}

/** Ends of the work that lies on the day of an hour: what was ticked off there without hours took its time. */
const endsOn = (told: ReadonlyMap<Task, Behind>, hour: number): number[] => {
  const day = Math.floor(hour / hoursInDay) + 1;
  return [...told.values()].flatMap(({ stretches }) =>
    stretches.flatMap((each) => (each.day === day ? Math.min(each.to, day * hoursInDay) : [])),
  );
};
