import { describe, expect, it } from 'vitest';
import { authored, authoredFaults } from '$lib/practice/authored';
import type { AuthoredCase } from '$lib/practice/case';

const [moss] = authored as readonly [AuthoredCase];
/** What is wrong with the first case once it is spoilt. */
const faults = (change: object) =>
  authoredFaults([{ ...moss, ...change } as AuthoredCase]).map((line) =>
    line.replace(/^hall-forecourt-moss: /, ''),
  );
const site = (change: object) => ({ site: { ...moss.site, ...change } });
const zone = (change: object) => ({ zone: { ...moss.zone, ...change } });
const intended = (change: object) => ({ intended: { ...moss.intended, ...change } });
const told = (change: object) => ({ told: [{ ...moss.told[0], ...change }] });
const { texture, ...untextured } = moss.zone;

describe('a case as it is written', () => {
  it('is the moss on the forecourt, without a fault', () => {
    expect([moss.id, texture, faults({})]).toEqual(['hall-forecourt-moss', 'sandy', []]);
    // The grade of a sheet stands as its number, a measured depth beside its band.
    expect(faults(zone({ makerProfile: 1, depthMm: 0.5 }))).toEqual([]);
  });

  it.each<[string, object, string[]]>([
    ['a word that is no choice', zone({ texture: 'rough' }), ['texture: unknown value "rough"']],
    ['a number for a word', zone({ looseness: 3 }), ['looseness: unknown value 3']],
    ['a word for a number', zone({ area: 'large' }), ['area: unknown value "large"']],
    ['a question that nobody asks', zone({ colour: 'grey' }), ['colour: unknown value "grey"']],
    [
      'one wrong among several',
      site({ warnings: ['map-cracking', 'ghosts'] }),
      ['warnings: unknown value ["map-cracking","ghosts"]'],
    ],
    ['a grade that no sheet has', zone({ makerProfile: 11 }), ['makerProfile: unknown value 11']],
    ['a question left out', { zone: untextured }, ['texture: missing']],
    ['a sense nobody has', told({ by: 'smell' }), ['told: unknown sense "smell"']],
    ['a fact about nothing', told({ about: ['area', 'luck'] }), ['told: unknown "luck"']],
    ['a bare number', told({ text: 'It is 5 mm.' }), ['told: a bare number in "It is 5 mm."']],
    ['a call nobody makes', intended({ call: 'mayor' }), ['call: unknown "mayor"']],
    ['a reason there is not', intended({ reason: 'luck' }), ['reason: unknown "luck"']],
    [
      'a trap with no such method',
      intended({ trap: { method: 'acid', rule: 'leaves-loose' } }),
      ['trap: unknown "acid" or "leaves-loose"'],
    ],
    [
      'a trap with no such rule',
      intended({ trap: { method: 'grind', rule: 'luck' } }),
      ['trap: unknown "grind" or "luck"'],
    ],
    ['a field too many', { hint: 'Wash it.' }, ['unknown field "hint"']],
    [
      'no word of a senior',
      { senior: undefined },
      ['senior: expected what somebody long in the trade would do, and why'],
    ],
    [
      'hardly a word of a senior',
      { senior: 'x'.repeat(39) },
      ['senior: expected what somebody long in the trade would do, and why'],
    ],
  ])('is refused for %s', (_, change, lines) => {
    expect(faults(change)).toEqual(lines);
  });

  it('takes forty letters of a senior, and a thickness that nobody knows', () => {
    expect(faults({ senior: 'x'.repeat(40) })).toEqual([]);
    expect(faults(site({ thickness: 'unknown' }))).toEqual([]);
  });

  it.each(['Two words', 'a1-b', 'ab', '-moss', `x${'a'.repeat(40)}`, 'Moss', ' moss'])(
    'has an id of small letters and dashes, not "%s"',
    (id) => {
      expect(authoredFaults([{ ...moss, id }])).toEqual([
        `${id}: an id of lower-case letters and dashes`,
      ]);
    },
  );
  it('has an id of three to forty letters that no other has', () => {
    const named = (id: string) => ({ ...moss, id });
    expect(authoredFaults([named('abc'), named(`x${'a'.repeat(39)}`)])).toEqual([]);
    expect(authoredFaults([moss, named('abc'), moss])).toEqual([
      'hall-forecourt-moss: the id is used twice',
    ]);
  });

  it.each<[string, object, string[]]>([
    ['another verdict', intended({ verdict: 'stop' }), ['verdict: meant stop, is prepare']],
    ['another call', intended({ call: 'grind' }), ['call: meant grind, is pressure-wash']],
    ['another reason', intended({ reason: 'through' }), ['reason: through is not given']],
    [
      'another trap',
      intended({ trap: { method: 'grind', rule: 'leaves-loose' } }),
      ['trap: grind falls by harsher-than-needed, not leaves-loose'],
    ],
    [
      'a trap that is the answer',
      intended({ trap: { method: 'pressure-wash', rule: 'leaves-loose' } }),
      ['trap: pressure-wash falls by undefined, not leaves-loose'],
    ],
    [
      'what does not go together',
      site({ setting: 'indoors', freezeThaw: 'some' }),
      ['against: moss does not grow indoors'],
    ],
  ])('is refused where it was meant as %s', (_, change, lines) => {
    expect(faults(change)).toEqual(lines);
  });
  it('may have its reason among those of a step, and no trap', () => {
    const { trap, ...plain } = moss.intended;
    expect(trap?.method).toBe('grind');
    expect(faults({ intended: { ...plain, reason: 'growth-washed-off' } })).toEqual([]);
  });
});
