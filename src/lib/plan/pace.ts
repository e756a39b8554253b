import { fromRange, toRange, type Learnt } from '$lib/trial/learn';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';

/**
 * Which steps run fast or slow together: the same sort of tool in the same concrete. Who breaks out
 * slowly because the concrete is hard will free bars and chase cracks slowly too; it says little of
 * how quickly the crew washes. What every kind shares is the job: its crew, its way in, its weather.
 * Basis: common practice, no source.
 */
const kinds = {
  hammer: ['break-out', 'chase-crack', 'free-bar'],
  blade: ['saw-cut', 'route-crack'],
  face: ['grind', 'scarify', 'shotblast', 'needle-scale', 'edge-work', 'strip-coating'],
  blast: ['abrasive-blast', 'blast-clean', 'clean-bar'],
  wash: ['pressure-wash', 'degrease', 'strip-growth', 'vacuum', 'final-wash', 'last-clean'],
  look: ['sound-and-mark', 'tap-crack', 're-sound', 'check-ready', 'moisture-test'],
} as const satisfies Record<string, readonly StepId[]>;

/** The kind of a step; a step like no other is a kind of its own. */
export const kindOf = (step: StepId): string =>
  Object.entries(kinds).find(([, steps]) => (steps as readonly StepId[]).includes(step))?.[0] ??
  step;

/** What a finished task took, as a multiple of what it was reckoned to take. */
export interface Observed {
  readonly kind: string;
  /** Positive. */
  readonly ratio: number;
}

/** Whether a ratio is believed: further off it is a button pressed late, no pace (figure `pace.most`). */
export function isBelieved(ratio: number): boolean {
  const most = valueOf('pace.most');
  return ratio <= most && ratio >= 1 / most;
}

const varianceOf = (figure: 'pace.job' | 'pace.kind' | 'pace.task'): number => {
  const factor = valueOf(figure);
  return fromRange(1 / factor, factor).sigma ** 2;
};

/**
 * How many times as long work takes as it is reckoned, by kind: the range that holds nine in ten of
 * such kinds, and its median. The logarithm of a task's ratio is the job's part plus the kind's plus
 * the task's own, each normal around 0 with a spread of its own (figures `pace.*`), so that what is
 * known of job and kind after some tasks is normal too: one task moves its own kind by two thirds of
 * the way and every other by one third; many move them nearly all the way.
 * Source: Gelman et al., Bayesian Data Analysis, 5.4 (the normal hierarchical model; from memory).
 * @param observed of finished tasks, each `isBelieved`
 */
export function paceOf(observed: readonly Observed[]): (kind: string) => Learnt {
  const [job, own, task] = [
    varianceOf('pace.job'),
    varianceOf('pace.kind'),
    varianceOf('pace.task'),
  ];
  const logs = new Map<string, number[]>();
  for (const { kind, ratio } of observed)
    logs.set(kind, [...(logs.get(kind) ?? []), Math.log(ratio)]);
  const means = new Map(
    [...logs].map(([kind, all]) => [
      kind,
      { mean: all.reduce((sum, each) => sum + each, 0) / all.length, of: task / all.length },
    ]),
  );
  const parts = [...means.values()];
  const precision = 1 / job + parts.reduce((sum, { of }) => sum + 1 / (own + of), 0);
  const ofJob = parts.reduce((sum, { mean, of }) => sum + mean / (own + of), 0) / precision;
  return (kind) => {
    const seen = means.get(kind);
    if (!seen) return toRange({ mu: ofJob, sigma: Math.sqrt(1 / precision + own) });
    const weight = own / (own + seen.of);
    return toRange({
      mu: ofJob + weight * (seen.mean - ofJob),
      sigma: Math.sqrt(weight * seen.of + (1 - weight) ** 2 / precision),
    });
  };
}
