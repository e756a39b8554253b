import { describe, expect, it } from 'vitest';
import { dayRows } from '$lib/plan/day-rows';
import { hireOf } from '$lib/plan/hire';
import { type Placed } from '$lib/plan/schedule';
import { zonesByDay } from '$lib/plan/where';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { task, tool, same, placed } from '../helpers/laid-tasks';

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
  const none = {
    off: false,
    work: [],
    lanes: [],
    waits: [],
    open: [],
    bring: [],
    untimed: [],
    waiting: [],
  };
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
    expect(apart?.work).toEqual([
      piece('vacuum', 0, 2),
      piece('saw-cut', 2, 4),
      piece('vacuum', 4, 5),
    ]);
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
    const open = rows([], 3, { a: { last: 6, cover: 26 }, b: { last: 3, cover: null } });
    expect(open.map((row) => row.open)).toEqual([[{ from: 6, to: 24 }], [{ from: 0, to: 2 }], []]);
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
    expect(
      rows([...two, begun(free, 26)], 2, {}, [() => false, waits] as never)[1]?.waiting,
    ).toEqual([]);
    expect(rows(two, 2)[1]?.waiting).toEqual([]);
  });
  it('name work that must wait on its own day, whatever goes ahead on another', () => {
    const sawB = task('saw-cut', 'b', 2, tool('walk-behind-saw'));
    const waiting = (...of: readonly Placed[]) =>
      rows(of, 2, {}, [() => false, ({ zone }: Task) => zone === 'b'] as never).map(
        (row) => row.waiting,
      );
    expect(waiting(placed(saw, 1, 0, 2), placed(sawB, 2, 24, 26))).toEqual([[], ['saw-cut']]);
    expect(waiting(placed(sawB, 2, 24, 26), placed(saw, 2, 26, 28))).toEqual([[], []]);
    // A go just begun has no hours yet, and is in no row.
    expect(waiting(placed(sawB, 2, 24, 24))).toEqual([[]]);
  });
  it('wait in a zone for what was wetted there', () => {
    const sawB = task('saw-cut', 'b', 2, tool('walk-behind-saw'));
    const blastB = task('blast-clean', 'b', 1, { ...tool('blast-nozzle'), wait });
    const before = [placed(saw, 1, 0, 2), placed(task('vacuum', 'b', 1), 1, 2, 3)];
    const [row] = rows([...before, placed(sawB, 1, 4, 6), placed(blastB, 2, 30, 31)], 1);
    expect(row?.waits).toEqual([piece('blast-clean', 6, 24)]);
  });
  it('have work past midnight on the day on which it was begun', () => {
    const waits = ({ zone }: Task) => zone === 'b';
    const late = { ...placed(task('saw-cut', 'b', 6), 1, 20, 26), from: 20 };
    const found = rows([late], 2, {}, [() => false, waits] as never);
    expect(found.map(({ work }) => work)).toEqual([[piece('saw-cut', 20, 24)], []]);
    expect(found.map(({ waiting }) => waiting)).toEqual([['saw-cut'], []]);
  });
  it('wait for nothing that is not in the plan', () =>
    expect(rows([placed(blast, 1, 0, 1)], 1)[0]?.waits).toEqual([]));
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
