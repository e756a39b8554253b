import type { Finish, Warning } from '$lib/answers/questions';
import { isFirmHollow, removalFacts } from '$lib/advice/demands';
import { holeRange, makesHole } from '$lib/advice/hole';
import { reachOf } from '$lib/advice/holds';
import { isFloor, isSpot } from '$lib/advice/place';
import { sawDepth } from '$lib/advice/saw-depth';
import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { chasesCrack } from './cracks';
import { call, type Situation, type Work } from './work';

/**
 * What has to be done before the main method: make safe, take off what would be driven in or
 * hide the concrete, find the edge of the damage.
 * Source: common practice, no published source, except where a reason names figures.
 */
export function callBefore(work: Work, situation: Situation): void {
  const { site, zone, demands, method } = situation;
  call(work, 'make-safe', { rule: 'make-safe-first' });
  if (site.setting !== 'open') call(work, 'make-safe', { rule: 'engine-outside' });

  if (demands.oil)
    call(work, 'degrease', { rule: 'oil-before-anything' }, { rule: 'soaked-oil-must-go' });
  const washes = method === 'pressure-wash' || situation.rest === 'pressure-wash';
  if (zone.contamination.includes('growth') && !washes)
    call(work, 'strip-growth', { rule: 'growth-first' });
  if (demands.stripped) call(work, 'strip-coating', { rule: 'coating-by-scraper' });

  callSounding(work, situation);
  if (makesHole(method, zone)) callSawCut(work, situation);
  else if (isFirmHollow(zone))
    call(work, 'saw-cut', squareEdge, sawDepth(site, zone), { rule: 'no-feather-edge' });
}

/** What was ticked at the site and touches this work: a wash reaches no cable, and takes no prop away. */
export function callWarnings(work: Work, { site, zone, method }: Situation): void {
  const { warnings } = site;
  if (!warnings.length) return;
  const reach = reachOf(zone, method, work);
  const touched: Readonly<Partial<Record<Warning, boolean>>> = {
    'holds-something-up': reach.removes,
    'tendons-possible': reach.deep,
    'buried-services': reach.cuts,
  };
  const found = warnings.filter((warning) => touched[warning] ?? true);
  if (found.length) call(work, 'make-safe', { rule: 'warnings-first', facts: { warnings: found } });
}

/** Damage on a floor begins with sounding the whole slab, not the part that is known to be bad. */
function callSounding(work: Work, { site, zone, demands, method }: Situation): void {
  const damaged = zone.looseness !== 'tight' || isFirmHollow(zone);
  const cut = makesHole(method, zone) || demands.bar || chasesCrack(site, zone);
  if (isFloor(site.element) && (damaged || cut))
    call(work, 'sound-and-mark', { rule: 'sound-whole-slab' });
  else if (cut || zone.looseness === 'hollow')
    call(work, 'sound-and-mark', { rule: 'sound-before-cutting' });
  if (zone.steel === 'rust-stain') call(work, 'sound-and-mark', { rule: 'stain-look-beneath' });
}

const squareEdge = { rule: 'square-edge', figures: ['patch.min-corner'] } as const;

/** A break-out gets a square sawn edge, past the damage; never a feather edge, never into steel. */
function callSawCut(work: Work, { site, zone }: Pick<Situation, 'site' | 'zone'>): void {
  call(work, 'saw-cut', squareEdge, sawDepth(site, zone), {
    rule: 'past-the-damage',
    facts: { frost: site.freezeThaw },
    figures: [site.freezeThaw === 'often' ? 'patch.past-damage-frost' : 'patch.past-damage'],
  });
  call(work, 'saw-cut', { rule: 'slurry-caught' });
  if (zone.steel !== 'none-seen' && zone.barCover === undefined)
    call(work, 'saw-cut', { rule: 'shallow-edge-unsawn' });
}

const layers: ReadonlySet<Finish> = new Set<Finish>(['self-levelling', 'thin-overlay', 'overlay']);

