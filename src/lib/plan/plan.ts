import { adviseZone } from '$lib/advice/advise';
import { missingQuestions, neverInTheWay } from '$lib/advice/relevance';
import type { Advice, Hold } from '$lib/advice/types';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Job, Zone } from '$lib/answers/job';
import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { drawnJob, drawnPatches } from '$lib/survey/drawn';
import { layPatches, rectangleRing, worstFrost, type PatchLayout } from '$lib/survey/patches';
import { surveyOf, type SurveyResult } from '$lib/survey/survey';
import { rangeOf, type OwnFigures } from '$shared/figures';
import type { MethodId, StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { sum, type Amount, type Span } from './amount';
import { layDays, type Schedule } from './days';
import { substituteFor, type Substitute } from './machines';
import { orderSteps, type PlanStep } from './order';
import { quantitiesOf, totalsOf, type Quantities, type ZoneWork } from './quantities';
import { tasksOf, type Task } from './tasks';
import { placeOfZone, toolingOf, type Tooling } from './tools';

export interface PlannedZone {
  readonly id: string;
  readonly method: MethodId;
  /** The advice the zone's part of the plan follows from. */
  readonly advice: Advice;
  /** The method is what it will be once these are cleared. */
  readonly holds: readonly Hold[];
  /** What may have to be cleared as well, by answers still open. */
  readonly possibleHolds: readonly Hold[];
  readonly quantities: Quantities;
  readonly patches: PatchLayout | null;
  readonly steps: readonly StepId[];
  /** The tool of each step, as the advice and the place of the zone have it. */
  readonly tools: ReadonlyMap<StepId, Tooling>;
}

/** A zone the plan has to leave out, and what for. */
export interface HeldZone {
  readonly id: string;
  readonly verdict: 'stop' | 'find-out-first';
  readonly holds: readonly Hold[];
  readonly possibleHolds: readonly Hold[];
  /** Open answers that still decide. */
  readonly open: readonly QuestionId[];
}

export interface TimedStep extends PlanStep {
  /** Hands-on hours over all its zones; null where it takes none of its own. */
  readonly hours: Amount | null;
  readonly tools: readonly ToolId[];
}

/** The plan of a whole job. */
export interface Plan {
  readonly zones: readonly PlannedZone[];
  readonly held: readonly HeldZone[];
  readonly steps: readonly TimedStep[];
  /** Every step on every zone: the one reckoning of hours, people and waits. */
  readonly tasks: readonly Task[];
  readonly totals: Quantities;
  readonly schedule: Schedule;
  readonly substitutes: readonly Substitute[];
  /** Days after the repair before cars may use it. */
  readonly trafficDays: { readonly cars: Span; readonly heavy: Span };
}

/** What the plan needs of a zone's advice; worked out once for the same answers. */
interface ZonePlan {
  readonly advice: Advice | null;
  readonly holds: readonly Hold[];
  readonly possibleHolds: readonly Hold[];
  readonly held: Pick<HeldZone, 'verdict' | 'open'> | null;
}

/** Answers are never changed in place, so the same objects always mean the same advice. */
const remembered = new WeakMap<ZoneAnswers, { site: SiteAnswers; plan: ZonePlan }>();

/** Zones with equal answers share their advice, however many there are. */
const alike = new Map<string, ZonePlan>();
const mostAlike = 2000;
/** With this many questions unanswered nothing can be planned, and no time is spent on what might be. */
const tooFewAnswers = 4;
/** How a plan comes to the advice for a zone. */
export type AdviceOf = (site: SiteAnswers, answers: ZoneAnswers) => ZoneAdvice;
const adviceOnly: AdviceOf = (site, answers) => adviseZone(site, answers, { margins: false });

function zonePlanOf(site: SiteAnswers, answers: ZoneAnswers, adviceOf: AdviceOf): ZonePlan {
  const known = remembered.get(answers);
  if (known?.site === site) return known.plan;
  const key = JSON.stringify([site, answers]);
  const plan = alike.get(key) ?? makeZonePlan(site, answers, adviceOf);
  if (alike.size >= mostAlike) alike.clear();
  alike.set(key, plan);
  remembered.set(answers, { site, plan });
  return plan;
}

function makeZonePlan(site: SiteAnswers, answers: ZoneAnswers, adviceOf: AdviceOf): ZonePlan {
  const unanswered = missingQuestions(site, answers).filter((id) => !neverInTheWay.has(id));
  if (unanswered.length >= tooFewAnswers)
    return {
      advice: null,
      holds: [],
      possibleHolds: [],
      held: { verdict: 'find-out-first', open: unanswered },
    };
  const { outcomes, holds, possibleHolds, assumptions, verdict } = adviceOf(site, answers);
  const [only] = outcomes;
  if (only && outcomes.length === 1 && only.verdict !== 'stop' && only.method)
    return { advice: only.example, holds, possibleHolds, held: null };
  return {
    advice: null,
    holds,
    possibleHolds,
    held: {
      verdict: verdict === 'stop' ? 'stop' : 'find-out-first',
      open: assumptions.filter(({ matters }) => matters).map(({ question }) => question),
    },
  };
}

/**
 * The plan of a job: what is done where in which order, how much of everything, on which days.
 * @param own the reader's own values over the figures of the trade
 * @param adviceOf where the advice for a zone is had already; worked out here when left out
 */
export function planJob(
  job: Job,
  own: OwnFigures | undefined = job.own,
  adviceOf: AdviceOf = adviceOnly,
): Plan {
  const zones: PlannedZone[] = [];
  const held: HeldZone[] = [];
  const works: ZoneWork[] = [];
  const substitutes: Substitute[] = [];
  const drawing = surveyOf(job, own);
  const drawn = drawnJob(job, drawing);
  for (const zone of drawn.zones) {
    const {
      advice,
      held: why,
      holds,
      possibleHolds,
    } = zonePlanOf(job.site, zone.answers, adviceOf);
    if (why || !advice?.underneath) {
      if (why) held.push({ id: zone.id, holds, possibleHolds, ...why });
      continue;
    }
    const whole = drawn.totalArea;
    const { patches, work, quantities } = workedOut(
      { zone, site: job.site, advice, method: advice.underneath, whole, drawing },
      own,
    );
    works.push(work);
    zones.push({
      id: zone.id,
      method: advice.underneath,
      advice,
      holds,
      possibleHolds,
      quantities,
      patches,
      steps: work.steps,
      tools: work.tools,
    });
    const substitute = job.machines && substituteFor(zone.id, advice, job.machines);
    if (substitute) substitutes.push(substitute);
  }
  const { steps, tasks } = timed(works, zones, own);
  let schedule: Schedule | undefined;
  return {
    zones,
    held,
    steps,
    tasks,
    totals: totalsOf(zones.map(({ quantities }) => quantities)),
    // Laid when somebody looks at it: an edit replans at once, and most edits are not made there.
    get schedule() {
      return (schedule ??= layDays(tasks, { crew: job.crew, hoursPerDay: job.hoursPerDay }, own));
    },
    substitutes,
    trafficDays: { cars: rangeOf('traffic.cars', own), heavy: rangeOf('traffic.heavy', own) },
  };
}

interface ToWorkOut {
  readonly zone: Zone;
  readonly site: SiteAnswers;
  readonly advice: Advice;
  readonly method: MethodId;
  /** The whole surface, m2 */
  readonly whole: number | undefined;
  readonly drawing: SurveyResult | null;
}
interface WorkedOut {
  readonly patches: PatchLayout | null;
  readonly work: ZoneWork;
  readonly quantities: PlannedZone['quantities'];
}

/** What was worked out of a zone, as long as nothing it stands on is another: one edit leaves the rest. */
const kept = new WeakMap<Zone, { from: ToWorkOut; own: OwnFigures | undefined; out: WorkedOut }>();

function workedOut(from: ToWorkOut, own?: OwnFigures): WorkedOut {
  const { zone, site, advice, method, whole, drawing } = from;
  const known = kept.get(zone);
  const same = (name: keyof ToWorkOut) => known?.from[name] === from[name];
  const all = (['site', 'advice', 'method', 'whole', 'drawing'] as const).every(same);
  if (known && all && known.own === own) return known.out;
  const patches = patchesOf(zone, site, drawing, own);
  const work = {
    ...workOf(zone, site, advice, method),
    patches: patches?.patches ?? null,
    ...(whole !== undefined && { whole }),
  };
  const out = { patches, work, quantities: quantitiesOf(work, own) };
  kept.set(zone, { from, own, out });
  return out;
}

/** Patches as drawn; without a drawing of the zone round its typed spots; null where neither is. */
function patchesOf(
  zone: Zone,
  site: SiteAnswers,
  drawing: SurveyResult | null,
  own?: OwnFigures,
): PatchLayout | null {
  const typed = zone.patches?.map(rectangleRing) ?? [];
  return (
    drawnPatches(zone.id, drawing) ??
    (typed.length ? layPatches(typed, worstFrost(site), own) : null)
  );
}

function workOf(
  zone: Zone,
  site: SiteAnswers,
  advice: Advice,
  method: MethodId,
): Omit<ZoneWork, 'patches'> {
  return {
    zone,
    method,
    steps: advice.steps.map(({ id }) => id),
    tools: toolingOf(advice, placeOfZone(site, zone.answers)),
    thickness: site.thickness ?? 'unknown',
    frost: worstFrost(site),
    tight: isSurely(zone.answers.looseness, 'tight'),
    alongBars: method === 'break-out' && advice.beside !== null && advice.beside !== 'break-out',
  };
}

/** The steps in one order, and every task of them. */
function timed(
  works: readonly ZoneWork[],
  zones: readonly PlannedZone[],
  own?: OwnFigures,
): { steps: TimedStep[]; tasks: Task[] } {
  const byId = new Map(
    works.map((work, index) => {
      const { quantities, advice } = zones[index] as PlannedZone;
      const dryFinish = advice.target.moisture !== 'saturated-surface-dry';
      return [work.zone.id, { work, quantities, dryFinish }] as const;
    }),
  );
  const ordered = orderSteps(
    works.flatMap((work) =>
      work.steps.map((step) => ({
        zone: work.zone.id,
        step,
        dryFinish: byId.get(work.zone.id)?.dryFinish ?? true,
      })),
    ),
    own,
  );
  const tasks = tasksOf(ordered, byId, own);
  const ofStep = new Map<StepId, Task[]>();
  for (const task of tasks) {
    const list = ofStep.get(task.step);
    if (list) list.push(task);
    else ofStep.set(task.step, [task]);
  }
  return {
    tasks,
    steps: ordered.map((step): TimedStep => {
      const mine = ofStep.get(step.id) ?? [];
      const hours = mine.flatMap(({ labour }) => labour ?? []);
      return {
        ...step,
        hours: hours.length ? sum('h', hours) : null,
        tools: [...new Set(mine.map(({ tool }) => tool.tool))],
      };
    }),
  };
}
