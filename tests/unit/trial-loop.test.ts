import { describe, expect, it } from 'vitest';
import type { Aim } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { graveness, type Outcome } from '$lib/trial/outcome';
import { firstTry, readAll } from '$lib/trial/read';
import { leftIds, stoneIds } from '$lib/answers/trial-record';
import { ladderIds, settingLadders } from '$shared/ladders';
import { methodIds, type MethodId } from '$shared/methods';
import { rounds, sampled } from '../helpers/rounds';

/** Every ladder with every kind of aim: nothing to come off, some, deep; smooth, rough, no profile; bars or none. */
const aims: Aim[] = ladderIds.flatMap((ladder) => {
  const method = (methodIds as readonly string[]).includes(ladder)
    ? (ladder as MethodId)
    : 'break-out';
  const breaking = method === 'break-out';
  return [0, 3, 30].flatMap((damage) =>
    [null, [3, 5] as const].flatMap((profile) =>
      (breaking ? [false, true] : [false]).map((bars) => ({
        method,
        ladder,
        damage,
        enough: damage + 2,
        reach: breaking ? 50 : 6.4,
        profile,
        bars,
      })),
    ),
  );
});

/** Every kind of reading an aim can tell apart. */
function readingsFor({ damage, enough, reach, profile }: Aim): Omit<Found, 'notch' | 'passes'>[] {
  const depths = [0, damage * 0.9, damage, enough + 0.1, reach + 0.1, Math.max(enough, reach) + 1];
  const chips = profile ? [undefined, profile[0] - 1, profile[0], profile[1] + 1] : [undefined];
  const out: Omit<Found, 'notch' | 'passes'>[] = [];
  for (const depth of new Set(depths))
    for (const chip of chips)
      for (const stones of stoneIds)
        for (const left of leftIds)
          for (const bar of ['no', 'yes'] as const)
            for (const sound of ['clear', 'dull'] as const)
              out.push({
                area: 1,
                depths: [depth],
                ...(chip !== undefined && { profile: chip }),
                stones,
                left,
                bar,
                sound,
              });
  return out;
}

const after = (patches: readonly Found[], aim: Aim) => readAll(patches, aim).at(-1) as Outcome;
const told = aims.map((aim) => [JSON.stringify(aim), aim] as const);

