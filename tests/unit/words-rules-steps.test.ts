import { describe, expect, it } from 'vitest';
import { type RuleId } from '$lib/advice/rules';
import type { Reason } from '$lib/advice/types';
import { ruleSentences } from '$words/rules';
import { formatter } from '../helpers/plain-formatter';

const say = formatter('metric');
const told = (rule: RuleId, facts: Reason['facts'] = {}, more: Partial<Reason> = {}) =>
  ruleSentences[rule]({ rule, facts, ...more }, say);

// The sentence that fits the case, and not that of the other case. Common practice, no source.
describe('how a step is done here', () => {
  it.each<[RuleId, Reason['facts'], RegExp]>([
    ['does-the-removal', { looseness: 'tight' }, /^This cleans and opens the sound concrete/],
    [
      'does-the-removal',
      { looseness: 'flaking', mm: 4 },
      /^This takes off flaking concrete, 4 mm deep\.$/,
    ],
    [
      'coating-comes-off',
      { contamination: ['thin-coating'] },
      /^This takes off the thin coating\. Sound/,
    ],
    [
      'warnings-first',
      { warnings: ['settled-or-rocking', 'holds-something-up', 'tendons-possible'] },
      /: concrete that has sunk or rocks, something that rests on it and steel cables/,
    ],
    [
      'warnings-first',
      { warnings: ['fire-or-chemical', 'map-cracking'] },
      /: fire or chemicals and cracks like a map\.$/,
    ],
    [
      'warnings-first',
      { warnings: ['old-coating-or-adhesive', 'buried-services'] },
      /: an old coating or glue and cables or pipes that may be inside\.$/,
    ],
    ['sound-what-is-under', { deeper: 'break-out' }, /deeper\. Only breaking out clears it\.$/],
    [
      'sound-what-is-under',
      { deeper: 'engineer' },
      /deeper\. Stop there and call a licensed struct/,
    ],
    [
      'sound-what-is-under',
      {},
      /clears it\. Where it carries load, or cables may lie in it, a licensed/,
    ],
    [
      'sound-what-is-under',
      { deeper: 'break-out', lines: 'yes' },
      /clears it\. Have cables and pipes located before anybody breaks deeper\.$/,
    ],
    ['stain-look-beneath', { who: 'crew' }, /open one spot to look\.$/],
    ['stain-look-beneath', { who: 'engineer' }, /a licensed structural engineer says where/],
    ['saw-depth', {}, /^Saw 25 to 51 mm deep, and no deeper/],
    ['saw-depth', { why: 'steel', deepest: 12 }, /too shallow here to saw above it/],
    [
      'saw-depth',
      { why: 'steel', deepest: 13 },
      /^Saw no deeper than 13 mm here, to stay clear of the steel\.$/,
    ],
    [
      'saw-depth',
      { why: 'thickness', deepest: 20 },
      /^Saw no deeper than 20 mm here, a third of the thickness/,
    ],
    [
      'saw-depth',
      { why: 'hole', deepest: 15 },
      /^Saw no deeper than the hole will be: 15 mm at most/,
    ],
    [
      'past-the-damage',
      { frost: 'often' },
      /past the damage you can hear\. Where it freezes often/,
    ],
    ['past-the-damage', {}, /^Set the edge 75 to 100 mm past the damage you can see or hear\.$/],
    ['border-by-grinder', { length: 6 }, /along 6 m of walls and posts\. A hand grinder/],
    ['border-by-bush-hammer', {}, /along walls and posts\. A plain/],
    ['spent-grit-away', { method: 'shotblast' }, /^Used shot .* rusts/],
    ['spent-grit-away', { method: 'abrasive-blast' }, /^Used grit .* off the concrete/],
    [
      'too-rough-fill-first',
      { leaves: 6, needs: 4 },
      /mortar first\. The work leaves at least CSP 6, and the finish takes at most CSP 4\.$/,
    ],
    ['too-rough-fill-first', { leaves: 6 }, /mortar first\.$/],
    ['too-rough-fill-first', { needs: 6 }, /mortar first\.$/],
    ['dry-for-coating', { finish: 'sealer' }, /does not drink a sealer/],
    ['dry-for-coating', { finish: 'build-coat' }, /blister and peel/],
    [
      'depth-past-third',
      { third: 50, surely: 'yes' },
      /hole goes below the top third of the thickness, past 50 mm\. .* reaches half, stop/,
    ],
    ['depth-past-third', {}, /hole may go below the top third of the thickness\. A patch/],
    ['salts-at-steel', { salts: 'sea-or-pool' }, /^Salt from the sea or a pool reaches/],
    ['salts-at-steel', {}, /^Salt reaches/],
    ['bar-clean-may-stay', {}, /more than half of the way round it/],
    [
      'hairline-rout-or-bridge',
      {},
      /Rout a groove at least 6 mm wide and 6 to 25 mm deep, or leave/,
    ],
    ['open-rout-or-chase', {}, /Rout a groove at least 6 mm wide and 6 to 25 mm deep\.$/],
  ])('%s, %j', (rule, facts, expected) => expect(told(rule, facts)).toMatch(expected));

  it('names the figure that the rule names', () => {
    expect(told('past-the-damage', {}, { figures: ['patch.past-damage-frost'] })).toMatch(
      /^Set the edge 100 mm past/,
    );
    expect(told('hammer-for-patch', {}, { figures: ['hammer.large-patch'] })).toMatch(
      /than the 14 kg class/,
    );
    expect(told('hammer-for-patch')).toMatch(/than the 4\.5 to 6\.8 kg class/);
  });
});
