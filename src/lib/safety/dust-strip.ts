import type { ToolId } from '$shared/tools';
import type { StepId } from '$shared/methods';
import type { SafetyOfWorker } from './safety-of';

/** A task's stretch of the hours that the dust table counts. */
export interface DustPart {
  readonly step: StepId;
  readonly tool: ToolId;
  readonly kind: 'row' | 'not-in-table';
  readonly from: number;
  readonly to: number;
}

/** One person's hours in dust end to end, as the table counts them: at the task, or the tool running. */
export function dustParts({ tasks, silica }: SafetyOfWorker): DustPart[] {
  const parts: DustPart[] = [];
  for (const [index, { step, tool, hours, atTask }] of tasks.entries()) {
    const kind = silica.tasks[index]?.kind;
    if (kind !== 'row' && kind !== 'not-in-table') continue;
    const from = parts.at(-1)?.to ?? 0;
    const long = silica.counted === 'at-task' && atTask !== undefined ? atTask : hours[1];
    parts.push({ step, tool, kind, from, to: from + long });
  }
  return parts;
}
