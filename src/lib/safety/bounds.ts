import type { Bounds, Standing } from './types';

/** A number known exactly. */
export const exactly = (value: number): Bounds => ({ low: value, high: value, open: false });

/** Nothing known, nothing added. */
export const nothing: Bounds = exactly(0);

/** The sum of amounts that add. */
export const sumOf = (parts: readonly Bounds[]): Bounds => ({
  low: parts.reduce((sum, part) => sum + part.low, 0),
  high: parts.reduce((sum, part) => sum + part.high, 0),
  open: parts.some((part) => part.open),
});

/** A rising function of a number, end by end. */
export const mapBounds = (bounds: Bounds, rising: (value: number) => number): Bounds => ({
  low: rising(bounds.low),
  high: rising(bounds.high),
  open: bounds.open,
});

/** Slack for numbers that went through powers and logarithms and should meet a limit exactly. */
const roundOff = 1e-9;

/** Whether an amount passes a limit; meeting it exactly does not. */
export const passes = (amount: number, limit: number): boolean => amount > limit * (1 + roundOff);

/** How an amount stands to a limit. */
export function standingTo(amount: Bounds, limit: number): Standing {
  if (passes(amount.low, limit)) return 'over';
  if (passes(amount.high, limit)) return 'may-be-over';
  return amount.open ? 'unknown' : 'under';
}

/** Both ends to the nearest step: nobody reads finer. */
export const toStep = (bounds: Bounds, step: number): Bounds => ({
  ...bounds,
  low: Math.round(bounds.low / step) * step,
  high: Math.round(bounds.high / step) * step,
});
