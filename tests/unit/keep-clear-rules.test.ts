import { describe, expect, it } from 'vitest';
import { approachTo } from '$lib/advice/approach';
import { approachFor } from '$lib/advice/approach-asked';
import { goesOverAll } from '$lib/advice/hidden-lines';
import { calledAtOnce, isDoneThere, keepClear } from '$lib/advice/keep-clear';
import { holdRules, trialRules, type RuleId } from '$lib/advice/rules';
import { keepsOffPart } from '$lib/advice/same-part';
import { halfEdges, stopsFrom } from '$lib/advice/stops-from';
import type { Hold, TestId } from '$lib/advice/types';
import type { SiteAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import { questionIds } from '$lib/answers/questions';

/** Which finding keeps people away, rule by rule. Common practice, no published source. */
const on = (...element: string[]) => ({ element }) as unknown as SiteAnswers;
const hold = (rule: string, who: Hold['who'] = 'engineer'): Hold => ({
  rule: rule as RuleId,
  verdict: 'find-out-first',
  who,
});
const none = { holds: [], possibleHolds: [] };
const fails = [
  'structure-before-removal',
  'bar-section-loss',
  'fire-or-chemical',
  'settled-or-rocking',
  'full-depth',
  'through',
  'hollow-unmeasured',
  'same-part-in-doubt',
  'rust-with-salts',
  'rust-at-crack',
  'nothing-over-rust',
];

describe('what keeps people away', () => {
  it.each([...holdRules, ...trialRules])('%s', (rule) => {
    const expected = fails.includes(rule);
    for (const advice of [
      { ...none, holds: [hold(rule)] },
      { ...none, possibleHolds: [hold(rule)] },
    ]) {
      const hangs = expected || rule === 'moving-crack';
      expect(keepClear(on('soffit'), advice)).toBe(hangs ? 'keep-from-under' : null);
      expect(keepClear(on('slab', 'soffit'), advice)).toBe(hangs ? 'keep-from-under' : null);
      expect(keepClear(on('wall'), advice)).toBe(expected ? 'keep-off' : null);
      expect(keepClear(on('slab'), advice)).toBeNull();
    }
  });
  it('nothing is known of a job just begun', () => {
    const advice = { ...none, holds: [hold('full-depth')] };
    expect(keepClear({}, advice)).toBeNull();
    expect(keepsOffPart({}, {}, advice)).toBeNull();
  });
  it('calls the engineer where one is named, and only where people are kept away', () => {
    const held = (...holds: Hold[]) => calledAtOnce(on('soffit'), { ...none, holds });
    expect(held(hold('through'))).toBe('engineer');
    expect(held(hold('through', 'crew'))).toBeNull();
    expect(held(hold('map-cracking'))).toBeNull();
    expect(calledAtOnce(on('soffit'), { ...none, possibleHolds: [hold('through')] })).toBe(
      'engineer',
    );
    const apart = { holds: [hold('through', 'crew')], possibleHolds: [hold('moving-crack')] };
    expect(calledAtOnce(on('wall'), apart)).toBe('engineer');
  });
  it('keeps off all of a part that may hang, and of a wall for what its bars have lost', () => {
    const lost = { ...none, holds: [hold('bar-section-loss')] };
    const hollow = { ...none, holds: [hold('hollow-unmeasured')] };
    expect(keepsOffPart(on('slab', 'soffit'), {}, hollow)).toBe('surely');
    expect(keepsOffPart(on('slab', 'wall'), {}, lost)).toBe('surely');
    expect(keepsOffPart(on('wall'), {}, hollow)).toBeNull();
    expect(keepsOffPart(on('slab'), {}, lost)).toBeNull();
    expect(keepsOffPart(on('soffit'), {}, none)).toBeNull();
  });
});

describe('what nobody goes near for', () => {
  const afar: readonly TestId[] = ['ask-engineer', 'ask-owner', 'ask-maker', 'local-weather'];
  it('asking, and the weather of the place', () => {
    for (const test of afar) expect(isDoneThere(test), test).toBe(false);
    expect(isDoneThere('hammer-tap')).toBe(true);
  });
  it('a crew knocks and looks at arm’s length, from beside it', () => {
    for (const test of [
      ...(['hammer-tap', 'tap-crack', 'sound-round-stain', 'brush', 'water-drop'] as const),
      ...(['crack-gauge', 'look-at-steel', 'look-close'] as const),
      ...(['measure-thickness', 'measure-area'] as const),
    ])
      expect(approachTo(test, 'keep-from-under', false), test).toBe('from-beside');
  });
  it('every question that is answered by touching it; what is known from afar is asked as ever', () => {
    const afar = ['element', 'setting', 'salts', 'freezeThaw', 'finish', 'makerProfile'];
    for (const question of questionIds.filter((id) => id !== 'warnings'))
      expect(approachFor(question, on('soffit'), true), question).toBe(
        [...afar, 'makerMoisture'].includes(question) ? 'as-usual' : 'leave',
      );
    expect(approachFor('depth', {}, true)).toBe('as-usual');
  });
});

it('machines go over all of a floor, its ducts with it; hammers and saws do not', () => {
  const machines = ['scarify', 'grind', 'needle-scale', 'shotblast', 'edge-work'];
  for (const id of machines) expect(goesOverAll(id), id).toBe(true);
  for (const id of ['saw-cut', 'break-out', 'pressure-wash']) expect(goesOverAll(id)).toBe(false);
});

// Figures `depth.full-limit` (half) and `patch.into-sound` (13 mm), by hand.
describe('the depth from which it stops', () => {
  it('is half the thickness less what is broken out below, or half', () => {
    expect(halfEdges(150)).toEqual([62, 75]);
    expect(halfEdges(20)).toEqual([10]);
    expect(halfEdges(26)).toEqual([13]);
    expect(halfEdges('unknown')).toEqual([]);
  });
  it('is told in its own band alone, and the nearer first', () => {
    const always = () => true;
    expect(stopsFrom(bandOf(62, 150), 150, always)).toBe(62);
    expect(stopsFrom(bandOf(62, 150), 150, (at) => at > 70)).toBe(75);
    expect(stopsFrom('3-to-6', 150, always)).toBeUndefined();
    expect(stopsFrom(bandOf(62, 150), 150, () => false)).toBeUndefined();
    expect(stopsFrom('over-50', 'unknown', always)).toBeUndefined();
  });
});
