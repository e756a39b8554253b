import { slowness } from '../helpers/slowness';
import { DirectedGraph } from 'graphology';
import { hasCycle, topologicalGenerations } from 'graphology-dag';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everywhere } from '$lib/plan/schedule';
import { workOrder } from '$lib/advice/steps/work';
import type { Job } from '$lib/answers/job';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { isKnown, type Amount } from '$lib/plan/amount';
import { boxOf, gap } from '$lib/survey/geometry';
import { layPatches, rectangleRing } from '$lib/survey/patches';
import { edgesAmong, orderSteps } from '$lib/plan/order';
import { planJob } from '$lib/plan/plan';
import { adviseZone } from '$lib/advice/advise';
import { valueOf } from '$shared/figures';
import { nightly, onTrial, rounds } from '../helpers/rounds';

const one = (id: QuestionId) => fc.constantFrom(...choicesOf(id)).map((choice) => [choice]);
const many = (id: QuestionId) =>
  fc.subarray([...choicesOf(id)], { maxLength: 2 }).map((yes) => ({ yes, maybe: [] }));
const zoneArb = fc.record(
  {
    depth: fc.oneof(one('depth'), fc.double({ min: 0, max: 90, noNaN: true })),
    looseness: one('looseness'),
    contamination: many('contamination'),
    texture: one('texture'),
    cracks: one('cracks'),
    crackLength: fc.double({ min: 0, max: 40, noNaN: true }),
    steel: one('steel'),
    finish: one('finish'),
    area: fc.oneof(fc.double({ min: 0.05, max: 200, noNaN: true }), fc.constant('unknown')),
  },
  { requiredKeys: ['depth', 'looseness', 'contamination', 'texture', 'cracks', 'steel', 'finish'] },
);
const jobArb = fc
  .record({
    site: fc.record({
      element: one('element'),
      setting: one('setting'),
      salts: one('salts'),
      freezeThaw: one('freezeThaw'),
      thickness: fc.constantFrom('unknown', 100, 150, 300),
      warnings: fc.constant({ yes: [], maybe: [] }),
    }),
    zones: fc.array(zoneArb, { minLength: 1, maxLength: 8 }),
    crew: fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined }),
  })
  .map(({ site, zones, crew }) => ({
    name: 'A job',
    site,
    ...(crew && { crew }),
    zones: zones.map((answers, index) => ({ id: `z${index}`, name: `Zone ${index}`, answers })),
  })) as unknown as fc.Arbitrary<Job>;

describe('the order of work', () => {
  it('has no circle and agrees with its table, by an independent graph library', () => {
    const graph = new DirectedGraph();
    for (const id of workOrder) graph.addNode(id);
    for (const { before, after } of edgesAmong(workOrder)) graph.addEdge(before, after);
    expect(hasCycle(graph)).toBe(false);
    expect(topologicalGenerations(graph).flat().length).toBe(workOrder.length);
  });

  it('loses no step, keeps every precedence, and does each step once', () => {
    fc.assert(
      fc.property(jobArb, (job) => {
        const { steps, zones } = planJob(job);
        const order = steps.map(({ id }) => id);
        expect(new Set(order).size).toBe(order.length);
        for (const zone of zones)
          for (const id of zone.steps)
            expect(steps.find((step) => step.id === id)?.zones).toContain(zone.id);
        const graph = new DirectedGraph();
        for (const id of order) graph.addNode(id);
        const zonesOf = (step: string) => steps.find(({ id }) => id === step)?.zones ?? [];
        for (const { before, after, why } of edgesAmong(order)) {
          graph.addEdge(before, after);
          // In zones apart two steps may go on side by side.
          const meet = zonesOf(before).some((zone) => zonesOf(after).includes(zone));
          if (meet || everywhere.includes(why))
            expect(order.indexOf(before)).toBeLessThan(order.indexOf(after));
        }
        expect(hasCycle(graph)).toBe(false);
      }),
      { numRuns: onTrial(rounds(50, 200), 3) },
    );
  });

  it('never washes before dust, and washes last', () => {
    const order = orderSteps(workOrder.map((step) => ({ zone: 'a', step, dryFinish: true }))).map(
      ({ id }) => id,
    );
    expect(order.indexOf('vacuum')).toBeGreaterThan(order.indexOf('clean-bar'));
    expect(order.indexOf('final-wash')).toBeGreaterThan(order.indexOf('pressure-wash'));
    expect(order.indexOf('shotblast')).toBeGreaterThan(order.indexOf('break-out'));
  });

  it('waits for drying between degreasing and shotblasting', () => {
    const steps = orderSteps([
      { zone: 'a', step: 'degrease', dryFinish: false },
      { zone: 'a', step: 'shotblast', dryFinish: false },
      { zone: 'b', step: 'grind', dryFinish: false },
    ]);
    expect(steps.find(({ id }) => id === 'shotblast')?.wait?.figure).toBe('dry.before-blasting');
    expect(steps.find(({ id }) => id === 'grind')?.wait).toBeUndefined();
  });
});

