import { carriesLoad } from '$lib/answers/elements';
import { rangeOfBand } from '$lib/answers/depth';
import type { DepthBand, Looseness } from '$lib/answers/questions';
import { rangeOf, valueOf } from '$shared/figures';
import { methodIds, type MethodId } from '$shared/methods';
import { isFloor } from './place';
import { showsBar, type Demands } from './demands';
import { judgeRemoval } from './methods/judge';
import type { Hold, SettledSite, SettledZone } from './types';

/**
 * How deep the finished hole will be, which is what decides between a patch and full depth: the
 * damage, the step into sound concrete where it is broken out, and the space behind a freed bar.
 */

type Damage = Pick<SettledZone, 'depth' | 'depthMm' | 'looseness'>;
type Bars = Pick<SettledZone, 'steel' | 'barCover' | 'barDiameter'>;

/** Asked of a zone many times over, of few bands and states: each is judged once. */
const reachedOnly: Partial<Record<Looseness, Partial<Record<DepthBand, boolean>>>> = {};

/** There is loose concrete, and no method gentler than breaking out gets it off. */
export const onlyBreakingReaches = ({ depth: band, looseness }: Damage): boolean =>
  ((reachedOnly[looseness] ??= {})[band] ??= methodIds.every(
    (method) =>
      method === 'break-out' ||
      method === 'water-jet' ||
      judgeRemoval(method, { remove: { band, looseness } } as Demands) !== null,
  ));

/** Whether a method makes a hole here: breaking out does, a jet where nothing gentler reaches or a bar shows. */
export const makesHole = (method: MethodId, zone: Damage & Pick<Bars, 'steel'>): boolean =>
  method === 'break-out' ||
  (method === 'water-jet' && (onlyBreakingReaches(zone) || showsBar(zone)));

/**
 * Clear space to leave behind a freed bar, mm.
 * @param aggregate largest aggregate of the repair material, mm; 0 where it is not known yet
 * Source: ICRI 310.1R and ACI PRC-364.6 (figures `bar.clear`, `bar.clear-over-aggregate`).
 */
export const clearBehindBar = (aggregate: number): number =>
  Math.max(valueOf('bar.clear'), aggregate + valueOf('bar.clear-over-aggregate'));

/**
 * The least and the greatest depth the hole may come to, mm.
 * A bar nobody has measured is taken for a usual one, and its cover for no more than the damage
 * that has laid it bare.
 * Source: UFC 3-270-03 for the step into sound concrete (figure `patch.into-sound`), UFGS 03 93 for
 * the larger clearance (figure `bar.clear-military`); the rest is arithmetic.
 */
export function holeRange(
  thickness: number | 'unknown',
  zone: Damage & Bars,
): readonly [number, number] {
  const [low, high] =
    zone.depthMm === undefined ? rangeOfBand(zone.depth, thickness) : [zone.depthMm, zone.depthMm];
  const beyond = onlyBreakingReaches(zone) ? valueOf('patch.into-sound') : 0;
  const damage = [low + beyond, high + beyond] as const;
  if (!showsBar(zone)) return damage;
  const [thin, thick] = zone.barDiameter
    ? [zone.barDiameter, zone.barDiameter]
    : rangeOf('bar.unmeasured');
  const clear = clearBehindBar(0);
  const clearMost = Math.max(clear, valueOf('bar.clear-military'));
  const [least, most] = zone.barCover === undefined ? [0, high] : [zone.barCover, zone.barCover];
  return [Math.max(damage[0], least + thin + clear), Math.max(damage[1], most + thick + clearMost)];
}

/**
 * What the depth of the hole means for the repair: that part is replaced through its full depth,
 * or somebody has to measure before it is known. Null where a patch stands, however doubtful.
 * A firm hollow is a form to fill, but past half of a known thickness it is no patch either.
 * A slab on which nobody measured the thickness is taken for a usual one, and never condemned.
 * Source: UFC 3-270-04 (figure `depth.full-limit`).
 */
export function fullDepthHold(
  site: Pick<SettledSite, 'element' | 'thickness'>,
  zone: Damage & Bars,
): Hold | null {
  // What carries is replaced as an engineer says.
  const carries = carriesLoad(site.element);
  const who = carries ? 'engineer' : 'concrete-contractor';
  if (zone.depth === 'through')
    return { rule: 'through', verdict: 'stop', who, ...(carries && { facts: { who } }) };
  const figures = ['depth.full-limit'] as const;
  const { thickness } = site;
  if (thickness === 'unknown') {
    const half = valueOf('depth.unknown-slab') * valueOf('depth.full-limit');
    const [, deepest] = holeRange('unknown', zone);
    const doubtful = isFloor(site.element) ? deepest >= half : zone.depth === 'over-50';
    return doubtful && (onlyBreakingReaches(zone) || showsBar(zone))
      ? { rule: 'thickness-decides', verdict: 'find-out-first', who: 'crew', figures }
      : null;
  }
  const half = thickness * valueOf('depth.full-limit');
  const [least, most] = holeRange(thickness, zone);
  const facts = { half, thickness };
  if (least >= half)
    return {
      rule: 'full-depth',
      verdict: 'stop',
      who,
      facts: { ...facts, hole: least, looseness: zone.looseness, ...(carries && { who }) },
      figures: [...figures, 'patch.into-sound'],
    };
  return most >= half
    ? {
        rule: 'thickness-decides',
        verdict: 'find-out-first',
        who: 'crew',
        facts: { ...facts, hole: most },
        figures: [...figures, 'patch.into-sound'],
      }
    : null;
}
