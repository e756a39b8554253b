import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedQuestions } from '$lib/advice/relevance';
import { restOf, withRest } from '$lib/answers/rest';
import type { Job } from '$lib/answers/job';
import * as edits from '$lib/ui/job/edits';
import { withAnswer } from '$lib/ui/with-answer';
import { anyJob } from '../helpers/any-job';

const filled = anyJob(8, 2);
const order = (job: Job) => job.zones.map(({ id }) => id);

describe('zones of a job', () => {
  it('come back exactly where they were when a deletion is undone', () => {
    fc.assert(
      fc.property(filled, fc.nat(), (job, dice) => {
        const id = order(job)[dice % job.zones.length] as string;
        const without = edits.withoutZone(job, id);
        expect(order(without?.job as Job)).not.toContain(id);
        expect(
          edits.withRestored(without?.job as Job, without?.removed as edits.Removed).job,
        ).toEqual(job);
      }),
    );
  });

  it('come back under another id where another tab has given theirs to a new zone', () => {
    const zone = (id: string) => ({ id, name: '', answers: {} });
    const job: Job = { name: '', site: {}, zones: [zone('a'), zone('b')] };
    const { job: less, removed } = edits.withoutZone(job, 'b') as NonNullable<
      ReturnType<typeof edits.withoutZone>
    >;
    const back = edits.withRestored(edits.withZone(less, zone('b')), removed);
    expect([back.id, ...order(back.job)]).toEqual(['c', 'a', 'c', 'b']);
  });

  it('are moved to a place without any being lost or changed', () => {
    fc.assert(
      fc.property(filled, fc.nat(), fc.integer({ min: -3, max: 12 }), (job, dice, to) => {
        const id = order(job)[dice % job.zones.length] as string;
        const moved = edits.withMove(job, id, to);
        expect(new Set(moved.zones)).toEqual(new Set(job.zones));
        const place = Math.max(0, Math.min(job.zones.length - 1, to));
        expect(order(moved)[place]).toBe(id);
        expect(order(moved).filter((each) => each !== id)).toEqual(
          order(job).filter((each) => each !== id),
        );
      }),
    );
  });

  it('are never left to none, and take ids and names that are free', () => {
    const job: Job = { name: '', site: {}, zones: [{ id: 'a', name: 'Ramp', answers: {} }] };
    expect(edits.withoutZone(job, 'a')).toBeNull();
    expect(edits.freeId(job)).toBe('b');
    expect(edits.freeId(job, ['b', 'c'])).toBe('d');
    expect(edits.copyName('Ramp', ['Ramp'])).toBe('Ramp 2');
    expect(edits.copyName('Ramp 2', ['Ramp', 'Ramp 2'])).toBe('Ramp 3');
    expect(edits.copyName('', [''])).toBe('');
  });
});

describe('a zone that is copied', () => {
  const answers = {
    depth: 20,
    looseness: ['tight'],
    texture: ['pitted'],
    cracks: ['open'],
    crackLength: 4,
    steel: ['exposed'],
    barLength: 2,
    borderLength: 3,
    area: 12,
  } as const;
  const job = (more: Partial<Job> = {}): Job => ({
    name: '',
    site: { element: ['slab'], thickness: 150 },
    zones: [{ id: 'a', name: 'Ramp', answers }],
    ...more,
  });
  const copyOf = (from: Job, id = 'a') => edits.withCopy(from, id, { id: 'b', name: 'Edge' });

  // Common practice, no source: a quantity nobody measured is not a quantity.
  it('brings its condition along, and claims no measure that nobody took', () => {
    expect(copyOf(job()).zones[1]?.answers).toEqual({
      depth: 20,
      looseness: ['tight'],
      texture: ['pitted'],
      cracks: ['open'],
      steel: ['exposed'],
    });
    expect(copyOf(job()).zones[0]?.answers).toEqual(answers);
  });

  it('leaves behind what counts for nothing there, so that it cannot come back unasked', () => {
    // A pitted ramp made rotten: what is broken out anyway is not asked for its texture.
    const rotten = withAnswer(job(), 'a', { question: 'looseness', answer: ['rotten'] });
    const copied = copyOf(rotten);
    expect(copied.zones[1]?.answers.looseness).toEqual(['rotten']);
    const sound = withAnswer(copied, 'b', { question: 'looseness', answer: ['tight'] });
    expect(sound.zones[1]?.answers).not.toHaveProperty('texture');
  });

  it('leaves nothing behind that is asked', () => {
    fc.assert(
      fc.property(filled, fc.nat(), (from, dice) => {
        const zone = from.zones[dice % from.zones.length] as Job['zones'][number];
        const copied = edits.withCopy(from, zone.id, { id: 'copy', name: '' });
        const copy = copied.zones.find(({ id }) => id === 'copy') as Job['zones'][number];
        expect(Object.keys(copy.answers).sort()).toEqual(
          askedQuestions(from.site, zone.answers)
            .filter((id) => Object.hasOwn(zone.answers, id))
            .filter((id) => !['area', 'crackLength', 'barLength', 'borderLength'].includes(id))
            .sort(),
        );
      }),
    );
  });

  it('leaves the rest a rest: how much is left cannot be told before the copy has its own area', () => {
    const whole = job({
      totalArea: 40,
      rest: 'r',
      zones: [...job().zones, { id: 'r', name: '', answers: {} }],
    });
    expect(restOf(whole)).toEqual({ id: 'left', area: 28 });
    const copied = copyOf(whole);
    expect(copied.rest).toBe('r');
    expect(restOf(copied)).toEqual({ id: 'no-area', zones: ['b'] });
    expect(withRest(copied).zones.at(-1)?.answers.area).toBe('unknown');
    const measured = withAnswer(copied, 'b', { question: 'area', answer: 5 });
    expect(restOf(measured)).toEqual({ id: 'left', area: 23 });
    // A copy of the rest is a zone like the others.
    const twice = copyOf(withRest(whole), 'r');
    expect(twice.rest).toBe('r');
    expect(twice.zones.at(-1)).toEqual({ id: 'b', name: 'Edge', answers: {} });
  });
});

describe('the rest of a surface', () => {
  const job = (totalArea: number | undefined, ...areas: (number | 'unknown')[]): Job => ({
    name: '',
    site: {},
    ...(totalArea !== undefined && { totalArea }),
    rest: 'r',
    zones: [
      ...areas.map((area, place) => ({ id: `z${place}`, name: '', answers: { area } })),
      { id: 'r', name: '', answers: {} },
    ],
  });

  it('is what the others leave, to the last decimal typed', () => {
    expect(restOf(job(140, 18, 1.2, 9))).toEqual({ id: 'left', area: 111.8 });
    expect(withRest(job(0.3, 0.1)).zones[1]?.answers.area).toBe(0.2);
  });

  it('is not known, and no number, while something is missing or wrong', () => {
    expect(restOf(job(undefined, 3)).id).toBe('no-total');
    expect(restOf(job(10, 3, 'unknown'))).toEqual({ id: 'no-area', zones: ['z1'] });
    expect(restOf(job(10, 12))).toEqual({ id: 'over', area: 2 });
    expect(restOf(job(10, 4, 6)).id).toBe('nothing');
    for (const each of [job(undefined, 3), job(10, 12), job(10, 10)])
      expect(withRest(each).zones.at(-1)?.answers.area).toBe('unknown');
  });
});
