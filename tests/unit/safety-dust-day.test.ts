import { describe, expect, it } from 'vitest';
import { dustParts } from '$lib/safety/dust-strip';
import { maskOfDay, maskOfTask } from '$lib/safety/masks';
import { silicaOfDay, type DustHours, type SilicaOfTask } from '$lib/safety/silica';
import { safetyOf } from '$lib/safety/safety-of';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { silicaOptions } from '$shared/silica-table';

const near = (value: number) => expect.closeTo(value, 9) as number;
const task = (change: Partial<ShiftTask> = {}) =>
  settleTask({ step: 'break-out', setting: 'open', hours: [1, 2], ...change });

// 29 CFR 1926.1153 Table 1, rows (ii), (x), (xii) and (xiii) as the published tests have them.
describe('the dust of a day', () => {
  const one = (change: Partial<ShiftTask>, hours: readonly [number, number] = [1, 1]) =>
    silicaOfDay([task({ ...change, hours })]);

  it('has every way its row allows there, with the respirator of the strictest reading', () => {
    const route = { step: 'route-crack', tool: 'hand-grinder' } as const;
    const [shroud, water] = silicaOptions('xii');
    expect(one(route).tasks).toEqual([
      {
        ...{ kind: 'row', tool: 'hand-grinder', place: 'outdoors', shelteredAsEnclosed: false },
        ...{ rows: ['xii', 'ii'], open: true, basis: 'practice' },
        ways: [
          {
            ...{ row: 'xii', controls: shroud?.controls, protection: 0, pair: [0, 10] },
            airflow: { by: 'wheel', perMm: near(0.027870912) },
          },
          { row: 'xii', controls: water?.controls, protection: 0, pair: [0, 10] },
        ],
      },
    ]);
    // Indoors water is not allowed at a grinder; the saw's row asks for a mask at once.
    const inside = one({ ...route, setting: 'indoors', wheel: 100 }).tasks[0];
    expect(inside).toMatchObject({ place: 'enclosed', shelteredAsEnclosed: false });
    expect(inside?.kind === 'row' && inside.ways).toEqual([
      {
        row: 'xii',
        controls: [...(shroud?.controls ?? []), 'exhaust-the-room'],
        ...{ protection: 10, pair: [10, 10] },
        airflow: { by: 'wheel', perMm: near(0.027870912), wheel: 100, flow: near(2.7870912) },
      },
    ]);
    const floor = one({ step: 'grind', tool: 'floor-grinder', setting: 'sheltered' }).tasks[0];
    expect(floor).toMatchObject({ place: 'enclosed', shelteredAsEnclosed: true, open: false });
    expect(
      floor?.kind === 'row' && floor.ways.map(({ controls, airflow }) => [controls, airflow]),
    ).toEqual([
      [['makers-collector', 'vacuum-between-passes', 'exhaust-the-room'], { by: 'maker' }],
      [['water-to-cutter', 'exhaust-the-room'], undefined],
    ]);
  });

  it('is judged by the hours of all its tasks, more than four together', () => {
    const hammer = (low: number, high: number, atTask?: number) =>
      task({ hours: [low, high], ...(atTask !== undefined && { atTask }) });
    const day = silicaOfDay([
      hammer(1, 2),
      hammer(1, 2),
      task({ step: 'shotblast', tool: 'shotblaster' }),
    ]);
    expect(day).toMatchObject({
      ...{
        hours: { low: 2, high: 4, open: false },
        column: 'up-to-4',
        columnDependsOnHours: false,
      },
      ...{ counted: 'at-task', protection: null },
    });
    expect(day.figures).toEqual([
      ...['silica.limit', 'silica.action-level', 'silica.long-shift', 'silica.airflow'],
    ]);
    const long = silicaOfDay([hammer(1, 2), hammer(1, 2.1)]);
    expect(long).toMatchObject({ column: 'over-4', columnDependsOnHours: true, protection: 10 });
    expect(silicaOfDay([hammer(4, 5)]).columnDependsOnHours).toBe(true);
    expect(silicaOfDay([hammer(4.1, 5)]).columnDependsOnHours).toBe(false);
    const breaks = [hammer(2, 3, 5)];
    expect(silicaOfDay(breaks).hours).toEqual({ low: 5, high: 5, open: false });
    expect(silicaOfDay(breaks, undefined, 'tool-running').hours).toEqual({
      low: 2,
      high: 3,
      open: false,
    });
    expect(silicaOfDay(breaks, undefined, 'tool-running').protection).toBe(0);
    expect(silicaOfDay([hammer(1, 2)], { 'silica.long-shift': 1.5 }).column).toBe('over-4');
    expect(silicaOfDay([]).protection).toBe(0);
  });

  it('is housekeeping where the dust of others is taken up, and no dust where there is none', () => {
    const kind = (change: Partial<ShiftTask>) => one(change).tasks[0]?.kind;
    for (const step of ['vacuum', 'last-clean'] as const) {
      expect(one({ step, tool: 'vacuum' }).tasks).toEqual([
        { kind: 'housekeeping', tool: 'vacuum' },
      ]);
      expect(kind({ step, tool: 'hand-tools' })).toBe('not-dusty');
    }
    expect(one({ step: 'sound-and-mark' }).tasks).toEqual([
      { kind: 'not-dusty', tool: 'hand-tools' },
    ]);
    expect(kind({ step: 'cover', tool: 'vacuum' })).toBe('not-dusty');
    expect(one({ step: 'shotblast', tool: 'shotblaster' }).tasks[0]).toMatchObject({
      ...{ kind: 'not-in-table', tool: 'shotblaster', rows: [], open: false },
    });
    // A wire wheel on a bar can be argued into the grinder's row; its hours are counted all the same.
    const bar = one({ step: 'clean-bar', tool: 'hand-grinder' });
    expect(bar.tasks[0]).toMatchObject({ kind: 'not-in-table', rows: ['xii'], open: true });
    expect([bar.hours.high, bar.protection]).toEqual([1, null]);
  });

  const dust = (dustHours: DustHours, ...tasks: ShiftTask[]) => {
    const result = safetyOf({ region: 'us', workers: [{ id: '1', tasks }], dustHours });
    const [worker] = result.ok ? result.safety.workers : [];
    return worker
      ? dustParts(worker).map(({ tool, counted, from, to }) => [tool, counted, from, to])
      : [];
  };
  it('lies end to end, what the hours of the table count before what they do not', () => {
    const at = (change: Partial<ShiftTask>): ShiftTask => ({
      step: 'break-out',
      setting: 'open',
      hours: [1, 2],
      ...change,
    });
    expect(
      dust(
        'at-task',
        at({ step: 'shotblast' }),
        at({}),
        at({ step: 'sound-and-mark' }),
        at({ step: 'clean-bar', tool: 'hand-grinder', atTask: 3 }),
        at({ step: 'shotblast', hours: [1, 1] }),
      ),
    ).toEqual([
      ['jackhammer', true, 0, 2],
      ['hand-grinder', true, 2, 5],
      ['shotblaster', false, 0, 2],
      ['shotblaster', false, 2, 3],
    ]);
    const breaks = at({ hours: [1, 2], atTask: 5 });
    expect(dust('tool-running', breaks)).toEqual([['jackhammer', true, 0, 2]]);
    expect(dust('at-task', breaks)).toEqual([['jackhammer', true, 0, 5]]);
  });
});

