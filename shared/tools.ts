import type { FigureId } from './figures';
import type { StepId } from './methods';
import toolFacts from './tools.json';

export type ToolId = keyof typeof toolFacts.tools;
export const toolIds = Object.keys(toolFacts.tools) as ToolId[];

/** What is known of a tool. Levels are at the operator, in use. */
export interface ToolFacts {
  /** Figure for dB(A); `quiet` without a motor; null where no level was found: never to be borrowed from another tool. */
  readonly noise: FigureId | 'quiet' | null;
  /** Figure for m/s2 at the hand; `still` where nothing that shakes is held; null where none was found. */
  readonly vibration: FigureId | 'still' | null;
  readonly held: 'hand-held' | 'walk-behind' | 'stands-by';
  readonly power: readonly ('air' | 'electric' | 'hydraulic' | 'engine')[];
  /** Whether it throws dust of concrete when it runs. */
  readonly dust: boolean;
  readonly note?: string;
}

/** Every tool, by id. Which levels go with which tool is common practice where a note says so. */
export const tools = toolFacts.tools as Readonly<Record<string, unknown>> as Readonly<
  Record<ToolId, ToolFacts>
>;

const stepTools = toolFacts.steps as Readonly<Record<string, unknown>> as Readonly<
  Record<StepId, Readonly<Record<'floor' | 'offFloor', readonly [ToolId, ...ToolId[]]>>>
>;

/**
 * The tools a step is done with, the usual one first. Source: common practice, no published source.
 * @param onFloor whether walk-behind machines can stand there (slabs) or not (steps, walls, soffits)
 */
export function toolsOf(step: StepId, onFloor: boolean): readonly [ToolId, ...ToolId[]] {
  return stepTools[step][onFloor ? 'floor' : 'offFloor'];
}
