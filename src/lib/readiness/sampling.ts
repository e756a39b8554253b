import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import { checkIds, type CheckId, type Entry } from '$lib/answers/readiness-record';
import { figures, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { checks, type CountRule } from './checks';
import { isNumber } from './entries';
import type { Problem } from './rules';

/** How many tests, and on whose word. */
export interface Count {
  readonly tests: number;
  /** `rule`: a published or reported rule; `practice`: no rule found; `own`: the reader's number. */
  readonly by: 'rule' | 'practice' | 'own';
  readonly figures: readonly FigureId[];
  /** The rule goes by area, and the area is not known: this is the least it can be. */
  readonly areaOpen: boolean;
}

/** Whole pieces of area, a part counting as one; exact multiples stay exact in spite of rounding. */
export const pieces = (area: number, piece: number) => Math.ceil(area / piece - 1e-9);

function byRule(rule: CountRule, area: number, own?: OwnFigures): number {
  const tests = valueOf(rule.tests, own);
  if (rule.kind === 'at-least') return tests;
  if (rule.kind === 'per-area') return tests * Math.max(1, pieces(area, valueOf(rule.area, own)));
  const beyond = area - valueOf(rule.first, own);
  return tests + Math.max(0, pieces(beyond, valueOf(rule.more, own)));
}

const figuresOf = (rule: CountRule): FigureId[] =>
  rule.kind === 'at-least'
    ? [rule.tests]
    : rule.kind === 'per-area'
      ? [rule.tests, rule.area]
      : [rule.tests, rule.first, rule.more];

/**
 * How many tests a check needs on an area; null where the whole surface is looked at.
 * The reader's own number may add to a published rule, and replaces common practice.
 * @param area m2, or unknown
 * @param typed the reader's own number; a wrong one becomes a problem and is left out
 * Sources: ASTM D4262, F3191, F2170, D4263 and AS 1012.24, through the figures named.
 */
export function countFor(
  check: CheckId,
  area: number | 'unknown',
  typed: Entry | undefined,
  problems: Problem[],
  own?: OwnFigures,
): Count | null {
  const rule = checks[check].count;
  if (!rule) return null;
  const areaOpen = rule.kind !== 'at-least' && area === 'unknown';
  const tests = byRule(rule, area === 'unknown' ? 0 : area, own);
  const practice = figures[rule.tests].basis === 'practice';
  const wanted = readCount(check, typed, problems);
  if (wanted !== undefined && (practice || wanted > tests))
    return { tests: wanted, by: 'own', figures: figuresOf(rule), areaOpen };
  return { tests, by: practice ? 'practice' : 'rule', figures: figuresOf(rule), areaOpen };
}

function readCount(
  check: CheckId,
  typed: Entry | undefined,
  problems: Problem[],
): number | undefined {
  if (typed === undefined || typed === '') return undefined;
  const limits = [1, figures['limit.tests'].range?.[1] ?? 1] as const;
  if (!isNumber(typed)) problems.push({ id: 'not-a-number', check, field: 'count', typed });
  else if (!Number.isInteger(typed))
    problems.push({ id: 'not-whole', check, field: 'count', typed });
  else if (typed < limits[0] || typed > limits[1])
    problems.push({ id: 'out-of-range', check, field: 'count', typed, limits });
  else return typed;
  return undefined;
}

/** A place to test: shares of the zone's length and width, 0 to 1. */
export interface Spot {
  readonly along: number;
  readonly across: number;
}

/**
 * Random places to test, drawn from a printed seed so that nobody picks the good ones and anybody
 * can draw them again. The zone is cut into as many pieces of equal size as there are tests, in
 * rows; each piece gets one place, even chances all over it. So the places spread, and every part
 * of the zone is as likely to be tested as any other.
 *
 * Generator: Mersenne Twister (mt19937) seeded with `seed` plus the check's place in `checkIds`;
 * two draws a place, first along, then across, each (26 low bits x 2^27 + 27 low bits) / 2^53.
 * @param shape length over width; 1 when only the area is known
 */
export function spotsFor(seed: number, check: CheckId, tests: number, shape = 1): Spot[] {
  const generator = mersenne(seed + checkIds.indexOf(check));
  const rows = Math.min(tests, Math.max(1, Math.round(Math.sqrt(tests / shape))));
  const spots: Spot[] = [];
  let edge = 0;
  for (let row = 0; row < rows; row += 1) {
    // Spread the tests over the rows as evenly as whole numbers allow; a fuller row is wider.
    const inRow = Math.floor(((row + 1) * tests) / rows) - Math.floor((row * tests) / rows);
    const width = inRow / tests;
    for (let column = 0; column < inRow; column += 1) {
      const along = (column + uniformFloat64(generator)) / inRow;
      const across = edge + uniformFloat64(generator) * width;
      spots.push({ along, across });
    }
    edge += width;
  }
  return spots;
}
