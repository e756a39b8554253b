import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  finished,
  isMoment,
  noted,
  started,
  stateOf,
  stopped,
  takenUp,
  withSpell,
  withoutSpell,
  type TaskLog,
} from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { beganOn, logAt, withLogs } from '$lib/answers/task-log';
import { mergeJobs } from '$lib/keep/merge';
import { parseJob, writeJob } from '$lib/keep/job-file';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { problemSentence } from '$words/keep';
import { at, anyDayLog, doneIn, logged } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

const job = tradeJob([{}, {}]);
const key = { zone: 'z0', step: 'vacuum' } as const;

describe('a step of the day', () => {
  it('is started, stopped, started again and done, and each go stays', () => {
    const on = started({}, at(4, '07:30'), 2);
    const off = stopped(on, at(4, '09:00'));
    const again = started(off, at(4, '09:30'), 1);
    const done = finished(again, at(4, '11:00'));
    expect([{}, on, off, again, done].map(stateOf)).toEqual([
      'open',
      'running',
      'stopped',
      'running',
      'done',
    ]);
    expect(done).toEqual({
      spells: {
        [at(4, '07:30')]: { to: at(4, '09:00'), people: 2 },
        [at(4, '09:30')]: { to: at(4, '11:00'), people: 1 },
      },
      done: at(4, '11:00'),
    });
  });

  it('is not begun twice by a second press, and can be done without ever being started', () => {
    const on = started({}, at(4, '07:30'), 1);
    expect(started(on, at(4, '07:31'), 1)).toBe(on);
    expect(finished({}, at(4, '09:00'))).toEqual({ done: at(4, '09:00') });
  });

  it('is taken up again after a wrong done, with its hours', () => {
    const log = doneIn(at(4, '07:30'), at(4, '09:00'));
    expect(takenUp(log)).toEqual({ spells: log.spells });
    expect(stateOf(started(log, at(4, '10:00'), 1))).toBe('running');
  });

  it('takes a start entered later, and times put right', () => {
    const late = withSpell({}, null, { from: at(4, '07:00'), to: at(4, '08:00'), people: 1 });
    const right = withSpell(late, at(4, '07:00'), {
      from: at(4, '06:30'),
      to: at(4, '08:00'),
      people: 1,
    });
    expect(right).toEqual({ spells: { [at(4, '06:30')]: { to: at(4, '08:00'), people: 1 } } });
    expect(withoutSpell(right, at(4, '06:30'))).toEqual({});
    expect(noted(noted({}, 'Blade worn'), '  ')).toEqual({});
  });

  it('leaves a job as it was when all that was told of it is taken out', () => {
    const told = withLogs(job, [{ ...key, log: doneIn(at(4, '07:30'), at(4, '09:00')) }]);
    expect(logAt(told, key).done).toBe(at(4, '09:00'));
    expect(withLogs(told, [{ ...key, log: {} }])).toEqual(job);
    const whole = { zone: null, step: 'make-safe' } as const;
    expect(
      withLogs(withLogs(job, [{ ...whole, log: { note: 'x' } }]), [{ ...whole, log: {} }]),
    ).toEqual(job);
  });

  it('undone is what it was, whatever was done', () => {
    fc.assert(
      fc.property(anyDayLog(['vacuum', 'grind']), fc.nat(4), (log, what) => {
        const before = log.vacuum ?? {};
        const changes = [
          started(before, at(29, '12:00'), 1),
          stopped(before, at(29, '12:00')),
          finished(before, at(29, '12:00')),
          takenUp(before),
          noted(before, 'x'),
        ];
        const start = withLogs(job, [{ ...key, log: before }]);
        const after = withLogs(start, [{ ...key, log: changes[what] as TaskLog }]);
        expect(withLogs(after, [{ ...key, log: logAt(start, key) }])).toEqual(start);
      }),
    );
  });
});

