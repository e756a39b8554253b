import { planes, type Plane, type PullOffTest } from '$lib/answers/readiness-record';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import { isNumber, readNumber } from './entries';
import type { Problem } from './rules';
import { summaryOf, type Summary } from './statistics';
import { stressFrom } from './stress';

/** A test that could be read. */
interface ReadTest {
  /** From 1, as typed. */
  readonly row: number;
  /** MPa */
  readonly stress: number;
  /** Where it broke: one plane, or several joined in the order of `planes`. */
  readonly mode: Mode;
  /** The glue gave way over too much of the disc: the test says nothing. */
  readonly void: boolean;
}

/** The planes a break ran through, without the glue, or `glue` for a void test. */
type Mode = string;

/** Tests that broke alike, summed up apart from the others. */
export interface ModeGroup {
  readonly mode: Mode;
  readonly planes: readonly Plane[];
  readonly stresses: readonly number[];
  readonly summary: Summary;
}

export interface PullOffReading {
  readonly tests: readonly ReadTest[];
  readonly groups: readonly ModeGroup[];
  /** Tests that count, and void ones. */
  readonly valid: number;
  readonly voided: number;
}

const check = 'pull-off';

function readStress(test: PullOffTest, row: number, problems: Problem[]): number | undefined {
  if (test.stress !== undefined && test.force !== undefined) {
    problems.push({ id: 'stress-and-force', check, field: 'stress', row });
    return undefined;
  }
  const place = (field: 'stress' | 'force' | 'disc') => ({ check, field, row }) as const;
  if (test.force === undefined) {
    const before = problems.length;
    const stress = readNumber(test.stress, 'limit.stress', place('stress'), problems);
    if (stress === undefined && problems.length === before)
      problems.push({ id: 'no-stress', ...place('stress') });
    return stress;
  }
  if (test.disc === 0) {
    const limits = rangeOf('limit.disc');
    problems.push({ id: 'zero-disc', ...place('disc'), typed: 0, limits });
    return undefined;
  }
  const before = problems.length;
  const disc = readNumber(test.disc, 'limit.disc', place('disc'), problems);
  if (disc === undefined) {
    if (problems.length === before) problems.push({ id: 'zero-disc', ...place('disc') });
    return undefined;
  }
  const { force } = test;
  if (!isNumber(force)) {
    problems.push({ id: 'not-a-number', ...place('force'), typed: force });
    return undefined;
  }
  // Told in forces, and held against what is told.
  const [lowest, highest] = rangeOf('limit.stress');
  const each = stressFrom(1, disc);
  const limits = [lowest / each, highest / each] as const;
  if (force < limits[0] || force > limits[1]) {
    const id = force < 0 ? 'negative' : 'out-of-range';
    problems.push({ id, ...place('force'), typed: force, limits });
    return undefined;
  }
  return stressFrom(force, disc);
}

/** Percent that shares may miss 100 by, for thirds typed as 33, 33, 33. Arithmetic, not trade. */
const rounding = 1;

function readShares(
  test: PullOffTest,
  row: number,
  problems: Problem[],
): Partial<Record<Plane, number>> | undefined {
  const before = problems.length;
  const shares: Partial<Record<Plane, number>> = {};
  for (const plane of planes) {
    const share = readNumber(
      test.shares[plane],
      'limit.share',
      { check, field: plane, row },
      problems,
    );
    if (share) shares[plane] = share;
  }
  if (problems.length > before) return undefined;
  const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
  if (total === 0) problems.push({ id: 'no-plane', check, field: 'shares', row });
  else if (Math.abs(total - 100) > rounding)
    problems.push({ id: 'shares-not-100', check, field: 'shares', row, typed: total });
  return problems.length > before ? undefined : shares;
}

/**
 * Reads the tests and sums them up by the way they broke. A row that cannot be read becomes a
 * problem and is left out; a test whose glue gave way counts as void.
 * Source: ASTM C1583 (like modes only), AS 1012.24 (glue failure is not a result).
 */
export function readPullOff(
  rows: readonly PullOffTest[],
  problems: Problem[],
  own?: OwnFigures,
): PullOffReading {
  const nothing: PullOffReading = { tests: [], groups: [], valid: 0, voided: 0 };
  const limits = rangeOf('limit.tests');
  if (rows.length > limits[1]) {
    problems.push({ id: 'too-many-rows', check, field: 'reading', typed: rows.length, limits });
    return nothing;
  }
  const tests: ReadTest[] = [];
  rows.forEach((test, index) => {
    const row = index + 1;
    const stress = readStress(test, row, problems);
    const shares = readShares(test, row, problems);
    if (stress === undefined || !shares) return;
    const glue = shares.glue ?? 0;
    const broke = planes.filter((plane) => plane !== 'glue' && shares[plane]);
    const isVoid = broke.length === 0 || glue > valueOf('pulloff.glue-void', own);
    tests.push({ row, stress, mode: isVoid ? 'glue' : broke.join('+'), void: isVoid });
  });
  const groups = groupByMode(tests, own);
  const voided = tests.filter((test) => test.void).length;
  return { tests, groups, valid: tests.length - voided, voided };
}

function groupByMode(tests: readonly ReadTest[], own?: OwnFigures): ModeGroup[] {
  const modes = new Map<Mode, number[]>();
  for (const { mode, stress, void: isVoid } of tests)
    if (!isVoid) modes.set(mode, [...(modes.get(mode) ?? []), stress]);
  const groups: ModeGroup[] = [];
  for (const [mode, stresses] of [...modes].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const summary = summaryOf(stresses, own);
    if (summary) groups.push({ mode, planes: mode.split('+') as Plane[], stresses, summary });
  }
  return groups;
}
