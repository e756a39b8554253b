import type { Element } from '$lib/answers/questions';

/** What somebody stands in front of, where it stands alone: as a choice, and as what an unnamed job is about. */
export const elementTitles: Readonly<Record<Element, string>> = {
  slab: 'Slab on the ground',
  steps: 'Steps on the ground',
  'suspended-steps': 'Suspended steps',
  'suspended-slab': 'Suspended slab',
  wall: 'Wall',
  soffit: 'Soffit',
};
