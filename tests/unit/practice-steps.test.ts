import { describe, expect, it } from 'vitest';
import { workOrder } from '$lib/advice/steps/work';
import type { Advice } from '$lib/advice/types';
import type { Case } from '$lib/practice/case';
import { decided, gradeSteps, stepsOffered, type DecidedStep } from '$lib/practice/steps';
import type { StepId } from '$shared/methods';

/** A clean slab under an overlay, but for what is given. Invented. */
const caseOf = (zone: object = {}, site: object = {}, id = 'tin-yard'): Case =>
  ({
    id,
    site: { element: 'slab', freezeThaw: 'some', thickness: 150, warnings: [], ...site },
    zone: {
      ...{ depth: 'film', looseness: 'tight', contamination: [], texture: 'sandy' },
      ...{ cracks: 'none', steel: 'none-seen', finish: 'overlay', area: 20 },
      ...zone,
    },
  }) as unknown as Case;
const advice = (...steps: StepId[]) =>
  ({
    method: 'shotblast',
    steps: steps.map((id) => ({ id, why: [], hazards: [] })),
  }) as unknown as Advice;

/** Why each step is not called for, where nothing is. Common practice, no source. */
const spare: Readonly<Record<DecidedStep, string>> = {
  degrease: 'no-oil',
  'strip-growth': 'no-growth',
  'strip-coating': 'no-heavy-coating',
  'sound-and-mark': 'nothing-to-sound',
  'tap-crack': 'no-fine-crack-in-frost',
  'saw-cut': 'nothing-broken-out',
  'chase-crack': 'no-crack',
  'route-crack': 'no-crack',
  'free-bar': 'no-bar-shows',
  're-sound': 'nothing-broken-out',
  'edge-work': 'no-floor-machine',
  'blast-clean': 'hardly-bruises',
  'clean-bar': 'no-bar-shows',
  vacuum: 'wash-is-enough',
  'final-wash': 'wash-is-enough',
  'fill-level': 'not-too-rough',
  'fill-cure': 'not-too-rough',
  'moisture-test': 'damp-finish',
};

describe('a step that was picked and is not called for', () => {
  it('has a reason each', () => {
    const { found, missed, spare: told } = gradeSteps(decided, caseOf(), advice());
    expect([found, missed]).toEqual([[], []]);
    expect(told).toEqual(Object.entries(spare).map(([step, rule]) => ({ step, rule })));
  });

  it.each<[DecidedStep, string, object, object, StepId[]]>([
    ['strip-growth', 'wash-takes-growth', { contamination: ['growth'] }, {}, []],
    ['strip-coating', 'machine-lifts-coating', { contamination: ['thick-coating'] }, {}, []],
    ['strip-coating', 'machine-lifts-coating', { contamination: ['rubbery-coating'] }, {}, []],
    ['strip-coating', 'no-heavy-coating', { contamination: ['thin-coating'] }, {}, []],
    ['chase-crack', 'crack-not-chased', { cracks: 'hairline' }, {}, []],
    ['route-crack', 'crack-not-routed', { cracks: 'open' }, {}, []],
    ['edge-work', 'nothing-upright', {}, {}, ['grind']],
    ['edge-work', 'nothing-upright', {}, {}, ['vacuum', 'scarify']],
    ['edge-work', 'nothing-upright', {}, { element: 'suspended-slab' }, ['shotblast']],
    // A spot, a wall, a wash: no machine that stands on the floor was there.
    ['edge-work', 'no-floor-machine', { area: 0.5 }, {}, ['grind']],
    ['edge-work', 'no-floor-machine', {}, { element: 'wall' }, ['grind']],
    ['edge-work', 'no-floor-machine', {}, {}, ['pressure-wash', 'break-out']],
    ['blast-clean', 'sealer-forgives', { finish: 'sealer' }, {}, ['scarify']],
    ['blast-clean', 'wash-will-do', {}, {}, ['chase-crack']],
    ['blast-clean', 'hardly-bruises', {}, {}, ['grind']],
    ['final-wash', 'no-wash-under-dry', {}, {}, ['vacuum']],
    ['final-wash', 'wash-is-enough', {}, {}, ['vacuum', 'pressure-wash']],
  ])('%s: %s', (step, rule, zone, site, called) => {
    const graded = gradeSteps([step], caseOf(zone, site), advice(...called));
    expect(graded.spare).toEqual([{ step, rule }]);
  });

  it('stands beside what was found and what was missed, and what nobody decides on', () => {
    const called = advice('degrease', 'saw-cut', 'break-out', 'vacuum');
    expect(gradeSteps(['vacuum', 'degrease', 'fill-cure'], caseOf(), called)).toEqual({
      found: ['degrease', 'vacuum'],
      missed: [{ id: 'saw-cut', why: [], hazards: [] }],
      spare: [{ step: 'fill-cure', rule: 'not-too-rough' }],
    });
    const held = { ...called, method: null };
    expect(() => gradeSteps([], caseOf(), held)).toThrow(
      'Steps are graded where there is a method.',
    );
  });
});

describe('the steps that are offered', () => {
  const offered = (one: Case, ...steps: StepId[]) => stepsOffered(one, advice(...steps));
  it('are six at the least, in the order of work, and the same each time', () => {
    const steps = offered(caseOf());
    expect(new Set(steps).size).toBe(6);
    expect(steps).toEqual(workOrder.filter((id) => (steps as readonly StepId[]).includes(id)));
    expect(offered(caseOf())).toEqual(steps);
    const ids = ['net-loft', 'rope-walk', 'fish-market', 'bath-house'];
    const others = ids.map((id) => offered(caseOf({}, {}, id)).join());
    expect(new Set([...others, steps.join()]).size).toBeGreaterThan(3);
  });
  it('are all that are called for and three more, of those a learner decides on', () => {
    const called = ['vacuum', 'degrease', 'strip-growth', 'saw-cut', 'final-wash'] as const;
    const steps = offered(caseOf(), ...called, 'make-safe', 'break-out');
    expect(steps).toHaveLength(8);
    expect(steps).toEqual(expect.arrayContaining([...called]));
    expect(steps.filter((id) => !decided.includes(id))).toEqual([]);
    expect(offered(caseOf(), ...called.slice(0, 2))).toHaveLength(6);
    expect(offered(caseOf(), ...called.slice(0, 4))).toHaveLength(7);
  });
});
