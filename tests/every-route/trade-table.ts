/**
 * How the trade decides, a second time: written from the description of the trade alone and never
 * from the program, so that the two can be held against each other for every combination.
 * Nothing from `src/` is used. Every table and rule says in its own words what it stands for.
 * Where the trade is silent or two rules collide, the comment begins with "Decided here".
 * All of it is common practice unless a source is named.
 */
import {
  contaminants,
  depths,
  type Contaminant,
  type Looseness,
  type Profile,
  type Texture,
  type TradeMethod,
  type TradeSays,
  type TradeSite,
  type TradeZone,
} from './trade-types';
import { holdsOf } from './trade-verdict';
import {
  chasesCrack,
  freesBar,
  isFirmHollow,
  isFloor,
  isSpot,
  moistureOf,
  profileLeastOf,
} from './trade-zone';

/** Washing 0, skimming 1, cutting 2, breaking 3. */
export const strengths: Readonly<Record<TradeMethod, 0 | 1 | 2 | 3>> = {
  'pressure-wash': 0,
  grind: 1,
  'abrasive-blast': 1,
  'needle-scale': 1,
  scarify: 2,
  shotblast: 2,
  'break-out': 3,
};

/**
 * The ladders, gentlest first. Walk-behind machines stand on floors and are not set up for less
 * than 1 m2; off floors nobody grinds or needles more than 10 m2 by hand. A recess with a firm
 * bottom is blasted or washed whatever the place: no shotblaster, no drum in a sawn hole.
 */
const ladders = {
  floor: ['pressure-wash', 'grind', 'scarify', 'shotblast', 'break-out'],
  'floor-spot': ['pressure-wash', 'grind', 'needle-scale', 'abrasive-blast', 'break-out'],
  'off-floor-spot': ['pressure-wash', 'grind', 'needle-scale', 'abrasive-blast', 'break-out'],
  'off-floor': ['pressure-wash', 'grind', 'abrasive-blast', 'needle-scale', 'break-out'],
  'off-floor-large': ['pressure-wash', 'abrasive-blast', 'break-out'],
  recess: ['pressure-wash', 'abrasive-blast', 'break-out'],
} as const satisfies Record<string, readonly TradeMethod[]>;

/** How many of the depth bands, from the thinnest, a method clears of each loosened state; 7 is all. */
export const clears: Readonly<Record<TradeMethod, Readonly<Record<Looseness, number>>>> = {
  'pressure-wash': { tight: 7, powdery: 1, flaking: 0, fractured: 0, hollow: 0, rotten: 0 },
  grind: { tight: 7, powdery: 2, flaking: 2, fractured: 0, hollow: 0, rotten: 0 },
  // A hollow layer of at most 6.4 mm is a skin: NRMCA CIP 20, usually the top 3 to 6 mm.
  'abrasive-blast': { tight: 7, powdery: 3, flaking: 3, fractured: 3, hollow: 3, rotten: 0 },
  scarify: { tight: 7, powdery: 3, flaking: 3, fractured: 3, hollow: 3, rotten: 0 },
  shotblast: { tight: 7, powdery: 3, flaking: 3, fractured: 3, hollow: 3, rotten: 0 },
  'needle-scale': { tight: 7, powdery: 0, flaking: 3, fractured: 3, hollow: 3, rotten: 0 },
  'break-out': { tight: 7, powdery: 7, flaking: 7, fractured: 7, hollow: 7, rotten: 7 },
};

/**
 * What each takes off of what is on the surface. Oil is degreased before anything mechanical and
 * then stands in nobody's way but washing's.
 * Decided here: growth and bloom go with whatever machine takes off the surface they are on.
 */
export const takesOff: Readonly<Record<TradeMethod, readonly Contaminant[]>> = {
  'pressure-wash': ['salt-bloom', 'growth'],
  grind: ['oil', 'thin-coating', 'salt-bloom', 'growth'],
  'abrasive-blast': ['oil', 'thin-coating', 'salt-bloom', 'growth'],
  scarify: contaminants,
  shotblast: ['oil', 'thin-coating', 'salt-bloom', 'growth'],
  'needle-scale': ['oil', 'thin-coating', 'thick-coating', 'salt-bloom', 'growth'],
  'break-out': contaminants,
};

