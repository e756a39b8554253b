import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { Found } from '$lib/trial/found';
import { followFrom } from '$lib/trial/follow';
import type { Outcome, WhyId } from '$lib/trial/outcome';
import { tradeJob } from '../helpers/trade-jobs';

const found: Found = {
  notch: 1,
  passes: 1,
  area: 1,
  depths: [2],
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
};
const floor = {
  depth: ['under-3'],
  looseness: ['flaking'],
  texture: ['sandy'],
  finish: ['thin-overlay'],
  area: 40,
  borderLength: 0,
};
/** What a patch that ended the trial says of the answers. */
function follow(
  answers: object,
  outcome: object & { readonly why: readonly WhyId[] },
  seen: Partial<Found> = {},
  place: object = {},
) {
  const { site, zones } = tradeJob([{ ...floor, ...answers }], place);
  const zone = zones[0]?.answers ?? {};
  const advice = adviseZone(site, zone, { margins: false });
  const all = { kind: 'stop', ...outcome } as unknown as Outcome;
  return followFrom(all, { ...found, ...seen }, site, zone, advice);
}
const deeper = ['3-to-6', '6-to-20', '20-to-50', 'over-50'];

const sealed = { depth: ['film'], looseness: ['tight'], finish: ['sealer'] };

/** Which answer a senior doubts first. Common practice, no source. */
describe('the answer that a stopped patch disproves', () => {
  it.each<[string, object, WhyId[], Partial<Found>, object]>([
    ['a bar nobody saw', {}, ['bar-unexpected'], {}, { steel: ['exposed'] }],
    [
      'a dull sound: a layer came loose, deeper than was said',
      {},
      ['hollow-below'],
      {},
      { looseness: ['hollow'], depth: deeper },
    ],
    [
      'the patch itself was deeper than the answer',
      {},
      ['hollow-below'],
      { depths: [10, 12] },
      { looseness: ['hollow'], depth: ['20-to-50', 'over-50'] },
    ],
    [
      'a measured depth was said',
      { depth: 5 },
      ['hollow-below'],
      { depths: [5] },
      { looseness: ['hollow'], depth: ['6-to-20', '20-to-50', 'over-50'] },
    ],
    [
      'deeper than the deepest of several that were said',
      { depth: ['under-3', '3-to-6', '6-to-20'] },
      ['hollow-below'],
      {},
      { looseness: ['hollow'], depth: ['20-to-50', 'over-50'] },
    ],
    [
      'nothing was said of the depth: deeper than the patch was',
      { depth: undefined },
      ['hollow-below'],
      {},
      { looseness: ['hollow'], depth: deeper },
    ],
    [
      'the deepest band there is: nothing is left to doubt but the looseness',
      { depth: 60, looseness: ['fractured'] },
      ['hollow-below'],
      { depths: [60] },
      { looseness: ['hollow'] },
    ],
    [
      'no sound base: broken up in itself',
      {},
      ['no-sound-base', 'stones-pulled-out'],
      {},
      { looseness: ['fractured'], depth: deeper },
    ],
    [
      'no sound base that dusts on: powder',
      { looseness: ['tight'], depth: ['film'] },
      ['no-sound-base', 'still-dusts'],
      { depths: [0] },
      { looseness: ['powdery'], depth: ['under-3', ...deeper] },
    ],
    [
      'what was said to be worse stays worse',
      { looseness: ['fractured'] },
      ['no-sound-base', 'still-dusts'],
      {},
      { looseness: ['fractured'], depth: deeper },
    ],
    [
      'past a third of the slab: as deep as it was measured, at its deepest',
      { depth: 30, looseness: ['hollow'], finish: ['rebuild'] },
      ['past-partial-depth'],
      { depths: [40, 55, 45] },
      { depth: 55 },
    ],
  ])('%s', (_, answers, why, seen, disproved) => {
    expect(follow(answers, { why }, seen)?.disproved).toEqual(disproved);
  });
});

