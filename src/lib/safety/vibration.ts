import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { mapBounds, nothing, standingTo, sumOf } from './bounds';
import { figuresOf, usualHours, vibrationOf, type Known, type Strength } from './tasks';
import type { Bounds, SettledTask, Standing } from './types';

export const vibrationLimitIds = ['action', 'limit'] as const;
export type VibrationLimitId = (typeof vibrationLimitIds)[number];

const figureOfLimit: Readonly<Record<VibrationLimitId, FigureId>> = {
  action: 'vibration.action',
  limit: 'vibration.limit',
};

/** The daily value of a limit, A(8), m/s2. */
export const vibrationLimit = (limit: VibrationLimitId, own?: OwnFigures): number =>
  valueOf(figureOfLimit[limit], own);

/**
 * Daily vibration of one tool, A(8) = a sqrt(T / 8), m/s2. Source: Directive 2002/44/EC, Annex A.
 * @param magnitude a, m/s2
 * @param hours T, trigger time
 */
export const dailyVibration = (magnitude: number, hours: number, own?: OwnFigures): number =>
  magnitude * Math.sqrt(hours / valueOf('vibration.day', own));

/**
 * Exposure points: 100 at the action value, growing with the square, so that the points of tools add.
 * With the published figures these are 2 a^2 an hour. Source: HSE ready reckoner.
 */
export const pointsOf = (magnitude: number, hours: number, own?: OwnFigures): number =>
  pointsOfDay(dailyVibration(magnitude, hours, own), own);

/** The points of a day's A(8), m/s2. */
export const pointsOfDay = (daily: number, own?: OwnFigures): number =>
  valueOf('vibration.action-points', own) * (daily / vibrationLimit('action', own)) ** 2;

/** The A(8) of a sum of points, m/s2: the root of the sum of the tools' squares. */
export const dailyOfPoints = (points: number, own?: OwnFigures): number =>
  vibrationLimit('action', own) * Math.sqrt(points / valueOf('vibration.action-points', own));

/** Trigger minutes of one tool before a limit, when nothing else shakes the hands that day. */
export function triggerMinutes(
  limit: VibrationLimitId,
  magnitude: number,
  own?: OwnFigures,
): number {
  if (magnitude <= 0) return Infinity;
  const hours = valueOf('vibration.day', own) * (vibrationLimit(limit, own) / magnitude) ** 2;
  return hours * minutesPerHour;
}
const minutesPerHour = 60;

/**
 * Trigger minutes as they are told: whole below an hour, to the tenth of an hour from there. Rounded
 * down, since a minute more would pass the limit.
 */
export const toldTime = (
  minutes: number,
): { readonly value: number; readonly unit: 'min' | 'h' } =>
  minutes < minutesPerHour
    ? { value: Math.floor(minutes), unit: 'min' }
    : { value: Math.floor((10 * minutes) / minutesPerHour) / 10, unit: 'h' };

/** One task's share in the day's vibration. */
export interface VibrationOfTask {
  readonly tool: ToolId;
  readonly magnitude: Known<Strength>;
  readonly points: Bounds;
  /** Trigger minutes before each limit at the tool's high, typical (where there is one) and low magnitude, in a day of 24 h. */
  readonly minutes: Readonly<Record<VibrationLimitId, MinutesBefore>> | null;
}

/** Minutes at the strongest, the typical and the weakest vibration of a tool. */
export interface MinutesBefore {
  readonly atHigh: number;
  readonly atTypical?: number;
  readonly atLow: number;
}

/** The minutes as a tool usually shakes; at its strongest where nobody has published that. */
export const usualMinutes = ({ atTypical, atHigh }: MinutesBefore): number => atTypical ?? atHigh;

export interface VibrationOfDay {
  readonly points: Bounds;
  /** With every tool as it usually shakes, for its usual hours; at least this where `points` is open. */
  readonly typical: { readonly points: number; readonly daily: number };
  /** A(8), m/s2 */
  readonly daily: Bounds;
  readonly standing: Readonly<Record<VibrationLimitId, Standing>>;
  readonly tasks: readonly VibrationOfTask[];
  /** Tools without a figure: the reader is asked for the maker's. */
  readonly unknown: readonly ToolId[];
  readonly figures: readonly FigureId[];
}

function minutesBefore(
  limit: VibrationLimitId,
  { range: [low, high], typical }: Strength,
  own?: OwnFigures,
): MinutesBefore {
  const longest = rangeOf('limit.exposure-hours', own)[1] * minutesPerHour;
  const at = (magnitude: number) => Math.min(longest, triggerMinutes(limit, magnitude, own));
  return {
    atHigh: at(high),
    ...(typical === undefined ? {} : { atTypical: at(typical) }),
    atLow: at(low),
  };
}

/** What one task shakes, and how long its tool may run before each value. */
export function vibrationOfTask(task: SettledTask, own?: OwnFigures): VibrationOfTask {
  const magnitude = vibrationOf(task, own);
  const { tool, hours } = task;
  if (magnitude === 'none') return { tool, magnitude, points: nothing, minutes: null };
  if (magnitude === 'unknown')
    return { tool, magnitude, points: { ...nothing, open: hours[1] > 0 }, minutes: null };
  return {
    tool,
    magnitude,
    points: {
      low: pointsOf(magnitude.range[0], hours[0], own),
      high: pointsOf(magnitude.range[1], hours[1], own),
      open: false,
    },
    minutes: {
      action: minutesBefore('action', magnitude, own),
      limit: minutesBefore('limit', magnitude, own),
    },
  };
}

/** Points of a task as its tool usually shakes, for its usual hours; 0 where nothing is known. */
export function usualPoints(task: SettledTask, own?: OwnFigures): number {
  const magnitude = vibrationOf(task, own);
  if (typeof magnitude === 'string') return 0;
  const { range, typical = (range[0] + range[1]) / 2 } = magnitude;
  return pointsOf(typical, usualHours(task), own);
}

/**
 * Trigger time of a turn, h, rounded down to what a crew can keep (figure `share.step`); null where
 * not even one such turn fits: then it takes another tool, method or more people, not a shorter turn.
 */
export function turnOf(minutes: number, own?: OwnFigures): number | null {
  const step = valueOf('share.step', own);
  const turns = Math.floor(minutes / minutesPerHour / step + 1e-9);
  return turns > 0 ? turns * step : null;
}

/**
 * The vibration of one person's day. Tools with a range give a low and a high end; a tool without a
 * figure leaves the result open: at least what the known tools give.
 */
export function vibrationOfDay(tasks: readonly SettledTask[], own?: OwnFigures): VibrationOfDay {
  const each = tasks.map((task) => vibrationOfTask(task, own));
  const points = sumOf(each.map((task) => task.points));
  const daily = mapBounds(points, (value) => dailyOfPoints(value, own));
  const usual = tasks.reduce((sum, task) => sum + usualPoints(task, own), 0);
  const known = each.flatMap(({ magnitude }) =>
    typeof magnitude === 'object' ? [magnitude.origin] : [],
  );
  return {
    points,
    typical: { points: usual, daily: dailyOfPoints(usual, own) },
    daily,
    standing: {
      action: standingTo(daily, vibrationLimit('action', own)),
      limit: standingTo(daily, vibrationLimit('limit', own)),
    },
    tasks: each,
    unknown: [...new Set(each.flatMap((task) => (task.points.open ? [task.tool] : [])))],
    figures: [
      ...figuresOf(known),
      'vibration.day',
      'vibration.action',
      'vibration.limit',
      'vibration.action-points',
    ],
  };
}
