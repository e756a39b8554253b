import { describe, expect, it } from 'vitest';
import { borderTool } from '$lib/advice/steps/main';
import type { Finish } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

type Case = [string, ZoneChange, SiteChange, readonly string[]];
const told = (zone: ZoneChange, site: SiteChange, method?: MethodId) => {
  const situation = situationOn(zone, site, method && { method, rest: method });
  return { method: situation.method, why: toldOf(situation.method, situation) };
};
const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const onWall: SiteChange = { element: 'wall' };
const off = 'does-the-removal depth=20-to-50 looseness=hollow';
const sound = 'does-the-removal depth=film looseness=tight';
const light = 'light-hammer-here hammer.above-steel hammer.at-steel';

// Hammers: UFC 3-270-03 for a patch, UFGS 03 93 at steel; the rest common practice, no source.
describe('how it is broken out', () => {
  it.each<Case>([
    ['a floor', spall, {}, [off, 'hammer-for-patch hammer.large-patch', 'water-jet-alternative']],
    [
      'an area nobody knows is no spot',
      { ...spall, area: 'unknown' },
      {},
      [off, 'hammer-for-patch hammer.large-patch', 'water-jet-alternative'],
    ],
    [
      'a spot: nobody sets up a jet',
      { ...spall, area: 0.5 },
      {},
      [off, 'hammer-for-patch hammer.small-patch'],
    ],
    ['a wall', spall, onWall, [off, light, 'water-jet-alternative']],
    ['along a bar', { ...spall, steel: 'exposed' }, {}, [off, light, 'water-jet-alternative']],
    [
      'a slab of unknown thickness',
      spall,
      { thickness: 'unknown' },
      [
        off,
        'hammer-for-patch hammer.large-patch',
        'water-jet-alternative',
        'thickness-unknown depth.full-limit',
      ],
    ],
  ])('%s', (_, zone, site, expected) => {
    expect(told(zone, site)).toEqual({ method: 'break-out', why: expected });
  });

  // FHWA checklist 9: past the top third a partial-depth repair is doubtful; the hole goes 13 mm past
  // the damage (UFC 3-270-03).
  const third = 300 * valueOf('depth.partial-limit');
  const reaches = third - valueOf('patch.into-sound');
  const doubt = (surely: string) =>
    `depth-past-third thickness=300 third=${third} surely=${surely} depth.partial-limit depth.full-limit`;
  it.each<[string, ZoneChange, string | null]>([
    ['a hole just to the third is none', { depth: 'over-50', depthMm: reaches }, null],
    ['one past it is doubtful', { depth: 'over-50', depthMm: reaches + 1 }, doubt('yes')],
    ['one that may be past it, perhaps', { depth: 'over-50' }, doubt('no')],
  ])('the top third: %s', (_, zone, expected) => {
    const why = told({ ...spall, ...zone }, {}).why ?? [];
    expect(why.find((line) => line.startsWith('depth-past-third')) ?? null).toBe(expected);
  });

  it('one that begins just at the third is not surely past it', () => {
    const least = 50 + valueOf('patch.into-sound');
    const thickness = least / valueOf('depth.partial-limit');
    const { why } = told({ ...spall, depth: 'over-50' }, { thickness });
    expect(why?.at(-1)).toMatch(/^depth-past-third .* surely=no /);
  });

  it('a jet in its place tells of depth only where it makes a hole', () => {
    const unknown = { thickness: 'unknown' } as const;
    const jets = (zone: ZoneChange) => told(zone, unknown, 'water-jet').why;
    expect(jets(spall)).toEqual([off, 'thickness-unknown depth.full-limit']);
    expect(jets(scale)).toEqual(['does-the-removal depth=3-to-6 looseness=flaking']);
    expect(told(spall, {}, 'water-jet').why).toEqual([off]);
  });
});

