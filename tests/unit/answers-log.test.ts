import { describe, expect, it } from 'vitest';
import { isDate, plusDays, weekdayOf } from '$lib/answers/dates';
import {
  dateOf,
  finished,
  instantOf,
  isMoment,
  noted,
  spellsOf,
  started,
  stateOf,
  stopped,
  withSpell,
  without,
  withoutSpell,
} from '$lib/answers/day-log';
import { weekdays } from '$lib/answers/job';
import {
  beganOn,
  isLogged,
  keyText,
  logAt,
  momentsOf,
  withLogs,
  withoutLogs,
} from '$lib/answers/task-log';
import { at, doneIn, logged } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

describe('a moment', () => {
  it.each([
    '2026-05-04T00:00:00+02:00',
    '2026-05-04T19:59:59-05:30',
    '2026-05-04T23:30:00+14:00',
    '2024-02-29T09:05:09+00:00',
    '2026-05-04T10:00:00+09:59',
  ])('%s is one', (text) => {
    expect(isMoment(text)).toBe(true);
    expect(dateOf(text)).toBe(text.slice(0, 10));
    expect(instantOf(text)).toBe(new Date(text).getTime());
  });
  it.each([
    ...['2026-02-29T07:00:00+01:00', '2026-05-04T24:00:00+02:00', '2026-05-04T07:60:00+02:00'],
    ...['2026-05-04T07:00:60+02:00', '2026-05-04T07:00:00+02:60', '2026-05-04T30:00:00+02:00'],
    ...['x2026-05-04T07:00:00+02:00', '2026-05-04T07:00:00+02:00x', '2026-05-04T7:00:00+02:00'],
    ...['26-05-04T07:00:00+02:00', '2026-5-04T07:00:00+02:00', '2026-05-4T07:00:00+02:00'],
    ...['2026-05-04T07:00:00', '2026-05-04T07:00:00+2:00', '2026-05-04T07:00:00+24:00', ''],
    ...['2026-05-04T07:0:00+02:00', '2026-05-04T07:00:0+02:00', '2026-05-04T07:00:00+02:0'],
    ...['2026-05-04Tx1:00:00+02:00', '2026-05-04T2x:00:00+02:00', '2026-05-04T0x:00:00+02:00'],
    ...['2026-05-04T07:x0:00+02:00', '2026-05-04T07:0x:00+02:00', '2026-05-04T07:00:x0+02:00'],
    ...['2026-05-04T07:00:0x+02:00', '2026-05-04T07:00:00+0x:00', '2026-05-04T07:00:00+1x:00'],
    ...['2026-05-04T07:00:00+02:x0', '2026-05-04T07:00:00+02:0x', '2026-05-04T07:00:00x02:00'],
  ])('%s is none', (text) => expect(isMoment(text)).toBe(false));
});

