import { blank, nothing } from './talk-parts';

/** To another question, given up nothing: what is ticked is kept. */
const ways = {
  BACK: { guard: 'hasBack', actions: 'goBack' },
  GO_TO: { guard: 'isAsked', actions: 'goTo' },
} as const;
const onDraft = { actions: ['draft', 'keep'], target: 'settle' } as const;
const onDrop = { actions: ['letGo', 'keep'], target: 'settle' } as const;
/** What was ticked before, found again where it cannot be given: to be copied, or to come back with its zone. */
const found = { actions: 'draft' } as const;
const giving = { guard: 'answersThis', actions: 'await', target: 'waiting' } as const;
const answering = { DRAFT: onDraft, CONTINUE: giving, BRING: giving, ...ways };
/** An answer has been given and is told of; the next page opens. Second thoughts are heard. */
const told = {
  ...answering,
  CONTINUE: { actions: 'goOn' },
  JOB: [
    { guard: 'holdsGiven', actions: 'hear' },
    { actions: ['hear', 'letGo'], target: 'settle' },
  ],
} as const;
/** What another tab did stands against what is here: the reader chooses, or looks elsewhere first. */
const opposed = {
  ...ways,
  JOB: [
    { guard: 'holdsGiven', actions: 'hear' },
    { actions: ['hear', 'letGo', 'keep'], target: 'settle' },
  ],
  SAVED: { actions: ['given', 'trouble', 'keep', 'goOn'], target: 'saved' },
} as const;

/**
 * The whole of an interview as its reader has it: where they stand and may go, what is ticked and
 * not given, what becomes of it. Pages send it what happens and show its state. It decides no
 * matter of the trade: its guards ask `advice/relevance`, and the machine of the questions
 * (`machine.ts`) where an answer leads. Nothing of it is stored.
 */
