import type { Verdict } from '$lib/advice/types';
import type { Beginning } from '$lib/advice/zone-advice';

/** The three ways of reading the same advice. */
export const readingPageWords = {
  legend: 'How you read it',
  same: 'The advice is the same whichever you choose.',
  said: {
    work: 'Steps and hazards come first.',
    own: 'Plain words, what to leave to others and what to ask come first.',
    explain: 'The owner’s sheet, reasons and what would change them come first.',
  },
  verdict: {
    prepare:
      'This can be repaired. First somebody has to take off what is weak, in the way named here.',
    'find-out-first':
      'Nobody can say yet how to repair this. Something has to be found out first, before you ask for prices.',
    stop: 'Leave it as it is, and keep people away if it moves or hangs loose. Somebody with a licence has to look at it first.',
  } satisfies Record<Verdict, string>,
  sheetLine: 'Restore it, or replace it? One sheet weighs both, with what each takes.',
  toSheet: 'To the owner’s sheet',
} as const;

/** The heading of each part. Some read another way to somebody who owns it. */
export const partTitles = {
  limits: 'What an owner leaves to others',
  holds: 'What stands before the work',
  'find-out': 'Find out first',
  begin: 'The safest way to begin',
  possible: 'What may have to come first',
  outcomes: 'How it can come out',
  steps: 'What to do, in order',
  reasons: 'Why this way',
  others: 'Why not another way',
  target: 'What you are aiming for',
  margins: 'What would change it',
  'left-open': 'Left open',
  cautions: 'What can hurt you',
  ask: 'Ask a contractor',
  quote: 'What a sound offer contains',
  sheet: 'Restore or replace',
  numbers: 'Where the numbers come from',
  answers: 'What you answered',
} as const;
export const ownerTitles: Readonly<Partial<Record<keyof typeof partTitles, string>>> = {
  limits: 'What you must not do yourself',
  steps: 'What a careful crew does, in order',
  reasons: 'Why it is done this way',
  cautions: 'What can hurt you or whoever does it',
  target: 'How good the surface has to be',
};

/** How to begin while answers are open. */
export const beginWords = {
  now: 'Do now, whichever way it comes out:',
  nothing: 'There is nothing yet that is right in every case, but to look and to test.',
  tryFirst: (method: string) =>
    `Then try ${method} on one small spot. It is the gentlest way that may do, and it does no harm if it is not enough. Tap the spot and scrape it again before you go on.`,
  why: {
    'may-wait': 'Take nothing off yet. What is not known may still stop the work.',
    'clean-first':
      'Take nothing off yet. What has to be cleaned off before is not known, and a machine would drive it in.',
    'may-harm': 'Take nothing off yet. The gentlest way left could spoil it in some of the cases.',
  } satisfies Record<NonNullable<Beginning['why']>, string>,
  watch: 'Watch out, whichever way it comes out, for:',
} as const;

/** What the results of a test would mean. */
export const resultWords = {
  title: 'What each result would mean here',
  none: 'None of them',
  open: (methods: string) => `still open: ${methods}`,
  nothing: 'no way of preparing the surface',
  mayWait: 'something may have to be found out first',
  mayStop: 'it may stop',
  afterwards: (first: string, then: string) => `${first}; afterwards ${then.toLowerCase()}`,
} as const;

/** What two changed answers would do together. */
export const pairWords = {
  title: 'Two answers together',
  line: 'Neither changes it alone. Both together make it gentler, or stop it.',
  and: 'and',
  none: 'No two other answers would make it gentler or stop it.',
} as const;
