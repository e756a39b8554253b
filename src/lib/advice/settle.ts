import type { HazardId, MethodId } from '$shared/methods';
import { asSet, hazardsHere, hazardsIn, hazardsOfHolds, ofTakingUp, throwDust } from './cautions';
import { choose, type Choice } from './choice';
import { demandsOf } from './demands';
import { findOutFor } from './find-out';
import { fullDepthHold } from './hole';
import { holdsOf, isBeyondSurface, reachOf, verdictOf } from './holds';
import { workFor } from './steps/all';
import { targetOf } from './target';
import type { Advice, Hold, Rejection, SettledSite, SettledZone, Step, Verdict } from './types';
import { whyNotOthers } from './why-not';
import { whyThis } from './why-this';

/** Advice for one combination of answers about which nothing is open. */
export function adviseSettled(site: SettledSite, zone: SettledZone): Advice {
  const demands = demandsOf(site, zone);
  const choice = choose(demands);
  const { method, rest, spent } = choice;
  const situation = { site, zone, demands, method, rest };
  const reach = reachOf(site, zone, method, spent);
  const holds = holdsOf(site, zone, reach, fullDepthHold(site, zone));
  const verdict = verdictOf(holds);
  const underneath = isBeyondSurface(holds) ? null : method;
  const hazards = hazardsHere(site, zone);
  const work = workFor(situation);
  const dusty = throwDust(work.map(({ id }) => id));
  const steps = work.map(({ id, why }): Step => ({
    id,
    why,
    hazards: ofTakingUp(id, hazards(id), dusty),
  }));
  const target = targetOf(situation, underneath);
  return {
    verdict,
    method: verdict === 'prepare' ? method : null,
    underneath,
    beside: underneath === null || rest === method ? null : rest,
    reasons: verdict === 'prepare' ? whyThis(choice) : [...holds],
    holds,
    rejections: rejectAll(choice, verdict, underneath, holds),
    steps: verdict === 'stop' ? [] : steps,
    target,
    cautions: cautionsOf(underneath === null ? [] : steps, site, zone, holds),
    findOut: findOutFor(site, zone, holds),
  };
}

/** One rejection for every method that is not the advice; a held method says what holds it. */
function rejectAll(
  choice: Choice,
  verdict: Verdict,
  underneath: MethodId | null,
  holds: readonly Hold[],
): Rejection[] {
  const others = whyNotOthers(choice);
  if (verdict === 'prepare') return others;
  const held = (method: MethodId): Rejection => ({
    method,
    rule: 'held',
    wouldDo: false,
    facts: { holds: holds.map((hold) => hold.rule) },
  });
  // Where it is the test patches that leave none, each says how it failed.
  if (choice.spent) return others;
  const waits = (other: Rejection) =>
    isHeld(other, verdict, underneath === null) ? held(other.method) : other;
  return [held(choice.method), ...others.map(waits)];
}

/**
 * Whether what holds the work is all that is said against a method. Under a stop nothing is offered
 * in the place of the method: what would do takes concrete off too, and must wait.
 * @param beyond whether no surface method stands
 */
const isHeld = ({ wouldDo }: Rejection, verdict: Verdict, beyond: boolean): boolean =>
  beyond || (verdict === 'stop' && wouldDo);

/**
 * The hazards of all the work, each once. Before a stop no step is listed, but whoever goes near
 * still needs to know what makes the place and the work dangerous.
 */
function cautionsOf(
  steps: readonly Step[],
  site: SettledSite,
  zone: SettledZone,
  holds: readonly Hold[],
): readonly HazardId[] {
  let present = asSet(hazardsOfHolds(holds, site, zone));
  for (const step of steps) present |= asSet(step.hazards);
  return hazardsIn(present);
}
