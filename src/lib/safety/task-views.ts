import type { SafetyOfWorker, Safety } from './safety-of';
import { maskOfTask } from './masks';
import type { NoiseOfTask } from './noise';
import type { SilicaOfTask } from './silica';
import type { SettledTask } from './types';
import type { VibrationOfTask } from './vibration';
import type { Span } from '$lib/plan/amount';
import type { Tooling } from '$lib/plan/tools';
import type { FigureId } from '$shared/figures';
import type { StepId } from '$shared/methods';

/** One step of the day with all that is known of it, for the person who has most of it. */
export interface TaskView {
  /** The step's place in the order of work, counted from 1: one numbering on plan, day and print. */
  readonly number: number;
  readonly task: SettledTask;
  readonly silica: SilicaOfTask;
  readonly noise: NoiseOfTask;
  readonly vibration: VibrationOfTask;
  /** Names of the zones it is done in. */
  readonly zones: readonly string[];
  /** Names of those in which nobody may begin it yet; no hours of theirs are counted. */
  readonly waits: readonly string[];
  /** The most its tool may weigh, where the work says so. */
  readonly classes: readonly FigureId[];
}

/** Where a step is done on a day, and with what. */
export interface StepThere {
  readonly zones: readonly string[];
  readonly waits?: readonly string[];
  readonly tooling?: readonly Tooling[];
}

/** What the dust table says where somebody has most dusty hours: whoever takes the tool is safe by it. */
const strictestMask = ({ workers, region }: Safety, { step, tool }: SettledTask) =>
  workers
    .flatMap(({ tasks, silica }) =>
      silica.tasks.filter((_, at) => tasks[at]?.step === step && tasks[at].tool === tool),
    )
    .toSorted((one, other) => maskOfTask(other, region).factor - maskOfTask(one, region).factor)[0];

/**
 * The tasks of a day, each once: what one person does with one tool in several goes is added up.
 * @param placeOf where a step stands in the order of work, from 0; as they come when left out
 */
export function taskViews(
  safety: Safety,
  thereOf: (step: StepId) => StepThere,
  placeOf?: (step: StepId) => number,
): TaskView[] {
  const seen = new Map<
    string,
    { worker: SafetyOfWorker; at: number; hours: Span; atTask: number | undefined }
  >();
  for (const worker of safety.workers) {
    const own = new Map<string, { at: number; hours: Span; atTask: number | undefined }>();
    for (const [at, { step, tool, hours, atTask }] of worker.tasks.entries()) {
      const before = own.get(`${step} ${tool}`);
      const sum: Span = [(before?.hours[0] ?? 0) + hours[0], (before?.hours[1] ?? 0) + hours[1]];
      own.set(`${step} ${tool}`, {
        at: before?.at ?? at,
        hours: sum,
        atTask: atTask === undefined ? before?.atTask : (before?.atTask ?? 0) + atTask,
      });
    }
    for (const [key, one] of own) {
      const most = seen.get(key);
      if (!most || one.hours[1] > most.hours[1]) seen.set(key, { worker, ...one });
    }
  }
  const placed = [...seen.values()].map((one) => ({ ...one, before: one.worker.tasks[one.at] }));
  const inOrder = placed.toSorted((one, other) =>
    one.before && other.before && placeOf
      ? placeOf(one.before.step) - placeOf(other.before.step)
      : 0,
  );
  return inOrder.flatMap(({ worker, at, hours, atTask, before }, index) => {
    const [task, silica, noise, vibration] = [
      before && { ...before, hours, ...(atTask !== undefined && { atTask }) },
      before && strictestMask(safety, before),
      worker.noise.tasks[at],
      worker.vibration.tasks[at],
    ];
    if (!task || !silica || !noise || !vibration) return [];
    const { zones, waits = [], tooling = [] } = thereOf(task.step);
    const number = (placeOf ? placeOf(task.step) : index) + 1;
    const mine = tooling.filter(({ tool }) => tool === task.tool);
    const classes = [...new Set(mine.flatMap(({ class: most }) => most ?? []))];
    return [{ number, task, silica, noise, vibration, zones, waits, classes }];
  });
}
