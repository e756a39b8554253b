import { describe, expect, it } from 'vitest';
import { carriesSet, readSetLink, setLink } from '$lib/keep/practice/set-link';
import { drawing } from '$lib/practice/generate';
import { lastStart } from '$lib/practice/set';

const problem = (fragment: string) => {
  const read = readSetLink(fragment);
  return read.ok ? null : read.problem;
};
const count = (range: readonly number[], path: string, found: object) => ({
  path,
  expected: { id: 'count', range },
  found,
});
const text = (of: string) => ({ id: 'text', text: of });
const nothing = { id: 'nothing' };
const drawn = `${drawing}-5`;

describe('a link to a practice set', () => {
  it('can be read by eye, and is written anew as it was', () => {
    const page = 'https://host.test/learn/practice/';
    const sets = [
      [{ cases: ['bakery-dust', 'larch-row-oil'] }, 'cases=bakery-dust,larch-row-oil'],
      [{ cases: [], generated: { seed: 5, count: 3 } }, `seed=${drawn}&count=3`],
      [
        { cases: ['bakery-dust'], generated: { seed: 0, count: 1 } },
        `cases=bakery-dust&seed=${drawing}-0&count=1`,
      ],
    ] as const;
    for (const [set, said] of sets) {
      expect(setLink(set, page)).toBe(`${page}#set2.${said}`);
      expect(readSetLink(`#set2.${said}`)).toEqual({ ok: true, value: set });
      expect(readSetLink(`set2.${said}`)).toEqual({ ok: true, value: set });
    }
    expect(readSetLink('#set2.cases=bakery-dust')).toStrictEqual({
      ok: true,
      value: { cases: ['bakery-dust'] },
    });
  });

  it.each([
    ['#set2.x', true],
    ['set2.x', true],
    ['#set.x', true],
    ['#set/2.x', false],
    ['#reset2.x', false],
    ['#set2', false],
  ])('%j carries a set: %s', (fragment, carries) => {
    expect(carriesSet(fragment)).toBe(carries);
  });

  it.each([
    ['#top', { path: '', expected: { id: 'set-link' }, found: text('#top') }],
    ['#reset2.cases=bakery-dust', { path: '', expected: { id: 'set-link' } }],
    [
      '#set3.x',
      { path: '', expected: { id: 'link-version', known: ['1', '2'] }, found: text('3') },
    ],
    ['#set2.', { path: '', expected: { id: 'set-part' }, found: text('') }],
    ['#set2.case=a', { path: '', expected: { id: 'set-part' }, found: text('case=a') }],
    ['#set2.my cases=a', { path: '', expected: { id: 'set-part' } }],
    ['#set2.seed=1&seed=1', { path: '', expected: { id: 'set-part' }, found: text('seed=1') }],
    [
      '#set2.cases=bakery-dust,nobody',
      { path: 'cases[1]', expected: { id: 'authored-case' }, found: text('nobody') },
    ],
    [
      '#set2.cases=bakery-dust,bakery-dust',
      { path: 'cases[1]', expected: { id: 'unique' }, found: text('bakery-dust') },
    ],
    [`#set2.seed=${drawn}`, count([1, 50], 'count', nothing)],
    [`#set2.seed=${drawn}&count=0`, count([1, 50], 'count', text('0'))],
    [`#set2.seed=${drawn}&count=51`, count([1, 50], 'count', text('51'))],
    [`#set2.seed=${drawn}&count=03`, count([1, 50], 'count', text('03'))],
    [`#set2.seed=${drawn}&count=3x`, count([1, 50], 'count', text('3x'))],
    [`#set2.seed=${drawn}&count=x3`, count([1, 50], 'count', text('x3'))],
    ['#set2.count=3', count([0, lastStart(3)], 'seed', nothing)],
    [`#set2.seed=${drawing}-&count=3`, count([0, lastStart(3)], 'seed', text(''))],
    [
      `#set2.seed=${drawing}-99999999999&count=1`,
      count([0, lastStart(1)], 'seed', text('99999999999')),
    ],
    [
      '#set2.seed=g0-1&count=3',
      { path: 'seed', expected: { id: 'case-drawing', drawing }, found: text('g0-1') },
    ],
    [
      `#set2.seed=x${drawn}&count=3`,
      { path: 'seed', expected: { id: 'case-drawing', drawing }, found: text(`x${drawn}`) },
    ],
    // A link of version 1 gave the bare seed of the first way of drawing.
    [
      '#set1.seed=7&count=3',
      { path: 'seed', expected: { id: 'case-drawing', drawing }, found: text('g1-7') },
    ],
  ])('%s is refused by what is wrong with it', (fragment, wrong) => {
    expect(problem(fragment)).toMatchObject(wrong);
  });

  it('takes the largest there is: 50 cases, from the last that can be drawn', () => {
    for (const many of [1, 50])
      expect(
        readSetLink(`#set2.seed=${drawing}-${String(lastStart(many))}&count=${String(many)}`),
      ).toEqual({
        ok: true,
        value: { cases: [], generated: { seed: lastStart(many), count: many } },
      });
  });

  it('is read up to 4,000 characters', () => {
    const long = (length: number) => `#set2.${'x'.repeat(length - 6)}`;
    expect(problem(long(4000))).toMatchObject({ expected: { id: 'set-part' } });
    expect(problem(long(4001))).toEqual({
      path: '',
      expected: { id: 'smaller', limit: 4000 },
      found: { id: 'long-text', length: 4001 },
    });
  });
});
