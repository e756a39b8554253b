import { isFloor } from '$lib/advice/place';
import type { Job } from '$lib/answers/job';
import { choicesOf, type Element, type Setting } from '$lib/answers/questions';
import { isKnown, type Span } from '$lib/plan/amount';
import { oneMachine } from '$lib/plan/days';
import type { Plan } from '$lib/plan/plan';
import type { StepId } from '$shared/methods';
import { toolsOf, type ToolId } from '$shared/tools';
import type { ShiftTask, WorkerDay } from './types';

/** The place as the crew's day reads it: where an answer is open, the harder of what is possible. */
export interface CrewPlace {
  readonly setting: Setting;
  readonly element: Element;
  /** Answers that are open, so that the harder one was taken. */
  readonly taken: readonly ('setting' | 'element')[];
}

/** One crew's work on one day, or on days in a row on which it does the same. */
export interface CrewShift {
  /** First and last working day, counted from 1. */
  readonly days: Span;
  readonly steps: readonly StepId[];
  readonly workers: readonly WorkerDay[];
}

export interface CrewPlan {
  readonly shifts: readonly CrewShift[];
  readonly crew: number;
  readonly place: CrewPlace;
  /** Steps whose hours are not known, so that they are on no day. */
  readonly unknown: readonly StepId[];
  /** Steps that take none of the crew's time: a specialist's. */
  readonly specialists: readonly StepId[];
}

const hardest: readonly Setting[] = ['indoors', 'sheltered', 'open'];

/** The place of a job. Indoors is harder than open air; hand-held tools are harder than machines on wheels. */
export function crewPlace({ site }: Pick<Job, 'site'>): CrewPlace {
  const settings: readonly Setting[] = site.setting ?? choicesOf('setting');
  const elements: readonly Element[] = site.element ?? choicesOf('element');
  return {
    setting: hardest.find((setting) => settings.includes(setting)) ?? 'indoors',
    element: elements.find((element) => !isFloor(element)) ?? elements[0] ?? 'slab',
    taken: [
      ...(settings.length > 1 ? (['setting'] as const) : []),
      ...(elements.length > 1 ? (['element'] as const) : []),
    ],
  };
}

/** The tools a step can be done with at a place, the usual one first. */
export const toolsAt = (step: StepId, { element }: CrewPlace): readonly ToolId[] =>
  toolsOf(step, isFloor(element));

/** One task, with what the reader knows of its tool. */
export function taskWith(
  { toolLevels }: Pick<Job, 'toolLevels'>,
  task: Pick<ShiftTask, 'step' | 'setting' | 'element' | 'hours'> & { readonly tool: ToolId },
): ShiftTask {
  const { noise, vibration, measured, wheel } = toolLevels?.[task.tool] ?? {};
  return {
    ...task,
    ...(noise === undefined ? {} : { ownLevel: noise }),
    ...(vibration === undefined
      ? {}
      : { ownVibration: vibration, ownVibrationFrom: measured ? 'measured' : 'maker' }),
    ...(wheel === undefined ? {} : { wheel }),
  };
}

/** Each worker's least and most hours of a step on a day. */
type Dealt = ReadonlyMap<StepId, readonly Span[]>;

/**
 * Deals a step's hours of one day over the crew: hand work evenly, as the plan does; the one machine
 * to the first person all day, or in equal turns.
 */
function deal(step: StepId, [low, high]: Span, crew: number, equal: boolean): Span[] {
  const alone = oneMachine.includes(step) && !equal;
  const hands = alone ? 1 : crew;
  return Array.from({ length: crew }, (_, person) =>
    person < hands ? [low / hands, high / hands] : [0, 0],
  );
}

/** Hours that differ by less than this come from rounding. */
const roundOff = 1e-6;

const same = (one: Dealt, other: Dealt): boolean =>
  one.size === other.size &&
  [...one].every(([step, spans]) =>
    spans.every((span, person) => {
      const there = other.get(step)?.[person];
      return there && span.every((hours, end) => Math.abs(hours - (there[end] ?? 0)) < roundOff);
    }),
  );

/**
 * The crew's days of a plan. The plan is laid with the longer end of every range; each day gets the
 * share of a step's hands-on hours that is laid on it, least and most. With one operator the first
 * worker runs every machine of which there is one and does an equal part of the hand work.
 * @param plan from `planJob(job)`
 */
export function crewDaysOf(plan: Plan, job: Job): CrewPlan {
  const { crew, days, unknown } = plan.schedule;
  const place = crewPlace(job);
  const equal = job.crewDay?.turns === 'equal';
  const hoursOf = new Map(
    plan.steps.flatMap(({ id, hours }) =>
      hours && isKnown(hours) ? [[id, hours.span] as const] : [],
    ),
  );
  const laidInAll = new Map<StepId, number>();
  for (const { step, from, to } of days.flatMap(({ laid }) => laid))
    laidInAll.set(step, (laidInAll.get(step) ?? 0) + to - from);

  const dealtOn = days.map(({ laid }): Dealt => {
    const parts = new Map<StepId, number>();
    for (const { step, from, to } of laid)
      parts.set(step, (parts.get(step) ?? 0) + (to - from) / (laidInAll.get(step) ?? 1));
    return new Map(
      [...parts].map(([step, part]) => {
        const [low, high] = hoursOf.get(step) ?? [0, 0];
        return [step, deal(step, [low * part, high * part], crew, equal)];
      }),
    );
  });

  const shifts: { days: Span; dealt: Dealt }[] = [];
  for (const [index, dealt] of dealtOn.entries()) {
    if (!dealt.size) continue;
    const number = days[index]?.number ?? index + 1;
    const before = shifts.at(-1);
    if (before?.days[1] === number - 1 && same(before.dealt, dealt))
      before.days = [before.days[0], number];
    else shifts.push({ days: [number, number], dealt });
  }
  return {
    shifts: shifts.map(({ days: span, dealt }) => ({
      days: span,
      steps: [...dealt.keys()],
      workers: workersOf(dealt, crew, place, job),
    })),
    crew,
    place,
    unknown,
    specialists: plan.steps.filter(({ hours }) => hours === null).map(({ id }) => id),
  };
}

function workersOf(dealt: Dealt, crew: number, place: CrewPlace, job: Job): WorkerDay[] {
  const { setting, element } = place;
  return Array.from({ length: crew }, (_, person) => ({
    id: String(person + 1),
    tasks: [...dealt].flatMap(([step, spans]) => {
      const hours = spans[person];
      if (!hours || hours[1] <= 0) return [];
      const able = toolsAt(step, place);
      const chosen = job.crewDay?.tools?.[step];
      const tool = chosen && able.includes(chosen) ? chosen : able[0];
      return tool ? [taskWith(job, { step, setting, element, hours, tool })] : [];
    }),
  }));
}
