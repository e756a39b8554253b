import { describe, expect, it } from 'vitest';
import { safetyOf, type ShiftInput } from '$lib/safety/safety-of';
import type { ShiftTask } from '$lib/safety/types';

const at = (change: Partial<ShiftTask> = {}): ShiftTask => ({
  ...{ step: 'break-out', setting: 'open', hours: [1, 1], ...change },
});
const day = (region: 'us' | 'elsewhere', people: ShiftTask[][], more: Partial<ShiftInput> = {}) => {
  const workers = people.map((tasks, index) => ({ id: String(index + 1), tasks }));
  const result = safetyOf({ region, workers, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.safety;
};
const sounding = at({ step: 'sound-and-mark' });
const always = [
  ...['silica.limit', 'silica.action-level', 'silica.long-shift', 'silica.airflow'],
  ...['noise.osha-ceiling', 'noise.day', 'noise.osha-action', 'noise.osha-exchange'],
  ...['noise.osha-threshold', 'noise.osha-criterion', 'noise.niosh-criterion'],
  ...['noise.niosh-exchange', 'noise.eu-lower', 'noise.eu-upper', 'noise.eu-limit'],
  ...['noise.rating-a-weighted', 'noise.rating-derating', 'noise.rating-highest'],
  ...['vibration.day', 'vibration.action', 'vibration.limit', 'vibration.action-points'],
  ...['share.step', 'share.shift'],
];

describe('a crew’s day', () => {
  it('leans on the rules, and on the figures of its tools, its masks and its duties', () => {
    const more = (region: 'us' | 'elsewhere', ...people: ShiftTask[][]) => {
      const { basis } = day(region, people);
      expect(new Set(basis).size).toBe(basis.length);
      expect(basis).toEqual(expect.arrayContaining(always));
      return basis.filter((id) => !always.includes(id)).toSorted();
    };
    expect(more('us', [sounding])).toEqual([]);
    expect(more('elsewhere', [sounding])).toEqual(['silica.limit-eu']);
    // 29 CFR 1926.1153 Table 1, row (x): indoors a mask of factor 10 or more, so its duties too.
    expect(more('us', [at({ setting: 'indoors' })])).toEqual([
      ...['noise.jackhammer', 'silica.apf.full-face', 'silica.apf.half-mask'],
      ...['silica.apf.loose-hood', 'silica.exam-days', 'vibration.road-breaker'],
    ]);
    expect(more('us', [at()])).toEqual(['noise.jackhammer', 'vibration.road-breaker']);
    // In no row of the table, or under a stricter rule: the mask to begin with.
    expect(more('us', [at({ step: 'shotblast' })])).toEqual(['dust.mask-gb', 'silica.exam-days']);
    const grind = at({ step: 'grind', tool: 'floor-grinder' });
    expect(more('us', [grind])).toEqual([]);
    expect(more('elsewhere', [grind])).toEqual([
      ...['dust.mask-gb', 'silica.exam-days', 'silica.limit-eu'],
    ]);
  });

  it('has the respirators of each person, none or not known before somebody has measured', () => {
    const { workers, duties } = day('us', [
      [sounding],
      [at({ setting: 'indoors' })],
      [at({ step: 'shotblast' })],
    ]);
    expect(workers.map(({ respirators }) => respirators?.map(({ factor }) => factor))).toEqual([
      ...[[], [10, 25, 50], undefined],
    ]);
    expect(workers[2]?.respirators).toBeNull();
    const ids = (...people: ShiftTask[][]) => day('us', people).duties.map(({ id }) => id);
    expect(duties.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['fit-test', 'assess-exposure']),
    );
    expect(ids([sounding], [at({ setting: 'indoors' })])).toContain('fit-test');
    expect(ids([sounding], [at({ setting: 'indoors' })])).not.toContain('assess-exposure');
    expect(ids([sounding], [at()])).not.toContain('fit-test');
    expect(ids([sounding], [at({ step: 'clean-bar', tool: 'hand-grinder' })])).toContain(
      'assess-exposure',
    );
  });

  // HSE: 10 m/s2 is 200 points an hour, 100 and 400 the values; NIOSH and 2003/10/EC: 91 dB(A) are
  // 85 over 8 h after two hours.
  it('is shared out by each value, by noise and by all of them, with those who are there', () => {
    const shaking = at({
      hours: [1, 2],
      typical: 1,
      ownVibration: 10,
      ownVibrationFrom: 'measured',
      ownLevel: 91,
    });
    const people = (region: 'us' | 'elsewhere', more: Partial<ShiftInput> = {}) => {
      const { sharing, worstSharing } = day(region, [[shaking], [shaking]], more);
      return Object.fromEntries(
        Object.entries({ ...sharing, worst: worstSharing }).map(([aim, shared]) => [
          aim,
          shared.can === 'share' ? [shared.people, shared.days] : null,
        ]),
      );
    };
    const two = { 'vibration-action': [4, 2], 'vibration-limit': [1, 1], 'noise-limit': [1, 1] };
    expect(people('us')).toEqual({ ...two, everything: [4, 2], worst: [8, 4] });
    expect(people('elsewhere')).toEqual({ ...two, everything: [4, 2], worst: [8, 4] });
    expect(people('us', { crew: 4 })['vibration-action']).toEqual([4, 1]);
    const loud = [[at({ ownLevel: 91, ownVibration: 0, hours: [8, 8] })]];
    expect(day('us', loud).sharing).toMatchObject({
      ...{ 'vibration-action': { people: 0 }, 'noise-limit': { people: 4, days: 4 } },
      everything: { people: 4 },
    });
    expect(day('us', []).sharing.everything).toMatchObject({ people: 0, days: 0 });
  });

  it('knows who is there for turns, and gives only the problems back where it is wrong', () => {
    const loud = at({
      ownLevel: 88,
      ownVibration: 0,
      hours: [8, 8],
      step: 'saw-cut',
      tool: 'hand-saw',
    });
    const help = (...people: ShiftTask[][]) => day('us', people).workers[0]?.help;
    expect(help([loud])).toMatchObject({ change: 'people', crew: 1, people: 2 });
    expect(help([loud], [], [])).toMatchObject({ change: 'people', crew: 3, people: 3 });
    const wrong = { region: 'us', workers: [{ id: '1', tasks: [at({ wheel: 1 })] }] } as const;
    expect(safetyOf(wrong)).toEqual({
      ok: false,
      problems: [
        {
          problem: 'wheel-outside',
          field: 'workers[0].tasks[0].wheel',
          got: 1,
          limit: 'limit.wheel',
        },
      ],
    });
  });
});
