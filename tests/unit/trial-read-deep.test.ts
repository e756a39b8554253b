import { describe, expect, it } from 'vitest';
import { aimFor, type Aim } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { again, goesOn, last, other } from '../helpers/patch-outcomes';

const hammer = aimFor('break-out', 30, null, 300, true);

/** What a foreman says to each; common practice, no source, except where one is named. */
describe('a patch broken out, or washed', () => {
  it.each<[string, Aim, Partial<Found>[], object]>([
    [
      'washing that leaves it clean and no rougher',
      aimFor('pressure-wash', 0, [1, 2]),
      [{ notch: 1, depths: [0], profile: 2 }],
      goesOn,
    ],
    [
      'dull at the depth that was said, though nothing is left on it: no sound base',
      hammer,
      [{ sound: 'dull', depths: [35] }],
      { kind: 'stop', why: ['no-sound-base'] },
    ],
    [
      'a bar under the light hammer, as was to be',
      aimFor('break-out-light', 30, null, 300, true),
      [{ bar: 'yes', depths: [35] }],
      goesOn,
    ],
    ['to the very third of the slab', hammer, [{ depths: [30, 30, 30, 30, hammer.reach] }], goesOn],
    // Light hammers round steel: UFGS 03931, figure `hammer.at-steel`.
    [
      'a bar, with the heavy hammer: the lighter one, as many passes',
      hammer,
      [{ bar: 'yes', depths: [35], passes: 2 }],
      again('finer', 0, 2, 'bar-heavy-hammer'),
    ],
    [
      'a bar under the heavy hammer, where the lighter one had not come to sound concrete',
      hammer,
      [
        { notch: 0, passes: 2, left: 'more', depths: [10] },
        { bar: 'yes', depths: [35] },
      ],
      { kind: 'stop', why: ['no-sound-base', 'bar-heavy-hammer'], ladderEnded: true },
    ],
    ['a bar, with the lighter hammer', hammer, [{ bar: 'yes', depths: [35], notch: 0 }], goesOn],
    [
      'dull at the bottom: deeper',
      hammer,
      [{ sound: 'dull', depths: [20] }],
      again('another-pass', 1, 2, 'still-loose'),
    ],
    [
      'dull, with the heaviest hammer, twice over: no matter of tools',
      hammer,
      [{ sound: 'dull', depths: [20], passes: 2 }],
      { kind: 'stop', why: ['no-sound-base', 'still-loose'], ladderEnded: true },
    ],
    [
      'past a third of the slab (FHWA checklist 9)',
      hammer,
      [{ depths: [30, 101] }],
      { kind: 'stop', why: ['past-partial-depth'] },
    ],
    ['at a third of it', hammer, [{ depths: [30, 99.9, 10] }], goesOn],
    [
      'a bar bars the harsher hammer after the lighter one',
      hammer,
      [{ bar: 'yes', notch: 0, depths: [10], left: 'more' }],
      again('another-pass', 0, 2, 'still-loose'),
    ],
    // A ladder begun at its gentlest is climbed first: water once more does little.
    [
      'washing that leaves growth: more pressure',
      aimFor('pressure-wash', 0, null),
      [{ notch: 0, depths: [0], left: 'more' }],
      again('harsher', 1, 1, 'still-loose'),
    ],
    [
      'washing that leaves growth at the top: once more',
      aimFor('pressure-wash', 0, null),
      [{ notch: 2, depths: [0], left: 'more' }],
      again('another-pass', 2, 2, 'still-loose'),
    ],
    [
      'washing that leaves it rough: gentler',
      aimFor('pressure-wash', 0, [1, 2]),
      [{ notch: 1, depths: [0], profile: 3 }],
      again('finer', 0, 1, 'too-rough'),
    ],
    [
      'washing that leaves it rough at the gentlest: it was so before',
      aimFor('pressure-wash', 0, [1, 2]),
      [{ notch: 0, depths: [0], profile: 3 }],
      { kind: 'go-on', why: ['rough-as-found'] },
    ],
    [
      'whole stones washed out: the method is wrong, whatever is set',
      aimFor('pressure-wash', 0.5, null),
      [{ stones: 'pulled-out', depths: [0.2] }],
      other('too-little', false, 'stones-pulled-out'),
    ],
  ])('%s', (_, aim, patches, outcome) => {
    expect(last(aim, ...patches)).toEqual(outcome);
  });
});
