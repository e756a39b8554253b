import type { Element, Setting } from '$lib/answers/questions';
import type { FigureId } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';

export type { Region } from '$lib/answers/crew-day';

/** One piece of work of one person on one day. */
export interface ShiftTask {
  readonly step: StepId;
  readonly setting: Setting;
  /** Decides between walk-behind machines and hand tools; a slab when not given. */
  readonly element?: Element;
  /** Least and most hours with the tool running. */
  readonly hours: readonly [number, number];
  /** Usual hours with the tool running; the middle when not given. */
  readonly typical?: number;
  /** Hours at the task, breaks between cuts and cleaning up counted; the most hours running when not given. */
  readonly atTask?: number;
  /** The usual tool of the step when not given. */
  readonly tool?: ToolId;
  /** The reader's own level at the ear, dB(A). */
  readonly ownLevel?: number;
  /** The reader's own vibration at the hand, m/s2. */
  readonly ownVibration?: number;
  /** Whether that was measured at work or is what the maker declares, which can understate. Taken for the maker's when not given. */
  readonly ownVibrationFrom?: 'maker' | 'measured';
  /** Diameter of the wheel or disc, mm. */
  readonly wheel?: number;
}

/** One person's day. */
export interface WorkerDay {
  readonly id: string;
  readonly tasks: readonly ShiftTask[];
}

/** A task with nothing left to default. */
export interface SettledTask extends ShiftTask {
  readonly tool: ToolId;
  readonly element: Element;
}

/**
 * What is known of a number: its lowest and highest value. `open` means that something unknown comes
 * on top: the true value is at least `low`, and may pass `high`, which then covers the known part only.
 */
export interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly open: boolean;
}

/** How a number with bounds stands to a limit. `unknown`: what is known stays under it, what is not may pass it. */
export type Standing = 'over' | 'may-be-over' | 'under' | 'unknown';

/** A value that was used, and where it came from. */
export type Origin =
  | { readonly from: 'figure'; readonly figure: FigureId }
  | { readonly from: 'own' }
  | { readonly from: 'maker'; readonly figure: FigureId };
