import type { Job } from '$lib/answers/job';
import type { MixTask } from '$lib/answers/crew-day';
import type { Plan } from '$lib/plan/plan';
import { waitsAt } from '$lib/plan/waiting';
import { hazardIds, hazardsOfStep, type StepId } from '$shared/methods';
import { toolsOf, type ToolId } from '$shared/tools';
import { crewHazards, type CrewHazard } from './crew-hazards';
import { taskWith, type CrewShift } from './from-plan';
import { shiftProblems, type ShiftProblem } from './problems';
import type { WorkerDay } from './types';

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
  if (plan) {
    const waits = waitsAt(plan);
    // What was begun in a zone that waits is on the day with that zone.
    const there = (step: StepId, zones: readonly string[]) => {
      const free = zones.filter((zone) => !waits(step, zone));
      return free.length ? free : zones;
    };
    return crewHazards(
      job,
      plan.steps.flatMap(({ id, zones }) =>
        shift.steps.includes(id) ? [{ id, zones: there(id, zones) }] : [],
      ),
    );
  }
  return hazardIds.flatMap((hazard) => {
    const steps = shift.steps.filter((step) => hazardsOfStep[step].includes(hazard));
    return steps.length ? [{ hazard, steps }] : [];
  });
}

/** What is wrong with a day put together by hand; null where nothing is. */
export const mixProblem = (job: Job, mix: readonly MixTask[]): ShiftProblem | null =>
  shiftProblems(mixWorkers(job, mix))[0] ?? null;

/** The day put together by hand, as a shift. */
export function mixShift(job: Job): CrewShift {
  const workers = mixWorkers(job);
  return { days: [1, 1], steps: workers[0]?.tasks.map(({ step }) => step) ?? [], workers };
}
