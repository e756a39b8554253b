import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';

interface Slab {
  readonly site: SiteAnswers;
  readonly zone: ZoneAnswers;
}

/** A sound slab in the open, to be sealed. Invented. */
export const sealedSlab: Slab = {
  site: {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['rare'],
    thickness: 150,
    warnings: { yes: [], maybe: [] },
  },
  zone: {
    depth: ['film'],
    looseness: ['tight'],
    contamination: { yes: [], maybe: [] },
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['sealer'],
    area: 12,
  },
};

/** A sound patio with moss on it, to be sealed. Invented. */
export const mossyPatio: Slab = {
  site: {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['some'],
    thickness: 120,
    warnings: { yes: [], maybe: [] },
  },
  zone: {
    depth: ['film'],
    looseness: ['tight'],
    contamination: { yes: ['growth'], maybe: [] },
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['sealer'],
    area: 20,
  },
};
