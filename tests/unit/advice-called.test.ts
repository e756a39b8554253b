import { describe, expect, it } from 'vitest';
import { whomToCall } from '$lib/advice/owner-may';
import type { SiteAnswers } from '$lib/answers/answers';
import { advised, hold, site, step, type Advised } from '../helpers/owner-advice';

// Common practice, no published source: what a careful owner of a house does, and hires somebody for.

describe('who is called before the work', () => {
  const hidden: SiteAnswers = { warnings: { yes: [], maybe: ['buried-services'] } };
  it.each<[string, SiteAnswers, Partial<Advised>, readonly string[]]>([
    ['nobody', {}, {}, []],
    [
      'who lifts the holds, each once',
      {},
      {
        holds: [
          hold('stop', 'engineer'),
          hold('find-out-first', 'laboratory'),
          hold('stop', 'engineer', 'moving-crack'),
        ],
      },
      ['engineer', 'laboratory'],
    ],
    [
      'who may have to stop it',
      {},
      { possibleHolds: [hold('stop', 'engineer'), hold('find-out-first', 'laboratory')] },
      ['engineer'],
    ],
    ['who marks cables before a cut', hidden, { steps: [step('saw-cut')] }, ['locator']],
    [
      'before a cut among other steps',
      hidden,
      { steps: [step('make-safe'), step('saw-cut'), step('cover')] },
      ['locator'],
    ],
    ['before a groove', hidden, { steps: [step('route-crack')] }, ['locator']],
    ['before a chased crack', hidden, { steps: [step('chase-crack')] }, ['locator']],
    ['before a freed bar', hidden, { steps: [step('free-bar')] }, ['locator']],
    ['before breaking out, perhaps', hidden, { methods: ['shotblast', 'break-out'] }, ['locator']],
    [
      'where nobody said whether there are any',
      { warnings: undefined as never },
      { methods: ['break-out'] },
      ['locator'],
    ],
    [
      'where there are',
      { warnings: { yes: ['buried-services'], maybe: [] } },
      { methods: ['break-out'] },
      ['locator'],
    ],
    ['not before shot', hidden, { methods: ['shotblast'] }, []],
    ['not where there are none', {}, { methods: ['break-out'], steps: [step('saw-cut')] }, []],
    [
      'a jetting crew',
      {},
      { steps: [step('water-jet')], methods: ['water-jet'] },
      ['jetting-crew'],
    ],
    [
      'a jetting crew where nothing else is left',
      hidden,
      { methods: ['water-jet'], steps: [] },
      ['locator', 'jetting-crew'],
    ],
    ['none where it is one of several', {}, { methods: ['break-out', 'water-jet'], steps: [] }, []],
    ['none where no method is left', {}, { methods: [], steps: [] }, []],
  ])('%s', (_, moreSite, more, expected) => {
    expect(whomToCall({ ...site, ...moreSite }, advised(more))).toEqual(expected);
  });
});
