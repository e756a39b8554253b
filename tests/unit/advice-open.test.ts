import fc from 'fast-check';
import { describe, it } from 'vitest';
import { notSure, type Answers } from '$lib/answers/answers';

import { anyAnswers } from '../helpers/any-answers';
import { expectRanking, expectSure, expectUnion } from '../helpers/by-enumeration';
import { countCompletions } from '../helpers/enumerate';
import { slab } from '../helpers/sure-answers';
import { recess, thickOrRubbery } from '../helpers/tried-out';

// Few and small sets of open answers, always the same; `possibilities.test.ts` has many and large ones.
const small = anyAnswers.filter((answers) => {
  const count = countCompletions(answers);
  return count >= 4 && count <= 12;
});
const all = [
  ...fc.sample(small, { seed: 11, numRuns: 22 }).map((answers, place) => ({ place, answers })),
  // Whatever may be told apart of cracks, bars, frost and salts.
  {
    place: 'cracks and bars',
    answers: {
      ...slab,
      salts: notSure('salts'),
      freezeThaw: ['rare', 'often'],
      cracks: ['none', 'hairline', 'crumbling', 'moving'],
      steel: ['none-seen', 'rust-stain', 'corroded'],
      barLoss: ['within-limit', 'one-bar'],
    } as Answers,
  },
  // Whatever may be told apart of how deep it goes and how it holds.
  {
    place: 'depth and looseness',
    answers: {
      ...slab,
      thickness: 100,
      depth: notSure('depth'),
      looseness: notSure('looseness'),
      finish: ['rebuild', 'thin-film'],
    } as Answers,
  },
  // Every warning, where it carries load and where it does not.
  {
    place: 'warnings',
    answers: {
      ...slab,
      element: ['slab', 'wall', 'soffit'],
      warnings: {
        yes: ['buried-services'],
        maybe: [
          'settled-or-rocking',
          'holds-something-up',
          'tendons-possible',
          'fire-or-chemical',
          'old-coating-or-adhesive',
        ],
      },
      looseness: ['tight', 'rotten'],
    } as Answers,
  },
  // Dirt and finishes on floors and steps.
  {
    place: 'dirt and finishes',
    answers: {
      ...slab,
      element: ['slab', 'steps'],
      contamination: {
        yes: [],
        maybe: ['oil', 'thin-coating', 'rubbery-coating', 'salt-bloom', 'growth'],
      },
      finish: ['sealer', 'overlay'],
    } as Answers,
  },
  { place: 'recess', answers: recess },
  { place: 'coat', answers: thickOrRubbery },
];

describe('open answers, against every completion of them', () => {
  it.each(all)('come to the same together: $place', ({ answers }) => {
    expectUnion(answers);
  });
  it.each(all)('are told as sure where all agree: $place', ({ answers }) => {
    expectSure(answers);
  });
  it.each(all.slice(0, 8))('settle as much by a test: $place', ({ answers }) => {
    expectRanking(answers);
  });
});
