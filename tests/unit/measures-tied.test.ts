import { describe, expect, test } from 'vitest';
import { formatter } from '$lib/words/format';
import { figures, type FigureId } from '$shared/figures';

/** Between a number and what belongs to it on one line; range words may break. */
const loose = /\d (?!to\b|per\b|and\b|of\b)\S|(?:CSP|pH) \d/;

describe('a measure is never broken at the end of a line', () => {
  test.each(['metric', 'us'] as const)('in %s, whatever figure is said', (units) => {
    const say = formatter(units);
    const broken = (Object.keys(figures) as FigureId[])
      .map((id) => say.figure(id))
      .filter((text) => loose.test(text));
    expect(broken).toEqual([]);
    expect(say.length(38)).toContain('\u00a0');
    for (const text of [say.area(120), say.volume(2), say.mass(40), say.hours(3), say.distance(7)])
      expect(text).not.toMatch(loose);
  });
});