describe('the loop of trying a square metre', () => {
  it.each(told)('%s ends within four patches, whatever is found', (_, aim) => {
    const readings = readingsFor(aim);
    let longest = 0;
    let paths = 0;
    const walk = (before: readonly Found[], notch: number, passes: number) => {
      // From here on nothing counts but the answer and the next try: one path each is walked.
      const seen = new Set<string>();
      for (const reading of readings) {
        const patches = [...before, { ...reading, notch, passes }];
        const outcome = after(patches, aim);
        longest = Math.max(longest, patches.length);
        if (!outcome.next) {
          paths += 1;
          continue;
        }
        expect(graveness[outcome.kind]).toBe(1);
        expect(patches.length, JSON.stringify(patches)).toBeLessThan(4);
        const much = outcome.kind === 'finer' ? 'much' : outcome.kind;
        const key = JSON.stringify([much, outcome.next]);
        if (seen.has(key)) continue;
        seen.add(key);
        walk(patches, outcome.next.notch, outcome.next.passes);
      }
    };
    const { notch, passes } = firstTry(aim);
    walk([], notch, passes);
    expect(longest).toBeLessThanOrEqual(4);
    expect(paths).toBeGreaterThan(50);
  });

  it('is never answered with a harsher notch where it bruised, met a bar or went too deep', () => {
    let checked = 0;
    for (const aim of aims)
      for (const notch of settingLadders[aim.ladder].notches.keys())
        for (const passes of [1, 2])
          for (const reading of readingsFor(aim)) {
            const deep = (reading.depths[0] ?? 0) > Math.min(aim.enough, aim.reach);
            if (reading.stones !== 'torn' && reading.bar !== 'yes' && !deep) continue;
            const outcome = after([{ ...reading, notch, passes }], aim);
            if (outcome.kind === 'harsher' || (outcome.next?.notch ?? notch) > notch)
              expect.fail(JSON.stringify({ aim, notch, passes, reading, outcome }));
            checked += 1;
          }
    expect(checked).toBeGreaterThan(10_000);
  });

  it('never answers a worse reading more gently, alone or after a patch before it', () => {
    type Reading = Omit<Found, 'notch' | 'passes'>;
    /** The same reading one step worse in one thing; every worse one is a chain of such steps. */
    const worse = (one: Reading, depths: readonly number[]): Reading[] => {
      const [depth = 0] = one.depths;
      const deeper = depths.find((each) => each > depth);
      return [
        ...(deeper === undefined ? [] : [{ ...one, depths: [deeper] }]),
        ...(one.left === 'nothing' ? [{ ...one, left: 'dust' as const }] : []),
        ...(one.left === 'dust' ? [{ ...one, left: 'more' as const }] : []),
        ...(one.bar === 'no' ? [{ ...one, bar: 'yes' as const }] : []),
        ...(one.sound === 'clear' ? [{ ...one, sound: 'dull' as const }] : []),
        ...(one.stones === 'cut' || one.stones === 'none-seen'
          ? [
              { ...one, stones: 'torn' as const },
              { ...one, stones: 'pulled-out' as const },
            ]
          : []),
      ];
    };
    const clear = { area: 1, depths: [0], left: 'nothing', bar: 'no', sound: 'clear' } as const;
    let pairs = 0;
    for (const aim of sampled(aims, 13)) {
      const readings = readingsFor(aim);
      const depths = [...new Set(readings.map(({ depths: [depth = 0] }) => depth))].sort(
        (one, other) => one - other,
      );
      const { notches, begin } = settingLadders[aim.ladder];
      const histories: Found[][] = [
        [],
        [{ ...clear, notch: begin, passes: 1, stones: 'torn' }],
        [{ ...clear, notch: 0, passes: 2, stones: 'cut', left: 'more' }],
      ];
      for (const history of histories)
        for (const notch of notches.keys())
          for (const passes of [1, 2]) {
            const grave = (reading: Reading) =>
              graveness[after([...history, { ...reading, notch, passes }], aim).kind];
            for (const one of readings)
              for (const other of worse(one, depths)) {
                pairs += 1;
                if (grave(other) < grave(one))
                  expect.fail(JSON.stringify({ aim, history, notch, passes, one, other }));
              }
          }
    }
    expect(pairs).toBeGreaterThan(rounds(7000, 100_000));
  });

  it('does not go back to a notch that has been judged', () => {
    const aim = aims.find(
      ({ ladder, damage, profile }) => ladder === 'shotblast' && damage === 3 && profile,
    ) as Aim;
    const plain = {
      area: 1,
      depths: [1],
      stones: 'cut',
      left: 'nothing',
      bar: 'no',
      sound: 'clear',
    } as const;
    // Too smooth on the middle notch, torn on the harsh one: nothing lies between.
    const outcomes = readAll(
      [
        { ...plain, notch: 1, passes: 1, profile: 2 },
        { ...plain, notch: 2, passes: 1, stones: 'torn', profile: 4 },
      ],
      aim,
    );
    expect(outcomes.map(({ kind }) => kind)).toEqual(['harsher', 'other-method']);
  });
});

describe('ladders of settings', () => {
  it.each(ladderIds)('%s: neighbours differ in one setting, and it begins on a notch', (id) => {
    const { notches, begin, kept } = settingLadders[id];
    expect(notches[begin]).toBeDefined();
    for (const [index, notch] of notches.slice(1).entries()) {
      const before = notches[index] ?? [];
      expect(notch.map(({ setting }) => setting)).toEqual(before.map(({ setting }) => setting));
      const changed = notch.filter(
        (setting, place) => JSON.stringify(setting) !== JSON.stringify(before[place]),
      );
      expect(changed).toHaveLength(1);
      for (const { setting } of kept)
        expect(notch.map((each) => each.setting)).not.toContain(setting);
    }
  });
});
