import { describe, expect, it } from 'vitest';
import { clearBehindBar } from '$lib/advice/hole';
import { followsTexture, targetOf } from '$lib/advice/target';
import { rangeOf } from '$shared/figures';
import { situationOn, type SiteChange, type ZoneChange } from '../helpers/settled';

// Trade page 3; figures: the table of profiles (ICRI 310.2R), the day (UFC 3-270-03), bars (ICRI 310.1R).
describe('what the surface must be when it is ready', () => {
  const target = (zone: ZoneChange, site: SiteChange = {}) => {
    const situation = situationOn(zone, site);
    return targetOf(situation, situation.method);
  };
  it('under an overlay', () => {
    expect(target({})).toEqual({
      profile: rangeOf('csp.needs.overlay'),
      leaves: rangeOf('csp.shotblast'),
      bruisedSkin: 'should-go',
      moisture: 'saturated-surface-dry',
      figures: ['open.limit', 'csp.needs.overlay'],
    });
  });
  it('by a sheet, and the table is no longer named', () => {
    const asked = target({ finish: 'sealer', makerProfile: 2 });
    expect(asked).toEqual({
      profile: [2, 2],
      fromSheet: true,
      followsTexture: true,
      leaves: rangeOf('csp.found.sandy'),
      bruisedSkin: 'may-stay',
      moisture: 'dry',
      figures: ['open.limit'],
    });
  });
  it('while it is undecided, whatever sheet is at hand', () => {
    expect(target({ finish: 'undecided', makerProfile: 3 })).not.toHaveProperty('fromSheet');
    expect(target({ finish: 'undecided' })).toMatchObject({
      profile: null,
      figures: ['open.limit'],
    });
  });
  it('behind a freed bar', () => {
    expect(target({ steel: 'exposed' })).toMatchObject({
      behindBar: clearBehindBar(0),
      figures: ['open.limit', 'csp.needs.overlay', 'bar.clear', 'bar.clear-over-aggregate'],
    });
    expect(target({ steel: 'rust-stain' })).not.toHaveProperty('behindBar');
  });
  it('says nothing of what is left where no surface method stands', () => {
    expect(targetOf(situationOn({ finish: 'sealer' }), null).leaves).toBeNull();
    expect(targetOf(situationOn({ finish: 'sealer' }), null)).not.toHaveProperty('followsTexture');
  });

  it.each<[string, ZoneChange, SiteChange, string]>([
    ['under a sealer on washed concrete', { finish: 'sealer' }, {}, 'may-stay'],
    ['even where it freezes often', { finish: 'sealer' }, { freezeThaw: 'often' }, 'may-stay'],
    [
      'under a sealer over a filled hole',
      { finish: 'sealer', looseness: 'hollow', depth: '20-to-50' },
      {},
      'should-go',
    ],
    ['under a sealer round a bar', { finish: 'sealer', steel: 'exposed' }, {}, 'should-go'],
    [
      'under a sealer over a chased crack',
      { finish: 'sealer', cracks: 'crumbling' },
      {},
      'should-go',
    ],
    ['under anything bonded', { finish: 'thin-film' }, {}, 'should-go'],
    ['under anything bonded, in frost', {}, { freezeThaw: 'often' }, 'must-go'],
  ])('a bruised skin %s', (_, zone, site, expected) => {
    expect(target(zone, site).bruisedSkin).toBe(expected);
  });

  it('a sealer follows the texture where it is only cleaned', () => {
    expect(followsTexture({ finish: 'sealer' }, 'pressure-wash')).toBe(true);
    expect(followsTexture({ finish: 'sealer' }, 'shotblast')).toBe(false);
    expect(followsTexture({ finish: 'thin-film' }, 'pressure-wash')).toBe(false);
    expect(followsTexture({ finish: 'sealer' }, null)).toBe(false);
  });
});
