import { fromUs, type UnitSystem } from '$lib/answers/units';
import type { PullOffReading } from '$lib/readiness/pull-off';
import type { Summary } from '$lib/readiness/statistics';

/** The axis of the plot, from zero. Values in MPa, labels in the reader's unit. */
export interface Axis {
  readonly most: number;
  readonly ticks: readonly { readonly value: number; readonly label: string }[];
}

/** Steps that read well, in MPa and in psi. */
const steps = {
  metric: [0.5, 1, 2, 5, 10],
  us: [50, 100, 200, 500, 1000],
} as const;
const mostTicks = 7;

/** An axis that reaches past the highest value, with round steps in the reader's unit. */
export function axisOf(highest: number, units: UnitSystem): Axis {
  const one = units === 'us' ? fromUs('MPa', 1) : 1;
  const reach = Math.max((highest * 1.08) / one, steps[units][0] * 2);
  const step = steps[units].find((size) => reach / size <= mostTicks) ?? reach / mostTicks;
  const count = Math.ceil(reach / step);
  const ticks = Array.from({ length: count + 1 }, (_, index) => ({
    value: index * step * one,
    label: String(Number((index * step).toPrecision(6))),
  }));
  return { most: count * step * one, ticks };
}

export interface PlotRow {
  readonly mode: string;
  readonly summary: Summary | null;
  readonly dots: readonly { readonly key: number; readonly x: number; readonly lift: number }[];
}

/** How near two dots may stand before one is moved aside. */
const dotWidth = 8;
const lifts = [0, -8, 8, -14, 14];

/** A row of dots for each way of breaking, void ones last; dots that would hide one another are moved aside. */
export function dotsOf(reading: PullOffReading, x: (stress: number) => number): PlotRow[] {
  const modes = [...reading.groups.map((group) => group.mode), ...(reading.voided ? ['glue'] : [])];
  return modes.map((mode) => {
    const placed: { key: number; x: number; lift: number }[] = [];
    const tests = reading.tests
      .filter((test) => test.mode === mode)
      .sort((a, b) => a.stress - b.stress);
    for (const test of tests) {
      const at = x(test.stress);
      const near = placed.filter((dot) => at - dot.x < dotWidth).map((dot) => dot.lift);
      const lift = lifts.find((free) => !near.includes(free)) ?? 0;
      placed.push({ key: test.row, x: at, lift });
    }
    const summary = reading.groups.find((group) => group.mode === mode)?.summary ?? null;
    return { mode, summary, dots: placed };
  });
}
