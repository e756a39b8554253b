import type { Advice, SettledSite, SettledZone } from '$lib/advice/types';
import { methodIds } from '$shared/methods';
import { expectedHazards, expectedShortfall, isFloor } from './oracle';

/** The first promise an advice breaks, in words; null when it keeps them all. */
export function wrong(site: SettledSite, zone: SettledZone, advice: Advice): string | null {
  const { verdict, method, underneath, rejections, steps, cautions, target, reasons } = advice;
  if (!['prepare', 'find-out-first', 'stop'].includes(verdict)) return `verdict ${verdict}`;
  if ((method !== null) !== (verdict === 'prepare')) return `${method} with verdict ${verdict}`;
  if (reasons.length === 0) return 'no reason';
  const others = methodIds.filter((id) => id !== method);
  if (
    rejections.length !== others.length ||
    others.some((id) => !rejections.some((each) => each.method === id))
  )
    return 'not one rejection for each other method';
  if (!target.moisture) return 'no target';
  if ((zone.finish === 'undecided') !== (target.profile === null))
    return 'profile and finish disagree';
  if (method === 'water-jet') return 'water jetting as first advice';
  if (underneath) {
    const shortfall = expectedShortfall(underneath, site, zone);
    if (shortfall) return `${underneath} does not meet ${shortfall}`;
  }
  for (const step of steps) {
    if (/acid|solvent/.test(step.id)) return `acid or solvent: ${step.id}`;
    if (!isFloor(site) && (step.id === 'scarify' || step.id === 'shotblast'))
      return 'floor machine off the floor';
    for (const hazard of [...expectedHazards(step.id, site, zone), ...step.hazards])
      if (!cautions.includes(hazard)) return `${step.id} brings ${hazard} without its caution`;
  }
  if (verdict !== 'stop') return leftDirty(zone, advice);
  return steps.length ? 'steps after a stop' : null;
}

/** A contaminant that no step and no method takes care of. */
function leftDirty(zone: SettledZone, { steps, underneath }: Advice): string | null {
  const order = steps.map((step) => step.id);
  const has = (...ids: string[]) => ids.some((id) => order.includes(id as never));
  const cleared = {
    oil: has('degrease'),
    growth: has('strip-growth', 'pressure-wash'),
    'salt-bloom': has('pressure-wash', 'final-wash'),
    'thin-coating': underneath !== 'pressure-wash',
    'thick-coating': has('strip-coating', 'scarify', 'break-out'),
    'rubbery-coating': has('strip-coating', 'scarify', 'break-out'),
  };
  for (const each of zone.contamination) if (!cleared[each]) return `${each} left without a step`;
  if (has('degrease') && order.indexOf('degrease') > order.indexOf(underneath as never))
    return 'degreasing after the method it must come before';
  return null;
}

/** The stops, restated from the trade rather than from the code. Common practice, no source. */
export function unsafe(site: SettledSite, zone: SettledZone, advice: Advice): string | null {
  const { verdict, steps } = advice;
  const warned = (...ids: string[]) => site.warnings.some((each) => ids.includes(each));
  const carries =
    ['suspended-slab', 'wall', 'soffit'].includes(site.element) || warned('holds-something-up');
  const breaks = ['hollow', 'rotten'].includes(zone.looseness);
  const bars = zone.steel === 'exposed' || zone.steel === 'corroded';
  if (carries && (breaks || bars) && verdict !== 'stop')
    return 'removes structure without an engineer';
  if (warned('tendons-possible') && (breaks || bars || zone.cracks === 'crumbling'))
    if (verdict !== 'stop') return 'cuts where tendons may be';
  if (warned('settled-or-rocking', 'fire-or-chemical') && verdict !== 'stop') return 'no stop';
  if (zone.cracks === 'moving' && verdict !== 'stop') return 'moving crack filled';
  if (warned('map-cracking', 'old-coating-or-adhesive') && verdict === 'prepare')
    return 'not found out';
  if (warned('buried-services') && (breaks || bars) && verdict === 'prepare')
    return 'breaks over services';
  const free = steps.some(({ id }) => id === 'free-bar');
  return bars && verdict !== 'stop' && !free ? 'bar not undercut' : null;
}
