import { describe, expect, it } from 'vitest';
import { ruleIds, type RuleId } from '$lib/advice/rules';
import type { Reason } from '$lib/advice/types';
import { ruleSentences } from '$words/rules';
import { choiceSentence } from '$words/rules/choice';
import { amount, depthSaid, named, namedAll, saw } from '$words/rules/facts';
import { holdSentence } from '$words/rules/holds';
import { possibleHoldSentence, possibleHoldSentences } from '$words/rules/possible-holds';
import { warningNames } from '$words/rules/warnings';
import { formatter } from '../helpers/plain-formatter';

const say = formatter('metric');
const told = (rule: RuleId, facts: Reason['facts'] = {}, more: Partial<Reason> = {}) =>
  ruleSentences[rule]({ rule, facts, ...more }, say);

it('every rule has something to say, whatever it saw', () => {
  for (const rule of ruleIds) expect(told(rule).length, rule).toBeGreaterThan(14);
  for (const rule of Object.keys(possibleHoldSentences) as RuleId[])
    expect(possibleHoldSentence({ rule }, say), rule).toMatch(/^If .{20,}\.$/);
  for (const name of Object.values(warningNames)) expect(name.length).toBeGreaterThan(9);
  expect(choiceSentence({ rule: 'form-to-fill' }, say)).toBe(told('form-to-fill'));
  expect(choiceSentence({ rule: 'through' }, say)).toBe(told('through'));
  expect(holdSentence({ rule: 'through' }, say)).toBe(told('through'));
  expect(holdSentence({ rule: 'no-method-left' }, say)).toBe(told('no-method-left'));
});

describe('what a rule saw', () => {
  const reason: Reason = {
    rule: 'meets-all',
    facts: { one: 'b', more: ['b', 'z', 'a'], deep: 12.5, depth: '6-to-20' },
  };
  const names = { a: 'an apple', b: 'a bean' };
  it('is told by its names, or left out where it is missing or of another kind', () => {
    expect([
      named(reason, 'one', names),
      named(reason, 'none', names),
      named(reason, 'deep', names),
    ]).toEqual([...['a bean', '', '']]);
    expect([named(reason, 'depth', names), named({ rule: 'meets-all' }, 'one', names)]).toEqual([
      '',
      '',
    ]);
    expect(namedAll(reason, 'more', names)).toEqual(['a bean', 'an apple']);
    expect([
      namedAll(reason, 'one', names),
      namedAll(reason, 'deep', names),
      namedAll({ rule: 'meets-all' }, 'one', names),
    ]).toEqual([...[['a bean'], [], []]]);
    expect([
      amount(reason, 'deep'),
      amount(reason, 'one'),
      amount({ rule: 'meets-all' }, 'deep'),
    ]).toEqual([...[12.5, null, null]]);
    expect([
      saw(reason, 'one', 'b'),
      saw(reason, 'one', 'a'),
      saw({ rule: 'meets-all' }, 'one', 'b'),
    ]).toEqual([...[true, false, false]]);
  });
  it('of a depth is the measure, or the band', () => {
    expect(depthSaid(reason, say)).toMatch(/^6(\.4)? to 20 mm deep$/);
    expect(depthSaid({ ...reason, facts: { mm: 30, depth: '6-to-20' } }, say)).toBe('30 mm deep');
  });
});

