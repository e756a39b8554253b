import { valueOf } from '$shared/figures';
import type { Day } from '$lib/climate/types';
import type { Problem } from './types';

/** The mean maximum of each year that has at least half its days, C. */
function yearMeans(days: readonly Day[]): Map<number, number> {
  const sums = new Map<number, { sum: number; days: number }>();
  for (const { year, max } of days) {
    if (max === null) continue;
    const entry = sums.get(year) ?? { sum: 0, days: 0 };
    entry.sum += max;
    entry.days += 1;
    sums.set(year, entry);
  }
  const halfYear = 183;
  return new Map(
    [...sums]
      .filter(([, entry]) => entry.days >= halfYear)
      .map(([year, entry]) => [year, entry.sum / entry.days]),
  );
}

function yearJump(
  year: number,
  days: readonly Day[],
  rowOf: (at: number) => number | undefined,
): Problem {
  const first = days.find((day) => day.year === year);
  const row = first && rowOf(first.at);
  return { id: 'year-jump', text: String(year), ...(row === undefined ? {} : { row }) };
}

/**
 * What computes, but looks as if a unit or a column were not what it was taken for.
 * @param rowOf the row a day came from, to name it
 */
export function findOddities(
  days: readonly Day[],
  rowOf: (at: number) => number | undefined,
): Problem[] {
  const odd: Problem[] = [];
  const means = yearMeans(days);
  const sorted = [...means.values()].sort((a, b) => a - b);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  for (const [year, mean] of means)
    if (Math.abs(mean - (middle ?? mean)) > valueOf('weather.year-jump'))
      odd.push(yearJump(year, days, rowOf));
  let [snow, water] = [0, 0];
  for (const day of days) {
    if (day.snow === null || day.snow <= 0 || day.rain === null) continue;
    snow += day.snow;
    water += day.rain;
  }
  const excess = valueOf('snow.excess');
  if (snow * valueOf('snow.water') > excess * water) odd.push({ id: 'snow-lying' });
  return odd;
}
