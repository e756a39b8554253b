import { describe, expect, it } from 'vitest';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { whyThis } from '$lib/advice/why-this';
import { inLine, siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const skin: ZoneChange = { depth: '3-to-6', looseness: 'hollow' };
const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const firmHollow: ZoneChange = { depth: '20-to-50', finish: 'rebuild' };
const onWall: SiteChange = { element: 'wall' };
const sealer: ZoneChange = { finish: 'sealer' };
const sound = 'nothing-to-remove depth=film looseness=tight';
const ofScale = 'depth=3-to-6 looseness=flaking';
const cut = 'depth.thin depth.shallow';

/** The method, with what the rest needs beside a bar, and why; the last reason is that it does all. */
const chosen = (zone: ZoneChange, site: SiteChange) => {
  const choice = choose(demandsOf(siteWith(site), zoneWith(zone)));
  const { method, rest } = choice;
  return [rest === method ? method : `${method}, ${rest}`, ...whyThis(choice).map(inLine)];
};

// Trade page 3, the ladders and the rules of choice beyond the table. Common practice, no source.
describe('the gentlest method that does it all, and why', () => {
  it.each<[string, ZoneChange, SiteChange, string, readonly string[]]>([
    [
      'sound, for an overlay: roughened without bruising',
      {},
      {},
      'shotblast',
      [sound, 'profile-without-bruises spared=scarify'],
    ],
    ['sound, for a sealer', sealer, {}, 'pressure-wash', [sound]],
    [
      'a powdery film, for a sealer',
      { ...sealer, looseness: 'powdery' },
      {},
      'pressure-wash',
      ['thin-weak-skin depth=film looseness=powdery'],
    ],
    [
      'thin flakes',
      { depth: 'under-3', looseness: 'flaking', finish: 'undecided' },
      {},
      'grind',
      ['skims-to-sound depth=under-3 looseness=flaking'],
    ],
    ['scale on a floor', scale, {}, 'scarify', [`cuts-to-sound ${ofScale} ${cut}`]],
    [
      'scale over pits',
      { ...scale, texture: 'pitted' },
      {},
      'shotblast',
      [`cuts-to-sound ${ofScale} ${cut}`, 'reaches-into-pits'],
    ],
    [
      'scale and open cracks',
      { ...scale, cracks: 'open' },
      {},
      'shotblast',
      [`cuts-to-sound ${ofScale} ${cut}`, 'cleans-open-cracks spared=scarify'],
    ],
    [
      'scale and crumbling cracks',
      { ...scale, cracks: 'crumbling' },
      {},
      'shotblast',
      [`cuts-to-sound ${ofScale} ${cut}`, 'cleans-open-cracks spared=scarify'],
    ],
    [
      'scale and hairlines',
      { ...scale, cracks: 'hairline' },
      {},
      'scarify',
      [`cuts-to-sound ${ofScale} ${cut}`],
    ],
    [
      'a trowelled skin that lifted',
      skin,
      {},
      'scarify',
      ['thin-skin-let-go method=scarify depth.shallow'],
    ],
    [
      'the same on a wall',
      { ...skin, area: 5 },
      onWall,
      'abrasive-blast',
      ['thin-skin-let-go method=abrasive-blast depth.shallow'],
    ],
    [
      'scale on a wall',
      { ...scale, area: 5 },
      onWall,
      'abrasive-blast',
      [`off-floor-blast ${ofScale}`],
    ],
    [
      'a spot of scale on a wall, by needles',
      { ...scale, area: 0.5, finish: 'build-coat' },
      onWall,
      'needle-scale',
      [`off-floor-blast ${ofScale} small=yes`],
    ],
    [
      'a spot that wants it rougher',
      { ...scale, area: 0.5 },
      onWall,
      'abrasive-blast',
      [`off-floor-blast ${ofScale}`],
    ],
    [
      'a spot of scale on a floor',
      { ...scale, area: 0.5, finish: 'build-coat' },
      {},
      'needle-scale',
      [`hand-tools-here ${ofScale}`],
    ],
    [
      'the same, rougher',
      { ...scale, area: 0.5 },
      {},
      'abrasive-blast',
      [`hand-tools-here ${ofScale}`],
    ],
    [
      'a sound wall, for an overlay',
      { area: 5 },
      onWall,
      'abrasive-blast',
      [sound, 'steps-up-for-profile'],
    ],
    [
      'a firm hollow that is filled',
      firmHollow,
      {},
      'abrasive-blast',
      ['nothing-to-remove depth=20-to-50 looseness=tight', 'form-to-fill', 'steps-up-for-profile'],
    ],
    [
      'a measured hollow layer',
      { ...spall, depthMm: 33 },
      {},
      'break-out',
      ['deep-or-loose-in-depth depth=20-to-50 looseness=hollow mm=33'],
    ],
    [
      'rotten, however thin',
      { looseness: 'rotten' },
      {},
      'break-out',
      ['deep-or-loose-in-depth depth=film looseness=rotten'],
    ],
    [
      'trowelled, for a film',
      { texture: 'smooth', finish: 'thin-film' },
      {},
      'grind',
      [sound, 'trowelled-is-closed'],
    ],
    [
      'trowelled, for a coat',
      { texture: 'smooth', finish: 'build-coat' },
      {},
      'shotblast',
      [sound, 'trowelled-is-closed', 'profile-without-bruises spared=scarify'],
    ],
    [
      'dusting, for a film',
      { looseness: 'powdery', finish: 'thin-film' },
      {},
      'grind',
      ['skims-to-sound depth=film looseness=powdery', 'dusting-is-weak'],
    ],
  ])('%s', (_, zone, site, method, why) => {
    const [lead = ''] = method.split(', ');
    const left = why[0]?.startsWith('after-failed-patch') ? ' left=yes' : '';
    expect(chosen(zone, site)).toEqual([method, ...why, `meets-all method=${lead}${left}`]);
  });
});
