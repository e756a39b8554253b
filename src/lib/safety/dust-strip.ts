import type { ToolId } from '$shared/tools';
import type { StepId } from '$shared/methods';
import type { SafetyOfWorker } from './safety-of';

/** A task's stretch of the hours that the dust table counts. */
export interface DustPart {
  readonly step: StepId;
  readonly tool: ToolId;
  readonly kind: 'row' | 'not-in-table';
  /** Whether the table's hours count it; what they do not count lies in a bar of its own. */
  readonly counted: boolean;
  readonly from: number;
  readonly to: number;
}

/**
 * One person's hours in dust as the table counts them, at the task or the tool running: those that
 * count towards its four hours end to end, then those in no row, end to end from nought again.
 */
export function dustParts({ tasks, silica }: SafetyOfWorker): DustPart[] {
  const parts: DustPart[] = [];
  for (const [index, { step, tool, hours, atTask }] of tasks.entries()) {
    const read = silica.tasks[index];
    if (read?.kind !== 'row' && read?.kind !== 'not-in-table') continue;
    const { kind } = read;
    const counted = read.rows.length > 0;
    const from = parts.findLast((part) => part.counted === counted)?.to ?? 0;
    const long = silica.counted === 'at-task' && atTask !== undefined ? atTask : hours[1];
    parts.push({ step, tool, kind, counted, from, to: from + long });
  }
  return parts.toSorted((one, other) => Number(other.counted) - Number(one.counted));
}
