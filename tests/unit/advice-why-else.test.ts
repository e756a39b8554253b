import { describe, expect, it } from 'vitest';
import { choose, lacksProfileOnly, type ShortfallOf } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import type { Shortfall } from '$lib/advice/methods/judge';
import { whyThis } from '$lib/advice/why-this';
import type { TriedOut } from '$lib/answers/trial-record';
import { inLine, siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const onWall: SiteChange = { element: 'wall' };
const sealer: ZoneChange = { finish: 'sealer' };
const failed = (
  method: TriedOut['method'],
  because: TriedOut['because'],
  why: string,
): ZoneChange => ({
  triedOut: [{ method, because, why: [why] }],
});
const sound = 'nothing-to-remove depth=film looseness=tight';

/** The method, with what the rest needs beside a bar, and why; the last reason is that it does all. */
const chosen = (zone: ZoneChange, site: SiteChange) => {
  const choice = choose(demandsOf(siteWith(site), zoneWith(zone)));
  const { method, rest } = choice;
  return [rest === method ? method : `${method}, ${rest}`, ...whyThis(choice).map(inLine)];
};

// Trade page 3, the rules of choice beyond the table. Common practice, no source.
describe('what else a method is chosen for', () => {
  it.each<[string, ZoneChange, SiteChange, string, readonly string[]]>([
    [
      'washed to a grade that grinding would not leave',
      { makerProfile: 3 },
      {},
      'pressure-wash',
      [sound],
    ],
    [
      'a coating that is broken out is not lifted',
      { ...spall, contamination: ['thick-coating'] },
      {},
      'break-out',
      ['deep-or-loose-in-depth depth=20-to-50 looseness=hollow'],
    ],
    [
      'a coating over open cracks: shot bounces off it',
      { contamination: ['thick-coating'], cracks: 'open' },
      {},
      'scarify',
      [sound, 'lifts-coating'],
    ],
    [
      'blasting a floor, where shot and teeth failed',
      {
        depth: '3-to-6',
        looseness: 'flaking',
        triedOut: [{ method: 'shotblast', because: 'too-much', why: ['bruised'] }],
        texture: 'pitted',
      },
      {},
      'abrasive-blast',
      [
        'after-failed-patch failed=shotblast why=bruised',
        'cuts-to-sound depth=3-to-6 looseness=flaking depth.thin depth.shallow',
        'reaches-into-pits',
      ],
    ],
    [
      'broken out, a trowelled skin is no reason',
      { ...spall, texture: 'smooth', finish: 'build-coat' },
      {},
      'break-out',
      ['deep-or-loose-in-depth depth=20-to-50 looseness=hollow'],
    ],
    [
      'sound pits that are only washed',
      { ...sealer, texture: 'pitted' },
      {},
      'pressure-wash',
      [sound],
    ],
    [
      'pits of a sound wall',
      { area: 5, texture: 'pitted', makerProfile: 7 },
      onWall,
      'abrasive-blast',
      [sound, 'reaches-into-pits', 'steps-up-for-profile'],
    ],
    [
      'a thick coating on a floor',
      { contamination: ['thick-coating'] },
      {},
      'scarify',
      [sound, 'lifts-coating'],
    ],
    [
      'a membrane over pits',
      { contamination: ['rubbery-coating'], texture: 'pitted' },
      {},
      'scarify',
      [sound, 'lifts-coating-then-pits'],
    ],
    [
      'a thin one among others is no reason of its own',
      { contamination: ['thick-coating', 'thin-coating'] },
      {},
      'scarify',
      [sound, 'lifts-coating'],
    ],
    [
      'a thin coating',
      { ...sealer, contamination: ['thin-coating'] },
      {},
      'grind',
      [sound, 'takes-off-thin-coating'],
    ],
    [
      'oil, degreased',
      { ...sealer, contamination: ['oil'] },
      {},
      'grind',
      [sound, 'oil-rules-out-washing'],
    ],
    [
      'a stripped wall',
      { ...sealer, contamination: ['thick-coating'] },
      onWall,
      'abrasive-blast',
      [sound, 'after-stripping'],
    ],
    [
      'washed, with open cracks: nothing is passed over',
      { ...sealer, cracks: 'open' },
      {},
      'pressure-wash',
      [sound],
    ],
    [
      'growth and bloom go with any',
      { ...sealer, contamination: ['growth', 'salt-bloom'] },
      {},
      'pressure-wash',
      [sound],
    ],
    [
      'a bar: breaking out leads, the rest beside it',
      { steel: 'exposed' },
      {},
      'break-out, shotblast',
      [
        'bar-leads rest=shotblast bar.clear bar.along',
        sound,
        'profile-without-bruises spared=scarify',
      ],
    ],
    [
      'a bar in a hole',
      { ...spall, steel: 'corroded' },
      {},
      'break-out',
      ['bar-leads bar.clear bar.along', 'deep-or-loose-in-depth depth=20-to-50 looseness=hollow'],
    ],
    ['a stain leads nothing', { steel: 'rust-stain', ...sealer }, {}, 'pressure-wash', [sound]],
    [
      'shot failed on a patch',
      failed('shotblast', 'too-much', 'bruised'),
      {},
      'abrasive-blast',
      ['after-failed-patch failed=shotblast why=bruised', sound, 'steps-up-for-profile'],
    ],
    [
      'breaking out failed',
      { ...spall, ...failed('break-out', 'too-much', 'too-deep') },
      {},
      'water-jet',
      ['after-failed-patch failed=break-out why=too-deep'],
    ],
    [
      'what failed and would not have done anyway counts for nothing',
      failed('grind', 'too-little', 'too-smooth'),
      {},
      'shotblast',
      [sound, 'profile-without-bruises spared=scarify'],
    ],
  ])('%s', (_, zone, site, method, why) => {
    const [lead = ''] = method.split(', ');
    const left = why[0]?.startsWith('after-failed-patch') ? ' left=yes' : '';
    expect(chosen(zone, site)).toEqual([method, ...why, `meets-all method=${lead}${left}`]);
  });

  it('names each thing once that several patches showed', () => {
    const twice: ZoneChange = {
      triedOut: [
        { method: 'shotblast', because: 'too-much', why: ['bruised', 'too-deep'] },
        { method: 'scarify', because: 'too-much', why: ['bruised'] },
      ],
    };
    expect(chosen(twice, {})[1]).toBe(
      'after-failed-patch failed=shotblast+scarify why=bruised+too-deep',
    );
  });
});

it('sound concrete is spared where washing or grinding lacks the roughness, or leaves the skin, alone', () => {
  const lacking =
    (wash: Shortfall['demand'] | null, grind: Shortfall['demand'] | null): ShortfallOf =>
    (method) => {
      const demand = method === 'pressure-wash' ? wash : method === 'grind' ? grind : null;
      return demand && { demand, rule: 'leaves-loose' };
    };
  expect(lacksProfileOnly(lacking('profile', 'removal'))).toBe(true);
  expect(lacksProfileOnly(lacking('removal', 'profile'))).toBe(true);
  expect(lacksProfileOnly(lacking('skin', 'removal'))).toBe(true);
  expect(lacksProfileOnly(lacking('removal', 'contaminant'))).toBe(false);
  expect(lacksProfileOnly(lacking(null, null))).toBe(false);
});