// HSE: factor 20 for scabbling or grinding; WAC 296-818-20010: a hood fed with air at the nozzle.
describe('what is breathed through', () => {
  const row = (tool: 'floor-grinder' | 'jackhammer', ...factors: number[]): SilicaOfTask => {
    const ways = factors.map((protection) => ({
      ...{ row: 'x' as const, controls: [], protection, pair: [0, 0] as const },
    }));
    return {
      ...{ kind: 'row', tool, place: 'outdoors', shelteredAsEnclosed: false, rows: ['x'] },
      ...{ open: false, ways, basis: 'published' },
    };
  };
  const unlisted = (tool: 'shotblaster' | 'blast-nozzle'): SilicaOfTask => ({
    ...{ kind: 'not-in-table', tool, rows: [], open: false, basis: 'practice' },
  });
  it('at one task is the mildest way of the table, a stricter rule of the country, or a safe beginning', () => {
    expect(maskOfTask(row('jackhammer', 25, 10), 'elsewhere')).toEqual({
      factor: 10,
      hood: false,
      by: 'table',
    });
    expect(maskOfTask(row('floor-grinder', 10), 'us')).toEqual({
      factor: 10,
      hood: false,
      by: 'table',
    });
    expect(maskOfTask(row('floor-grinder', 10), 'elsewhere')).toEqual({
      factor: 20,
      hood: false,
      by: 'country',
    });
    expect(maskOfTask(row('floor-grinder', 20), 'elsewhere').by).toBe('table');
    for (const tool of ['scabbler', 'scarifier', 'hand-grinder'] as const)
      expect(
        maskOfTask({ ...(row('jackhammer', 0) as object), tool } as SilicaOfTask, 'elsewhere').by,
      ).toBe('country');
    expect(maskOfTask(unlisted('shotblaster'), 'us')).toEqual({
      factor: 20,
      hood: false,
      by: 'begin',
    });
    expect(maskOfTask(unlisted('blast-nozzle'), 'us')).toEqual({
      factor: 20,
      hood: true,
      by: 'begin',
    });
    for (const kind of ['not-dusty', 'housekeeping'] as const)
      expect(maskOfTask({ kind, tool: 'vacuum' }, 'elsewhere')).toEqual({
        factor: 0,
        hood: false,
        by: 'none',
      });
  });
  it('on a day is the strictest, and never nothing beside another’s nozzle', () => {
    const day = (tasks: SilicaOfTask[], others: ('blast-nozzle' | 'vacuum')[] = []) =>
      maskOfDay(
        tasks,
        others.map((tool) => (tool === 'vacuum' ? { kind: 'not-dusty', tool } : unlisted(tool))),
        'us',
      );
    expect(day([])).toEqual({
      factor: 0,
      hood: false,
      by: 'none',
      besideBlast: false,
      besideDust: null,
      measure: [],
    });
    expect(day([], ['blast-nozzle'])).toMatchObject({ factor: 0, besideBlast: false });
    expect(
      day([row('jackhammer', 10), unlisted('blast-nozzle'), unlisted('blast-nozzle')]),
    ).toEqual({
      ...{
        factor: 20,
        hood: true,
        by: 'begin',
        besideBlast: false,
        besideDust: null,
        measure: ['blast-nozzle'],
      },
    });
    expect(day([row('jackhammer', 10)], ['vacuum', 'blast-nozzle'])).toEqual({
      ...{ factor: 20, hood: false, by: 'begin', besideBlast: true, besideDust: null, measure: [] },
    });
    expect(day([row('jackhammer', 25)], ['blast-nozzle'])).toMatchObject({
      factor: 25,
      by: 'table',
    });
    expect(day([row('jackhammer', 25)], ['vacuum'])).toMatchObject({
      factor: 25,
      besideBlast: false,
    });
  });
});
