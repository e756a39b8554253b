import { describe, expect, it } from 'vitest';
import { doerOf, ownerMay, type MayId } from '$lib/advice/owner-may';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { advised, hold, site, step, zone, type Advised } from '../helpers/owner-advice';

// Common practice, no published source: what a careful owner of a house does, and hires somebody for.
type Case<What> = [string, SiteAnswers, ZoneAnswers, Partial<Advised>, readonly What[]];

describe('who does the main work', () => {
  it.each<[string, SiteAnswers, ZoneAnswers, Partial<Advised>, ReturnType<typeof doerOf>]>([
    ['an owner washes', {}, {}, {}, 'owner'],
    ['nobody, while there is none', {}, {}, { method: null }, null],
    [
      'a jet is a specialist’s',
      {},
      {},
      { method: 'water-jet', methods: ['water-jet'] },
      'specialist',
    ],
    [
      'an owner does not wash where one may fall',
      { element: ['steps'] },
      {},
      { cautions: ['falls'] },
      'crew',
    ],
    ['nor near steel', {}, { steel: ['exposed'] }, {}, 'crew'],
    ['nor overhead', {}, {}, { cautions: ['overhead'] }, 'crew'],
    ['nor where something is broken', {}, {}, { steps: [step('chase-crack')] }, 'crew'],
    ['nor where it is blasted', {}, {}, { steps: [step('blast-clean')] }, 'crew'],
    [
      'nor on an old coating',
      { warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } },
      {},
      {},
      'crew',
    ],
    [
      'cables nobody cuts are no matter',
      { warnings: { yes: ['buried-services'], maybe: [] } },
      {},
      {},
      'owner',
    ],
    [
      'an owner grinds a spot',
      {},
      { area: 0.5 },
      { method: 'grind', methods: ['grind'] },
      'owner-with-hood',
    ],
    [
      'a spot of a step too',
      { element: ['steps'] },
      { area: 0.5 },
      { method: 'grind', methods: ['grind'] },
      'owner-with-hood',
    ],
    ['but no floor', {}, {}, { method: 'grind', methods: ['grind'] }, 'crew'],
    [
      'nor an area nobody knows',
      {},
      { area: undefined as never },
      { method: 'grind', methods: ['grind'] },
      'crew',
    ],
    [
      'and chips nothing',
      {},
      { area: 0.5 },
      { method: 'needle-scale', methods: ['needle-scale'] },
      'crew',
    ],
  ])('%s', (_, moreSite, moreZone, more, expected) => {
    expect(doerOf({ ...site, ...moreSite }, { ...zone, ...moreZone }, advised(more))).toBe(
      expected,
    );
  });
});

describe('what an owner may do', () => {
  const stop: Partial<Advised> = {
    verdict: 'stop',
    method: null,
    holds: [hold('stop', 'engineer')],
  };
  const open: Partial<Advised> = { verdict: 'find-out-first', method: null };
  const on = (...yes: NonNullable<ZoneAnswers['contamination']>['yes']): ZoneAnswers => ({
    contamination: { yes, maybe: [] },
  });
  const damp = [step('cover'), step('cure', [], [{ rule: 'cure-kept-damp' }])];
  it.each<Case<MayId>>([
    ['wash, and seal', {}, {}, {}, ['measure', 'tap', 'clear', 'wash', 'seal']],
    [
      'no sealing where something else goes on',
      {},
      { finish: ['thin-film'] },
      {},
      ['measure', 'tap', 'clear', 'wash'],
    ],
    [
      'nor where that is open',
      {},
      { finish: ['sealer', 'overlay'] },
      {},
      ['measure', 'tap', 'clear', 'wash'],
    ],
    [
      'nor where nobody said',
      {},
      { finish: undefined as never },
      {},
      ['measure', 'tap', 'clear', 'wash'],
    ],
    [
      'nor where nothing is covered',
      {},
      {},
      { steps: [step('pressure-wash')] },
      ['measure', 'tap', 'clear', 'wash'],
    ],
    [
      'growth and oil come off',
      {},
      on('growth', 'oil'),
      {},
      ['measure', 'tap', 'clear', 'growth', 'degrease', 'wash', 'seal'],
    ],
    [
      'bloom: lead the water away',
      {},
      on('salt-bloom'),
      {},
      ['measure', 'tap', 'clear', 'wash', 'lead-water-away', 'seal'],
    ],
    [
      'so where it freezes often',
      { freezeThaw: ['some', 'often'] },
      {},
      {},
      ['measure', 'tap', 'clear', 'wash', 'lead-water-away', 'seal'],
    ],
    [
      'grind a spot',
      {},
      { area: 0.5 },
      { method: 'grind', methods: ['grind'] },
      ['measure', 'tap', 'clear', 'grind-spot'],
    ],
    [
      'keep the repair damp',
      {},
      {},
      { method: 'break-out', methods: ['break-out'], steps: damp },
      ['measure', 'tap', 'clear', 'keep-damp'],
    ],
    [
      'as the maker says, is the crew’s',
      {},
      {},
      {
        method: 'break-out',
        methods: ['break-out'],
        steps: [step('cure', [], [{ rule: 'cure-as-maker-says' }])],
      },
      ['measure', 'tap', 'clear'],
    ],
    [
      'nothing said of dirt or frost',
      { freezeThaw: undefined as never },
      { contamination: undefined as never },
      {},
      ['measure', 'tap', 'clear', 'wash', 'seal'],
    ],
    [
      'perhaps with a room below',
      { element: ['slab', 'suspended-slab'] },
      {},
      stop,
      ['keep-from-under'],
    ],
    ['while it is open, clear', {}, on('growth'), open, ['clear', 'growth']],
    ['stopped: keep off', {}, on('growth', 'salt-bloom'), stop, ['keep-off', 'lead-water-away']],
    [
      'stopped, with a room below: from under it',
      { element: ['suspended-slab'] },
      {},
      stop,
      ['keep-from-under'],
    ],
    ['under steps with air below', { element: ['suspended-steps'] }, {}, stop, ['keep-from-under']],
    ['under a soffit', { element: ['soffit'] }, {}, stop, ['keep-from-under']],
    ['beside a wall', { element: ['wall'] }, {}, stop, ['keep-off']],
    [
      'where nobody said what it is',
      { element: undefined as never },
      {},
      {},
      ['keep-from-under', 'clear'],
    ],
    [
      'at an edge it is cleared, and no more',
      {},
      on('growth', 'salt-bloom'),
      { cautions: ['falls'] },
      ['keep-off', 'clear'],
    ],
    ['overhead too', {}, {}, { cautions: ['overhead'] }, ['keep-off', 'clear']],
    [
      'nobody brushes or wets an old coating',
      { warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } },
      on('growth', 'oil'),
      { steps: damp },
      ['measure', 'clear'],
    ],
  ])('%s', (_, moreSite, moreZone, more, expected) => {
    expect(ownerMay({ ...site, ...moreSite }, { ...zone, ...moreZone }, advised(more))).toEqual(
      expected,
    );
  });
});
