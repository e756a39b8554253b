import { describe, expect, it } from 'vitest';
import { stepsIn } from '$lib/advice/following';
import { reasonsFor, stepsCalled, workFor } from '$lib/advice/steps/all';
import { workOrder } from '$lib/advice/steps/work';
import { stepIds } from '$shared/methods';
import { situationOn, type SiteChange, type ZoneChange } from '../helpers/settled';

// Trade page 6, the order of a job; common practice, no published source.
const jobs: readonly [string, ZoneChange, SiteChange, string][] = [
  [
    'a hollow floor with a rusty bar',
    { depth: '20-to-50', looseness: 'hollow', steel: 'corroded', contamination: ['oil'] },
    {},
    'make-safe degrease sound-and-mark saw-cut break-out free-bar re-sound blast-clean clean-bar vacuum final-wash check-ready wet-or-dry last-clean cover cure',
  ],
  [
    'a coated floor along a wall, for a coat',
    { contamination: ['thick-coating'], finish: 'build-coat', border: 7 },
    {},
    'make-safe scarify edge-work blast-clean vacuum check-ready wet-or-dry moisture-test last-clean cover cure',
  ],
  [
    'a mossy slab to be sealed, cracked',
    { contamination: ['growth'], cracks: 'hairline', finish: 'sealer' },
    {},
    'make-safe pressure-wash route-crack check-ready wet-or-dry moisture-test last-clean cover cure',
  ],
  [
    'a wall with a membrane and a crumbling crack, undecided',
    { contamination: ['growth', 'rubbery-coating'], cracks: 'crumbling', finish: 'undecided' },
    { element: 'wall' },
    'make-safe strip-growth strip-coating sound-and-mark chase-crack re-sound abrasive-blast blast-clean vacuum final-wash check-ready wet-or-dry last-clean',
  ],
  [
    'a hairline where it freezes often, under a film over pits',
    { cracks: 'hairline', texture: 'pitted', finish: 'thin-film' },
    { freezeThaw: 'often' },
    'make-safe tap-crack pressure-wash check-ready fill-level fill-cure wet-or-dry moisture-test last-clean cover cure',
  ],
];

describe.each(jobs)('the work of %s', (_, zone, site, order) => {
  const situation = situationOn(zone, site);
  const work = workFor(situation);

  it('is done in the order of the trade, nothing left out and nothing beside', () => {
    const steps = order.split(' ');
    expect(work.map(({ id }) => id)).toEqual(steps);
  });
  it('is the same as a set of steps, and reason by reason', () => {
    expect(stepsIn(stepsCalled(situation))).toEqual(work.map(({ id }) => id));
    for (const id of stepIds)
      expect(reasonsFor(id).flatMap((reason) => reason(situation) || [])).toEqual(
        work.find((step) => step.id === id)?.why ?? [],
      );
  });
});

it('every step has its place in the order, once', () => {
  expect([...workOrder].sort()).toEqual([...stepIds].sort());
});
