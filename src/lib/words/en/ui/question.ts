import type { SkipReason } from '$lib/advice/relevance';

/** Why a question is not asked, to follow its name. */
export const skipWords: Readonly<Record<SkipReason, string>> = {
  'no-cracks': 'There are no cracks.',
  'no-bar-shows': 'No bar shows.',
  'no-finish-yet': 'What goes on next is not decided.',
  'no-sheet': 'There is no data sheet at hand.',
  'no-floor-machine': 'No floor machine works here, so none leaves a border.',
  'concrete-itself-harmed':
    'Fire or chemicals have harmed the concrete itself. An engineer comes first.',
  'ground-first': 'The ground or the bed moved. The cause comes first.',
  'damaged-through': 'The damage goes right through. That part is replaced, not prepared.',
  'past-half-thickness':
    'The finished hole reaches half the thickness. That part is replaced, not prepared.',
  'broken-out-anyway': 'Whatever it is, this surface is broken out.',
};

/** What stands round a question. */
export const questionPageWords = {
  site: 'The site',
  zone: (name: string, place: number) => (name ? `Zone ${place}: ${name}` : `Zone ${place}`),
  /** Before it is sure, how many most readers are asked. */
  progress: (at: number, of: number, sure: boolean) =>
    sure ? `${at} of ${of}` : `${at} of about ${of}`,
  find: 'Find out how',
  leaveCoating: 'If there is any paint or glue on it, leave it and have it tested first.',
  sampleFirst: 'Scrape, brush and drill nothing before the report on the old coating is there.',
  several: 'Several possible',
  onlyOne: 'I know which one it is',
  severalHint: 'Tick every one that could be true.',
  coin: (width: string) => `The coin in the pictures is ${width} wide.`,
  maybe: 'Maybe',
  maybeOf: (name: string) => `Maybe: ${name}`,
  none: { name: 'None of these', hint: '' },
  unsure: { name: 'Not sure', hint: '' },
  measured: { name: 'I measured it', hint: 'Type it.' },
  back: 'Back',
  next: 'Continue',
  leave: 'Leave it as it was',
  pick: 'Choose one, or choose “Not sure”.',
  tick: 'Tick what is there, or choose “None of these” or “Not sure”.',
  noScript:
    'You can read every question here. Taking your answers and working out the advice is done in your own browser, and needs JavaScript, which is switched off.',
  given: 'Answers so far',
  givenNone: 'No answers yet.',
  change: 'Change',
  changeOf: (short: string) => `Change: ${short}`,
  skipped: 'Not asked',
  ask: 'Answer',
  toAdvice: 'Advice so far',
  maybeAnswer: (name: string) => `maybe ${name}`,
  unsureAnswer: 'Not sure',
  noneAnswer: 'None',
  possible: (names: string) => `Could be ${names}`,
} as const;

/** What is counted while the answers come in: methods that may come out as the gentlest sufficient one. */
const gentlest = (count: number): string => {
  if (count === 0) return 'No method: the work stops first';
  return count === 1 ? 'One method may be gentlest' : `${count} methods may be gentlest`;
};

/** What stands beside a question. */
export const asideWords = {
  section: 'What you have told us, to scale',
  standing: 'Which is the gentlest that does it?',
  states: { standing: 'Left', 'would-do': 'Possible, but not first', out: 'Out' },
  /** What it has come to so far, in one line that opens. */
  line: (left: number, depth: string) => `${gentlest(left)}${depth ? `; down to ${depth}` : ''}`,
  by: (short: string) => `Ruled out by: ${short}`,
  announce: (count: number, names: string) =>
    count ? `${gentlest(count)}: ${names}.` : `${gentlest(count)}.`,
} as const;
