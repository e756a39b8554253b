import { describe, expect, it } from 'vitest';
import { notSure } from '$lib/answers/answers';
import { writeAnswer } from '$lib/keep/write-job';

describe('an answer in a file', () => {
  it.each([
    ['cracks', ['open'], 'open'],
    ['cracks', ['open', 'moving'], ['open', 'moving']],
    ['cracks', notSure('cracks'), 'not-sure'],
    ['contamination', { yes: ['oil'], maybe: [] }, ['oil']],
    ['contamination', { yes: [], maybe: [] }, []],
    ['contamination', notSure('contamination'), 'not-sure'],
    ['contamination', { yes: [], maybe: ['oil'] }, { yes: [], maybe: ['oil'] }],
    ['contamination', { yes: ['oil'], maybe: ['growth'] }, { yes: ['oil'], maybe: ['growth'] }],
    ['depth', 5, 5],
    ['depth', ['film'], 'film'],
    ['thickness', 'unknown', 'unknown'],
    ['makerProfile', ['no-sheet'], 'no-sheet'],
    ['makerMoisture', ['no-sheet'], 'no-sheet'],
    ['makerMoisture', notSure('makerMoisture'), 'no-sheet'],
  ] as const)(
    'to %s stands in the shortest form that reads back the same: %j',
    (id, answer, form) => {
      expect(writeAnswer(id, answer as never)).toEqual(form);
    },
  );
});
