import { describe, expect, it } from 'vitest';
import { aimFor, type Aim } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { firstTry, readAll } from '$lib/trial/read';

const good: Found = {
  notch: 1,
  passes: 1,
  area: 1,
  depths: [4],
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
};
const shot = aimFor('shotblast', 4, [5, 9]);
const hammer = aimFor('break-out', 30, null, 300, true);
const last = (aim: Aim, ...patches: Partial<Found>[]) =>
  readAll(
    patches.map((patch) => ({ ...good, ...patch })),
    aim,
  ).at(-1);

/** What a foreman says to each; common practice, no source, except where one is named. */
describe('a patch, alone or after others', () => {
  const again = (kind: string, notch: number, passes: number, ...why: string[]) => ({
    kind,
    why,
    next: { notch, passes },
  });
  const other = (because: string, ended: boolean, ...why: string[]) => ({
    kind: 'other-method',
    why,
    because,
    ...(ended && { ladderEnded: true }),
  });

  it.each<[string, Aim, Partial<Found>[], object]>([
    ['sound, clean, rough enough', shot, [{ profile: 5 }], { kind: 'go-on', why: ['meets-all'] }],
    ['as rough as it may be', shot, [{ profile: 9 }], { kind: 'go-on', why: ['meets-all'] }],
    ['no chip to compare', shot, [{}], { kind: 'go-on', why: ['meets-all'] }],
    ['too smooth: a notch more', shot, [{ profile: 4 }], again('harsher', 2, 1, 'too-smooth')],
    ['too rough: a notch less', shot, [{ profile: 10 }], again('finer', 0, 1, 'too-rough')],
    [
      'dust left: once more',
      shot,
      [{ left: 'dust', depths: [1] }],
      again('another-pass', 1, 2, 'still-dusts'),
    ],
    [
      'more left: once more',
      shot,
      [{ left: 'more', depths: [1] }],
      again('another-pass', 1, 2, 'still-loose'),
    ],
    [
      'left after the second pass: a notch more',
      shot,
      [{ left: 'dust', depths: [1], passes: 2 }],
      again('harsher', 2, 1, 'still-dusts'),
    ],
    [
      'left at the harshest notch: another method',
      shot,
      [{ left: 'dust', depths: [1], passes: 2, notch: 2 }],
      other('too-little', true, 'still-dusts'),
    ],
    [
      'too smooth at the harshest notch: it may take one more pass',
      shot,
      [{ profile: 2, notch: 2 }],
      again('another-pass', 2, 2, 'too-smooth'),
    ],
    ['torn stones: a notch less', shot, [{ stones: 'torn' }], again('finer', 0, 1, 'bruised')],
    [
      'torn stones at the gentlest: another method',
      shot,
      [{ stones: 'torn', notch: 0 }],
      other('too-much', true, 'bruised'),
    ],
    [
      '2 mm over the damage will do',
      shot,
      [{ depths: [6] }],
      { kind: 'go-on', why: ['meets-all'] },
    ],
    ['more is sound concrete lost', shot, [{ depths: [6.1] }], again('finer', 0, 1, 'over-deep')],
    [
      'past what the method is for, at any place',
      shot,
      [{ depths: [4, 4, 4, 4, 6.5] }],
      again('finer', 0, 1, 'too-deep'),
    ],
    [
      'torn and dusty at once: no setting does both',
      shot,
      [{ stones: 'torn', left: 'dust', depths: [1] }],
      other('both', false, 'bruised', 'still-dusts'),
    ],
    [
      'stones out whole above the depth said: once more',
      shot,
      [{ stones: 'pulled-out', depths: [1] }],
      again('another-pass', 1, 2, 'stones-pulled-out'),
    ],
    [
      'still dusty where all should be off: nobody knows how deep it goes',
      shot,
      [{ left: 'dust', depths: [4] }],
      { kind: 'stop', why: ['no-sound-base'] },
    ],
    ['a bar nobody had seen', shot, [{ bar: 'yes' }], { kind: 'stop', why: ['bar-unexpected'] }],
    ['a dull sound below', shot, [{ sound: 'dull' }], { kind: 'stop', why: ['hollow-below'] }],
    [
      'too smooth here, torn one notch up: nothing lies between',
      shot,
      [{ profile: 4 }, { notch: 2, stones: 'torn' }],
      other('too-much', true, 'bruised'),
    ],
    [
      'torn here, dusty one notch down, twice over: no way back up',
      shot,
      [{ stones: 'torn' }, { notch: 0, left: 'dust', depths: [1], passes: 2 }],
      other('too-little', true, 'still-dusts'),
    ],
    // Light hammers round steel: UFGS 03931, figure `hammer.at-steel`.
    [
      'a bar, with the heavy hammer: the lighter one, as many passes',
      hammer,
      [{ bar: 'yes', depths: [35], passes: 2 }],
      again('finer', 0, 2, 'bar-heavy-hammer'),
    ],
    [
      'a bar, with the lighter hammer',
      hammer,
      [{ bar: 'yes', depths: [35], notch: 0 }],
      { kind: 'go-on', why: ['meets-all'] },
    ],
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
    [
      'at a third of it',
      hammer,
      [{ depths: [30, 99.9, 10] }],
      { kind: 'go-on', why: ['meets-all'] },
    ],
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
    // In a tight surface nothing was to come off: what counts as over is the measure.
    [
      'dust on a tight surface: once more',
      aimFor('grind', 0, null),
      [{ left: 'dust', depths: [1] }],
      again('another-pass', 1, 2, 'still-dusts'),
    ],
    [
      'dust on a tight surface at 2 mm: no sound base',
      aimFor('grind', 0, null),
      [{ left: 'dust', depths: [2] }],
      { kind: 'stop', why: ['no-sound-base'] },
    ],
  ])('%s', (_, aim, patches, outcome) => {
    expect(last(aim, ...patches)).toEqual(outcome);
  });

  it('begins in the middle of the ladder, washing at its gentlest', () => {
    expect(firstTry(shot)).toEqual({ notch: 1, passes: 1 });
    expect(firstTry(aimFor('pressure-wash', 0, null))).toEqual({ notch: 0, passes: 1 });
  });
});
