import { doubtfulPast } from '$lib/advice/doubt';
import type { Hold, Verdict } from '$lib/advice/types';
import type { Job } from '$lib/answers/job';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import type { InterviewPlace } from '$lib/interview/context';
import { restsAt } from '$lib/interview/rests-at';
import { keptAwayOf, type KeptAway } from '$lib/plan/kept-away';
import type { Plan } from '$lib/plan/plan';
import type { MethodId } from '$shared/methods';
import { zoneNames } from '$words/zone-names';

/** A zone as its line in the list shows it. */
export interface ZoneView {
  readonly id: string;
  /** From 0. */
  readonly place: number;
  readonly label: string;
  readonly verdict: Verdict;
  /** The method, or what it will be once its holds are cleared. */
  readonly method: MethodId | null;
  /** m2; null while it is not known */
  readonly area: number | null;
  /** The depth past which a patch is doubtful there, mm; null where the hole stays above it. */
  readonly doubtfulPast: number | null;
  /** Where people are kept away from it; null where they are not. */
  readonly away: KeptAway | null;
  readonly holds: readonly Hold[];
  readonly possibleHolds: readonly Hold[];
  /** Open answers that still decide. */
  readonly open: readonly QuestionId[];
  readonly begun: boolean;
  /** The question its interview stands at. */
  readonly next: InterviewPlace;
}

/** Answers are never changed in place, so the same objects always stand at the same question. */
const remembered = new WeakMap<ZoneAnswers, { site: SiteAnswers; next: InterviewPlace }>();

/** Replayed once for the same answers: in a job of hundreds of zones an edit changes one. */
function nextFor(site: SiteAnswers, zone: ZoneAnswers): InterviewPlace {
  const known = remembered.get(zone);
  if (known?.site === site) return known.next;
  const next = restsAt({ site, zone });
  remembered.set(zone, { site, next });
  return next;
}

const areaOf = (area: ZoneAnswers['area']): number | null =>
  typeof area === 'number' ? area : null;

/** The last line of each zone: one that says the same is the same, and its row is not drawn anew. */
const lines = new Map<string, { view: ZoneView; text: string }>();
function settled(view: ZoneView): ZoneView {
  const text = JSON.stringify(view);
  const before = lines.get(view.id);
  if (before?.text === text) return before.view;
  lines.set(view.id, { view, text });
  return view;
}

/** The lines of the list, from the job and its plan. */
export function zoneViews(job: Job, plan: Plan): ZoneView[] {
  const planned = new Map(plan.zones.map((zone) => [zone.id, zone]));
  const held = new Map(plan.held.map((zone) => [zone.id, zone]));
  const names = zoneNames(job.zones);
  // What is drawn outranks what was typed, as the plan has it.
  const drawn = plan.drawn.zones;
  return job.zones.map((zone, place): ZoneView => {
    const { id, answers } = zone;
    const done = planned.get(id);
    const waits = held.get(id);
    const { holds, possibleHolds } = done ?? waits ?? { holds: [], possibleHolds: [] };
    return settled({
      id,
      place,
      label: names[place] ?? '',
      verdict:
        waits?.verdict ?? (holds.length + possibleHolds.length ? 'find-out-first' : 'prepare'),
      method: done?.method ?? null,
      area: areaOf(drawn[place]?.answers.area),
      doubtfulPast: done ? doubtfulPast(done.advice.steps) : null,
      away: keptAwayOf(plan.drawn.site, { holds, possibleHolds }),
      holds,
      possibleHolds,
      open: waits?.open ?? [],
      begun: Object.keys(answers).length > 0,
      next: nextFor(job.site, answers),
    });
  });
}
