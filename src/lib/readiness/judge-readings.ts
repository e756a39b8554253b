import { clearBehindBar } from '$lib/advice/hole';
import { saltMark } from '$lib/advice/salt-measured';
import type { CheckId, GivenId, CheckResult, Reading } from '$lib/answers/readiness-record';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import { checks } from './checks';
import { dewPoint } from './dew-point';
import { readNumber } from './entries';
import type { Finding } from './judge-pull-off';
import type { Problem, VerdictRule } from './rules';

/** What readings are judged by besides figures. */
export interface ReadingContext {
  /** CSP lowest and highest; null while the finish is open. */
  readonly profile: readonly [number, number] | null;
  readonly corroded: boolean;
  /** There may be tendons in it. */
  readonly tendons?: boolean;
  /** What goes on may want it dry: then dew spoils it. */
  readonly wantsDry?: boolean;
  /** What goes on is cement, whatever else is open. */
  readonly cement?: boolean;
  readonly own?: OwnFigures;
}

type Mark = 'pass' | VerdictRule;
type Judge = (value: Reading, given: Given, context: ReadingContext) => Mark;
type Given = Readonly<Partial<Record<GivenId, number>>>;

const choice =
  (marks: Readonly<Record<string, Mark>>): Judge =>
  (value) =>
    marks[value] as Mark;
const number =
  (judge: (value: number, given: Given, context: ReadingContext) => Mark): Judge =>
  (value, given, context) =>
    judge(value as number, given, context);

/** Water freezes at this, C. */
const freezing = 0;

/**
 * The surface against the dew point, where what goes on wants it dry, and against the temperatures
 * concrete is placed at, where it is cement: what is not has its limits on its own sheet.
 * Sources: ISO 8502-4 (as reported, written for steel) and UFC 3-270-03, through the figures.
 */
const judgeCovering: Judge = (reading, { air, humidity }, { wantsDry = true, cement, own }) => {
  const surface = reading as number;
  if (surface <= freezing) return 'too-cold';
  if (cement) {
    const [cool, hot] = rangeOf('place.temperature', own);
    if (surface < valueOf('place.temperature-least', own)) return 'too-cold';
    if (surface > hot) return 'too-hot';
    if (surface < cool && !wantsDry) return 'cool';
  }
  if (!wantsDry) return 'pass';
  if (air === undefined || humidity === undefined) return 'air-unknown';
  if (surface - dewPoint(air, humidity) < valueOf('cover.above-dew', own)) return 'too-near-dew';
  return cement && surface < rangeOf('place.temperature', own)[0] ? 'cool' : 'pass';
};

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
  chloride: number((value, _, { tendons = false, own }) => saltMark(value, tendons, own)),
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
  'slurry-ph': number((value, _, { own }) =>
    value < valueOf('hazard.wash-water-ph', own) ? 'pass' : 'slurry-corrosive',
  ),
  'fill-cured': choice({
    cured: 'pass',
    young: 'fill-young',
    dull: 'fill-dull',
    closed: 'fill-closed',
  }),
  'dew-point': judgeCovering,
  'surface-damp': choice({ damp: 'pass', dry: 'surface-dry', wet: 'surface-wet' }),
};

/** Marks that a reading alone cannot settle; they call for something else, not for redoing work. */
const undecided: Readonly<Partial<Record<VerdictRule, Finding['state']>>> = {
  'chloride-between': 'retest',
  'chloride-tendons': 'retest',
  cool: 'retest',
  'fill-young': 'retest',
  'air-unknown': 'not-yet-checked',
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
        ...dewOf(given),
      },
      figures,
    };
  }
  const need = wanted ?? 1;
  if (values.length < need)
    return { state: 'not-yet-checked', rule: 'too-few', facts: { have: values.length, need } };
  return {
    state: 'ready',
    rule: 'passed',
    facts: { have: values.length, ...dewOf(given) },
    figures,
  };
}

/** The dew point, C, where the air was measured. */
const dewOf = ({ air, humidity }: Given) =>
  air !== undefined && humidity ? { dew: dewPoint(air, humidity) } : {};

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
    if ((choices as readonly Reading[]).includes(reading))
      values.push({ value: reading, row: index + 1 });
    else if (!limit) problems.push({ id: 'unknown-choice', ...place, typed: reading });
    else {
      const value = readNumber(reading, limit, place, problems);
      if (value !== undefined) values.push({ value, row: index + 1 });
    }
  });
  return values;
}

/** What is taken seriously of what else is asked beside a reading. */
export const givenLimit = {
  cover: 'limit.carbonation',
  rinse: 'limit.ph',
  aggregate: 'limit.bar-clear',
  air: 'limit.temperature',
  humidity: 'limit.humidity',
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
