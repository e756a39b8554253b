import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { ZoneAnswers } from '$lib/answers/answers';
import { aimFor, aimOf, isTried, ladderOf, methodOf } from '$lib/trial/aim';
import { trialOf } from '$lib/trial/zone-trial';
import { ladderIds, settingLadders } from '$shared/ladders';
import { methodIds } from '$shared/methods';
import { tradeJob } from '../helpers/trade-jobs';

const inch = 25.4;

describe('what a patch is held against', () => {
  // A method is past what it is for at the edge of its depth band: films 1 mm, thin 1/8 in,
  // shallow 1/4 in (the bands of the question of depth). 2 mm over is sound concrete taken off:
  // common practice, no source.
  it.each([
    ['pressure-wash', 1],
    ['grind', inch / 8],
    ['abrasive-blast', inch / 4],
    ['needle-scale', inch / 4],
    ['scarify', inch / 4],
    ['shotblast', inch / 4],
  ] as const)('%s reaches to %f mm, and 2 mm over the damage is too much', (ladder, reach) => {
    const aim = aimFor(ladder, 3, [3, 5], 100, true);
    expect(aim).toEqual({
      method: ladder,
      ladder,
      damage: 3,
      enough: 5,
      reach: expect.closeTo(reach, 0),
      profile: [3, 5],
      bars: false,
    });
  });

  // Half an inch into sound concrete and 2 in deep at the least (ICRI 310.1R and UFGS 03931, through
  // the figures); partial depth ends at a third of the slab (FHWA checklist 9).
  it.each([
    [10, 'unknown', 52, Infinity],
    [10, 120, 52, 40],
    [30, 120, 52, 43],
    [60, 300, 75, 100],
    [36.9, 300, 52, 100],
    [38, 300, 53, 100],
  ] as const)(
    'breaking out %f mm of a slab of %s: enough at %f, reach %f',
    (damage, thickness, enough, reach) => {
      for (const ladder of ['break-out', 'break-out-light'] as const) {
        const aim = aimFor(ladder, damage, null, thickness, true);
        expect(aim.method).toBe('break-out');
        expect([aim.ladder, aim.bars, aim.profile, aim.damage]).toEqual([
          ladder,
          true,
          null,
          damage,
        ]);
        expect(aim.enough).toBeCloseTo(enough, 6);
        expect(aim.reach === reach ? reach : aim.reach).toBeCloseTo(reach, 1);
      }
    },
  );
  it('an unknown thickness has no third, and no bars are expected unless they were seen', () => {
    expect(aimFor('break-out', 30, null)).toMatchObject({ reach: Infinity, bars: false });
  });

  it('each ladder belongs to a method; water jetting is left to its specialists', () => {
    expect(methodIds.filter((id) => !isTried(id))).toEqual(['water-jet']);
    expect(ladderIds.map(methodOf)).toEqual(
      ladderIds.map((id) => (id === 'break-out-light' ? 'break-out' : id)),
    );
    for (const ladder of ladderIds) expect(ladderOf({ ladder })).toBe(settingLadders[ladder]);
  });
});

