import { describe, expect, it } from 'vitest';
import { parseJob } from '$lib/keep/job-file';
import { isToldOf, type FileParts } from '../helpers/told-of-file';

describe('what a file says of an answer', () => {
  isToldOf([
    [
      'a profile in words',
      { zone: { makerProfile: 'rough' } },
      /^zones\[0\]\.makerProfile: expected a number of CSP from 1 to \d+, or "unknown"; found "rough"$/,
    ],
    [
      'half a profile',
      { zone: { makerProfile: 2.5 } },
      /\.makerProfile: expected a number of CSP from 1 to \d+, or "unknown"; found 2\.5$/,
    ],
    [
      'a moisture of no data sheet',
      { zone: { makerMoisture: 'wet' } },
      /\.makerMoisture: expected one of "no-sheet", .*; found "wet"$/,
    ],
    [
      'yes as a text',
      { zone: { contamination: { yes: 'oil' } } },
      /\.contamination\.yes: expected a list with any of "oil"/,
    ],
    [
      'nothing in place of a list',
      { zone: { contamination: { maybe: null } } },
      /\.contamination\.maybe: expected a list with any of .*; found null$/,
    ],
    [
      'a surface nobody knows',
      { site: { element: 'raft' } },
      /^site\.element: expected one of "slab".*; found "raft"$/,
    ],
    [
      'a thickness in words',
      { site: { thickness: 'thin' } },
      /^site\.thickness: expected a number of mm from 30 to 2000, or "unknown"; found "thin"$/,
    ],
    ['the thinnest there is', { site: { thickness: 30 } }, 'taken'],
    ['the thickest there is', { site: { thickness: 2000 } }, 'taken'],
    ['thinner than any', { site: { thickness: 29.9 } }, /^site\.thickness: .*; found 29\.9$/],
  ]);

  it('reads minus nought as nought, of a measure and of a count', () => {
    const read = parseJob({
      format: 'down-to-sound.job',
      version: 2,
      site: {},
      zones: [{ id: 'a', depth: -0, readiness: { seed: -0, results: {} } }],
    });
    const [zone] = read.ok ? read.value.zones : [];
    expect([zone?.answers.depth, zone?.readiness?.seed].map((each) => Object.is(each, 0))).toEqual([
      true,
      true,
    ]);
  });
});

describe('what a file says of the reader’s own figures', () => {
  const own = (figures: object): FileParts => ({ job: { own: figures } });
  isToldOf([
    ['one that goes below zero', own({ 'air.temperature': -5 }), 'taken'],
    ['one that is below zero', own({ 'halfcell.low': -250 }), 'taken'],
    ['those that may be zero', own({ 'freeze.point': 0, 'dust.scale': 0 }), 'taken'],
    [
      'one that may be zero, below it',
      own({ 'rain.day': -1 }),
      /^own\["rain\.day"\]: expected a number \(unit: .+\) not below 0; found -1$/,
    ],
    [
      'one that is never zero, at zero',
      own({ 'patch.merge': 0 }),
      /^own\["patch\.merge"\]: expected a number .* greater than 0; found 0$/,
    ],
    [
      'past all sense',
      own({ 'air.temperature': -2e9 }),
      /^own\["air\.temperature"\]: expected a number \(unit: C\); found -2000000000$/,
    ],
    [
      'in words',
      own({ 'patch.merge': 'far' }),
      /^own\["patch\.merge"\]: expected a number \(unit: .*found "far"$/,
    ],
    [
      'a limit of the interview',
      own({ 'limit.area': 5 }),
      /^own\["limit\.area"\]: expected a field that is known here: the id of a figure/,
    ],
  ]);
});

describe('what a file says of names and ids', () => {
  const zone = (more: object): FileParts => ({ zone: more });
  const id =
    'zones[0].id: expected an id of 1 to 40 letters, digits, dots, dashes or underscores that starts with a letter or digit';
  isToldOf([
    ['the longest name', zone({ name: 'x'.repeat(120) }), 'taken'],
    [
      'a longer one',
      zone({ name: 'x'.repeat(121) }),
      /^zones\[0\]\.name: expected a text of at most 120 characters/,
    ],
    ['a name with a line end', zone({ name: 'a\nb' }), /^zones\[0\]\.name: .*; found "a\\u000ab"$/],
    [
      'a name as a number',
      zone({ name: 5 }),
      /^zones\[0\]\.name: expected a text of at most 120 .*; found 5$/,
    ],
    ['a name of spaces', zone({ name: '   ' }), 'taken'],
    ['the longest id', zone({ id: 'x'.repeat(40) }), 'taken'],
    [
      'a longer id',
      zone({ id: 'x'.repeat(41) }),
      new RegExp(`^${id.replaceAll(/[[\].]/g, '\\$&')}`),
    ],
    ['an id that begins with a dot', zone({ id: '.a' }), `${id}; found ".a"`],
    ['an id with a blank', zone({ id: 'a b' }), `${id}; found "a b"`],
    ['no id', zone({ id: '' }), `${id}; found ""`],
    ['an id that every object has', zone({ id: 'toString' }), `${id}; found "toString"`],
    ['an id as a number', zone({ id: 7 }), `${id}; found 7`],
    [
      'two zones of one id',
      { job: { zones: [{ id: 'b' }, { id: 'a' }, { id: 'b' }] } },
      'zones[2].id: expected an id that no zone before has; found "b"',
    ],
    [
      'a zone that is none',
      { job: { zones: [null] } },
      /^zones\[0\]: expected an object with the fields id, name, .*; found null$/,
    ],
  ]);
});

describe('what a file says of a check before covering', () => {
  const of = (record: object): FileParts => ({
    zone: { readiness: { seed: 1, results: {}, ...record } },
  });
  isToldOf([
    ['a stress as typed', of({ pullOff: { tests: [{ stress: 'about 2', shares: {} }] } }), 'taken'],
    [
      'a number past all sense',
      of({ length: 2e9 }),
      'zones[0].readiness.length: expected a number, or the text that was typed, of at most 120 characters; found 2000000000',
    ],
    [
      'a number below all sense',
      of({ width: -2e9 }),
      /^zones\[0\]\.readiness\.width: expected a number, or the text/,
    ],
    [
      'neither number nor text',
      of({ length: true }),
      /^zones\[0\]\.readiness\.length: expected a number, or the text.*found true$/,
    ],
    [
      'a seed too large',
      of({ seed: 2 ** 32 }),
      'zones[0].readiness.seed: expected a whole number from 0 to 4294967295; found 4294967296',
    ],
    ['the largest seed', of({ seed: 2 ** 32 - 1 }), 'taken'],
    [
      'a requirement nobody knows',
      of({ pullOff: { tests: [], requirement: { id: 'mine' } } }),
      /\.requirement\.id: expected a list with any of "/,
    ],
    [
      'a spoiler nobody knows',
      of({ clock: { spoiled: [{ by: 'cat', at: '' }] } }),
      /\.clock\.spoiled\[0\]\.by: expected a list with any of ".*; found "cat"$/,
    ],
    [
      'a check nobody knows',
      of({ asked: ['smell'] }),
      /\.readiness\.asked\[0\]: expected a list with any of ".*; found "smell"$/,
    ],
  ]);
});
