import type { Warning } from '$lib/answers/questions';

/** Warning signs as they stand in the middle of a sentence. */
export const warningNames: Readonly<Record<Warning, string>> = {
  'settled-or-rocking': 'concrete that has sunk or rocks',
  'holds-something-up': 'something that rests on it',
  'tendons-possible': 'steel cables that may be inside',
  'fire-or-chemical': 'fire or chemicals',
  'map-cracking': 'cracks like a map',
  'old-coating-or-adhesive': 'an old coating or glue',
  'buried-services': 'cables or pipes that may be inside',
};
