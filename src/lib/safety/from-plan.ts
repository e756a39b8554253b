import { isFloor } from '$lib/advice/place';
import type { Job } from '$lib/answers/job';
import { choicesOf, type Element, type Setting } from '$lib/answers/questions';
import type { Span } from '$lib/plan/amount';
import type { Placed } from '$lib/plan/schedule';
import { reachOf } from '$lib/plan/tasks';
import type { Plan } from '$lib/plan/plan';
import { notCountedYet } from '$lib/plan/waiting';
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
  /** None where all that is laid for that day must wait. */
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
  task: Pick<ShiftTask, 'step' | 'setting' | 'element' | 'hours' | 'typical' | 'atTask'> & {
    readonly tool: ToolId;
  },
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

/** Hours at each step and tool on a day, person by person. */
type Dealt = ReadonlyMap<string, { step: StepId; tool: ToolId; atTask: readonly number[] }>;

/** Hours that differ by less than this come from rounding. */
const roundOff = 1e-6;

const same = (one: Dealt, other: Dealt): boolean =>
  one.size === other.size &&
  [...one].every(([key, { atTask }]) => {
    const there = other.get(key)?.atTask;
    return there && atTask.every((hours, who) => Math.abs(hours - (there[who] ?? 0)) < roundOff);
  });

/**
 * What everybody does on each day of the plan: as laid, or everything in equal turns. What must wait
 * is nobody's yet: its day is there, and empty.
 */
function dealtOn(
  plan: Plan,
  placed: readonly Placed[],
  crew: number,
  equal: boolean,
): Map<number, Dealt> {
  const days = new Map<number, Map<string, { step: StepId; tool: ToolId; atTask: number[] }>>();
  const waits = notCountedYet(plan);
  for (const { task, people, stretches } of placed)
    for (const { day, from, to } of stretches) {
      const dealt = days.get(day) ?? new Map<string, never>();
      days.set(day, dealt);
      if (waits(task)) continue;
      const { step } = task;
      const { tool } = task.tool;
      const key = `${step} ${tool}`;
      const entry = dealt.get(key) ?? { step, tool, atTask: Array<number>(crew).fill(0) };
      dealt.set(key, entry as never);
      const who = equal ? entry.atTask.map((_, person) => person) : people;
      const each = ((to - from) * people.length) / who.length;
      for (const person of who) entry.atTask[person] = (entry.atTask[person] ?? 0) + each;
    }
  return days;
}

/**
 * The crew's days of a plan: everybody has the hours at the task that the schedule gives them, and a
 * tool runs for its part of these (figure `crew.usable`). With equal turns all of a day's work goes
 * round. Zones that must wait are not counted.
 * @param plan from `planJob(job)`
 * @param laid its work as its crew does it; of another crew where that is asked about
 */
export function crewDaysOf(
  plan: Plan,
  job: Job,
  laid: Pick<Plan['schedule'], 'placed' | 'crew'> = plan.schedule,
): CrewPlan {
  const { unknown } = plan.schedule;
  const crew = Math.max(1, Math.round(laid.crew));
  const place = crewPlace(job);
  const shifts: { days: Span; dealt: Dealt }[] = [];
  const days = [...dealtOn(plan, laid.placed, crew, job.crewDay?.turns === 'equal')];
  for (const [number, dealt] of days.sort(([one], [other]) => one - other)) {
    const before = shifts.at(-1);
    if (before?.days[1] === number - 1 && same(before.dealt, dealt))
      before.days = [before.days[0], number];
    else shifts.push({ days: [number, number], dealt });
  }
  return {
    shifts: shifts.map(({ days: span, dealt }) => ({
      days: span,
      steps: [...new Set([...dealt.values()].map(({ step }) => step))],
      workers: workersOf(dealt, crew, place, job),
    })),
    crew,
    place,
    unknown,
    specialists: plan.steps
      .filter(({ hours, id }) => hours === null && id === 'water-jet')
      .map(({ id }) => id),
  };
}

function workersOf(dealt: Dealt, crew: number, place: CrewPlace, job: Job): WorkerDay[] {
  const { setting, element } = place;
  const usable = reachOf('crew.usable', job.own);
  return Array.from({ length: crew }, (_, person) => ({
    id: String(person + 1),
    tasks: [...dealt.values()].flatMap(({ step, tool: planned, atTask: hands }) => {
      const atTask = hands[person] ?? 0;
      if (atTask <= 0) return [];
      const chosen = job.crewDay?.tools?.[step];
      const tool = chosen && toolsAt(step, place).includes(chosen) ? chosen : planned;
      const hours = [atTask * usable.low, atTask * usable.high] as const;
      const typical = atTask * usable.typical;
      return [taskWith(job, { step, setting, element, hours, typical, atTask, tool })];
    }),
  }));
}
