import { describe, expect, test } from 'vitest';
import { respiratorsFor } from '$lib/safety/duties';
import { airflowFor, silicaOfDay, type SilicaOfTask } from '$lib/safety/silica';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { silicaOptions, silicaRowIds, type SilicaRowId } from '$shared/silica-table';
import type { ToolId } from '$shared/tools';

const inch = 25.4;
/** Cubic feet a minute in a cubic metre a minute. */
const cfm = (cubicMetres: number) => cubicMetres / 0.3048 ** 3;

const day = (...tasks: ShiftTask[]) => silicaOfDay(tasks.map(settleTask));
const rowOf = (task: SilicaOfTask | undefined) => {
  if (task?.kind !== 'row') throw new Error(`expected a row, got ${task?.kind ?? 'nothing'}`);
  return task;
};

describe('29 CFR 1926.1153 Table 1', () => {
  // Respirator factors up to 4 h / over 4 h, outdoors then indoors or enclosed; 0 is none, null is not allowed.
  // Rows (ii) and (iv) read in California's copy of the table; all rows as reported in two secondary copies.
  const printed: Readonly<Record<SilicaRowId, readonly unknown[]>> = {
    ii: [
      [
        [0, 10],
        [10, 10],
      ],
    ],
    iv: [
      [
        [0, 0],
        [10, 10],
      ],
    ],
    vii: [
      [
        [0, 0],
        [0, 0],
      ],
    ],
    x: [
      [
        [0, 10],
        [10, 10],
      ],
      [
        [0, 10],
        [10, 10],
      ],
    ],
    xi: [
      [
        [10, 25],
        [10, 25],
      ],
    ],
    // Printed the other way round: water, then the shroud.
    xii: [
      [
        [0, 0],
        [0, 10],
      ],
      [[0, 0], null],
    ],
    xiii: [
      [
        [0, 0],
        [0, 0],
      ],
      [
        [0, 0],
        [0, 0],
      ],
    ],
    xiv: [
      [
        [0, 0],
        [0, 0],
      ],
    ],
  };
  test.each(silicaRowIds)('row (%s)', (row) => {
    expect(silicaOptions(row).map(({ outdoors, enclosed }) => [outdoors, enclosed])).toEqual(
      printed[row],
    );
  });

  // Which tool stands in which row.
  test.each<[ToolId, ShiftTask['step'], SilicaRowId]>([
    ['hand-saw', 'saw-cut', 'ii'],
    ['walk-behind-saw', 'saw-cut', 'iv'],
    ['jackhammer', 'break-out', 'x'],
    ['chipping-hammer', 'free-bar', 'x'],
    ['hand-grinder', 'edge-work', 'xii'],
    ['floor-grinder', 'grind', 'xiii'],
  ])('%s in %s falls under row (%s)', (tool, step, row) => {
    const read = rowOf(day({ step, tool, setting: 'open', hours: [1, 1] }).tasks[0]);
    expect(read.rows).toEqual([row]);
    expect(read.open).toBe(false);
  });

  test.each([
    ['shotblast', 'indoors'],
    ['abrasive-blast', 'open'],
    ['blast-clean', 'open'],
  ] as const)('%s is not in the table: exposure must be assessed', (step, setting) => {
    const result = day({ step, setting, hours: [1, 1] });
    expect(result.tasks[0]).toMatchObject({ kind: 'not-in-table', open: false });
    expect(result.protection).toBeNull();
  });

  test('25 cfm for each inch: a 5 in wheel 125 cfm, a 7 in wheel 175 cfm', () => {
    expect(cfm(airflowFor(5 * inch))).toBeCloseTo(125, 9);
    expect(cfm(airflowFor(7 * inch))).toBeCloseTo(175, 9);
    const read = rowOf(
      day({
        step: 'edge-work',
        tool: 'hand-grinder',
        setting: 'indoors',
        hours: [1, 1],
        wheel: 5 * inch,
      }).tasks[0],
    );
    expect(read.ways).toHaveLength(1);
    expect(read.ways[0]?.airflow).toMatchObject({ by: 'wheel', wheel: 127 });
    expect(cfm((read.ways[0]?.airflow as { flow: number }).flow)).toBeCloseTo(125, 9);
  });

  test('row (xii): water is a way outdoors only', () => {
    const ways = (setting: ShiftTask['setting']) =>
      rowOf(
        day({ step: 'edge-work', tool: 'hand-grinder', setting, hours: [1, 1] }).tasks[0],
      ).ways.map(({ controls }) => controls[0]);
    // The vacuum first: with it the advice sends a grinder out.
    expect(ways('open')).toEqual(['shroud-and-collector', 'water-to-wheel']);
    expect(ways('indoors')).toEqual(['shroud-and-collector']);
    expect(ways('sheltered')).toEqual(['shroud-and-collector']);
  });

  test('row (xiii) indoors: loose dust is vacuumed between passes where no water is used', () => {
    const { ways } = rowOf(day({ step: 'grind', setting: 'indoors', hours: [1, 1] }).tasks[0]);
    expect(ways.map(({ controls }) => controls.includes('vacuum-between-passes'))).toEqual([
      true,
      false,
    ]);
  });

  test('(c)(2)(i): indoors or enclosed the room needs exhaust, outdoors not', () => {
    const has = (setting: ShiftTask['setting']) =>
      rowOf(day({ step: 'break-out', setting, hours: [1, 1] }).tasks[0]).ways.every(
        ({ controls }) => controls.includes('exhaust-the-room'),
      );
    expect(has('indoors')).toBe(true);
    expect(has('open')).toBe(false);
  });
});

