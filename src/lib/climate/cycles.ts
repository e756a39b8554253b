import { valueOf, type OwnFigures } from '$shared/figures';
import type { Day } from './types';

/** A day that has both its temperatures. */
export type MeasuredDay = Day & { readonly min: number; readonly max: number };

export const isMeasured = (day: Day): day is MeasuredDay => day.min !== null && day.max !== null;

/** What freezing does to one day. */
export interface FreezingTests {
  /** Frost at some time of the day: the minimum at or below freezing. */
  readonly isFrost: (day: MeasuredDay) => boolean;
  /** Frozen all day: the maximum at or below freezing. */
  readonly isIce: (day: MeasuredDay) => boolean;
  /** The day crosses freezing. */
  readonly isCycle: (day: MeasuredDay) => boolean;
}

/**
 * The tests by which days are counted.
 * Source: ASTM C62, note on the weathering index (from memory), figure `freeze.point`.
 */
export function freezingTests(own?: OwnFigures): FreezingTests {
  const point = valueOf('freeze.point', own);
  return {
    isFrost: (day) => day.min <= point,
    isIce: (day) => day.max <= point,
    isCycle: (day) => day.min <= point && day.max > point,
  };
}

/**
 * Freezing-cycle days from two counts that climate tables publish: days whose minimum is at or
 * below freezing, less days whose maximum is. Every day frozen throughout is also a frost day,
 * so this equals counting the days one by one.
 */
export const cyclesFromCounts = (frost: number, ice: number): number => frost - ice;
