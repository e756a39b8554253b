import type { HazardId } from '$shared/methods';
import type { HazardWords, Say } from '$lib/words/types';
import { bodyHazards } from './hazards/body';
import { placeHazards } from './hazards/place';

/** What each hazard does, how it is controlled, and when to stop, in English. */
export const hazardWords = (say: Say): Readonly<Record<HazardId, HazardWords>> => ({
  ...bodyHazards(say),
  ...placeHazards(say),
});
