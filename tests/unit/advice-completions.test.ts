import { describe, expect, it } from 'vitest';
import {
  fixedOf,
  gather,
  onlyCompletion,
  openMany,
  plainSite,
  plainZone,
  possibilitiesFor,
  possible,
  possibleDepths,
  steelStates,
  subsets,
} from '$lib/advice/completions';
import { fullDepthHold } from '$lib/advice/hole';
import { adviseSettled } from '$lib/advice/settle';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';

const none = { yes: [], maybe: [] } as const;
const site: SiteAnswers = {
  element: ['wall'],
  setting: ['indoors', 'open'],
  salts: ['none'],
  freezeThaw: ['often'],
  thickness: 200,
  warnings: { yes: ['map-cracking'], maybe: [] },
};
const zone: ZoneAnswers = {
  depth: ['3-to-6'],
  looseness: ['flaking'],
  contamination: { yes: ['growth'], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['rust-stain'],
  finish: ['overlay'],
  area: 5,
};

describe('what answers leave possible', () => {
  it('all choices where nothing was answered', () => {
    expect(possible('texture', undefined)).toEqual(choicesOf('texture'));
    expect(possible('texture', ['sandy'])).toEqual(['sandy']);
    expect(possibleDepths({})).toEqual(choicesOf('depth'));
    expect(possibleDepths({ depth: 12 })).toEqual([12]);
    expect(openMany('warnings', undefined)).toEqual({ yes: [], maybe: choicesOf('warnings') });
    expect(openMany('warnings', none)).toBe(none);
  });
  it('every set of what may be there, each with what surely is', () => {
    expect(subsets({ yes: ['oil'], maybe: ['growth', 'oil', 'salt-bloom'] })).toEqual([
      ['oil'],
      ['oil', 'salt-bloom'],
      ['oil', 'growth'],
      ['oil', 'growth', 'salt-bloom'],
    ]);
    expect(subsets({ yes: [], maybe: [] })).toEqual([[]]);
  });
  it('one possibility of all that share a trait, counted', () => {
    expect(gather(['ab', 'c', 'ac'], (word) => `${word.length}`)).toEqual([
      { value: 'ab', weight: 2, members: ['ab', 'ac'] },
      { value: 'c', weight: 1, members: ['c'] },
    ]);
  });
  it('of a bar that shows, what is lost of it; of none, nothing', () => {
    expect(
      steelStates({ steel: ['none-seen', 'corroded'], barLoss: ['within-limit', 'one-bar'] }),
    ).toEqual([
      { steel: 'none-seen' },
      { steel: 'corroded', barLoss: 'within-limit' },
      { steel: 'corroded', barLoss: 'one-bar' },
    ]);
    expect(steelStates({ steel: ['exposed'] })).toEqual([{ steel: 'exposed' }]);
  });
  it('a wall and a soffit as one, any salt as one, and no more dirt than makes a difference', () => {
    const { element, salts, contamination, steel } = possibilitiesFor(
      {},
      { barLoss: ['within-limit', 'one-bar', 'neighbours'] },
    );
    expect(element.map(({ members }) => members)).toContainEqual(['wall', 'soffit']);
    expect(element).toHaveLength(5);
    expect(salts.map(({ weight }) => weight)).toEqual([1, 2]);
    expect(contamination).toHaveLength(32);
    expect(contamination.reduce((sum, { weight }) => sum + weight, 0)).toBe(64);
    // Past the limit is past it, in one bar or in several.
    expect(steel.map(({ members }) => members.length)).toEqual([1, 1, 1, 2, 1, 2]);
  });
});

it('a site and a zone with nothing wrong are washed, and nothing else', () => {
  const { steps, cautions, ...advice } = adviseSettled(plainSite, plainZone);
  expect(advice).toMatchObject({
    verdict: 'prepare',
    method: 'pressure-wash',
    holds: [],
    findOut: [{ question: 'finish', test: 'ask-maker' }],
    target: {
      profile: null,
      bruisedSkin: 'should-go',
      moisture: 'ask-maker',
      leaves: rangeOf('csp.found.smooth'),
    },
  });
  expect(steps.map(({ id }) => id)).toEqual([
    'make-safe',
    'pressure-wash',
    'check-ready',
    'wet-or-dry',
    'last-clean',
  ]);
  expect(steps[0]?.why.map(({ rule }) => rule)).toEqual(['make-safe-first', 'nothing-cut']);
  expect(cautions).toContain('weather');
  for (const absent of [
    'falls',
    'overhead',
    'structure',
    'lead-asbestos',
    'carbon-monoxide',
  ] as const)
    expect(cautions).not.toContain(absent);
  expect(fullDepthHold(plainSite, plainZone)).toBeNull();
});

describe('what is said in numbers or by a sheet', () => {
  it('is there or not, never open', () => {
    expect(fixedOf({})).toEqual({ area: 'unknown' });
    expect(
      fixedOf({ area: 3, borderLength: 'unknown', barCover: 'unknown', barDiameter: 'unknown' }),
    ).toEqual({ area: 3 });
    expect(
      fixedOf({
        area: 3,
        borderLength: 0,
        barCover: 20,
        barDiameter: 12,
        makerProfile: ['csp-3'],
        makerMoisture: ['damp'],
      }),
    ).toEqual({
      area: 3,
      border: 0,
      barCover: 20,
      barDiameter: 12,
      makerProfile: 3,
      makerMoisture: 'damp',
    });
    expect(fixedOf({ makerProfile: ['no-sheet'], makerMoisture: ['damp'] })).toEqual({
      area: 'unknown',
    });
    expect(fixedOf({ makerProfile: ['no-sheet', 'csp-3'], makerMoisture: ['damp'] })).toEqual({
      area: 'unknown',
      makerMoisture: 'damp',
    });
  });
});

describe('the only completion', () => {
  const settled = {
    site: {
      element: 'wall',
      setting: 'indoors',
      salts: 'none',
      freezeThaw: 'often',
      thickness: 200,
      warnings: ['map-cracking'],
    },
    zone: {
      depth: '3-to-6',
      looseness: 'flaking',
      contamination: ['growth'],
      texture: 'sandy',
      cracks: 'none',
      steel: 'rust-stain',
      finish: 'overlay',
      area: 5,
    },
  };
  it('is all that is sure; the setting decides nothing', () => {
    expect(onlyCompletion({ ...site, ...zone })).toEqual(settled);
    const { thickness: _, ...unmeasured } = { ...site, ...zone };
    expect(onlyCompletion(unmeasured)?.site.thickness).toBe('unknown');
    expect(
      onlyCompletion({ ...site, ...zone, depth: 5, steel: ['corroded'], barLoss: ['one-bar'] })
        ?.zone,
    ).toMatchObject({
      depth: '3-to-6',
      depthMm: 5,
      barLoss: 'one-bar',
    });
    // A stain has no bar to measure.
    expect(onlyCompletion({ ...site, ...zone, barLoss: ['one-bar', 'neighbours'] })).toEqual(
      settled,
    );
  });
  it.each<[string, SiteAnswers & ZoneAnswers]>([
    ['warnings', { warnings: { yes: [], maybe: ['map-cracking'] } }],
    ['contamination', { contamination: { yes: [], maybe: ['oil'] } }],
    ['element', { element: ['wall', 'slab'] }],
    ['salts', { salts: ['none', 'de-icing'] }],
    ['freezeThaw', { freezeThaw: ['rare', 'often'] }],
    ['depth', { depth: ['film', 'under-3'] }],
    ['looseness', { looseness: ['tight', 'hollow'] }],
    ['texture', { texture: ['smooth', 'pitted'] }],
    ['cracks', { cracks: ['none', 'open'] }],
    ['steel', { steel: ['none-seen', 'exposed'] }],
    ['finish', { finish: ['sealer', 'overlay'] }],
  ])('is none while %s is open, or was not answered', (id, open) => {
    expect(onlyCompletion({ ...site, ...zone, ...open })).toBeNull();
    expect(
      onlyCompletion(
        Object.fromEntries(Object.entries({ ...site, ...zone }).filter(([name]) => name !== id)),
      ),
    ).toBeNull();
  });
  it('is none while it is open how much of a bar is lost', () => {
    expect(
      onlyCompletion({
        ...site,
        ...zone,
        steel: ['exposed'],
        barLoss: ['within-limit', 'one-bar'],
      }),
    ).toBeNull();
  });
});
