import { adviseZone } from '$lib/advice/advise';
import { isFloor } from '$lib/advice/place';
import { mayBeProbed } from '$lib/advice/sheet';
import type { Job } from '$lib/answers/job';
import { momentsOf } from '$lib/answers/task-log';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { zonesOfPart } from '$lib/trial/same-part';
import { rangeOf, type OwnFigures } from '$shared/figures';
import { methodIds, type MethodId, type StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { sum, type Amount, type Span } from './amount';
import { byBegin } from './by-begin';
import { calendarOf } from './calendar';
import { goneOf, spotMadeNewFor } from './damaged';
import { dayRows, type DayRow } from './day-rows';
import { layDays, type Schedule } from './days';
import { substituteFor, type Substitute } from './machines';
import { orderSteps, type PlanStep } from './order';
import { pastOf } from './past';
import { totalsOf, type Quantities } from './quantities';
import { withSoFar, type SoFar } from './so-far';
import { tasksOf, type Task } from './tasks';
import type { Tooling } from './tools';
import { mustWait } from './waiting';
import { wholeBays, type WholeBay } from './whole-bays';
import type { HeldZone, PlannedZone } from './planned-zone';
import { reckonZone, type AdviceOf, type Around } from './zone-plan';
import type { ZoneWork } from './zone-work';

export type { HeldZone, PlannedZone } from './planned-zone';
export type { AdviceOf } from './zone-plan';

export interface TimedStep extends PlanStep {
  /** Hands-on hours over all its zones; null where it takes none of its own. */
  readonly hours: Amount | null;
  /** Of these, what may be worked now, and what only once its zones are cleared; null where there is none. */
  readonly free: Amount | null;
  readonly waiting: Amount | null;
  readonly tools: readonly ToolId[];
  /** The same with the class each must be of. */
  readonly tooling: readonly Tooling[];
}

/** The plan of a whole job. */
export interface Plan {
  /** The job with what its drawing measures: drawn outranks typed. */
  readonly drawn: Job;
  readonly zones: readonly PlannedZone[];
  readonly held: readonly HeldZone[];
  /** In the order in which they begin. */
  readonly steps: readonly TimedStep[];
  /** Every step on every zone: the one reckoning of hours, people and waits. */
  readonly tasks: readonly Task[];
  /** How far the crew has come; null before work began. */
  readonly soFar: SoFar | null;
  readonly totals: Quantities;
  /** Bays that are offered to be treated whole. */
  readonly wholeBays: readonly WholeBay[];
  /** Area by the method that it is worked with. */
  readonly areas: readonly { readonly method: MethodId; readonly area: Amount }[];
  readonly schedule: Schedule;
  /** The days of the schedule as they are shown. */
  readonly dayRows: readonly DayRow[];
  readonly substitutes: readonly Substitute[];
  /** Days after the repair before cars may use it; null where nobody drives, or nothing cures. */
  readonly trafficDays: { readonly cars: Span; readonly heavy: Span } | null;
}

function trafficDaysOf({ site }: Job, tasks: readonly Task[], own?: OwnFigures) {
  const cures = tasks.flatMap(({ lasting }) => lasting?.figure ?? []);
  const cars = (['traffic.cars', 'traffic.coated'] as const).find((id) => cures.includes(id));
  if (!cars || !(site.element ?? ['slab']).some(isFloor)) return null;
  return { cars: rangeOf(cars, own), heavy: rangeOf('traffic.heavy', own) };
}

const adviceOnly: AdviceOf = (site, answers) => adviseZone(site, answers, { margins: false });

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
  const survey = surveyOf(job, own);
  const drawn = drawnJob(job, survey);
  const around: Around = { site: job.site, whole: drawn.totalArea, survey, own };
  const asked = zonesOfPart(drawn, adviceOf);
  for (const [place, zone] of drawn.zones.entries()) {
    const { advised, worked, patches, beside } = reckonZone(
      job.zones[place] ?? zone,
      asked[place] ?? zone,
      around,
      adviceOf,
    );
    const { advice, holds, possibleHolds, held: why } = advised;
    const sounded = survey?.sounded.includes(zone.id) ?? false;
    if (!worked || !advice) {
      if (why)
        held.push({
          id: zone.id,
          holds,
          possibleHolds,
          patches,
          beside,
          sounded,
          gone: goneOf(job.zones[place] ?? zone, zone, job.site, patches, own),
          madeNewFor: spotMadeNewFor(job.zones[place] ?? zone, zone, holds, survey),
          ...why,
        });
      continue;
    }
    const { work, quantities } = worked;
    works.push(work);
    zones.push({
      id: zone.id,
      method: work.method,
      advice,
      holds,
      possibleHolds,
      quantities,
      patches,
      beside,
      sounded,
      skinLeft: work.breaks && !work.alongBars && beside === 'surface',
      steps: work.steps,
      tools: work.tools,
    });
    const substitute = job.machines && substituteFor(zone.id, advice, job.machines);
    if (substitute) substitutes.push(substitute);
  }
  const { steps, tasks, soFar } = timed(works, zones, job, own);
  let schedule: Schedule | undefined;
  let rows: DayRow[] | undefined;
  let ordered: readonly TimedStep[] | undefined;
  return {
    drawn,
    zones,
    held,
    // As the days: laid when somebody looks at it.
    get steps() {
      return (ordered ??= byBegin(steps, this.schedule.placed));
    },
    tasks,
    soFar,
    totals: totalsOf(
      zones.map(({ quantities }) => quantities),
      own,
    ),
    areas: areasOf(zones),
    wholeBays: wholeBays(survey, zones, own),
    // Laid when somebody looks at it: an edit replans at once, and most edits are not made there.
    get schedule() {
      return (schedule ??= layDays(
        tasks,
        calendarOf(job),
        own,
        soFar
          ? (people, hoursPerDay) => pastOf(soFar, momentsOf(job), people, hoursPerDay)
          : undefined,
      ));
    },
    get dayRows() {
      return (rows ??= dayRows(this.schedule, calendarOf(job).off, mustWait({ zones })));
    },
    substitutes,
    trafficDays: trafficDaysOf(job, tasks, own),
  };
}

