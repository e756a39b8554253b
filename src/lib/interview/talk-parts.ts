import { assign, emit, setup } from 'xstate';
import { give } from './replay';
import { addressIn } from './context';
import { answersIn, backIn, differs, holdsGiven, skipIn, zoneIn } from './standing';
import type { Refusal, TalkContext, TalkEvent, TalkJob, TalkOrder } from './talk-types';

/** Before any question is open. */
export const nothing: Omit<TalkContext, 'job' | 'trouble'> = {
  question: null,
  named: null,
  zone: null,
  hand: null,
  seen: null,
  draft: null,
  holds: false,
  touched: false,
  given: null,
  next: null,
  leaving: null,
};

/** What is given up when the job in hand is taken for another state of it. */
const letGo = { draft: null, holds: false, touched: false, given: null, next: null } as const;

/** The job is another one, and nothing hangs on the one before. */
const mustAdopt = ({ job, hand, draft }: TalkContext): boolean =>
  !!job && job.hand !== hand && (hand === null || draft === null);

/** What the machine of the interview asks and does; its states stand in `talk.ts`. */
export const blank = setup({
  types: {
    context: {} as TalkContext,
    events: {} as TalkEvent,
    emitted: {} as TalkOrder,
    meta: {} as { readonly refuses: Refusal },
  },
  guards: {
    notFetched: ({ context }) => !context.job,
    mustAdopt: ({ context }) => mustAdopt(context),
    adoptsDraft: ({ context }) => mustAdopt(context) && context.draft !== null,
    otherJob: ({ context }) => !!context.job && context.job.hand !== context.hand,
    zoneGone: ({ context }) => !!context.job && !zoneIn(context.job, context.zone),
    /** The question can change nothing any more. */
    notAsked: ({ context }) => skipIn(context) !== null,
    /** What another tab changed, and what is ticked here, are about the same. */
    changed: ({ context }) => context.touched && context.draft !== null,
    /** Continue was pressed before the job was there. */
    waits: ({ context }) => context.given !== null,
    drafted: ({ context }) => context.draft !== null,
    /** What is ticked comes to an answer to the question that is open. */
    answersThis: ({ context, event }) =>
      (event.type === 'CONTINUE' || event.type === 'BRING') &&
      event.given?.question === context.question,
    hasBack: ({ context }) => backIn(context) !== null,
    /** The question that is wanted can still change something. */
    isAsked: ({ context, event }) =>
      event.type === 'GO_TO' && !!answersIn(context) && skipIn(context, event.question) === null,
    isNewer: ({ event }) => event.type === 'NOT_SAVED' && event.why === 'newer',
    isGone: ({ event }) => event.type === 'NOT_SAVED' && event.why === 'gone',
    /** The job as it is now still holds the answer on its way: nothing was taken over from elsewhere. */
    holdsGiven: ({ context, event }) => event.type === 'JOB' && holdsGiven(context, event.job),
    wouldBeLost: ({ context, event }) => event.type === 'LEAVE' && context.holds && !event.kept,
  },
  actions: {
    open: assign(({ event }) =>
      event.type === 'OPEN' ? { ...nothing, question: event.question, named: event.zone } : {},
    ),
    close: assign(nothing),
    /** The address means the zone it names, or the first where it names none. It then stays that one. */
    adopt: assign(({ context: { job, named, hand } }) => {
      const zone = named ?? job?.zones[0]?.id ?? null;
      const seen = (job && zoneIn(job, zone)) ?? null;
      // What was ticked before the device had answered belongs to the job it gives.
      return { ...(hand !== null && letGo), hand: job?.hand ?? null, zone, seen };
    }),
    /** Continue, pressed where it could lead nowhere, is not waited with. */
    halt: assign({ given: null, next: null }),
    hear: assign(({ context, event }) => {
      if (event.type !== 'JOB') return {};
      const { job }: { job: TalkJob } = event;
      const touched = context.touched || (context.draft !== null && differs(context, job));
      return { job, touched, seen: zoneIn(job, context.zone) ?? context.seen };
    }),
    draft: assign(({ context: { touched }, event }) => {
      if (event.type !== 'DRAFT') return {};
      const { draft, holds } = event;
      // Where nothing is ticked any more, nothing stands against what another tab did.
      return { draft, holds, touched: touched && draft !== null, given: null, next: null };
    }),
    letGo: assign(letGo),
    keepMine: assign({ touched: false }),
    await: assign(({ event }) =>
      event.type === 'CONTINUE' || event.type === 'BRING'
        ? { given: event.given, next: event.type === 'BRING' ? event.given.question : null }
        : {},
    ),
    /** Where the answer leads: the machine of the questions says so. */
    route: assign(({ context }) => {
      const answers = answersIn(context);
      const { given, next } = context;
      if (!answers || !given) return {};
      return { next: next ?? give(answers, given).next, touched: false };
    }),
    given: assign({ draft: null, holds: false, touched: false }),
    trouble: assign(({ event }) => ({ trouble: event.type === 'NOT_SAVED' ? event.why : null })),
    leaving: assign(({ event }) => (event.type === 'LEAVE' ? { leaving: event.to } : {})),
    stay: assign({ leaving: null }),
    write: emit(({ context: { zone, given } }) => ({ type: 'write', zone, given }) as TalkOrder),
    goOn: emit(({ context }) => go(context, context.next)),
    goBack: emit(({ context }) => go(context, backIn(context))),
    goTo: emit(({ context, event }) => go(context, event.type === 'GO_TO' ? event.question : null)),
    keep: emit(({ context: { question, zone, named, draft } }) => {
      return { type: 'keep', question, zone: zone ?? named, draft } as TalkOrder;
    }),
    depart: emit(({ context }) => ({ type: 'depart', to: context.leaving }) as TalkOrder),
  },
});

const go = (context: TalkContext, place: TalkContext['next']): TalkOrder =>
  ({ type: 'go', place, zone: addressIn(context) }) as TalkOrder;
