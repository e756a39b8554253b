import { describe, expect, it } from 'vitest';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import { layPatches } from '$lib/survey/patches';
import { rangeOf, valueOf } from '$shared/figures';
import type { Place } from '$lib/survey/geometry';

/** A floor on which a share is hollow in round spots that lie as they fall, none over another. */
function floor(seed: number, side: number, share: number, across: number): Place[][] {
  const source = mersenne(seed);
  const next = () => uniformFloat64(source);
  const radius = across / 2;
  const wanted = Math.round((share * side ** 2) / (Math.PI * radius ** 2));
  const middles: Place[] = [];
  while (middles.length < wanted) {
    const [x, y] = [radius + next() * (side - across), radius + next() * (side - across)];
    if (middles.every(([ox, oy]) => Math.hypot(ox - x, oy - y) >= across)) middles.push([x, y]);
  }
  return middles.map(([x, y]) =>
    Array.from({ length: 16 }, (_, at): Place => {
      const turn = (at * Math.PI) / 8;
      return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
    }),
  );
}

/** Patches to hollow area, on floors of that share. */
function ratios(share: number): number[] {
  const across = valueOf('patch.scattered-spot') * 1000;
  const side = 16_000;
  return Array.from({ length: 8 }, (_, seed) => {
    const { patches } = layPatches(floor(seed + 1, side, share, across), 'often');
    return patches.reduce((sum, { area }) => sum + area, 0) / (share * (side / 1000) ** 2);
  });
}
const mean = (values: readonly number[]) =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

describe('damage in many spots', () => {
  it.each([0.005, 0.01])(
    'thinly scattered (%f of the floor), is patched over the multiple that the figure states',
    (share) => {
      const [low, high] = rangeOf('patch.scattered');
      expect(mean(ratios(share))).toBeGreaterThanOrEqual(low);
      expect(mean(ratios(share))).toBeLessThanOrEqual(high);
    },
  );

  it('merges into the whole floor where a sixteenth of it is hollow', () => {
    // The whole floor is 16.7 times its hollow area.
    expect(mean(ratios(0.06))).toBeGreaterThan(16);
  });
});
