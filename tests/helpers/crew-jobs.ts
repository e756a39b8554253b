import fc from 'fast-check';
import type { Job, Zone } from '$lib/answers/job';
import { choicesOf, type QuestionId } from '$lib/answers/questions';

/** An invented job: hollow concrete to be broken out and overlaid. */
export const hollow = (
  change: Partial<Job> = {},
  site: Partial<Job['site']> = {},
  answers: Partial<Zone['answers']> = {},
): Job => ({
  name: 'Tidewell community hall (invented)',
  site: {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['rare'],
    thickness: 150,
    warnings: { yes: [], maybe: [] },
    ...site,
  },
  zones: [
    {
      id: 'a',
      name: 'Forecourt',
      answers: {
        area: 6,
        depth: 40,
        looseness: ['hollow'],
        contamination: { yes: [], maybe: [] },
        texture: ['sandy'],
        cracks: ['none'],
        steel: ['none-seen'],
        finish: ['overlay'],
        crackLength: 0,
        ...answers,
      },
    },
  ],
  ...change,
});
const one = (id: QuestionId) => fc.constantFrom(...choicesOf(id)).map((choice) => [choice]);
/** Jobs with every answer given, so that most of their zones can be planned. */
export const settledJob = fc
  .record({
    element: fc.constantFrom(['slab'], ['steps']),
    setting: one('setting'),
    crew: fc.integer({ min: 1, max: 6 }),
    zones: fc.array(
      fc.record({
        area: fc.oneof(fc.double({ min: 0.1, max: 150, noNaN: true }), fc.constant('unknown')),
        crackLength: fc.double({ min: 0, max: 40, noNaN: true }),
        depth: fc.double({ min: 0, max: 45, noNaN: true }),
        looseness: one('looseness'),
        contamination: fc
          .subarray([...choicesOf('contamination')], { maxLength: 1 })
          .map((yes) => ({ yes, maybe: [] })),
        texture: one('texture'),
        cracks: one('cracks'),
        steel: one('steel'),
        barLoss: fc.constant(['within-limit']),
        finish: one('finish'),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ element, setting, crew, zones }) => ({
    ...hollow({ crew }, { element, setting } as unknown as Job['site']),
    zones: zones.map((answers, index) => ({ id: `z${index}`, name: '', answers })),
  })) as unknown as fc.Arbitrary<Job>;
