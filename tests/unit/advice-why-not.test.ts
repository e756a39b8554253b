import { describe, expect, it } from 'vitest';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { countRejections, standOf } from '$lib/advice/rejected';
import { whyNot, whyNotOthers } from '$lib/advice/why-not';
import type { TriedOut } from '$lib/answers/trial-record';
import { methodIds } from '$shared/methods';
import { inLine, siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const onWall: SiteChange = { element: 'wall' };
const sealer: ZoneChange = { finish: 'sealer' };

/** What is said against each other method; what would do all the same has a star. Grades of roughness are left out. */
const against = (zone: ZoneChange, site: SiteChange) =>
  whyNotOthers(choose(demandsOf(siteWith(site), zoneWith(zone)))).map(
    (each) =>
      `${each.method}${each.wouldDo ? '*' : ''}: ${inLine(each).replace(/ leaves=\d+ needs=\d+/, '')}`,
  );
const harsher = (chosen: string, bruises: string) =>
  `harsher-than-needed chosen=${chosen} bruises=${bruises}`;
const smooth = (method: string) => `${method}: too-smooth-after csp.${method}`;

// Trade page 3. Common practice, no source.
describe('why not another way', () => {
  it.each<[string, ZoneChange, SiteChange, readonly string[]]>([
    [
      'sound, for an overlay',
      {},
      {},
      [
        'pressure-wash: texture-not-sure-enough csp.found.sandy',
        smooth('grind'),
        'abrasive-blast*: not-on-this-ladder method=abrasive-blast place=floor bruises=no',
        'scarify*: would-bruise-sound-concrete',
        smooth('needle-scale'),
        `break-out*: ${harsher('shotblast', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'washed: whatever is harder takes off sound concrete',
      sealer,
      {},
      [
        'grind',
        'abrasive-blast',
        'scarify',
        'shotblast',
        'needle-scale',
        'break-out',
        'water-jet',
      ].map(
        (each) =>
          `${each}*: ${harsher('pressure-wash', /scarify|needle|break/.test(each) ? 'yes' : 'no')}`,
      ),
    ],
    [
      'scale on a floor',
      scale,
      {},
      [
        'pressure-wash: leaves-loose looseness=flaking',
        'grind: past-its-reach depth=3-to-6 looseness=flaking reach=under-3',
        'abrasive-blast*: not-on-this-ladder method=abrasive-blast place=floor bruises=no',
        'shotblast*: would-do-too method=shotblast',
        smooth('needle-scale'),
        `break-out*: ${harsher('scarify', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'scale and open cracks',
      { ...scale, cracks: 'open', makerProfile: 3, depthMm: 5 },
      {},
      [
        'pressure-wash: leaves-loose looseness=flaking',
        'grind: past-its-reach depth=3-to-6 looseness=flaking mm=5 reach=under-3',
        'abrasive-blast*: not-on-this-ladder method=abrasive-blast place=floor bruises=no',
        'scarify*: leaves-cracks-to-clean',
        'needle-scale*: not-on-this-ladder method=needle-scale place=floor bruises=yes',
        `break-out*: ${harsher('shotblast', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a membrane on a floor over pits',
      { contamination: ['rubbery-coating', 'thin-coating', 'growth'], texture: 'pitted' },
      {},
      [
        'pressure-wash: leaves-contaminant contamination=rubbery-coating+thin-coating',
        'grind: glazes-coating',
        'abrasive-blast: leaves-contaminant contamination=rubbery-coating',
        'shotblast: shot-bounces',
        'needle-scale: leaves-contaminant contamination=rubbery-coating',
        `break-out*: ${harsher('scarify', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a spot of scale on steps',
      { ...scale, area: 0.5, finish: 'build-coat' },
      { element: 'steps' },
      [
        'pressure-wash: leaves-loose looseness=flaking',
        'grind: past-its-reach depth=3-to-6 looseness=flaking reach=under-3',
        'abrasive-blast*: would-do-too method=abrasive-blast',
        'scarify: needs-a-floor',
        'shotblast: needs-a-floor',
        `break-out*: ${harsher('needle-scale', 'yes')}`,
        'water-jet*: specialist-alternative small=yes',
      ],
    ],
    [
      'a spot of scale on a floor',
      { ...scale, area: 0.5, finish: 'build-coat' },
      {},
      [
        'pressure-wash: leaves-loose looseness=flaking',
        'grind: past-its-reach depth=3-to-6 looseness=flaking reach=under-3',
        'abrasive-blast*: would-do-too method=abrasive-blast',
        'scarify: too-small-for-machine place.spot',
        'shotblast: too-small-for-machine place.spot',
        `break-out*: ${harsher('needle-scale', 'yes')}`,
        'water-jet*: specialist-alternative small=yes',
      ],
    ],
    [
      'a wide wall, stripped',
      { ...sealer, contamination: ['thick-coating'] },
      onWall,
      [
        'pressure-wash: washing-after-stripping',
        'grind: too-large-by-hand place.wide',
        'scarify: needs-a-floor',
        'shotblast: needs-a-floor',
        'needle-scale: too-large-by-hand place.wide',
        `break-out*: ${harsher('abrasive-blast', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a firm hollow, trowelled',
      { depth: '20-to-50', finish: 'rebuild', texture: 'smooth' },
      {},
      [
        'pressure-wash: washing-leaves-closed-skin',
        'grind: no-machine-in-a-hole',
        'scarify: no-machine-in-a-hole',
        'shotblast: no-machine-in-a-hole',
        smooth('needle-scale'),
        `break-out*: ${harsher('abrasive-blast', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'pits under a film that dusts, oily',
      { looseness: 'powdery', finish: 'thin-film', texture: 'pitted', contamination: ['oil'] },
      {},
      [
        'pressure-wash: washing-spreads-oil',
        'grind: rides-over-pits',
        'abrasive-blast*: not-on-this-ladder method=abrasive-blast place=floor bruises=no',
        'scarify: rides-over-pits',
        'needle-scale: leaves-loose looseness=powdery',
        `break-out*: ${harsher('shotblast', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a film that dusts',
      { looseness: 'powdery', finish: 'thin-film' },
      {},
      [
        'pressure-wash: washing-leaves-weak-skin',
        'abrasive-blast*: not-on-this-ladder method=abrasive-blast place=floor bruises=no',
        `scarify*: ${harsher('grind', 'yes')}`,
        `shotblast*: ${harsher('grind', 'no')}`,
        'needle-scale: leaves-loose looseness=powdery',
        `break-out*: ${harsher('grind', 'yes')}`,
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a bar: only breaking out frees it, and a jet',
      { ...sealer, steel: 'exposed' },
      {},
      [
        'pressure-wash*: for-the-rest',
        'grind: leaves-bar-bound',
        'abrasive-blast: leaves-bar-bound',
        'scarify: leaves-bar-bound',
        'shotblast: leaves-bar-bound',
        'needle-scale: leaves-bar-bound',
        'water-jet*: specialist-alternative',
      ],
    ],
    [
      'a small hole: a specialist’s jet for so little',
      { ...spall, area: 0.5 },
      {},
      [
        'pressure-wash: leaves-loose looseness=hollow',
        'grind: leaves-loose looseness=hollow',
        'abrasive-blast: past-its-reach depth=20-to-50 looseness=hollow reach=3-to-6',
        'scarify: too-small-for-machine place.spot',
        'shotblast: too-small-for-machine place.spot',
        'needle-scale: past-its-reach depth=20-to-50 looseness=hollow reach=3-to-6',
        'water-jet*: specialist-alternative small=yes',
      ],
    ],
  ])('%s', (_, zone, site, expected) => {
    expect(against(zone, site)).toEqual(expected);
  });

  it('where no method is left, the one that is named has failed as well', () => {
    const triedOut = methodIds.map((method): TriedOut => ({
      method,
      because: 'too-much',
      why: ['bruised'],
    }));
    const choice = choose(demandsOf(siteWith(), zoneWith({ triedOut })));
    expect(choice.spent).toBe(true);
    expect(whyNot(choice, choice.method)).toMatchObject({
      rule: 'failed-on-patch',
      wouldDo: false,
    });
    expect(whyNot(choose(demandsOf(siteWith(), zoneWith())), 'shotblast')).toBeNull();
  });
});

// Common practice, no source: what bruises sound concrete for nothing is too much, not an alternative.
describe('how a method that is not advised stands', () => {
  it('could, would be too much, or is out', () => {
    expect(standOf({ method: 'break-out', rule: 'harsher-than-needed', wouldDo: true })).toBe(
      'harsher',
    );
    expect(standOf({ method: 'scarify', rule: 'would-bruise-sound-concrete', wouldDo: true })).toBe(
      'harsher',
    );
    expect(standOf({ method: 'shotblast', rule: 'would-do-too', wouldDo: true })).toBe('could');
    expect(standOf({ method: 'grind', rule: 'harsher-than-needed', wouldDo: false })).toBe('out');
  });
  it('is counted', () => {
    const others = whyNotOthers(choose(demandsOf(siteWith(), zoneWith())));
    expect(countRejections(others)).toEqual({ could: 2, harsher: 2, out: 3 });
  });
});
