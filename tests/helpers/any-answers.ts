import fc from 'fast-check';
import type { Answers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';

/** Random answers, mostly sure, some open, small enough to enumerate. */
const one = (id: QuestionId) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...choicesOf(id)).map((choice) => [choice]) },
    { weight: 1, arbitrary: fc.shuffledSubarray([...choicesOf(id)], { minLength: 1 }) },
  );
const many = (id: QuestionId) =>
  fc
    .tuple(
      fc.subarray([...choicesOf(id)], { maxLength: 2 }),
      fc.subarray([...choicesOf(id)], { maxLength: 3 }),
    )
    .map(([yes, maybe]) => ({ yes, maybe: maybe.filter((each) => !yes.includes(each)) }));
/** A method that failed on a test patch: settled, whatever is open beside it. */
const failed = fc.record({
  method: fc.constantFrom(...methodIds),
  because: fc.constantFrom('too-much', 'too-little', 'both'),
  why: fc.constantFrom(['bruised'], ['too-deep'], ['too-smooth'], ['bruised', 'still-loose']),
});
/** Some of it open, and now and then what test patches have settled. */
export const anyAnswers = fc
  .record({
    element: one('element'),
    setting: one('setting'),
    salts: one('salts'),
    freezeThaw: one('freezeThaw'),
    thickness: fc.constantFrom('unknown' as const, 60, 100, 150, 300),
    warnings: fc.oneof(
      { weight: 2, arbitrary: fc.constant({ yes: [], maybe: [] }) },
      { weight: 1, arbitrary: many('warnings') },
    ),
    depth: fc.oneof(one('depth'), fc.constantFrom(0, 0.5, 2, 5, 6.2, 6.4, 12, 40, 50, 75, 120)),
    looseness: one('looseness'),
    contamination: many('contamination'),
    texture: one('texture'),
    cracks: one('cracks'),
    steel: one('steel'),
    barLoss: fc.option(one('barLoss'), { nil: undefined }),
    finish: one('finish'),
    area: fc.constantFrom('unknown' as const, 0.5, 5, 20),
    makerProfile: fc.constantFrom(undefined, ['no-sheet'], ['csp-2'], ['csp-3'], ['csp-9']),
    makerMoisture: fc.constantFrom(undefined, ['no-sheet'], ['damp'], ['dry']),
    borderLength: fc.constantFrom(undefined, 'unknown' as const, 0, 12),
    barCover: fc.constantFrom(undefined, 'unknown' as const, 15, 60),
    stopped: fc.oneof(
      { weight: 3, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constant(['hollow-below']) },
    ),
    triedOut: fc.oneof(
      { weight: 2, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.array(failed, { minLength: 1, maxLength: 3 }) },
    ),
  })
  .map((raw) => JSON.parse(JSON.stringify(raw)) as Answers & TriedAnswers);