describe('a date', () => {
  it.each(['2026-05-04', '2024-02-29', '2026-12-31', '0001-01-01'])('%s is one', (text) =>
    expect(isDate(text)).toBe(true),
  );
  it.each([
    ...['2026-06-31', '2026-02-29', '2026-13-01', '2026-00-10', '2026-05-00', 'x2026-05-04'],
    ...['2026-05-04x', '2026-5-04', '2026-05-4', '26-05-04', '2026/05/04', '202x-05-04', ''],
    ...['2026-0x-04', '2026-05-0x', '+02026-05-04'],
  ])('%s is none', (text) => expect(isDate(text)).toBe(false));
  // The calendar of 2026: 4 May is a Monday; 29 March ends winter time, and is a day like others.
  it('goes on over months, years and changes of the clock', () => {
    expect(plusDays('2026-05-04', 0)).toBe('2026-05-04');
    expect(plusDays('2026-03-28', 2)).toBe('2026-03-30');
    expect(plusDays('2024-02-28', 2)).toBe('2024-03-01');
    expect(plusDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(plusDays('2026-01-01', -1)).toBe('2025-12-31');
    expect(weekdays.map((_, days) => weekdayOf(plusDays('2026-05-04', days)))).toEqual([
      ...['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'],
    ]);
  });
});

describe('what a crew tells of a step', () => {
  const [seven, nine, ten] = [at(4, '07:00'), at(4, '09:00'), at(4, '10:00')];
  const two = { spells: { [nine]: { people: 1 }, [seven]: { people: 2, to: nine } } };

  it('stands in order of its starts, wherever the clock stood', () => {
    expect(spellsOf(two)).toEqual([
      { from: seven, people: 2, to: nine },
      { from: nine, people: 1 },
    ]);
    expect(spellsOf({})).toEqual([]);
    // Eight in the east is before seven in the west.
    const [east, west] = ['2026-05-04T08:00:00+02:00', '2026-05-04T07:00:00+00:00'];
    const both = { spells: { [west]: { people: 1 }, [east]: { people: 1 } } };
    expect(spellsOf(both).map(({ from }) => from)).toEqual([east, west]);
  });

  it('is open, running, stopped or done', () => {
    expect(stateOf()).toBe('open');
    expect(stateOf({ spells: {} })).toBe('open');
    expect(stateOf(two)).toBe('running');
    expect(stateOf(stopped(two, ten))).toBe('stopped');
    expect(stateOf({ ...two, done: ten })).toBe('done');
  });

  it('keeps every go as it was begun and ended', () => {
    expect(started({}, seven, 2)).toEqual({ spells: { [seven]: { people: 2 } } });
    expect(started({}, seven, 2, true)).toEqual({
      spells: { [seven]: { people: 2, together: true } },
    });
    expect(started({ ...doneIn(seven, nine), note: 'x' }, ten, 3)).toEqual({
      spells: { [seven]: { people: 1, to: nine }, [ten]: { people: 3 } },
      note: 'x',
    });
    expect(stopped({ note: 'x' }, ten)).toEqual({ note: 'x' });
    expect(stopped({ ...two, note: 'x' }, ten)).toEqual({
      spells: { [seven]: { people: 2, to: nine }, [nine]: { people: 1, to: ten } },
      note: 'x',
    });
    expect(finished(two, ten)).toEqual({ ...stopped(two, ten), done: ten });
  });

  it('takes a note and a go put right, and loses nothing else by it', () => {
    expect(noted(two, ' Blade worn ')).toEqual({ ...two, note: ' Blade worn ' });
    expect(noted({ ...two, note: 'x' }, ' \n')).toEqual(two);
    expect(without({ a: 1, b: 2 }, 'a')).toEqual({ b: 2 });
    expect(withSpell(two, null, { from: ten, people: 4 })).toEqual({
      spells: { ...two.spells, [ten]: { people: 4 } },
    });
    expect(withSpell(two, nine, { from: ten, people: 4 })).toEqual({
      spells: { [seven]: two.spells[seven], [ten]: { people: 4 } },
    });
    expect(withoutSpell(two, nine)).toEqual({ spells: { [seven]: two.spells[seven] } });
    expect(withoutSpell({ spells: { [nine]: { people: 1 } }, note: 'x' }, nine)).toEqual({
      note: 'x',
    });
  });
});

describe('the log of a job', () => {
  const [seven, nine, ten] = [at(4, '07:00'), at(4, '09:00'), at(5, '10:00')];
  const job = tradeJob([{}, {}]);
  const told = logged(job, [
    ['z1', 'vacuum', { spells: { [ten]: { people: 1 } } }],
    ['z1', 'sound-and-mark', { note: 'x' }],
    [null, 'make-safe', doneIn(seven, nine)],
  ]);

  it('lies with the zone, or with the job where a step is done once for it', () => {
    expect(told).toEqual({
      ...job,
      log: { 'make-safe': doneIn(seven, nine) },
      zones: [
        job.zones[0],
        {
          ...job.zones[1],
          log: { vacuum: { spells: { [ten]: { people: 1 } } }, 'sound-and-mark': { note: 'x' } },
        },
      ],
    });
    expect(logAt(told, { zone: 'z1', step: 'sound-and-mark' })).toEqual({ note: 'x' });
    expect(logAt(told, { zone: null, step: 'make-safe' })).toEqual(doneIn(seven, nine));
    for (const zone of ['z0', 'gone', null])
      expect(logAt(told, { zone, step: 'vacuum' })).toEqual({});
    expect(logged(job, [['gone', 'vacuum', { note: 'x' }]])).toEqual(job);
    expect(withLogs(told, [])).toBe(told);
  });

  it('is taken out step by step, or whole', () => {
    const less = logged(told, [['z1', 'vacuum', {}]]);
    expect(less.zones[1]?.log).toEqual({ 'sound-and-mark': { note: 'x' } });
    expect(Object.keys(withoutLogs(told))).not.toContain('log');
    expect(withoutLogs(told)).toEqual(job);
    expect(Object.keys(withoutLogs(told).zones[1] ?? {})).not.toContain('log');
  });

  it('tells whether and when work began', () => {
    expect(momentsOf(told)).toEqual([seven, nine, nine, ten]);
    expect(momentsOf({})).toEqual([]);
    expect(beganOn(told)).toBe('2026-05-04');
    expect(beganOn({ zones: told.zones })).toBe('2026-05-05');
    const later = logged(told, [['z0', 'vacuum', { done: at(3, '10:00') }]]);
    expect(beganOn(later)).toBe('2026-05-03');
    expect(beganOn(job)).toBe(null);
    expect([isLogged(told), isLogged(job)]).toEqual([true, false]);
    expect(isLogged(logged(job, [['z1', 'vacuum', { note: 'x' }]]))).toBe(true);
    expect(isLogged(logged(job, [[null, 'make-safe', { note: 'x' }]]))).toBe(true);
  });

  it('names a step of a zone so that no two have one name', () => {
    const keys = [
      { zone: null, step: 'vacuum' },
      { zone: 'null', step: 'vacuum' },
      { zone: 'a', step: 'vacuum' },
      { zone: 'a', step: 'make-safe' },
    ] as const;
    expect(new Set(keys.map(keyText)).size).toBe(keys.length);
  });
});
