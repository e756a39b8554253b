import { describe, expect, it } from 'vitest';
import { dayRows } from '$lib/plan/day-rows';
import { layDays, openTooLong, spanOf, workedOn } from '$lib/plan/days';
import { hireOf } from '$lib/plan/hire';
import { layTasks, type Placed } from '$lib/plan/schedule';
import { zonesByDay } from '$lib/plan/where';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';

// Laid by hand: a day of 8 hours, one or two people. Day n begins at 24 (n - 1).
const same = (value: number) => ({ low: value, typical: value, high: value });
const task = (
  step: StepId,
  zone: string | null,
  hours: number | readonly [number, number, number] | null,
  more: object = {},
): Task => {
  const [low, typical, high] =
    typeof hours === 'number' ? [hours, hours, hours] : (hours ?? [0, 0, 0]);
  const at = { low, typical, high };
  return {
    ...{ step, zone, zones: zone === null ? ['a', 'b'] : [zone], tool: { tool: 'hand-tools' } },
    ...{ amount: null, labour: null, shared: false, leaves: null },
    hours: hours === null ? null : { running: at, atTask: at },
    ...more,
  } as Task;
};
const tool = (id: ToolId, kg?: string) => ({ tool: { tool: id, ...(kg && { class: kg }) } });
const clock = { hoursPerDay: 8, off: () => false };
const lay = (tasks: readonly Task[], people = 1, end: 'low' | 'typical' | 'high' = 'typical') =>
  layTasks(tasks, people, clock, end).map(({ task: { step, zone }, people: who, from, to }) => [
    ...[`${step} ${zone ?? 'job'}`, who, from, to],
  ]);

