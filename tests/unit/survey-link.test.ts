import { describe, expect, it } from 'vitest';
import type { Mark } from '$lib/answers/survey';
import { compact } from '$lib/keep/compact';
import { pack } from '$lib/keep/packing';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { diceFrom } from '$lib/practice/dice';
import { problemSentence } from '$words/keep';
import { drawn, rectangle } from '../helpers/drawings';

describe('taps in a link', () => {
  const slab = { length: 6000, width: 8000 };
  const back = async (marks: readonly Mark[]) => {
    const job = drawn({ slab, marks });
    const made = await shareLink(job, 'https://example.org/jobs/');
    if (!made.ok) throw new Error('too long');
    expect(await readShareLink(new URL(made.link).hash)).toEqual({ ok: true, value: job });
    return made.link.length;
  };
  const tap = (x: number, y: number, rings: boolean, again?: boolean): Mark => ({
    kind: 'tap',
    at: [x, y],
    rings,
    ...(again !== undefined && { again }),
  });
  const upright: Mark = {
    kind: 'upright',
    line: [
      [0, 0],
      [6000, 0],
    ],
  };

  it('come back one by one, in their order, between other marks', async () => {
    await back([
      tap(150, 150, true),
      tap(450, 150, false, true),
      tap(750, 150, false, false),
      upright,
      tap(150, 450, true, true),
      tap(451.5, 450, false),
      tap(750, 450, true),
    ]);
  });

  it('cost about as much as their number, not as their places', async () => {
    const grid = (across: number, rows: number) =>
      Array.from({ length: across * rows }, (_, index) =>
        tap(150 + 280 * (index % across), 150 + 280 * Math.floor(index / across), true),
      );
    expect(await back(grid(20, 25))).toBeLessThan(500);
  });

  it.each([[[1, 2]], [[1, 2, 9]], [[1, 2, -1]], [[1.5, 2, 1]], [['a', 2, 1]]])(
    'are refused as a mark where a run is %j',
    async (run) => {
      const job = compact(drawn({ slab, marks: [upright] }));
      const link = `#job2.${await pack(
        JSON.stringify(job).replace(
          /"marks":\[.*?\]\]\}\]/,
          () => `"marks":${JSON.stringify([run])}`,
        ),
      )}`;
      const read = await readShareLink(link);
      expect(read.ok ? 'accepted' : problemSentence(read.problem)).toMatch(/marks/);
    },
  );
});

describe('a link with 200 marks', () => {
  it('is at most 2,000 characters long, or the file is offered', async () => {
    const taps = Array.from({ length: 200 }, (_, index): Mark => ({
      kind: 'tap',
      at: [150 + 300 * (index % 20), 150 + 300 * Math.floor(index / 20)],
      rings: index % 17 !== 0,
    }));
    const slab = { length: 6000, width: 8000 };
    const even = await shareLink(drawn({ slab, marks: taps }), 'https://example.org/jobs/');
    expect(even.ok).toBe(true);
    const dice = diceFrom(3);
    const spots = Array.from({ length: 200 }, (): Mark => ({
      kind: 'spot',
      corners: rectangle(
        dice.between(0, 5000),
        dice.between(0, 7000),
        dice.between(100, 900),
        dice.between(100, 900),
      ),
      depth: dice.between(10, 60),
    }));
    const wild = await shareLink(drawn({ slab, marks: spots }), 'https://example.org/jobs/');
    console.log(
      `200 taps: ${even.ok ? even.link.length : even.length} characters; 200 spots: ${wild.ok ? wild.link.length : wild.length}`,
    );
    for (const link of [even, wild])
      if (link.ok) expect(link.link.length).toBeLessThanOrEqual(2000);
      else expect(link.length).toBeGreaterThan(link.most);
  });
});
