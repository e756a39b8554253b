import { atLeast } from '$lib/answers/depth';
import type { Finish } from '$lib/answers/questions';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { isFloor } from '$lib/advice/place';

type Test = (site: SettledSite, zone: SettledZone) => boolean;

const thin: readonly Finish[] = ['sealer', 'thin-film', 'self-levelling', 'thin-overlay'];
const coated = (zone: SettledZone) =>
  zone.contamination.filter((each) => each.endsWith('-coating')).length;
const bar = (zone: SettledZone) => zone.steel === 'exposed' || zone.steel === 'corroded';

/**
 * Answers that do not go together on real concrete, by name; true where they are met.
 * The advice does not need them to agree; a case that teaches does.
 * Source: common practice, no published source.
 */
export const nonsense = {
  'a skin that is only a film cannot break up in depth': (_, zone) =>
    zone.depth === 'film' && !['tight', 'powdery', 'flaking'].includes(zone.looseness),
  'dust and flakes are a thing of the top few millimetres': (_, zone) =>
    ['powdery', 'flaking'].includes(zone.looseness) && atLeast(zone.depth, '6-to-20'),
  'a hollow layer has some thickness': (_, zone) =>
    zone.looseness === 'hollow' && !atLeast(zone.depth, '3-to-6'),
  'rot goes into the depth': (_, zone) =>
    zone.looseness === 'rotten' && !atLeast(zone.depth, '6-to-20'),
  'what is damaged through is not tight': (_, zone) =>
    zone.depth === 'through' && zone.looseness === 'tight',
  'the bottom of a hole is not smooth': (_, zone) =>
    zone.texture === 'smooth' && atLeast(zone.depth, '3-to-6') && zone.looseness !== 'hollow',
  'a firm hole is a pit': (_, zone) =>
    zone.looseness === 'tight' && atLeast(zone.depth, '3-to-6') && zone.texture !== 'pitted',
  'a firm face without a hole has no depth': (_, zone) =>
    zone.looseness === 'tight' && zone.depth === 'under-3',
  'rot leaves no even face': (_, zone) => zone.looseness === 'rotten' && zone.texture !== 'pitted',
  'the damage is no deeper than the concrete is thick': (site, zone) =>
    site.thickness !== 'unknown' && (zone.depthMm ?? 0) >= site.thickness,
  'a bar lies deep enough to need a hole to be seen': (_, zone) =>
    bar(zone) && (!atLeast(zone.depth, '20-to-50') || zone.looseness === 'powdery'),
  'a bar that shows lies in a hole': (_, zone) => bar(zone) && zone.texture === 'smooth',
  'a dry room without salt does not eat bars': (site, zone) =>
    zone.steel === 'corroded' && site.setting === 'indoors' && site.salts === 'none',
  'rust taken from a bar is measured on a rusted bar': (_, zone) =>
    !!zone.barLoss && zone.steel !== 'corroded',
  'one coating at a time': (_, zone) => coated(zone) > 1,
  'a coating lies on a face that is still there': (_, zone) =>
    coated(zone) > 0 && (atLeast(zone.depth, '3-to-6') || zone.contamination.includes('growth')),
  'oil lies where something drips': (site, zone) =>
    zone.contamination.includes('oil') && !isFloor(site.element),
  'moss does not grow indoors': (site, zone) =>
    zone.contamination.includes('growth') && site.setting === 'indoors',
  'hardly any frost indoors': (site) => site.setting === 'indoors' && site.freezeThaw === 'often',
  'a soffit has something above it': (site) =>
    site.element === 'soffit' && site.setting === 'open' && site.salts === 'de-icing',
  'what finds its own level lies flat': (site, zone) =>
    zone.finish === 'self-levelling' && (!isFloor(site.element) || site.setting === 'open'),
  'a trowelled layer to walk on lies on a floor or a step': (site, zone) =>
    zone.finish === 'thin-overlay' && (site.element === 'soffit' || site.element === 'wall'),
  'a hole is filled with something that fills it': (_, zone) =>
    atLeast(zone.depth, '6-to-20') && thin.includes(zone.finish),
  'nor is a deep one coated over': (_, zone) =>
    atLeast(zone.depth, '20-to-50') && zone.finish === 'build-coat',
  'nobody forms and pours a skin': (_, zone) =>
    zone.finish === 'rebuild' && !atLeast(zone.depth, '20-to-50'),
  'what stands on the ground sinks': (site) =>
    site.warnings.includes('settled-or-rocking') && !['slab', 'steps'].includes(site.element),
  'tendons are in floors': (site) =>
    site.warnings.includes('tendons-possible') && !isFloor(site.element),
  'a soffit hangs, and nothing stands on it': (site) =>
    site.warnings.includes('holds-something-up') && !['slab', 'steps'].includes(site.element),
  'an old coating has to be there to be feared': (site, zone) =>
    site.warnings.includes('old-coating-or-adhesive') && coated(zone) === 0,
  'cracks like a map are cracks': (site, zone) =>
    site.warnings.includes('map-cracking') && zone.cracks === 'none',
} as const satisfies Record<string, Test>;

/** The names of the combinations a case should not have. */
export const nonsenseIn = (site: SettledSite, zone: SettledZone): string[] =>
  Object.entries(nonsense)
    .filter(([, met]) => (met as Test)(site, zone))
    .map(([name]) => name);
