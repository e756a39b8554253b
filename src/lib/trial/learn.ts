import { valueOf } from '$shared/figures';

/**
 * A quantity that is never negative and off by factors rather than by amounts: the logarithm is
 * normal. Working rates and depths a pass are taken for such.
 */
export interface LogNormal {
  /** Mean of the natural logarithm. */
  readonly mu: number;
  /** Standard deviation of the natural logarithm. */
  readonly sigma: number;
}

export interface Learnt {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/**
 * The 0.95 quantile of the standard normal: a range of nine in ten lies this far on either side.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1.
 */
const z = 1.6448536269514722;

/** A range that holds nine in ten, as a log-normal. */
export const fromRange = (low: number, high: number): LogNormal => ({
  mu: (Math.log(low) + Math.log(high)) / 2,
  sigma: (Math.log(high) - Math.log(low)) / (2 * z),
});

/** The range that holds nine in ten, with the median between. */
export const toRange = ({ mu, sigma }: LogNormal): Learnt => ({
  low: Math.exp(mu - z * sigma),
  typical: Math.exp(mu),
  high: Math.exp(mu + z * sigma),
});

/**
 * What is known after measuring: each measurement is the true value times a log-normal error.
 * The normal prior with normal errors of known spread gives a normal again, weighted by precision.
 * Source: Gelman et al., Bayesian Data Analysis, 2.5 (from memory).
 * @param measured positive, in the unit of the prior
 * @param spread the factor within which nine in ten measurements come, up or down
 */
export function learn(prior: LogNormal, measured: readonly number[], spread: number): LogNormal {
  const known = 1 / prior.sigma ** 2;
  const each = 1 / (Math.log(spread) / z) ** 2;
  const precision = known + measured.length * each;
  const logs = measured.reduce((sum, value) => sum + Math.log(value), 0);
  return {
    mu: (prior.mu * known + logs * each) / precision,
    sigma: Math.sqrt(1 / precision),
  };
}

/**
 * A range of nine in ten after patches that measured it, in the unit of the range. Without a
 * measurement it stays as it was; with one, no table counts for more than `trial.prior-least` wide.
 */
export function learnRange(
  [low, high]: readonly [number, number],
  measured: readonly number[],
): Learnt {
  const there = measured.filter((value) => value > 0 && Number.isFinite(value));
  const table = fromRange(low, high);
  if (!there.length) return toRange(table);
  const widest = fromRange(1, valueOf('trial.prior-least')).sigma;
  const prior = { mu: table.mu, sigma: Math.max(table.sigma, widest) };
  return toRange(learn(prior, there, valueOf('trial.spread')));
}
