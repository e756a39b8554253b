import { usFactor, type UnitSystem } from '$lib/answers/units';
import type { Frame } from './frame';

/** A tick of a ruler: how far along, in mm, and its number where it has one. */
export interface Tick {
  readonly at: number;
  readonly label: string | null;
}

const metricSteps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const inchSteps = [0.0625, 0.125, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 48];

/** The smallest round length of the system, in mm, that takes at least so many mm. */
export function roundLength(least: number, units: UnitSystem): number {
  const steps = units === 'us' ? inchSteps.map((step) => step * usFactor.mm) : metricSteps;
  return steps.find((step) => step >= least) ?? steps.at(-1) ?? least;
}

/**
 * Ticks along a length in mm: fine ones at least 7 sheet units apart, numbers at least 30.
 * @param scale sheet units per mm
 */
export function ticks(length: number, scale: number, units: UnitSystem): readonly Tick[] {
  const one = units === 'us' ? usFactor.mm : 1;
  const fine = roundLength(7 / scale, units);
  const numbered = roundLength(Math.max(30 / scale, one), units);
  const all: Tick[] = [];
  for (let index = 0; index * fine <= length + 1e-6; index++) {
    const at = index * fine;
    const share = at / numbered;
    const whole = Math.abs(share - Math.round(share)) < 1e-6;
    all.push({ at, label: whole ? String(Math.round((at / one) * 100) / 100) : null });
  }
  return all;
}

/** The ruler's line and ticks as a path, on the side the face begins. */
export function rulerPath(frame: Frame, marks: readonly Tick[]): string {
  const last = marks.at(-1)?.at ?? 0;
  const side = frame.element === 'wall' ? frame.length + 5 : -8;
  const away = frame.element === 'wall' ? 1 : -1;
  return [
    frame.path([
      [side, 0],
      [side, last * frame.scale],
    ]),
    ...marks.map(({ at, label }) =>
      frame.path([
        [side, at * frame.scale],
        [side + away * (label === null ? 3 : 6), at * frame.scale],
      ]),
    ),
  ].join('');
}
