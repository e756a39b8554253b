import { describe, expect, it } from 'vitest';
import { surfaceHolds } from '$lib/advice/holds';
import {
  adviceOn,
  holdInLine,
  siteWith,
  zoneWith,
  type SiteChange,
  type ZoneChange,
} from '../helpers/settled';

const holdsOn = (zone: ZoneChange, site: SiteChange) => adviceOn(zone, site).holds.map(holdInLine);
type Case = [string, ZoneChange, SiteChange, readonly string[]];

// Trade page 5; chlorides: ACI 364.6T. Never paint over rust.
describe('rust that shows where nothing is open yet', () => {
  const stain: ZoneChange = { steel: 'rust-stain' };
  const salts: SiteChange = { salts: 'sea-or-pool' };
  const wall: SiteChange = { element: 'wall' };
  const withSalts = (who: string) =>
    `find-out-first, ${who}: rust-with-salts who=${who} salts=sea-or-pool`;
  const atCrack = (who: string) => `find-out-first, ${who}: rust-at-crack who=${who}`;
  const nothing = (who: string) => `find-out-first, ${who}: nothing-over-rust who=${who}`;
  it.each<Case>([
    ['salt lets it go on under anything', stain, salts, [withSalts('crew')]],
    ['and on a wall an engineer looks', stain, { ...salts, ...wall }, [withSalts('engineer')]],
    [
      'salt at a crack with a rusty bar',
      { steel: 'corroded', cracks: 'open' },
      salts,
      [withSalts('crew')],
    ],
    ['a rusty bar without a crack is freed', { steel: 'corroded' }, salts, []],
    ['a clean bar at a crack is freed', { steel: 'exposed', cracks: 'open' }, salts, []],
    ['a stain at a crack', { ...stain, cracks: 'hairline' }, {}, [atCrack('crew')]],
    ['a rusty bar at a crack without salt', { steel: 'corroded', cracks: 'open' }, {}, []],
    [
      'a stain at a crack where something stands on it',
      { ...stain, cracks: 'hairline' },
      { warnings: ['holds-something-up'] },
      [atCrack('engineer')],
    ],
    ['a film hides it', { ...stain, finish: 'thin-film' }, {}, [nothing('crew')]],
    ['so does a build coat', { ...stain, finish: 'build-coat' }, {}, [nothing('crew')]],
    ['and a levelling layer', { ...stain, finish: 'self-levelling' }, {}, [nothing('crew')]],
    ['and a sealer', { ...stain, finish: 'sealer' }, {}, [nothing('crew')]],
    ['an overlay on the ground does not', stain, {}, []],
    ['where it carries load, whatever goes over it', stain, wall, [nothing('engineer')]],
    ['no rust', {}, { ...salts, ...wall }, []],
  ])('%s', (_, zone, site, expected) => {
    expect(surfaceHolds(siteWith(site), zoneWith(zone)).map(holdInLine)).toEqual(expected);
    // A wall is stopped for its bars beside that; what shows is told all the same.
    if (!site.element && !site.warnings) expect(holdsOn(zone, site)).toEqual(expected);
  });

  it('bloom under what wants it dry: where does the water come from', () => {
    const bloom: ZoneChange = { contamination: ['salt-bloom'] };
    const held = ['find-out-first, crew: bloom-under-dry-finish'];
    expect(holdsOn({ ...bloom, finish: 'sealer' }, {})).toEqual(held);
    expect(holdsOn({ ...bloom, makerMoisture: 'dry' }, {})).toEqual(held);
    expect(holdsOn(bloom, {})).toEqual([]);
    expect(holdsOn({ contamination: ['growth'], finish: 'sealer' }, {})).toEqual([]);
  });
});
