import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { isKnown, type Amount, type Span } from './amount';
import type { PlanStep } from './order';

/** A piece of a step laid on a working day. Hours are clock hours of that day. */
export interface Laid {
  readonly step: StepId;
  readonly from: number;
  readonly to: number;
}

export interface Day {
  readonly number: number;
  readonly laid: readonly Laid[];
  /** Hours of drying that end or go on this day before the step named can begin. */
  readonly waiting: readonly { readonly before: StepId; readonly hours: number }[];
}

export interface Schedule {
  /** Laid with the longer of every range: a plan to rely on. */
  readonly days: readonly Day[];
  /** Fewest and most working days. */
  readonly count: Span;
  /** Steps whose hours are not known, so that they take no room here. */
  readonly unknown: readonly StepId[];
  readonly crew: number;
  readonly hoursPerDay: number;
}

const hoursInDay = 24;
/** Steps that more hands do not make shorter: one machine, or one person checking. */
export const oneMachine: readonly StepId[] = [
  'scarify',
  'shotblast',
  'grind',
  'blast-clean',
  'abrasive-blast',
  'saw-cut',
  'water-jet',
  'check-ready',
];

/**
 * Lays the steps one after another over working days.
 * Machine time is stretched by the share of a day a machine really runs (figure `crew.usable`);
 * hand work is shared by the crew; drying runs through the night.
 */
export function layDays(
  steps: readonly (PlanStep & { readonly hours: Amount | null })[],
  people: { crew?: number | undefined; hoursPerDay?: number | undefined },
  own?: OwnFigures,
): Schedule {
  const crew = people.crew ?? valueOf('crew.size', own);
  const hoursPerDay = people.hoursPerDay ?? valueOf('crew.day', own);
  const usable = rangeOf('crew.usable', own);
  const lengths = steps.map(({ id, hours, wait }) => {
    const hands = oneMachine.includes(id) ? 1 : crew;
    const [low, high] = hours && isKnown(hours) ? hours.span : [0, 0];
    return {
      id,
      low: low / usable[1] / hands,
      high: high / usable[0] / hands,
      wait: wait?.hours ?? ([0, 0] as Span),
    };
  });
  const most = lay(
    lengths.map(({ id, high, wait }) => ({ id, hours: high, wait: wait[1] })),
    hoursPerDay,
  );
  const least = lay(
    lengths.map(({ id, low, wait }) => ({ id, hours: low, wait: wait[0] })),
    hoursPerDay,
  );
  return {
    days: most,
    count: [least.length, most.length],
    unknown: steps.filter(({ hours }) => hours && !isKnown(hours)).map(({ id }) => id),
    crew,
    hoursPerDay,
  };
}

function lay(
  steps: readonly { id: StepId; hours: number; wait: number }[],
  hoursPerDay: number,
): Day[] {
  const days: { number: number; laid: Laid[]; waiting: { before: StepId; hours: number }[] }[] = [];
  const dayAt = (number: number) =>
    (days[number] ??= { number: number + 1, laid: [], waiting: [] });
  let day = 0;
  let hour = 0;
  for (const { id, hours, wait } of steps) {
    if (wait > 0) {
      // Drying goes on by the clock; work goes on when the next working day begins after it.
      dayAt(day).waiting.push({ before: id, hours: wait });
      const ends = day * hoursInDay + hour + wait;
      const next = Math.floor(ends / hoursInDay);
      const into = ends - next * hoursInDay;
      for (let dry = day + 1; dry <= next; dry++) dayAt(dry);
      [day, hour] = into > hoursPerDay ? [next + 1, 0] : [next, next > day ? into : hour + wait];
    }
    let left = hours;
    while (left > 1e-9) {
      if (hour >= hoursPerDay - 1e-9) [day, hour] = [day + 1, 0];
      const now = Math.min(left, hoursPerDay - hour);
      dayAt(day).laid.push({ step: id, from: hour, to: hour + now });
      hour += now;
      left -= now;
    }
  }
  for (let number = 0; number <= day; number++) dayAt(number);
  return days;
}
