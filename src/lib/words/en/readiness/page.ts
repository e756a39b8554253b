import type { Count } from '$lib/readiness/sampling';
import type { Say } from '$lib/words/types';

/** What stands round the checks on the page and on the record. */
export const readyPage = {
  title: 'Ready to cover?',
  description: 'Check that a prepared surface may be covered, and write down what you found.',
  intro:
    'Preparation ends when you have shown that the surface is ready. Do the checks, type what you find, print the record.',
  noScript: 'This page works out results as you type, so it needs JavaScript.',
  wait: 'Opening your job…',
  nothing:
    'There is no zone to check yet. Answer the questions about your surface first, so that the checks fit it.',
  notBegun: (zone: string) => `Nothing has been answered for ${zone} yet.`,
  start: 'Answer the questions',
  toAdvice: 'Advice for this zone',
  zones: 'Zones',
  whole: 'The whole job',
  held: 'The advice for this zone holds the work. Results are kept, but the zone is not ready until that is cleared.',
  open: (questions: string) =>
    `Not sure yet whether this is needed: it hangs on ${questions}. It counts until you know.`,
  /** Before a test that cores, drills or breaks into concrete with something hidden in it. */
  locate: {
    'tendons-possible':
      'Cables under tension may lie where this test cuts in. Have them located and marked first: a cut one can kill.',
    'buried-services':
      'Power cables or pipes may lie where this test cuts in. Have them located and marked first.',
  },
  optional: 'Only if specified',
  ask: 'Our specification asks for this',
  checks: 'Checks',
  extras: 'Where the specification asks for it',
  why: 'Why',
  how: 'How to do it',
  explained: (title: string) => `Read more: ${title}`,
  passes: 'What passes',
  redo: 'Do again',
  lookAgain: 'Look again at',
  call: 'Ask',
  maker: 'the maker of the product',
  engineer: 'a licensed structural engineer',
  noSource: 'Common practice, no published source.',
  sources: 'Sources',
  places: 'Test places',
  draw: 'Draw the test places',
  drawWhy:
    'Random places, so that nobody picks the good spots. They are drawn once. The seed is printed on the record, and anyone can draw the same places from it.',
  planName: (tests: number, length: string, width: string) =>
    `Plan of the zone with ${tests} numbered test places, ${length} by ${width}`,
  seed: (seed: number) => `Seed ${seed}`,
  seedHow:
    'Places: Mersenne Twister (mt19937), one place in each of as many equal pieces as there are tests.',
  length: 'Length of the zone',
  width: 'Width of the zone',
  along: 'along',
  across: 'across',
  ofSide: 'Places as a share of the length and the width. Type both to get distances.',
  place: (number: number) => `Place ${number}`,
  bar: (number: number) => `Bar ${number}`,
  more: 'One more',
  ownCount: 'Your own number of tests',
  remove: 'Remove',
  takeBack: 'Take back',
  takenBack: 'This answer is taken back.',
  count: (count: Count | null, say: Say) => {
    if (!count) return 'All of it.';
    const tests = count.tests === 1 ? 'One test' : `${say.number(count.tests)} tests`;
    const by =
      count.by === 'own'
        ? ', your own number'
        : count.by === 'practice'
          ? '. No published number found: type your own if you have one'
          : '';
    const area = count.areaOpen ? ' at least: type the area to know' : '';
    return `${tests}${area}${by}, at random places.`;
  },
  eachBar: 'Every bar that shows.',
  coldest: 'Where it is coldest.',
  eachVessel: 'Every barrel or tank, before it is taken away.',
  vessel: (number: number) => `Barrel ${number}`,
  beside: 'The covering does not wait for this',
  pullOff: {
    requirement: 'What is asked',
    none: 'Not chosen yet',
    mean: 'Least mean',
    least: 'Least single result, if there is one',
    tests: 'Tests',
    test: (number: number) => `Test ${number}`,
    stress: 'Stress',
    force: 'Force',
    disc: 'Disc diameter',
    byStress: 'I have the stress',
    byForce: 'I have the force',
    broke: 'Where it broke',
    all: (plane: string) => `${plane}, all of it`,
    mixed: 'In more than one plane',
    share: (plane: string) => `${plane}, %`,
    add: 'Add a test',
    paste: 'Paste a table',
    pasteHow:
      'One test a line, from a spreadsheet or with commas. Columns: stress and where it broke; or force, disc and where it broke. A first line with names is read.',
    take: 'Take these over',
    taken: (tests: number) => (tests === 1 ? '1 test taken over.' : `${tests} tests taken over.`),
    nothingRead: 'No test was found in this. Nothing was taken over.',
    group: 'Broke in',
    number: 'n',
    average: 'Mean',
    range: 'Range',
    deviation: 'Standard deviation',
    bound: 'Lower bound of the mean',
    boundHow: (confidence: string) =>
      `One-sided, ${confidence}: the true mean lies above it if results scatter evenly.`,
    voided: 'Void (glue)',
    asked: 'asked',
    plot: (tests: number) =>
      `Each of the ${tests} tests as a dot by its stress, a row for each way it broke`,
  },
  clock: {
    prepared: 'The last cleaning ended at',
    now: 'It ended just now',
    spoil: 'Something got on it?',
    again: 'Cleaned again just now',
    left: (hours: string) => `${hours} left.`,
    open: (hours: string) => `Open for ${hours}.`,
  },
  record: {
    title: 'Readiness record',
    print: 'Print the record',
    by: 'Checked by',
    at: 'Checked at',
    atNow: 'Now',
    note: 'Notes',
    site: 'Site',
    zone: 'Zone',
    area: 'Area',
    finish: 'Goes on next',
    verdict: 'Verdict',
    check: 'Check',
    asked: 'Asked',
    found: 'Found',
    state: 'State',
    signed: 'Signed',
    date: 'Date',
    signers: ['Checked by', 'For the contractor', 'For the owner'],
    none: '—',
    printed: 'Printed',
  },
} as const;
