import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { openQuestions } from '$lib/advice/find-next';
import { choicesOf } from '$lib/answers/questions';
import { maybe, slab, type AllAnswers } from '../helpers/sure-answers';

const advise = (more: AllAnswers) => {
  const answers = { ...slab, ...more };
  return adviseZone(answers, answers, { margins: false });
};

describe('which questions are open', () => {
  it('those that decide something, in their order, with what is still possible', () => {
    const open = (more: AllAnswers) =>
      openQuestions({ ...slab, ...more }, { ...slab, ...more }).map(
        ({ question, among }) => `${question}: ${among.join(' ')}`,
      );
    expect(open({})).toEqual([]);
    expect(
      open({
        finish: ['sealer', 'overlay'],
        salts: ['none', 'de-icing'],
        contamination: maybe('oil'),
      }),
    ).toEqual(['salts: none de-icing', 'contamination: oil', 'finish: sealer overlay']);
    expect(open({ steel: ['exposed'], barLoss: ['within-limit', 'one-bar'] })).toEqual([
      'barLoss: within-limit one-bar',
    ]);
    expect(open({ steel: ['rust-stain'], barLoss: ['within-limit', 'one-bar'] })).toEqual([]);
    expect(open({ steel: ['corroded'], barLoss: ['one-bar'] })).toEqual([]);
    expect(open({ thickness: 'unknown', area: 'unknown' })).toEqual([]);
    expect(openQuestions({}, {}).map(({ question }) => question)).toEqual([
      'element',
      'setting',
      'salts',
      'freezeThaw',
      'warnings',
      'depth',
      'looseness',
      'contamination',
      'texture',
      'cracks',
      'steel',
      'finish',
    ]);
    expect(openQuestions({}, {}).find(({ question }) => question === 'texture')?.among).toEqual(
      choicesOf('texture'),
    );
    expect(openQuestions({}, { barLoss: ['within-limit', 'one-bar'] }).at(-1)?.question).toBe(
      'barLoss',
    );
  });
  it('and whether they matter', () => {
    const { assumptions } = advise({
      setting: ['indoors', 'open'],
      texture: ['smooth', 'sandy'],
      looseness: ['tight', 'rotten'],
    });
    expect(assumptions.map(({ question, matters }) => `${question} ${matters}`)).toEqual([
      'setting false',
      'looseness true',
      'texture false',
    ]);
  });
});

// Common practice, no source: what may stop the work before what only changes the method.
describe('what to find out, most useful first', () => {
  const tests = (more: AllAnswers) => advise(more).findOut.map(({ test }) => test);
  it.each<[string, AllAnswers, readonly string[]]>([
    ['nothing is open', {}, []],
    [
      'oil that changes only the degreasing',
      { finish: ['overlay'], contamination: maybe('oil') },
      ['water-drop'],
    ],
    [
      'oil that is there, once',
      { finish: ['overlay'], contamination: { yes: ['oil'], maybe: [] } },
      ['water-drop'],
    ],
    ['growth is no oil', { contamination: maybe('growth') }, []],
    [
      'fire before looseness',
      { looseness: ['tight', 'rotten'], warnings: maybe('fire-or-chemical') },
      ['look-round', 'hammer-tap'],
    ],
    [
      'a map of cracks stops nothing: what settles most in a minute',
      { looseness: ['tight', 'rotten'], warnings: maybe('map-cracking') },
      ['hammer-tap', 'look-round'],
    ],
    [
      'what settles nothing is not asked',
      { looseness: ['tight', 'rotten'], texture: ['smooth', 'sandy'] },
      ['hammer-tap'],
    ],
    [
      'a bar before its measure',
      {
        steel: ['none-seen', 'corroded'],
        barLoss: ['within-limit', 'one-bar'],
        texture: ['smooth', 'sandy'],
      },
      ['look-at-steel', 'measure-bar'],
    ],
    [
      'through before how it holds',
      { depth: ['film', 'through'], looseness: ['tight', 'flaking'] },
      ['measure-depth', 'hammer-tap'],
    ],
    [
      'a crack that may move waits for weeks',
      { cracks: ['none', 'moving'], finish: ['overlay'], looseness: ['tight', 'rotten'] },
      ['hammer-tap', 'crack-gauge'],
    ],
  ])('%s', (_, answers, expected) => {
    expect(tests(answers)).toEqual(expected);
  });
});
