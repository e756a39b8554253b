import type { Job } from '$lib/answers/job';

/** A sound slab in the open under a cement overlay; each test says what is otherwise. Invented. */
const soundSite = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['rare'],
  thickness: 150,
  warnings: { yes: [], maybe: [] },
};
const soundZone = {
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: [], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['overlay'],
  area: 10,
};

/** A job whose zones z0, z1 and so on differ from a sound one by what is given. */
export const tradeJob = (
  zones: readonly object[],
  site: object = {},
  more: Partial<Job> = {},
): Job =>
  ({
    name: '9 Larch Row (invented)',
    site: { ...soundSite, ...site },
    zones: zones.map((answers, index) => ({
      id: `z${index}`,
      name: `Zone ${index}`,
      answers: { ...soundZone, ...answers },
    })),
    ...more,
  }) as unknown as Job;
