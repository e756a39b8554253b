import { describe, expect, it } from 'vitest';
import type { Element } from '$lib/answers/questions';
import { adviceOn, holdInLine, type SiteChange, type ZoneChange } from '../helpers/settled';

const holdsOn = (zone: ZoneChange, site: SiteChange) => adviceOn(zone, site).holds.map(holdInLine);
type Case = [string, ZoneChange, SiteChange, readonly string[]];

const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const washed: ZoneChange = { finish: 'sealer' };
const warned = (...warnings: NonNullable<SiteChange['warnings']>): SiteChange => ({ warnings });

// Trade page 5. Common practice, no published source, except where a hold names figures.
describe('what stops the work, and what is found out first', () => {
  const structure = (element: Element, told = 'no') =>
    `stop, engineer: structure-before-removal element=${element} told=${told}`;
  const tendons = 'stop, engineer: tendons-before-depth tendon.depth';
  const services = 'find-out-first, locator: buried-services';
  it.each<Case>([
    ['nothing', {}, {}, []],
    [
      'fire: the concrete itself is harmed',
      {},
      warned('fire-or-chemical'),
      ['stop, engineer: fire-or-chemical'],
    ],
    [
      'ground that moves, under what is stiff',
      {},
      warned('settled-or-rocking'),
      ['stop, engineer: settled-or-rocking'],
    ],
    [
      'ground that moves, under what gives',
      washed,
      warned('settled-or-rocking'),
      ['find-out-first, engineer: settled-or-rocking'],
    ],
    [
      'a balcony that has sunk, whatever is done to its face',
      washed,
      { ...warned('settled-or-rocking'), element: 'suspended-slab' },
      ['stop, engineer: settled-or-rocking'],
    ],
    [
      'ground that moves, under a hole that is filled',
      { ...spall, finish: 'sealer' },
      warned('settled-or-rocking'),
      ['stop, engineer: settled-or-rocking'],
    ],
    ['a crack that moves', { cracks: 'moving' }, {}, ['stop, engineer: moving-crack']],
    [
      'a crack that moves, under what gives',
      { ...washed, cracks: 'moving' },
      {},
      ['find-out-first, engineer: moving-crack'],
    ],
    [
      'a crack that moves in what hangs, under what gives: its root may be giving way',
      { ...washed, cracks: 'moving' },
      { element: 'suspended-slab' },
      ['stop, engineer: moving-crack'],
    ],
    [
      'a suspended slab that is broken out',
      spall,
      { element: 'suspended-slab' },
      [structure('suspended-slab')],
    ],
    [
      'steps with a room below, along a bar',
      { steel: 'exposed' },
      { element: 'suspended-steps' },
      [structure('suspended-steps')],
    ],
    [
      'a balcony whose crack is chased: an engineer is asked, though little comes off',
      { cracks: 'crumbling' },
      { element: 'suspended-slab' },
      [structure('suspended-slab').replace('stop', 'find-out-first')],
    ],
    [
      'a soffit whose crack is routed: the same',
      { cracks: 'open' },
      { element: 'soffit' },
      [structure('soffit').replace('stop', 'find-out-first')],
    ],
    [
      'a balcony with a firm hole to fill, sawn round: the same',
      { depth: '20-to-50', finish: 'rebuild' },
      { element: 'suspended-slab' },
      [structure('suspended-slab').replace('stop', 'find-out-first')],
    ],
    ['a balcony into which nothing cuts', scale, { element: 'suspended-slab' }, []],
    ['a wall whose crack is routed', { cracks: 'open' }, { element: 'wall' }, []],
    ['a slab on the ground whose crack is chased', { cracks: 'crumbling' }, {}, []],
    ['a wall whose crack is chased', { cracks: 'crumbling' }, { element: 'wall' }, []],
    ['scale of a few millimetres on a wall is no removal', scale, { element: 'wall' }, []],
    ['a slab on the ground carries nothing', spall, {}, []],
    [
      'unless something stands on it',
      spall,
      warned('holds-something-up'),
      [structure('slab', 'yes')],
    ],
    ['what stands on it does not mind shot', {}, warned('holds-something-up'), []],
    ['tendons, and a hole', spall, warned('tendons-possible'), [tendons]],
    ['tendons, and scale that may be past 6 mm', scale, warned('tendons-possible'), [tendons]],
    ['tendons, and a groove', { cracks: 'open' }, warned('tendons-possible'), [tendons]],
    ['tendons, and thin scale', { ...scale, depth: 'under-3' }, warned('tendons-possible'), []],
    ['cables, and a hole', spall, warned('buried-services'), [services]],
    [
      'cables, and a saw round a firm hollow',
      { depth: '20-to-50', finish: 'rebuild' },
      warned('buried-services'),
      [services],
    ],
    ['cables, and a chased crack', { cracks: 'crumbling' }, warned('buried-services'), [services]],
    ['cables, and a groove', { cracks: 'hairline' }, warned('buried-services'), [services]],
    ['cables, and shot: nothing is cut', scale, warned('buried-services'), []],
    ['cracks like a map', {}, warned('map-cracking'), ['find-out-first, laboratory: map-cracking']],
    [
      'an old coating',
      {},
      warned('old-coating-or-adhesive'),
      ['find-out-first, laboratory: old-coating'],
    ],
    [
      'all of it, gravest first',
      { ...spall, cracks: 'moving' },
      warned(
        'buried-services',
        'old-coating-or-adhesive',
        'map-cracking',
        'fire-or-chemical',
        'settled-or-rocking',
        'tendons-possible',
        'holds-something-up',
      ),
      [
        'stop, engineer: fire-or-chemical',
        'stop, engineer: settled-or-rocking',
        structure('slab', 'yes'),
        tendons,
        'stop, engineer: moving-crack',
        'find-out-first, laboratory: map-cracking',
        'find-out-first, laboratory: old-coating',
        services,
      ],
    ],
    [
      'what a test patch came upon',
      { ...scale, stopped: ['bar-unexpected'] },
      {},
      ['find-out-first, crew: stopped-on-patch why=bar-unexpected'],
    ],
    [
      'the same on a wall',
      { ...scale, stopped: ['hollow-below'] },
      { element: 'wall' },
      ['find-out-first, engineer: stopped-on-patch why=hollow-below'],
    ],
  ])('%s', (_, zone, site, expected) => {
    expect(holdsOn(zone, site)).toEqual(expected);
  });

  // UFGS 03 93: over 25 % of one bar, over 20 % of two neighbours, an engineer.
  it.each<[ZoneChange, readonly string[]]>([
    [{ steel: 'corroded', barLoss: 'one-bar' }, ['stop, engineer: bar-section-loss bar.loss-one']],
    [
      { steel: 'exposed', barLoss: 'neighbours' },
      ['stop, engineer: bar-section-loss bar.loss-neighbours'],
    ],
    [{ steel: 'corroded', barLoss: 'within-limit' }, []],
    [{ steel: 'corroded' }, []],
    [{ steel: 'none-seen', barLoss: 'one-bar' }, []],
  ])('bars: %o', (zone, expected) => {
    expect(holdsOn(zone, {})).toEqual(expected);
  });

  it('where every method that would do has failed on a patch, an engineer says what next', () => {
    const all = [
      'pressure-wash',
      'grind',
      'abrasive-blast',
      'scarify',
      'shotblast',
      'needle-scale',
      'break-out',
      'water-jet',
    ] as const;
    const triedOut = all.map((method) => ({
      method,
      because: 'too-much' as const,
      why: ['bruised'],
    }));
    expect(holdsOn({ ...scale, triedOut }, {})).toEqual(['stop, engineer: no-method-left']);
  });
});
