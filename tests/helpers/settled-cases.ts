import fc from 'fast-check';
import { adviseZone } from '$lib/advice/advise';
import { plainSite, plainZone } from '$lib/advice/completions';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';

/** Thousands of settled cases, always the same, in which every rule comes up; and two with answers open. */
const one = <Q extends QuestionId>(id: Q) => fc.constantFrom(...choicesOf(id));
/** A few of many: more than three at once is rare, and most often there is none. */
const some = <Q extends QuestionId>(id: Q) =>
  fc.oneof(fc.constant([]), fc.subarray([...choicesOf(id)], { maxLength: 3 }));

const sites = fc.record({
  element: one('element'),
  setting: one('setting'),
  salts: one('salts'),
  freezeThaw: one('freezeThaw'),
  thickness: fc.constantFrom<number | 'unknown'>('unknown', 75, 100, 150, 300),
  warnings: some('warnings'),
}) as fc.Arbitrary<SettledSite>;

/** Methods that failed on test patches: now and then some, rarely all. */
const failed = fc
  .tuple(
    fc.oneof(
      { weight: 6, arbitrary: fc.constant([]) },
      { weight: 2, arbitrary: fc.subarray([...methodIds], { minLength: 1, maxLength: 3 }) },
      { weight: 1, arbitrary: fc.constant(methodIds) },
    ),
    fc.constantFrom<'too-much' | 'too-little' | 'both'>('too-much', 'too-little', 'both'),
    fc.constantFrom(['bruised'], ['too-deep'], ['too-smooth']),
  )
  .map(([methods, because, why]) => methods.map((method) => ({ method, because, why })));

const zones = fc
  .record({
    depth: one('depth'),
    looseness: one('looseness'),
    contamination: some('contamination'),
    texture: one('texture'),
    cracks: one('cracks'),
    steel: one('steel'),
    loss: fc.option(one('barLoss'), { nil: undefined }),
    finish: one('finish'),
    area: fc.constantFrom<number | 'unknown'>('unknown', 0.5, 12),
    border: fc.constantFrom(undefined, 0, 7),
    makerProfile: fc.constantFrom(undefined, undefined, 2, 4, 8),
    makerMoisture: fc.constantFrom(undefined, undefined, 'damp', 'dry'),
    triedOut: failed,
    stopped: fc.constantFrom([], [], [], ['hollow-below']),
  })
  .map(({ loss, border, makerProfile, makerMoisture, triedOut, stopped, ...zone }) => ({
    ...zone,
    ...(triedOut.length && { triedOut }),
    ...(stopped.length && { stopped }),
    ...(loss && zone.steel === 'corroded' && { barLoss: loss }),
    ...(border !== undefined && { border }),
    ...(makerProfile !== undefined && { makerProfile }),
    ...(makerMoisture !== undefined && { makerMoisture }),
  })) as fc.Arbitrary<SettledZone>;

const cases = fc.sample(fc.tuple(sites, zones), { seed: 2026, numRuns: 4000 });
export const advices = [
  ...cases.map(([site, zone]) => adviseSettled(site, zone)),
  adviseSettled(
    { ...plainSite, element: 'suspended-slab' },
    { ...plainZone, partInDoubt: 'surely' },
  ),
  adviseZone({ element: ['slab'] }, { depth: ['under-3', 'over-50'], finish: ['overlay'] }),
  adviseZone({}, {}),
];