/** What each method is really worked on: of a zone that is broken out its patches; beside bars the rest has a method of its own. */
function areasOf(zones: readonly PlannedZone[]): Plan['areas'] {
  const worked = zones.flatMap(({ method, advice: { beside }, quantities: { area, ...of } }) => {
    const patches = of['patch-area'];
    const rest = patches && beside !== 'break-out' ? beside : null;
    return [{ method, area: patches ?? area }, ...(rest ? [{ method: rest, area }] : [])];
  });
  return methodIds.flatMap((method) => {
    const areas = worked.flatMap((each) => (each.method === method ? (each.area ?? []) : []));
    return areas.length ? [{ method, area: sum('m2', areas) }] : [];
  });
}

/** The ground that is worked, by any method: of a zone of which spots are broken out, these alone. */
export const areaWorked = ({ areas, totals }: Pick<Plan, 'areas' | 'totals'>): Amount | null =>
  areas.length
    ? sum(
        'm2',
        areas.map(({ area }) => area),
      )
    : totals.area;

/** The steps in one order, and every task of them, as far as the crew has come. */
function timed(
  works: readonly ZoneWork[],
  zones: readonly PlannedZone[],
  job: Job,
  own?: OwnFigures,
): { steps: TimedStep[]; tasks: readonly Task[]; soFar: SoFar | null } {
  const parts = works.map((work, index) => {
    const { quantities, advice } = zones[index] as PlannedZone;
    const dryFinish = advice.target.moisture !== 'saturated-surface-dry';
    const probed = mayBeProbed(job.site, work.zone.answers);
    return { work, quantities, dryFinish, probed };
  });
  const byId = new Map(parts.map((part) => [part.work.zone.id, part]));
  const ordered = orderSteps(
    parts.flatMap(({ work, dryFinish }) =>
      work.steps.map((step) => ({ zone: work.zone.id, step, dryFinish })),
    ),
    own,
  );
  const { tasks, soFar } = withSoFar(tasksOf(ordered, byId, own), job, own);
  const waits = mustWait({ zones });
  const hoursOf = (some: readonly Task[]): Amount | null => {
    const hours = some.flatMap(({ labour }) => labour ?? []);
    return hours.length ? sum('h', hours) : null;
  };
  const ofStep = new Map<StepId, Task[]>();
  for (const task of tasks) {
    const list = ofStep.get(task.step);
    if (list) list.push(task);
    else ofStep.set(task.step, [task]);
  }
  return {
    tasks,
    soFar,
    steps: ordered.map((step): TimedStep => {
      const mine = ofStep.get(step.id) ?? [];
      return {
        ...step,
        hours: hoursOf(mine),
        free: hoursOf(mine.filter((task) => !waits(task))),
        waiting: hoursOf(mine.filter(waits)),
        tools: [...new Set(mine.map(({ tool }) => tool.tool))],
        tooling: [
          ...new Map(mine.map(({ tool }) => [`${tool.tool} ${tool.class ?? ''}`, tool])).values(),
        ],
      };
    }),
  };
}
