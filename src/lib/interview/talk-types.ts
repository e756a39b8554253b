import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import type { AnswerGiven, InterviewPlace } from './context';

/** The job in hand, as far as the interview is about it. */
export interface TalkJob {
  /** Counts the jobs this tab has taken into hand: another number is another job. */
  readonly hand: number;
  readonly site: SiteAnswers;
  readonly zones: readonly {
    readonly id: string;
    readonly name: string;
    readonly answers: ZoneAnswers;
  }[];
}

export type TalkZone = TalkJob['zones'][number];

/** What the machine has heard since a question was opened. Never stored: only answers are. */
export interface TalkContext {
  /** The question the address names; null before there was one. */
  readonly question: QuestionId | null;
  /** The zone the address names; null when it names none. */
  readonly named: string | null;
  /** The zone that is meant. Once found it stays: a list that changes makes no other zone of it. */
  readonly zone: string | null;
  /** Null until the device has given it. */
  readonly job: TalkJob | null;
  /** The job the question was opened on. */
  readonly hand: number | null;
  /** The zone as it was last there. */
  readonly seen: TalkZone | null;
  /** What is ticked or typed and not given: whatever the page needs to show it again. Null for nothing. */
  readonly draft: unknown;
  /** Whether the draft says something: one that only opens a list does not. */
  readonly holds: boolean;
  /** Whether another tab has changed what the draft is about. */
  readonly touched: boolean;
  /** An answer on its way: it waits for the job, or to be saved. */
  readonly given: AnswerGiven | null;
  /** Where the reader goes on to with it. */
  readonly next: InterviewPlace | null;
  /** Why the last answer is not on the device; null while nothing is in the way. */
  readonly trouble: string | null;
  /** Where the reader wants to go instead. */
  readonly leaving: string | null;
}

export type TalkEvent =
  /** The address names a question, by whatever way the reader came: a link, Back, a jump, a reload. */
  | { readonly type: 'OPEN'; readonly question: QuestionId; readonly zone: string | null }
  /** The reader is on another page. */
  | { readonly type: 'CLOSE' }
  /** The job in hand, whenever it has changed, here or in another tab. */
  | { readonly type: 'JOB'; readonly job: TalkJob }
  /** Something is ticked or typed, or nothing any more. */
  | { readonly type: 'DRAFT'; readonly draft: unknown; readonly holds: boolean }
  /** The draft is given up. */
  | { readonly type: 'DROP' }
  /** Continue is pressed; null when what is ticked comes to no answer. */
  | { readonly type: 'CONTINUE'; readonly given: AnswerGiven | null }
  /** An answer that another page of the site worked out. The reader comes back to its question. */
  | { readonly type: 'BRING'; readonly given: AnswerGiven }
  /** To the question asked before this one. */
  | { readonly type: 'BACK' }
  /** To a question that is asked, to change its answer. */
  | { readonly type: 'GO_TO'; readonly question: QuestionId }
  /** Everything in hand is on the device. */
  | { readonly type: 'SAVED' }
  /** `newer`: another tab saved over the same job. `gone`: it was deleted. Else why the device would not. */
  | { readonly type: 'NOT_SAVED'; readonly why: string }
  /** It takes so long that the reader need not wait. */
  | { readonly type: 'LATE' }
  /** Of two answers, this tab's. */
  | { readonly type: 'KEEP_MINE' }
  /** Of two answers, the other tab's. */
  | { readonly type: 'TAKE_THEIRS' }
  /** The reader wants away; `kept` when what is ticked will be there when they come back. */
  | { readonly type: 'LEAVE'; readonly to: string; readonly kept: boolean }
  /** Asked whether to leave: no, or yes. */
  | { readonly type: 'STAY' }
  | { readonly type: 'GO' };

/** What the machine asks the page and the store to do. */
export type TalkOrder =
  /** Put the answer into this zone of the job, and save it. */
  | { readonly type: 'write'; readonly zone: string; readonly given: AnswerGiven }
  /** Show this question, or the advice. */
  | { readonly type: 'go'; readonly place: InterviewPlace; readonly zone: string | null }
  /** Keep what is ticked for this tab; null lets go of it. */
  | {
      readonly type: 'keep';
      readonly question: QuestionId;
      readonly zone: string | null;
      readonly draft: unknown;
    }
  /** Leave for an address. */
  | { readonly type: 'depart'; readonly to: string };

/** Why an event does nothing where the machine stands. */
export const refusals = [
  'no-question-open',
  'not-fetched-yet',
  'nothing-answered',
  'another-question',
  'not-asked',
  'first-question',
  'being-saved',
  'choose-first',
  'zone-gone',
  'other-job',
  'leaving-asked',
  'nothing-drafted',
  'nothing-waits',
  'nothing-to-choose',
  'nothing-to-leave',
] as const;
export type Refusal = (typeof refusals)[number];
