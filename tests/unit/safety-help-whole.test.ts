import { describe, expect, it } from 'vitest';
import { helpOf } from '$lib/safety/help';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { settledShaking as shaking, task } from '../helpers/shift-tasks';

const near = (value: number) => expect.closeTo(value, 6) as number;
/** NIOSH: twice for each 3 dB from 85 dB(A) over 8 h. */
const loud = (hours: number, ownLevel: number, change: Partial<ShiftTask> = {}) =>
  task(hours, { ownLevel, ...change });

// What else does the work, and who: common practice, no source.
describe('the one change that helps most', () => {
  const help = (...tasks: ReturnType<typeof task>[]) => helpOf(tasks, 'niosh');
  it('is none where usual values keep under both limits, whatever comes from beside', () => {
    expect(help(shaking(0.5))).toBeNull();
    expect(helpOf([loud(4, 85)], 'niosh', undefined, { all: [], crew: 2, beside: 5 })).toBeNull();
    expect(help()).toBeNull();
  });
  it('is turns, where as many people as there can be come under', () => {
    const turns = { change: 'people', crew: 1, over: 'vibration', still: 'vibration', ears: null };
    expect(help(shaking(1))).toEqual({ ...turns, people: 2, now: near(2), then: near(1) });
    expect(help(shaking(1.75))).toEqual({ ...turns, people: 4, now: near(3.5), then: near(0.875) });
    // The same of noise; two thirds of it left are no more than the limit.
    expect(help(loud(3, 91))).toMatchObject({
      people: 2,
      over: 'noise',
      then: near(0.75),
      ears: null,
    });
  });
  it('counts who is there, and what is heard from beside', () => {
    const one = loud(8, 88);
    const around = (crew: number, beside: number, all = [one]) =>
      helpOf([one], 'niosh', undefined, { all, crew, beside });
    expect(around(1, 0.5)).toEqual({
      ...{ change: 'people', people: 4, crew: 1, now: near(2.5), over: 'noise' },
      ...{ then: near(1), still: 'noise', ears: null },
    });
    expect(around(3, 0)).toMatchObject({ people: 3, then: near(2 / 3) });
    // Three who have as much each: six people, twice the crew, at the most.
    expect(around(3, 0, [one, one, one])).toMatchObject({ people: 6, then: near(1) });
    // Turns do not help where the others' machines take nearly all: then the work itself has to go.
    expect(around(3, 0.9, [one, one, one])).toMatchObject({ change: 'method', then: near(0.9) });
  });
  it('is a quieter tool where that alone comes under', () => {
    // Needle scaler at 112 dB(A) and 12 m/s2, hand grinder usually at 97 and 6: 0.5 h of it is the limit.
    const scaler = settleTask({ step: 'edge-work', setting: 'open', hours: [0.5, 0.5] });
    expect(help(scaler)).toEqual({
      ...{ change: 'tool', step: 'edge-work', from: 'needle-scaler', to: 'hand-grinder' },
      ...{ now: near(32), over: 'noise', then: near(1), still: 'noise', ears: null },
    });
  });
  it('is a specialist’s method where nothing of the crew’s own comes under', () => {
    const hammer = settleTask({ step: 'break-out', setting: 'open', hours: [4, 4] });
    expect(help(hammer)).toMatchObject({
      ...{ change: 'method', step: 'break-out', to: 'water-jet', specialist: true },
      ...{ over: 'noise', then: 0, still: 'noise', ears: null },
    });
    // What else the day has stays, with what the ears then need: 3 dB over.
    const rest = loud(8, 88);
    expect(help(hammer, rest)).toMatchObject({
      then: near(2),
      ears: { needed: near(3), by: 'one' },
    });
  });

  it('is no tool that nobody has measured, nor one without a motor', () => {
    const people = { change: 'people', people: 4, crew: 1 };
    // A floor grinder's noise is not known, a hand saw's vibration is not; a scraper by hand is another day.
    const grind = loud(8, 100, { step: 'grind', tool: 'hand-grinder' });
    expect(help(grind)).toMatchObject({ ...people, then: near(8) });
    const saw = loud(0.5, 110, { step: 'saw-cut', tool: 'walk-behind-saw' });
    expect(help(saw)).toMatchObject({ ...people, then: near((2 ** (25 / 3) * 0.5) / 8 / 4) });
    const strip = settleTask({
      step: 'strip-coating',
      tool: 'needle-scaler',
      setting: 'open',
      hours: [0.5, 0.5],
    });
    expect(help(strip)).toMatchObject({ ...people, then: near(8) });
  });
  it('leaves the other work of the day as it is', () => {
    const scaler = settleTask({ step: 'edge-work', setting: 'open', hours: [0.5, 0.5] });
    const saw = loud(4, 88, { step: 'saw-cut', tool: 'hand-saw' });
    expect(help(saw, scaler)).toMatchObject({
      change: 'tool',
      to: 'hand-grinder',
      now: near(33),
      then: near(2),
    });
  });
});
