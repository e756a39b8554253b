import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { pathOf, type Point, type Polygon } from '$lib/drawing/points';
import { air } from '$lib/drawing/motif/concrete';
import { flake } from '$lib/drawing/motif/small';

const freezing = 44;
const [left, right] = [22, 116];

/**
 * A winter's temperature over the line where water freezes; each dip below it is toned.
 * @param dips how often it goes below
 * @param reach how far below the line
 */
function winter(dips: number, reach: number): Drawing {
  const mild = 18;
  const curve = Array.from({ length: 95 }, (_, index): Point => {
    const share = index / 94;
    const cold = (1 - Math.cos(2 * Math.PI * dips * share)) / 2;
    // One short dip in a mild winter, whole waves in the others.
    const swing = dips === 1 ? cold ** 3 : cold;
    return [left + share * (right - left), freezing - mild + (mild + reach) * swing];
  });
  const below = curve.map(([x, y]): Point => [x, Math.max(y, freezing)]);
  const cold: Polygon = [...below, [right, freezing], [left, freezing]];
  return [
    ...air,
    ['tone', pathOf(cold, true)],
    ['fine', `M${left} ${freezing}H${right}`],
    ['ink', `M${left} 4V68`],
    ['heavy', pathOf(curve)],
    ...placed(flake(6.5), 11, 55),
    ['solid', 'M4.8 32C4.8 29 9.6 25 11 20C12.4 25 17.2 29 17.2 32A6.2 6.2 0 0 1 4.8 32z'],
  ];
}

/** How often a winter crosses freezing: once at most, now and then, again and again. */
export const freezeThaw: Record<Choice<'freezeThaw'>, () => Drawing> = {
  rare: () => winter(1, 7),
  some: () => winter(3, 12),
  often: () => winter(7, 16),
};
