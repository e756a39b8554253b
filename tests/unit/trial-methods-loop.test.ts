import { describe, expect, it } from 'vitest';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf } from '$lib/answers/questions';
import type { TriedOut } from '$lib/answers/trial-record';
import { methodIds, methods, type MethodId } from '$shared/methods';
import { rounds } from '../helpers/rounds';

const site: SettledSite = {
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'rare',
  thickness: 200,
  warnings: [],
};
const zone: SettledZone = {
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  area: 40,
};
const failures: readonly Pick<TriedOut, 'because' | 'why'>[] = [
  { because: 'too-much', why: ['bruised'] },
  { because: 'too-much', why: ['too-deep'] },
  { because: 'too-much', why: ['too-rough'] },
  { because: 'too-little', why: ['too-smooth'] },
  { because: 'too-little', why: ['still-loose'] },
  { because: 'both', why: ['bruised', 'still-loose'] },
];
const order = ['no', 'hardly', 'little', 'yes', 'most'];
const bruises = (method: MethodId) => order.indexOf(methods[method].bruises);

describe('the loop from method to method', () => {
  it('ends, comes to no method twice, and never answers too much with a harder one', () => {
    let walked = 0;
    let longest = 0;
    const ends = { 'water-jet': 0, none: 0 };
    const walk = (here: SettledSite, start: SettledZone, failed: readonly TriedOut[]) => {
      const { underneath, holds } = adviseSettled(here, { ...start, triedOut: failed });
      longest = Math.max(longest, failed.length);
      if (!underneath) {
        if (failed.length) expect(holds.map(({ rule }) => rule)).toContain('no-method-left');
        ends.none += 1;
        return;
      }
      const said = () => JSON.stringify({ here, start, failed, underneath });
      for (const { method, because, why: shown } of failed) {
        if (method === underneath) expect.fail(`again: ${said()}`);
        if (because !== 'too-little' && bruises(underneath) >= bruises(method))
          expect.fail(`harder: ${said()}`);
        if (shown.includes('too-deep') && methods[underneath].class > methods[method].class)
          expect.fail(`deeper: ${said()}`);
        if (because !== 'too-much' && methods[underneath].class < methods[method].class)
          expect.fail(`weaker: ${said()}`);
      }
      walked += 1;
      if (underneath === 'water-jet') {
        ends['water-jet'] += 1;
        return;
      }
      for (const failure of failures)
        walk(here, start, [...failed, { method: underneath, ...failure }]);
    };
    let place = 0;
    for (const element of ['slab', 'wall'] as const)
      for (const area of [0.5, 40, 5])
        for (const looseness of choicesOf('looseness'))
          for (const depth of ['film', '3-to-6', '20-to-50'] as const)
            for (const texture of ['smooth', 'pitted'] as const)
              for (const contamination of [[], ['thin-coating'], ['thick-coating']] as const)
                for (const steel of ['none-seen', 'exposed'] as const)
                  for (const finish of ['sealer', 'thin-overlay', 'rebuild'] as const) {
                    place += 1;
                    if (place % rounds(11, 1)) continue;
                    walk(
                      { ...site, element },
                      { ...zone, area, looseness, depth, texture, contamination, steel, finish },
                      [],
                    );
                  }
    expect(walked).toBeGreaterThan(rounds(2700, 30_000));
    expect(longest).toBeLessThan(methodIds.length);
    expect(Math.min(...Object.values(ends))).toBeGreaterThan(rounds(8, 100));
    console.log(`methods in a row: ${longest}; ways walked: ${walked}`);
  });

  it('leaves advice without a failure as it was', () => {
    const plain = adviseSettled(site, { ...zone, looseness: 'fractured', depth: '3-to-6' });
    const failed: TriedOut = { method: 'grind', because: 'too-little', why: ['still-loose'] };
    const other = adviseSettled(site, {
      ...zone,
      looseness: 'fractured',
      depth: '3-to-6',
      triedOut: [failed],
    });
    expect(other).toEqual(plain);
  });
});
