import { valueOf, type OwnFigures } from '$shared/figures';
import { dayAtPlace, dayNumber, placeInYear, type MonthDay } from './calendar';
import type { Day, Frosts } from './types';

const places = 366;
const months = 12;

/** Whether the file's seasons are those south of the equator: its January half is the warmer one. */
export function isSouthern(days: readonly Day[]): boolean {
  const sum = { winter: 0, winterDays: 0, summer: 0, summerDays: 0 };
  for (const { month, max } of days) {
    if (max === null) continue;
    if (month === 12 || month <= 2) {
      sum.winter += max;
      sum.winterDays += 1;
    } else if (month >= 6 && month <= 8) {
      sum.summer += max;
      sum.summerDays += 1;
    }
  }
  // Nothing divided by nothing is neither more nor less.
  return sum.winter / sum.winterDays > sum.summer / sum.summerDays;
}

/** The month in which winters are counted from. */
function turnOfWinter(south: boolean, own?: OwnFigures): number {
  const north = valueOf('winter.turn', own);
  return south ? ((north + months / 2 - 1) % months) + 1 : north;
}

/** The middle of some places; a winter without frost stands beyond all the others. Null where the middle is one. */
function middle(sorted: readonly number[], round: (place: number) => number): number | null {
  const half = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(half) - 1], sorted[Math.floor(half)]];
  if (low === undefined || high === undefined) return null;
  const place = (low + high) / 2;
  return Number.isFinite(place) ? round(place) : null;
}

/** One winter's first and last frost; null where it had none, absent where gaps hide it. */
interface Winter {
  first?: Day | null;
  last?: Day | null;
}

function readWinter(days: readonly Day[], begin: number, end: number, own?: OwnFigures): Winter {
  const allowed = valueOf('weather.missing-days', own);
  const killing = valueOf('frost.killing', own);
  const measured = days.filter((day) => day.min !== null);
  const isFrost = (day: Day) => day.min !== null && day.min <= killing;
  const [first, last] = [measured.find(isFrost), measured.findLast(isFrost)];
  if (!first || !last)
    return end - begin - measured.length <= allowed ? { first: null, last: null } : {};
  const before = first.at - begin - measured.indexOf(first);
  const after = end - 1 - last.at - (measured.length - 1 - measured.lastIndexOf(last));
  return { ...(before <= allowed ? { first } : {}), ...(after <= allowed ? { last } : {}) };
}

/**
 * The usual first and last frost: the median over the winters in which each is known.
 * A frost may be known though the winter is not whole, so that a single calendar year gives both.
 * @param days in order of date
 */
export function usualFrosts(days: readonly Day[], south: boolean, own?: OwnFigures): Frosts {
  const turn = turnOfWinter(south, own);
  const winters = new Map<number, Day[]>();
  for (const day of days) {
    const year = day.month >= turn ? day.year : day.year - 1;
    const winter = winters.get(year);
    if (winter) winter.push(day);
    else winters.set(year, [day]);
  }
  const turnPlace = placeInYear({ month: turn, day: 1 });
  const placeOf = (day: Day) => (placeInYear(day) - turnPlace + places) % places;
  const firsts: number[] = [];
  const lasts: number[] = [];
  for (const [year, inside] of winters) {
    const begin = dayNumber({ year, month: turn, day: 1 });
    const end = dayNumber({ year: year + 1, month: turn, day: 1 });
    const { first, last } = readWinter(inside, begin, end, own);
    if (first !== undefined) firsts.push(first === null ? Infinity : placeOf(first));
    if (last !== undefined) lasts.push(last === null ? -Infinity : placeOf(last));
  }
  firsts.sort((a, b) => a - b);
  lasts.sort((a, b) => a - b);
  const least = valueOf('frost.most-winters', own);
  const usual = (sorted: readonly number[], round: (place: number) => number): MonthDay | null => {
    const frosty = sorted.filter((place) => Number.isFinite(place)).length;
    if (!sorted.length || frosty / sorted.length < least) return null;
    const place = middle(sorted, round);
    return place === null ? null : dayAtPlace(turnPlace + place);
  };
  return {
    // Rounded outward: the longer winter is the careful one.
    first: usual(firsts, Math.floor),
    last: usual(lasts, Math.ceil),
    winters: Math.min(firsts.length, lasts.length),
  };
}

/**
 * Whether a day lies between and including the usual first and last frost.
 * Nothing does where frost is not usual.
 */
export function winterTest({ first, last }: Frosts): (day: MonthDay) => boolean {
  if (!first || !last) return () => false;
  const [from, to] = [placeInYear(first), placeInYear(last)];
  const inside = (place: number) =>
    from <= to ? place >= from && place <= to : place >= from || place <= to;
  const table = Array.from({ length: places }, (_, place) => inside(place));
  return (day) => table[placeInYear(day)] === true;
}