/** Flat tools ride over low spots. */
export const flat: readonly TradeMethod[] = ['grind', 'scarify'];

/** CSP each machine leaves; a setting, so the high end can be had. ICRI 310.2R, mostly from memory. */
export const leaves: Readonly<Record<Exclude<TradeMethod, 'pressure-wash'>, Profile>> = {
  grind: [1, 2],
  'abrasive-blast': [2, 7],
  scarify: [4, 7],
  shotblast: [2, 9],
  'needle-scale': [2, 4],
  'break-out': [7, 10],
};

/** CSP that is there already and that washing keeps; a guess, so only the low end is sure. */
export const asFound: Readonly<Record<Texture, Profile>> = {
  smooth: [1, 2],
  sandy: [3, 4],
  pitted: [5, 8],
};

function ladderOf(site: TradeSite, zone: TradeZone): readonly TradeMethod[] {
  if (isFirmHollow(zone)) return ladders.recess;
  if (isFloor(site)) return ladders[isSpot(zone) ? 'floor-spot' : 'floor'];
  if (isSpot(zone)) return ladders['off-floor-spot'];
  return ladders[zone.area !== 'unknown' && zone.area > 10 ? 'off-floor-large' : 'off-floor'];
}

/** Takes off what is loose, down to where it ends. */
const removes = (method: TradeMethod, { depth, looseness }: TradeZone) =>
  depths.indexOf(depth) < clears[method][looseness];

/** Takes off what is on it and gets to all of it. */
const cleans = (method: TradeMethod, { texture }: TradeZone, dirt: readonly Contaminant[]) =>
  dirt.every((each) => takesOff[method].includes(each)) &&
  !(texture === 'pitted' && flat.includes(method));

function roughens(method: TradeMethod, zone: TradeZone): boolean {
  const least = profileLeastOf(zone);
  if (least === null) return true;
  return method === 'pressure-wash'
    ? asFound[zone.texture][0] >= least
    : leaves[method][1] >= least;
}

/**
 * Washing is not enough under anything bonded where the skin was trowelled, nor under a coating or
 * a levelling layer where the surface dusts. The sheet speaks of roughness and does not change that.
 * Decided here: while nobody knows what goes on, nothing is opened for it.
 */
export function washingIsEnough({ texture, looseness, finish }: TradeZone): boolean {
  if (texture === 'smooth' && finish !== 'sealer' && finish !== 'undecided') return false;
  return !(
    looseness === 'powdery' && ['thin-film', 'build-coat', 'self-levelling'].includes(finish)
  );
}

/** Thick or rubbery: a grinder skims and glazes it, shot bounces off. */
const isCoat = (each: Contaminant) => each === 'thick-coating' || each === 'rubbery-coating';

type Choice = Pick<TradeSays, 'surface' | 'thenShotblast' | 'before'>;

function choose(site: TradeSite, zone: TradeZone): Choice {
  const ladder = ladderOf(site, zone);
  const wheels = ladder === ladders.floor;
  const coats = zone.contamination.filter(isCoat);
  // No drum at hand: a scraper takes the coat off first, and then the rest is judged.
  const strips = !wheels && coats.length > 0;
  const dirt = strips ? zone.contamination.filter((each) => !isCoat(each)) : zone.contamination;
  const before: Choice['before'] = [
    ...(zone.contamination.includes('oil') ? (['degrease'] as const) : []),
    ...(strips ? (['strip-coating'] as const) : []),
  ];

  // On a floor the drum lifts the coat, as it bridges the pits; shot after it reaches pits and
  // profile. Decided here: a sheet asking CSP 8 or 9 is met by that shot, not by breaking out.
  if (wheels && coats.length && removes('scarify', zone)) {
    const rough = roughens('scarify', zone);
    if (rough || roughens('shotblast', zone))
      return { surface: 'scarify', thenShotblast: !rough || zone.texture === 'pitted', before };
  }

  const washable = !strips && washingIsEnough(zone);
  const able = (method: TradeMethod) => removes(method, zone) && cleans(method, zone, dirt);
  const enough = (method: TradeMethod) =>
    able(method) && roughens(method, zone) && (method !== 'pressure-wash' || washable);
  // break-out stands on every ladder and suffices for everything.
  let surface = ladder.find(enough) as TradeMethod;
  // Sound concrete is not bruised for a profile alone: shot on a floor, grit for needles elsewhere.
  // Shot also goes before a drum where cracks are open, as it cleans them in the same pass.
  const profileOnly = (able('pressure-wash') && !strips) || able('grind');
  const openCracks = zone.cracks === 'open' || zone.cracks === 'crumbling';
  if (surface === 'scarify' && (profileOnly || openCracks) && enough('shotblast'))
    surface = 'shotblast';
  if (surface === 'needle-scale' && profileOnly && enough('abrasive-blast'))
    surface = 'abrasive-blast';
  return { surface, thenShotblast: false, before };
}

