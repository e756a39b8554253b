import type { OwnFigures } from '$shared/figures';
import { frequencyOfWeather } from './answer';
import { cyclesFromCounts } from './cycles';
import { isSouthern, usualFrosts, winterTest } from './frosts';
import { weatheringClass, weatheringIndex } from './rain';
import type { Day, Weather } from './types';
import { countMonths, countYear, splitYears } from './years';

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

/** The month its years should begin in when no calendar year is whole: the first whole month of the file. */
function firstWholeMonth(first: Day): number {
  return first.day === 1 ? first.month : (first.month % 12) + 1;
}

/**
 * Reads a climate out of one station's daily weather.
 * @param days in order of date, no date twice, at least one
 * @param own the reader's own values, laid over the figures
 * @throws RangeError when there are no days
 */
export function readWeather(days: readonly Day[], own?: OwnFigures): Weather {
  const [from, to] = [days[0], days.at(-1)];
  if (!from || !to) throw new RangeError('expected at least one day of weather');
  const south = isSouthern(days);
  const frosts = usualFrosts(days, south, own);
  const inWinter = winterTest(frosts);
  const count = (start: number) => {
    const split = splitYears(days, start);
    const years = [...split].map(([year, inside]) => countYear(year, inside, start, inWinter, own));
    const kept = years.filter((year) => year.kept);
    return { start, years, kept, inside: kept.map(({ year }) => split.get(year) ?? []) };
  };
  const calendar = count(1);
  const other = calendar.kept.length ? calendar : count(firstWholeMonth(from));
  const { start, years, kept, inside } = other.kept.length ? other : calendar;
  const cycles = kept.length
    ? {
        direct: mean(kept.map((year) => year.cycles)),
        byDifference: cyclesFromCounts(
          mean(kept.map((year) => year.frost)),
          mean(kept.map((year) => year.ice)),
        ),
      }
    : null;
  const rains = kept.map((year) => year.winterRain).filter((rain) => rain !== null);
  const hasRain = days.some((day) => day.rain !== null);
  const winterRain = hasRain && rains.length ? mean(rains) : null;
  const index = cycles && winterRain !== null ? weatheringIndex(cycles.direct, winterRain) : null;
  const weathering = index === null ? null : weatheringClass(index, own);
  return {
    from: { year: from.year, month: from.month, day: from.day },
    to: { year: to.year, month: to.month, day: to.day },
    south,
    yearStarts: start,
    years,
    months: countMonths(inside, own),
    cycles,
    frosts,
    winterRain,
    snowKnown: days.some((day) => day.snow !== null),
    index,
    weathering,
    frequency: cycles ? frequencyOfWeather(cycles.direct, weathering, own) : null,
  };
}
