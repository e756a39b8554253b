import { describe } from 'vitest';
import { isToldOf, times, type FileParts, type ToldCase } from '../helpers/told-of-file';

describe('what a file says of the crew and its tools', () => {
  const mix = (more: object): FileParts => ({
    job: { crewDay: { mix: [{ step: 'vacuum', tool: 'vacuum', minutes: 60, ...more }] } },
  });
  isToldOf([
    ['a whole day', mix({ minutes: 1440 }), 'taken'],
    [
      'more minutes than a day has',
      mix({ minutes: 1441 }),
      'crewDay.mix[0].minutes: expected a number of min from 0 to 1440; found 1441',
    ],
    ['a step nobody knows', mix({ step: 'sweep' }), /^crewDay\.mix\[0\]\.step: expected one of "/],
    [
      'a tool nobody knows',
      mix({ tool: 'spoon' }),
      /^crewDay\.mix\[0\]\.tool: expected one of ".*; found "spoon"$/,
    ],
    [
      'tasks without end',
      { job: { crewDay: { mix: times(41, {}) } } },
      'crewDay.mix: expected a list of at most 40; found a list of 41',
    ],
    [
      'a region nobody works in',
      { job: { crewDay: { region: 'moon' } } },
      'crewDay.region: expected one of "us", "elsewhere"; found "moon"',
    ],
    [
      'turns nobody takes',
      { job: { crewDay: { turns: 'never' } } },
      /^crewDay\.turns: expected one of "one-operator"/,
    ],
    [
      'hours of no table',
      { job: { crewDay: { dustHours: 'all' } } },
      /^crewDay\.dustHours: expected one of "at-task"/,
    ],
    [
      'a tool for a step',
      { job: { crewDay: { tools: { vacuum: 'spoon' } } } },
      /^crewDay\.tools\.vacuum: expected one of "/,
    ],
    [
      'a tool measured perhaps',
      { job: { toolLevels: { vacuum: { measured: 'once' } } } },
      'toolLevels.vacuum.measured: expected true or false; found "once"',
    ],
    [
      'a tool louder than any',
      { job: { toolLevels: { vacuum: { noise: 141 } } } },
      'toolLevels.vacuum.noise: expected a number of dB(A) from 50 to 140; found 141',
    ],
    [
      'machines twice',
      { site: { machines: ['grind', 'grind'] } },
      /^site\.machines: expected nothing said twice/,
    ],
    [
      'hours that no day has',
      { site: { hoursPerDay: 17 } },
      'site.hoursPerDay: expected a number of h from 1 to 16; found 17',
    ],
    [
      'a price below nothing',
      { job: { prices: { perHour: -1 } } },
      /^prices\.perHour: expected a number of .* from 0 to 1000000; found -1$/,
    ],
  ]);
});

describe('what a file says of the calendar', () => {
  const all = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
  const of = (calendar: object): FileParts => ({ job: { calendar } });
  const date = 'expected a day of the calendar, written like "2026-05-04"';
  isToldOf([
    ['days there are', of({ start: '2028-02-29', off: ['2026-12-24'] }), 'taken'],
    [
      'a day there is not',
      of({ start: '2026-02-29' }),
      `calendar.start: ${date}; found "2026-02-29"`,
    ],
    [
      'a day with its hour',
      of({ start: '2026-05-04T07:30' }),
      `calendar.start: ${date}; found "2026-05-04T07:30"`,
    ],
    [
      'a day with a word before',
      of({ start: 'on 2026-05-04' }),
      `calendar.start: ${date}; found "on 2026-05-04"`,
    ],
    ['a day as a number', of({ start: 20260504 }), `calendar.start: ${date}; found 20260504`],
    ['six days off a week', of({ weekly: all.slice(1) }), 'taken'],
    [
      'every day of the week off',
      of({ weekly: all }),
      'calendar.weekly: expected a list of at most 6; found a list of 7',
    ],
    [
      'a day no week has',
      of({ weekly: ['someday'] }),
      /^calendar\.weekly\[0\]: expected a list with any of "mon".*; found "someday"$/,
    ],
    [
      'a weekday twice',
      of({ weekly: ['sat', 'sat'] }),
      /^calendar\.weekly: expected nothing said twice/,
    ],
    [
      'a day off twice',
      of({ off: ['2026-05-04', '2026-05-04'] }),
      /^calendar\.off: expected nothing said twice/,
    ],
    [
      'days off without end',
      of({ off: times(61, '2026-05-04') }),
      'calendar.off: expected a list of at most 60; found a list of 61',
    ],
  ]);
});

describe('what a file says of the crew’s log', () => {
  const moment = '2026-05-04T07:30:00+02:00';
  const log = (task: object): FileParts => ({ job: { log: { vacuum: task } } });
  const wall =
    'expected a time with its distance from UTC, written like "2026-05-04T07:30:00+02:00"';
  const goes = 'expected at most 200 goes, each under the time it was started';
  const spell = { people: 1 };
  const spells = (count: number) =>
    Object.fromEntries(
      Array.from({ length: count }, (_, at) => [
        moment
          .replace('07:30:00', `07:${10 + Math.floor(at / 60)}:${10 + (at % 50)}`)
          .replace('+02', `+0${at % 10}`),
        spell,
      ]),
    );
  isToldOf([
    [
      'as many goes as there may be',
      log({ spells: Object.fromEntries(Object.entries(spells(400)).slice(0, 200)) }),
      'taken',
    ],
    ['a go together', log({ spells: { [moment]: { people: 1, together: true } } }), 'taken'],
    [
      'a go perhaps together',
      log({ spells: { [moment]: { people: 1, together: false } } }),
      /\.together: expected true or false; found false$/,
    ],
    [
      'a time with a word before',
      log({ done: `at ${moment}` }),
      `log.vacuum.done: ${wall}; found "at ${moment}"`,
    ],
    [
      'a time with a word behind',
      log({ done: `${moment} sharp` }),
      `log.vacuum.done: ${wall}; found "${moment} sharp"`,
    ],
    ['a time as a number', log({ done: 7 }), `log.vacuum.done: ${wall}; found 7`],
    ['goes as a list', log({ spells: [] }), `log.vacuum.spells: ${goes}; found an empty list`],
    ['goes as nothing', log({ spells: null }), `log.vacuum.spells: ${goes}; found null`],
    [
      'goes without end',
      log({ spells: spells(400) }),
      `log.vacuum.spells: ${goes}; found an object`,
    ],
    ...['__proto__', 'prototype', 'constructor'].map((key): ToldCase => [
      `a go under ${key}`,
      log({ spells: JSON.parse(`{"${key}":{"people":1}}`) as object }),
      `log.vacuum.spells: ${goes}; found an object`,
    ]),
  ]);
});
