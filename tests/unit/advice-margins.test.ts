import { decisionOf } from '$lib/advice/decision';
import { describe, expect, it } from 'vitest';
import { changesOf, depthMarginOf, marginsOf, sheetMarginOf } from '$lib/advice/margins';
import { oftenMisjudged } from '$lib/advice/often-misjudged';
import { pairMarginsOf } from '$lib/advice/pairs';
import type { Margin } from '$lib/advice/zone-advice';
import { choicesOf } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import { slab as sealed, type AllAnswers } from '../helpers/sure-answers';

type Answers = AllAnswers;
const slab: Answers = { ...sealed, finish: ['overlay'] };
const scale: Answers = { ...slab, depth: 5, looseness: ['fractured'] };
const spall: Answers = { ...slab, thickness: 100, depth: ['20-to-50'], looseness: ['hollow'] };
const burnt: Answers = { ...slab, warnings: { yes: ['fire-or-chemical'], maybe: [] } };
const edge = (id: 'shallow' | 'spall-small' | 'deep') => valueOf(`depth.${id}`);
const half = 300 * valueOf('depth.full-limit') - valueOf('patch.into-sound');

const line = ({ question, from, to, atMm, deeper, reach, verdict, method }: Margin): string =>
  [
    `${question}: ${from} → ${to}`,
    ...(atMm === undefined ? [] : [`at ${atMm}`]),
    ...(deeper === undefined ? [] : [deeper ? 'deeper' : 'shallower']),
    ...(reach ? [reach] : []),
    `${verdict} ${method}`,
  ].join(', ');
const margins = (answers: Answers, question: Margin['question']) =>
  marginsOf(answers, answers)
    .filter((each) => each.question === question)
    .map(line);

describe('what answers come to', () => {
  it('is a verdict and a method, or nothing while they come to more', () => {
    expect(decisionOf(slab)).toEqual({ verdict: 'prepare', method: 'shotblast' });
    expect(decisionOf(burnt)).toEqual({ verdict: 'stop', method: null });
    // Open, and yet the same: shot takes a thin coating along.
    const painted = { yes: [], maybe: ['thin-coating'] } as const;
    expect(decisionOf({ ...slab, contamination: painted })).toEqual({
      verdict: 'prepare',
      method: 'shotblast',
    });
    expect(decisionOf({ ...slab, looseness: ['tight', 'rotten'] })).toBeNull();
  });
});

