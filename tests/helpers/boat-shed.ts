import type { Job } from '$lib/answers/job';

/** A scaled floor of a boat shed by the door, settled; each test says what is otherwise. Invented. */
export const boatShed = (site: object, zone: object): Job =>
  ({
    name: 'Boat-shed floor (invented)',
    site: {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['often'],
      thickness: 150,
      warnings: { yes: [], maybe: [] },
      ...site,
    },
    zones: [
      {
        id: 'a',
        name: 'By the door',
        answers: {
          depth: 5,
          looseness: ['fractured'],
          contamination: { yes: [], maybe: [] },
          texture: ['sandy'],
          cracks: ['none'],
          steel: ['none-seen'],
          finish: ['overlay'],
          area: 12,
          ...zone,
        },
      },
    ],
  }) as unknown as Job;
