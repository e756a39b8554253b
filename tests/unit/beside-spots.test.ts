import { describe, expect, it } from 'vitest';
import type { ZoneAnswers } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import { readForOwner } from '$lib/plan/conclusion';
import { planJob } from '$lib/plan/plan';
import { surveyOf } from '$lib/survey/survey';
import { adviceDocument } from '../../src/cli/advice-document';
import { rectangle } from '../helpers/drawings';
import { goodDrawing, readDrawn } from '../helpers/drawn-file';

const spot = (x: number, depth?: number) => ({
  kind: 'spot',
  corners: rectangle(x, 1000, 400, 500),
  zone: 'b',
  ...(depth !== undefined && { depth }),
});
/** All of the slab, 6 x 8 m and 200 mm thick, is zone b. */
const slab = (
  answers: Partial<ZoneAnswers>,
  marks: readonly object[],
  more: { lanes?: number } = {},
): Job => {
  const painted = { kind: 'zone', zone: 'b', corners: rectangle(0, 0, 6000, 8000) };
  const job = readDrawn({ slab: goodDrawing.slab, marks: [painted, ...marks], ...more });
  const zones = job.zones
    .filter(({ id }) => id === 'b')
    .map((zone) => ({ ...zone, answers: { ...zone.answers, ...answers } }));
  return { ...job, zones };
};
const sheet = (job: Job) => {
  const plan = planJob(job);
  return { plan, ...readForOwner(job, plan) };
};
// By hand: a spot of 400 x 500 mm, and 100 mm past it on each side: 0.6 x 0.7 m.
const patch = 0.42;
const flaking = { depth: ['under-3'], looseness: ['flaking'] } as const;

// Common practice, no source: a scraper takes a loose skin off all of a zone; a deeper spot in it is
// broken out beside that, and never instead of it.
describe('a loose skin with a spot in it that goes deeper', () => {
  const told = (answers: Partial<ZoneAnswers>, ...marks: readonly object[]) => {
    const { plan, conditions, notKnown } = sheet(slab(answers, marks));
    return {
      left: plan.zones.map(({ skinLeft }) => skinLeft),
      surface: conditions.area.surface,
      said: notKnown.find(({ id }) => id === 'skin-left')?.zones,
    };
  };
  it('is no sound concrete beside the spot, and is said to have no work in the plan', () => {
    expect(told(flaking, spot(500, 40))).toEqual({
      left: [true],
      surface: expect.closeTo(48 - patch, 9),
      said: ['b'],
    });
  });
  it('may be dust, small chips, or a thin trowelled skin that sounds hollow', () => {
    for (const answers of [
      { depth: ['film'], looseness: ['powdery'] },
      { depth: ['3-to-6'], looseness: ['fractured'] },
      { depth: 5, looseness: ['hollow'] },
    ] as const)
      expect(told(answers, spot(500, 40)).left, JSON.stringify(answers)).toEqual([true]);
  });
  it('is all planned while no spot goes deeper, and none where the damage is the spots', () => {
    expect(told(flaking).left).toEqual([false]);
    expect(told(flaking, spot(500)).left).toEqual([false]);
    for (const looseness of ['hollow', 'rotten', 'fractured'] as const)
      expect(told({ depth: 40, looseness: [looseness] }, spot(500, 60))).toMatchObject({
        left: [false],
        said: undefined,
      });
  });
  it('is held against no other option while the skin has no work: less is less by that alone', () => {
    const { lighter } = sheet(slab(flaking, [spot(500, 40)]));
    expect(new Set(Object.values(lighter))).toEqual(new Set(['not-known']));
    const { lighter: hollow } = sheet(slab({}, [spot(500, 40)]));
    expect(hollow.debris).toBe('first');
  });
  it('is told by the command line, which knows what was answered and what was drawn', () => {
    const { plan } = JSON.parse(
      JSON.stringify(
        adviceDocument(slab({ depth: ['3-to-6'], looseness: ['fractured'] }, [spot(500, 40)])),
      ),
    ) as { plan: { zones: unknown[] } };
    expect(plan.zones).toMatchObject([{ beside: 'surface', skinLeft: true }]);
  });
});