describe('a schedule', () => {
  it('goes on the next morning where the day ends, and lays each end of a range', () => {
    const tasks = [task('break-out', 'a', [3, 6, 10]), task('vacuum', 'a', [1, 4, 5])];
    expect(lay(tasks)).toEqual([
      ['break-out a', [0], 0, 6],
      ['vacuum a', [0], 6, 26],
    ]);
    expect(lay(tasks, 1, 'low')).toEqual([
      ['break-out a', [0], 0, 3],
      ['vacuum a', [0], 3, 4],
    ]);
    expect(lay(tasks, 1, 'high').at(-1)).toEqual(['vacuum a', [0], 26, 31]);
    expect(layTasks(tasks, 1, clock, 'typical')[1]?.stretches).toEqual([
      { day: 1, from: 6, to: 8 },
      { day: 2, from: 24, to: 26 },
    ]);
  });
  it('begins first what holds up the longest way', () => {
    expect(
      lay([task('scarify', 'a', 2), task('scarify', 'b', 1), task('grind', 'b', 4)], 1),
    ).toEqual([
      ['scarify a', [0], 5, 7],
      ['scarify b', [0], 0, 1],
      ['grind b', [0], 1, 5],
    ]);
  });
  it('runs one machine in one place, and hand work side by side', () => {
    const two = (more: object) => [task('scarify', 'a', 3, more), task('scarify', 'b', 2, more)];
    expect(lay(two(tool('scarifier')), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [0], 3, 5],
    ]);
    expect(lay(two(tool('hand-tools')), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [1], 0, 2],
    ]);
    // Two hammers of one kind run at once: hand-held tools are shared by whoever is free.
    expect(lay(two({ ...tool('chipping-hammer'), shared: true }), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [1], 0, 2],
    ]);
  });
  it('shares hand work among whoever is free, in shares of a quarter of an hour at the least', () => {
    expect(lay([task('vacuum', 'a', 6, { shared: true })], 3)).toEqual([['vacuum a', [0, 1, 2], 0, 2]]);
    expect(lay([task('vacuum', 'a', 0.5, { shared: true })], 3)).toEqual([
      ['vacuum a', [0, 1], 0, 0.25],
    ]);
    expect(lay([task('vacuum', 'a', 0.1, { shared: true })], 3)).toEqual([['vacuum a', [0], 0, 0.1]]);
  });
  it('vacuums nowhere before the dust of all zones is made, nor before all is safe', () => {
    const tasks = [
      task('make-safe', null, 1),
      task('break-out', 'a', 2),
      task('break-out', 'b', 5),
      task('vacuum', 'a', 1),
    ];
    expect(lay(tasks, 2)).toEqual([
      ['make-safe job', [0], 0, 1],
      ['break-out a', [1], 1, 3],
      ['break-out b', [0], 1, 6],
      ['vacuum a', [0], 6, 7],
    ]);
  });
  it('waits for what dries through nights, and lets go on by itself what cures', () => {
    const wait = { after: 'saw-cut', hours: same(24), figure: 'dry.before-blasting' };
    const tasks = [
      task('saw-cut', 'a', 2),
      task('blast-clean', 'a', 1, { wait }),
      task('cure', 'a', null, { lasting: { ...same(168), figure: 'traffic.cars' } }),
    ];
    expect(lay(tasks)).toEqual([
      ['saw-cut a', [0], 0, 2],
      ['blast-clean a', [0], 26, 27],
      ['cure a', [], 27, 195],
    ]);
    expect(layTasks(tasks, 1, clock, 'typical').map(({ dries }) => dries)).toEqual([
      ...[undefined, undefined, 195],
    ]);
    // It is counted from the step it waits for, not from whatever came last.
    const later = [tasks[0], task('break-out', 'a', 4), tasks[1]] as Task[];
    expect(lay(later).at(-1)).toEqual(['blast-clean a', [0], 26, 27]);
    expect(lay([task('break-out', 'a', 2), tasks[1] as Task]).at(-1)).toEqual([
      ...['blast-clean a', [0], 2, 3],
    ]);
  });
  it('cleans last in one go: the next morning where the day is too short, unless no day is long enough', () => {
    const tasks = (hours: number) => [task('break-out', 'a', 7), task('last-clean', 'a', hours)];
    expect(lay(tasks(2)).at(-1)).toEqual(['last-clean a', [0], 24, 26]);
    expect(lay(tasks(1)).at(-1)).toEqual(['last-clean a', [0], 7, 8]);
    expect(lay(tasks(8)).at(-1)).toEqual(['last-clean a', [0], 24, 32]);
    expect(lay(tasks(9)).at(-1)).toEqual(['last-clean a', [0], 7, 32]);
  });
  it('lays from what lies behind on, first what somebody is at', () => {
    const tasks = [task('scarify', 'a', 5), task('scarify', 'b', 2), task('grind', 'a', 3)];
    const behind = { people: [1], stretches: [{ day: 1, from: 0, to: 1 }], done: null };
    const told = new Map([[tasks[1], { ...behind, running: true, left: same(1.5) }]]);
    const past = { told, from: 4 } as never;
    const placed = layTasks(tasks, 1, clock, 'typical', undefined, past);
    expect(placed.map(({ people, from, to }) => [people, from, to])).toEqual([
      [[0], 5.5, 26.5],
      [[1, 0], 0, 5.5],
      [[0], 26.5, 29.5],
    ]);
    expect(placed[1]?.stretches).toEqual([
      { day: 1, from: 0, to: 1 },
      { day: 1, from: 4, to: 5.5 },
    ]);
    const done = new Map([[tasks[0], { ...behind, done: 3, running: false, left: same(0) }]]);
    const rest = layTasks(tasks, 1, clock, 'typical', undefined, { told: done, from: 4 } as never);
    expect(rest.map(({ people, from, to }) => [people, from, to])).toEqual([
      [[1], 0, 3],
      [[0], 7, 25],
      [[0], 4, 7],
    ]);
  });
});

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

const placed = (of: Task, day: number, from: number, to: number, people: number[] = [0]): Placed => ({
  ...{ task: of, people, from, to },
  stretches: [{ day, from, to }],
});

