import { max, mean, min, sampleStandardDeviation } from 'simple-statistics';
import { valueOf, type OwnFigures } from '$shared/figures';
import { studentQuantile } from './student';

/** What a handful of like results says, all in the unit of the results. */
export interface Summary {
  readonly n: number;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** Sample standard deviation (n - 1); absent for a single result. */
  readonly deviation?: number;
  /** One-sided lower bound of the mean at the figure `pulloff.confidence`; absent for a single result. */
  readonly lowerBound?: number;
}

/**
 * Sums up results; null when there are none.
 * The bound is mean - t s / sqrt(n) with n - 1 degrees of freedom: the true mean lies above it
 * with that confidence if the results scatter normally.
 */
export function summaryOf(results: readonly number[], own?: OwnFigures): Summary | null {
  if (results.length === 0) return null;
  // Sorted, so that the order in which results were typed cannot change the last digit.
  const sorted = [...results].sort((a, b) => a - b);
  const n = sorted.length;
  const base = { n, mean: mean(sorted), least: min(sorted), most: max(sorted) };
  if (n === 1) return base;
  const deviation = sampleStandardDeviation(sorted);
  const t = studentQuantile(valueOf('pulloff.confidence', own) / 100, n - 1);
  return { ...base, deviation, lowerBound: base.mean - (t * deviation) / Math.sqrt(n) };
}
