import { describe, expect, it } from 'vitest';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { failedHere, judgeTried, patchFacts } from '$lib/advice/tried-out';
import type { TriedOut } from '$lib/answers/trial-record';
import { methodIds, type MethodId } from '$shared/methods';
import { inLine, siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const failed = (method: MethodId, because: TriedOut['because'], ...why: string[]): TriedOut => ({
  method,
  because,
  why,
});
const judged = (method: MethodId, ...all: TriedOut[]) => {
  const shortfall = judgeTried(method, all);
  return shortfall && `${shortfall.demand}: ${inLine(shortfall)}`;
};

// Common practice, no source: what took off too much is not followed by anything harder, what took off
// too little by nothing weaker; and where only dust or a smooth face stayed, nobody breaks out.
describe('what a failed patch rules out', () => {
  const bruised = failed('scarify', 'too-much', 'bruised');
  const tooDeep = failed('abrasive-blast', 'too-much', 'too-deep');
  const smooth = failed('grind', 'too-little', 'too-smooth');
  const both = failed('scarify', 'both', 'bruised', 'still-loose');
  const loose = failed('shotblast', 'too-little', 'still-loose');
  const stones = failed('shotblast', 'too-little', 'stones-pulled-out');
  it.each<[MethodId, TriedOut, string | null]>([
    ['scarify', bruised, 'trial: failed-on-patch why=bruised'],
    ['needle-scale', bruised, 'trial: harder-than-failed failed=scarify why=bruised'],
    ['break-out', bruised, 'trial: harder-than-failed failed=scarify why=bruised'],
    ['shotblast', bruised, null],
    ['pressure-wash', bruised, null],
    ['water-jet', bruised, null],
    ['shotblast', tooDeep, 'trial: harder-than-failed failed=abrasive-blast why=too-deep'],
    ['water-jet', tooDeep, 'trial: harder-than-failed failed=abrasive-blast why=too-deep'],
    [
      'water-jet',
      failed('shotblast', 'too-much', 'over-deep'),
      'trial: harder-than-failed failed=shotblast why=over-deep',
    ],
    ['abrasive-blast', failed('shotblast', 'too-much', 'too-deep'), null],
    [
      'shotblast',
      failed('needle-scale', 'too-much', 'bruised', 'too-deep'),
      'trial: harder-than-failed failed=needle-scale why=bruised+too-deep',
    ],
    ['shotblast', failed('needle-scale', 'too-much', 'bruised'), null],
    ['abrasive-blast', failed('needle-scale', 'too-much', 'too-deep'), null],
    ['scarify', smooth, null],
    ['needle-scale', smooth, null],
    ['pressure-wash', smooth, 'trial: weaker-than-failed failed=grind why=too-smooth'],
    ['break-out', smooth, 'trial: deeper-than-wanted failed=grind why=too-smooth'],
    ['water-jet', smooth, null],
    ['break-out', loose, null],
    ['break-out', stones, null],
    ['scarify', loose, null],
    ['grind', loose, 'trial: weaker-than-failed failed=shotblast why=still-loose'],
    ['grind', both, 'trial: weaker-than-failed failed=scarify why=bruised+still-loose'],
    ['break-out', both, 'trial: harder-than-failed failed=scarify why=bruised+still-loose'],
    ['shotblast', both, null],
  ])('%s after %o', (method, patch, expected) => {
    expect(judged(method, patch)).toBe(expected);
  });
  it('of several patches the first that rules it out is told, its own before any other', () => {
    expect(judged('pressure-wash', bruised, smooth)).toBe(
      'trial: weaker-than-failed failed=grind why=too-smooth',
    );
    expect(judged('grind', bruised, smooth)).toBe('trial: failed-on-patch why=too-smooth');
    expect(judged('shotblast')).toBeNull();
  });
});

// Common practice, no source: those beside the ladder before breaking out, a specialist's last.
describe('what is taken after failed patches', () => {
  const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
  const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
  const tooMuch = (...ids: MethodId[]) => ids.map((id) => failed(id, 'too-much', 'bruised'));
  const tooLittle = (...ids: MethodId[]) =>
    ids.map((id) => failed(id, 'too-little', 'still-loose'));
  it.each<[string, ZoneChange, readonly TriedOut[], SiteChange, string]>([
    ['the next on the ladder', scale, tooMuch('scarify'), {}, 'shotblast'],
    [
      'one beside the ladder before breaking out',
      { ...scale, makerProfile: 3 },
      tooMuch('shotblast'),
      {},
      'abrasive-blast',
    ],
    [
      'in a firm hollow too: needles before the hammer',
      { depth: '20-to-50', finish: 'rebuild', texture: 'smooth', makerProfile: 3 },
      tooLittle('abrasive-blast'),
      {},
      'needle-scale',
    ],
    [
      'a jet for want of roughness alone, never',
      {},
      [failed('shotblast', 'too-little', 'too-smooth')],
      {},
      'scarify',
    ],
    [
      'breaking out, when nothing gentler got it off',
      scale,
      tooLittle('scarify', 'shotblast'),
      {},
      'break-out',
    ],
    ['a jet last', spall, tooMuch('break-out'), {}, 'water-jet'],
    [
      'none: the last that would do is named, spent',
      spall,
      [...tooMuch('break-out'), ...tooLittle('water-jet')],
      {},
      'break-out, spent',
    ],
    [
      'a jet frees a bar where the hammer failed',
      { steel: 'exposed' },
      tooMuch('break-out'),
      {},
      'water-jet beside shotblast',
    ],
    [
      'where all failed along a bar too',
      { steel: 'exposed' },
      tooMuch(...methodIds),
      {},
      'break-out, spent',
    ],
    [
      'what would not have done anyway tells nothing',
      { finish: 'sealer', contamination: ['oil'] },
      tooLittle('pressure-wash'),
      {},
      'grind',
    ],
  ])('%s', (_, zone, triedOut, site, expected) => {
    const { method, rest, spent } = choose(
      demandsOf(siteWith(site), zoneWith({ ...zone, triedOut })),
    );
    expect(`${method}${rest === method ? '' : ` beside ${rest}`}${spent ? ', spent' : ''}`).toBe(
      expected,
    );
  });
  it('counts those that would have done by the answers', () => {
    const demands = demandsOf(
      siteWith(),
      zoneWith({ ...scale, triedOut: tooMuch('grind', 'scarify') }),
    );
    expect(failedHere(demands).map(({ method }) => method)).toEqual(['scarify']);
  });
});

it('what patches settled is there or not, never empty', () => {
  const triedOut = [failed('grind', 'too-little', 'too-smooth')];
  expect(patchFacts({ triedOut, stopped: ['hollow-below'] })).toEqual({
    triedOut,
    stopped: ['hollow-below'],
  });
  expect(patchFacts({ triedOut: [], stopped: [] })).toEqual({});
  expect(patchFacts({})).toEqual({});
});
