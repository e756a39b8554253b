import { describe, expect, it } from 'vitest';
import { sounds } from '$lib/advice/steps/before';
import type { StepId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

const told = (step: StepId, zone: ZoneChange, site: SiteChange) =>
  toldOf(step, situationOn(zone, site));
type Case = [string, ZoneChange, SiteChange, readonly string[] | null];

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const firmHollow: ZoneChange = { depth: '20-to-50', looseness: 'tight', finish: 'rebuild' };
const onWall: SiteChange = { element: 'wall' };

// Common practice, no source, but for the engine: NIOSH 96-118, neither indoors nor partly enclosed.
describe('the place is made safe first', () => {
  it.each<Case>([
    ['in the open', {}, {}, ['make-safe-first', 'nothing-cut']],
    ['a hole', spall, {}, ['make-safe-first']],
    ['a groove', { cracks: 'open' }, {}, ['make-safe-first']],
    [
      'cables that were found, and a machine goes over them',
      {},
      { warnings: ['buried-services'] },
      ['make-safe-first'],
    ],
    [
      'cables that were found, under a wash',
      { finish: 'sealer' },
      { warnings: ['buried-services'] },
      ['make-safe-first', 'nothing-cut'],
    ],
    [
      'indoors no engine',
      {},
      { setting: 'indoors' },
      ['make-safe-first', 'engine-outside', 'nothing-cut'],
    ],
    [
      'nor under a roof',
      {},
      { setting: 'sheltered' },
      ['make-safe-first', 'engine-outside', 'nothing-cut'],
    ],
  ])('%s', (_, zone, site, expected) => {
    expect(told('make-safe', zone, site)).toEqual(expected);
  });

  // What the work does not touch is nothing to deal with first.
  it.each<[string, ZoneChange, SiteChange['warnings'], string | null]>([
    ['shot takes no prop away', {}, ['holds-something-up'], null],
    ['breaking out does', spall, ['holds-something-up'], 'holds-something-up'],
    ['shot for roughness reaches no tendon', {}, ['tendons-possible'], null],
    [
      'scale that may be past 6 mm does',
      { depth: '3-to-6', looseness: 'flaking' },
      ['tendons-possible'],
      'tendons-possible',
    ],
    ['a groove reaches them', { cracks: 'open' }, ['tendons-possible'], 'tendons-possible'],
    ['shot cuts no cable', {}, ['buried-services'], null],
    ['a groove may', { cracks: 'hairline' }, ['buried-services'], 'buried-services'],
    [
      'an old coating is in the way of all work',
      {},
      ['old-coating-or-adhesive'],
      'old-coating-or-adhesive',
    ],
    [
      'of several, those that are touched',
      {},
      ['map-cracking', 'buried-services', 'settled-or-rocking'],
      'map-cracking+settled-or-rocking',
    ],
  ])('%s', (_, zone, warnings, found) => {
    const expected = found
      ? ['make-safe-first', `warnings-first warnings=${found}`]
      : ['make-safe-first'];
    const said = told('make-safe', zone, { warnings: warnings ?? [] });
    expect(said?.filter((rule) => rule !== 'nothing-cut')).toEqual(expected);
  });
});

// Common practice, no source: nothing is driven into the concrete, nothing hides it.
describe('what is on the surface comes off before the tools', () => {
  const growth = ['growth'] as const;
  it.each<[string, StepId, ZoneChange, SiteChange, readonly string[] | null]>([
    [
      'oil',
      'degrease',
      { contamination: ['oil'] },
      {},
      ['oil-before-anything', 'soaked-oil-must-go'],
    ],
    ['no oil', 'degrease', { contamination: ['growth', 'salt-bloom'] }, {}, null],
    ['growth, before shot', 'strip-growth', { contamination: growth }, {}, ['growth-first']],
    [
      'growth goes with the wash',
      'strip-growth',
      { contamination: growth, finish: 'sealer' },
      {},
      null,
    ],
    ['salt bloom is no growth', 'strip-growth', { contamination: ['salt-bloom'] }, {}, null],
    [
      'a membrane on a wall',
      'strip-coating',
      { contamination: ['rubbery-coating'] },
      onWall,
      ['coating-by-scraper'],
    ],
    [
      'a thick coating on a spot',
      'strip-coating',
      { contamination: ['thick-coating'], area: 0.5 },
      {},
      ['coating-by-scraper'],
    ],
    [
      'on a floor the machine takes it',
      'strip-coating',
      { contamination: ['thick-coating'] },
      {},
      null,
    ],
    [
      'a thin one is left to the method',
      'strip-coating',
      { contamination: ['thin-coating'] },
      onWall,
      null,
    ],
  ])('%s: %s', (_, step, zone, site, expected) => {
    expect(told(step, zone, site)).toEqual(expected);
  });
});

// Trade page 6: the whole slab, not the known bad part. Common practice, no source.
describe('who sounds what', () => {
  it.each<Case>([
    ['a tight floor is not sounded for itself', {}, {}, null],
    [
      'any loose floor is, all of it',
      { depth: 'under-3', looseness: 'flaking' },
      {},
      ['sound-whole-slab'],
    ],
    ['round a firm hollow too', firmHollow, {}, ['sound-whole-slab']],
    ['along a crumbling crack in a tight floor', { cracks: 'crumbling' }, {}, ['sound-whole-slab']],
    ['round a bar that shows', { steel: 'exposed' }, {}, ['sound-whole-slab']],
    ['an open crack with firm edges is only routed', { cracks: 'open' }, {}, null],
    [
      'thin scale on a wall rings or does not as it comes off',
      { depth: 'under-3', looseness: 'flaking' },
      onWall,
      null,
    ],
    ['a hollow on a wall, before it is cut', spall, onWall, ['sound-before-cutting']],
    [
      'a thin layer that has let go of a wall',
      { depth: '3-to-6', looseness: 'hollow' },
      onWall,
      ['sound-before-cutting'],
    ],
    [
      'a wall that is broken out',
      { depth: '6-to-20', looseness: 'fractured' },
      onWall,
      ['sound-before-cutting'],
    ],
    ['a wall with a crumbling crack', { cracks: 'crumbling' }, onWall, ['sound-before-cutting']],
    ['a wall with a bar that shows', { steel: 'corroded' }, onWall, ['sound-before-cutting']],
    ['a firm hollow on a wall: nothing is loose', firmHollow, onWall, null],
    [
      'rust with nothing loose: what is beneath?',
      { steel: 'rust-stain' },
      {},
      ['stain-look-beneath who=crew'],
    ],
    [
      'rust on a loose floor: both',
      { steel: 'rust-stain', depth: 'under-3', looseness: 'flaking' },
      {},
      ['sound-whole-slab', 'stain-look-beneath who=crew'],
    ],
  ])('%s', (_, zone, site, expected) => {
    const situation = situationOn(zone, site);
    expect(toldOf('sound-and-mark', situation)).toEqual(expected);
    expect(sounds(situation)).toBe(expected !== null);
  });

  it('where a jet makes the hole, the slab is sounded as well', () => {
    const jetted = situationOn({ depth: '6-to-20', looseness: 'fractured' }, onWall, {
      method: 'water-jet',
    });
    expect(toldOf('sound-and-mark', jetted)).toEqual(['sound-before-cutting']);
  });
});

// Square to the surface: UFGS 03 93. 3 to 4 in past the damage: FHWA partial-depth repairs, 4.2; the
// more where it freezes often: common practice, no source.
describe('how the edge of a hole is cut', () => {
  const square = 'square-edge patch.min-corner';
  const past = 'past-the-damage frost=some patch.past-damage';
  const usual = 'saw-depth sawcut.depth sawcut.by-hand';
  it.each<Case>([
    [
      'square, past the damage, its slurry caught',
      spall,
      {},
      [square, usual, past, 'slurry-caught'],
    ],
    [
      'farther past it where it freezes often',
      spall,
      { freezeThaw: 'often' },
      [square, usual, 'past-the-damage frost=often patch.past-damage-frost', 'slurry-caught'],
    ],
    [
      'over steel nobody has found: where it is too shallow, not at all',
      { ...spall, steel: 'corroded' },
      {},
      [square, usual, past, 'slurry-caught', 'shallow-edge-unsawn'],
    ],
    [
      'over steel whose cover was measured, clear of it',
      { ...spall, steel: 'corroded', barCover: 30 },
      {},
      [square, 'saw-depth deepest=20 why=steel sawcut.depth sawcut.by-hand', past, 'slurry-caught'],
    ],
    [
      'a firm hollow: no feather edge, and nothing past it',
      { ...firmHollow, depth: 'over-50' },
      {},
      [square, usual, 'no-feather-edge'],
    ],
    ['shot leaves no hole', {}, {}, null],
  ])('%s', (_, zone, site, expected) => {
    expect(told('saw-cut', zone, site)).toEqual(expected);
  });
});
