import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';

export type AllAnswers = SiteAnswers & ZoneAnswers;

/** A sound broomed slab on the ground, to be sealed, of which everything is answered. Invented. */
export const slab: AllAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 300,
  warnings: { yes: [], maybe: [] },
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: [], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['sealer'],
  area: 20,
};

/** What may be there, and nothing surely. */
export const maybe = <C extends string>(...each: C[]) => ({ yes: [], maybe: each });
