import type { Answers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';

/** Needles take off a thick coating and no rubbery one, so that their failure counts on the one alone. */
export const thickOrRubbery = {
  element: ['slab', 'wall'],
  setting: ['indoors'],
  salts: ['none'],
  freezeThaw: ['often'],
  thickness: 'unknown',
  warnings: { yes: [], maybe: [] },
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: [], maybe: ['thick-coating', 'rubbery-coating'] },
  texture: ['pitted'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['sealer'],
  area: 'unknown',
  triedOut: [
    { method: 'needle-scale', because: 'too-much', why: ['bruised'] },
    { method: 'pressure-wash', because: 'too-much', why: ['bruised'] },
  ],
} as const satisfies Answers & TriedAnswers;
