import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lettersOf, withCheck, type Bead } from '$lib/keep/practice/abacus';
import {
  codesIn,
  isResultName,
  marks,
  minuteOf,
  nameLetters,
  readResultCode,
  resultCode,
  resultLink,
  runOf,
  setKeyOf,
} from '$lib/keep/practice/result-code';
import { resultTables } from '$lib/keep/practice/result-tables';
import { authored } from '$lib/practice/authored';
import { calls } from '$lib/practice/case';
import { drawing } from '$lib/practice/generate';
import type { SetResult } from '$lib/practice/given';
import { casesOf, lastStart } from '$lib/practice/set';
import { problemSentence } from '$words/keep';
import { anyResult, inOrder } from '../helpers/any-result';
import { onTrial, rounds } from '../helpers/rounds';

const letters = '23456789ABCDEFGHJKLMNPQRSTUVWXYZabcdefghijkmnopqrstuvwxyz';
const ids = authored.map(({ id }) => id);
const last = calls.at(-1) as SetResult['calls'][number];

/** A result in which every number is the largest there is, so that its code is the longest. */
function longest(authoredCount: number, generatedCount: number, name: string): SetResult {
  const set = {
    cases: ids.slice(-authoredCount || ids.length).slice(0, authoredCount),
    ...(generatedCount && {
      generated: { seed: lastStart(generatedCount), count: generatedCount },
    }),
  };
  return {
    set,
    calls: casesOf(set).map(() => last),
    minute: minuteOf(1e15),
    mark: marks - 1,
    name,
  };
}
const six: SetResult = {
  set: {
    cases: ['bakery-dust', 'larch-row-oil', 'hall-steps-nosing'],
    generated: { seed: 7, count: 3 },
  },
  calls: ['grind', 'pressure-wash', 'break-out', 'engineer', 'scarify', 'crew'],
  minute: minuteOf(Date.UTC(2026, 2, 2, 9)),
  mark: 4711,
  name: 'Mira',
};

describe('the code of a result', () => {
  it('comes back as it was given, whatever the set, the picks and the name', () => {
    fc.assert(
      fc.property(anyResult, (result) => {
        expect(readResultCode(resultCode(result))).toEqual({ ok: true, value: inOrder(result) });
      }),
      { numRuns: onTrial(rounds(250, 1000), 20) },
    );
  });

  it('takes at most 120 characters for 50 cases with a name of 12 letters, whatever the cases', () => {
    // The letters that take most bytes in UTF-8 without being two: any script of the first plane.
    const name = '\uffdc'.repeat(nameLetters);
    expect(isResultName(name)).toBe(true);
    const lengths = Array.from({ length: 51 }, (_, own) => {
      const code = resultCode(longest(own, 50 - own, name));
      expect(readResultCode(code).ok).toBe(true);
      return `#${code}`.length;
    });
    console.log(`50 cases with a name: ${String(Math.max(...lengths))} characters at most`);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(120);
    // No result of 50 cases is longer than the one with the largest numbers.
    fc.assert(
      fc.property(anyResult, (result) => {
        fc.pre(result.calls.length <= 50);
        expect(`#${resultCode(result)}`.length).toBeLessThanOrEqual(120);
      }),
      { numRuns: onTrial(rounds(75, 300), 20) },
    );
  });

  it('is the same for the same cases in another order, and goes by the cases', () => {
    const [one, two, three, ...rest] = six.calls as [never, never, never, ...never[]];
    const turned: SetResult = {
      ...six,
      set: { ...six.set, cases: ['hall-steps-nosing', 'bakery-dust', 'larch-row-oil'] },
      calls: [three, one, two, ...rest],
    };
    expect(resultCode(turned)).toBe(resultCode(six));
    expect(runOf(turned)).toBe(runOf(six));
    expect(setKeyOf({ set: { cases: six.set.cases } })).not.toBe(setKeyOf(six));
  });

  it('has one code alone for each result, of letters that do not look alike', () => {
    fc.assert(
      fc.property(anyResult, (result) => {
        const code = resultCode(result);
        expect(code.slice(6)).toMatch(/^[2-9A-HJ-NP-Za-km-z]+$/);
        // With more before or behind it, or its name spelt with accents apart, it is another text.
        for (const text of [code.replace('.', '.2'), `${code}2`, code.slice(0, -1)])
          expect(readResultCode(text).ok).toBe(false);
      }),
      { numRuns: rounds(25, 100) },
    );
  });

  it('names everything there is now by the table of its version', () => {
    // What comes to the site needs a new table; a table that a site has had is never changed.
    const now = resultTables.at(-1);
    expect([...(now?.cases ?? [])].sort()).toEqual([...ids].sort());
    expect(now?.calls).toEqual(calls);
    expect(now?.drawing).toBe(drawing);
  });

  it('is found in what people paste', () => {
    const code = resultCode(six);
    const link = resultLink(six, 'https://example.org/learn/practice/results/');
    expect(codesIn(`[9:14] Mira: ${link}, done. And "${code}".\n${code}`)).toEqual([
      code,
      code,
      code,
    ]);
    expect(codesIn('I am done.\nWell done. Next')).toEqual([]);
  });
});