// The sentence that fits the case, and not that of the other case. Common practice, no source.
describe('why this method, why not another', () => {
  it.each<[RuleId, Reason['facts'], RegExp]>([
    [
      'meets-all',
      { method: 'grind', left: 'yes' },
      /^Grinding is the gentlest method left that does all/,
    ],
    ['meets-all', { method: 'grind' }, /^Grinding is the gentlest method that does all/],
    ['nothing-to-remove', { depth: 'film' }, /^The surface is sound/],
    ['nothing-to-remove', { depth: 'under-3' }, /^The surface is sound/],
    ['nothing-to-remove', { depth: '3-to-6' }, /^The surface is sound/],
    ['nothing-to-remove', { depth: '6-to-20' }, /^The hole has a firm bottom/],
    [
      'skims-to-sound',
      { looseness: 'flaking', mm: 2 },
      /^The flaking concrete is 2 mm deep\. Grinding reaches 3(\.2)? mm/,
    ],
    ['cuts-to-sound', { mm: 5 }, /is 5 mm deep\. This method cuts down to 6(\.4)? mm/],
    ['deep-or-loose-in-depth', { looseness: 'hollow' }, /^A hollow layer has let go/],
    ['deep-or-loose-in-depth', { looseness: 'rotten' }, /^Rotten in depth/],
    [
      'deep-or-loose-in-depth',
      { looseness: 'fractured', mm: 30 },
      /^What is loose here is 30 mm deep\. Breaking out/,
    ],
    [
      'off-floor-blast',
      { small: 'yes', mm: 5 },
      /5 mm deep\. .* on less than 1 m² needles are set up sooner/,
    ],
    ['off-floor-blast', { mm: 5 }, /work here, and this method follows any shape\.$/],
    ['hand-tools-here', {}, /smaller than 1 m²\. No machine/],
    ['thin-skin-let-go', {}, /no more than 6(\.4)? mm: on a floor, often for/],
    [
      'bar-leads',
      { rest: 'grind' },
      /along the bar first\. The rest of the zone needs only grinding\.$/,
    ],
    ['bar-leads', {}, /along the bar first\.$/],
    ['leaves-loose', { looseness: 'hollow' }, /^would leave the hollow layer where it is/],
    ['leaves-loose', { looseness: 'powdery' }, /^would leave powdery concrete behind/],
    [
      'past-its-reach',
      { mm: 30, looseness: 'flaking', reach: '3-to-6' },
      /is 30 mm deep, and on flaking concrete this method reaches only 6(\.4)? mm\.$/,
    ],
    [
      'leaves-contaminant',
      { contamination: ['oil', 'growth'] },
      /^would leave oil and the growth on the surface/,
    ],
    [
      'texture-not-sure-enough',
      { leaves: 3, needs: 4 },
      /no rougher than CSP 3, and at least CSP 4 is wanted/,
    ],
    ['texture-not-sure-enough', { leaves: 3 }, /nobody can be sure/],
    ['texture-not-sure-enough', { needs: 3 }, /nobody can be sure/],
    [
      'too-smooth-after',
      { leaves: 2, needs: 4 },
      /too smooth: CSP 2 at the roughest, and the finish needs at least CSP 4/,
    ],
    ['too-smooth-after', { leaves: 2 }, /too smooth for the finish to grip/],
    ['too-smooth-after', { needs: 2 }, /too smooth for the finish to grip/],
    ['too-small-for-machine', {}, /less than 1 m²\.$/],
    [
      'harsher-than-needed',
      { bruises: 'yes', chosen: 'grind' },
      /and harm sound concrete\. Grinding is enough\.$/,
    ],
    ['harsher-than-needed', { chosen: 'grind' }, /and take off sound concrete\. Grinding/],
    ['would-do-too', { method: 'abrasive-blast' }, /does not bruise\. It takes a compressor/],
    ['would-do-too', { method: 'grind' }, /bruises less: as good a choice where one is at hand/],
    ['not-on-this-ladder', { bruises: 'no' }, /throws its dust into the open/],
    ['not-on-this-ladder', {}, /slow by hand and bruises/],
    ['specialist-alternative', { small: 'yes' }, /No specialist crew comes for so little/],
    ['specialist-alternative', {}, /ask about it for a large area/],
    [
      'failed-on-patch',
      { why: ['too-smooth', 'bruised'] },
      /: too smooth; stones torn, the face bruised\.$/,
    ],
    [
      'failed-on-patch',
      { why: ['too-rough', 'still-dusts', 'still-loose'] },
      /: too rough; still dusty; loose pieces stayed\.$/,
    ],
    [
      'failed-on-patch',
      { why: ['stones-pulled-out', 'too-deep', 'over-deep'] },
      /: stones came out whole; too deep in one place; sound concrete taken off\.$/,
    ],
    [
      'harder-than-failed',
      { failed: 'grind', why: ['too-deep'] },
      /harder on the concrete than grinding, .* square: too deep in one place/,
    ],
    [
      'weaker-than-failed',
      { failed: 'grind', why: ['still-loose'] },
      /less than grinding, .* square: loose pieces stayed/,
    ],
    ['deeper-than-wanted', { why: ['still-dusts'] }, /only this was wrong: still dusty/],
    [
      'after-failed-patch',
      { failed: ['grind', 'scarify'], why: 'too-smooth' },
      /^Grinding and scarifying failed on your test square: too smooth/,
    ],
    [
      'stopped-on-patch',
      { why: ['bar-unexpected', 'hollow-below'] },
      /stopped: a bar where none was known; a hollow sound below\. Find/,
    ],
    [
      'stopped-on-patch',
      { why: ['no-sound-base', 'past-partial-depth'] },
      /no sound concrete at the depth .*; too deep for a repair in part\./,
    ],
  ])('%s, %j', (rule, facts, expected) => expect(told(rule, facts)).toMatch(expected));
});

