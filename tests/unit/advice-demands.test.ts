import { describe, expect, it } from 'vitest';
import {
  demandsAsked,
  demandsOf,
  hasCoating,
  isBonded,
  isFilm,
  isFirmHollow,
  isStiff,
  opensBelow,
  removalFacts,
  showsBar,
  type Demands,
} from '$lib/advice/demands';
import { choicesOf } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import { siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

// Trade page 2; common practice, no source.
describe('what the surface asks for', () => {
  const plain: Demands = {
    place: 'floor',
    remove: { band: 'film', looseness: 'tight' },
    contaminants: [],
    oil: false,
    stripped: false,
    heavyCoating: false,
    belowPlane: false,
    openCracks: false,
    texture: 'sandy',
    skin: null,
    bar: false,
    profile: rangeOf('csp.needs.overlay'),
    triedOut: [],
  };
  const patch = [{ method: 'grind', because: 'too-little', why: ['too-smooth'] }] as const;
  const cases: readonly [string, ZoneChange, SiteChange, Partial<Demands>][] = [
    ['nothing but roughness', {}, {}, {}],
    [
      'loose concrete, measured',
      { depth: '6-to-20', depthMm: 12, looseness: 'fractured' },
      {},
      { remove: { band: '6-to-20', looseness: 'fractured', mm: 12 } },
    ],
    [
      'oil is degreased before',
      { contamination: ['oil', 'growth'] },
      {},
      { oil: true, contaminants: ['growth'] },
    ],
    [
      'a heavy coating on a floor is the machine’s',
      { contamination: ['thick-coating', 'thin-coating'] },
      {},
      { heavyCoating: true, contaminants: ['thick-coating', 'thin-coating'] },
    ],
    [
      'on a wall it is scraped off before',
      { contamination: ['rubbery-coating', 'thin-coating'], area: 5 },
      { element: 'wall' },
      { place: 'off-floor', stripped: true, contaminants: ['thin-coating'] },
    ],
    [
      'on a spot too',
      { contamination: ['thick-coating'], area: 0.5 },
      {},
      { place: 'floor-spot', stripped: true },
    ],
    ['pits', { texture: 'pitted' }, {}, { texture: 'pitted', belowPlane: true }],
    ['cracks that are open', { cracks: 'crumbling' }, {}, { openCracks: true }],
    ['a trowelled skin', { texture: 'smooth' }, {}, { texture: 'smooth', skin: 'trowelled' }],
    [
      'a trowelled skin under a sealer may stay',
      { texture: 'smooth', finish: 'sealer' },
      {},
      { texture: 'smooth', profile: rangeOf('csp.needs.sealer') },
    ],
    [
      'and while nothing is decided',
      { texture: 'smooth', finish: 'undecided' },
      {},
      { texture: 'smooth', profile: null },
    ],
    [
      'dust under a coat',
      { looseness: 'powdery', finish: 'build-coat' },
      {},
      {
        remove: { band: 'film', looseness: 'powdery' },
        skin: 'dusting',
        profile: rangeOf('csp.needs.build-coat'),
      },
    ],
    [
      'dust under an overlay is washed off',
      { looseness: 'powdery' },
      {},
      { remove: { band: 'film', looseness: 'powdery' } },
    ],
    [
      'flakes under a coat are no dust',
      { looseness: 'flaking', finish: 'build-coat' },
      {},
      { remove: { band: 'film', looseness: 'flaking' }, profile: rangeOf('csp.needs.build-coat') },
    ],
    ['a bar', { steel: 'corroded' }, {}, { bar: true }],
    [
      'a firm hollow that is filled',
      { depth: '6-to-20', finish: 'rebuild' },
      {},
      {
        place: 'recess',
        remove: { band: '6-to-20', looseness: 'tight' },
        profile: rangeOf('csp.needs.rebuild'),
      },
    ],
    ['what a patch has shown', { triedOut: patch }, {}, { triedOut: patch }],
  ];
  it.each(cases)('%s', (_, zone, site, expected) => {
    expect(demandsOf(siteWith(site), zoneWith(zone))).toEqual({ ...plain, ...expected });
  });
  it.each(cases)('%s, asked one by one', (_, zone, site, expected) => {
    const asked = demandsAsked(siteWith(site), zoneWith(zone));
    for (const [name, value] of Object.entries({ ...plain, ...expected }))
      expect(asked[name as keyof Demands], name).toEqual(
        name === 'remove' ? { mm: undefined, ...plain.remove, ...expected.remove } : value,
      );
  });
  it('a reason tells the depth as measured, or by its band', () => {
    expect(removalFacts({ remove: { band: '6-to-20', looseness: 'hollow' } })).toEqual({
      depth: '6-to-20',
      looseness: 'hollow',
    });
    expect(removalFacts({ remove: { band: '6-to-20', looseness: 'hollow', mm: 7 } })).toEqual({
      depth: '6-to-20',
      looseness: 'hollow',
      mm: 7,
    });
  });
});

describe('what the answers mean', () => {
  it('names what opens, coats, shows, bonds, films and stiffens', () => {
    expect(choicesOf('cracks').filter(opensBelow)).toEqual(['open', 'crumbling']);
    expect(choicesOf('contamination').filter((each) => hasCoating([each]))).toEqual([
      'thin-coating',
      'thick-coating',
      'rubbery-coating',
    ]);
    expect(hasCoating(['growth', 'thin-coating'])).toBe(true);
    expect(choicesOf('steel').filter((steel) => showsBar({ steel }))).toEqual([
      'exposed',
      'corroded',
    ]);
    const finishes = (is: (zone: ReturnType<typeof zoneWith>) => boolean) =>
      choicesOf('finish').filter((finish) => is(zoneWith({ finish })));
    expect(finishes((zone) => !isBonded(zone))).toEqual(['sealer']);
    expect(finishes(isFilm)).toEqual(['thin-film', 'build-coat', 'self-levelling']);
    expect(finishes((zone) => !isStiff(zone))).toEqual(['sealer', 'thin-film', 'undecided']);
  });
  it('a firm hollow is tight, 6 mm and deeper, and filled up', () => {
    const bands = choicesOf('depth').filter((depth) =>
      isFirmHollow(zoneWith({ depth, finish: 'rebuild' })),
    );
    expect(bands).toEqual(['6-to-20', '20-to-50', 'over-50', 'through']);
    expect(isFirmHollow(zoneWith({ depth: '20-to-50' }))).toBe(false);
    expect(
      isFirmHollow(zoneWith({ depth: '20-to-50', finish: 'rebuild', looseness: 'hollow' })),
    ).toBe(false);
  });
});
