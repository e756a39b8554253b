import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { photoArea, type PhotoMeasure } from '$lib/survey/photo/area';

/** A picture from straight above, 1 px to the mm: what is tapped is what lies there. */
const marks: readonly Place[] = [
  [200, 200],
  [1200, 200],
  [1200, 1000],
  [200, 1000],
];
const diagonal = Math.hypot(1000, 800);
const square: PhotoMeasure = {
  width: 1600,
  height: 1200,
  marks,
  taped: [1000, 800, 1000, 800, diagonal, diagonal],
  outline: [
    [300, 300],
    [1300, 300],
    [1300, 900],
    [300, 900],
  ],
  shown: 200,
};
const why = (change: Partial<PhotoMeasure>) => {
  const found = photoArea({ ...square, ...change });
  return found.ok ? 'taken' : found.why;
};
/** The outline about its middle, so many times as large along and across. */
const grown = (along: number, across: number): readonly Place[] =>
  square.outline.map(([x, y]) => [700 + (x - 800) * along, 600 + (y - 600) * across]);

describe('an area on a photo', () => {
  it('is a range round what lies there: 1 m by 0.6 m', () => {
    const found = photoArea(square);
    if (!found.ok) throw new Error(found.why);
    expect(found.area).toBeCloseTo(0.6, 6);
    const [low, high] = found.range;
    expect((low + high) / 2).toBeCloseTo(0.6, 6);
    expect(high - low).toBeGreaterThan(0.02);
    expect(high - low).toBeLessThan(0.15);
  });
  it('is the wider the smaller the picture was when it was tapped', () => {
    const width = (shown: number) => {
      const found = photoArea({ ...square, shown });
      return found.ok ? found.range[1] - found.range[0] : Infinity;
    };
    expect(width(80)).toBeGreaterThan(1.5 * width(300));
    expect(why({ shown: 15 })).toBe('too-unsure');
  });
  it('is refused where the marks span less than half of it, lengthwise or across', () => {
    const small: readonly Place[] = grown(1.9, 1.2);
    expect(why({ outline: small })).toBe('taken');
    expect(why({ outline: grown(2.1, 1.2) })).toBe('reference-small');
    // Long enough, and only 180 mm of 600 across.
    const narrow = marks.map(([x, y]): Place => [x, 600 + (y - 600) * 0.225]);
    const short = Math.hypot(1000, 180);
    expect(why({ marks: narrow, taped: [1000, 180, 1000, 180, short, short] })).toBe(
      'reference-small',
    );
  });
  it('needs four marks in their order round', () => {
    const [a, b, c, d] = marks as [Place, Place, Place, Place];
    expect(why({ marks: [a, c, b, d] })).toBe('marks-cross');
    expect(why({ marks: [a, b, c, [700, 210]] })).toBe('marks-cross');
    expect(why({ marks: [a, b, c, [700, 600]] })).toBe('marks-cross');
    expect(why({ marks: [a, b, c] })).toBe('unfinished');
    expect(why({ marks: [d, c, b, a], taped: [1000, 800, 1000, 800, diagonal, diagonal] })).toBe(
      'taken',
    );
  });
  it('finds a side read wrong by the second diagonal', () => {
    expect(why({ taped: [1100, 800, 1000, 800, diagonal, diagonal] })).toBe('tape-differs');
    expect(why({ taped: [1000, 800, 1000, 800, diagonal, diagonal + 60] })).toBe('tape-differs');
    // As far as a tape is out on rough ground.
    expect(why({ taped: [1004, 797, 1000, 803, diagonal, diagonal - 4] })).toBe('taken');
    expect(why({ taped: [1000, 800, 1000, 800, 2000, 900] })).toBe('no-shape');
    expect(why({ taped: square.taped.slice(0, 5) })).toBe('unfinished');
  });
  it('refuses an outline that crosses itself or has no corners', () => {
    const [a, b, c, d] = square.outline as [Place, Place, Place, Place];
    expect(why({ outline: [a, c, b, d] })).toBe('outline-crosses');
    expect(why({ outline: [a, b] })).toBe('unfinished');
  });
  it('refuses what runs out towards the horizon', () => {
    // The marks as seen flat along the ground: the far side is a third of the near one.
    const flat: readonly Place[] = [
      [200, 1000],
      [1400, 1000],
      [1000, 700],
      [600, 700],
    ];
    const far: readonly Place[] = [
      [300, 1000],
      [1300, 1000],
      [820, 500],
      [780, 500],
    ];
    expect(why({ marks: flat, outline: far })).toBe('too-far');
  });
});
