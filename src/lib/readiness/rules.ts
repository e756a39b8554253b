import type { Facts } from '$lib/advice/types';
import type { CheckId, GivenId, Plane } from '$lib/answers/readiness-record';
import type { QuestionId } from '$lib/answers/questions';
import type { FigureId } from '$shared/figures';
import type { StepId } from '$shared/methods';

/** Why a check is called for. `words/` holds one sentence for each. */
export const needRules = [
  'sound-everywhere',
  'dust-breaks-bond',
  'drop-shows-film',
  'must-drink',
  'profile-for-finish',
  'profile-from-sheet',
  'finish-open',
  'bond-carries-finish',
  'small-if-specified',
  'thin-if-specified',
  'coating-hates-damp',
  'sheet-wants-dry',
  'sheet-wants-damp',
  'sealer-if-specified',
  'film-traps-moisture',
  'damp-for-cement',
  'chemicals-left',
  'salts-reach-steel',
  'air-reaches-steel',
  'air-if-specified',
  'potential-if-specified',
  'bar-gripped-round',
  'rust-off',
  'edge-square',
  'slurry-harms',
  'fill-cures-apart',
  'dew-under-cover',
  'cold-under-cement',
  'dew-if-specified',
  'stale-after-a-day',
] as const;
export type NeedRule = (typeof needRules)[number];

/** Why a check stands as it does. `words/` holds one sentence for each. */
export const verdictRules = [
  'passed',
  'nothing-entered',
  'taken-before',
  'too-few',
  'fix-entries',
  'held',
  'sounds-dull',
  'edge-not-square',
  'bar-too-close',
  'bar-must-be-freed',
  'bar-rusty',
  'chloride-high',
  'chloride-between',
  'chloride-tendons',
  'carbonated-to-bar',
  'cover-unknown',
  'potential-high',
  'potential-between',
  'too-smooth',
  'too-rough',
  'profile-unknown',
  'ph-off',
  'rinse-unknown',
  'dust-left',
  'drop-beads',
  'drinks-too-slowly',
  'sheet-damp',
  'too-humid',
  'surface-dry',
  'surface-wet',
  'slurry-corrosive',
  'fill-young',
  'fill-dull',
  'fill-closed',
  'air-unknown',
  'too-near-dew',
  'too-cold',
  'too-hot',
  'cool',
  'gone-stale',
  'spoiled',
  'not-started',
  'time-ahead',
  'no-requirement',
  'glue-failed',
  'too-few-alike',
  'mean-low-base',
  'mean-low-bond',
  'mean-low-repair',
  'mean-low-mixed',
  'single-low',
] as const;
export type VerdictRule = (typeof verdictRules)[number];

export type ReadyState = 'ready' | 'not-ready' | 'retest' | 'not-yet-checked';

export interface ReadinessReason<R extends string> {
  readonly rule: R;
  readonly facts?: Facts;
  readonly figures?: readonly FigureId[];
}

/** What to do about a check that failed: steps of the advice, answers to look at again, whom to ask. */
export interface Redo {
  readonly steps: readonly StepId[];
  readonly ask: readonly QuestionId[];
  readonly who?: 'engineer' | 'maker';
}

/** What is wrong with something that was typed. */
export const problemIds = [
  'not-a-number',
  'negative',
  'zero-disc',
  'out-of-range',
  'shares-not-100',
  'no-plane',
  'no-stress',
  'stress-and-force',
  'too-many-rows',
  'unknown-choice',
  'not-whole',
  'bad-time',
  'time-ahead',
] as const;
export type ProblemId = (typeof problemIds)[number];

export type ProblemField =
  | 'reading'
  | 'stress'
  | 'force'
  | 'disc'
  | 'shares'
  | 'mean'
  | 'least'
  | 'count'
  | 'length'
  | 'width'
  | 'prepared'
  | 'spoiled'
  | Plane
  | GivenId;

/** One wrong entry: where it is, what was typed, what was expected. */
export interface Problem {
  readonly id: ProblemId;
  readonly check: CheckId;
  readonly field: ProblemField;
  /** From 1, where the check has several entries. */
  readonly row?: number;
  readonly typed?: string | number;
  /** Lowest and highest accepted, in engine units. */
  readonly limits?: readonly [number, number];
}

/** How one check stands. */
export interface CheckVerdict extends ReadinessReason<VerdictRule> {
  readonly check: CheckId;
  readonly state: ReadyState;
  readonly redo: Redo;
  readonly problems: readonly Problem[];
}
