import type { CheckResult, PullOffTest, Reading, Requirement } from '$lib/answers/readiness-record';
import { judgePullOff } from '$lib/readiness/judge-pull-off';
import { judgeReadings, type ReadingContext } from '$lib/readiness/judge-readings';
import { readPullOff } from '$lib/readiness/pull-off';
import { askedBy } from '$lib/readiness/requirement';
import type { Problem } from '$lib/readiness/rules';

/** An overlay is wanted, and no bar was seen to rust. */
export const context: ReadingContext = { profile: [5, 10], corroded: false };

/** What the readings of a check come to. */
export const judgeCheck = (
  check: Parameters<typeof judgeReadings>[0],
  readings: Reading[],
  given: CheckResult['given'] = {},
  around = context,
) => judgeReadings(check, { readings, given }, readings.length, around, []);

/** A pull-off that broke wholly in the old concrete, MPa. */
export const inBase = (stress: number): PullOffTest => ({ stress, shares: { base: 100 } });

export const overlay: Requirement = { id: 'overlay-control' };

/** What pull-off tests come to, and what is wrong with how they were written down. */
export function judgePulls(tests: PullOffTest[], requirement: Requirement = overlay) {
  const problems: Problem[] = [];
  const reading = readPullOff(tests, problems);
  const finding = judgePullOff(reading, askedBy(requirement, problems), 0);
  return { ...finding, reading, problems };
}