/** The main method itself, and how it is to be done here; where bars lead, what the rest needs too. */
export function callMethod(work: Work, situation: Situation): void {
  const { method, rest } = situation;
  callOne(work, situation);
  if (rest !== method) callOne(work, { ...situation, method: rest });
}

function callOne(work: Work, { site, zone, demands, method }: Situation): void {
  const loose = zone.looseness !== 'tight';
  // Sound concrete has no step of its own for it, and what lies under a layer cannot be mended later.
  if (isFloor(site.element) && layers.has(zone.finish) && !work['sound-and-mark'])
    call(work, method, { rule: 'sound-before-layer' });
  const coatings = demands.contaminants.filter((each) => each.endsWith('-coating'));
  if (coatings.length)
    call(work, method, { rule: 'coating-comes-off', facts: { contamination: coatings } });
  call(work, method, { rule: 'does-the-removal', facts: removalFacts(demands) });
  if (method === 'break-out') {
    if (!isFloor(site.element) || demands.bar)
      call(work, method, {
        rule: 'light-hammer-here',
        figures: ['hammer.above-steel', 'hammer.at-steel'],
      });
    else
      call(work, method, {
        rule: 'hammer-for-patch',
        figures: [demands.place === 'floor' ? 'hammer.large-patch' : 'hammer.small-patch'],
      });
    if (!isSpot(zone)) call(work, method, { rule: 'water-jet-alternative' });
    callDepthDoubt(work, method, { site, zone });
    return;
  }
  if (method === 'pressure-wash') {
    if (zone.contamination.includes('growth')) call(work, method, { rule: 'growth-washed-off' });
    call(work, method, { rule: 'slurry-caught' });
    return;
  }
  if (method === 'water-jet') {
    if (makesHole(method, zone)) callDepthDoubt(work, method, { site, zone });
    return;
  }
  if (loose) {
    if (method !== 'grind' && zone.depth === '3-to-6')
      call(work, method, { rule: 'several-passes', figures: ['depth.shallow'] });
    call(work, method, { rule: 'depth-each-pass' });
    if (zone.looseness === 'hollow') call(work, method, { rule: 'sound-what-is-under' });
  }
  if (demands.profile) call(work, method, { rule: 'profile-after-first-pass' });
  if (method === 'shotblast' || method === 'abrasive-blast') {
    if (method === 'shotblast') call(work, method, { rule: 'dry-before-shot' });
    call(work, method, { rule: 'spent-grit-away', facts: { method } });
  }
  const floorMachine = method === 'grind' || method === 'scarify' || method === 'shotblast';
  if (floorMachine && demands.place === 'floor') callBorder(work, { zone, demands, method });
}

/**
 * A floor machine leaves a strip only where something stands upright at the edge, and the hand tool
 * there has to reach the roughness of the rest: a plain hand grinder leaves it nearly smooth.
 * Source: common practice, no published source.
 */
function callBorder(
  work: Work,
  { zone, demands, method }: Pick<Situation, 'zone' | 'demands' | 'method'>,
): void {
  if (zone.border === 0) return;
  if (zone.border === undefined) {
    call(work, method, { rule: 'border-if-upright' });
    return;
  }
  const ground = method === 'grind' && !demands.heavyCoating;
  call(work, 'edge-work', {
    rule: ground ? 'border-by-grinder' : 'border-by-bush-hammer',
    facts: { length: zone.border },
  });
}

/** Past the top third of a slab a partial-depth repair is doubtful: the reader should know before breaking. */
function callDepthDoubt(
  work: Work,
  method: MethodId,
  { site, zone }: Pick<Situation, 'site' | 'zone'>,
): void {
  if (site.thickness === 'unknown') {
    call(work, method, { rule: 'thickness-unknown', figures: ['depth.full-limit'] });
    return;
  }
  const third = site.thickness * valueOf('depth.partial-limit');
  const [least, most] = holeRange(site.thickness, zone);
  if (most > third)
    call(work, method, {
      rule: 'depth-past-third',
      facts: { thickness: site.thickness, third, surely: least > third ? 'yes' : 'no' },
      figures: ['depth.partial-limit', 'depth.full-limit'],
    });
}
