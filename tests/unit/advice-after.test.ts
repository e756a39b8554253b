import { describe, expect, it } from 'vitest';
import { tooRough } from '$lib/advice/steps/after';
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
  ])('%s', (_, zone, site, expected) => {
    expect(told('blast-clean', zone, site)).toEqual(expected);
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

// Common practice, no source: trade page 6, what wants it damp is washed, what wants it dry is not.
describe('the dust', () => {
  const vacuum: readonly Case[] = [
    ['goes, and is rinsed after', {}, {}, ['dust-off']],
    ['twice, where nothing is washed', smooth, {}, ['dust-off', 'vacuum-twice-no-wash']],
    [
      'a coating is kept apart',
      { ...smooth, contamination: ['thin-coating'] },
      {},
      ['dust-off', 'vacuum-twice-no-wash', 'coating-debris-apart'],
    ],
    [
      'bloom is brushed off where it has to stay dry',
      { ...smooth, contamination: ['salt-bloom'] },
      {},
      ['dust-off', 'vacuum-twice-no-wash', 'salt-bloom-brushed'],
    ],
    ['and washed off where it may be wet', { contamination: ['salt-bloom'] }, {}, ['dust-off']],
    ['washing leaves none', washed, {}, null],
    ['and takes the bloom along', { ...washed, contamination: ['salt-bloom'] }, {}, null],
    ['but a groove cut after it does', { ...washed, cracks: 'crumbling' }, {}, ['dust-off']],
    ['as does a bar that is freed', { ...washed, steel: 'exposed' }, {}, ['dust-off']],
    [
      'salt at a bar is rinsed out, whatever comes',
      { ...spall, steel: 'exposed', finish: 'build-coat' },
      { salts: 'de-icing' },
      ['dust-off'],
    ],
    [
      'without a fill it is not',
      { ...smooth, steel: 'rust-stain' },
      { salts: 'de-icing' },
      ['dust-off', 'vacuum-twice-no-wash'],
    ],
  ];
  it.each(vacuum)('%s', (_, zone, site, expected) => {
    expect(told('vacuum', zone, site)).toEqual(expected);
  });

  const rinse = ['wash-everything', 'slurry-caught'];
  const salt = 'salts-at-steel salts=de-icing';
  it.each<Case>([
    ['rinsed off before cement', {}, {}, rinse],
    ['not before a film', smooth, {}, null],
    ['not after a wash', washed, {}, null],
    ['salt at rust', { steel: 'rust-stain' }, { salts: 'de-icing' }, [salt, ...rinse]],
    ['salt where no steel shows', {}, { salts: 'de-icing' }, rinse],
    ['rust without salt', { steel: 'rust-stain' }, {}, rinse],
    [
      'salt at a bar in a hole that is filled under a film',
      { ...spall, steel: 'exposed', finish: 'thin-film' },
      { salts: 'de-icing' },
      [salt, ...rinse],
    ],
    ['a sheet that wants cement dry', { makerMoisture: 'dry' }, {}, null],
    ['a sheet that wants a coat damp', { ...smooth, makerMoisture: 'damp' }, {}, rinse],
    ['bloom, before cement', { contamination: ['salt-bloom'] }, {}, [...rinse, 'salt-bloom-off']],
    ['bloom, before a film', { ...smooth, contamination: ['salt-bloom'] }, {}, null],
    [
      'an undecided finish is washed',
      { depth: 'under-3', looseness: 'flaking', finish: 'undecided' },
      {},
      rinse,
    ],
  ])('the last rinse: %s', (_, zone, site, expected) => {
    expect(told('final-wash', zone, site)).toEqual(expected);
  });

  const clean = ['does-the-removal depth=film looseness=tight', 'slurry-caught'];
  it.each<Case>([
    [
      'is the method: nobody washes twice',
      { makerProfile: 3 },
      {},
      ['sound-before-layer', ...clean],
    ],
    [
      'it takes the bloom',
      { ...washed, contamination: ['salt-bloom'] },
      {},
      [...clean, 'salt-bloom-off'],
    ],
    [
      'and the dust of a crack',
      { makerProfile: 3, cracks: 'crumbling' },
      {},
      [...clean, 'wash-everything'],
    ],
    [
      'and the salt at rust',
      { makerProfile: 3, steel: 'rust-stain' },
      { salts: 'sea-or-pool' },
      [...clean, 'salts-at-steel salts=sea-or-pool'],
    ],
    ['shot is no wash', {}, {}, null],
  ])('the wash that %s', (_, zone, site, expected) => {
    expect(told('pressure-wash', zone, site)).toEqual(expected);
  });
});

// Common practice, no source: too rough is filled, with a cure of its own.
describe('what is too rough for the finish', () => {
  it.each<[string, ZoneChange, { leaves: number; needs: number } | null, readonly string[] | null]>(
    [
      [
        'a hole under a film',
        { ...spall, finish: 'thin-film' },
        { leaves: 7, needs: 3 },
        ['hole-filled-first', 'damp-before-fill'],
      ],
      [
        'a scarified floor under a film',
        { ...scale, finish: 'thin-film' },
        { leaves: 4, needs: 3 },
        ['too-rough-fill-first leaves=4 needs=3', 'damp-before-fill'],
      ],
      [
        'washed pits under a film',
        { texture: 'pitted', finish: 'thin-film' },
        { leaves: 5, needs: 3 },
        ['too-rough-fill-first leaves=5 needs=3', 'damp-before-fill'],
      ],
      ['a sealer follows the pits', { texture: 'pitted', finish: 'sealer' }, null, null],
      ['just rough enough', { ...scale, makerProfile: 4 }, null, null],
      ['a machine is set smoother', { finish: 'thin-film', texture: 'smooth' }, null, null],
      ['nobody knows before it is decided', { ...spall, finish: 'undecided' }, null, null],
    ],
  )('%s', (_, zone, rough, fill) => {
    const situation = situationOn(zone);
    expect(tooRough(situation)).toEqual(rough);
    expect(toldOf('fill-level', situation)).toEqual(fill);
    expect(toldOf('fill-cure', situation)).toEqual(fill && ['fill-cures-first']);
    expect(toldOf('check-ready', situation)).toEqual(['prove-it']);
  });
});
