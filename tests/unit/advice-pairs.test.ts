import { describe, expect, it } from 'vitest';
import { changesOf, depthMarginOf, marginsOf } from '$lib/advice/margins';
import { oftenMisjudged } from '$lib/advice/often-misjudged';
import { pairMarginsOf } from '$lib/advice/pairs';
import { questionIds, questions } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import { maybe, slab as sealed, type AllAnswers } from '../helpers/sure-answers';

const slab: AllAnswers = { ...sealed, finish: ['overlay'] };
const burnt: AllAnswers = { ...slab, warnings: { yes: ['fire-or-chemical'], maybe: [] } };
const half = 300 * valueOf('depth.full-limit') - valueOf('patch.into-sound');

const pairs = (answers: AllAnswers) =>
  pairMarginsOf(answers, answers).map(
    ({ changes, verdict, method, effect }) =>
      `${changes
        .map(({ question, to, atMm }) => `${question} ${to}${atMm ? ` at ${atMm}` : ''}`)
        .join(' and ')}: ${verdict} ${method}, ${effect}`,
  );

it('every question with choices may have been misjudged, but for what the sheet says of water', () => {
  const withChoices = questionIds.filter(
    (id) => questions[id].kind !== 'number' && id !== 'makerMoisture',
  );
  expect([...oftenMisjudged].sort()).toEqual([...withChoices].sort());
});

describe('two answers that lift a stop together', () => {
  it('are told with the nearest depth, in bands and in millimetres', () => {
    expect(pairs({ ...burnt, depth: ['through'] })).toEqual([
      `depth 20-to-50 at ${valueOf('depth.deep')} and warnings no fire-or-chemical: prepare shotblast, gentler`,
    ]);
    expect(pairs({ ...burnt, depth: 145, looseness: ['rotten'] })).toEqual([
      'looseness tight and warnings no fire-or-chemical: prepare shotblast, gentler',
      // Half the slab lies within the band: the edge of the next band is further off.
      `depth over-50 at ${half} and warnings no fire-or-chemical: prepare break-out, gentler`,
    ]);
  });
  it('each method at the nearest depth at which it stands', () => {
    const lifted = (atMm: string, method: string) =>
      `depth ${atMm} and warnings no fire-or-chemical: prepare ${method}, gentler`;
    expect(pairs({ ...burnt, depth: ['through'], looseness: ['flaking'] })).toEqual([
      lifted(`under-3 at ${valueOf('depth.thin')}`, 'shotblast'),
      lifted(`3-to-6 at ${valueOf('depth.shallow')}`, 'scarify'),
      lifted(`20-to-50 at ${valueOf('depth.deep')}`, 'break-out'),
    ]);
  });
  it('a method no gentler is told, too, where it was stopped; each of the other answer', () => {
    const rotten: AllAnswers = {
      ...slab,
      element: ['wall'],
      warnings: { yes: ['holds-something-up'], maybe: [] },
      looseness: ['rotten'],
      depth: ['20-to-50'],
    };
    const shallow = `and depth 3-to-6 at ${valueOf('depth.shallow')}: prepare abrasive-blast, gentler`;
    expect(pairs(rotten)).toEqual([
      ...['powdery', 'flaking', 'fractured', 'hollow'].map(
        (each) => `looseness ${each} ${shallow}`,
      ),
      'warnings no holds-something-up and element slab: prepare break-out, gentler',
      'warnings no holds-something-up and element steps: prepare break-out, gentler',
    ]);
  });
  it('the nearest depth may lie in the band that was measured', () => {
    expect(
      pairs({
        ...slab,
        element: ['suspended-steps'],
        salts: ['sea-or-pool'],
        freezeThaw: ['often'],
        thickness: 60,
        depth: 40,
        steel: ['rust-stain'],
        finish: ['undecided'],
        area: 10,
      }),
    ).toEqual(['depth 20-to-50 at 30 and steel none-seen: prepare pressure-wash, gentler']);
  });
});

it('two answers are told where something is open that changes nothing', () => {
  const all = pairs({ ...slab, contamination: maybe('thin-coating') });
  expect(all).toContain('looseness flaking and finish sealer: prepare grind, gentler');
  expect(all).toContain('cracks open and warnings tendons-possible: stop shotblast, stops');
  // Washing would do without the coating, and not with it: nothing is told of what is not settled.
  expect(all.some((each) => each.includes('pressure-wash'))).toBe(false);
});

it('only of a depth is told at how many millimetres', () => {
  for (const { changes } of pairMarginsOf(burnt, { ...burnt, depth: 145, looseness: ['rotten'] }))
    for (const change of changes) expect('atMm' in change).toBe(change.question === 'depth');
  for (const depth of [5, ['film'] as const]) {
    const answers = { ...slab, depth };
    for (const margin of marginsOf(answers, answers)) {
      expect('atMm' in margin).toBe(margin.question === 'depth');
      expect('deeper' in margin).toBe(margin.question === 'depth' && typeof depth === 'number');
    }
  }
});

describe('single answers, besides', () => {
  it('are none while it is open what it comes to', () => {
    const open = { ...slab, looseness: ['tight', 'rotten'] } as const;
    expect(marginsOf(open, open)).toEqual([]);
  });
  it('a sheet that asks for more is told by the smoothest grade that changes it', () => {
    const smooth: AllAnswers = { ...sealed, texture: ['smooth'] };
    const sheets = marginsOf(smooth, smooth).filter(({ question }) => question === 'makerProfile');
    expect(sheets.map(({ to, reach, method }) => `${to} ${reach} ${method}`)).toEqual([
      'csp-2 at-least grind',
      'csp-3 at-least shotblast',
      'csp-10 at-least break-out',
    ]);
  });
  it('of dirt nobody was asked about nothing is ticked or taken off', () => {
    expect(changesOf('contamination', {})).toEqual([]);
  });
  it('of two things ticked, one is taken off and the other stays', () => {
    const dirty: AllAnswers = { ...slab, contamination: { yes: ['oil', 'growth'], maybe: [] } };
    const [off] = changesOf('contamination', dirty);
    expect(off?.apply(dirty).contamination).toEqual({ yes: ['growth'], maybe: [] });
  });
  it('half the slab at the edge of a band is one edge', () => {
    // 20 mm of damage and the step into sound concrete are half of it.
    const thickness = 2 * (valueOf('depth.spall-small') + valueOf('patch.into-sound'));
    const edges = changesOf('depth', { ...slab, thickness, depth: 5 }).map(({ atMm }) => atMm);
    expect(edges.filter((at) => at === valueOf('depth.spall-small'))).toHaveLength(1);
    expect(new Set(edges).size).toBe(edges.length);
  });
  it('at the very depth where a hole is half the slab, the stop lies behind and not ahead', () => {
    const rotten: AllAnswers = { ...slab, looseness: ['rotten'], depth: half };
    expect(depthMarginOf(rotten, rotten)).toBeNull();
    expect(depthMarginOf(rotten, { ...rotten, depth: half - 1 })).toMatchObject({
      atMm: half,
      deeper: true,
      verdict: 'stop',
    });
  });
});