describe('what stands before the work', () => {
  it.each<[RuleId, Reason['facts'], RegExp]>([
    [
      'structure-before-removal',
      { told: 'yes' },
      /^Something rests on this concrete, .* Call a licensed/,
    ],
    [
      'structure-before-removal',
      { element: 'soffit' },
      /^The work would take concrete out of this soffit, and/,
    ],
    ['structure-before-removal', {}, /concrete out of this part, and/],
    [
      'rust-with-salts',
      { salts: 'de-icing', who: 'engineer' },
      /^Rust shows, and de-icing salt reaches .* carries load: a licensed structural engineer says where/,
    ],
    [
      'rust-with-salts',
      {},
      /^Rust shows, and salt reaches .* open one spot, .* chloride measured\.$/,
    ],
    ['rust-at-crack', { who: 'engineer' }, /carries load: call a licensed structural engineer\.$/],
    ['rust-at-crack', {}, /Open the crack to the bar, or ask an engineer\.$/],
    [
      'nothing-over-rust',
      { who: 'engineer' },
      /^(?!.*freed).* carries load: a licensed structural engineer says where/,
    ],
    ['nothing-over-rust', {}, /a bar is freed\.$/],
    ['tendons-before-depth', {}, /may reach 6 mm deep until/],
    ['full-depth', { half: 75 }, /through half of the thickness or more, which is 75 mm here\./],
    ['full-depth', {}, /through half of the thickness or more\. A repair/],
    [
      'thickness-decides',
      {},
      /Where the finished hole reaches half of the thickness.*Past a third a patch is doubtful/,
    ],
    [
      'answers-differ',
      { methods: ['grind', 'scarify'] },
      /open\. It may come to grinding or scarifying\. Do the first test/,
    ],
    ['answers-differ', { methods: ['grind'] }, /more than one outcome open\. Do the first test/],
  ])('%s, %j', (rule, facts, expected) => expect(told(rule, facts)).toMatch(expected));

  it('names the limit of one bar or of neighbours', () => {
    const limit = (...figures: NonNullable<Reason['figures']>) =>
      told('bar-section-loss', {}, { figures });
    expect(limit('bar.loss-neighbours')).toMatch(/more than 20% of bars that lie side by side/);
    expect(limit('bar.loss-one')).toMatch(/more than 25% of a bar\./);
    expect(told('bar-section-loss')).toMatch(/25% of a bar/);
  });
  it('only may stand: the depth is told where it is known', () => {
    const may = (facts: NonNullable<Reason['facts']>) =>
      possibleHoldSentence({ rule: 'full-depth', facts }, say);
    expect(may({ half: 75 })).toMatch(/half of the thickness or more \(75 mm here\), this part/);
    expect(may({})).toMatch(/half of the thickness or more, this part/);
  });
});