// That these are the nearest and none is missed is proven by enumeration in `margins.test.ts`.
describe('the single answers that would change it', () => {
  it.each<[string, Answers, Margin['question'], readonly string[]]>([
    [
      'a sheet that asks for less, or for more',
      slab,
      'makerProfile',
      [
        'makerProfile: no-sheet → csp-3, at-most, prepare pressure-wash',
        'makerProfile: no-sheet → csp-10, at-least, prepare break-out',
      ],
    ],
    [
      'another sheet',
      { ...slab, makerProfile: ['csp-6'] },
      'makerProfile',
      [
        'makerProfile: csp-6 → csp-3, at-most, prepare pressure-wash',
        'makerProfile: csp-6 → csp-10, at-least, prepare break-out',
      ],
    ],
    [
      'a depth, by its band',
      slab,
      'depth',
      [
        `depth: film → over-50, at ${edge('deep')}, find-out-first shotblast`,
        'depth: film → through, at 300, stop null',
      ],
    ],
    [
      'a depth that was measured',
      scale,
      'depth',
      [
        `depth: 3-to-6 → 6-to-20, at ${edge('shallow')}, deeper, prepare break-out`,
        `depth: 3-to-6 → over-50, at ${half}, deeper, stop null`,
      ],
    ],
    [
      'up and down',
      spall,
      'depth',
      [
        `depth: 20-to-50 → 3-to-6, at ${edge('shallow')}, prepare scarify`,
        `depth: 20-to-50 → 6-to-20, at ${edge('spall-small')}, prepare break-out`,
        `depth: 20-to-50 → over-50, at ${edge('deep')}, stop null`,
      ],
    ],
    [
      'how it holds',
      slab,
      'looseness',
      [
        'looseness: tight → fractured, prepare scarify',
        'looseness: tight → hollow, prepare scarify',
        'looseness: tight → rotten, prepare break-out',
      ],
    ],
    [
      'signs of danger',
      scale,
      'warnings',
      [
        'settled-or-rocking, stop null',
        'fire-or-chemical, stop null',
        'map-cracking, find-out-first scarify',
        'old-coating-or-adhesive, find-out-first scarify',
      ].map((each) => `warnings: no ${each.split(',')[0]} → ${each}`),
    ],
    [
      'a sign that was misread: behind a stop no other method counts',
      burnt,
      'warnings',
      ['warnings: fire-or-chemical → no fire-or-chemical, prepare shotblast'],
    ],
    ['nothing else where it is stopped', burnt, 'looseness', []],
  ])('%s', (_, answers, question, expected) => {
    expect(margins(answers, question)).toEqual(expected);
  });
  it('come likeliest misjudgement first', () => {
    const asked = marginsOf(slab, slab).map(({ question }) =>
      oftenMisjudged.indexOf(question as never),
    );
    expect(asked).toEqual([...asked].sort((one, other) => one - other));
    expect(new Set(oftenMisjudged).size).toBe(oftenMisjudged.length);
  });

  it('a sheet that asks for less, alone; not where one speaks, where it is open or nothing gets gentler', () => {
    const sheet = (answers: Answers) => sheetMarginOf(answers, answers);
    expect(sheet(slab)).toMatchObject({ to: 'csp-3', reach: 'at-most', method: 'pressure-wash' });
    expect(sheet({ ...slab, makerProfile: ['no-sheet'] })).toMatchObject({ to: 'csp-3' });
    expect(sheet({ ...slab, makerProfile: ['csp-6'] })).toBeNull();
    expect(sheet({ ...slab, looseness: ['tight', 'rotten'] })).toBeNull();
    expect(sheet(scale)).toBeNull();
  });
  it('the next depth, deeper down', () => {
    const next = (answers: Answers) => depthMarginOf(answers, answers)?.atMm ?? null;
    expect(next(scale)).toBe(edge('shallow'));
    expect(next(slab)).toBe(edge('deep'));
    expect(next(spall)).toBe(edge('deep'));
    expect(next({ ...scale, depth: edge('shallow') })).toBe(edge('shallow'));
    expect(next({ ...scale, depth: 7 })).toBe(half);
    expect(next({ ...scale, depth: 299 })).toBeNull();
    expect(next({ ...slab, looseness: ['tight', 'rotten'] })).toBeNull();
  });
});

