import { describe, expect, it } from 'vitest';
import { partedBy } from '$lib/advice/find-tests';
import { survey } from '$lib/advice/survey';
import type { TestId } from '$lib/advice/types';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';

const none = { yes: [], maybe: [] } as const;
const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 300,
  warnings: none,
};
const zone: ZoneAnswers = {
  depth: ['film'],
  looseness: ['tight'],
  contamination: none,
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['sealer'],
  area: 20,
};
/** How many outcomes each result of a test leaves, times how many possibilities it stands for. */
const left = (question: QuestionId, test: TestId, more: SiteAnswers & ZoneAnswers) => {
  const all = { ...site, ...zone, ...more };
  return (
    partedBy(survey(all, all), question, test)?.map(
      ({ outcomes, weight }) => `${weight} × ${outcomes}`,
    ) ?? null
  );
};

// Common practice, no source: a tap tells how a crack's edges hold, never whether it moves.
describe('what a test tells, and what it cannot', () => {
  it('of a crack: a tap leaves it open whether it moves, a gauge what its edges are', () => {
    const cracks = { cracks: ['hairline', 'open', 'moving'] } as const;
    // A crack that moves is found out about under a sealer, and any other is washed over.
    expect(left('cracks', 'tap-crack', cracks)).toEqual(['1 × 2', '1 × 2']);
    expect(left('cracks', 'crack-gauge', cracks)).toEqual(['1 × 1', '2 × 1']);
    expect(left('cracks', 'tap-crack', { cracks: ['hairline', 'open'] })).toBeNull();
    expect(left('cracks', 'tap-crack', { cracks: ['moving', 'none'] })).toEqual(['1 × 2']);
  });
  it('of another question it tells everything', () => {
    expect(
      left('texture', 'look-close', { texture: ['smooth', 'pitted'], cracks: ['none', 'moving'] }),
    ).toBeNull();
  });

  // A look round never tells what is in an old coating: a laboratory does, and nothing else.
  it('of warnings: a look leaves the old coating open, a laboratory all else', () => {
    const warnings = {
      warnings: { yes: [], maybe: ['fire-or-chemical', 'old-coating-or-adhesive'] },
    } as const;
    // Not burnt: washed, or tested first; burnt: stopped either way.
    expect(left('warnings', 'look-round', warnings)).toEqual(['2 × 2', '2 × 1']);
    expect(left('warnings', 'lead-asbestos-test', warnings)).toEqual(['2 × 2', '2 × 2']);
  });

  // A water drop stays a bead on oil and on a film, a clear sealer too; no look finds oil.
  it('of dirt: a drop tells what beads, a look all but oil', () => {
    const dirt = { contamination: { yes: [], maybe: ['oil', 'thick-coating'] } } as const;
    // Clean: washed; oil: ground; a thick coating: scarified, oil or not.
    expect(left('contamination', 'look-close', dirt)).toEqual(['2 × 2', '2 × 1']);
    expect(left('contamination', 'water-drop', dirt)).toEqual(['2 × 2', '2 × 2']);
    const film = { contamination: { yes: [], maybe: ['thin-coating', 'growth'] } } as const;
    expect(left('contamination', 'water-drop', film)).toEqual(['2 × 1', '2 × 1']);
    expect(left('contamination', 'look-close', film)).toEqual(['1 × 1', '1 × 1', '1 × 1', '1 × 1']);
  });
});
