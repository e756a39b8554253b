import type { Advice, SettledSite, SettledZone } from '$lib/advice/types';
import { methodIds, type StepId } from '$shared/methods';
import { expectedHazards } from './trade-hazards';
import type { TradeZone } from './trade-types';
import { freesBar, isFirmHollow, isFloor, moistureOf } from './trade-zone';

/** A zone of the program, as the second table takes it. */
export const asTrade = (zone: SettledZone) => zone as TradeZone;

/** The first promise an advice breaks, in words; null when it keeps them all. */
export function wrong(site: SettledSite, zone: SettledZone, advice: Advice): string | null {
  const { verdict, method, rejections, steps, cautions, target, reasons, holds } = advice;
  if (!['prepare', 'find-out-first', 'stop'].includes(verdict)) return `verdict ${verdict}`;
  if ((method !== null) !== (verdict === 'prepare')) return `${method} with verdict ${verdict}`;
  if (reasons.length === 0) return 'no reason';
  if ((holds.length === 0) !== (verdict === 'prepare')) return 'verdict and holds disagree';
  const others = methodIds.filter((id) => id !== method);
  if (
    rejections.length !== others.length ||
    others.some((id) => !rejections.some((each) => each.method === id))
  )
    return 'not one rejection for each other method';
  if ((zone.finish === 'undecided') !== (target.profile === null))
    return 'profile and finish disagree';
  if (method === 'water-jet') return 'water jetting as first advice';
  for (const step of steps) {
    if (/acid|solvent/.test(step.id)) return `acid or solvent: ${step.id}`;
    if (!isFloor(site) && (step.id === 'scarify' || step.id === 'shotblast'))
      return 'floor machine off the floor';
    for (const hazard of [...expectedHazards(step.id, site, asTrade(zone)), ...step.hazards])
      if (!(cautions as readonly string[]).includes(hazard))
        return `${step.id} brings ${hazard} without its caution`;
  }
  if (verdict === 'stop') return steps.length ? 'steps after a stop' : null;
  return leftDirty(zone, advice) ?? outOfOrder(site, zone, advice);
}

/** A contaminant that no step and no method takes care of. */
function leftDirty(zone: SettledZone, { steps, underneath }: Advice): string | null {
  const order = steps.map((step) => step.id);
  const has = (...ids: string[]) => ids.some((id) => order.includes(id as never));
  const cleared = {
    oil: has('degrease'),
    growth: has('strip-growth', 'pressure-wash'),
    // Under what wants it dry nothing is washed last: it is brushed and vacuumed off.
    'salt-bloom': has('pressure-wash', 'final-wash', 'vacuum'),
    'thin-coating': underneath !== 'pressure-wash',
    'thick-coating': has('strip-coating', 'scarify', 'break-out'),
    'rubbery-coating': has('strip-coating', 'scarify', 'break-out'),
  };
  for (const each of zone.contamination) if (!cleared[each]) return `${each} left without a step`;
  if (has('degrease') && order.indexOf('degrease') > order.indexOf(underneath as never))
    return 'degreasing after the method it must come before';
  return null;
}

/** The order of the trade's day; each pair is "before, after" wherever both are there. */
const before: readonly (readonly [StepId, StepId])[] = [
  ['sound-and-mark', 'saw-cut'],
  ['saw-cut', 'break-out'],
  ['break-out', 're-sound'],
  ['re-sound', 'scarify'],
  ['scarify', 'blast-clean'],
  ['blast-clean', 'clean-bar'],
  ['clean-bar', 'vacuum'],
  ['vacuum', 'final-wash'],
  ['final-wash', 'check-ready'],
  ['check-ready', 'wet-or-dry'],
  ['fill-level', 'fill-cure'],
  ['fill-cure', 'wet-or-dry'],
  ['wet-or-dry', 'moisture-test'],
  ['moisture-test', 'last-clean'],
  ['last-clean', 'cover'],
  ['cover', 'cure'],
];

/** What the trade wants of the order and of the end of the work; all common practice, no source. */
function outOfOrder(site: SettledSite, zone: SettledZone, { steps }: Advice): string | null {
  const order = steps.map((step) => step.id);
  const has = (id: StepId) => order.includes(id);
  for (const [first, then] of before)
    if (has(first) && has(then) && order.indexOf(first) > order.indexOf(then))
      return `${then} before ${first}`;
  const dry = moistureOf(asTrade(zone)) === 'dry';
  const byHand = ['break-out', 'chase-crack', 'route-crack', 'free-bar'] as const;
  // Before a fill the salt at the steel is rinsed off: the fill is mortar, on a damp surface.
  if (dry && has('final-wash') && !has('fill-level')) return 'washed last under what wants it dry';
  if (!dry && !has('pressure-wash') && !has('final-wash'))
    return 'never washed though it may be wet';
  if (dry !== has('moisture-test')) return 'moisture test and finish disagree';
  if (!has('check-ready') || !has('last-clean')) return 'no check, or no last cleaning';
  if (has('cover') !== (zone.finish !== 'undecided')) return 'covering and finish disagree';
  if (has('cover') && order.indexOf('cover') !== order.indexOf('last-clean') + 1)
    return 'something between the last cleaning and the covering';
  if (freesBar(asTrade(zone)) && !(has('free-bar') && has('clean-bar'))) return 'bar not undercut';
  if ((has('break-out') || isFirmHollow(asTrade(zone))) && !has('saw-cut'))
    return 'no square sawn edge where a hole is filled';
  if (byHand.slice(0, 2).some(has) && !has('re-sound')) return 'broken out and not sounded again';
  if (isFloor(site) && zone.looseness !== 'tight' && !has('sound-and-mark'))
    return 'damage on a floor without sounding the whole slab';
  if (has('edge-work') && !zone.border) return 'a border where nothing upright stands';
  const walkBehind = has('scarify') || has('shotblast');
  return walkBehind && zone.border && !has('edge-work') ? 'the border is left' : null;
}
