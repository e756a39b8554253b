import { describe, expect, it } from 'vitest';
import type { PullOffTest } from '$lib/answers/readiness-record';
import { judgePullOff } from '$lib/readiness/judge-pull-off';
import { readPullOff } from '$lib/readiness/pull-off';
import { askedBy } from '$lib/readiness/requirement';
import type { Problem } from '$lib/readiness/rules';
import { rangeOf } from '$shared/figures';
import { inBase, judgePulls } from '../helpers/readiness';

describe('what is said of pull-off tests', () => {
  const figures = ['pulloff.overlay-mean', 'pulloff.overlay-tests', 'pulloff.overlay-profile'];
  it('nothing, or no requirement', () => {
    expect(judgePulls([])).toMatchObject({ state: 'not-yet-checked', rule: 'nothing-entered' });
    const reading = readPullOff([inBase(2)], []);
    expect(judgePullOff(reading, null, 0)).toEqual({
      state: 'not-yet-checked',
      rule: 'no-requirement',
      figures: ['pulloff.specified'],
    });
  });
  it('a single result under the least allowed, and at it', () => {
    const asked = { id: 'own', mean: 1.5, least: 1 } as const;
    expect(judgePulls([0.99, 2, 3].map(inBase), asked)).toMatchObject({
      rule: 'single-low',
      state: 'not-ready',
      facts: { lowest: 0.99, least: 1 },
      figures: ['pulloff.least-tests'],
    });
    expect(judgePulls([1, 2, 3].map(inBase), asked).rule).toBe('passed');
  });
  it.each([
    [{ base: 100 }, 'mean-low-base', ['base']],
    [{ bond: 100 }, 'mean-low-bond', ['bond']],
    [{ repair: 100 }, 'mean-low-repair', ['repair']],
    [{ base: 50, repair: 50 }, 'mean-low-mixed', ['base', 'repair']],
  ])('a low mean of breaks in %j', (shares, rule, planes) => {
    const tests: PullOffTest[] = [1, 1.1, 1.2].map((stress) => ({ stress, shares }));
    const { state, facts, ...found } = judgePulls(tests);
    expect([state, found.rule]).toEqual(['not-ready', rule]);
    expect(facts).toEqual({ mean: expect.closeTo(1.1, 9), asked: 1.7, planes });
    expect(found.figures).toEqual([...figures, 'depth.bruise']);
  });
  it('how many are there, how many are wanted, and how many the glue spoiled', () => {
    const glue: PullOffTest = { stress: 1, shares: { glue: 100 } };
    expect(judgePulls([inBase(2), glue])).toMatchObject({
      state: 'not-yet-checked',
      rule: 'too-few',
      facts: { have: 1, need: 3, voided: 1 },
      figures,
    });
    expect(
      judgePullOff(
        readPullOff([2, 2, 2].map(inBase), []),
        askedBy({ id: 'overlay-control' }, []),
        5,
      ),
    ).toMatchObject({ rule: 'too-few', facts: { have: 3, need: 5, voided: 0 } });
  });
  it('too few alike: which plane, how many, how many make a mean', () => {
    const bond: PullOffTest = { stress: 1, shares: { bond: 100 } };
    expect(judgePulls([inBase(3), inBase(3), bond])).toMatchObject({
      state: 'retest',
      facts: { planes: ['bond'], have: 1, need: 3 },
      figures,
    });
  });
  it('passed surely where the bound of the mean reaches what is asked, too', () => {
    expect(judgePulls([1.9, 1.9, 1.9].map(inBase))).toMatchObject({
      state: 'ready',
      rule: 'passed',
      facts: { asked: 1.7, have: 3, sure: 'yes' },
      figures,
    });
    const one: PullOffTest = { stress: 1.7, shares: { bond: 100 } };
    expect(judgePulls([inBase(1.9), inBase(1.9), one]).facts).toMatchObject({ sure: 'yes' });
  });
  it('names the figures each requirement rests on', () => {
    const of = (id: Parameters<typeof askedBy>[0]) => askedBy(id, [])?.figures;
    expect(of({ id: 'overlay-control' })).toEqual(figures);
    expect(of({ id: 'german-repair' })).toEqual([
      'pulloff.german-mean',
      'pulloff.german-least',
      'pulloff.german-first-area',
      'pulloff.german-more-area',
      'pulloff.german-tests',
    ]);
    expect(of({ id: 'own', mean: 1 })).toEqual(['pulloff.least-tests']);
    expect(of({ id: 'product-r3' })).toEqual(['pulloff.product-r3', 'pulloff.least-tests']);
    expect(askedBy({ id: 'own', mean: 1 }, [])).toStrictEqual({
      id: 'own',
      mean: 1,
      tests: 3,
      figures: ['pulloff.least-tests'],
      borrowed: false,
    });
    // The German rule on an unknown area asks for its first tests.
    expect(askedBy({ id: 'german-repair' }, [])).toMatchObject({ onArea: 3, tests: 3, least: 1 });
    expect(askedBy(undefined, [])).toBeNull();
  });
});

