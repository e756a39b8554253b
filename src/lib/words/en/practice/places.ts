import type { Element, Setting } from '$lib/answers/questions';

/** What generated cases stand on: as the title has it, and as whoever stands there would say it. */
export const elementPlaces: Readonly<Record<Element, { name: string; stands: string }>> = {
  slab: { name: 'A slab', stands: 'It is a slab on the ground' },
  steps: { name: 'Steps', stands: 'It is a flight of steps' },
  'suspended-steps': {
    name: 'Suspended steps',
    stands: 'It is a flight of steps with air or a room below it',
  },
  'suspended-slab': {
    name: 'A suspended slab',
    stands: 'It is a floor with air or a room below it',
  },
  wall: { name: 'A wall', stands: 'It is an upright wall' },
  soffit: { name: 'A soffit', stands: 'It is the underside of a floor' },
};

export const settingPlaces: Readonly<Record<Setting, string>> = {
  indoors: 'indoors, with walls all round',
  sheltered: 'under a roof with open sides',
  open: 'in the open',
};

/** Streets of the invented town of Marrow Quay. */
export const streets = [
  'Saltpan Lane',
  'Cooper’s Wharf',
  'Lantern Terrace',
  'Rope Walk',
  'Gull Street',
  'Eelgate',
  'Mill Slip',
  'Hatters’ Rise',
  'Candle Yard',
  'Orchard Steps',
  'Wherry Row',
  'Bellfounder’s Court',
  'Plover Green',
] as const;
