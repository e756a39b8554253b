import type { QuestionId, ZoneQuestion, SiteQuestion } from '$lib/answers/questions';
import type { HazardId, MethodId, StepId } from '$shared/methods';
import type {
  Advice,
  FindOut,
  Hold,
  Reason,
  Rejection,
  Step,
  Target,
  TargetPart,
  Verdict,
} from './types';

/** One way the open answers could turn out, with how large a part of the possibilities it is. */
export interface Outcome {
  readonly verdict: Verdict;
  /** The method it comes to, or will once its holds are cleared; null where no surface method applies. */
  readonly method: MethodId | null;
  /** Part of all completions of the open answers, 0 to 1. Every completion counts the same. */
  readonly share: number;
  /** One completion that comes to it, with its full advice. */
  readonly example: Advice;
}

/** An answer that is still open, and whether it makes a difference here. */
export interface Assumption {
  readonly question: QuestionId;
  readonly among: readonly string[];
  /** Whether settling it could change the verdict or the method. */
  readonly matters: boolean;
}

/** An open question with the test that settles it and what settling it would be worth. */
export interface RankedFindOut extends FindOut {
  readonly settles: {
    /** Mean number of outcomes left after the answer is known, over its choices. */
    readonly expected: number;
    /** Most outcomes left after the answer is known. */
    readonly worst: number;
    /** Outcomes possible now. */
    readonly now: number;
  };
}

/** A smallest change of one answer that changes the advice. */
export interface Margin {
  readonly question: SiteQuestion | ZoneQuestion;
  readonly from: string;
  readonly to: string;
  /** For depth: the measured edge in mm at which it flips. */
  readonly atMm?: number;
  /** For a measured depth: whether it flips deeper down. */
  readonly deeper?: boolean;
  /** For a grade of roughness: whether it flips from there down, or from there up. */
  readonly reach?: 'at-most' | 'at-least';
  /** For a band of depth that only has to be measured: from where in it it surely stops, mm. */
  readonly stopsFrom?: number;
  /** For what lies on it: the cleaning that would come before that method; null where none would. */
  readonly first?: StepId | null;
  readonly verdict: Verdict;
  /** The method it would become, or would once its holds are cleared; null where none would stand. */
  readonly method: MethodId | null;
}

/** What advice comes to, in short. */
export interface Decision {
  readonly verdict: Verdict;
  /** The method it comes to, or will once its holds are cleared; null where no surface method applies. */
  readonly method: MethodId | null;
}

/** What one answer to an open question would leave. */
export interface ResultOf {
  /** The choice; null for none of those that may be there. */
  readonly choice: string | null;
  /** Likeliest first. */
  readonly outcomes: readonly Decision[];
  /** What this answer by itself puts, or may put, before the work and no other does; gravest first. */
  readonly brings: readonly Pick<Hold, 'rule' | 'verdict' | 'who'>[];
  /** Of a depth that only has to be measured: from where on it stops, mm. */
  readonly stopsFrom?: number;
}

/** The safest way to begin while answers are open. */
export interface Beginning {
  /** What every possibility calls for, up to where they part; in order. */
  readonly now: readonly StepId[];
  /** The gentlest method still possible, where trying it does no harm whichever way it comes out. */
  readonly tryFirst: MethodId | null;
  /** Why nothing is to be tried yet; null where something may be. */
  readonly why: 'may-wait' | 'clean-first' | 'may-harm' | null;
}

/** Advice for a zone whatever is still open about it. */
export interface ZoneAdvice {
  /** `prepare` or `stop` only when every completion says so with the same method. */
  readonly verdict: Verdict;
  /** The method; null unless the verdict is `prepare`. */
  readonly method: MethodId | null;
  /** What the rest of the zone needs where breaking out along a bar leads; else null. */
  readonly beside: MethodId | null;
  /** Methods that remain possible, gentlest first; empty when the verdict is `stop`. */
  readonly methods: readonly MethodId[];
  /** Steps that every completion calls for, in order. */
  readonly steps: readonly Step[];
  readonly reasons: readonly Reason[];
  /** What stands before the work however the open answers turn out, gravest first. */
  readonly holds: readonly Hold[];
  /** What stands before it only if some open answer turns out so, gravest first. */
  readonly possibleHolds: readonly Hold[];
  /** One for every method that no completion advises. */
  readonly rejections: readonly Rejection[];
  /** As in the likeliest case. */
  readonly target: Target;
  /** What of the target hangs on answers still open. */
  readonly openTargets: readonly TargetPart[];
  /** Hazards of every completion. */
  readonly cautions: readonly HazardId[];
  /** Most useful first. */
  readonly findOut: readonly (FindOut | RankedFindOut)[];
  readonly margins: readonly Margin[];
  /** How to begin while answers that matter are open; null when none is, or the work is stopped. */
  readonly beginning: Beginning | null;
  /** Most likely first; a single one when nothing that matters is open. */
  readonly outcomes: readonly Outcome[];
  readonly assumptions: readonly Assumption[];
}

/** A method beside the interview, while the answers come in. */
export interface Standing {
  readonly method: MethodId;
  readonly state: 'standing' | 'would-do' | 'out';
  /** Why it fell, or why it is not the gentlest; absent while it stands. */
  readonly why?: Reason;
  /** The first answer, in interview order, that ruled it out. */
  readonly by?: QuestionId;
}
