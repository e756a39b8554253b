import { clearBehindBar } from '$lib/advice/hole';
import type { CheckId, CheckResult, Reading } from '$lib/answers/readiness-record';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import { checks } from './checks';
import { readNumber } from './entries';
import type { Finding } from './judge-pull-off';
import type { Problem, VerdictRule } from './rules';

/** What readings are judged by besides figures. */
export interface ReadingContext {
  /** CSP lowest and highest; null while the finish is open. */
  readonly profile: readonly [number, number] | null;
  readonly corroded: boolean;
  readonly own?: OwnFigures;
}

type Mark = 'pass' | VerdictRule;
type Judge = (value: Reading, given: Given, context: ReadingContext) => Mark;
type Given = Readonly<Partial<Record<'cover' | 'rinse' | 'aggregate', number>>>;

const choice =
  (marks: Readonly<Record<string, Mark>>): Judge =>
  (value) =>
    marks[value] ?? 'pass';
const number =
  (judge: (value: number, given: Given, context: ReadingContext) => Mark): Judge =>
  (value, given, context) =>
    judge(value as number, given, context);

/** How one reading of each check is marked. The figures carry the sources. */
const judges: Readonly<Record<Exclude<CheckId, 'pull-off' | 'open-time'>, Judge>> = {
  sounding: choice({ clear: 'pass', dull: 'sounds-dull' }),
  edges: choice({ square: 'pass', 'not-square': 'edge-not-square' }),
  'bars-free': (value, { aggregate }, { corroded }) =>
    value === 'still-bonded'
      ? corroded
        ? 'bar-must-be-freed'
        : 'pass'
      : (value as number) >= clearBehindBar(aggregate ?? 0)
        ? 'pass'
        : 'bar-too-close',
  'bars-clean': choice({ clean: 'pass', rusty: 'bar-rusty' }),
  chloride: number((value, _, { own }) =>
    value >= valueOf('chloride.high', own)
      ? 'chloride-high'
      : value <= valueOf('chloride.new-concrete', own)
        ? 'pass'
        : 'chloride-between',
  ),
  carbonation: number((value, { cover }) =>
    cover === undefined ? 'cover-unknown' : value < cover ? 'pass' : 'carbonated-to-bar',
  ),
  'half-cell': number((value, _, { own }) =>
    value < valueOf('halfcell.high', own)
      ? 'potential-high'
      : value > valueOf('halfcell.low', own)
        ? 'pass'
        : 'potential-between',
  ),
  profile: number((value, _, { profile }) =>
    !profile
      ? 'profile-unknown'
      : value < profile[0]
        ? 'too-smooth'
        : value > profile[1]
          ? 'too-rough'
          : 'pass',
  ),
  ph: number((value, { rinse }, { own }) => {
    if (rinse === undefined) return 'rinse-unknown';
    const [below, above] = rangeOf('ph.from-rinse', own);
    return value < rinse + below || value > rinse + above ? 'ph-off' : 'pass';
  }),
  'dust-tape': number((value, _, { own }) =>
    value <= valueOf('dust.most', own) ? 'pass' : 'dust-left',
  ),
  'water-drop': choice({ spreads: 'pass', beads: 'drop-beads' }),
  absorption: number((value, _, { own }) =>
    value < valueOf('absorption.time', own) ? 'pass' : 'drinks-too-slowly',
  ),
  'plastic-sheet': choice({ dry: 'pass', damp: 'sheet-damp' }),
  humidity: number((value, _, { own }) =>
    value <= valueOf('humidity.most', own) ? 'pass' : 'too-humid',
  ),
  'surface-damp': choice({ damp: 'pass', dry: 'surface-dry', wet: 'surface-wet' }),
};

/** Marks that a reading alone cannot settle; they call for something else, not for redoing work. */
const undecided: Readonly<Partial<Record<VerdictRule, Finding['state']>>> = {
  'chloride-between': 'retest',
  'potential-between': 'retest',
  'cover-unknown': 'not-yet-checked',
  'rinse-unknown': 'not-yet-checked',
  'profile-unknown': 'not-yet-checked',
};

/** Reads and judges the readings of a check that is neither pull-off nor the clock. */
export function judgeReadings(
  check: keyof typeof judges,
  result: CheckResult | undefined,
  wanted: number | null,
  context: ReadingContext,
  problems: Problem[],
): Finding {
  const { figures } = checks[check];
  const before = problems.length;
  const values = readReadings(check, result, problems);
  const given = readGiven(check, result, problems);
  if (values.length === 0 && problems.length === before)
    return { state: 'not-yet-checked', rule: 'nothing-entered', figures };
  const marks = values.map(({ value, row }) => ({
    row,
    value,
    mark: judges[check](value, given, context),
  }));
  const failed = marks.filter(({ mark }) => mark !== 'pass' && !undecided[mark as VerdictRule]);
  const [worst] = failed.length ? failed : marks.filter(({ mark }) => mark !== 'pass');
  if (worst) {
    const rule = worst.mark as VerdictRule;
    const alike = marks.filter(({ mark }) => mark === rule);
    return {
      state: undecided[rule] ?? 'not-ready',
      rule,
      facts: {
        failed: alike.length,
        have: marks.length,
        rows: alike.map(({ row }) => String(row)),
        worst: worst.value,
        ...(context.profile && { low: context.profile[0], high: context.profile[1] }),
        ...given,
      },
      figures,
    };
  }
  const need = wanted ?? 1;
  if (values.length < need)
    return { state: 'not-yet-checked', rule: 'too-few', facts: { have: values.length, need } };
  return { state: 'ready', rule: 'passed', facts: { have: values.length }, figures };
}

function readReadings(check: CheckId, result: CheckResult | undefined, problems: Problem[]) {
  const { choices, limit } = checks[check];
  const most = rangeOf('limit.tests');
  const typed = result?.readings ?? [];
  if (typed.length > most[1]) {
    const place = { check, field: 'reading' } as const;
    problems.push({ id: 'too-many-rows', ...place, typed: typed.length, limits: most });
    return [];
  }
  const values: { value: Reading; row: number }[] = [];
  typed.forEach((reading, index) => {
    if (reading === '') return;
    const place = { check, field: 'reading', row: index + 1 } as const;
    if (typeof reading === 'string' && choices.includes(reading))
      values.push({ value: reading, row: index + 1 });
    else if (!limit) problems.push({ id: 'unknown-choice', ...place, typed: reading });
    else {
      const value = readNumber(reading, limit, place, problems);
      if (value !== undefined) values.push({ value, row: index + 1 });
    }
  });
  return values;
}

const givenLimit = {
  cover: 'limit.carbonation',
  rinse: 'limit.ph',
  aggregate: 'limit.bar-clear',
} as const;

function readGiven(check: CheckId, result: CheckResult | undefined, problems: Problem[]): Given {
  const given: Partial<Record<keyof Given, number>> = {};
  for (const id of checks[check].given) {
    const place = { check, field: id };
    const value = readNumber(result?.given?.[id], givenLimit[id], place, problems);
    if (value !== undefined) given[id] = value;
  }
  return given;
}
