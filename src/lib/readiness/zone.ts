import type { CheckId, ReadinessRecord } from '$lib/answers/readiness-record';
import type { OwnFigures } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { checks } from './checks';
import { openTime, type OpenTime } from './clock';
import { judgePullOff, type Finding } from './judge-pull-off';
import { judgeReadings } from './judge-readings';
import type { OpenNeed, ZoneNeeds } from './open-needs';
import { readPullOff, type PullOffReading } from './pull-off';
import { redoFor } from './redo';
import { askedBy, type Asked } from './requirement';
import type { CheckVerdict, Problem, ReadyState } from './rules';
import { countFor, type Count } from './sampling';
import { takenBefore, type Under } from './taken';

/** What a zone is judged by besides its record. */
export interface ZoneCircumstances {
  readonly needs: ZoneNeeds;
  /** m2, or unknown */
  readonly area: number | 'unknown';
  readonly method: MethodId | null;
  readonly floor: boolean;
  /** The advice stops the work, or waits for something: nothing may be covered yet. */
  readonly held: boolean;
  /** The work it was prepared by; absent where nobody asks when results were taken. */
  readonly under?: Under;
  /** Date and time, ISO 8601. */
  readonly now: string;
  readonly own?: OwnFigures;
}

/** How a zone stands. */
export interface ZoneReadiness {
  readonly state: ReadyState;
  readonly held: boolean;
  readonly checks: readonly ZoneCheck[];
  readonly pullOff: PullOffReading;
  readonly asked: Asked | null;
  readonly clock: OpenTime;
  readonly problems: readonly Problem[];
}

export interface ZoneCheck {
  readonly need: OpenNeed;
  /** Whether the zone's verdict waits for it: needed, or asked for, or entered. */
  readonly counts: boolean;
  readonly wanted: Count | null;
  readonly verdict: CheckVerdict;
}

/** States from worst to best: a whole is as good as its worst part. */
const order: readonly ReadyState[] = ['not-ready', 'retest', 'not-yet-checked', 'ready'];

/** The state of a whole; a whole without parts is not yet checked. */
const worstOf = (states: readonly ReadyState[]): ReadyState =>
  order.find((state) => states.includes(state)) ?? 'not-yet-checked';

const hasEntries = (record: ReadinessRecord, check: CheckId): boolean =>
  check === 'pull-off'
    ? (record.pullOff?.tests.length ?? 0) > 0
    : !!record.results[check]?.readings.some((reading) => reading !== '');

/** Judges one zone: ready only when every check that counts is. */
export function judgeZone(record: ReadinessRecord, around: ZoneCircumstances): ZoneReadiness {
  const { needs, area, own, now } = around;
  const pullOffProblems: Problem[] = [];
  const pullOff = readPullOff(record.pullOff?.tests ?? [], pullOffProblems, own);
  const asked = askedBy(record.pullOff?.requirement, pullOffProblems, own, area);
  const clockProblems: Problem[] = [];
  const clock = openTime(record.clock, now, clockProblems, own);
  const profile = raiseProfile(needs.profile, asked);
  const { corroded, tendons, wantsDry, cement } = needs;
  const context = { profile, corroded, tendons, wantsDry, cement, ...(own && { own }) };

  const checked = needs.needs.map((need): ZoneCheck => {
    const { check } = need;
    const problems: Problem[] = [];
    const wanted = countFor(check, area, record.counts?.[check], problems, own);
    let finding: Finding;
    if (check === 'pull-off') {
      problems.push(...pullOffProblems);
      finding = judgePullOff(pullOff, asked, wanted?.tests ?? 0);
    } else if (check === 'open-time') {
      problems.push(...clockProblems);
      finding = judgeClock(clock);
    } else {
      const result = record.results[check];
      finding = judgeReadings(check, result, wanted?.tests ?? null, context, problems);
    }
    if (hasEntries(record, check) && takenBefore(record, check, around.under))
      finding = { state: 'not-yet-checked', rule: 'taken-before' };
    return {
      need,
      wanted,
      counts:
        !checks[check].beside &&
        (need.level === 'needed' || !!record.asked?.includes(check) || hasEntries(record, check)),
      verdict: dress(check, finding, problems, around),
    };
  });
  const states = checked.filter((one) => one.counts).map((one) => one.verdict.state);
  const state = worstOf(states);
  return {
    state: around.held && state === 'ready' ? 'not-yet-checked' : state,
    held: around.held,
    checks: checked,
    pullOff,
    asked,
    clock,
    problems: checked.flatMap((one) => one.verdict.problems),
  };
}

/** ACI 548.8M asks for a profile too: it lifts the lower end, never above the upper. */
function raiseProfile(
  profile: ZoneNeeds['profile'],
  asked: Asked | null,
): readonly [number, number] | null {
  if (!profile || asked?.profile === undefined) return profile;
  return [Math.max(profile[0], asked.profile), Math.max(profile[1], asked.profile)];
}

function judgeClock(clock: OpenTime): Finding {
  const figures = ['open.limit'] as const;
  switch (clock.state) {
    case 'not-started':
    case 'time-ahead':
      return { state: 'not-yet-checked', rule: clock.state, figures };
    case 'fresh':
      return {
        state: 'ready',
        rule: 'passed',
        facts: { open: clock.open, left: clock.left },
        figures,
      };
    case 'gone-stale':
      return { state: 'not-ready', rule: 'gone-stale', facts: { open: clock.open }, figures };
    case 'spoiled':
      return { state: 'not-ready', rule: 'spoiled', facts: { by: clock.by }, figures };
  }
}

/** An entry that cannot be read stands before any good news, not before bad. */
function dress(
  check: CheckId,
  finding: Finding,
  problems: readonly Problem[],
  { method, floor }: ZoneCircumstances,
): CheckVerdict {
  const blocked = problems.length > 0 && finding.state !== 'not-ready';
  const { state, rule, facts, figures }: Finding = blocked
    ? { state: 'not-yet-checked', rule: 'fix-entries' }
    : finding;
  return {
    check,
    state,
    rule,
    ...(facts && { facts }),
    ...(figures && { figures }),
    redo: redoFor(rule, { method, floor }),
    problems,
  };
}

/** How a job stands: as its worst zone. */
export const judgeJob = (zones: readonly Pick<ZoneReadiness, 'state'>[]): ReadyState =>
  worstOf(zones.map((zone) => zone.state));