export const talk = blank.createMachine({
  id: 'talk',
  description: 'One reader before one question of one zone, until the answer is on the device.',
  context: { ...nothing, job: null, trouble: null },
  initial: 'away',
  on: {
    OPEN: { actions: 'open', target: '.settle' },
    CLOSE: { actions: 'close', target: '.away' },
    JOB: { actions: 'hear', target: '.settle' },
    SAVED: { actions: 'trouble' },
    NOT_SAVED: { actions: 'trouble' },
    LEAVE: [
      { guard: 'wouldBeLost', actions: 'leaving', target: '.leaving' },
      { actions: ['leaving', 'stay'] },
    ],
  },
  states: {
    away: {
      description: 'No question is open.',
      meta: { refuses: 'no-question-open' },
      on: { JOB: { actions: 'hear' }, CLOSE: {} },
    },
    settle: {
      description: 'Looks where the reader stands, by the job and by what is ticked.',
      always: [
        { guard: 'notFetched', target: 'opening' },
        { guard: 'adoptsDraft', actions: ['adopt', 'keep'], target: 'adopted' },
        { guard: 'mustAdopt', actions: 'adopt', target: 'adopted' },
        { guard: 'otherJob', target: 'otherJob' },
        { guard: 'zoneGone', target: 'zoneGone' },
        { guard: 'notAsked', target: 'notAsked' },
        { guard: 'changed', target: 'changed' },
        { guard: 'waits', target: 'waiting' },
        { guard: 'drafted', target: 'drafting' },
        { target: 'reading' },
      ],
    },
    adopted: { description: 'The job in hand is the one the question is about.', always: 'settle' },
    opening: {
      description: 'The question can be read and answered; the job is being fetched.',
      meta: { refuses: 'not-fetched-yet' },
      on: {
        DRAFT: { actions: 'draft' },
        DROP: { guard: 'drafted', actions: 'letGo' },
        CONTINUE: { guard: 'answersThis', actions: 'await' },
        BRING: { guard: 'answersThis', actions: 'await' },
      },
    },
    reading: {
      description: 'The question stands as it was answered, or unanswered.',
      meta: { refuses: 'nothing-drafted' },
      on: answering,
    },
    drafting: {
      description: 'Something is ticked or typed, and not given.',
      meta: { refuses: 'nothing-waits' },
      on: { ...answering, DROP: onDrop },
    },
    changed: {
      description: 'Another tab has changed what the draft is about: the reader says which stands.',
      meta: { refuses: 'choose-first' },
      on: {
        ...ways,
        DRAFT: onDraft,
        DROP: onDrop,
        KEEP_MINE: { actions: 'keepMine', target: 'settle' },
        TAKE_THEIRS: onDrop,
      },
    },
    waiting: {
      description: 'The answer is given and waits to be saved.',
      meta: { refuses: 'being-saved' },
      entry: ['route', 'write'],
      on: {
        ...ways,
        JOB: [
          { guard: 'holdsGiven', actions: 'hear' },
          // Its zone, or its job, was taken away meanwhile: it is not in what is being saved.
          { actions: ['hear', 'halt'], target: 'settle' },
        ],
        SAVED: { actions: ['given', 'trouble', 'keep', 'goOn'], target: 'saved' },
        NOT_SAVED: [
          { guard: 'isNewer', actions: 'trouble', target: 'jobChanged' },
          { guard: 'isGone', actions: 'trouble', target: 'jobGone' },
          { actions: ['given', 'trouble', 'keep', 'goOn'], target: 'notSaved' },
        ],
        LATE: { actions: ['given', 'keep', 'goOn'], target: 'late' },
      },
    },
    saved: {
      description: 'The answer is on the device.',
      meta: { refuses: 'nothing-drafted' },
      on: told,
    },
    late: {
      description: 'The device takes its time; the reader goes on meanwhile.',
      meta: { refuses: 'nothing-drafted' },
      on: {
        ...told,
        SAVED: { actions: 'trouble', target: 'saved' },
        NOT_SAVED: [
          { guard: 'isNewer', actions: 'trouble', target: 'jobChanged' },
          { guard: 'isGone', actions: 'trouble', target: 'jobGone' },
          { actions: 'trouble', target: 'notSaved' },
        ],
      },
    },
    notSaved: {
      description:
        'The device would not keep the answer. It is told, and the work goes on in this tab.',
      meta: { refuses: 'nothing-drafted' },
      on: { ...told, SAVED: { actions: 'trouble', target: 'saved' } },
    },
    jobChanged: {
      description:
        'Another tab saved over the same job. Nothing is overwritten until the reader chooses.',
      meta: { refuses: 'choose-first' },
      on: opposed,
    },
    jobGone: {
      description: 'Another tab deleted the job, or its storage was cleared.',
      meta: { refuses: 'choose-first' },
      on: opposed,
    },
    zoneGone: {
      description:
        'The job has no such zone. What is ticked stays to be copied; nothing is written.',
      meta: { refuses: 'zone-gone' },
      entry: 'halt',
      on: { DRAFT: found, DROP: { guard: 'drafted', ...onDrop } },
    },
    notAsked: {
      description: 'Other answers have made the question count for nothing.',
      meta: { refuses: 'not-asked' },
      entry: 'halt',
      on: { GO_TO: ways.GO_TO, DRAFT: found, DROP: { guard: 'drafted', ...onDrop } },
    },
    otherJob: {
      description: 'Another job is in hand than the one something was ticked for.',
      meta: { refuses: 'other-job' },
      on: { DROP: onDrop },
    },
    leaving: {
      description: 'What is ticked would be lost by leaving: the reader is asked.',
      meta: { refuses: 'leaving-asked' },
      on: {
        JOB: { actions: 'hear' },
        STAY: { actions: 'stay', target: 'settle' },
        GO: { actions: ['letGo', 'keep', 'depart', 'close'], target: 'away' },
      },
    },
  },
});
