import { figures, rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { tools as toolFacts } from '$shared/tools';
import { isKnown, typicalOf, type Amount } from './amount';
import { dryingBefore } from './drying';
import { amountOf, hoursOf, oncePerJob } from './hours';
import type { PlanStep } from './order';
import { wets } from './precedence';
import type { Quantities } from './quantities';
import type { Tooling } from './tools';
import type { ZoneWork } from './zone-work';

/** Least, usual and most, in that order of size. */
export interface Reach {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** Hours that have to pass before a task may begin, counted from the end of another in its zone. */
export interface Wait {
  readonly hours: Reach;
  readonly after: StepId;
  readonly figure: FigureId;
}

/**
 * One step on one zone, or on the whole job where it is one set-up: the reckoning that every page
 * shows a part of.
 */
export interface Task {
  readonly step: StepId;
  /** Id of the zone; null where it is done once for the job. */
  readonly zone: string | null;
  readonly zones: readonly string[];
  readonly tool: Tooling;
  /** What there is to do; null where it goes by the zone or the job. */
  readonly amount: Amount | null;
  /**
   * Hours of one machine or one pair of hands, with the tool running and at the task. Null where they
   * are not known, or somebody else's.
   */
  readonly hours: { readonly running: Reach; readonly atTask: Reach } | null;
  /** The hours running, with their working. */
  readonly labour: Amount | null;
  /** Why there are no hours: an answer is missing, or the time is not the crew's. */
  readonly without?: 'missing' | 'not-counted';
  /** Whether more hands make it shorter: one machine, or one person checking, cannot be shared. */
  readonly shared: boolean;
  /** Calendar hours it goes on by itself, without anybody: a cure. */
  readonly lasting?: Reach & { readonly figure: FigureId };
  readonly wait?: Wait;
  readonly leaves: 'wet' | 'dusty' | 'rough' | null;
}

const hoursInDay = 24;

/** A figure's least, usual and most. */
export function reachOf(figure: FigureId, own?: OwnFigures): Reach {
  const [low, high] = rangeOf(figure, own);
  const typical = own?.[figure] ?? figures[figure].typical;
  return {
    low,
    typical: typicalOf({ span: [low, high], ...(typical !== undefined && { typical }) }),
    high,
  };
}

/** Hours of an amount, in running and at the task (figure `crew.usable`). */
export function bothHours(amount: Amount, own?: OwnFigures): Task['hours'] {
  if (!isKnown(amount)) return null;
  const usable = reachOf('crew.usable', own);
  const running = { low: amount.span[0], typical: typicalOf(amount), high: amount.span[1] };
  return {
    running,
    atTask: {
      low: running.low / usable.high,
      typical: running.typical / usable.typical,
      high: running.high / usable.low,
    },
  };
}

/** Steps that one person does, whatever the tool: one nozzle, one saw, one who checks. */
const alone: readonly StepId[] = [
  'saw-cut',
  'blast-clean',
  'abrasive-blast',
  'water-jet',
  'check-ready',
  'moisture-test',
];
const rough: readonly StepId[] = [
  'break-out',
  'chase-crack',
  'free-bar',
  'scarify',
  'needle-scale',
];
/** What a step goes on for by itself, in days: cement until traffic, a coat as long as its kind takes. */
const cureOf = (step: StepId, dryFinish: boolean): FigureId | undefined =>
  step === 'fill-cure'
    ? 'fill-level.cure'
    : step === 'cure'
      ? dryFinish
        ? 'traffic.coated'
        : 'traffic.cars'
      : undefined;

const times = ({ low, typical, high }: Reach, by: number): Reach => ({
  low: low * by,
  typical: typical * by,
  high: high * by,
});

/** What a step waits for in its zone: drying of what was wetted, a test left to stand. */
function waitOf(
  step: StepId,
  before: readonly StepId[],
  dryFinish: boolean,
  probed: boolean,
  own?: OwnFigures,
): Wait | undefined {
  const drying = dryingBefore(step, before, dryFinish);
  if (drying) return { ...drying, hours: reachOf(drying.figure, own) };
  if (before.at(-1) !== 'moisture-test') return undefined;
  const figure = probed ? 'humidity.wait' : 'sheet.time';
  return { hours: reachOf(figure, own), after: 'moisture-test', figure };
}

interface Counted {
  readonly labour: Amount | null;
  readonly hours: Task['hours'];
  readonly amount: Task['amount'];
}

/** What each step of a zone comes to: made anew with its quantities, which stay while nothing changes. */
const counted = new WeakMap<Quantities, Map<StepId, Counted>>();

function countedOf(
  step: StepId,
  work: ZoneWork,
  quantities: Quantities,
  own?: OwnFigures,
): Counted {
  let steps = counted.get(quantities);
  if (!steps) counted.set(quantities, (steps = new Map()));
  let found = steps.get(step);
  if (!found) {
    const labour = hoursOf(step, work, quantities, own);
    const hours = labour && bothHours(labour, own);
    found = { labour, hours, amount: amountOf(step, work, quantities, own) };
    steps.set(step, found);
  }
  return found;
}

/** Every task of a job, in the order of its steps. */
export function tasksOf(
  steps: readonly PlanStep[],
  works: ReadonlyMap<
    string,
    {
      readonly work: ZoneWork;
      readonly quantities: Quantities;
      readonly dryFinish: boolean;
      /** Its moisture is read by probes in holes, which stand longer than a sheet. */
      readonly probed: boolean;
    }
  >,
  own?: OwnFigures,
): Task[] {
  const done = new Map<string, StepId[]>();
  return steps.flatMap(({ id: step, zones }) => {
    const once = oncePerJob(step);
    const groups = once ? [zones] : zones.map((zone) => [zone]);
    return groups.flatMap((group): Task[] => {
      const [zone = ''] = group;
      const entry = works.get(zone);
      if (!entry) return [];
      const { work, quantities, dryFinish, probed } = entry;
      const tool = work.tools.get(step) ?? { tool: 'hand-tools' };
      const { labour: amount, hours, amount: much } = countedOf(step, work, quantities, own);
      const before = done.get(zone) ?? [];
      const wait = waitOf(step, before, dryFinish, probed, own);
      for (const each of group) done.set(each, [...(done.get(each) ?? []), step]);
      const cure = cureOf(step, dryFinish);
      return [
        {
          step,
          zone: once ? null : zone,
          zones: group,
          tool,
          amount: much,
          hours,
          labour: amount,
          ...(!hours && { without: amount ? ('missing' as const) : ('not-counted' as const) }),
          shared: !alone.includes(step) && toolFacts[tool.tool].held !== 'walk-behind',
          ...(cure && {
            lasting: { ...times(reachOf(cure, own), hoursInDay), figure: cure },
          }),
          ...(wait && { wait }),
          leaves: rough.includes(step)
            ? 'rough'
            : wets.includes(step)
              ? 'wet'
              : toolFacts[tool.tool].dust && step !== 'vacuum' && step !== 'last-clean'
                ? 'dusty'
                : null,
        },
      ];
    });
  });
}

/** The least share of a task that is given to one more person, h at the task. */
export const leastShare = (own?: OwnFigures): number => valueOf('share.step', own);
