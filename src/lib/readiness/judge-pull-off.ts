import type { Facts } from '$lib/advice/types';
import type { FigureId } from '$shared/figures';
import type { ModeGroup, PullOffReading } from './pull-off';
import type { Asked } from './requirement';
import type { ReadyState, VerdictRule } from './rules';

/** A verdict before it is dressed with the way back. */
export interface Finding {
  readonly state: ReadyState;
  readonly rule: VerdictRule;
  readonly facts?: Facts;
  readonly figures?: readonly FigureId[];
}

/** What is wrong with a group of like breaks: too low, or too small to say; null where it is good enough. */
function judgeGroup({ summary }: ModeGroup, asked: Asked): 'low' | 'open' | null {
  // Where every single result reaches what is asked of the mean, any mean of them does.
  if (summary.least >= asked.mean) return null;
  if (summary.n < asked.tests) return 'open';
  return summary.mean >= asked.mean ? null : 'low';
}

const lowRule = ({ planes }: ModeGroup): VerdictRule =>
  planes.length > 1
    ? 'mean-low-mixed'
    : planes[0] === 'base'
      ? 'mean-low-base'
      : planes[0] === 'bond'
        ? 'mean-low-bond'
        : 'mean-low-repair';

/**
 * Judges pull-off tests. The weakest plane governs, so every way of breaking must pass on its own
 * mean; glue failures are no results; what is too few to average is not averaged.
 * Sources: ASTM C1583 (like modes only), AS 1012.24 (three normal results), ACI 548.8M.
 */
export function judgePullOff(
  reading: PullOffReading,
  asked: Asked | null,
  wanted: number,
): Finding {
  const { tests, groups, valid, voided } = reading;
  if (tests.length === 0) return { state: 'not-yet-checked', rule: 'nothing-entered' };
  if (!asked)
    return {
      state: 'not-yet-checked',
      rule: 'no-requirement',
      figures: ['pulloff.specified'],
    };
  const { figures } = asked;
  const least = asked.least;
  const lowest = Math.min(...groups.map(({ summary }) => summary.least));
  if (least !== undefined && lowest < least)
    return { state: 'not-ready', rule: 'single-low', facts: { lowest, least }, figures };
  // A mode that is low on enough tests is low, however many tests are still missing.
  const low = groups.find((group) => judgeGroup(group, asked) === 'low');
  if (low)
    return {
      state: 'not-ready',
      rule: lowRule(low),
      facts: { mean: low.summary.mean, asked: asked.mean, planes: low.planes },
      figures: [...figures, 'depth.bruise'],
    };
  const need = Math.max(asked.tests, asked.onArea ?? 0, wanted);
  if (valid < need) {
    const rule = voided && tests.length >= need ? 'glue-failed' : 'too-few';
    const state = rule === 'too-few' ? 'not-yet-checked' : 'retest';
    return { state, rule, facts: { have: valid, need, voided }, figures };
  }
  const open = groups.find((group) => judgeGroup(group, asked) === 'open');
  if (open)
    return {
      state: 'retest',
      rule: 'too-few-alike',
      facts: { planes: open.planes, have: open.summary.n, need: asked.tests },
      figures,
    };
  const bounds = groups.map(({ summary }) => summary.lowerBound ?? summary.least);
  const sure = Math.min(...bounds) >= asked.mean;
  return {
    state: 'ready',
    rule: 'passed',
    facts: { asked: asked.mean, have: valid, sure: sure ? 'yes' : 'no' },
    figures,
  };
}
