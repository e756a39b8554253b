import { describe, expect, it } from 'vitest';
import {
  bearsLoad,
  isBeyondSurface,
  isDeep,
  reachOf,
  verdictOf,
  warnsBeyondSurface,
} from '$lib/advice/holds';
import { carriesLoad } from '$lib/answers/elements';
import type { Hold } from '$lib/advice/types';
import { choicesOf } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const warned = (...warnings: NonNullable<SiteChange['warnings']>): SiteChange => ({ warnings });

// Common practice, no source.
describe('what bears a load', () => {
  it('is what hangs, stands or has a room below', () => {
    const carrying = choicesOf('element').filter(carriesLoad);
    expect(carrying).toEqual(['suspended-steps', 'suspended-slab', 'wall', 'soffit']);
    for (const element of choicesOf('element'))
      expect(bearsLoad(siteWith({ element }))).toBe(carrying.includes(element));
    expect(bearsLoad(siteWith(warned('holds-something-up')))).toBe(true);
    expect(bearsLoad(siteWith(warned('tendons-possible')))).toBe(false);
  });
});

describe('how far the work reaches into the concrete', () => {
  const reach = (zone: ZoneChange, method: MethodId = 'shotblast', spent?: boolean) =>
    reachOf(siteWith(), zoneWith(zone), method, spent);
  const none = { removes: false, chases: false, cuts: false, deep: false, spent: false };
  it.each<[string, ZoneChange, MethodId, Partial<typeof none>]>([
    ['shot takes nothing structural', {}, 'shotblast', {}],
    ['breaking out does', spall, 'break-out', { removes: true, cuts: true, deep: true }],
    ['so does a jet', scale, 'water-jet', { removes: true, cuts: true, deep: true }],
    [
      'a freed bar does',
      { steel: 'corroded' },
      'break-out',
      { removes: true, cuts: true, deep: true },
    ],
    [
      'a groove cuts, and is deep enough for a tendon',
      { cracks: 'open' },
      'shotblast',
      { cuts: true, deep: true },
    ],
    [
      'scale that may be past the limit is deep, and nothing cuts',
      scale,
      'shotblast',
      { deep: true },
    ],
  ])('%s', (_, zone, method, expected) => {
    expect(reach(zone, method)).toEqual({ ...none, ...expected });
  });
  it('knows whether a method is left', () => {
    expect(reach({}, 'shotblast', true).spent).toBe(true);
  });

  // The limit: figure `tendon.depth`, common practice. A band that reaches past it counts as past it.
  const limit = valueOf('tendon.depth');
  it.each<[string, ZoneChange, boolean]>([
    ['loose just to the limit', { ...scale, depthMm: limit }, false],
    ['past it', { ...scale, depthMm: limit + 0.1 }, true],
    ['a band that reaches past it', scale, true],
    ['a band that ends before', { ...scale, depth: 'under-3' }, false],
    ['tight, however deep the hollow', { depth: 'over-50' }, false],
  ])('%s', (_, zone, deep) => {
    expect(isDeep(zoneWith(zone))).toBe(deep);
  });
});

describe('what holds come to', () => {
  const hold = (rule: Hold['rule'], verdict: Hold['verdict']): Hold => ({
    rule,
    verdict,
    who: 'engineer',
  });
  it('the gravest counts', () => {
    expect(verdictOf([])).toBe('prepare');
    expect(verdictOf([hold('map-cracking', 'find-out-first')])).toBe('find-out-first');
    expect(verdictOf([hold('map-cracking', 'find-out-first'), hold('through', 'stop')])).toBe(
      'stop',
    );
  });
  it.each<[Hold['rule'], boolean]>([
    ['fire-or-chemical', true],
    ['settled-or-rocking', true],
    ['full-depth', true],
    ['through', true],
    ['no-method-left', true],
    ['structure-before-removal', false],
    ['tendons-before-depth', false],
    ['moving-crack', false],
    ['bar-section-loss', false],
  ])('a stop for %s leaves no surface method: %s', (rule, beyond) => {
    expect(isBeyondSurface([hold('map-cracking', 'find-out-first'), hold(rule, 'stop')])).toBe(
      beyond,
    );
    expect(isBeyondSurface([hold(rule, 'find-out-first')])).toBe(false);
  });
  it('of warnings, fire and moving ground do by themselves', () => {
    expect(choicesOf('warnings').filter(warnsBeyondSurface)).toEqual([
      'settled-or-rocking',
      'fire-or-chemical',
    ]);
  });
});
