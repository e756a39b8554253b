import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { HazardId, MethodId, StepId } from '$shared/methods';

/**
 * The trade's table of methods written down a second time, apart from the code and its data,
 * so that the two can disagree. Common practice, no source, except the roughest profiles:
 * ICRI 310.2R-2013, from memory or as reported.
 */
export interface Row {
  readonly reach: Partial<Record<SettledZone['looseness'], number>>;
  readonly clears: readonly string[];
  readonly intoPits: boolean;
  readonly floorOnly: boolean;
  readonly roughest: number | null;
}

export const bands = ['film', 'under-3', '3-to-6', '6-to-20', '20-to-50', 'over-50', 'through'];
const [film, under3, to6, any] = [0, 1, 2, 6];
const skims = ['salt-bloom', 'growth', 'oil', 'thin-coating'];
const cuts = [...skims, 'thick-coating', 'rubbery-coating'];

export const rows: Partial<Record<MethodId, Row>> = {
  'pressure-wash': {
    reach: { powdery: film },
    clears: ['salt-bloom', 'growth'],
    intoPits: true,
    floorOnly: false,
    roughest: null,
  },
  grind: {
    reach: { powdery: under3, flaking: under3 },
    clears: skims,
    intoPits: false,
    floorOnly: false,
    roughest: 2,
  },
  'abrasive-blast': {
    reach: { powdery: under3, flaking: under3, fractured: under3 },
    clears: skims,
    intoPits: true,
    floorOnly: false,
    roughest: 7,
  },
  scarify: {
    reach: { powdery: to6, flaking: to6, fractured: to6 },
    clears: cuts,
    intoPits: false,
    floorOnly: true,
    roughest: 7,
  },
  shotblast: {
    reach: { powdery: to6, flaking: to6, fractured: to6 },
    clears: skims,
    intoPits: true,
    floorOnly: true,
    roughest: 9,
  },
  'break-out': {
    reach: { powdery: any, flaking: any, fractured: any, hollow: any, rotten: any },
    clears: cuts,
    intoPits: true,
    floorOnly: false,
    roughest: 10,
  },
};

/** Roughest a texture is as found (an estimate, no source), and the least each finish accepts. */
export const found = { smooth: 2, sandy: 4, pitted: 8 };
export const least = {
  sealer: 1,
  'thin-film': 1,
  'build-coat': 3,
  'self-levelling': 4,
  'thin-overlay': 5,
  overlay: 5,
  rebuild: 5,
  undecided: 0,
};

export const isFloor = (site: SettledSite): boolean =>
  site.element === 'slab' || site.element === 'suspended-slab';

/** What a method leaves unmet in a zone, by the table above; null when it meets everything. */
export function expectedShortfall(
  method: MethodId,
  site: SettledSite,
  zone: SettledZone,
): string | null {
  const row = rows[method];
  if (!row) return 'a place among the methods ever chosen';
  const floor = isFloor(site);
  if (row.floorOnly && !floor) return 'the place';
  if (zone.looseness !== 'tight' && bands.indexOf(zone.depth) > (row.reach[zone.looseness] ?? -1))
    return 'the removal';
  for (const each of zone.contamination) {
    // Off floors a heavy coating is scraped off first, yet washing alone may not follow.
    const scraped = !floor && (each === 'thick-coating' || each === 'rubbery-coating');
    if (scraped ? method === 'pressure-wash' : !row.clears.includes(each)) return each;
  }
  const heavy = zone.contamination.some((each) => /thick|rubbery/.test(each));
  const bridged = floor && method === 'scarify' && heavy;
  const low = zone.texture === 'pitted' || zone.cracks === 'open' || zone.cracks === 'crumbling';
  if (low && !row.intoPits && !bridged) return 'the low spots';
  return (row.roughest ?? found[zone.texture]) < least[zone.finish] ? 'the profile' : null;
}

const dusty: StepId[] = [
  'grind',
  'abrasive-blast',
  'scarify',
  'shotblast',
  'needle-scale',
  'break-out',
  'saw-cut',
  'chase-crack',
  'route-crack',
  'free-bar',
  'edge-work',
  'blast-clean',
  'clean-bar',
];
const steadyHanded: StepId[] = ['abrasive-blast'];
const wet: StepId[] = ['pressure-wash', 'final-wash', 'water-jet'];
const engines: StepId[] = [
  'pressure-wash',
  'scarify',
  'shotblast',
  'abrasive-blast',
  'break-out',
  'saw-cut',
  'blast-clean',
  'final-wash',
];

/** The hazards a step must warn of at a place, apart from the code. Common practice, no source. */
export function expectedHazards(
  step: StepId,
  site: SettledSite,
  zone: SettledZone,
): readonly HazardId[] {
  const hazards: HazardId[] = [];
  const indoors = site.setting === 'indoors';
  const carries = ['suspended-slab', 'wall', 'soffit'].includes(site.element);
  if (dusty.includes(step)) {
    hazards.push('silica', 'noise', 'eyes');
    if (!steadyHanded.includes(step)) hazards.push('vibration');
    if (site.element === 'soffit' || site.element === 'wall') hazards.push('overhead');
    if (zone.contamination.some((each) => each.endsWith('-coating'))) hazards.push('lead-asbestos');
  }
  if (wet.includes(step)) {
    hazards.push('water-injection', 'slips', 'electric', 'eyes', 'wash-water');
    if (!indoors) hazards.push('weather');
  }
  if (engines.includes(step) && indoors) hazards.push('carbon-monoxide');
  if (step === 'degrease') hazards.push('chemicals', 'wash-water');
  if (step === 'break-out' && carries) hazards.push('structure');
  return hazards;
}
