import { lowered } from '$lib/words/by-language';
import type { TakenOff } from '$lib/advice/untested-coating';
import type { Verdict } from '$lib/advice/types';
import type { Beginning } from '$lib/advice/zone-advice';

/** The three ways of reading the same advice. */
export const readerPageWords = {
  legend: 'How you read it',
  unchosen: 'Not chosen yet: steps as for a crew, calls as for an owner.',
  said: {
    work: 'Same advice; hazards and steps first.',
    own: 'Same advice; what you may do yourself first.',
    explain: 'Same advice; reasons first.',
  },
  verdict: {
    prepare: 'This can be repaired.',
    'find-out-first': '',
    stop: 'Leave it as it is until whoever is called has looked.',
  } satisfies Record<Verdict, string>,
  /** In place of the first of these, where the hole may go past what a patch stands. */
  doubtful: 'A patch is doubtful here. Weigh it against a new part.',
  sheetLine: 'Restore it, or replace it? One sheet weighs both.',
  toSheet: 'To the owner’s sheet',
} as const;

/** The heading of each part. Some read another way to somebody who owns it. */
export const partTitles = {
  owner: 'For the owner',
  may: 'What an owner may do here',
  limits: 'What an owner does not do here',
  holds: 'What stands before the work',
  'find-out': 'Find out first',
  begin: 'Do now',
  possible: 'What may have to come first',
  outcomes: 'Ways it may turn out',
  steps: 'Steps',
  reasons: 'Why this way',
  others: 'Why not another way',
  target: 'What you are aiming for',
  margins: 'What would change it',
  'left-open': 'Left open',
  cautions: 'What can hurt you',
  ask: 'Ask a contractor',
  quote: 'What a sound offer contains',
  sheet: 'Restore or replace',
  numbers: 'Figures and sources',
  answers: 'What you answered',
} as const;
export const ownerTitles: Readonly<Partial<Record<keyof typeof partTitles, string>>> = {
  may: 'What you may do yourself',
  limits: 'What not to do yourself here',
  steps: 'What a careful crew does',
  reasons: 'Why it is done this way',
  cautions: 'What can hurt here',
};

/** What may be taken off while something is found out. */
export const takenOffWords: Readonly<Record<TakenOff, string>> = {
  nothing: 'Take nothing off. Somebody licensed takes a sample of the old coating first, wet.',
  'no-coating': 'Take off no more than a test needs, and no paint or glue.',
  little: 'Take off no more than a test needs.',
};

/** How to begin while answers are open. */
export const beginWords = {
  nothing: 'Nothing yet is right in every case, but to look and to test.',
  tryFirst: (method: string) =>
    `Then try ${method} on one small spot: it does no harm if it is not enough. Tap and scrape the spot again.`,
  why: {
    'may-wait': 'The work may still stop.',
    'clean-first': 'A machine could drive dirt in.',
    'may-harm': 'Even the gentlest way left could spoil it.',
  } satisfies Record<NonNullable<Beginning['why']>, string>,
} as const;

/** What the results of a test would mean. */
export const resultWords = {
  title: 'What each result would mean',
  /** Nothing is there of what may be: by name where that is one thing. */
  noneOf: {
    one: (name: string) => `Not there: ${name}`,
    warnings: 'None of the signs that may be there',
    contamination: 'Nothing of what may be on it',
  },
  'find-out-first': 'find out first',
  stop: 'stop',
  /** What a result puts before the work, by whom. */
  brings: {
    stop: {
      engineer: 'Stop: call a licensed structural engineer',
      laboratory: 'Stop: call a testing laboratory',
      locator: 'Stop: have cables and pipes marked',
      'concrete-contractor': 'Stop: call a concrete contractor',
      crew: 'Stop',
    },
    'find-out-first': {
      engineer: 'First: a licensed structural engineer',
      laboratory: 'First: a testing laboratory',
      locator: 'First: have cables and pipes marked',
      'concrete-contractor': 'First: a concrete contractor',
      crew: 'Find out first',
    },
  },
  stopsFrom: (depth: string) => `from ${depth} on: stop`,
  /** What follows that. */
  then: (methods: string) => `Then ${methods}`,
  afterwards: (first: string, then: string) => `${first}; afterwards ${lowered(then)}`,
} as const;

/** What two changed answers would do together. */
export const pairWords = {
  title: 'Two answers together',
  line: 'Alone, neither makes it gentler or stops it. Both together do.',
  and: 'and',
  none: 'No two other answers would make it gentler or stop it.',
} as const;
