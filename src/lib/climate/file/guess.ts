import { readDepth, readNumber } from './cells';
import type { DepthUnit, FileUnits, Roles, Table, TemperatureUnit } from './types';

/**
 * Units told by the numbers, where the column names do not. These are marks by which to tell units
 * apart, shown to the reader for confirmation, and decide nothing else.
 */
const marks = {
  /** No air has been hotter than this in C, … */
  hottestC: 60,
  /** … or in F; a number beyond it is in tenths. */
  hottestF: 140,
  /** Rain of the wettest day: below this, with temperatures in F, it is in inches. */
  wettestDayInches: 20,
  /** Fresh snow is about ten times as deep as its water; in cm the number is about as large: the middle is the root of ten. */
  snowToWater: Math.sqrt(10),
} as const;

function* numbers(rows: Table, column: number | undefined): Generator<number> {
  if (column === undefined) return;
  for (const row of rows) {
    const number = readNumber(row[column] ?? '');
    if (typeof number === 'number') yield number;
  }
}

function largest(rows: Table, column: number | undefined): number {
  let best = -Infinity;
  for (const number of numbers(rows, column)) if (number > best) best = number;
  return best;
}

/** Tells C, F and tenths apart by the hottest day. Less than a summer of days can mislead it. */
export function guessTemperature(rows: Table, roles: Roles): TemperatureUnit {
  const hottest = largest(rows, roles.max ?? roles.min);
  if (hottest > marks.hottestF) return 'tenths-C';
  return hottest > marks.hottestC ? 'F' : 'C';
}

/** Rain goes with the temperature: F with inches, tenths with tenths, C with mm. */
export function guessRain(rows: Table, roles: Roles, temperature: TemperatureUnit): DepthUnit {
  if (temperature === 'tenths-C') return 'tenths-mm';
  if (temperature === 'C') return 'mm';
  return largest(rows, roles.rain) < marks.wettestDayInches ? 'in' : 'mm';
}

/** Snow goes with the rain; in metric files its depth against the water of the same days tells mm from cm. */
export function guessSnow(
  rows: Table,
  roles: Roles,
  { temperature, rain }: Omit<FileUnits, 'snow'>,
): DepthUnit {
  if (rain === 'in') return 'in';
  // Services that count tenths give snow in whole mm.
  if (temperature === 'tenths-C') return 'mm';
  let [depth, water] = [0, 0];
  for (const row of rows) {
    const snow = readNumber(row[roles.snow ?? -1] ?? '');
    const melted = readDepth(row[roles.rain ?? -1] ?? '', rain);
    if (typeof snow !== 'number' || typeof melted !== 'number' || snow <= 0) continue;
    depth += snow;
    water += melted;
  }
  return water > 0 && depth / water > marks.snowToWater ? 'mm' : 'cm';
}
