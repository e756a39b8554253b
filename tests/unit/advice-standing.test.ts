import { describe, expect, it } from 'vitest';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { methodsLeft } from '$lib/advice/methods-left';
import { resultsOf, resultsTold } from '$lib/advice/results';
import { standingOf } from '$lib/advice/standing';
import { whyNotOthers } from '$lib/advice/why-not';
import { choicesOf } from '$lib/answers/questions';
import { completions } from '../helpers/enumerate';
import { maybe, slab, type AllAnswers } from '../helpers/sure-answers';

describe('what each result would mean', () => {
  const results = (question: Parameters<typeof resultsOf>[0], more: AllAnswers) => {
    const answers = { ...slab, ...more };
    return resultsOf(question, answers, answers).map(
      ({ choice, outcomes }) =>
        `${choice}: ${outcomes.map(({ verdict, method }) => `${verdict} ${method}`).join(', ')}`,
    );
  };
  it('choice by choice, and of what may be there each alone and none', () => {
    expect(results('looseness', { looseness: ['tight', 'rotten'] })).toEqual([
      'tight: prepare pressure-wash',
      'rotten: prepare break-out',
    ]);
    expect(
      results('contamination', {
        contamination: { yes: ['growth'], maybe: ['oil', 'thick-coating'] },
      }),
    ).toEqual([
      'null: prepare pressure-wash',
      'oil: prepare grind, prepare scarify',
      'thick-coating: prepare scarify',
    ]);
    expect(results('warnings', { warnings: maybe('fire-or-chemical') })).toEqual([
      'null: prepare pressure-wash',
      'fire-or-chemical: stop null',
    ]);
  });
  it('of a number nothing', () => {
    expect(resultsTold('area', slab, slab)).toEqual([]);
    expect(resultsTold('depth', slab, { ...slab, depth: 12 })).toEqual([]);
    expect(resultsTold('depth', slab, { depth: ['film', 'under-3'] })).toEqual(['film', 'under-3']);
    expect(resultsTold('texture', {}, {})).toEqual(choicesOf('texture'));
    expect(resultsTold('warnings', {}, {})).toEqual([null, ...choicesOf('warnings')]);
    expect(resultsTold('contamination', {}, { contamination: maybe('oil') })).toEqual([
      null,
      'oil',
    ]);
  });
});

it('the methods left are those that some way goes on with, gentlest first', () => {
  expect(
    methodsLeft([
      { verdict: 'stop', method: 'grind' },
      { verdict: 'prepare', method: 'break-out' },
      { verdict: 'find-out-first', method: 'pressure-wash' },
      { verdict: 'prepare', method: 'scarify' },
      { verdict: 'prepare', method: 'needle-scale' },
      { verdict: 'stop', method: null },
    ]),
  ).toEqual(['pressure-wash', 'needle-scale', 'scarify', 'break-out']);
});

describe('each method while the answers come in', () => {
  const standing = (answers: AllAnswers) =>
    Object.fromEntries(
      standingOf(answers, answers).map(({ method, state, by, why }) => [
        method,
        [state, ...(by ? [`by ${by}`] : []), ...(why ? [why.rule] : [])].join(' '),
      ]),
    );
  it('stands, would do, or is out by the first answer that ruled it out', () => {
    expect(standing({ ...slab, finish: ['overlay'] })).toEqual({
      'pressure-wash': 'out by finish texture-not-sure-enough',
      grind: 'out by finish too-smooth-after',
      'abrasive-blast': 'would-do not-on-this-ladder',
      scarify: 'would-do would-bruise-sound-concrete',
      shotblast: 'standing',
      'needle-scale': 'out by finish too-smooth-after',
      'break-out': 'would-do harsher-than-needed',
      'water-jet': 'would-do specialist-alternative',
    });
    expect(
      standing({ element: ['wall'], depth: ['6-to-20'], looseness: ['hollow'] }),
    ).toMatchObject({
      scarify: 'out by element needs-a-floor',
      'abrasive-blast': 'out by looseness past-its-reach',
      // So much is open that nothing is stopped for sure.
      'break-out': 'standing',
    });
  });
  it('several stand while it is open; what is only come to where it is stopped does not', () => {
    expect(standing({ ...slab, looseness: ['powdery', 'flaking'] })).toMatchObject({
      'pressure-wash': 'standing',
      grind: 'standing',
      scarify: 'would-do harsher-than-needed',
    });
    expect(standing({ ...slab, warnings: { yes: ['fire-or-chemical'], maybe: [] } })).toMatchObject(
      { 'pressure-wash': 'out held', grind: 'would-do harsher-than-needed' },
    );
  });
  it('with nothing answered, whatever any case comes to', () => {
    const at = standing({});
    for (const id of [
      'pressure-wash',
      'grind',
      'abrasive-blast',
      'scarify',
      'shotblast',
      'break-out',
    ])
      expect(at[id], id).toBe('standing');
    expect(at['water-jet']).toBe('would-do specialist-alternative');
  });
  it('is ruled out by an answer about the place or about the zone', () => {
    const by = Object.fromEntries(
      standingOf(
        { element: ['wall'] },
        { depth: ['6-to-20'], looseness: ['hollow'], finish: ['overlay'] },
      ).map((each) => [each.method, each.by]),
    );
    expect(by).toMatchObject({ scarify: 'element', grind: 'looseness' });
    expect(by['break-out']).toBeUndefined();
  });
  it('a depth that goes through a thin layer is another than the same in a slab', () => {
    const loose: AllAnswers = { ...slab, depth: 6, looseness: ['fractured'] };
    expect(standing(loose)['scarify']).toBe('standing');
    expect(standing({ ...loose, thickness: 6 })['scarify']).toMatch(/^out/);
  });
  it.each<[string, AllAnswers]>([
    ['how it holds', { looseness: ['rotten', 'powdery', 'flaking', 'tight'] }],
    [
      'finish and texture',
      { finish: ['overlay', 'thin-film', 'sealer'], texture: ['pitted', 'smooth'] },
    ],
    ['place and dirt', { element: ['wall', 'slab'], contamination: maybe('thick-coating', 'oil') }],
    ['a bar', { steel: ['exposed', 'none-seen'], finish: ['overlay'] }],
  ])('what would do is told by what is said of it where it would: %s', (_, open) => {
    const answers = { ...slab, ...open };
    const said = [...completions(answers)].flatMap(({ site, zone }) =>
      whyNotOthers(choose(demandsOf(site, zone))),
    );
    for (const { method, state, why } of standingOf(answers, answers)) {
      const about = said.filter((each) => each.method === method && each.rule === why?.rule);
      if (state === 'would-do')
        expect(
          about.some(({ wouldDo }) => wouldDo),
          method,
        ).toBe(true);
      if (state === 'out' && why?.rule !== 'held') expect(about.length, method).toBeGreaterThan(0);
    }
  });
});
