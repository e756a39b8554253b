import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { ZoneAnswers } from '$lib/answers/answers';
import { planJob } from '$lib/plan/plan';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { rectangle } from '../helpers/drawings';
import { goodDrawing, readDrawn } from '../helpers/drawn-file';

describe('a bar that is drawn', () => {
  const answersOf = (marks: unknown[], of: 'a' | 'b') => {
    const job = readDrawn({ ...goodDrawing, marks });
    return drawnJob(job, surveyOf(job)).zones.find(({ id }) => id === of)?.answers;
  };
  const line = [
    [500, 3000],
    [1500, 3000],
  ];

  // ACI PRC-364.6: at least 150 mm (6 in) past the last rust, at both ends of every bar.
  it('frees as much bar as is drawn and 150 mm past each end, and breaks out no more along it', () => {
    const bar = (x: number, zone = 'a') => ({
      kind: 'bar',
      line: [
        [x, 3000],
        [x + 800, 3000],
      ],
      ...(zone && { zone }),
    });
    expect(answersOf([bar(500)], 'a')?.barLength).toBeCloseTo(1.1, 9);
    expect(answersOf([bar(500), bar(4000)], 'a')?.barLength).toBeCloseTo(2.2, 9);
    expect(answersOf([], 'a')).not.toHaveProperty('barLength');
    const planned = planJob(readDrawn({ ...goodDrawing, marks: [bar(500)] })).zones;
    const { quantities } = planned.find(({ id }) => id === 'a') ?? {};
    expect(quantities?.['bars-freed']).toMatchObject({
      span: [expect.closeTo(1.1, 9), expect.closeTo(1.1, 9)],
    });
    // By hand: 1.1 m, no wider than a bar of 32 mm and 100 mm on both sides of it.
    const ground = quantities?.['patch-area'];
    expect(ground && 'span' in ground && ground.span[1]).toBeLessThan(1.1 * 0.25);
  });
  it('parts a bar that lies in two zones by what shows in each', () => {
    const job = readDrawn({
      slab: goodDrawing.slab,
      marks: [
        { kind: 'zone', zone: 'a', corners: rectangle(0, 0, 1000, 8000) },
        { kind: 'zone', zone: 'b', corners: rectangle(1000, 0, 5000, 8000) },
        {
          kind: 'bar',
          line: [
            [800, 3000],
            [1600, 3000],
          ],
        },
      ],
    });
    const [a, b] = drawnJob(job, surveyOf(job)).zones.map(({ answers }) => answers.barLength);
    expect(a).toBeCloseTo(1.1 / 4, 9);
    expect(b).toBeCloseTo((3 * 1.1) / 4, 9);
  });
  it('believes a longer length that was typed: other bars may not be drawn', () => {
    const on = (barLength: number) => {
      const job = readDrawn({ ...goodDrawing, marks: [{ kind: 'bar', line, zone: 'a' }] });
      const zones = job.zones.map((zone) => ({ ...zone, answers: { ...zone.answers, barLength } }));
      return drawnJob({ ...job, zones }, surveyOf(job)).zones[0]?.answers.barLength;
    };
    expect(on(12)).toBe(12);
    expect(on(0.5)).toBeCloseTo(1.3, 9);
  });
  // A drawing tells how long a bar is, never how much of it the rust has left.
  it('leaves a drawn bar to be measured for what it has lost', () => {
    const job = readDrawn({ ...goodDrawing, marks: [{ kind: 'bar', line, zone: 'a' }] });
    const { answers } = drawnJob(job, surveyOf(job)).zones[0] ?? {};
    const tests = (more: ZoneAnswers) =>
      adviseZone(job.site, { ...answers, ...more }).findOut.map(({ test }) => test);
    expect(tests({})).toContain('measure-bar');
    expect(tests({ barLoss: ['within-limit'] })).not.toContain('measure-bar');
    expect(tests({ steel: ['exposed'] })).not.toContain('measure-bar');
    expect(tests({ steel: ['corroded'] }).filter((test) => test === 'measure-bar')).toHaveLength(1);
  });
});
