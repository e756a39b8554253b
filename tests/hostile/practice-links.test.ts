import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carriesSet, readSetLink, setLink } from '$lib/keep/practice/set-link';
import { authored } from '$lib/practice/authored';
import { casesOf, lastStart, mostGenerated, type PracticeSet } from '$lib/practice/set';
import { generatedId } from '$lib/practice/generate';
import { findCase } from '$lib/practice/next';
import { problemSentence } from '$words/keep';
import { onTrial, rounds } from '../helpers/rounds';

const page = 'https://example.test/learn/practice/';
const ids = authored.map(({ id }) => id);
const seed = 20_261_125;

const anySet: fc.Arbitrary<PracticeSet> = fc
  .record({
    cases: fc.subarray(ids, { minLength: 0 }),
    count: fc.integer({ min: 0, max: mostGenerated }),
    from: fc.nat(),
  })
  .filter(({ cases, count }) => cases.length + count > 0)
  .map(({ cases, count, from }) => ({
    cases,
    ...(count > 0 && { generated: { seed: Math.min(from, lastStart(count)), count } }),
  }));

const clear = /^[^\p{Cc}\u2028-\u202e\u2066-\u2069\ud800-\udfff]{10,6000}$/u;

/** Reads a fragment: a set that can be tried, or a clear sentence. */
function judge(fragment: string): boolean {
  const read = readSetLink(fragment);
  if (!read.ok) {
    const said = problemSentence(read.problem);
    if (!clear.test(said)) throw new Error(`not clear: ${JSON.stringify(said)}`);
    return false;
  }
  const all = casesOf(read.value);
  if (all.length === 0 || new Set(all).size !== all.length) throw new Error(fragment);
  return true;
}

describe('links to a set', () => {
  it('come back as the set they were made of', () => {
    fc.assert(
      fc.property(anySet, (set) => {
        const link = setLink(set, page);
        const fragment = new URL(link).hash;
        expect(carriesSet(fragment)).toBe(true);
        expect(readSetLink(fragment)).toEqual({ ok: true, value: set });
      }),
      { seed, numRuns: onTrial(rounds(75, 300), 20) },
    );
  });

  it('lead to cases that are there', () => {
    const [last] = fc.sample(anySet, { seed, numRuns: 1 });
    for (const id of casesOf(last as PracticeSet).slice(0, 20)) expect(findCase(id)?.id).toBe(id);
    expect(setLink({ cases: ids }, page).length).toBeLessThan(2000);
  });

  it.each([
    ['', 'a link to a practice set'],
    ['#job1.abc', 'a link to a practice set'],
    ['#set9.cases=bakery-dust', 'newer link'],
    ['#set1.', 'cases=…'],
    ['#set1.cases=', 'cases[0]: expected the id of a practice case'],
    ['#set1.cases=nobody', 'found "nobody"'],
    ['#set1.cases=bakery-dust,bakery-dust', 'nothing said twice'],
    ['#set1.cases=bakery-dust&cases=larch-row-oil', 'no more than once'],
    ['#set1.seed=1', 'count: expected a whole number'],
    ['#set1.count=3', 'seed: expected a whole number'],
    ['#set1.seed=1&count=51', 'from 1 to 50'],
    ['#set1.seed=01&count=1', 'seed: expected'],
    [
      `#set2.seed=${generatedId(2147483647)}&count=2`,
      'seed: expected a whole number from 0 to 2147483646',
    ],
    ['#set2.seed=1&count=1', 'ask for a new link'],
    ['#set2.seed=g0-1&count=1', 'seed: expected the id of a case drawn the way this copy'],
    [`#set2.seed=${generatedId(1).replace(/1$/, '01')}&count=1`, 'seed: expected a whole number'],
    [`#set1.${'x'.repeat(5000)}`, 'no more than 4,000 characters'],
  ])('say what is wrong with %s', (fragment, said) => {
    const read = readSetLink(fragment);
    if (read.ok) throw new Error('taken');
    expect(problemSentence(read.problem)).toContain(said);
  });

  it('stand five thousand made to break them', () => {
    const scraps = [
      ...'#.,=&%-',
      'set',
      'set1.',
      'seed',
      'count=',
      '__proto__',
      '\u202e',
      '\u0000',
      '1e9',
      '9'.repeat(30),
      '\ud800',
      'cases=',
      ' ',
      'constructor',
    ];
    const links = fc.sample(anySet, { seed, numRuns: 500 }).map((set) => setLink(set, ''));
    const cuts = fc.sample(
      fc.tuple(fc.nat(499), fc.nat(300), fc.nat(20), fc.constantFrom(...scraps)),
      { seed, numRuns: onTrial(rounds(1000, 4000), 20) },
    );
    let taken = 0;
    const start = process.cpuUsage();
    for (const [index, at, length, scrap] of cuts) {
      const link = links[index] ?? '';
      const place = at % (link.length + 1);
      taken += +judge(link.slice(0, place) + scrap + link.slice(place + length));
    }
    for (const text of fc.sample(fc.string({ unit: 'binary', maxLength: 60 }), {
      seed,
      numRuns: onTrial(rounds(250, 1000), 20),
    })) {
      expect(judge(text)).toBe(false);
      judge(`#set1.${text}`);
    }
    expect(taken).toBeLessThan(cuts.length / 2);
    expect(process.cpuUsage(start).user / 6e6).toBeLessThan(20);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});