describe('quantities', () => {
  it('are finite ranges the right way round, or say what is missing', () => {
    fc.assert(
      fc.property(jobArb, (job) => {
        const { zones, totals, steps, schedule } = planJob(job);
        const amounts = [...zones.map(({ quantities }) => quantities), totals].flatMap((each) =>
          Object.values(each),
        );
        for (const amount of [
          ...amounts,
          ...steps.map(({ hours }) => hours),
        ] as (Amount | null)[]) {
          if (!amount) continue;
          if (!isKnown(amount)) expect(amount.missing.length).toBeGreaterThan(0);
          else {
            expect(amount.span.every(Number.isFinite)).toBe(true);
            expect(amount.span[0]).toBeLessThanOrEqual(amount.span[1]);
            expect(amount.span[0]).toBeGreaterThanOrEqual(0);
          }
        }
        expect(schedule.count[0]).toBeLessThanOrEqual(schedule.count[1]);
      }),
      { numRuns: onTrial(rounds(50, 200), 3) },
    );
  });
});

describe('patches', () => {
  const spot = fc.record({
    x: fc.integer({ min: 0, max: 6000 }),
    y: fc.integer({ min: 0, max: 6000 }),
    length: fc.integer({ min: 10, max: 1500 }),
    width: fc.integer({ min: 10, max: 1500 }),
  });
  it('cover every spot past its damage, keep apart, and keep the least size', () => {
    fc.assert(
      fc.property(
        fc.array(spot, { maxLength: 12 }),
        fc.constantFrom('rare', 'often'),
        (spots, frost) => {
          const { patches, skipped } = layPatches(spots.map(rectangleRing), frost as never);
          const past = 100;
          spots.forEach((each, index) => {
            const patch = patches.find((one_) => one_.spots.includes(index));
            expect(!!patch).toBe(!skipped.includes(index));
            if (!patch) return;
            expect(patch.x).toBeLessThanOrEqual(each.x - past);
            expect(patch.y).toBeLessThanOrEqual(each.y - past);
            expect(patch.x + patch.length).toBeGreaterThanOrEqual(each.x + each.length + past);
            expect(patch.y + patch.width).toBeGreaterThanOrEqual(each.y + each.width + past);
          });
          for (const [index, patch] of patches.entries()) {
            expect(Math.max(patch.length, patch.width)).toBeGreaterThanOrEqual(300);
            expect(Math.min(patch.length, patch.width)).toBeGreaterThanOrEqual(100);
            for (const other of patches.slice(index + 1))
              expect(
                gap(boxOf(rectangleRing(patch)), boxOf(rectangleRing(other))),
              ).toBeGreaterThanOrEqual(valueOf('patch.merge'));
          }
        },
      ),
      { numRuns: onTrial(rounds(75, 300), 3) },
    );
  });
});

describe('speed', () => {
  it.runIf(nightly)('replans a job of 200 zones at an edit in under 50 ms', () => {
    const answers = fc.sample(zoneArb, { numRuns: 200, seed: 7 });
    const job = {
      name: 'Large',
      site: {
        element: ['slab'],
        setting: ['open'],
        salts: ['none'],
        freezeThaw: ['some'],
        thickness: 300,
        warnings: { yes: [], maybe: [] },
      },
      zones: answers.map((each, index) => ({ id: `z${index}`, name: '', answers: each })),
    } as unknown as Job;
    planJob(job);
    const times = Array.from({ length: 20 }, (_, edit) => {
      const zones = job.zones.map((zone, index) =>
        index === edit * 7 ? { ...zone, answers: { ...zone.answers, area: 3 + edit } } : zone,
      );
      const started = process.cpuUsage();
      planJob({ ...job, zones });
      return process.cpuUsage(started).user / 1000;
    }).sort((a, b) => a - b);
    const median = times[10] as number;
    process.stdout.write(`  plan of 200 zones after an edit: ${median.toFixed(1)} ms\n`);
    expect(median).toBeLessThan(50 * slowness());
    expect(adviseZone({}, {}).verdict).toBe('find-out-first');
  });
});
