import type { Job } from '$lib/answers/job';
import type { MixTask } from '$lib/answers/crew-day';
import { crewHazards, type CrewHazard } from '$lib/safety/crew-hazards';
import { taskWith, type CrewShift } from '$lib/safety/from-plan';
import { noiseAim, type Safety, type SafetyOfWorker } from '$lib/safety/safety-of';
import type { NoiseOfTask } from '$lib/safety/noise';
import type { SilicaOfTask } from '$lib/safety/silica';
import type { SettledTask, WorkerDay } from '$lib/safety/types';
import type { VibrationOfTask } from '$lib/safety/vibration';
import type { Span } from '$lib/plan/amount';
import type { Plan } from '$lib/plan/plan';
import { hazardIds, hazardsOfStep, type StepId } from '$shared/methods';
import { toolsOf, type ToolId } from '$shared/tools';

/** One step of the day with all that is known of it, for the person who has most of it. */
export interface TaskView {
  /** Counted from 1, the same in pictures, list and print. */
  readonly number: number;
  readonly task: SettledTask;
  readonly silica: SilicaOfTask;
  readonly noise: NoiseOfTask;
  readonly vibration: VibrationOfTask;
  /** Names of the zones it is done in. */
  readonly zones: readonly string[];
}

const most = <T>(items: readonly T[], of: (item: T) => number): T | undefined =>
  items.reduce<T | undefined>(
    (best, item) => (best === undefined || of(item) > of(best) ? item : best),
    undefined,
  );

/** The person worst off by each of the three; by the high ends, and what is unknown last. */
export function worstOff({ workers, region }: Safety): {
  readonly dust: SafetyOfWorker | undefined;
  readonly noise: SafetyOfWorker | undefined;
  readonly vibration: SafetyOfWorker | undefined;
} {
  return {
    dust: most(workers, ({ silica }) => silica.hours.high),
    noise: most(workers, ({ noise }) => noise.limits[noiseAim[region]].part.high),
    vibration: most(workers, ({ vibration }) => vibration.points.high),
  };
}

/** The tasks of a day, each once: what one person does with one tool in several goes is added up. */
export function taskViews(
  safety: Safety,
  zonesOf: (step: StepId) => readonly string[],
): TaskView[] {
  const seen = new Map<string, { worker: SafetyOfWorker; at: number; hours: Span }>();
  for (const worker of safety.workers) {
    const own = new Map<string, { at: number; hours: Span }>();
    for (const [at, { step, tool, hours }] of worker.tasks.entries()) {
      const before = own.get(`${step} ${tool}`);
      const sum: Span = [(before?.hours[0] ?? 0) + hours[0], (before?.hours[1] ?? 0) + hours[1]];
      own.set(`${step} ${tool}`, { at: before?.at ?? at, hours: sum });
    }
    for (const [key, one] of own) {
      const most = seen.get(key);
      if (!most || one.hours[1] > most.hours[1]) seen.set(key, { worker, ...one });
    }
  }
  return [...seen.values()].flatMap(({ worker, at, hours }, index) => {
    const before = worker.tasks[at];
    const [task, silica, noise, vibration] = [
      before && { ...before, hours },
      worker.silica.tasks[at],
      worker.noise.tasks[at],
      worker.vibration.tasks[at],
    ];
    return task && silica && noise && vibration
      ? [{ number: index + 1, task, silica, noise, vibration, zones: zonesOf(task.step) }]
      : [];
  });
}

/** A day put together by hand, as one person's. */
export function mixWorkers(
  job: Job,
  mix: readonly MixTask[] = job.crewDay?.mix ?? [],
): WorkerDay[] {
  const setting = job.crewDay?.mixSetting ?? 'open';
  return [
    {
      id: '1',
      tasks: mix.map(({ step, tool, minutes }) =>
        taskWith(job, { step, tool, setting, hours: [minutes / 60, minutes / 60] }),
      ),
    },
  ];
}

/** The tools a step of a mix can be done with: on floors and off them, and what stands beside. */
export const toolsForMix = (step: StepId): readonly ToolId[] => [
  ...new Set<ToolId>([...toolsOf(step, true), ...toolsOf(step, false), 'compressor']),
];

/** Steps that run a tool with a motor. */
export const motorSteps = (steps: readonly StepId[]): StepId[] =>
  steps.filter((step) =>
    [...toolsOf(step, true), ...toolsOf(step, false)].some((tool) => tool !== 'hand-tools'),
  );

/** The hazards of a shift: from the zones of the plan, or from the steps alone. */
export function hazardsOf(job: Job, shift: CrewShift, plan: Plan | null): CrewHazard[] {
  if (plan)
    return crewHazards(
      job,
      plan.steps.filter(({ id }) => shift.steps.includes(id)),
    );
  return hazardIds.flatMap((hazard) => {
    const steps = shift.steps.filter((step) => hazardsOfStep[step].includes(hazard));
    return steps.length ? [{ hazard, steps }] : [];
  });
}