// Sounding: ASTM D4580 (hammer or chain over all of the deck), from memory; the spacing is common practice.
describe('what lies between the spots of a hollow zone', () => {
  const grid = (least: number, step: number, most: number) => {
    const marks: object[] = [];
    for (let x = least; x <= 6000; x += step)
      for (let y = least; y <= most; y += step)
        marks.push({ kind: 'tap', at: [x, y], rings: true });
    return marks;
  };
  const between = (marks: readonly object[], more: { lanes?: number } = {}) => {
    const { plan, conditions, notKnown, rings } = sheet(slab({}, [spot(500, 40), ...marks], more));
    return {
      beside: plan.zones[0]?.beside,
      sound: conditions.area.sound,
      open: conditions.area['not-sounded'],
      said: notKnown.some(({ id }) => id === 'not-sounded'),
      rings,
    };
  };
  const rest = 48 - patch;
  const unheard = {
    beside: 'not-sounded',
    sound: 0,
    open: expect.closeTo(rest, 9) as number,
    said: true,
    rings: 0,
  };
  const heard = {
    beside: 'sound',
    sound: expect.closeTo(rest, 9) as number,
    open: 0,
    said: false,
    rings: expect.closeTo(rest / 48, 9) as number,
  };

  it('is not sounded while nobody has, and a single tap is no sounding of a surface', () => {
    expect(between([])).toEqual(unheard);
    expect(between([{ kind: 'tap', at: [3000, 3000], rings: true }])).toEqual(unheard);
  });
  it('is sounded where it was tapped all over, or a chain went over it in lanes it covers', () => {
    expect(between(grid(150, 300, 8000))).toEqual(heard);
    expect(between([], { lanes: 450 })).toEqual(heard);
  });
  it('is not where the taps stop short, stand too wide, or the lanes leave ground between', () => {
    expect(between(grid(150, 300, 6500))).toEqual(unheard);
    expect(between(grid(300, 600, 8000))).toEqual(unheard);
    expect(between([], { lanes: 900 })).toEqual(unheard);
  });
  it('needs no tap where the damage is drawn', () => {
    const inSpot = ({ at: [x, y] }: { at: number[] }) =>
      (x as number) > 500 && (x as number) < 900 && (y as number) > 1000 && (y as number) < 1500;
    const taps = (grid(150, 300, 8000) as { at: number[] }[]).filter((tap) => !inSpot(tap));
    expect(taps.length).toBeLessThan(grid(150, 300, 8000).length);
    expect(between(taps)).toEqual(heard);
  });
  // The spots of a zone that is no more than they are lie in ground that nobody heard, too.
  it('is told as not known of a zone that is no more than its typed spots', () => {
    const { survey: _drawn, ...job } = slab({ area: 0.2 }, []);
    const [zone] = job.zones;
    const typed = { id: 'b', name: 'B', answers: zone?.answers ?? {} };
    const patches = [{ x: 0, y: 0, length: 400, width: 500 }];
    const { notKnown, conditions } = sheet({ ...job, zones: [{ ...typed, patches }] });
    expect(notKnown.find(({ id }) => id === 'not-sounded')?.zones).toEqual(['b']);
    expect(conditions.area['not-sounded']).toBe(0);
  });
  it('is sounded bay by bay: a zone in a bay nobody tapped is not', () => {
    const job = slab({}, [spot(500, 40), ...grid(150, 300, 8000)]);
    const { survey } = job;
    const parted = {
      ...job,
      survey: {
        slab: { length: 6000, width: 8000 },
        joints: [
          [
            [3000, 0],
            [3000, 8000],
          ],
        ],
        marks: survey?.marks?.filter((mark) => mark.kind !== 'tap' || mark.at[0] < 3000),
      },
    } as Job;
    expect(surveyOf(parted)?.heard).toEqual(['1']);
    expect(surveyOf(parted)?.sounded).toEqual([]);
  });
});

// A number is of what is done: nobody breaks out a slab for two spots in it.
describe('the area by method', () => {
  const areas = (job: Job) =>
    Object.fromEntries(
      planJob(job).areas.map(({ method, area }) => [method, 'span' in area && area.span]),
    );
  const near = (value: number) => [expect.closeTo(value, 9), expect.closeTo(value, 9)];
  it('of a zone that is broken out is that of its patches', () => {
    expect(areas(slab({}, [spot(500, 40), spot(4000, 40)]))).toEqual({
      'break-out': near(2 * patch),
    });
  });
  it('is the same as the patches where nobody drew any, from one piece to many', () => {
    const { survey: _drawn, ...job } = slab({ area: 4 }, []);
    const { zones } = planJob(job);
    const ground = zones[0]?.quantities['patch-area'];
    expect(areas(job)).toEqual({ 'break-out': ground && 'span' in ground && ground.span });
  });
  it('beside a bar is that along it, and the rest by the method of the rest', () => {
    const bar = {
      kind: 'bar',
      line: [
        [1000, 1000],
        [1800, 1000],
      ],
    };
    const { 'break-out': along, ...rest } = areas(slab(flaking, [bar]));
    // By hand: 1.1 m of bar, no wider than 32 mm and 100 mm on both sides of it.
    expect(along && along[1]).toBeLessThan(1.1 * 0.25);
    expect(rest).toEqual({ shotblast: near(48) });
  });
  it('of a zone that is not broken out is all of it', () => {
    expect(areas(slab(flaking, []))).toEqual({ shotblast: near(48) });
  });
});
