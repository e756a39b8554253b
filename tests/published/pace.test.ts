import jstat from 'jstat';
import * as reference from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { isBelieved, kindOf, paceOf, type Observed } from '$lib/plan/pace';
import { valueOf } from '$shared/figures';
import { onTrial } from '../helpers/rounds';

const z = jstat.normal.inv(0.95, 0, 1);
const spread = (figure: 'pace.job' | 'pace.kind' | 'pace.task') => Math.log(valueOf(figure)) / z;
const [job, own, task] = [spread('pace.job'), spread('pace.kind'), spread('pace.task')];

/** Points and weights of a normal, enough for five digits. */
const grid = Array.from({ length: 241 }, (_, index) => -1.2 + index * 0.01);

/**
 * What is known of job plus kind after tasks, by brute force: every value of the job's part and of
 * the kind's, weighed with jstat's densities; other kinds are summed over for each value of the job's.
 */
function byGrid(observed: readonly Observed[], kind: string) {
  const kinds = [...new Set([...observed.map((one) => one.kind), kind])];
  const seen = (of: string, log: number) =>
    observed
      .filter((one) => one.kind === of)
      .reduce((weight, { ratio }) => weight * jstat.normal.pdf(Math.log(ratio), log, task), 1);
  const points: [number, number][] = [];
  for (const whole of grid) {
    const others = kinds
      .filter((each) => each !== kind)
      .reduce(
        (weight, each) =>
          weight *
          reference.sum(
            grid.map((part) => jstat.normal.pdf(part, 0, own) * seen(each, whole + part)),
          ),
        jstat.normal.pdf(whole, 0, job),
      );
    for (const part of grid)
      points.push([
        whole + part,
        others * jstat.normal.pdf(part, 0, own) * seen(kind, whole + part),
      ]);
  }
  const all = reference.sum(points.map(([, weight]) => weight));
  const mean = reference.sum(points.map(([value, weight]) => (value * weight) / all));
  const variance = reference.sum(
    points.map(([value, weight]) => ((value - mean) ** 2 * weight) / all),
  );
  return { mean, sigma: Math.sqrt(variance) };
}

// Source: Bayes by brute force over a grid with jstat's densities, summed up by simple-statistics.
describe('the pace of a job, against general statistics libraries', () => {
  it.each<[string, readonly Observed[], string]>([
    ['its own kind after one task', [{ kind: 'hammer', ratio: 1.8 }], 'hammer'],
    ['another kind after one task', [{ kind: 'hammer', ratio: 1.8 }], 'wash'],
    [
      'a kind after three tasks of two kinds',
      [
        { kind: 'hammer', ratio: 1.8 },
        { kind: 'hammer', ratio: 1.2 },
        { kind: 'blade', ratio: 0.7 },
      ],
      'hammer',
    ],
    [
      'a kind nobody has begun after three tasks of two',
      [
        { kind: 'hammer', ratio: 1.8 },
        { kind: 'hammer', ratio: 1.2 },
        { kind: 'blade', ratio: 0.7 },
      ],
      'wash',
    ],
  ])('%s', (_, observed, kind) => {
    const { low, typical, high } = paceOf(observed)(kind);
    const { mean, sigma } = byGrid(observed, kind);
    expect(Math.log(typical)).toBeCloseTo(mean, 4);
    expect(Math.log(high / low) / (2 * z)).toBeCloseTo(sigma, 4);
  });

  it('lets one task move its own kind by two thirds of the way, and the others by a third', () => {
    // By hand: three equal parts, of which the task shares two with its kind and one with the job.
    const after = paceOf([{ kind: 'hammer', ratio: 2 }]);
    expect(after('hammer').typical).toBeCloseTo(2 ** (2 / 3), 9);
    expect(after('wash').typical).toBeCloseTo(2 ** (1 / 3), 9);
    expect(paceOf([])('wash').typical).toBe(1);
  });

  it('comes to what was seen when much was seen, and is surer of it', () => {
    const many = Array.from({ length: 60 }, () => ({ kind: 'hammer', ratio: 1.4 }));
    const { low, typical, high } = paceOf(many)('hammer');
    expect(typical).toBeCloseTo(1.4, 1);
    expect(high / low).toBeLessThan(1.2);
    expect(high / low).toBeLessThan(paceOf(many)('wash').high / paceOf(many)('wash').low);
  });

  it('holds the true pace in nine of ten jobs such as are assumed', () => {
    let state = 7;
    const dice = () => (state = (state * 48271) % 2147483647) / 2147483647;
    const normal = (sigma: number) => jstat.normal.inv(dice(), 0, sigma);
    let [inside, runs] = [0, onTrial(4000, 400)];
    for (let run = 0; run < runs; run += 1) {
      const whole = normal(job);
      const parts = { hammer: normal(own), wash: normal(own), blade: normal(own) };
      const observed = (['hammer', 'hammer', 'blade'] as const).map((kind) => ({
        kind,
        ratio: Math.exp(whole + parts[kind] + normal(task)),
      }));
      const pace = paceOf(observed);
      for (const kind of ['hammer', 'wash'] as const) {
        const { low, high } = pace(kind);
        const truth = Math.exp(whole + parts[kind]);
        if (low <= truth && truth <= high) inside += 1;
      }
    }
    runs *= 2;
    expect(inside / runs).toBeGreaterThan(0.88);
    expect(inside / runs).toBeLessThan(0.92);
  });

  it('believes no task further off than its bound, either way', () => {
    const most = valueOf('pace.most');
    expect([most * 1.01, 0.99 / most, 0].map(isBelieved)).toEqual([false, false, false]);
    expect([most, 1 / most, 1.4].map(isBelieved)).toEqual([true, true, true]);
  });

  it('has parts that make the width of a table together', () => {
    // Figures `pace.*` are derived from `trial.prior-least`: lowest to highest, nine in ten.
    const all = Math.sqrt(job ** 2 + own ** 2 + task ** 2);
    expect(Math.exp(2 * z * all)).toBeCloseTo(valueOf('trial.prior-least'), 0);
  });

  it('takes steps with one sort of tool in one concrete for one kind', () => {
    expect(kindOf('break-out')).toBe(kindOf('free-bar'));
    expect(kindOf('break-out')).not.toBe(kindOf('vacuum'));
    expect(kindOf('make-safe')).not.toBe(kindOf('cover'));
  });
});