describe('the aim of a zone', () => {
  const hole = { depth: 30, looseness: ['hollow'], finish: ['rebuild'], area: 6 };
  const advised = (changes: object, place: object = {}) => {
    const { site, zones } = tradeJob([changes], place);
    const answers = zones[0]?.answers ?? {};
    const [one] = adviseZone(site, answers, { margins: false }).outcomes;
    return one ? { site, answers, example: one.example } : expect.fail('nothing is advised');
  };
  const aim = (changes: object, place: object = {}) => {
    const { site, answers, example } = advised(changes, place);
    return aimOf(site, answers, example);
  };
  const skin = {
    depth: ['under-3'],
    looseness: ['flaking'],
    texture: ['sandy'],
    finish: ['overlay'],
  };

  it('takes the damage from the answers: measured, the deepest band, or none where nothing is loose', () => {
    expect(aim({ ...skin, depth: 2 })?.damage).toBe(2);
    expect(aim(skin)?.damage).toBeCloseTo(inch / 8, 1);
    expect(aim({ ...skin, depth: ['film'], looseness: ['tight'] })?.damage).toBe(0);
    // The deepest band ends with the slab, where that is known.
    const deep = { ...hole, depth: ['over-50'] };
    expect(aim(deep, { thickness: 300 })?.damage).toBe(300);
    expect(aim(deep, { thickness: 'unknown' })?.damage).toBe(Infinity);
    const { site, example } = advised(hole);
    const lacking: ZoneAnswers = { looseness: ['hollow'] };
    expect(aimOf(site, lacking, example)).toMatchObject({ damage: Infinity, bars: false });
    expect(aimOf({}, { ...lacking, depth: ['over-50'] }, example)?.damage).toBe(Infinity);
  });
  // The straightedge lies on the old surface, so a build coat counts in what comes off.
  it.each(['thick-coating', 'rubbery-coating'])('a %s counts in what comes off', (coat) => {
    const coated = (yes: string[], maybe: string[]) =>
      aim({ ...skin, depth: ['film'], looseness: ['tight'], contamination: { yes, maybe } })
        ?.damage;
    expect(coated([coat], [])).toBeCloseTo(inch / 8, 1);
    expect(coated([], [coat])).toBeCloseTo(inch / 8, 1);
    expect(coated(['oil'], [])).toBe(0);
  });

  // Light hammers in a spot a spade covers, and where the slab is thin or a bar is near.
  it('a hole under a square metre, or where a light hammer is advised, has the light ladder', () => {
    expect(aim({ ...hole, area: 0.99 })?.ladder).toBe('break-out-light');
    expect(aim({ ...hole, area: 1 }, { thickness: 200 })?.ladder).toBe('break-out');
    expect(aim({ ...skin, finish: ['sealer'], area: 0.5 })?.ladder).not.toMatch(/break-out/);
    expect(aim({ ...hole, area: 'unknown' }, { thickness: 200 })?.ladder).toBe('break-out');
    expect(aim({ ...hole, steel: ['exposed'] }, { thickness: 200 })?.ladder).toBe(
      'break-out-light',
    );
  });
  it('meets bars where the answers have them showing', () => {
    expect(aim(hole, { thickness: 200 })?.bars).toBe(false);
    expect(aim({ ...hole, steel: ['exposed'] }, { thickness: 200 })?.bars).toBe(true);
    expect(aim({ ...hole, steel: ['none-seen', 'exposed'] }, { thickness: 200 })?.bars).toBe(true);
  });
  // Under a levelling fill nothing is too rough: CSP 10 is the roughest there is (ICRI 310.2R).
  it('has the profile of what goes on; under a levelling fill only its lower end', () => {
    expect(aim({ ...skin, texture: ['pitted'] })?.profile).toEqual([5, 10]);
    const { site, answers, example } = advised({ ...skin, texture: ['pitted'] });
    const fill = { id: 'fill-level', why: [] } as unknown as (typeof example.steps)[number];
    const target = { ...example.target, profile: [3, 5] as const };
    const profileOf = (steps: typeof example.steps) =>
      aimOf(site, answers, { ...example, target, steps })?.profile;
    expect(profileOf(example.steps)).toEqual([3, 5]);
    expect(profileOf([...example.steps, fill])).toEqual([3, 10]);
    const open = { ...example.target, profile: null };
    expect(aimOf(site, answers, { ...example, target: open, steps: [fill] })?.profile).toBeNull();
  });
  it('is what a trial begins with: the lightest hammer, one pass, no patch yet', () => {
    const { site, answers, example } = advised(hole);
    expect(trialOf(site, { answers }, example)).toEqual({
      aim: aimOf(site, answers, example),
      read: [],
      last: null,
      next: { notch: 0, passes: 1 },
    });
  });
  it('is none where there is no method to try', () => {
    const { site, answers, example } = advised(hole);
    for (const underneath of [null, 'water-jet'] as const) {
      expect(aimOf(site, answers, { ...example, underneath })).toBeNull();
      expect(trialOf(site, { answers }, { ...example, underneath })).toBeNull();
    }
  });
});