describe('the other answers there are to a question', () => {
  const changes = (answers: Answers, question: Parameters<typeof changesOf>[0]) =>
    changesOf(question, answers).map(({ from, to }) => `${from} → ${to}`);
  it('every other choice of one that is sure; none of one that is open or was not answered', () => {
    expect(changes(slab, 'texture')).toEqual(['sandy → smooth', 'sandy → pitted']);
    expect(changes({ ...slab, texture: ['sandy', 'pitted'] }, 'texture')).toEqual([]);
    expect(changes({ ...slab, depth: ['film', 'under-3'] }, 'depth')).toEqual([]);
    expect(changes({}, 'texture')).toEqual([]);
    expect(changes({}, 'depth')).toEqual([]);
    expect(changesOf('texture', slab)[1]?.apply(slab)).toEqual({ ...slab, texture: ['pitted'] });
  });
  it('of things ticked: each taken off, or put on; what may be there stays open', () => {
    const dirty: Answers = { ...slab, contamination: { yes: ['oil'], maybe: ['growth'] } };
    expect(changes(dirty, 'contamination')).toEqual([
      'oil → no oil',
      'no thin-coating → thin-coating',
      'no thick-coating → thick-coating',
      'no rubbery-coating → rubbery-coating',
      'no salt-bloom → salt-bloom',
    ]);
    const [off, on] = changesOf('contamination', dirty);
    expect(off?.apply(dirty).contamination).toEqual({ yes: [], maybe: ['growth'] });
    expect(on?.apply(dirty).contamination).toEqual({
      yes: ['oil', 'thin-coating'],
      maybe: ['growth'],
    });
  });
  it('of a sheet: every grade it could ask for instead, at hand or not', () => {
    const grades = choicesOf('makerProfile').filter((grade) => grade !== 'no-sheet');
    expect(changes({}, 'makerProfile')).toEqual(grades.map((grade) => `no-sheet → ${grade}`));
    expect(changes({ ...slab, makerProfile: ['csp-2'] }, 'makerProfile')).toEqual(
      grades.filter((grade) => grade !== 'csp-2').map((grade) => `csp-2 → ${grade}`),
    );
    expect(changesOf('makerProfile', {})[2]?.apply({})).toEqual({ makerProfile: ['csp-3'] });
  });
  it('of a measured depth: just past every edge, and where the hole comes to half the slab', () => {
    const at = (answers: Answers) =>
      changesOf('depth', answers).map(({ atMm, deeper }) => `${atMm}${deeper ? ' deeper' : ''}`);
    const edges = [valueOf('depth.film'), valueOf('depth.thin')].map(String);
    const below = [edge('shallow'), edge('spall-small'), edge('deep')].map((mm) => `${mm} deeper`);
    expect(at(scale)).toEqual([...edges, ...below, `${half} deeper`, '150 deeper', '300 deeper']);
    expect(at({ ...scale, thickness: 'unknown' })).toEqual([...edges, ...below]);
    const { thickness: _, ...unmeasured } = scale;
    expect(at(unmeasured)).toEqual([...edges, ...below]);
    // A slab so thin that the step into sound concrete is half of it has no such edge.
    expect(at({ ...scale, thickness: 2 * valueOf('patch.into-sound') })).not.toContain('0');
    expect(changesOf('depth', scale)[2]?.apply({}).depth).toBeGreaterThan(edge('shallow'));
    expect(changesOf('depth', scale)[1]?.apply({}).depth).toBeLessThan(valueOf('depth.thin'));
    expect(changesOf('depth', slab)[0]?.apply({})).toEqual({ depth: ['under-3'] });
  });
});

describe('two answers together', () => {
  const pairs = (answers: Answers) =>
    pairMarginsOf(answers, answers).map(
      ({ changes, verdict, method, effect }) =>
        `${changes.map(({ question, to, atMm }) => `${question} ${to}${atMm === undefined ? '' : ` at ${atMm}`}`).join(' and ')}: ${verdict} ${method}, ${effect}`,
    );
  it('make it gentler, or stop it, where neither does alone', () => {
    expect(pairs(spall)).toEqual([
      `looseness tight and depth 6-to-20 at ${edge('spall-small')}: prepare shotblast, gentler`,
    ]);
    const both = pairs(scale);
    expect(both).toContain('looseness tight and finish sealer: prepare pressure-wash, gentler');
    expect(both).toContain('looseness rotten and warnings tendons-possible: stop break-out, stops');
    // A tight floor that is scaled only by a hair is shot: that is another method, and no gentler one.
    expect(
      both.filter((each) => each.endsWith('gentler') && !each.includes('pressure-wash')),
    ).toEqual([]);
    expect(both.filter((each) => each.startsWith('depth'))).toEqual([
      `depth 6-to-20 at ${edge('shallow')} and warnings holds-something-up: stop break-out, stops`,
      `depth 6-to-20 at ${edge('shallow')} and warnings tendons-possible: stop break-out, stops`,
      `depth 6-to-20 at ${edge('shallow')} and element suspended-slab: stop break-out, stops`,
    ]);
  });
  it('are none while it is not settled, or where a single answer frees it', () => {
    expect(pairs({ ...slab, looseness: ['tight', 'rotten'] })).toEqual([]);
    expect(pairs(burnt)).toEqual([]);
  });
});
