import { wholeNumber } from '$lib/words/by-language';
import type { Hold } from '$lib/advice/types';

const cases = (count: number): string => (count === 1 ? '1 case' : `${count} cases`);
const results = (count: number): string => (count === 1 ? '1 result' : `${count} results`);

/** What a learner gives back at the end of a set. */
export const giveWords = {
  title: 'Give it to your crew lead',
  line: 'The code holds the cases, what you picked, the day and the time, and your name if you type one. Nothing else, and no server gets it.',
  name: (most: number) => `Your name, if you like: up to ${most} letters`,
  badName: (most: number) => `Up to ${most} letters fit, and no signs that cannot be seen.`,
  label: 'Link with your result',
  link: 'Copy the link',
  code: 'Copy the code alone',
  send: 'Send it',
  copied: 'It is copied. Send it to your crew lead.',
  byHand: 'The link is marked. Copy it by hand.',
  alternative: 'Code that opens your result on the phone of your crew lead',
} as const;

/** Who comes before the work, in short, beside the name of a method. */
export const firstWords: Readonly<Record<Hold['who'], string>> = {
  engineer: 'Engineer first',
  'concrete-contractor': 'Replace it',
  laboratory: 'Laboratory first',
  locator: 'Locate cables first',
  crew: 'Measure first',
};

/** The page on which a crew lead gathers what learners gave back. */
export const resultsWords = {
  title: 'Results of your learners',
  description:
    'Gather what learners give back of a practice set: who, which cases, what was mixed up most, and what to practise next.',
  lead: 'At the end of a set each learner gets a link and a code for you. Bring them here. All of it stays in this browser, on this device.',
  wait: 'Looking at what is on this device …',
  noScript:
    'This page needs JavaScript: results are read and kept by your browser, on this device.',
  back: 'Practice',
  way: 'Results that your learners gave back',
  label: 'Codes or links, one a line',
  add: 'Add',
  nothing: 'Paste a code or a link first.',
  tooLong: (most: number) =>
    `That is too much at once. Paste at most ${wholeNumber(most)} characters.`,
  added: (names: string, count: number) => `Added: ${results(count)} (${names}).`,
  otherSet: (count: number) =>
    count === 1
      ? 'It is of another set than those before it, and stands under its own.'
      : 'Not all are of one set; each stands under its own.',
  here: (who: string) => `Already here: ${who}.`,
  otherPicks: (who: string) =>
    `Not added: ${who}. The same run is here with other picks, so one of the two was changed. Ask the learner for the code again.`,
  broken: (line: number, problem: string) => `Line ${line} was not added: ${problem}.`,
  noCode: (line: number) => `Line ${line} was not added: it holds no code.`,
  byLink: (problem: string) => `The link was not added: ${problem}.`,
  full: (who: string) =>
    `Not kept: ${who}. This device has no room left. Delete something and add it again.`,
  failed: 'The storage of this browser did not answer. Nothing was changed.',
  memory:
    'This browser keeps no data for this site just now. What you add is gone when you close the tab. Save it as a table before that.',
  proof:
    'A code that was changed on the way, or that comes twice, is told. No code can prove who did the set.',
  none: 'No result is here yet.',
  makeSet: 'Make a set',
  nameless: 'No name',
  set: (count: number) => `A set of ${cases(count)}`,
  open: 'Open the set',
  who: 'Who',
  how: 'Case by case',
  score: (right: number, of: number) => `${right} of ${of} right`,
  picture: (wrong: string) => (wrong ? `Not right: cases ${wrong}` : 'All of it is right'),
  gone: 'This case is not on this site any more.',
  legend: {
    right: 'right',
    wrong: 'not right',
    unsafe: 'started where somebody has to come first',
  },
  methodAlone: 'The method is judged here, not the work around it.',
  missed: (count: number) => (count === 0 ? 'More' : `${count} not right`),
  missedLine: (at: number, title: string, pick: string, answer: string) =>
    `${at}. ${title}: picked ${pick}; right is ${answer}.`,
  itsCases: 'Its cases',
  mixed: 'Mixed up most',
  mixedLine: (pick: string, answer: string) => `Picked ${pick}; right is ${answer}.`,
  times: (count: number) => (count === 1 ? 'Once' : `${count} times`),
  more: (count: number) => `${count} more`,
  next: 'What to practise next',
  nextLine: 'Open one and send its link.',
  apart: (one: string, other: string, count: number) => `${one} or ${other}? (${cases(count)})`,
  level: (name: string, count: number) => `${name} (${cases(count)})`,
  removeName: 'Remove the name',
  removeNameOf: (who: string) => `Remove the name: ${who}`,
  removeNames: 'Remove all names',
  delete: 'Delete',
  deleteOf: (who: string) => `Delete the result: ${who}`,
  deleted: (who: string) => `Deleted: the result of ${who}.`,
  nameGone: (who: string) => `The name ${who} is removed.`,
  namesGone: 'All names are removed.',
  undo: 'Undo',
  undone: 'It is back.',
  take: 'Print, save, names',
  print: 'Print',
  csv: 'Save as a table (CSV)',
  fileName: 'results.csv',
  damaged: (count: number, problem: string) =>
    `${results(count)} kept here cannot be read. ${problem}.`,
  damagedSave: 'Save what is there to a file',
  damagedFile: 'unreadable-results.json',
  damagedDelete: 'Delete what cannot be read',
  damagedGone: 'What could not be read is deleted.',
  head: ['Name', 'Ended', 'Set', 'Number', 'Case', 'Picked', 'Right is', 'Right'],
  yes: 'yes',
  no: 'no',
} as const;