describe('what is hired', () => {
  it('is each machine with what stands beside it, from its first day to its last', () => {
    const nozzle = task('blast-clean', 'a', 1, tool('blast-nozzle'));
    const saw = task('saw-cut', 'a', 1, tool('walk-behind-saw'));
    const heavy = task('break-out', 'a', 1, tool('chipping-hammer', 'hammer.large-patch'));
    const light = task('free-bar', 'a', 1, tool('chipping-hammer', 'hammer.at-steel'));
    const hand = task('make-safe', 'a', 1);
    expect(
      hireOf([
        placed(nozzle, 4, 72, 73),
        placed(saw, 1, 0, 1),
        placed(heavy, 3, 48, 49),
        placed(light, 2, 24, 25),
        placed(light, 3, 50, 51),
        placed(hand, 1, 0, 1),
      ]),
    ).toEqual([
      { tool: 'blast-nozzle', from: 4, to: 4, classes: [], days: [4] },
      { tool: 'compressor', from: 4, to: 4, classes: [], days: [4] },
      { tool: 'walk-behind-saw', from: 1, to: 1, classes: [], days: [1] },
      { tool: 'vacuum', from: 1, to: 1, classes: [], days: [1] },
      {
        ...{ tool: 'chipping-hammer', from: 2, to: 3, days: [2, 3] },
        classes: ['hammer.large-patch', 'hammer.at-steel'],
      },
    ]);
  });
  it('is nothing for work that has no day', () => {
    const nozzle = task('blast-clean', 'a', null, tool('blast-nozzle'));
    expect(hireOf([{ task: nozzle, people: [], from: 0, to: 0, stretches: [] }])).toEqual([]);
  });
});

