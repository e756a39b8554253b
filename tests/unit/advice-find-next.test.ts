import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { openQuestions } from '$lib/advice/find-next';
import { choicesOf } from '$lib/answers/questions';
import { expectRanking } from '../helpers/by-enumeration';
import { maybe, slab, type AllAnswers } from '../helpers/sure-answers';

const advise = (more: AllAnswers) => {
  const answers = { ...slab, ...more };
  return adviseZone(answers, answers, { margins: false });
};

// What each answer would leave is what every completion with that answer comes to.
describe('what a test settles', () => {
  it.each<[string, AllAnswers]>([
    [
      'cracks, frost, salts and the setting',
      {
        setting: ['indoors', 'open'],
        cracks: ['none', 'open', 'moving'],
        freezeThaw: ['rare', 'often'],
        salts: ['none', 'de-icing'],
        steel: ['none-seen', 'rust-stain'],
        finish: ['thin-film', 'overlay'],
      },
    ],
    [
      'depth, looseness and bars',
      {
        depth: ['under-3', '20-to-50', 'through'],
        looseness: ['tight', 'flaking', 'rotten'],
        steel: ['none-seen', 'corroded'],
        barLoss: ['within-limit', 'neighbours'],
      },
    ],
    [
      'place, dirt, texture, finish and warnings',
      {
        element: ['slab', 'wall', 'soffit'],
        contamination: maybe('oil', 'thick-coating'),
        texture: ['smooth', 'pitted'],
        finish: ['sealer', 'overlay'],
        warnings: maybe('fire-or-chemical', 'map-cracking'),
      },
    ],
  ])('%s', (_, open) => {
    expectRanking({ ...slab, ...open });
  });
});

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
    expect(open({ warnings: maybe('map-cracking') })).toEqual(['warnings: map-cracking']);
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
      'oil where nobody has looked for dirt',
      { finish: ['overlay'], contamination: undefined as never, looseness: ['rotten'] },
      ['water-drop'],
    ],
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
      'a load before looseness, though a tap is sooner done',
      { looseness: ['tight', 'rotten'], warnings: maybe('holds-something-up') },
      ['look-round', 'hammer-tap'],
    ],
    [
      'tendons before looseness',
      { looseness: ['tight', 'rotten'], warnings: maybe('tendons-possible') },
      ['look-round', 'hammer-tap'],
    ],
    [
      'through before texture',
      { depth: ['film', 'through'], texture: ['smooth', 'pitted'], finish: ['overlay'] },
      ['measure-depth', 'look-close'],
    ],
    [
      'half of the slab before texture',
      {
        thickness: 100,
        depth: ['20-to-50', 'over-50'],
        texture: ['smooth', 'pitted'],
        finish: ['overlay'],
      },
      ['measure-depth', 'look-close'],
    ],
    [
      'what is left of a bar before a map of cracks',
      {
        steel: ['corroded'],
        barLoss: ['within-limit', 'neighbours'],
        warnings: maybe('map-cracking'),
      },
      ['measure-bar', 'look-round'],
    ],
    [
      'whether a bar shows, before texture, where nobody has looked',
      {
        steel: undefined as never,
        barLoss: ['within-limit', 'neighbours'],
        texture: ['smooth', 'pitted'],
        finish: ['overlay'],
      },
      ['look-at-steel', 'look-close', 'measure-bar'],
    ],
    [
      'what throws dust of a coating nobody has tested last; a laboratory shows no stop',
      {
        looseness: ['tight', 'rotten'],
        warnings: maybe('old-coating-or-adhesive', 'fire-or-chemical'),
        contamination: maybe('thin-coating'),
      },
      ['look-round', 'hammer-tap', 'water-drop', 'lead-asbestos-test', 'look-close'],
    ],
    [
      'what settles most of what takes as long',
      {
        looseness: ['tight', 'flaking', 'rotten'],
        texture: ['smooth', 'pitted'],
        finish: ['sealer', 'thin-film', 'overlay'],
      },
      ['hammer-tap', 'look-close', 'ask-owner'],
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
