import type { ClockRecord, Spoiler } from '$lib/answers/readiness-record';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Problem } from './rules';

/** How long the prepared surface has been open. Hours. */
export type OpenTime =
  | { readonly state: 'not-started' }
  /** The time typed lies after now. */
  | { readonly state: 'time-ahead' }
  | {
      readonly state: 'fresh';
      readonly open: number;
      readonly left: number;
      readonly limit: number;
    }
  | { readonly state: 'gone-stale'; readonly open: number; readonly limit: number }
  | { readonly state: 'spoiled'; readonly by: Spoiler; readonly open: number };

const check = 'open-time';
const msPerHour = 3_600_000;

function readTime(
  text: string,
  field: 'prepared' | 'spoiled',
  problems: Problem[],
  row?: number,
): number | undefined {
  const time = Date.parse(text);
  if (!Number.isNaN(time)) return time;
  problems.push({ id: 'bad-time', check, field, typed: text, ...(row && { row }) });
  return undefined;
}

/**
 * The clock of a prepared surface. It starts when the last cleaning ended, not when the tool was
 * put down, and runs to the covering, at most to the figure `open.limit`; rain, dust or traffic after that ends it at once.
 * @param now date and time, ISO 8601
 * Source: UFC 3-270-03, 3.1, through the figure; the spoilers are common practice.
 */
export function openTime(
  clock: ClockRecord | undefined,
  now: string,
  problems: Problem[],
  own?: OwnFigures,
): OpenTime {
  if (!clock?.prepared) return { state: 'not-started' };
  const start = readTime(clock.prepared, 'prepared', problems);
  if (start === undefined) return { state: 'not-started' };
  const present = Date.parse(now);
  if (start > present) {
    problems.push({ id: 'time-ahead', check, field: 'prepared', typed: clock.prepared });
    return { state: 'time-ahead' };
  }
  const open = (present - start) / msPerHour;
  let first: { by: Spoiler; at: number } | undefined;
  clock.spoiled.forEach(({ by, at }, index) => {
    const time = readTime(at, 'spoiled', problems, index + 1);
    if (time === undefined || time < start) return;
    if (!first || time < first.at) first = { by, at: time };
  });
  if (first) return { state: 'spoiled', by: first.by, open };
  const limit = valueOf('open.limit', own);
  return open > limit
    ? { state: 'gone-stale', open, limit }
    : { state: 'fresh', open, left: limit - open, limit };
}
