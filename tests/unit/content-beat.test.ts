import { explainers } from '$lib/learn/library.server';
import { describe, expect, it } from 'vitest';
import { beatOf } from '../helpers/sentence-beat';

/**
 * Sentences that explain, not telegrams: on average 9 to 14 words a page, and at most a fifth of
 * them under six words. The limits are the project's own (common practice in plain writing, no
 * source): shorter reads as orders, longer is hard for a reader of twelve.
 */
const least = 9;
const most = 14;
const mostShort = 0.2;

describe('the beat of the explainers', () => {
  it('is measured: a telegram, an explanation, a list', () => {
    expect(beatOf('Stop. Dry it first. Then blast.').mean).toBeLessThan(3);
    expect(beatOf('Stop. Dry it first. Then blast.').short).toBe(1);
    const told = beatOf('Shot rusts and clumps on a wet floor, so dry the floor first.');
    expect(told).toEqual({ sentences: 1, mean: 13, short: 0 });
    expect(beatOf('## A heading\n\n1. Wash the floor.\n2. Dry it.\n\n| a | b |').sentences).toBe(2);
  });

  it.each(explainers.map((page) => [page.slug, page] as const))('%s explains', (_, { body }) => {
    const { mean, short } = beatOf(body);
    expect(mean, 'words a sentence').toBeGreaterThanOrEqual(least);
    expect(mean, 'words a sentence').toBeLessThanOrEqual(most);
    expect(short, 'share of sentences under six words').toBeLessThanOrEqual(mostShort);
  });
});