describe('(c)(3): several tasks of the table in one shift', () => {
  const breakOut = (hours: number): ShiftTask => ({
    step: 'break-out',
    setting: 'open',
    hours: [hours, hours],
  });
  const grind = (hours: number): ShiftTask => ({
    step: 'grind',
    setting: 'open',
    hours: [hours, hours],
  });
  test('a jackhammer outdoors: none up to 4 h, APF 10 over', () => {
    expect(day(breakOut(4)).protection).toBe(0);
    expect(day(breakOut(4.25)).protection).toBe(10);
  });
  test('3 h of one and 2 h of another: each takes the column over 4 h', () => {
    const result = day(breakOut(3), grind(2));
    expect(result.column).toBe('over-4');
    expect(result.hours).toMatchObject({ low: 5, high: 5 });
    expect(rowOf(result.tasks[0]).ways.map((way) => way.protection)).toEqual([10, 10]);
  });
  test('tasks outside the table do not add', () => {
    const result = day(breakOut(3), {
      step: 'final-wash',
      setting: 'open',
      hours: [3, 3],
    });
    expect(result.column).toBe('up-to-4');
    expect(result.tasks[1]).toMatchObject({ kind: 'not-dusty' });
  });
  test('hours that may or may not pass 4: the stricter column, and it says so', () => {
    const result = day({ step: 'break-out', setting: 'open', hours: [3, 5] });
    expect(result).toMatchObject({ column: 'over-4', columnDependsOnHours: true, protection: 10 });
  });
});

describe('open readings take the stricter row and say so (the table does not name the tool)', () => {
  test('scarifier: (xiii) or (x)', () => {
    const read = rowOf(day({ step: 'scarify', setting: 'indoors', hours: [1, 1] }).tasks[0]);
    expect(read).toMatchObject({ rows: ['xiii', 'x'], open: true, basis: 'practice' });
    expect(read.ways.map((way) => way.pair)).toEqual([
      [10, 10],
      [10, 10],
    ]);
    const outdoors = rowOf(day({ step: 'scarify', setting: 'open', hours: [1, 1] }).tasks[0]);
    expect(outdoors.ways.map((way) => way.pair)).toEqual([
      [0, 10],
      [0, 10],
    ]);
  });
  test('a wire wheel on a bar: (xii) or not in the table', () => {
    const result = day({ step: 'clean-bar', setting: 'open', hours: [1, 1] });
    expect(result.tasks[0]).toMatchObject({ kind: 'not-in-table', rows: ['xii'], open: true });
  });
  test('a sheltered place is read as enclosed, and it says so', () => {
    const read = rowOf(day({ step: 'break-out', setting: 'sheltered', hours: [1, 1] }).tasks[0]);
    expect(read).toMatchObject({ place: 'enclosed', shelteredAsEnclosed: true });
  });
});

test('29 CFR 1910.134 Table 1: half mask 10, loose hood 25, full face 50', () => {
  expect(respiratorsFor(0)).toEqual([]);
  expect(respiratorsFor(10).map(({ id }) => id)).toEqual(['half-mask', 'loose-hood', 'full-face']);
  expect(respiratorsFor(25).map(({ id }) => id)).toEqual(['loose-hood', 'full-face']);
});
