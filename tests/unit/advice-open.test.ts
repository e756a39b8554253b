import fc from 'fast-check';
import { describe, it } from 'vitest';
import { anyAnswers } from '../helpers/any-answers';
import { expectRanking, expectSure, expectUnion } from '../helpers/by-enumeration';
import { countCompletions } from '../helpers/enumerate';
import { recess, thickOrRubbery } from '../helpers/tried-out';

// Few and small sets of open answers, always the same; `possibilities.test.ts` has many and large ones.
const small = (most: number, least: number) =>
  anyAnswers.filter((answers) => {
    const count = countCompletions(answers);
    return count >= least && count <= most;
  });
const drawn = [
  ...fc.sample(small(16, 2), { seed: 11, numRuns: 32 }),
  ...fc.sample(small(96, 17), { seed: 12, numRuns: 12 }),
].map((answers, place) => ({ place, answers }));
const all = [
  ...drawn,
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
  it.each(all.filter((_, place) => place % 3 === 0))(
    'settle as much by a test: $place',
    ({ answers }) => {
      expectRanking(answers);
    },
  );
});