describe('the rows of a chart', () => {
  const saw = task('saw-cut', 'a', 2, tool('walk-behind-saw'));
  const wait = { after: 'saw-cut', hours: same(24), figure: 'dry.before-blasting' };
  const blast = task('blast-clean', 'a', 1, { ...tool('blast-nozzle'), wait });
  const cover = task('cover', 'b', null, { without: 'not-counted' });
  const cure = task('cure', 'a', null, { lasting: { ...same(40), figure: 'traffic.cars' } });
  const rows = (of: readonly Placed[], days: number, covering: object = {}, more: object[] = []) =>
    dayRows(
      {
        placed: of,
        days: Array.from({ length: days }, (_, at) => ({ number: at + 1, people: 1 })),
        covering,
      } as never,
      ...(more as never as []),
    );
  const none = { off: false, work: [], lanes: [], waits: [], open: [], bring: [], untimed: [], waiting: [] };
  const piece = (step: StepId, from: number, to: number) => ({ step, from, to });
  it('have a lane a person and a lane a machine, what dries, and what to bring', () => {
    expect(rows([placed(saw, 1, 1, 3), placed(blast, 2, 27, 28, [1])], 2)).toEqual([
      {
        ...{ ...none, from: 1, to: 1, people: 1, bring: ['walk-behind-saw', 'vacuum'] },
        work: [piece('saw-cut', 1, 3)],
        lanes: [
          { of: 'person', person: 1, pieces: [piece('saw-cut', 1, 3)] },
          { of: 'machine', tool: 'walk-behind-saw', pieces: [piece('saw-cut', 1, 3)] },
        ],
        waits: [piece('blast-clean', 3, 24)],
      },
      {
        ...{ ...none, from: 2, to: 2, people: 1, bring: ['blast-nozzle', 'compressor'] },
        work: [piece('blast-clean', 3, 4)],
        lanes: [
          { of: 'person', person: 2, pieces: [piece('blast-clean', 3, 4)] },
          { of: 'machine', tool: 'blast-nozzle', pieces: [piece('blast-clean', 3, 4)] },
        ],
        waits: [piece('blast-clean', 0, 3)],
      },
    ]);
  });
  it('have people in order, hand tools in no lane of a machine, and pieces that touch as one', () => {
    const hand = task('vacuum', 'a', 1);
    const [row] = rows([placed(hand, 1, 0, 2, [1, 0]), placed(hand, 1, 2, 3, [0])], 1);
    expect(row?.lanes).toEqual([
      { of: 'person', person: 1, pieces: [piece('vacuum', 0, 3)] },
      { of: 'person', person: 2, pieces: [piece('vacuum', 0, 2)] },
    ]);
    expect(row?.work).toEqual([piece('vacuum', 0, 3)]);
    const [apart] = rows([placed(hand, 1, 4, 5), placed(hand, 1, 0, 2), placed(saw, 1, 2, 4)], 1);
    expect(apart?.work).toEqual([piece('vacuum', 0, 2), piece('saw-cut', 2, 4), piece('vacuum', 4, 5)]);
    const [inside] = rows([placed(hand, 1, 0, 5, [0]), placed(hand, 1, 1, 2, [1])], 1);
    expect(inside?.work).toEqual([piece('vacuum', 0, 5)]);
  });
  it('take days alike together, and mark days off', () => {
    const cured = { task: cure, people: [], from: 0, to: 120, stretches: [] };
    const found = rows([cured], 5, {}, [(day: number) => day === 4] as never);
    expect(found).toEqual([
      { ...none, from: 1, to: 3, people: 1, waits: [piece('cure', 0, 24)] },
      { ...none, from: 4, to: 4, people: 1, off: true, waits: [piece('cure', 0, 24)] },
      { ...none, from: 5, to: 5, people: 1, waits: [piece('cure', 0, 24)] },
    ]);
  });
  it('tell how long a cleaned zone lies open, through the night', () => {
    const open = rows([], 2, { a: { last: 6, cover: 26 }, b: { last: 3, cover: null } });
    expect(open.map((row) => row.open)).toEqual([[{ from: 6, to: 24 }], [{ from: 0, to: 2 }]]);
  });
  it('name what begins with hours that nobody has said, and what must wait', () => {
    const begun = (of: Task, from: number): Placed => ({
      ...{ task: of, people: [], from, to: from, stretches: [] },
    });
    const waits = ({ zone }: Task) => zone === 'b';
    const two = [begun(cover, 26), begun(cover, 27), begun(cure, 26), placed(saw, 2, 24, 25)];
    const [first, second] = rows(two, 2, {}, [() => false, waits] as never);
    expect([first?.untimed, first?.waiting]).toEqual([[], []]);
    expect([second?.untimed, second?.waiting]).toEqual([['cover'], ['cover']]);
    // Where any zone goes ahead, the step does.
    const free = { ...cover, zone: 'c' } as Task;
    expect(rows([...two, begun(free, 26)], 2, {}, [() => false, waits] as never)[1]?.waiting).toEqual([]);
    expect(rows(two, 2)[1]?.waiting).toEqual([]);
  });
});

describe('which parts are worked on', () => {
  it('days in order, each step once, nothing that goes on by itself', () => {
    const saw = task('saw-cut', 'a', 2);
    const found = zonesByDay({
      placed: [
        placed(saw, 2, 24, 25),
        placed(saw, 1, 0, 1),
        placed(saw, 1, 2, 3),
        placed(task('vacuum', 'a', 1), 1, 3, 4),
        placed(task('vacuum', 'b', 1), 1, 4, 5),
        placed(task('cure', 'b', null), 1, 4, 5, []),
        placed(task('make-safe', null, 1), 1, 0, 1),
      ],
    });
    expect([...found]).toEqual([
      [
        1,
        [
          { zone: 'a', steps: ['saw-cut', 'vacuum'] },
          { zone: 'b', steps: ['vacuum'] },
        ],
      ],
      [2, [{ zone: 'a', steps: ['saw-cut'] }]],
    ]);
  });
});
