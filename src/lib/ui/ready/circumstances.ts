import { isFloor } from '$lib/advice/place';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import type { CheckResult } from '$lib/answers/readiness-record';
import { choicesOf } from '$lib/answers/questions';
import { keptAwayOf, type KeptAway } from '$lib/plan/kept-away';
import { needsOf } from '$lib/readiness/open-needs';
import type { ZoneCircumstances } from '$lib/readiness/zone';
import { adviseTried } from '$lib/trial/chain';
import type { TriedAnswers } from '$lib/answers/trial-record';
import type { OwnFigures } from '$shared/figures';

/** Whether enough is known of a zone for its checks to mean anything. */
export const hasBegun = (zone: Zone): boolean => Object.keys(zone.answers).length > 0;

type Fixed = Omit<ZoneCircumstances, 'now'> & {
  /** Where people are kept away from it; null where they are not. */
  readonly away: KeptAway | null;
};

/** What was worked out last, by a zone's answers: results are typed far oftener than answers change. */
const remembered = new WeakMap<
  ZoneAnswers,
  {
    readonly site: SiteAnswers;
    readonly trial: Zone['trial'];
    readonly chloride: CheckResult | undefined;
    readonly own: OwnFigures | undefined;
    readonly drawing: Job['survey'];
    readonly inDoubt: TriedAnswers['partInDoubt'];
    readonly found: Fixed;
  }
>();

/** What a zone of a job is judged by, but for the time, which runs on. Worked out once for the same answers. */
export function circumstancesOf({ site, own, survey }: Job, zone: Zone, drawn: Zone = zone): Fixed {
  const { answers, trial } = zone;
  // Of what is typed here the advice hangs on this alone.
  const chloride = zone.readiness?.results.chloride;
  const drawing = drawn === zone ? undefined : survey;
  const inDoubt = (drawn.answers as TriedAnswers).partInDoubt;
  const last = remembered.get(answers);
  const same =
    last &&
    last.site === site &&
    last.trial === trial &&
    last.own === own &&
    last.drawing === drawing &&
    last.inDoubt === inDoubt;
  if (same && last.chloride === chloride) return last.found;
  const found = circumstances(site, drawn, own);
  remembered.set(answers, { site, trial, chloride, own, drawing, inDoubt, found });
  return found;
}

function circumstances(site: SiteAnswers, zone: Zone, own?: OwnFigures): Fixed {
  const { answers } = zone;
  const { advice } = adviseTried(site, zone, undefined, own);
  return {
    needs: needsOf(site, answers, advice, own),
    area: answers.area ?? 'unknown',
    method: advice.method ?? advice.outcomes[0]?.method ?? null,
    floor: (site.element ?? choicesOf('element')).every(isFloor),
    away: keptAwayOf(site, advice),
    held: advice.verdict === 'stop' || advice.holds.length + advice.possibleHolds.length > 0,
    ...(own && { own }),
  };
}
