import { describe, expect, it } from 'vitest';
import { authored } from '$lib/practice/authored';
import { diceFrom } from '$lib/practice/dice';
import { generate, lastSeed } from '$lib/practice/generate';
import { levelOf, type Level } from '$lib/practice/level';
import { dueCases, findCase, nextCase } from '$lib/practice/next';
import type * as progress from '$lib/practice/progress';

const ids = (of: (one: (typeof authored)[number]) => boolean) =>
  authored.filter(of).map(({ id }) => id);
const ofLevel = (level: Level) => ids((one) => levelOf(one) === level);

describe('the case to try now', () => {
  const known = (level: Level, ...of: string[]): progress.Standing => ({
    ...{ level, last: null },
    known: new Map(of.map((id) => [id, { case: id, due: Infinity, tried: 1, last: 'good' }])),
  });
  const due = (...of: [string, number][]): progress.Standing => ({
    ...{ level: 1, last: null },
    known: new Map(of.map(([id, at]) => [id, { case: id, due: at, tried: 1, last: 'good' }])),
  });
  it('is what has come back by this very moment, the longest overdue first', () => {
    const standing = due(
      ['bakery-dust', 5],
      ['g3-7', 3],
      ['g1-7', 1],
      ['gone', 1],
      ['museum-floor', 6],
    );
    expect(dueCases(standing, 5)).toEqual(['g3-7', 'bakery-dust']);
    expect(nextCase(standing, 5, 1)).toEqual({ id: 'g3-7', why: 'comes-back' });
  });
  it('is else a new one of the level, else one left over from below', () => {
    expect(ofLevel(3)).toContain(nextCase(known(3), 0, 4).id);
    expect(ofLevel(2)).toContain(nextCase(known(3, ...ofLevel(3)), 0, 4).id);
    const [left] = ofLevel(1);
    const rest = [...ofLevel(1).slice(1), ...ofLevel(2), ...ofLevel(3)];
    expect(nextCase(known(3, ...rest), 0, 4)).toEqual({ id: left, why: 'new' });
    const several = [1, 2, 3, 4, 5, 6].map((seed) => nextCase(known(1), 0, seed).id);
    expect(new Set(several).size).toBeGreaterThan(2);
  });
  it('is else a generated one that was not tried, of the level or next to it', () => {
    const seed = 11;
    const from = diceFrom(seed).between(0, lastSeed - 60);
    const run = Array.from({ length: 60 }, (_, at) => generate(from + at));
    const all = ids(() => true);
    // Nearest to the last level first, and of equals the one drawn first.
    const order = run
      .map((one) => ({ id: one.id, far: 4 - levelOf(one) }))
      .sort((one, other) => one.far - other.far)
      .map(({ id }) => id);
    // The first, the first beside the level, the last there is.
    const there = run.filter((one) => levelOf(one) === 4).length;
    expect(there).toBeGreaterThan(0);
    for (const tried of [0, there, 59])
      expect(nextCase(known(4, ...all, ...order.slice(0, tried)), 0, seed)).toEqual({
        ...{ id: order[tried], why: 'new' },
      });
    // Where all of them were tried, one of them comes again.
    expect(nextCase(known(4, ...all, ...order), 0, seed).id).toBe(run[0]?.id);
  });

  it('is of the level that was asked for and of no other, also what comes back', () => {
    const [easy, hard] = [ofLevel(1)[0] ?? '', ofLevel(3)[0] ?? ''];
    const standing = due([easy, 1], [hard, 2]);
    expect(nextCase(standing, 5, 4, { level: 3 })).toEqual({ id: hard, why: 'comes-back' });
    expect(nextCase(standing, 5, 4, { level: null })).toEqual({ id: easy, why: 'comes-back' });
    expect(ofLevel(2)).toContain(nextCase(known(4), 0, 4, { level: 2 }).id);
    // None is left: it is drawn, and not taken from below.
    const drawn = nextCase(known(3, ...ofLevel(3)), 0, 4, { level: 3 });
    expect(drawn.why).toBe('new');
    expect(ofLevel(2)).not.toContain(drawn.id);
    expect(levelOf(findCase(drawn.id) as never)).toBe(3);
  });
  // Two of one picture on end are read as one. A matter of this site, no source.
  it('does not look like the one before, where another has come back or is new', () => {
    const looks = (id: string) => {
      const one = findCase(id);
      return `${one?.site.element} ${one?.zone.depth}`;
    };
    const all = ids(() => true);
    const before = all.find((id) =>
      all.some((other) => other !== id && looks(other) === looks(id)),
    );
    const twin = all.find((id) => id !== before && looks(id) === looks(before ?? '')) ?? '';
    const other = all.find((id) => looks(id) !== looks(before ?? '')) ?? '';
    const wish = { after: before };
    expect(nextCase(due([twin, 1], [other, 2]), 5, 4, wish).id).toBe(other);
    // Nothing else has come back: it may not wait.
    expect(nextCase(due([twin, 1]), 5, 4, wish)).toEqual({ id: twin, why: 'comes-back' });
    const [first] = ofLevel(1);
    for (let seed = 0; seed < 40; seed += 1)
      expect(looks(nextCase(known(1), 0, seed, { after: first }).id)).not.toBe(looks(first ?? ''));
  });
  it('is not the one just looked at', () => {
    const [one, other] = ofLevel(1);
    const standing = due([one ?? '', 1], [other ?? '', 2]);
    expect(nextCase(standing, 5, 4, { after: one }).id).toBe(other);
    const rest = ids(() => true).filter((id) => id !== one);
    expect(nextCase(known(1, ...rest), 0, 4).id).toBe(one);
    const drawn = nextCase(known(1, ...rest), 0, 4, { after: one });
    expect(drawn.id).not.toBe(one);
    expect(nextCase(known(1, ...rest), 0, 4, { after: drawn.id }).id).toBe(one);
    const all = known(1, ...rest, one ?? '');
    const again = nextCase(all, 0, 4);
    expect(nextCase(all, 0, 4, { after: again.id }).id).not.toBe(again.id);
  });
});
