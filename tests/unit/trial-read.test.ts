import { describe, expect, it } from 'vitest';
import { aimFor, type Aim } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { firstTry } from '$lib/trial/read';
import { again, goesOn, last, other } from '../helpers/patch-outcomes';

const shot = aimFor('shotblast', 4, [5, 9]);

/** What a foreman says to each; common practice, no source. */
describe('a patch, alone or after others', () => {
  it.each<[string, Aim, Partial<Found>[], object]>([
    ['sound, clean, rough enough', shot, [{ profile: 5 }], goesOn],
    ['as rough as it may be', shot, [{ profile: 9 }], goesOn],
    ['no chip to compare', shot, [{}], goesOn],
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
    ['2 mm over the damage will do', shot, [{ depths: [6] }], goesOn],
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
    [
      'well here, torn one notch up: back to where it was well',
      shot,
      [{}, { notch: 2, stones: 'torn' }],
      again('finer', 1, 1, 'bruised'),
    ],
    [
      'too smooth and dusty: once more, the dust comes first',
      shot,
      [{ profile: 4, left: 'dust', depths: [1] }],
      again('another-pass', 1, 2, 'still-dusts', 'too-smooth'),
    ],
    [
      'too rough at the gentlest notch of a machine that cuts its own: another method',
      shot,
      [{ profile: 10, notch: 0 }],
      other('too-much', true, 'too-rough'),
    ],
    [
      'as deep as the method is for, at one place',
      shot,
      [{ depths: [4, 4, 4, 4, shot.reach] }],
      goesOn,
    ],
    ['nobody asks for a profile', aimFor('grind', 0, null), [{ profile: 9, depths: [0] }], goesOn],
    [
      'whole stones under a grinder, which is for no concrete broken up in itself',
      aimFor('grind', 3, null),
      [{ stones: 'pulled-out', depths: [1] }],
      other('too-little', false, 'stones-pulled-out'),
    ],
    [
      'whole stones under grit, which clears it: once more',
      aimFor('abrasive-blast', 4, null),
      [{ stones: 'pulled-out', depths: [1] }],
      again('another-pass', 1, 2, 'stones-pulled-out'),
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
