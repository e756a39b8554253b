/** What stops the work or has to be found out first, by the trade; see `trade-table.ts`. */
import type { TradeHold, TradeMethod, TradeSays, TradeSite, TradeZone } from './trade-types';
import { chasesCrack, freesBar, isFirmHollow, isFloor, rustAtCrack } from './trade-zone';

interface Work {
  readonly method: TradeMethod;
  readonly moisture: TradeSays['moisture'];
}

/** mm from the surface each band covers; the lower edge does not belong to it. */
const bands: Readonly<Record<TradeZone['depth'], readonly [number, number]>> = {
  film: [0, 1],
  'under-3': [1, 3.2],
  '3-to-6': [3.2, 6.4],
  '6-to-20': [6.4, 20],
  '20-to-50': [20, 50],
  'over-50': [50, Infinity],
  through: [Infinity, Infinity],
};

/** mm into sound concrete that a hole goes: UFC 3-270-03 15.4. */
const margin = 13;
/** mm clear behind a freed bar: 19 (ACI PRC-364.6-22) or 25 (UFGS 03 93). */
const clearance = [19, 25] as const;
/** mm across a bar that nobody measured: 3/8 to 5/8 in. Common practice. */
const usualBar = [10, 16] as const;
/** mm. Decided here: a slab nobody measured is a usual driveway of 4 in. Common practice. */
const usualThickness = 100;
/** mm past which a tendon may be met. */
const tendonLimit = 6;

/**
 * What hides a stain without adding anything that carries. Decided here: a levelling layer too, as
 * it is thin and spreads over all of it.
 */
const paints: readonly TradeZone['finish'][] = [
  'sealer',
  'thin-film',
  'build-coat',
  'self-levelling',
];

/** Carries something, or hangs: taking concrete out weakens a structure. */
const carries = ({ element, warnings }: TradeSite) =>
  warnings.includes('holds-something-up') || !['slab', 'steps'].includes(element);

/**
 * Decided here: open cracks are routed or chased in any case. A hairline may be routed too, so where
 * something lies in the concrete it counts as cut; where frost comes often it is tapped first.
 */
const cutsCrack = (site: TradeSite, zone: TradeZone) =>
  zone.cracks === 'open' ||
  (zone.cracks === 'hairline' && site.freezeThaw !== 'often') ||
  chasesCrack(site, zone);

/** Saw, hammer or drill go into the concrete. A break-out and a poured hollow get a sawn edge. */
const cutsIn = (site: TradeSite, zone: TradeZone, { method }: Work) =>
  method === 'break-out' || isFirmHollow(zone) || cutsCrack(site, zone);

/**
 * A layer that hardens on, or a hole that is filled. Decided here: a sealer and a thin film are no
 * rigid repair, nor is what nobody has decided; under them what moves is found out first.
 */
const isRigid = ({ finish }: TradeZone, { method }: Work) =>
  method === 'break-out' || !['sealer', 'thin-film', 'undecided'].includes(finish);

/**
 * How deep the finished hole will be, mm, least and most; null where there is none. Damage and
 * margin, or cover, bar and clearance, whichever is deeper. Decided here: a firm hollow is as deep
 * as it is, without margin; so is what a gentler tool takes off beside a bar. A bar nobody measured
 * shows because the damage has laid it bare, so its cover is at most that deep.
 */
function holeOf(zone: TradeZone, { method }: Work): readonly [number, number] | null {
  const { depth, depthMm, looseness } = zone;
  const [least, most] = depthMm === undefined ? bands[depth] : [depthMm, depthMm];
  const hollow = looseness === 'tight' && most > 6.4;
  if (method !== 'break-out' && !hollow) return null;
  const added = needsBreaker(zone) ? margin : 0;
  const [barLeast, barMost] = behindBar(zone, most);
  return [Math.max(least + added, barLeast), Math.max(most + added, barMost)];
}

/** Loose in depth, or past what cutters and shot take off: goes into sound concrete. */
const needsBreaker = ({ depth, looseness }: TradeZone) =>
  looseness === 'rotten' || (looseness !== 'tight' && bands[depth][1] > 6.4);

/** mm down to where a freed bar is clear behind; nothing where none is freed. */
function behindBar(zone: TradeZone, damage: number): readonly [number, number] {
  if (!freesBar(zone)) return [0, 0];
  const { barCover, barDiameter } = zone;
  const cover = typeof barCover === 'number' ? [barCover, barCover] : [0, damage];
  const bar = typeof barDiameter === 'number' ? [barDiameter, barDiameter] : usualBar;
  const [least, most] = [0, 1].map(
    (end) => (cover[end] as number) + (bar[end] as number) + (clearance[end] as number),
  ) as [number, number];
  return [least, most];
}

