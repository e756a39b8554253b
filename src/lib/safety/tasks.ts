import { isFloor } from '$lib/advice/place';
import { figures, rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import { tools, toolsOf } from '$shared/tools';
import type { Origin, SettledTask, ShiftTask } from './types';

/** A task with its usual tool where none was named. */
export function settleTask(task: ShiftTask): SettledTask {
  const element = task.element ?? 'slab';
  return { ...task, element, tool: task.tool ?? toolsOf(task.step, isFloor(element))[0] };
}

/** A level or a vibration with its range and where it came from. */
export interface Strength {
  readonly range: readonly [number, number];
  readonly typical?: number;
  readonly origin: Origin;
}

/** Strength of a tool: `none` where there is nothing to add, `unknown` where nothing was found. */
export type Known<T> = T | 'none' | 'unknown';

/** The level at the ear in a task, dB(A): the reader's own, or the tool's figure. */
export function levelOf(task: SettledTask, own?: OwnFigures): Known<Strength> {
  if (task.ownLevel !== undefined)
    return { range: [task.ownLevel, task.ownLevel], origin: { from: 'own' } };
  const figure = tools[task.tool].noise;
  if (figure === 'quiet') return 'none';
  return figure ? strengthOf(figure, own) : 'unknown';
}

const makerFactor: FigureId = 'vibration.maker-factor';

/**
 * The vibration at the hand in a task, m/s2: the reader's own, or the tool's figure.
 * A maker's value is read as up to twice itself (`vibration.maker-factor`).
 */
export function vibrationOf(task: SettledTask, own?: OwnFigures): Known<Strength> {
  if (task.ownVibration !== undefined) {
    if (task.ownVibrationFrom === 'measured')
      return { range: [task.ownVibration, task.ownVibration], origin: { from: 'own' } };
    const [least, most] = rangeOf(makerFactor, own);
    return {
      range: [task.ownVibration * least, task.ownVibration * most],
      origin: { from: 'maker', figure: makerFactor },
    };
  }
  const figure = tools[task.tool].vibration;
  if (figure === 'still') return 'none';
  return figure ? strengthOf(figure, own) : 'unknown';
}

/** A figure as a strength; its typical value only while the reader has not laid an own value over it. */
function strengthOf(figure: FigureId, own?: OwnFigures): Strength {
  const origin: Origin = { from: 'figure', figure };
  const typical = own?.[figure] ?? figures[figure].typical;
  return typical === undefined
    ? { range: rangeOf(figure, own), origin }
    : { range: rangeOf(figure, own), typical, origin };
}

/** The figures a list of strengths leans on. */
export const figuresOf = (origins: readonly Origin[]): FigureId[] => [
  ...new Set(origins.flatMap((origin) => (origin.from === 'own' ? [] : [origin.figure]))),
];

/** Usual hours of a task with the tool running. */
export const usualHours = ({
  hours: [low, high],
  typical = (low + high) / 2,
}: SettledTask): number => Math.min(high, Math.max(low, typical));
