import { describe, expect, it } from 'vitest';
import { demandsOf } from '$lib/advice/demands';
import { methodRules } from '$lib/advice/methods';
import {
  judgeContaminants,
  judgePlace,
  judgeProfile,
  judgeRemoval,
  judgeSkin,
  judgeTexture,
  profileLeft,
} from '$lib/advice/methods/judge';
import { isFloor, isSpot, placeOf } from '$lib/advice/place';
import { choicesOf } from '$lib/answers/questions';
import { rangeOf, valueOf } from '$shared/figures';
import { methodIds, type MethodId } from '$shared/methods';
import { siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

// Trade page 1 and 3 (figures `place.spot`, `place.wide`); common practice, no source.
describe('the place of a zone', () => {
  const [spot, wide] = [valueOf('place.spot'), valueOf('place.wide')];
  it('machines stand on slabs, on the ground or not', () => {
    expect(choicesOf('element').filter(isFloor)).toEqual(['slab', 'suspended-slab']);
  });
  it.each<[Parameters<typeof placeOf>, string]>([
    [['slab', spot, false], 'floor'],
    [['slab', spot - 0.01, false], 'floor-spot'],
    [['slab', 'unknown', false], 'floor'],
    [['wall', spot - 0.01, false], 'off-floor-spot'],
    [['wall', spot, false], 'off-floor'],
    [['wall', wide, false], 'off-floor'],
    [['soffit', wide + 0.1, false], 'off-floor-wide'],
    [['steps', 'unknown', false], 'off-floor'],
    [['slab', 20, true], 'recess'],
    [['wall', 0.5, true], 'recess'],
  ])('%j: %s', (at, place) => {
    expect(placeOf(...at)).toBe(place);
  });
  it('a spot is less than a square metre, as far as anybody knows', () => {
    expect([spot - 0.01, spot, 'unknown' as const].map((area) => isSpot({ area }))).toEqual([
      true,
      false,
      false,
    ]);
  });
});

// Trade page 2 and 3; profiles: ICRI 310.2R (figures `csp.*`).
describe('what each method fails first', () => {
  const shortfall = (method: MethodId, zone: ZoneChange, site: SiteChange = {}) => {
    const found = methodRules[method].shortfall(demandsOf(siteWith(site), zoneWith(zone)));
    return found && `${found.demand}: ${found.rule}`;
  };
  const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
  const thick: ZoneChange = { contamination: ['thick-coating'] };
  const onWall: SiteChange = { element: 'wall' };
  it.each<[MethodId, ZoneChange, SiteChange, string | null]>([
    ['pressure-wash', { contamination: ['oil'] }, {}, 'contaminant: washing-spreads-oil'],
    ['pressure-wash', thick, onWall, 'contaminant: washing-after-stripping'],
    ['grind', { ...scale }, onWall, 'place: too-large-by-hand'],
    ['grind', { ...scale, ...thick }, {}, 'removal: past-its-reach'],
    ['grind', thick, {}, 'contaminant: glazes-coating'],
    ['shotblast', thick, {}, 'contaminant: shot-bounces'],
    ['shotblast', { ...thick, area: 0.5 }, {}, 'place: too-small-for-machine'],
    ['scarify', { ...thick, texture: 'pitted' }, {}, null],
    ['scarify', { texture: 'pitted' }, {}, 'texture: rides-over-pits'],
    ['break-out', { ...scale, ...thick, depth: 'over-50', makerProfile: 10 }, onWall, null],
    ['water-jet', { ...scale, ...thick, depth: 'over-50', makerProfile: 10 }, onWall, null],
  ])('%s, %o %o: %s', (method, zone, site, expected) => {
    expect(shortfall(method, zone, site)).toBe(expected);
  });
});

describe('what each method fails', () => {
  const asks = (zone: ZoneChange, site: SiteChange = {}) =>
    demandsOf(siteWith(site), zoneWith(zone));
  it('a machine is set, so its roughest counts; a found texture is guessed at, so its smoothest', () => {
    expect(profileLeft('pressure-wash', { texture: 'pitted' })).toEqual(
      rangeOf('csp.found.pitted'),
    );
    expect(profileLeft('grind', { texture: 'pitted' })).toEqual(rangeOf('csp.grind'));
    const [least] = rangeOf('csp.found.sandy');
    const [, most] = rangeOf('csp.grind');
    expect(judgeProfile('pressure-wash', asks({ makerProfile: least }))).toBeNull();
    expect(judgeProfile('pressure-wash', asks({ makerProfile: least + 1 }))).toEqual({
      demand: 'profile',
      rule: 'texture-not-sure-enough',
      facts: { leaves: least, needs: least + 1 },
      figures: ['csp.found.sandy'],
    });
    expect(judgeProfile('grind', asks({ makerProfile: most }))).toBeNull();
    expect(judgeProfile('grind', asks({ makerProfile: most + 1 }))).toEqual({
      demand: 'profile',
      rule: 'too-smooth-after',
      facts: { leaves: most, needs: most + 1 },
      figures: ['csp.grind'],
    });
    expect(judgeProfile('grind', asks({ finish: 'undecided' }))).toBeNull();
  });
  it.each<
    [
      string,
      (each: (typeof methodIds)[number]) => { demand: string } | null,
      string,
      readonly string[],
    ]
  >([
    [
      'in a hole',
      (each) => judgePlace(each, asks({ depth: '6-to-20', finish: 'rebuild' })),
      'place',
      ['grind', 'scarify', 'shotblast'],
    ],
    [
      'on a spot of a floor',
      (each) => judgePlace(each, asks({ area: 0.5 })),
      'place',
      ['scarify', 'shotblast'],
    ],
    ['on a floor', (each) => judgePlace(each, asks({})), 'place', []],
    [
      'on a wall',
      (each) => judgePlace(each, asks({ area: 5 }, { element: 'wall' })),
      'place',
      ['scarify', 'shotblast'],
    ],
    [
      'on a wide wall',
      (each) => judgePlace(each, asks({}, { element: 'wall' })),
      'place',
      ['grind', 'scarify', 'shotblast', 'needle-scale'],
    ],
    [
      'tight, however deep',
      (each) => judgeRemoval(each, asks({ depth: 'over-50' })),
      'removal',
      [],
    ],
    [
      'hollow right through',
      (each) => judgeRemoval(each, asks({ depth: 'through', looseness: 'hollow' })),
      'removal',
      methodIds.filter((id) => id !== 'break-out' && id !== 'water-jet'),
    ],
    [
      'a thick coating',
      (each) => judgeContaminants(each, asks({ contamination: ['growth', 'thick-coating'] })),
      'contaminant',
      ['pressure-wash', 'grind', 'abrasive-blast', 'shotblast'],
    ],
    [
      'pits',
      (each) => judgeTexture(each, asks({ texture: 'pitted' })),
      'texture',
      ['grind', 'scarify'],
    ],
    ['no pits', (each) => judgeTexture(each, asks({})), 'texture', []],
    [
      'a closed skin',
      (each) => judgeSkin(each, asks({ texture: 'smooth' })),
      'skin',
      ['pressure-wash'],
    ],
    ['no skin', (each) => judgeSkin(each, asks({})), 'skin', []],
  ])('%s', (_, judge, demand, out) => {
    const failing = methodIds.filter((id) => judge(id) !== null);
    expect([...failing].sort()).toEqual([...out].sort());
    for (const id of failing) expect(judge(id)?.demand).toBe(demand);
  });
});
