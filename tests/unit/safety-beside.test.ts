import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { heardBeside } from '$lib/safety/noise';
import { safetyOf } from '$lib/safety/safety-of';
import { silicaOfDay } from '$lib/safety/silica';
import { settleTask } from '$lib/safety/tasks';
import type { WorkerDay } from '$lib/safety/types';
import { turnOf } from '$lib/safety/vibration';
import { settledJob } from '../helpers/crew-jobs';
import { onTrial } from '../helpers/rounds';

const break_ = { step: 'break-out', setting: 'open', hours: [3, 5], tool: 'jackhammer' } as const;
const sound = { step: 'sound-and-mark', setting: 'open', hours: [3, 5] } as const;
const day = (workers: readonly WorkerDay[], own = {}) => {
  const read = safetyOf({ region: 'us', workers }, own);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.safety.workers;
};

describe('who stands beside', () => {
  it('hears 6 dB less for each doubling of the distance in the open', () => {
    // Point source: L2 = L1 - 20 log10(r2 / r1), which is 6.02 a doubling; the figure says 6.
    const heard = heardBeside(settleTask({ ...break_, ownLevel: 108 }), { 'noise.beside': 4 });
    expect(heard?.level?.typical).toBeCloseTo(108 - 20 * Math.log10(4), 1);
  });
  it('is counted, and never told of silence', () => {
    const [, other] = day([
      { id: '1', tasks: [break_] },
      { id: '2', tasks: [sound] },
    ]);
    expect(other?.noise.beside.map(({ tool }) => tool)).toEqual(['jackhammer']);
    expect(other?.noise.limits.niosh.level.low).toBeGreaterThan(60);
  });
  it('is never told to be under a limit beside a machine nobody has measured', () => {
    const grind = { step: 'grind', setting: 'open', hours: [2, 3], tool: 'floor-grinder' } as const;
    const [, other] = day([
      { id: '1', tasks: [grind] },
      { id: '2', tasks: [sound] },
    ]);
    expect(other?.noise.limits.niosh.part.open).toBe(true);
    expect(other?.noise.limits.niosh.standing).toBe('unknown');
  });
  it('hears at least something on every day of a plan with a known loud machine', () => {
    fc.assert(
      fc.property(settledJob, (job) => {
        for (const { workers } of crewDaysOf(planJob(job), job).shifts) {
          const people = day(workers);
          const loud = people.some(({ noise }) => noise.limits.niosh.typical.part > 0);
          for (const { tasks, noise } of people)
            if (loud && tasks.length) expect(noise.limits.niosh.level.high).toBeGreaterThan(0);
        }
      }),
      { numRuns: onTrial(20, 5) },
    );
  });
});

describe('usual values', () => {
  // HSE ready reckoner: points = 2 a^2 an hour (from a secondary copy): 12 m/s2 for 4 h is 1,152.
  it('stand between the ends', () => {
    const [one] = day([{ id: '1', tasks: [break_] }]);
    expect(one?.vibration.typical.points).toBeCloseTo(2 * 12 ** 2 * 4, 6);
    const { part, typical } = one?.noise.limits.niosh ?? {};
    expect(typical?.part).toBeGreaterThan(part?.low ?? Infinity);
    expect(typical?.part).toBeLessThan(part?.high ?? 0);
  });
  it('name the change that helps most, or none where none is needed', () => {
    const [one] = day([{ id: '1', tasks: [break_] }]);
    // Four hours of a breaker at 100 dB(A) or more is more than four people can take by the 85 dB(A)
    // rule: then a method without a hammer in the hands, which somebody else's people do.
    expect(one?.help).toMatchObject({ change: 'method', to: 'water-jet', specialist: true });
    expect(one?.help?.then).toBeLessThan(one?.help?.now ?? 0);
    const [short] = day([{ id: '1', tasks: [{ ...break_, hours: [0.05, 0.05] }] }]);
    expect(short?.help?.change).not.toBe('method');
    const [quiet] = day([{ id: '1', tasks: [sound] }]);
    expect(quiet?.help).toBeNull();
  });
  it('give no turn shorter than a crew can keep', () => {
    expect(turnOf(4)).toBeNull();
    expect(turnOf(14.9)).toBeNull();
    expect(turnOf(15)).toBe(0.25);
    expect(turnOf(59)).toBe(0.75);
  });
});

describe('the dust table', () => {
  it('counts time at the task, and the time running where the reader says so', () => {
    const task = settleTask({ ...break_, hours: [3, 3], atTask: 4.5 });
    expect(silicaOfDay([task])).toMatchObject({ counted: 'at-task', column: 'over-4' });
    expect(silicaOfDay([task], undefined, 'tool-running')).toMatchObject({ column: 'up-to-4' });
  });
});