describe('the answer that is doubted where the method took too little', () => {
  const other = (because: Outcome['because'], ...why: WhyId[]) =>
    ({ kind: 'other-method', because, why }) as const;

  it('none where it took too much: the method is out, the answers stand', () => {
    expect(follow({}, other('too-much', 'bruised'))).toBeNull();
    expect(follow({}, other('too-much', 'over-deep'))).toBeNull();
  });
  it('what looked like a thin coat is a thick one', () => {
    const coated = {
      depth: ['film'],
      looseness: ['tight'],
      contamination: { yes: ['oil', 'thin-coating'], maybe: ['salts'] },
    };
    expect(follow(coated, other('too-little', 'still-loose'))?.disproved).toEqual({
      contamination: { yes: ['oil', 'thick-coating'], maybe: ['salts'] },
    });
  });
  it.each<[string, object, Outcome['because'], WhyId[], object]>([
    [
      'a tight face that dusts on is powder, and not a film alone',
      sealed,
      'too-little',
      ['still-dusts'],
      { method: 'grind', disproved: { looseness: ['powdery'], depth: ['under-3'] } },
    ],
    [
      'a tight face that comes off in bits is flaking',
      sealed,
      'too-little',
      ['still-loose'],
      { method: 'grind', disproved: { looseness: ['flaking'] } },
    ],
    [
      'bruised and too little at once: flaking',
      sealed,
      'both',
      ['bruised', 'too-smooth'],
      { method: 'grind', disproved: { looseness: ['flaking'] } },
    ],
    [
      'whole stones out of powder: broken up in itself',
      { ...sealed, looseness: ['powdery'] },
      'too-little',
      ['stones-pulled-out'],
      { method: 'scarify', disproved: { looseness: ['fractured'] } },
    ],
    [
      'too smooth, said to be pitted: sandy, the next smoother',
      { depth: ['film'], looseness: ['tight'], texture: ['pitted'] },
      'too-little',
      ['too-smooth'],
      { method: 'shotblast', disproved: { texture: ['sandy'] } },
    ],
  ])('%s', (_, answers, because, why, follows) => {
    expect(follow(answers, other(because, ...why), { depths: [0] })).toEqual({
      ...follows,
      verdict: 'prepare',
    });
  });
  it('not the texture, where nobody found it too smooth, and none that was not given', () => {
    const pitted = { depth: ['film'], looseness: ['tight'], texture: ['pitted'] };
    expect(follow(pitted, other('too-little', 'still-dusts'), { depths: [0] })?.disproved).toEqual({
      looseness: ['powdery'],
      depth: ['under-3'],
    });
    const open = { ...pitted, texture: undefined };
    expect(follow(open, other('too-little', 'too-smooth'))).toBeNull();
  });
  it('not the coating, where nobody said whether there is one', () => {
    const open = { ...sealed, contamination: undefined };
    const follows = follow(open, other('too-little', 'still-loose'), { depths: [0] });
    expect(follows?.disproved ?? {}).not.toHaveProperty('contamination');
  });
  it('dust on a tight face is powder before it is a deeper hollow', () => {
    const hollow = { depth: ['3-to-6'], looseness: ['tight'], finish: ['rebuild'] };
    expect(follow(hollow, other('too-little', 'still-dusts'), { depths: [0] })).toEqual({
      method: 'scarify',
      verdict: 'prepare',
      disproved: { looseness: ['powdery'] },
    });
  });
  it('what changes no more than who comes first is another advice, too', () => {
    const hole = { depth: ['20-to-50'], looseness: ['fractured'], finish: ['rebuild'] };
    expect(follow(hole, other('both', 'bruised', 'still-loose'), { depths: [0] })).toEqual({
      method: null,
      verdict: 'find-out-first',
      disproved: { looseness: ['fractured'], depth: ['over-50'] },
    });
  });
  it('nothing that was said already, while something else holds the work', () => {
    const wall = { element: ['wall'], warnings: { yes: ['map-cracking'], maybe: [] } };
    const scaled = { depth: 5, texture: ['pitted'], finish: ['overlay'] };
    const loose = other('too-little', 'still-loose');
    expect(follow(scaled, loose, { depths: [0] }, wall)?.disproved).toEqual({
      looseness: ['flaking'],
      depth: ['6-to-20'],
    });
    // Flaking, as deep as there is a band: nothing is left to doubt.
    const deepest = { depth: ['over-50'], texture: ['pitted'], finish: ['rebuild'] };
    expect(follow(deepest, loose, { depths: [0] })).toBeNull();
  });
  it('nothing where no smoother texture changes the advice, or none is smoother', () => {
    const smooth = other('too-little', 'too-smooth');
    expect(follow({ ...sealed, texture: ['pitted'] }, smooth)).toBeNull();
    expect(follow({ ...sealed, texture: ['smooth'] }, smooth)).toBeNull();
  });
});
