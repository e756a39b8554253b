import { describe, expect, it } from 'vitest';
import { tooRough } from '$lib/advice/steps/after';
import type { StepId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

const told = (step: StepId, zone: ZoneChange, site: SiteChange = {}) =>
  toldOf(step, situationOn(zone, site));
type Case = [string, ZoneChange, SiteChange, readonly string[] | null];

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const smooth: ZoneChange = { texture: 'smooth', finish: 'thin-film' };
const washed: ZoneChange = { finish: 'sealer' };

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
    ['nor before cement, where washing was all', { makerProfile: 3 }, {}, null],
    [
      'nor after a chased crack: that is washed under pressure',
      { makerProfile: 3, cracks: 'crumbling' },
      {},
      null,
    ],
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
      ['just rough enough', { ...spall, finish: 'sealer', makerProfile: 7 }, null, null],
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
