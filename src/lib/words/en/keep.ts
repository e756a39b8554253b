import type { Expected, Found, Problem } from '$lib/keep/problem';
import type { FaultId } from '$lib/survey/faults';
import { wholeNumber } from '$lib/words/by-language';

type Say<T extends { id: string }> = {
  readonly [I in T['id']]: (about: Extract<T, { id: I }>) => string;
};

/** More fields than this are not listed one by one. */
const listed = 30;

const oneOf = (choices: readonly string[]): string =>
  choices.map((choice) => `"${choice}"`).join(', ');
const fieldsOf = (fields: readonly string[]): string =>
  fields.length > listed ? 'the id of a figure of this site' : `one of ${fields.join(', ')}`;
const between = ([low, high]: readonly [number, number]): string => `from ${low} to ${high}`;

/** What a drawing wants at a place where it cannot be as it was given. */
export const faultWords: Readonly<Record<FaultId, string>> = {
  'not-closed': 'at least three corners, so that the outline closes',
  'crosses-itself': 'an outline that does not cross or touch itself',
  'no-area': 'an outline that takes in some area',
  'off-slab': 'a place on the slab',
  'wrong-unit': 'millimetres; the size of these numbers looks like another unit',
  'closed-joint': 'a joint from edge to edge or to another joint, not a ring',
};

const expectedWords: Say<Expected> = {
  smaller: ({ limit }) => `no more than ${wholeNumber(limit)} characters`,
  content: () => 'a job file',
  'utf-8': () => 'text in UTF-8',
  json: () => 'JSON',
  once: () => 'each field once',
  flatter: ({ limit }) => `lists and objects nested no deeper than ${limit}`,
  format: ({ format }) => `"${format}"`,
  version: ({ known }) =>
    `a version this site can read (${known.join(', ')}); a newer file needs a newer copy of the site`,
  object: ({ fields }) =>
    fields.length > listed
      ? 'an object whose fields are ids of figures of this site'
      : `an object with the fields ${fields.join(', ')}`,
  'known-field': ({ fields }) => `a field that is known here: ${fieldsOf(fields)}`,
  field: ({ field }) => `a field "${field}"`,
  list: ({ most }) => `a list of at most ${wholeNumber(most)}`,
  choice: ({ choices }) =>
    `one of ${oneOf(choices)}, a list of those still possible, or "not-sure"`,
  choices: ({ choices }) =>
    `a list with any of ${oneOf(choices)}, "not-sure", or {"yes": [...], "maybe": [...]}`,
  depth: ({ choices, unit, range }) =>
    `a number of ${unit} ${between(range)}, one of ${oneOf(choices)}, a list of those still possible, or "not-sure"`,
  number: ({ unit, range }) => `a number of ${unit} ${between(range)}, or "unknown"`,
  amount: ({ unit, range }) => `a number of ${unit} ${between(range)}`,
  truth: () => 'true or false',
  'one-of': ({ choices }) => `one of ${oneOf(choices)}`,
  'own-number': ({ unit, range: [low] }) =>
    `a number (unit: ${unit})${low > 0 ? ' greater than 0' : low === 0 ? ' not below 0' : ''}`,
  count: ({ range }) => `a whole number ${between(range)}`,
  names: ({ choices }) => `a list with any of ${oneOf(choices)}`,
  unique: () => 'nothing said twice',
  date: () => 'a day of the calendar, written like "2026-05-04"',
  'wall-time': () => 'a time with its distance from UTC, written like "2026-05-04T07:30:00+02:00"',
  goes: ({ most }) => `at most ${most} goes, each under the time it was started`,
  'unique-id': () => 'an id that no zone before has',
  name: ({ most }) =>
    `a text of at most ${most} characters, without line ends, control characters or characters that turn the writing direction`,
  seen: () => 'an empty text or one with something in it that can be seen',
  entry: ({ most }) => `a number, or the text that was typed, of at most ${most} characters`,
  'zone-id': ({ most }) =>
    `an id of 1 to ${most} letters, digits, dots, dashes or underscores that starts with a letter or digit`,
  slab: () =>
    'the surface as {"length", "width"}, as {"corners": [[x, y], ...]}, or as {"steps": {"count", "tread", "riser", "width"}}, in millimetres',
  place: () => 'two numbers, x and y, in millimetres',
  line: () => 'at least two places',
  drawing: ({ fault }) => faultWords[fault],
  spot: () => 'two numbers from 0 to 1: shares of the width and the height of the picture',
  'plain-jpeg': () =>
    'a JPEG as base64, as this site writes it: nothing in it but the picture, no longer than 1,600 pixels',
  moment: () => 'a moment before the year 2100, in milliseconds since 1970',
  'case-id': () => 'the id of a practice case',
  'authored-case': () =>
    'the id of a practice case this site has; a newer link needs a newer copy of the site',
  'set-link': () => 'a link to a practice set made by this site',
  'case-drawing': ({ drawing }) =>
    `the id of a case drawn the way this copy of the site draws them (${drawing}-…); other copies draw other cases, so ask for a new link`,
  'result-code': () => 'the code of a result made by this site',
  'result-version': ({ known }) =>
    `a code of a version this site can read (${known.join(', ')}); a newer code needs a newer copy of the site`,
  'whole-result': () => 'the whole code; part of it is missing or was changed on the way',
  'possible-result': () => 'a result that this site could have given; this one was put together',
  'set-part': () => 'cases=…, seed=… and count=…, each no more than once',
  link: () => 'a link to a job made by this site',
  'link-version': ({ known }) =>
    `a link of a version this site can read (${known.join(', ')}); a newer link needs a newer copy of the site`,
  'whole-link': () => 'the whole link; part of it is missing or was changed on the way',
};

