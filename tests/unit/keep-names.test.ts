import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanName, isName } from '$lib/keep/names';
import { onTrial, rounds } from '../helpers/rounds';

describe('a name', () => {
  // Default-ignorable and blank characters of the Unicode Character Database; from memory.
  const unseen = [0xad, 0xa0, 0x34f, 0x61c, 0x115f, 0x1160, 0x17b4, 0x180e, 0x2003, 0x200b, 0x200d]
    .concat([0x200f, 0x202f, 0x2060, 0x2062, 0x2800, 0x3000, 0x3164, 0xfe0f, 0xfeff, 0xffa0])
    .concat([0xe0041, 0xe01ef])
    .map((code) => String.fromCodePoint(code));

  it('made of nothing that can be seen is refused, and a typed one is cleaned away', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...unseen, ' '), { minLength: 1, maxLength: 20 }),
        (characters) => {
          const text = characters.join('');
          const spaces = text.trim() === '' && !/[^ ]/.test(text);
          expect(isName(text)).toBe(spaces);
          if (!spaces) expect(cleanName(text)).toBe('');
          expect(isName(`${text}Ramp${text}`)).toBe(true);
        },
      ),
      { numRuns: onTrial(rounds(250, 1000), 20) },
    );
    for (const one of unseen)
      expect([one.codePointAt(0)?.toString(16), isName(one)]).toEqual([
        one.codePointAt(0)?.toString(16),
        false,
      ]);
  });

  it('is cut at 120 characters, none of them in half, and blanks stand for line ends', () => {
    expect(cleanName('🧱'.repeat(121))).toBe('🧱'.repeat(120));
    expect(cleanName('a\t\n\r\nb\u2028c\u2029d')).toBe('a b c d');
    expect(cleanName('a\u0007b\u202ec\u2069d\u2066e\u202af')).toBe('abcdef');
  });

  it('that was typed or pasted can always be kept once cleaned, and a good one stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(isName(cleanName(text))).toBe(true);
        if (isName(text)) expect(cleanName(text)).toBe(text);
      }),
      { numRuns: onTrial(rounds(500, 2000), 20) },
    );
    expect(cleanName('Front\r\nsteps \u202etxt\ud800')).toBe('Front steps txt');
    expect(isName('\u05e7\u05d9\u05e8 \u{1f469}\u200d\u{1f527}')).toBe(true);
  });
});