// Common practice, no source.
describe('what is told of a method that works a whole face', () => {
  const grit = 'spent-grit-away method=shotblast';
  it.each<[string, ZoneChange, SiteChange, MethodId, readonly string[]]>([
    [
      'shot, for roughness alone: the floor is sounded before a layer hides it',
      {},
      {},
      'shotblast',
      [
        'sound-before-layer',
        sound,
        'profile-after-first-pass',
        'dry-before-shot',
        grit,
        'border-if-upright',
      ],
    ],
    [
      'something upright is said to be there, or not',
      { border: 0 },
      {},
      'shotblast',
      ['sound-before-layer', sound, 'profile-after-first-pass', 'dry-before-shot', grit],
    ],
    [
      'scale of a few millimetres: in passes, each measured',
      scale,
      {},
      'scarify',
      [
        'does-the-removal depth=3-to-6 looseness=flaking',
        'several-passes depth.shallow',
        'depth-each-pass',
        'profile-after-first-pass',
        'border-if-upright',
      ],
    ],
    [
      'thin scale needs no passes',
      { depth: 'under-3', looseness: 'flaking', finish: 'undecided' },
      {},
      'grind',
      ['does-the-removal depth=under-3 looseness=flaking', 'depth-each-pass', 'border-if-upright'],
    ],
    [
      'pits of a few millimetres in sound concrete ask for no passes',
      { depth: '3-to-6', texture: 'pitted', border: 0, makerProfile: 7 },
      {},
      'shotblast',
      [
        'sound-before-layer',
        'does-the-removal depth=3-to-6 looseness=tight',
        'profile-after-first-pass',
        'dry-before-shot',
        grit,
      ],
    ],
    [
      'a trowelled skin that has let go: what is under it is sounded',
      { ...scale, looseness: 'hollow' },
      {},
      'scarify',
      [
        'does-the-removal depth=3-to-6 looseness=hollow',
        'several-passes depth.shallow',
        'depth-each-pass',
        'sound-what-is-under deeper=break-out',
        'profile-after-first-pass',
        'border-if-upright',
      ],
    ],
    [
      'grit on a wall is gathered; a wall has no border',
      {},
      onWall,
      'abrasive-blast',
      [sound, 'profile-after-first-pass', 'spent-grit-away method=abrasive-blast'],
    ],
    [
      'a hand grinder on a wall leaves no strip',
      { finish: 'thin-film', texture: 'smooth', area: 5 },
      onWall,
      'grind',
      [sound, 'profile-after-first-pass'],
    ],
    [
      'needles on a spot throw no grit',
      { ...scale, area: 0.5, finish: 'build-coat' },
      onWall,
      'needle-scale',
      [
        'does-the-removal depth=3-to-6 looseness=flaking',
        'several-passes depth.shallow',
        'depth-each-pass',
        'profile-after-first-pass',
      ],
    ],
    [
      'a measured depth is told as measured, a coating by its name',
      { ...scale, depthMm: 5, contamination: ['growth', 'thick-coating'], border: 0 },
      {},
      'scarify',
      [
        'coating-comes-off contamination=thick-coating',
        'does-the-removal depth=3-to-6 looseness=flaking mm=5',
        'several-passes depth.shallow',
        'depth-each-pass',
        'profile-after-first-pass',
      ],
    ],
    [
      'washing: the slurry is caught',
      { finish: 'sealer' },
      {},
      'pressure-wash',
      [sound, 'slurry-caught'],
    ],
    [
      'washing takes growth along',
      { finish: 'sealer', contamination: ['growth'] },
      {},
      'pressure-wash',
      [sound, 'growth-washed-off', 'slurry-caught'],
    ],
  ])('%s', (_, zone, site, method, why) => {
    expect(told(zone, site)).toEqual({ method, why });
  });

  it.each<[Finish, SiteChange, boolean]>([
    ['self-levelling', {}, true],
    ['thin-overlay', {}, true],
    ['overlay', {}, true],
    ['build-coat', {}, false],
    ['overlay', { element: 'steps' }, false],
    ['overlay', { element: 'suspended-slab' }, true],
  ])('under %s on %o a tight floor is sounded first: %s', (finish, site, expected) => {
    const { why } = told({ finish, texture: 'smooth' }, site);
    expect(why?.includes('sound-before-layer')).toBe(expected);
  });
});

// Common practice, no source: the strip along a wall is worked by hand to the roughness of the rest.
describe('the strip along what stands upright', () => {
  it.each<[string, ZoneChange, SiteChange, 'grinder' | 'bush-hammer' | null]>([
    ['beside shot', { border: 7 }, {}, 'bush-hammer'],
    ['beside a scarified face', { ...scale, border: 7 }, {}, 'bush-hammer'],
    ['beside a ground face', { finish: 'thin-film', texture: 'smooth', border: 7 }, {}, 'grinder'],
    ['beside the face round a bar', { steel: 'exposed', border: 7 }, {}, 'bush-hammer'],
    ['said to be none', { border: 0 }, {}, null],
    ['nobody has said', {}, {}, null],
    ['washing leaves none', { finish: 'sealer', border: 7 }, {}, null],
    ['nor does a hammer', { ...spall, border: 7 }, {}, null],
    ['nor what is done by hand all over', { border: 7, area: 0.5 }, {}, null],
    [
      'nor anything on a wall',
      { border: 7, finish: 'thin-film', texture: 'smooth', area: 5 },
      onWall,
      null,
    ],
  ])('%s', (_, zone, site, tool) => {
    const situation = situationOn(zone, site);
    expect(borderTool(situation)).toBe(tool);
    expect(toldOf('edge-work', situation)).toEqual(tool && [`border-by-${tool} length=7`]);
  });
});
