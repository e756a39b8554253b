import { layPatches, pastDamage, rectangleRing, squarePatch } from '$lib/survey/patches';
import { rangeOf as rangeFor, valueOf as figureOf } from '$shared/figures';
import { near, published as p, publishedPart as part, through, type Guard } from './guard';

const fhwa = 'FHWA, Partial-depth repairs, 4.2';
const ufc = 'UFC 3-270-03';
const ufgs = 'UFGS 03931';
const inch = 25.4;
const spot = (length: number, width: number, x = 0) => ({
  x: x * inch,
  y: 0,
  length: length * inch,
  width: width * inch,
});
const patchesOf = (...spots: ReturnType<typeof spot>[]) =>
  layPatches(spots.map(rectangleRing), 'rare');
/** Twelve inches less and more than a limit of twelve, by a twelfth. */
const [under, over] = [11, 13];

/** Breaking out, bars, patches, joints and placing, in the source's own unit. */
export const removalGuards: readonly Guard[] = [
  p('bar.clear', 3 / 4, 'in', 'ACI PRC-364.6-22: at least 0.75 in'),
  p('bar.clear-over-aggregate', 1 / 4, 'in', 'ACI PRC-364.6-22: 0.25 in larger than the aggregate'),
  p('bar.clear-military', 1, 'in', `${ufgs} 3.3.1.4: a minimum clearance of 25 mm (1 inch)`),
  p('bar.clear-cancelled', 1 / 2, 'in', `${ufc} 3.4`),
  p('bar.showing-most', 90, 'as printed', `${ufc} 3.4: more than 90 degrees`),
  p('bar.along', 6, 'in', 'ACI PRC-364.6-22: a minimum of 6 in'),
  p('bar.bonded-share', 50, 'percent as ratio', 'ICRI 310.1R, as reported: half'),
  p('bar.loss-one', 25, 'percent as ratio', `${ufgs} 3.3.1.4: 25 percent`),
  p('bar.loss-neighbours', 20, 'percent as ratio', `${ufgs} 3.3.1.4: 20 percent of adjacent bars`),
  p('hammer.above-steel', 30, 'lb', `${ufgs} 3.1.8`),
  p('hammer.at-steel', 15, 'lb', `${ufgs} 3.1.8`),
  p('sawcut.depth', [1, 2], 'in', `${ufgs}: 1 or 2 in`),
  p('patch.min-corner', 90, 'as printed', `${ufgs}: no corner under 90 degrees`),
  p('patch.min-depth', 2, 'in', `${ufc} 15.3`),
  p('patch.into-sound', 1 / 2, 'in', `${ufc} 15.4`),
  p('patch.min-side', 6, 'in', `${ufc} Table 3.1`),
  p('patch.min-side-navy', 12, 'in', `${ufc} Table 3.1, US Navy`),
  p('saw.patch-depth', 2, 'in', `${ufc} 15.3`),
  p('saw.past-spall', [2, 3], 'in', `${ufc} 15.3`),
  p('saw.past-unsound', 3, 'in', "a state's special note on partial-depth patching, 3.1"),
  p(
    'patch.life-good',
    [80, 100],
    'as printed',
    'FHWA, Partial-depth repairs, 6: 80 to 100 percent',
  ),
  through('55 of 93 patches are 59 percent', ['patch.life-poor'], 'MnDOT 2016-16', () =>
    near(figureOf('patch.life-poor'), (100 * 55) / 93, 0.01),
  ),

  through('a patch goes 3 to 4 in past the damage', ['patch.past-damage'], fhwa, () => {
    const [least, most] = pastDamage('rare');
    return near(least, 3 * inch, 0.03) && near(most, 4 * inch, 0.03);
  }),
  through(
    'a spot of 6 by 1.5 in and larger is broken out',
    ['patch.skip-length', 'patch.skip-width'],
    fhwa,
    () =>
      [
        // Smaller than both limits by a fifteenth: left; past one of them: not.
        patchesOf(spot(5.6, 1.4)).skipped.length === 1,
        patchesOf(spot(6.3, 1.4)).skipped.length === 0,
        patchesOf(spot(5.6, 1.6)).skipped.length === 0,
      ].every(Boolean),
  ),
  through(
    'patches closer than 12 in become one',
    ['patch.merge', 'patch.past-damage'],
    fhwa,
    () => {
      // Each goes 100 mm past its spot, so 12 in between the patches is 12 in + 200 mm between the spots.
      const apart = (gap: number) =>
        patchesOf(spot(20, 20), spot(20, 20, 20 + gap + 200 / inch)).patches.length;
      return apart(under) === 1 && apart(over) === 2;
    },
  ),
  through('a patch is at least 12 by 4 in', ['patch.min-length', 'patch.min-width'], fhwa, () => {
    const tiny = squarePatch(1e-9, 'rare').area[0] * 1e6;
    return near(tiny, 12 * inch * 4 * inch, 0.04);
  }),
  p('patch.min-length', 12, 'in', fhwa),
  p('patch.min-width', 4, 'in', fhwa),

  p('water.low', 5, 'ksi', 'SSPC/NACE, as reported: below 5,000 psi'),
  p('water.high', [5, 10], 'ksi', 'SSPC/NACE, as reported: 5,000 to 10,000 psi'),
  p('water.low-heritage', [100, 400], 'psi', 'US GSA heritage procedure: 100 to 400 psi'),
  p('water.low-military', 2, 'ksi', 'MIL-HDBK-1110 6.3.2: below 2,000 psi'),
  p('place.temperature-least', 40, '°F', `${ufc} 16.4: never under 40 F`),
  p('place.temperature', [55, 90], '°F', `${ufc} 16.4: 55 to 90 F`),
  p('cure.damp', 7, 'as printed', `${ufc} 16.6: at least 7 days`),
  p('cure.past', 12, 'in', `${ufc} 16.6: 12 in past the patch`),
  p('opening.strength', 3000, 'psi', 'FHWA, Partial-depth repairs, 5.0'),
  p('joint.spacing', [24, 36], 'as printed', 'Concrete Construction, after ACI 302 and 360'),
  through(
    'joints of a 4 in slab lie 8 to 12 ft apart',
    ['joint.spacing'],
    'Concrete Construction, after ACI 302 and 360',
    () =>
      [8, 12].every((feet, end) =>
        near((rangeFor('joint.spacing')[end] ?? NaN) * 4, feet * 12, 0.01),
      ),
  ),
  p('joint.depth', 25, 'percent as ratio', 'Concrete Construction: a quarter of the thickness'),
  p('joint.side-most', 1.25, 'as printed', 'Concrete Construction, after ACI 302 and 360'),
  p('joint.side-cracks', 1.5, 'as printed', 'a handbook of masonry and concrete'),
  p('level.flush', 1 / 4, 'in', 'ABA 303: 1/4 in'),
  p('level.bevel', 1 / 2, 'in', 'ABA 303: 1/2 in'),
  p('rule.galion', 25, 'as printed', 'Galion, Ohio: 25 percent'),
  p('rule.lauderhill', 25, 'as printed', 'Lauderhill, Florida: 25 percent'),
  p('rule.sioux-falls', 50, 'as printed', 'Sioux Falls, South Dakota: 50 percent'),
  p('rule.pleasant-hill', [50, 75], 'as printed', 'Pleasant Hill, Iowa: 50 to 75 percent'),
  part('replace.opening', 'high', 14, 'as printed', 'Covington, Kentucky: 14 days'),
];