describe('a code that was changed', () => {
  it('in one letter is told at every place, whatever the letter', () => {
    let tried = 0;
    let slipped = 0;
    const samples = [six, longest(50, 0, 'Mira'), longest(0, 50, '')].slice(0, onTrial(3, 1));
    for (const result of samples) {
      const code = resultCode(result);
      for (let at = 0; at < code.length; at += 1)
        for (const letter of `${letters}01OIl._- `) {
          if (letter === code[at]) continue;
          tried += 1;
          if (readResultCode(code.slice(0, at) + letter + code.slice(at + 1)).ok) slipped += 1;
        }
    }
    // One letter is changed within 8 bits: by its making the checksum lets none of that by.
    console.log(`one letter changed: ${slipped} of ${tried} slip by`);
    expect(slipped).toBe(0);
  });

  it('in letters side by side, by turning two round or leaving one out, is told', () => {
    const code = resultCode(longest(25, 25, 'Mira'));
    for (let at = 6; at < code.length; at += 1) {
      const [before, after] = [code.slice(0, at), code.slice(at)];
      expect(readResultCode(before + after.slice(1)).ok).toBe(false);
      expect(readResultCode(`${before}k${after}`).ok).toBe(false);
      const turned = `${before}${after.charAt(1)}${after.charAt(0)}${after.slice(2)}`;
      if (turned !== code) expect(readResultCode(turned).ok).toBe(false);
    }
  });

  it('at random slips by no more often than the checksum allows: of 100,000, none', () => {
    const code = resultCode(longest(25, 25, 'Mira'));
    const share = 2 ** -32;
    let state = 11;
    const dice = (below: number) =>
      ((state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) >>> 8) % below;
    let slipped = 0;
    for (let turn = 0; turn < onTrial(100_000, 200); turn += 1) {
      const spoilt = [...code];
      for (let times = 2 + dice(8); times > 0; times -= 1)
        spoilt[6 + dice(code.length - 6)] = letters.charAt(dice(letters.length));
      const text = spoilt.join('');
      if (text !== code && readResultCode(text).ok) slipped += 1;
    }
    console.log(`2 to 9 letters changed: ${slipped} of 100,000 slip by; expected ${share * 1e5}`);
    expect(slipped).toBe(0);
  });

  it('by somebody who makes the checksum anew is told where no screen gives it', () => {
    const table = resultTables.at(-1);
    if (!table) throw new Error('no table');
    const bits = table.cases.map((id): Bead => [id === 'bakery-dust' ? 1 : 0, 2]);
    const made = (...beads: Bead[]) =>
      readResultCode(withCheck(`done2.${lettersOf([...bits, ...beads])}`));
    const tail: Bead[] = [
      [5, 2 ** 24],
      [6, 2 ** 16],
    ];
    // As the site makes it, so that what follows differs in one thing each.
    expect(made([0, 51], [0, 13], ...tail, [0, 37]).ok).toBe(true);
    const name = (text: string): Bead[] => {
      const bytes = [...new TextEncoder().encode(text)];
      return [[bytes.length, 37], ...bytes.map((byte): Bead => [byte, 256])];
    };
    expect(made([0, 51], [0, 13], ...tail, ...name('Mira')).ok).toBe(true);
    const forged: Record<string, Bead[]> = {
      'more behind the end': [[0, 51], [0, 13], ...tail, [0, 37], [1, 2]],
      'a name that ends in a blank': [[0, 51], [0, 13], ...tail, ...name('Mira ')],
      'a name of 13 letters': [[0, 51], [0, 13], ...tail, ...name('MiraMiraMiraM')],
      'a name with a line end': [[0, 51], [0, 13], ...tail, ...name('Mi\nra')],
      'a name that turns the line round': [[0, 51], [0, 13], ...tail, ...name('a\u202eb')],
      'a name with its accent apart': [[0, 51], [0, 13], ...tail, ...name('e\u0301')],
      'a name that is no text': [[0, 51], [0, 13], ...tail, [1, 37], [0xff, 256]],
    };
    for (const [what, beads] of Object.entries(forged)) {
      const read = made(...beads);
      expect([what, read.ok]).toEqual([what, false]);
      if (!read.ok) expect(problemSentence(read.problem)).toContain('could have given');
    }
    // The same number written with a nought before it, so that it would count as another code.
    const plain = lettersOf([...bits, [0, 51], [0, 13], ...tail, [0, 37]]);
    expect(readResultCode(withCheck(`done2.${plain}`)).ok).toBe(true);
    expect(readResultCode(withCheck(`done2.2${plain}`)).ok).toBe(false);
    // A set without a case.
    const none = lettersOf([...table.cases.map((): Bead => [0, 2]), [0, 51], ...tail]);
    expect(readResultCode(withCheck(`done2.${none}`)).ok).toBe(false);
  });

  it.each([
    ['', 'the code of a result made by this site'],
    ['done', 'the code of a result made by this site'],
    ['set2.cases=bakery-dust', 'the code of a result made by this site'],
    ['done9.abc', 'a version this site can read (1, 2); a newer code'],
    ['done01.abc', 'a version this site can read'],
    ['done.abc', 'a version this site can read'],
    ['done1.', 'the whole code'],
    ['done1.abc', 'the whole code'],
    ['done1.0OIl', 'the whole code'],
    [`done1.${'k'.repeat(100_000)}`, 'no more than 300 characters'],
  ])('says what is wrong with %s', (text, said) => {
    const read = readResultCode(text);
    if (read.ok) throw new Error('taken');
    expect(problemSentence(read.problem)).toContain(said);
  });
});

describe('what makes no code', () => {
  it('is refused: a case, a pick or a name without a place', () => {
    expect(() => resultCode({ ...six, set: { cases: ['no-such-case'] } })).toThrow(RangeError);
    expect(() => resultCode({ ...six, calls: six.calls.slice(1) })).toThrow(RangeError);
    expect(() => resultCode({ ...six, name: 'Mira of Marrow Quay' })).toThrow(RangeError);
    expect(() => resultCode({ ...six, mark: marks })).toThrow(RangeError);
  });
});
