import fc from 'fast-check';
import { describe, it } from 'vitest';
import { anyAnswers } from '../helpers/any-answers';
import { expectRanking, expectSure, expectUnion } from '../helpers/by-enumeration';
import { countCompletions } from '../helpers/enumerate';
import { recess, thickOrRubbery } from '../helpers/tried-out';

// Few and small sets of open answers, always the same; `possibilities.test.ts` has many and large ones.
const small = anyAnswers.filter((answers) => {
  const count = countCompletions(answers);
  return count >= 4 && count <= 12;
});
const all = [
  ...fc.sample(small, { seed: 11, numRuns: 22 }).map((answers, place) => ({ place, answers })),
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