describe('pull-off rows at the edges', () => {
  const read = (row: PullOffTest) => {
    const problems: Problem[] = [];
    return { ...readPullOff([row], problems), problems };
  };
  const shares = { base: 100 };
  it.each<[PullOffTest, Problem]>([
    [{ shares }, { id: 'no-stress', check: 'pull-off', field: 'stress', row: 1 }],
    [
      { stress: '', shares },
      { id: 'no-stress', check: 'pull-off', field: 'stress', row: 1 },
    ],
    [
      { stress: 20.1, shares },
      {
        id: 'out-of-range',
        check: 'pull-off',
        field: 'stress',
        row: 1,
        typed: 20.1,
        limits: [0, 20],
      },
    ],
    [
      { force: 3, disc: 0, shares },
      {
        id: 'zero-disc',
        check: 'pull-off',
        field: 'disc',
        row: 1,
        typed: 0,
        limits: rangeOf('limit.disc'),
      },
    ],
    [
      { force: 3, shares },
      { id: 'zero-disc', check: 'pull-off', field: 'disc', row: 1 },
    ],
    [
      { force: 3, disc: 2, shares },
      {
        id: 'out-of-range',
        check: 'pull-off',
        field: 'disc',
        row: 1,
        typed: 2,
        limits: rangeOf('limit.disc'),
      },
    ],
    [
      { stress: 2, force: 3, disc: 50, shares },
      { id: 'stress-and-force', check: 'pull-off', field: 'stress', row: 1 },
    ],
    [
      { force: '3 kN', disc: 50, shares },
      { id: 'not-a-number', check: 'pull-off', field: 'force', row: 1, typed: '3 kN' },
    ],
    [
      { stress: 2, shares: { base: 98 } },
      { id: 'shares-not-100', check: 'pull-off', field: 'shares', row: 1, typed: 98 },
    ],
    [
      { stress: 2, shares: { base: 102 } },
      {
        id: 'out-of-range',
        check: 'pull-off',
        field: 'base',
        row: 1,
        typed: 102,
        limits: [0, 100],
      },
    ],
    [
      { stress: 2, shares: {} },
      { id: 'no-plane', check: 'pull-off', field: 'shares', row: 1 },
    ],
  ])('%j', (row, problem) => {
    const { problems, tests } = read(row);
    expect(problems).toEqual([problem]);
    expect(tests).toEqual([]);
  });
  it.each([
    [{ stress: 0, shares }, 0],
    [{ stress: 20, shares }, 20],
    [{ force: 0, disc: 50, shares }, 0],
    [{ stress: 2, shares: { base: 99 } }, 2],
    [{ stress: 2, shares: { base: 50, bond: 51 } }, 2],
  ])('%j is taken', (row, stress) => {
    const { problems, tests } = read(row);
    expect(problems).toEqual([]);
    expect(tests).toMatchObject([{ row: 1, stress, void: false }]);
  });
  it('takes a force up to the strongest that its disc can hold', () => {
    // 20 MPa on 1963.495 mm2 is 39.2699 kN, by hand.
    expect(read({ force: 39.26, disc: 50, shares }).problems).toEqual([]);
    const [problem] = read({ force: 39.28, disc: 50, shares }).problems;
    expect(problem).toMatchObject({
      ...{ id: 'out-of-range', field: 'force', typed: 39.28 },
      limits: [0, expect.closeTo(39.27, 2)],
    });
    expect(read({ force: problem?.limits?.[1] ?? 0, disc: 50, shares }).problems).toEqual([]);
  });
});
