import { describe, expect, it } from 'vitest';
import { atLeast, bandOf, depthBands, depthEdges, rangeOfBand } from '$lib/answers/depth';

// The bands as the trade's page has them: film under 1 mm, under 3.2 (an eighth of an inch), to 6.4
// (a quarter) with the edge, to 20, to 50, over 50, and through where it reaches the slab's back.
describe('the band of a measured depth', () => {
  it.each([
    [0, 'film'],
    [0.99, 'film'],
    [1, 'under-3'],
    [3.19, 'under-3'],
    [3.2, '3-to-6'],
    [6.4, '3-to-6'],
    [6.41, '6-to-20'],
    [20, '6-to-20'],
    [20.01, '20-to-50'],
    [50, '20-to-50'],
    [50.01, 'over-50'],
    [900, 'over-50'],
  ] as const)('%s mm: %s', (depth, band) => {
    expect(bandOf(depth, 'unknown')).toBe(band);
    expect(bandOf(depth, 1000)).toBe(band);
    expect(bandOf(depth, depth + 0.001)).toBe(band);
    if (depth > 0) expect(bandOf(depth, depth)).toBe('through');
    expect(bandOf(depth + 1, depth + 0.5)).toBe('through');
  });

  it('covers depths from edge to edge, and no more than the slab', () => {
    const ranges = (thickness: number | 'unknown') =>
      depthBands.map((band) => rangeOfBand(band, thickness));
    const shallow = [
      [0, 1],
      [1, 3.2],
      [3.2, 6.4],
      [6.4, 20],
      [20, 50],
    ];
    expect(ranges('unknown')).toEqual([...shallow, [50, Infinity], [50, Infinity]]);
    expect(ranges(150)).toEqual([...shallow, [50, 150], [150, 150]]);
    expect(ranges(40)).toEqual([...shallow.slice(0, 4), [20, 40], [40, 40], [40, 40]]);
    expect(ranges(10)).toEqual([
      ...shallow.slice(0, 3),
      [6.4, 10],
      ...Array.from({ length: 3 }, () => [10, 10]),
    ]);
  });

  it('is as deep as itself and as all before it', () => {
    for (const [at, band] of depthBands.entries())
      for (const [other, each] of depthBands.entries())
        expect(atLeast(band, each)).toBe(at >= other);
  });
});

describe('the depths at which something can change', () => {
  const bands = [
    { at: 1, below: 0.99, above: 1 },
    { at: 3.2, below: 3.19, above: 3.2 },
    { at: 6.4, below: 6.4, above: 6.41 },
    { at: 20, below: 20, above: 20.01 },
    { at: 50, below: 50, above: 50.01 },
  ];
  const near = (edges: readonly { at: number; below: number; above: number }[]) =>
    edges.map(({ at, below, above }) => ({
      at,
      below: Number(below.toFixed(6)),
      above: Number(above.toFixed(6)),
    }));

  it('are the edges of the bands, each with a depth on either side', () => {
    expect(near(depthEdges('unknown'))).toEqual(bands);
    for (const { at, below, above } of depthEdges('unknown'))
      expect([bandOf(below, 'unknown'), at]).not.toEqual([bandOf(above, 'unknown'), at]);
  });

  // Half the slab is where breaking out in part turns into full depth (the trade's page).
  it('and half and all of the slab, in order, which weigh more than an edge at the same depth', () => {
    expect(near(depthEdges(150))).toEqual([
      ...bands,
      { at: 75, below: 74.99, above: 75 },
      { at: 150, below: 149.99, above: 150 },
    ]);
    expect(near(depthEdges(40))).toEqual([
      ...bands.slice(0, 3),
      { at: 20, below: 19.99, above: 20 },
      { at: 40, below: 39.99, above: 40 },
    ]);
    expect(near(depthEdges(60)).map(({ at }) => at)).toEqual([1, 3.2, 6.4, 20, 30, 50, 60]);
    expect(near(depthEdges(50)).slice(3)).toEqual([
      { at: 20, below: 20, above: 20.01 },
      { at: 25, below: 24.99, above: 25 },
      { at: 50, below: 49.99, above: 50 },
    ]);
  });
});
