import { describe, expect, it } from 'vitest';
import { contentWritten, wordsWritten, type Written } from '../helpers/texts';

const all = [...wordsWritten(), ...contentWritten()];
const where = (pattern: RegExp, texts: readonly Written[] = all) =>
  texts.flatMap(({ file, text }) => {
    const found = pattern.exec(text);
    return found ? [`${file}: ${text.slice(Math.max(0, found.index - 30), found.index + 50)}`] : [];
  });

/** One word for one thing: the house's, and what it is not called beside it. */
interface Pair {
  readonly house: string;
  readonly never: RegExp;
  /** Where the other word has to stand: it is explained there, or somebody else's title is quoted. */
  readonly but?: RegExp;
}
const pairs: readonly Pair[] = [
  { house: 'broken on top', never: /\bfractured\b/i },
  { house: 'not sure', never: /\bunsure\b|\bnot certain\b/i },
  { house: 'breaker', never: /jackhammer/i, but: /safety\/(silica|tools)\.ts/ },
  { house: 'needle scaler', never: /needle gun/i },
  { house: 'needle scaling', never: /needle-scaling/i },
  { house: 'shotblasting', never: /shot[- ]blast/i },
  {
    house: 'abrasive blasting',
    never: /grit[- ]blasting|sand-?blasting/i,
  },
  { house: 'pressure washing', never: /power[- ]?wash/i },
  {
    house: 'water jetting',
    never: /hydro-?demolition|hydro-?blast/i,
    but: /glossary|\/water-jetting\.md|\/bruised-skin/,
  },
  { house: 'thin paint', never: /\bthin films?\b(?! of)(?!, up)/i, but: /glossary/ },
  { house: 'salt bloom', never: /efflorescence/i },
  { house: 'hollow', never: /delaminat/i, but: /glossary|\/sounding\.md/ },
  { house: 'bar', never: /\brebars?\b/i, but: /glossary/ },
  { house: 'data sheet', never: /\bdatasheets?\b/i },
  { house: 'ear protection', never: /hearing protection|ear defenders/i },
  { house: 'owner', never: /\bhome ?owners?\b/i },
  { house: 'laboratory', never: /\blabs?\b/i },
  { house: 'Job without a name', never: /unnamed job/i },
  { house: 'open now', never: /\bin hand\b/, but: /\/choosing-a-finish\.md/ },
  { house: 'crew lead', never: /\bforem[ae]n\b/i, but: /\/when-to-call-an-engineer\.md/ },
];

describe('one word for one thing', () => {
  it.each(pairs)('$house', ({ never, but }) => {
    expect(where(never, but ? all.filter(({ file }) => !but.test(file)) : all)).toEqual([]);
  });
});

/** Phrases that told readers little and were cut: none comes back. */
const cut: readonly RegExp[] = [
  /methods? still standing/i,
  /\bit comes down to\b/i,
  /\bdo the border\b/i,
  /^Go on\b/,
  /\bwould do it: would do\b/i,
  /% of the possibilities|per cent of the possibilities/i,
];

describe('what was cut', () => {
  it.each(cut)('%s does not come back', (phrase) => {
    expect(where(phrase)).toEqual([]);
  });
});

describe('sentences', () => {
  it('begin with a capital, or a figure, wherever one ends before them', () => {
    // An abbreviation ends no sentence, nor does the stop of a number or of an address.
    const small = /(?<!\b(?:e\.g|i\.e|etc|approx|ca|vs|No))[.?!] +[a-z]/;
    expect(where(small)).toEqual([]);
  });

  it('that stand alone begin with a capital too', () => {
    // What speaks against a method follows its name and a colon.
    const alone = wordsWritten().filter(
      ({ file, text }) => !/rejections\.ts/.test(file) && /^[a-z][^.?!]* [^.?!]*[.?!]$/.test(text),
    );
    expect(alone.map(({ file, text }) => `${file}: ${text}`)).toEqual([]);
  });
});
