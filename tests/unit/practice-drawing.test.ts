import { createHash } from 'node:crypto';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, it } from 'vitest';
import { diceFrom, seedOf } from '$lib/practice/dice';
import { drawing, generate, lastSeed, seedIn, stratumOf } from '$lib/practice/generate';
import { casesOf, lastStart, mostGenerated } from '$lib/practice/set';
import { round } from '$lib/practice/strata';

describe('the dice', () => {
  const seed = 20;
  /** The same throws, reckoned here. */
  const throws = () => {
    const generator = mersenne(seed);
    return () => uniformFloat64(generator);
  };
  it('pick each side as often: one throw, so many parts of it', () => {
    const [dice, next] = [diceFrom(seed), throws()];
    for (let turn = 0; turn < 50; turn += 1) {
      expect(dice.between(3, 8)).toBe(3 + Math.floor(next() * 6));
      expect(dice.chance(0.3)).toBe(next() < 0.3);
      expect(dice.pick(['a', 'b', 'c'])).toBe('abc'[Math.floor(next() * 3)]);
    }
    expect([diceFrom(1).chance(0), diceFrom(1).chance(1)]).toEqual([false, true]);
  });
  it('shuffle by taking one after the other of what is left', () => {
    const [all, next] = [['a', 'b', 'c', 'd', 'e', 'f'], throws()];
    const left = [...all];
    const taken = all.map(() => left.splice(Math.floor(next() * left.length), 1)[0]);
    expect(diceFrom(seed).shuffle(all)).toEqual(taken);
    expect(all).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
  });
  // Source: the test vectors of FNV-1a, 32 bits, as its authors publish them (from memory); halved.
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('have a seed for the text "%s"', (text, hash) => {
    expect(seedOf(text)).toBe(Math.floor(hash / 2));
  });
});

// Links and kept results name generated cases by their ids. Whoever turns this red has changed what
// they mean: raise `drawing`, so that old ids come to no other case, and take the new digest.
describe('an id of a generated case', () => {
  it('means for ever what it meant', () => {
    const cases = Array.from({ length: 3 * round.length }, (_, seed) => generate(seed));
    const digest = createHash('sha256').update(JSON.stringify(cases)).digest('hex');
    expect([drawing, digest.slice(0, 16)]).toEqual(['g3', 'e763e959e8c346a0']);
  });
  it('is read back where it is one, up to the last seed', () => {
    for (const seed of [0, 7, 10, lastSeed]) expect(seedIn(`${drawing}-${seed}`)).toBe(seed);
    const no = ['', '01', '-1', '1e3', '1 ', '2147483648', '12345678901'];
    for (const digits of no) expect(seedIn(`${drawing}-${digits}`), digits).toBeNull();
    for (const id of ['g2-1', 'g32-1', ` ${drawing}-1`, `x${drawing}-1`, 'larch-row-oil'])
      expect(seedIn(id), id).toBeNull();
  });
  it('comes round by kinds: each method three times, each turn and each hold once', () => {
    const named = ({ kind, id }: (typeof round)[number]) => `${kind} ${id}`;
    for (const block of [0, 1, 50]) {
      const kinds = round.map((_, place) => named(stratumOf(block * round.length + place)));
      expect([...kinds].sort()).toEqual(round.map(named).sort());
    }
    const count = (kind: string) => round.filter((one) => one.kind === kind).length;
    expect([count('method'), count('turn'), count('hold')]).toEqual([21, 5, 16]);
    expect(new Set(round.map(named)).size).toBe(7 + 5 + 16);
  });
});

describe('a set', () => {
  it('names its authored cases, then a run of generated ones', () => {
    expect(casesOf({ cases: ['larch-row-oil'] })).toEqual(['larch-row-oil']);
    expect(casesOf({ cases: ['larch-row-oil'], generated: { seed: 5, count: 3 } })).toEqual([
      ...['larch-row-oil', 'g3-5', 'g3-6', 'g3-7'],
    ]);
  });
  it('begins its run no later than the seeds last', () => {
    expect([0, 1, mostGenerated].map(lastStart)).toEqual([lastSeed, lastSeed, lastSeed - 49]);
  });
});
