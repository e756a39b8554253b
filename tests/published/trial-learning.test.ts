import jstat from 'jstat';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import * as reference from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { fromRange, learn, learnRange, toRange } from '$lib/trial/learn';
import { meanDepth, type Found } from '$lib/trial/found';
import { rateLearnt, rateMeasured } from '$lib/trial/zone-trial';
import { rangeOf, valueOf, type FigureId } from '$shared/figures';

/** What a patch gives for a zone whose true value is known: off by the spread that is assumed. */
function measurer(seed: number, spread: number) {
  const generator = mersenne(seed);
  const sigma = Math.log(spread) / jstat.normal.inv(0.95, 0, 1);
  return (truth: number) =>
    truth * jstat.lognormal.inv(1e-12 + uniformFloat64(generator) * (1 - 2e-12), 0, sigma);
}

/** Share of simulated zones whose true value lies in the learnt range, and how wide that is. */
function simulate(range: readonly [number, number], off: number, patches = 1, spread = 1.5) {
  const measure = measurer(20261126, spread);
  const truth = Math.sqrt(range[0] * range[1]) * off;
  const runs = 20_000;
  const widths: number[] = [];
  let inside = 0;
  for (let run = 0; run < runs; run += 1) {
    const { low, high } = learnRange(
      range,
      Array.from({ length: patches }, () => measure(truth)),
    );
    if (low <= truth && truth <= high) inside += 1;
    widths.push(high / low);
  }
  return { cover: inside / runs, width: reference.mean(widths) };
}

describe('learning from a patch, against general statistics libraries', () => {
  // Source: jstat, quantiles of the log-normal and the normal.
  it.each([
    [5, 20],
    [7.5, 30],
    [0.3, 1],
  ])('a range of %f to %f is read as nine in ten', (low, high) => {
    const prior = fromRange(low, high);
    expect(jstat.lognormal.inv(0.05, prior.mu, prior.sigma)).toBeCloseTo(low, 6);
    expect(jstat.lognormal.inv(0.95, prior.mu, prior.sigma)).toBeCloseTo(high, 6);
    expect(toRange(prior).typical).toBeCloseTo(reference.geometricMean([low, high]), 9);
  });

  // Source: Bayes by brute force over a grid with jstat's densities, summed up by simple-statistics.
  it.each([[[9]], [[9, 12]], [[31, 8, 14]]])(
    'what is known after %j is what a grid gives',
    (measured) => {
      const prior = fromRange(5, 20);
      const sigma = Math.log(1.5) / jstat.normal.inv(0.95, 0, 1);
      const grid = Array.from({ length: 8001 }, (_, index) => -1 + index * 0.00075);
      const weights = grid.map((log) =>
        measured.reduce(
          (weight, value) => weight * jstat.normal.pdf(Math.log(value), log, sigma),
          jstat.normal.pdf(log, prior.mu, prior.sigma),
        ),
      );
      const all = reference.sum(weights);
      const mean = reference.sum(grid.map((log, index) => (log * (weights[index] ?? 0)) / all));
      const variance = reference.sum(
        grid.map((log, index) => ((log - mean) ** 2 * (weights[index] ?? 0)) / all),
      );
      const learnt = learn(prior, measured, 1.5);
      expect(learnt.mu).toBeCloseTo(mean, 5);
      expect(learnt.sigma).toBeCloseTo(Math.sqrt(variance), 5);
    },
  );

  it('takes the mean of five places as the library does', () => {
    const depths = [2.1, 3.4, 2.8, 3.9, 2.2];
    expect(meanDepth({ depths })).toBeCloseTo(reference.mean(depths), 12);
  });
});

describe('a table that is off by 1.8', () => {
  it.each([1.8, 1 / 1.8])('is mended by one patch: off by %f, four times wide', (off) => {
    const { cover, width } = simulate([5, 20], off);
    expect(cover).toBeGreaterThanOrEqual(0.85);
    expect(width).toBeLessThanOrEqual(2.2);
    // Before the patch it was four times wide.
    expect(rangeWidth(learnRange([5, 20], []))).toBeCloseTo(4, 9);
  });

  it('stays honest where zones agree more closely than is assumed, and gets narrower with patches', () => {
    expect(simulate([5, 20], 1.8, 1, 1.39).cover).toBeGreaterThanOrEqual(0.9);
    const three = simulate([5, 20], 1.8, 3);
    expect(three.cover).toBeGreaterThanOrEqual(0.87);
    expect(three.width).toBeLessThan(1.65);
  });

  const rates: FigureId[] = [
    'rate.pressure-wash',
    'rate.abrasive-blast',
    'rate.scarify',
    'rate.shotblast',
    'rate.needle-scale',
    'rate.grind-hand',
    'rate.grind',
    'rate.break-out',
    'rate.break-out-reinforced',
    'rate.break-out-light',
  ];
  it.each(rates)('is mended for %s as its figure stands', (id) => {
    const { cover, width } = simulate(rangeOf(id), 1.8);
    expect(cover).toBeGreaterThanOrEqual(0.85);
    expect(width).toBeLessThanOrEqual(2.25);
  });

  it('would not be mended where a narrow table were trusted: shotblasting was 10 to 19', () => {
    const measure = measurer(7, 1.5);
    const held = (range: readonly [number, number]) => {
      const truth = Math.sqrt(range[0] * range[1]) * 1.8;
      const runs = Array.from({ length: 20_000 }, () =>
        toRange(learn(fromRange(...range), [measure(truth)], 1.5)),
      );
      return runs.filter(({ low, high }) => low <= truth && truth <= high).length / runs.length;
    };
    expect(held([10, 19])).toBeLessThan(0.3);
    expect(held(rangeOf('rate.shotblast'))).toBeGreaterThanOrEqual(0.85);
  });
});

const rangeWidth = ({ low, high }: { low: number; high: number }) => high / low;

describe('what a patch measures', () => {
  const found: Found = {
    notch: 1,
    passes: 2,
    area: 1.2,
    minutes: 6,
    depths: [20, 30, 25, 25, 25],
    stones: 'cut',
    left: 'nothing',
    bar: 'no',
    sound: 'clear',
  };
  it('is square metres an hour, or hours a cubic metre', () => {
    // By hand: 1.2 m2 in 0.1 h is 12 m2/h; 0.1 h for 1.2 m2 x 0.025 m = 0.03 m3 is 3.333 h/m3.
    expect(rateMeasured(found, 'rate.shotblast')).toBeCloseTo(12, 9);
    expect(rateMeasured(found, 'rate.break-out-light')).toBeCloseTo(10 / 3, 9);
  });
  it('gives way to the reader’s own figure, and says nothing without a clock', () => {
    expect(rateLearnt([found], 'rate.shotblast', { 'rate.shotblast': 9 })).toBeNull();
    const { minutes, ...untimed } = found;
    expect(minutes).toBe(6);
    expect(rateLearnt([untimed], 'rate.shotblast')).toBeNull();
    expect(rateLearnt([found], 'rate.shotblast')?.typical).toBeGreaterThan(12);
    expect(valueOf('trial.spread')).toBe(1.5);
  });
});
