import { describe, expect, it } from 'vitest';
import { joined, layDays, openTooLong, spanOf, workedOn } from '$lib/plan/days';
import type { Task } from '$lib/plan/tasks';
import type { ToolId } from '$shared/tools';
import { placed, task, tool, same } from '../helpers/laid-tasks';

const laidOf = (tasks: readonly Task[], calendar: object = {}, own?: object) =>
  layDays(tasks, { crew: 1, hoursPerDay: 8, ...calendar }, own);

describe('the days of a job', () => {
  const wait = { after: 'saw-cut', hours: same(24), figure: 'dry.before-blasting' };
  const tasks = [
    task('saw-cut', 'a', 2, tool('walk-behind-saw')),
    task('break-out', 'a', [2, 4, 20], tool('chipping-hammer', 'hammer.large-patch')),
    task('blast-clean', 'a', 1, { ...tool('blast-nozzle'), wait }),
    task('last-clean', 'a', 1),
    task('cover', 'a', null, { without: 'not-counted' }),
    task('cure', 'a', null, { lasting: { ...same(168), figure: 'traffic.cars' } }),
    task('edge-work', 'b', null, { without: 'missing' }),
  ];
  const schedule = laidOf(tasks);
  it('tell what is done on each, what dries, and how many work', () =>
    expect(schedule.days).toEqual([
      {
        number: 1,
        laid: [
          { step: 'saw-cut', from: 0, to: 2 },
          { step: 'break-out', from: 2, to: 6 },
        ],
        waiting: [{ before: 'blast-clean', hours: 24 }],
        people: 1,
      },
      {
        number: 2,
        laid: [
          { step: 'blast-clean', from: 2, to: 3 },
          { step: 'last-clean', from: 3, to: 4 },
        ],
        waiting: [],
        people: 1,
      },
    ]));
  it('are counted at each end, with what the neighbours hear and what is hired', () => {
    expect(schedule).toMatchObject({
      ...{ count: [2, 3], typicalCount: 2, calendarDays: 2, left: null, crew: 1, hoursPerDay: 8 },
      covering: { a: { last: 28, cover: 28 } },
      unknown: ['edge-work'],
    });
    // Saw and hammer on day 1, grit on day 2; compressor with the nozzle, a vacuum with the saw.
    expect(schedule.tally.typical).toEqual({ worked: 2, loud: 2, dusty: 2, hired: 5 });
    expect(schedule.tally.low).toEqual({ worked: 2, loud: 2, dusty: 2, hired: 5 });
    expect(schedule.tally.high).toEqual({ worked: 3, loud: 3, dusty: 3, hired: 7 });
    expect(spanOf(schedule.tally, 'hired')).toEqual([5, 7]);
    const odd = { low: { worked: 3 }, typical: { worked: 2 }, high: { worked: 1 } } as never;
    expect(spanOf(odd, 'worked')).toEqual([1, 3]);
  });
  it('are none where nothing has hours', () => {
    const none = laidOf([task('cover', 'a', null, { without: 'not-counted' })]);
    expect(none).toMatchObject({ days: [], count: [0, 0], calendarDays: 0, unknown: [], hire: [] });
  });
  it('are as long and as many hands as the figures say, where the reader has not', () => {
    // Figures crew.size and crew.day: 2 people, 8 hours.
    expect(layDays([], {})).toMatchObject({ crew: 2, hoursPerDay: 8 });
    expect(layDays([], {}, { 'crew.size': 4, 'crew.day': 6 })).toMatchObject({
      ...{ crew: 4, hoursPerDay: 6 },
    });
    const shared = task('vacuum', 'a', 4, { shared: true });
    expect(laidOf([shared], { crew: 0 }).placed[0]?.people).toEqual([0]);
    expect(laidOf([shared], { crew: 1.6 }).placed[0]?.people).toEqual([0, 1]);
  });
  it('take a step that goes on in the next zone for one, and two at a time apart', () => {
    const zones = [task('vacuum', 'a', 2), task('vacuum', 'b', 3), task('degrease', 'c', 1)];
    const [one] = laidOf(zones).days;
    expect(one?.laid.filter(({ step }) => step === 'vacuum')).toHaveLength(1);
    expect(
      joined([
        { step: 'vacuum', from: 4, to: 5 },
        { step: 'vacuum', from: 0, to: 2 },
        { step: 'degrease', from: 2, to: 4 },
        { step: 'vacuum', from: 1, to: 1.5 },
        { step: 'vacuum', from: 5 + 1e-7, to: 6 },
        { step: 'vacuum', from: 6.1, to: 7 },
      ]),
    ).toEqual([
      { step: 'vacuum', from: 0, to: 2 },
      { step: 'degrease', from: 2, to: 4 },
      { step: 'vacuum', from: 4, to: 6 },
      { step: 'vacuum', from: 6.1, to: 7 },
    ]);
  });
  it('come in order, and the days left have work of some length after what lies behind', () => {
    const at = (day: number, from: number, to: number) =>
      placed(task('vacuum', 'a', 1), day, from, to);
    expect(workedOn([at(3, 48, 49), at(1, 0, 1), at(11, 240, 241), at(3, 50, 51)])).toEqual([
      1, 3, 11,
    ]);
    const one = task('vacuum', 'a', 1);
    const behind = {
      people: [],
      stretches: [{ day: 4, from: 80, to: 80 }],
      done: 80,
      running: false,
    };
    const past = { told: new Map([[one, { ...behind, left: same(0) }]]), from: 80 };
    const left = layDays(
      [one, task('degrease', 'b', 1)],
      { crew: 1, hoursPerDay: 8 },
      undefined,
      () => past as never,
    ).left;
    // Hour 80 is the end of work on day 4: the rest is laid on day 5.
    expect(left).toEqual({ count: [1, 1], typical: 1, first: 5 });
  });
  it('rest on days off, which count as days of the calendar', () => {
    const off = (day: number) => day === 2;
    const rest = laidOf([task('break-out', 'a', 12)], { off });
    expect(workedOn(rest.placed)).toEqual([1, 3]);
    expect(rest).toMatchObject({ calendarDays: 3, typicalCount: 2, count: [2, 2] });
    expect(rest.days.map(({ laid, people }) => [laid.length, people])).toEqual([
      [1, 1],
      [0, 0],
      [1, 1],
    ]);
  });
  it('count what is loud or dusty by its tool: no quiet hands, no vacuum for dust', () => {
    const tally = (of: ToolId, own?: object) =>
      laidOf([task('vacuum', 'a', 1, tool(of))], {}, own).tally.typical;
    expect(tally('hand-tools')).toEqual({ worked: 1, loud: 0, dusty: 0, hired: 0 });
    // Of a vacuum nobody has published how loud it is.
    expect(tally('vacuum')).toEqual({ worked: 1, loud: 1, dusty: 0, hired: 1 });
    expect(tally('hand-grinder')).toEqual({ worked: 1, loud: 1, dusty: 1, hired: 1 });
    expect(tally('hand-grinder', { 'noise.hand-grinder': 84 }).loud).toBe(0);
    expect(tally('hand-grinder', { 'noise.hand-grinder': 85 }).loud).toBe(1);
  });
  it('leave a cleaned zone open for 24 hours at the most', () => {
    const open = (hours: number) => openTooLong({ a: { last: 8, cover: 8 + hours } });
    expect([open(24), open(24.5)]).toEqual([[], ['a']]);
    expect(openTooLong({ a: { last: 8, cover: 20 } }, { 'open.limit': 10 })).toEqual(['a']);
    expect(laidOf([task('last-clean', 'a', 1)]).covering).toEqual({ a: { last: 1, cover: null } });
  });
  it('that are left are those with work after what lies behind', () => {
    const past = { told: new Map(), from: 24 };
    const left = (from: number, of = tasks) =>
      layDays(of, { crew: 1, hoursPerDay: 8 }, undefined, () => ({ ...past, from }) as never).left;
    expect(left(24)).toEqual({ count: [2, 3], typical: 2, first: 2 });
    expect(left(30, [])).toEqual({ count: [0, 0], typical: 0, first: null });
  });
});