describe('a log that is kept', () => {
  const told = logged(job, [
    [null, 'make-safe', doneIn(at(4, '07:00'), at(4, '07:30'))],
    ['z0', 'vacuum', { ...doneIn(at(4, '07:30'), at(4, '09:00'), 2), note: 'Two bags more' }],
    ['z1', 'vacuum', started({}, at(5, '07:30'), 1)],
  ]);
  it('comes back from the file and from the link as it was', async () => {
    expect(parseJob(JSON.parse(JSON.stringify(writeJob(told))))).toEqual({ ok: true, value: told });
    const made = await shareLink(told, 'https://example.org/jobs/');
    expect(made.ok && (await readShareLink(new URL(made.link).hash))).toEqual({
      ok: true,
      value: told,
    });
    expect(beganOn(told)).toBe('2026-05-04');
  });

  it.each([
    '2026-02-30T07:00:00+01:00',
    '2026-05-04T24:00:00+02:00',
    '2026-05-04T07:30:00Z',
    '2026-05-04 07:30',
    '2026-05-04T07:30:00+15:00',
    '__proto__',
  ])('knows that %s is no time it keeps', (text) => expect(isMoment(text)).toBe(false));

  it('with nonsense in it is refused with the place and what was expected', () => {
    const file = (log: object) => {
      const read = parseJob({
        format: 'down-to-sound.job',
        version: 2,
        site: {},
        zones: [{ id: 'a', log }],
      });
      return read.ok ? '' : problemSentence(read.problem);
    };
    expect(file({ vacuum: { done: 'Monday' } })).toMatch(
      /zones\[0\]\.log\.vacuum\.done.*2026-05-04T07:30:00\+02:00/,
    );
    expect(file({ vacuum: { done: '2026-02-30T07:00:00+01:00' } })).toMatch(/vacuum\.done/);
    expect(file({ vacuum: { spells: { noon: { people: 1 } } } })).toMatch(
      /zones\[0\]\.log\.vacuum\.spells.*2026-05-04T07:30/,
    );
    expect(file({ vacuum: { spells: { '2026-05-04T07:30:00+02:00': { people: 0 } } } })).toMatch(
      /zones\[0\]\.log\.vacuum\.spells.*people.*whole number/,
    );
    // A record would pass over this key in silence; a file is read strictly.
    expect(
      file({ vacuum: { spells: JSON.parse('{"__proto__": {"people": 1}}') as object } }),
    ).toMatch(/zones\[0\]\.log\.vacuum\.spells/);
    expect(file({ vacuum: { spells: [] } })).toMatch(/zones\[0\]\.log\.vacuum\.spells/);
    expect(file({ sweep: {} })).toMatch(/zones\[0\]\.log/);
    expect(file({ vacuum: { hours: 3 } })).toMatch(/log\.vacuum/);
    // What cannot have been so is no nonsense of the file: it is kept, and told at its step.
    expect(
      file({
        vacuum: {
          spells: { '2026-05-04T07:30:00+02:00': { to: '2026-05-04T07:00:00+02:00', people: 1 } },
        },
      }),
    ).toBe('');
  });

  it('made in the yard goes into the desk’s job go by go, and nothing of either is lost', () => {
    const desk = logged(job, [['z0', 'vacuum', started({}, at(4, '07:30'), 1)]]);
    const yard = logged(job, [
      [
        'z0',
        'vacuum',
        {
          spells: {
            [at(4, '07:30')]: { to: at(4, '09:00'), people: 1 },
            [at(4, '10:00')]: { to: at(4, '11:00'), people: 2 },
          },
          done: at(4, '11:00'),
        },
      ],
      [null, 'make-safe', doneIn(at(4, '07:00'), at(4, '07:20'))],
    ]);
    const read = mergeJobs(desk, yard);
    expect(read.ok && read.value.differing).toEqual([]);
    expect(read.ok && read.value.job).toEqual(yard);
    expect(mergeJobs(yard, desk)).toMatchObject({ ok: true, value: { job: yard, taken: [] } });
    const two = ['07:00', '13:00'].map((from) =>
      logged(job, [[null, 'make-safe', started({}, at(4, from), 1)]]),
    );
    const all = mergeJobs(...(two as [Job, Job]));
    expect(all.ok && all.value.differing).toEqual([]);
    expect(all.ok && Object.keys(all.value.job.log?.['make-safe']?.spells ?? {})).toHaveLength(2);
    const other = logged(job, [['z0', 'vacuum', doneIn(at(4, '07:30'), at(4, '08:00'))]]);
    const both = mergeJobs(other, yard);
    expect(both.ok && both.value.differing.map(({ place }) => place.slice(3))).toEqual([
      ['vacuum', 'spells', at(4, '07:30'), 'to'],
      ['vacuum', 'done'],
    ]);
  });
});
