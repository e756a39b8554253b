import type { Advice } from '$lib/advice/types';
import type { HazardId } from '$shared/methods';
import { gradeCall, type CallGrade } from './call';
import { adviceOn, isMethod, type Call, type Case } from './case';
import { gradeHazards, type HazardsGrade } from './hazards';
import { gradeSteps, type DecidedStep, type StepsGrade } from './steps';

/** What a learner decided about a case. */
export interface Attempt {
  readonly call: Call;
  /** Counted only where a method was picked and the work may be done; null where nobody asked. */
  readonly steps: readonly DecidedStep[] | null;
  /** The same of these. */
  readonly hazards: readonly HazardId[] | null;
}

/** How it went: the call was wrong; something around it was; all of it was right. */
export const ratings = ['again', 'hard', 'good'] as const;
export type Rating = (typeof ratings)[number];

export interface Grade {
  readonly call: CallGrade;
  /** Null where no steps can be judged: nobody asked, no method was picked, or none may be used yet. */
  readonly steps: StepsGrade | null;
  /** Null likewise: before a stop is cleared there is no work whose dangers could be left out. */
  readonly hazards: HazardsGrade | null;
  readonly rating: Rating;
  readonly advice: Advice;
}

const none = { steps: null, hazards: null } as const;

/** Compares what a learner decided with what the engine advises. */
export function grade(one: Case, attempt: Attempt): Grade {
  const advice = adviceOn(one);
  const call = gradeCall(attempt.call, advice);
  const { steps: picked, hazards: seen } = isMethod(attempt.call) && advice.method ? attempt : none;
  const steps = picked && gradeSteps(picked, one, advice);
  const hazards = seen && gradeHazards(seen, one, advice);
  const around =
    (hazards?.missed.length ?? 0) + (steps?.missed.length ?? 0) + (steps?.spare.length ?? 0);
  const rating = call.kind !== 'right' ? 'again' : around > 0 ? 'hard' : 'good';
  return { call, steps, hazards, rating, advice };
}
