import fc from 'fast-check';
import { isResultName, marks, minuteOf, plainName } from '$lib/keep/practice/result-code';
import { resultTables } from '$lib/keep/practice/result-tables';
import { authored } from '$lib/practice/authored';
import { calls } from '$lib/practice/case';
import type { SetResult } from '$lib/practice/given';
import { casesOf, lastStart, mostGenerated, type PracticeSet } from '$lib/practice/set';

const ids = authored.map(({ id }) => id);
const order = resultTables.at(-1)?.cases ?? [];
const first = minuteOf(0);
const last = minuteOf(1e15);

/** Any set that a link can carry, its cases in any order. */
const anySet: fc.Arbitrary<PracticeSet> = fc
  .tuple(fc.shuffledSubarray(ids), fc.integer({ min: 0, max: mostGenerated }), fc.nat())
  .filter(([cases, count]) => cases.length + count > 0)
  .map(([cases, count, seed]) => ({
    cases,
    ...(count && { generated: { seed: seed % (lastStart(count) + 1), count } }),
  }));

/** Names in all scripts, with what is no letter among them. */
export const anyName: fc.Arbitrary<string> = fc
  .oneof(
    fc.string({ unit: 'grapheme', maxLength: 12 }),
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom('', 'Mira', 'Žofie', 'Александра', '王小明', 'நிலா', '=1+1', '👷🏽'),
  )
  .map(plainName)
  .filter(isResultName);

/** Any result of any set. */
export const anyResult: fc.Arbitrary<SetResult> = anySet.chain((set) => {
  const { length } = casesOf(set);
  return fc.record(
    {
      set: fc.constant(set),
      calls: fc.array(fc.constantFrom(...calls), { minLength: length, maxLength: length }),
      minute: fc.integer({ min: first, max: last }),
      mark: fc.integer({ min: 0, max: marks - 1 }),
      name: anyName,
    },
    { noNullPrototype: true },
  );
});

/** The same result with the cases in the order of the table, as it comes back out of a code. */
export function inOrder(result: SetResult): SetResult {
  const picked = new Map(casesOf(result.set).map((id, at) => [id, result.calls[at]]));
  const set = { ...result.set, cases: order.filter((id) => result.set.cases.includes(id)) };
  return { ...result, set, calls: casesOf(set).map((id) => picked.get(id)) as SetResult['calls'] };
}
