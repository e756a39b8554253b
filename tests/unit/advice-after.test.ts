import { describe, expect, it } from 'vitest';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

const told = (step: StepId, zone: ZoneChange, site: SiteChange = {}) =>
  toldOf(step, situationOn(zone, site));
type Case = [string, ZoneChange, SiteChange, readonly string[] | null];

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const onWall: SiteChange = { element: 'wall' };
const smooth: ZoneChange = { texture: 'smooth', finish: 'thin-film' };
const washed: ZoneChange = { finish: 'sealer' };

// Common practice, no source.
describe('what is sounded again', () => {
  it.each<[string, ZoneChange, boolean]>([
    ['a hole', spall, true],
    ['the concrete round a freed bar', { steel: 'exposed' }, true],
    ['a chased crack', { cracks: 'crumbling' }, true],
    ['a groove is no hammering', { cracks: 'open' }, false],
    ['a thin layer, by the way: its own step says so', { ...scale, looseness: 'hollow' }, false],
    ['sound concrete is not', {}, false],
  ])('%s', (_, zone, again) => {
    expect(told('re-sound', zone)).toEqual(again ? ['sound-again'] : null);
  });
  it('a jetted face', () => {
    const jetted = situationOn(scale, {}, { method: 'water-jet', rest: 'water-jet' });
    expect(toldOf('re-sound', jetted)).toEqual(['sound-again']);
  });
});

// The bruised skin: ACI 364.7T for its depth; that it goes: trade page 3, common practice, no source.
describe('the bruised skin', () => {
  const should = 'bruised-skin-should-go depth.bruise';
  const must = 'bruised-skin-must-go depth.bruise';
  const coated: ZoneChange = { contamination: ['rubbery-coating'] };
  it.each<Case>([
    ['of a hole', spall, {}, [should, 'skin-by-grit-or-water']],
    [
      'must go where it freezes often',
      spall,
      { freezeThaw: 'often' },
      [must, 'skin-by-grit-or-water'],
    ],
    [
      'under a film the hole is filled first, and may be wet',
      { ...spall, finish: 'thin-film' },
      {},
      [should, 'skin-by-grit-or-water'],
    ],
    ['of a scarified floor: shot', scale, {}, [should, 'skin-by-shotblaster']],
    [
      'of a chased crack in it: shot cannot get there',
      { ...scale, cracks: 'hairline', steel: 'rust-stain' },
      {},
      [should, 'skin-by-shotblaster', 'skin-by-grit-or-water'],
    ],
    ['of a scarified floor under a sealer may stay', { ...scale, finish: 'sealer' }, {}, null],
    [
      'of a chased crack under a sealer may not: it is filled',
      { ...washed, cracks: 'crumbling' },
      {},
      [should, 'skin-by-grit'],
    ],
    ['nor that of a hole', { ...spall, finish: 'sealer' }, {}, [should, 'skin-by-grit-or-water']],
    [
      'nor that round a bar',
      { ...washed, steel: 'exposed' },
      {},
      [should, 'skin-by-grit-or-water'],
    ],
    [
      'of needles under a coat that wants it dry',
      { ...scale, area: 0.5, finish: 'build-coat' },
      onWall,
      [should, 'skin-by-grit'],
    ],
    [
      'of needles under an overlay',
      { ...scale, area: 0.5, finish: 'overlay', makerProfile: 3 },
      onWall,
      [should, 'skin-by-grit-or-water'],
    ],
    ['of needles under a sealer may stay', { ...scale, area: 0.5, finish: 'sealer' }, onWall, null],
    ['shot leaves none', {}, {}, null],
    [
      'but the bush hammer along the edge does',
      { border: 7 },
      {},
      [should, 'skin-by-grit-or-water'],
    ],
    [
      'under a coat as well',
      { border: 7, texture: 'smooth', finish: 'build-coat' },
      {},
      [should, 'skin-by-grit'],
    ],
    ['a grinder along the edge leaves none', { ...smooth, border: 7 }, {}, null],
    [
      'under a sealer that of the edge may stay',
      { border: 7, ...scale, texture: 'pitted', finish: 'sealer' },
      {},
      null,
    ],
    ['a routed crack is not struck', { ...washed, cracks: 'open' }, {}, null],
    [
      'pits under a coating are shotblasted',
      { ...coated, texture: 'pitted' },
      {},
      ['pits-under-coating', should, 'skin-by-shotblaster'],
    ],
    [
      'so is what a sheet wants rougher',
      { ...coated, makerProfile: 8 },
      {},
      ['profile-under-coating', should, 'skin-by-shotblaster'],
    ],
    ['a coating on an even floor is not', coated, {}, [should, 'skin-by-shotblaster']],
    ['on a wall nothing is scarified', { ...coated, texture: 'pitted' }, onWall, null],
    [
      'a hole through a coating over pits leaves no pits',
      { ...spall, ...coated, texture: 'pitted' },
      {},
      [should, 'skin-by-grit-or-water'],
    ],
    [
      'nor a face that is too smooth',
      { ...spall, ...coated, makerProfile: 8 },
      {},
      [should, 'skin-by-grit-or-water'],
    ],
    ['shot leaves what a sheet wants rougher', { makerProfile: 8 }, {}, null],
  ])('%s', (_, zone, site, expected) => {
    expect(told('blast-clean', zone, site)).toEqual(expected);
  });
  it('of the hammer that frees a bar, where the rest is jetted', () => {
    const jetted = { method: 'water-jet', rest: 'water-jet' } as const;
    const situation = situationOn({ ...washed, steel: 'exposed' }, {}, jetted);
    expect(toldOf('blast-clean', situation)).toEqual([should, 'skin-by-grit-or-water']);
  });

  // Trade page 3: where frost is rare and the area small, thorough washing will do. No source.
  const small = valueOf('blast.small-area');
  const wash = 'bruised-skin-wash-will-do depth.bruise blast.small-area';
  it.each<[string, ZoneChange, SiteChange, boolean]>([
    ['of a small hole where frost is rare', { area: small }, { freezeThaw: 'rare' }, true],
    ['a larger one is blasted', { area: small + 0.1 }, { freezeThaw: 'rare' }, false],
    ['so is an area nobody knows', { area: 'unknown' }, { freezeThaw: 'rare' }, false],
    ['and any where there is some frost', { area: small }, { freezeThaw: 'some' }, false],
    [
      'and what has to stay dry',
      { area: small, finish: 'build-coat' },
      { freezeThaw: 'rare' },
      false,
    ],
  ])('washing will do: %s', (_, zone, site, does) => {
    expect(told('blast-clean', { ...spall, ...zone }, site) === null).toBe(does);
    expect(told('final-wash', { ...spall, ...zone }, site)?.includes(wash) ?? false).toBe(does);
  });
  it('and it washes a small scarified floor, and not what was not struck', () => {
    const rare: SiteChange = { freezeThaw: 'rare' };
    expect(told('blast-clean', { ...scale, area: small }, rare)).toBeNull();
    expect(told('final-wash', { area: small, ...onWall }, rare)).not.toContain(wash);
    const byWash = { area: small, cracks: 'crumbling', makerProfile: 2 } as const;
    expect(told('pressure-wash', byWash, rare)).toContain(wash);
    expect(told('final-wash', byWash, rare) ?? []).not.toContain(wash);
  });
});
