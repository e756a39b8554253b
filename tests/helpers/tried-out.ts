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

/** A hollow with a firm bottom: on a floor the slab is sounded before it is filled, on a wall it is not. */
export const recess = {
  element: ['slab', 'wall'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['rare'],
  thickness: 300,
  warnings: { yes: [], maybe: [] },
  depth: ['6-to-20'],
  looseness: ['tight'],
  contamination: { yes: [], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['rebuild'],
  area: 5,
} as const satisfies Answers;