/**
 * Past half of the thickness a part is replaced through (UFC 3-270-03 par. 4.2, one copy marked
 * cancelled): surely past stops the patch, perhaps past has to be measured. Past the top third
 * (FHWA checklist 9) it is doubtful, which is said and holds nothing.
 */
function fullDepth(site: TradeSite, zone: TradeZone, work: Work): TradeHold['verdict'] | null {
  if (zone.depth === 'through') return 'stop';
  const hole = holeOf(zone, work);
  if (!hole) return null;
  const [least, most] = hole;
  // Decided here: a firm hollow in a slab nobody measured is filled without asking, and what is no
  // floor is thicker than one: only what goes past 50 mm there is measured first.
  if (site.thickness === 'unknown') {
    if (work.method !== 'break-out' || !(needsBreaker(zone) || freesBar(zone))) return null;
    const doubtful = isFloor(site) ? most >= usualThickness / 2 : zone.depth === 'over-50';
    return doubtful ? 'find-out-first' : null;
  }
  // Decided here: half itself counts as past it; nobody measures a hole to the millimetre.
  const half = site.thickness / 2;
  if (least >= half) return 'stop';
  return most >= half ? 'find-out-first' : null;
}

/** Whether anything may go deeper than a tendon may lie; a band that reaches past counts as past. */
function mayMeetTendon(site: TradeSite, zone: TradeZone, work: Work): boolean {
  if (cutsIn(site, zone, work)) return true;
  return zone.looseness !== 'tight' && (zone.depthMm ?? bands[zone.depth][1]) > tendonLimit;
}

/** Everything that stands before the work. */
export function holdsOf(site: TradeSite, zone: TradeZone, work: Work): readonly TradeHold[] {
  const holds: TradeHold[] = [];
  const stop = (what: string) => holds.push({ what, verdict: 'stop' });
  const find = (what: string) => holds.push({ what, verdict: 'find-out-first' });
  const warned = (what: string) => site.warnings.includes(what);
  const { method, moisture } = work;

  const hangs = ['suspended-slab', 'suspended-steps', 'soffit'].includes(site.element);
  // Decided here: cutting into sound concrete, as chasing or routing a crack or sawing the edge of a
  // fill does, is no removal in this sense; where it hangs an engineer is asked all the same, for over
  // its supports it carries by the steel near its top.
  if (carries(site) && method === 'break-out') stop('structure');
  else if (hangs && cutsIn(site, zone, work)) find('structure');
  // Decided here: over somebody's head a hollow counts as thin only where somebody has measured it; it
  // may have let go at the bars, and an engineer looks first.
  if (hangs && method !== 'break-out' && zone.looseness === 'hollow')
    if (zone.depthMm === undefined) find('hollow-unmeasured');
  if (warned('tendons-possible') && mayMeetTendon(site, zone, work)) stop('tendons');
  if (warned('fire-or-chemical')) stop('fire-or-chemical');
  const moves = isRigid(zone, work) ? stop : find;
  // Decided here: what carries by what it is has let go somewhere once it sinks, whatever is done to its face.
  const byItself = carries({ ...site, warnings: [] });
  if (warned('settled-or-rocking')) (byItself ? stop : moves)('settled-or-rocking');
  // Decided here: where it hangs, a crack that moves may be its root giving way.
  if (zone.cracks === 'moving') (hangs ? stop : moves)('moving-crack');
  if (zone.barLoss === 'one-bar' || zone.barLoss === 'neighbours')
    if (freesBar(zone)) stop('section-loss');
  const full = fullDepth(site, zone, work);
  if (full === 'stop') stop('full-depth');
  if (full === 'find-out-first') find('full-depth-perhaps');

  // Decided here: "never paint over it" and "open it, or leave it to an engineer" are both things
  // to be found out before the work, salt or none.
  const stain = zone.steel === 'rust-stain';
  const crackRusts = zone.cracks !== 'none' && (stain || zone.steel === 'corroded');
  if ((stain || crackRusts) && site.salts !== 'none') find('rust-and-salt');
  else if (rustAtCrack(zone)) find('rust-at-crack');
  // Decided here: where concrete carries, a stain is a bar at work, whatever goes over it.
  else if (stain && (carries(site) || paints.includes(zone.finish))) find('paint-over-rust');
  if (zone.contamination.includes('salt-bloom') && moisture === 'dry') find('bloom-under-dry');
  if (warned('map-cracking')) find('map-cracking');
  // Decided here: also where all is washed, since a jet tears off old paint and carries it along.
  if (warned('old-coating-or-adhesive')) find('old-coating');
  if (warned('buried-services') && cutsIn(site, zone, work)) find('buried-services');
  return holds;
}