const foundWords: Say<Found> = {
  nothing: () => 'nothing there',
  text: ({ text }) => `found "${text}"`,
  'long-text': ({ length }) => `found ${wholeNumber(length)} characters`,
  number: ({ text }) => `found ${text}`,
  truth: ({ value }) => `found ${value}`,
  null: () => 'found null',
  list: ({ length }) => (length === 0 ? 'found an empty list' : `found a list of ${length}`),
  object: () => 'found an object',
  field: ({ field }) => `found "${field}"`,
  broken: () => '',
};

const say = <T extends { id: string }>(words: Say<T>, about: T): string =>
  (words[about.id as T['id']] as (about: T) => string)(about);

/** One line: the place, what was expected there, what was found. */
export function problemSentence({ path, expected, found }: Problem): string {
  const place =
    expected.id === 'json' && expected.line !== undefined
      ? `line ${expected.line}, column ${expected.column}`
      : path;
  const again =
    expected.id === 'once' && expected.line !== undefined
      ? ` again at line ${expected.line}, column ${expected.column}`
      : '';
  const what = [`expected ${say(expectedWords, expected)}`, say(foundWords, found) + again];
  return `${place ? `${place}: ` : ''}${what.filter(Boolean).join('; ')}`;
}

/** Why a write failed. The work itself stays open in the tab. */
export const putWords: Readonly<Record<'newer' | 'quota' | 'unavailable' | 'invalid', string>> = {
  newer: 'A job is there already under the same mark. Nothing has been overwritten.',
  quota:
    'This device has no room left for the job. Your work is still open here. Save it as a file, or delete jobs you no longer need.',
  invalid: 'The job was not saved, because something in it could not be read back:',
  unavailable:
    'The job could not be saved on this device. Your work is still open here. Save it as a file.',
};

/** What the command line says when it cannot begin. */
export const commandWords = {
  usage: 'expected one argument: a job file, or - for standard input; --help tells more',
  help: `Advice, plan and safety figures for a job file, without a browser.

Examples
  npm run -s advise -- job.json            advice for a file
  npm run -s advise -- - < job.json        from standard input
  npm run -s advise -- job.json > out.json keep what it says

What it reads (one of them)
  FILE        a job file, saved under “Your jobs”
  -           standard input
  -h, --help  this text

What it prints
  One JSON object on standard output; README.md tells its fields.
  How far it is, on standard error, while a job takes long.

How it ends
  0  done
  2  no job file, or not to be read: one line on standard error says why
`,
  unreadable: (file: string, code: string) => `${file}: cannot be read (${code})`,
  /** Now and then while a job of many open zones is worked on. */
  progress: (done: number, all: number) =>
    `${wholeNumber(done)} of ${wholeNumber(all)} zones advised`,
} as const;
