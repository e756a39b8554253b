import type {
  CheckId,
  GivenId,
  Plane,
  RequirementId,
  Spoiler,
} from '$lib/answers/readiness-record';
import type {
  NeedRule,
  Problem,
  ProblemId,
  ReadinessReason,
  ReadyState,
  VerdictRule,
} from '$lib/readiness/rules';
import type { Named, Say } from './types';

export interface CheckWords {
  readonly name: string;
  /** What to do, in order. */
  readonly how: readonly string[];
  /** What passes. */
  readonly passes: string;
  /** Label of one reading: "Roughness", "Minutes until the drop is gone". */
  readonly reading: string;
  /** Choices by id; empty where only numbers are typed. */
  readonly choices: Readonly<Record<string, string>>;
}

export type NeedSentence = (why: ReadinessReason<NeedRule>, say: Say) => string;
export type VerdictSentence = (verdict: ReadinessReason<VerdictRule>, say: Say) => string;
export type ProblemSentence = (problem: Problem, say: Say) => string;

/** Everything that is said about readiness. */
export interface ReadinessWords {
  readonly checks: (say: Say) => Readonly<Record<CheckId, CheckWords>>;
  readonly needs: Readonly<Record<NeedRule, NeedSentence>>;
  readonly verdicts: Readonly<Record<VerdictRule, VerdictSentence>>;
  readonly problems: Readonly<Record<ProblemId, ProblemSentence>>;
  readonly states: Readonly<Record<ReadyState, Named>>;
  readonly planes: Readonly<Record<Plane, string>>;
  readonly given: Readonly<Record<GivenId, Named>>;
  readonly spoilers: Readonly<Record<Spoiler, string>>;
  readonly requirements: (say: Say) => Readonly<Record<RequirementId, Named>>;
  readonly depends: Readonly<Partial<Record<string, string>>>;
}
