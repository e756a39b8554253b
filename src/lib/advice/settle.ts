import { hazardIds, type HazardId, type MethodId } from '$shared/methods';
import { hazardsAt } from './cautions';
import { choose, rejectionsFor, type Choice } from './choice';
import { demandsOf, type Demands } from './demands';
import { findOutFor } from './find-out';
import { fullDepthHold, holdsOf, reachOf } from './holds';
import { callAfter } from './steps/after';
import { callBefore, callMethod } from './steps/before';
import { callCracks } from './steps/cracks';
import { callSteel } from './steps/steel';
import { workOrder, type Work } from './steps/work';
import { targetOf } from './target';
import type { Advice, Hold, Rejection, SettledSite, SettledZone, Step, Verdict } from './types';

/** Holds that leave no surface method standing at all: the concrete or its bed is what failed. */
const beyondSurface = new Set(['fire-or-chemical', 'settled-or-rocking', 'full-depth', 'through']);

const verdictOf = (holds: readonly Hold[]): Verdict =>
  holds.some((hold) => hold.verdict === 'stop')
    ? 'stop'
    : holds.length
      ? 'find-out-first'
      : 'prepare';

/** Advice for one combination of answers about which nothing is open. */
export function adviseSettled(site: SettledSite, zone: SettledZone): Advice {
  const demands = demandsOf(site, zone);
  const choice = choose(demands);
  const { method } = choice;
  const situation = { site, zone, demands, method };
  const work: Work = {};
  callBefore(work, situation);
  callMethod(work, situation);
  callCracks(work, situation);
  callSteel(work, situation);
  callAfter(work, situation);

  const holds = holdsOf(site, zone, reachOf(zone, method, work), fullDepthHold(site, zone));
  const verdict = verdictOf(holds);
  const underneath = holds.some((hold) => beyondSurface.has(hold.rule)) ? null : method;
  const steps = verdict === 'stop' ? [] : stepsOf(work, site, zone);
  const target = targetOf(site, zone, demands, underneath);
  return {
    verdict,
    method: verdict === 'prepare' ? method : null,
    underneath,
    reasons: verdict === 'prepare' ? choice.reasons : [...holds],
    holds,
    rejections: rejectAll(choice, demands, verdict, underneath, holds),
    steps,
    target,
    cautions: cautionsOf(steps, site, zone, holds),
    findOut: findOutFor(site, zone, holds),
  };
}

function stepsOf(work: Work, site: SettledSite, zone: SettledZone): Step[] {
  const steps: Step[] = [];
  for (const id of workOrder) {
    const why = work[id];
    if (why) steps.push({ id, why, hazards: hazardsAt(id, site, zone) });
  }
  return steps;
}

/** One rejection for every method that is not the advice; a held method says what holds it. */
function rejectAll(
  choice: Choice,
  demands: Demands,
  verdict: Verdict,
  underneath: MethodId | null,
  holds: readonly Hold[],
): Rejection[] {
  const others = rejectionsFor(choice, demands);
  if (verdict === 'prepare') return others;
  const held = (method: MethodId): Rejection => ({
    method,
    rule: 'held',
    wouldDo: false,
    facts: { holds: holds.map((hold) => hold.rule) },
  });
  return underneath === null
    ? [held(choice.method), ...others.map(({ method }) => held(method))]
    : [held(choice.method), ...others];
}

/**
 * The hazards of all steps, each once. Before a stop no step is listed, but whoever goes near
 * still needs to know what makes the place dangerous.
 */
function cautionsOf(
  steps: readonly Step[],
  site: SettledSite,
  zone: SettledZone,
  holds: readonly Hold[],
): HazardId[] {
  const present = new Set<HazardId>();
  for (const step of steps) for (const hazard of step.hazards) present.add(hazard);
  for (const hold of holds) {
    if (hold.who === 'engineer') present.add('structure');
    if (hold.rule === 'old-coating') present.add('lead-asbestos');
    if (hold.rule === 'buried-services') present.add('electric');
  }
  if (holds.length)
    for (const hazard of hazardsAt('break-out', site, zone))
      if (hazard === 'overhead') present.add(hazard);
  return hazardIds.filter((hazard) => present.has(hazard));
}