/** Every hammered face counts, whichever step hammered it. */
const hammers: readonly TradeMethod[] = ['break-out', 'needle-scale', 'scarify'];

/**
 * Shot only where a shotblaster seals: a flat floor that was scarified. In holes, chased cracks,
 * round bars, on spots and off floors grit or high-pressure water; where frost is rare and the
 * place is a spot, thorough washing will do. Decided here: not under what wants it dry.
 */
function skinOffOf(
  site: TradeSite,
  zone: TradeZone,
  method: TradeMethod,
  surface: TradeMethod,
): TradeSays['skinOff'] {
  const holes = hammers.includes(method) && !(method === 'scarify' && isFloor(site));
  const byHand = holes || chasesCrack(site, zone) || freesBar(zone) || strikesBorder(zone, surface);
  // Decided here: small is no more than 1 m2, and what is just that may still be a machine's.
  const small = zone.area !== 'unknown' && zone.area <= 1;
  if (small && site.freezeThaw === 'rare' && moistureOf(zone) !== 'dry') return ['pressure-wash'];
  return [
    ...(surface === 'scarify' ? (['shotblast'] as const) : []),
    ...(byHand ? (['abrasive-or-water'] as const) : []),
  ];
}

/** Beside a wall the strip a floor machine leaves is struck by hand, and no shotblaster gets to it. */
const strikesBorder = (zone: TradeZone, surface: TradeMethod): boolean =>
  (zone.border ?? 0) > 0 && (surface === 'scarify' || surface === 'shotblast');

/** What the page leads with: a freed bar is breaking out, otherwise what the surface needs. */
export const methodOf = (site: TradeSite, zone: TradeZone): TradeMethod =>
  freesBar(zone) ? 'break-out' : choose(site, zone).surface;

/** What the trade says to one settled set of answers. */
export function tradeSays(site: TradeSite, zone: TradeZone): TradeSays {
  const { surface, thenShotblast, before } = choose(site, zone);
  const method = methodOf(site, zone);
  const moisture = moistureOf(zone);
  const holds = holdsOf(site, zone, { method, moisture });
  const hammered = hammers.includes(method) || chasesCrack(site, zone);
  const bonded = zone.finish !== 'sealer';
  // Under a sealer a hole or a chased crack is filled all the same, and the fill is bonded.
  const opened = method === 'break-out' || chasesCrack(site, zone);
  return {
    method,
    surface,
    thenShotblast,
    before,
    strength: strengths[method],
    verdict: holds.some(({ verdict }) => verdict === 'stop')
      ? 'stop'
      : holds.length
        ? 'find-out-first'
        : 'prepare',
    holds,
    hammered,
    bruisedSkin:
      !bonded && !opened ? 'may-stay' : site.freezeThaw === 'often' ? 'must-go' : 'should-go',
    skinOff: bonded
      ? hammered || strikesBorder(zone, surface)
        ? skinOffOf(site, zone, method, surface)
        : []
      : opened
        ? skinOffOf(site, zone, method, surface).filter((how) => how !== 'shotblast')
        : [],
    profileLeast: profileLeastOf(zone),
    moisture,
  };
}
