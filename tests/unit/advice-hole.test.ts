import { describe, expect, it } from 'vitest';
import {
  clearBehindBar,
  fullDepthHold,
  holeRange,
  makesHole,
  onlyBreakingReaches,
} from '$lib/advice/hole';
import { sawDepth } from '$lib/advice/saw-depth';
import { choicesOf, type DepthBand, type Looseness } from '$lib/answers/questions';
import { rangeOf, valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import {
  holdInLine,
  inLine,
  siteWith,
  zoneWith,
  type SiteChange,
  type ZoneChange,
} from '../helpers/settled';

const into = valueOf('patch.into-sound');
const hollow = (depthMm: number): ZoneChange => ({
  looseness: 'hollow',
  depth: depthMm > 50 ? 'over-50' : '20-to-50',
  depthMm,
});

// Trade page 3: over 6.4 mm and not tight it is broken out, rotten at any depth. Common practice, no source.
describe('what only breaking out reaches', () => {
  it.each<[Looseness, readonly DepthBand[]]>([
    ['powdery', ['6-to-20', '20-to-50', 'over-50', 'through']],
    ['flaking', ['6-to-20', '20-to-50', 'over-50', 'through']],
    ['fractured', ['6-to-20', '20-to-50', 'over-50', 'through']],
    ['hollow', ['6-to-20', '20-to-50', 'over-50', 'through']],
    ['rotten', [...choicesOf('depth')]],
    ['tight', []],
  ])('%s', (looseness, bands) => {
    expect(choicesOf('depth').filter((depth) => onlyBreakingReaches({ depth, looseness }))).toEqual(
      bands,
    );
  });
  it.each<[string, MethodId, ZoneChange, boolean]>([
    ['breaking out makes a hole', 'break-out', {}, true],
    ['so does a jet where nothing gentler reaches', 'water-jet', hollow(30), true],
    ['and where a bar shows', 'water-jet', { steel: 'exposed' }, true],
    [
      'a jet over thin scale does not',
      'water-jet',
      { depth: '3-to-6', looseness: 'flaking' },
      false,
    ],
    ['nor over a tight hollow', 'water-jet', { depth: '20-to-50' }, false],
    ['nor shot, whatever shows', 'shotblast', { ...hollow(30), steel: 'corroded' }, false],
  ])('%s', (_, method, zone, expected) => {
    expect(makesHole(method, zoneWith(zone))).toBe(expected);
  });
});

// UFC 3-270-03, 15.4: 1/2 in into sound concrete; UFGS 03 93: 1 in behind a bar, ICRI 310.1R: 3/4 in.
describe('how deep the finished hole comes to', () => {
  const bar = rangeOf('bar.unmeasured');
  const clear = clearBehindBar(0);
  const most = valueOf('bar.clear-military');
  const range = (zone: ZoneChange, thickness: number | 'unknown' = 300) =>
    holeRange(thickness, zoneWith(zone));
  it.each<[string, ZoneChange, readonly [number, number]]>([
    ['a measured damage and the step into sound concrete', hollow(40), [40 + into, 40 + into]],
    ['a band the same', { looseness: 'fractured', depth: '20-to-50' }, [20 + into, 50 + into]],
    [
      'open to the slab’s thickness',
      { looseness: 'fractured', depth: 'over-50' },
      [50 + into, 300 + into],
    ],
    [
      'scale is not broken out',
      { looseness: 'flaking', depth: '3-to-6' },
      [valueOf('depth.thin'), valueOf('depth.shallow')],
    ],
    ['a tight hollow is as deep as it is', { depth: '20-to-50' }, [20, 50]],
    [
      'a bar nobody measured lies no deeper than the damage',
      { ...hollow(40), steel: 'exposed' },
      [40 + into, 40 + bar[1] + most],
    ],
    [
      'behind a bar in shallow damage',
      { steel: 'exposed', depthMm: 10, depth: '6-to-20' },
      [bar[0] + clear, 10 + bar[1] + most],
    ],
    [
      'over measured cover',
      { ...hollow(30), steel: 'corroded', barCover: 60 },
      [60 + bar[0] + clear, 60 + bar[1] + most],
    ],
    [
      'with a measured bar',
      { ...hollow(30), steel: 'corroded', barCover: 60, barDiameter: 25 },
      [60 + 25 + clear, 60 + 25 + most],
    ],
    [
      'damage deeper than the bar',
      { ...hollow(130), steel: 'corroded', barCover: 20, barDiameter: 10 },
      [130 + into, 130 + into],
    ],
  ])('%s', (_, zone, expected) => {
    expect(range(zone)).toEqual(expected);
  });
});

// UFC 3-270-04, 4.2.6: a spall to half the slab or deeper is replaced full depth (`depth.full-limit`).
describe('when a patch is no patch any more', () => {
  const hold = (zone: ZoneChange, site: SiteChange = {}) => {
    const found = fullDepthHold(siteWith({ thickness: 100, ...site }), zoneWith(zone));
    return found && holdInLine(found);
  };
  const half = 100 * valueOf('depth.full-limit');
  const figures = 'depth.full-limit patch.into-sound';
  const stop = (hole: number, looseness: string) =>
    `stop, concrete-contractor: full-depth half=50 thickness=100 hole=${hole} looseness=${looseness} ${figures}`;
  const perhaps = (hole: number) =>
    `find-out-first, crew: thickness-decides half=50 thickness=100 hole=${hole} ${figures}`;
  it.each<[string, ZoneChange, string | null]>([
    ['a hole short of half', hollow(half - into - 1), null],
    ['a hole of half', hollow(half - into), stop(half, 'hollow')],
    ['a firm hollow of half', { depth: '20-to-50', depthMm: half }, stop(half, 'tight')],
    ['one that may come to half', { looseness: 'hollow', depth: '20-to-50' }, perhaps(50 + into)],
    ['one that just may', { depth: '20-to-50' }, perhaps(50)],
    ['one that cannot', { depth: '6-to-20', looseness: 'fractured' }, null],
    ['damaged through, whatever holds', { depth: 'through' }, 'stop, concrete-contractor: through'],
  ])('%s', (_, zone, expected) => {
    expect(hold(zone)).toBe(expected);
  });

  // Common practice, no source: what carries is replaced as an engineer says, and by no one alone.
  it.each(['suspended-slab', 'suspended-steps', 'wall', 'soffit'] as const)(
    'is an engineer’s where it carries: %s',
    (element) => {
      expect(hold({ depth: 'through' }, { element })).toBe('stop, engineer: through who=engineer');
      expect(hold(hollow(half), { element })).toMatch(/^stop, engineer: full-depth/);
    },
  );

  // A slab on which nobody measured the thickness is taken for a usual one of `depth.unknown-slab`.
  const measure = 'find-out-first, crew: thickness-decides depth.full-limit';
  const usualHalf = valueOf('depth.unknown-slab') * valueOf('depth.full-limit');
  it.each<[string, ZoneChange, SiteChange, string | null]>([
    [
      'a hole that may go past half of a usual slab',
      { looseness: 'hollow', depth: '20-to-50' },
      {},
      measure,
    ],
    ['one to just half of it', hollow(usualHalf - into), {}, measure],
    ['one that does not', hollow(usualHalf - into - 1), {}, null],
    ['a firm hollow is a form to fill', { depth: 'over-50' }, {}, null],
    ['but behind a bar it goes deeper', { depth: '20-to-50', steel: 'exposed' }, {}, measure],
    [
      'a wall is thicker than a path',
      { looseness: 'hollow', depth: '20-to-50' },
      { element: 'wall' },
      null,
    ],
    [
      'but not beyond all damage',
      { looseness: 'hollow', depth: 'over-50' },
      { element: 'wall' },
      measure,
    ],
  ])('thickness unknown: %s', (_, zone, site, expected) => {
    expect(hold(zone, { thickness: 'unknown', ...site })).toBe(expected);
  });
});

// UFGS 03 93 for the usual depth, FHWA checklist 9 for the third; clear of steel: common practice, no source.
describe('how deep the edge is sawn', () => {
  const usual = rangeOf('sawcut.depth')[1];
  const clear = valueOf('sawcut.clear-of-steel');
  const depth = (zone: ZoneChange, thickness: number | 'unknown' = 300) =>
    inLine(sawDepth(siteWith({ thickness }), zoneWith(zone))).replace(
      / sawcut.depth sawcut.by-hand$/,
      '',
    );
  it.each<[string, ZoneChange, number | 'unknown', string]>([
    ['as usual', hollow(60), 300, 'saw-depth'],
    ['as usual where nobody knows the thickness', hollow(60), 'unknown', 'saw-depth'],
    ['no deeper than the top third', hollow(60), 90, 'saw-depth deepest=30 why=thickness'],
    ['no deeper than the hole', hollow(20), 300, `saw-depth deepest=${20 + into} why=hole`],
    [
      'clear of a bar',
      { ...hollow(60), steel: 'corroded', barCover: 40 },
      300,
      `saw-depth deepest=${40 - clear} why=steel`,
    ],
    [
      'not at all over a shallow one',
      { ...hollow(60), steel: 'corroded', barCover: clear - 2 },
      300,
      'saw-depth deepest=0 why=steel',
    ],
    [
      'a bar deeper than the saw is no matter',
      { ...hollow(60), steel: 'corroded', barCover: usual + clear + 1 },
      300,
      'saw-depth',
    ],
    [
      'no deeper than the hole, whatever the thickness',
      hollow(20),
      'unknown',
      `saw-depth deepest=${20 + into} why=hole`,
    ],
    [
      'over a bar nobody measured, by the thickness',
      { ...hollow(60), steel: 'corroded' },
      90,
      'saw-depth deepest=30 why=thickness',
    ],
    ['nor is cover where no steel is', { ...hollow(60), barCover: 20 }, 300, 'saw-depth'],
  ])('%s', (_, zone, thickness, expected) => {
    expect(depth(zone, thickness)).toBe(expected);
  });
});
