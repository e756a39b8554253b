import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { daysChart } from '$lib/drawing/plan/days';
import { stripWidth } from '$lib/drawing/plan/order';
import { planJob } from '$lib/plan/plan';
import { columnName, rowLines } from '$words/plan/days';
import { formatter } from '$lib/words/format';
import { rampJob } from '../helpers/ramp-job';
import { tradeJob } from '../helpers/trade-jobs';

const chartOf = (crew: number, area: number) => {
  const plan = planJob(
    tradeJob([{ depth: 40, looseness: ['hollow'], area }, { area: 4 * area }], {}, { crew }),
  );
  const numberOf = (step: string) => plan.steps.findIndex(({ id }) => id === step) + 1;
  const drawn = daysChart(plan.dayRows, plan.schedule.hoursPerDay, {
    numberOf,
    row: ({ from }) => `Day ${String(from)}`,
    lane: (lane) => (lane.of === 'person' ? `Person ${String(lane.person)}` : lane.tool),
    waits: 'dries',
    open: 'open',
  });
  return { plan, drawn };
};

describe.each([
  ['a job of a day or two', 2, 2],
  ['a job of weeks', 1, 200],
])('%s as one picture', (_, crew, area) => {
  const { plan, drawn } = chartOf(crew, area);
  const of = (kind: string) => drawn.labels.filter((label) => label.of === kind);

  it('has every day once, in order, and everybody by name', () => {
    expect(of('day').map(({ text }) => text)).toEqual(
      plan.dayRows.map(({ from }) => `Day ${String(from)}`),
    );
    const people = new Set(
      plan.dayRows.flatMap(({ lanes }) =>
        lanes.flatMap((lane) => (lane.of === 'person' ? [`Person ${String(lane.person)}`] : [])),
      ),
    );
    const named = new Set(of('lane').map(({ text }) => text));
    for (const person of people) expect(named).toContain(person);
  });
  // A digit of 11 px type is about 6.5 wide (measured in the browser); two numbers need room between.
  it('never lets the numbers of two blocks run together', () => {
    const numbers = drawn.labels.filter((label) => label.of === 'on' || label.of === 'number');
    for (const one of numbers)
      for (const other of numbers)
        if (one !== other && one.y === other.y && one.x <= other.x) {
          const halves = ((one.text.length + other.text.length) * 6.5) / 2;
          expect(other.x - one.x, `${one.text} and ${other.text}`).toBeGreaterThanOrEqual(
            halves + 4,
          );
        }
  });
  it('stays on its sheet', () => {
    for (const { x, y } of drawn.labels) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(stripWidth);
      expect(y).toBeLessThanOrEqual(drawn.height);
    }
    for (const [, path] of drawn.marks)
      for (const [, x] of path.matchAll(/[MH](\d+(?:\.\d+)?)/g))
        expect(Number(x)).toBeLessThanOrEqual(stripWidth);
  });
  it('draws as many blocks as people and machines have pieces of work', () => {
    const pieces = (kind: 'person' | 'machine') =>
      plan.dayRows
        .flatMap(({ lanes }) => lanes)
        .filter((lane) => lane.of === kind)
        .reduce((sum, lane) => sum + lane.pieces.length, 0);
    expect(drawn.marks.filter(([ink]) => ink === 'solid')).toHaveLength(pieces('person'));
    expect(drawn.marks.filter(([ink]) => ink === 'form')).toHaveLength(pieces('machine'));
  });
});

// Common practice, no source: what begins first stands first, under one number on every page.
describe('the steps of a job with zones side by side', () => {
  const plan = planJob(rampJob());
  const numberOf = (step: string) => plan.steps.findIndex(({ id }) => id === step) + 1;
  // Heavy work before light over the whole job (cases of the trade); what it leaves open goes by begin.
  it('are numbered in the trade’s order, then by when they begin', () => {
    const [breaking, scarifying] = [numberOf('break-out'), numberOf('scarify')];
    expect(breaking).toBeGreaterThan(numberOf('sound-and-mark'));
    expect(breaking).toBeLessThan(scarifying);
  });
  it('are told of a day by their numbers, and what goes on beside what', () => {
    const [first] = plan.dayRows;
    const [line = ''] = first ? rowLines(first, plan, formatter('metric')) : [];
    const said = [...line.matchAll(/\d+/g)].map(Number);
    expect(said).toEqual(said.toSorted((one, other) => one - other));
    expect(line).toMatch(/beside it \d/);
  });
  it('wait for no step that is in other zones alone', () => {
    const scarify = plan.steps.find(({ id }) => id === 'scarify');
    expect(scarify?.zones).toEqual(['z0']);
    expect(scarify?.after.map(({ step }) => step)).toEqual(['sound-and-mark']);
  });
  it('are named below the chart where a block is too short for its number', () => {
    const drawn = daysChart(plan.dayRows, plan.schedule.hoursPerDay, {
      numberOf,
      row: ({ from }) => String(from),
      lane: () => '',
      waits: '',
      open: '',
    });
    const shown = drawn.labels.filter(({ of }) => of === 'on' || of === 'number');
    const worked = new Set(plan.dayRows.flatMap(({ work }) => work.map(({ step }) => step)));
    for (const step of worked)
      expect(
        shown.some(({ text }) => text === String(numberOf(step))) || drawn.short.includes(step),
        step,
      ).toBe(true);
    expect(drawn.short).toContain('re-sound');
    expect(drawn.short).not.toContain('scarify');
  });
});

// A letter of 11 px bold type is at most about 6.2 wide on average (measured in the browser).
describe('the heads of the days', () => {
  const job = {
    ...tradeJob([{ depth: 40, looseness: ['hollow'], area: 20 }, { area: 80 }], {}, { crew: 1 }),
    calendar: { start: '2026-11-27', weekly: ['sat', 'sun'] },
  } as Job;
  const plan = planJob(job);
  const drawn = daysChart(plan.dayRows, plan.schedule.hoursPerDay, {
    numberOf: () => 1,
    row: (row) => columnName(row, job),
    lane: () => '',
    waits: '',
    open: '',
  });
  const heads = drawn.labels.filter(({ of }) => of === 'day');

  it('tell a weekend between two days without running into either', () => {
    // The weekend is one narrow column: the case is a case.
    expect(plan.dayRows.some(({ off, from, to }) => off && to > from)).toBe(true);
    for (const one of heads)
      for (const other of heads)
        if (one !== other && one.y === other.y && one.x < other.x)
          expect(other.x - one.x, `${one.text} and ${other.text}`).toBeGreaterThanOrEqual(
            ((one.text.length + other.text.length) * 6.2) / 2,
          );
    const said = heads.map(({ text }) => text).join(' ');
    for (const word of plan.dayRows.flatMap((row) => columnName(row, job).split(' ')))
      expect(said).toContain(word);
  });
});
