import { describe, expect, it } from 'vitest';
import { limitIds, limitsHere, type LimitId } from '$lib/advice/owner-limits';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { advised, hold, site, step, zone, type Advised } from '../helpers/owner-advice';

// Common practice, no published source: what a careful owner of a house does, and hires somebody for.
type Case<What> = [string, SiteAnswers, ZoneAnswers, Partial<Advised>, readonly What[]];

describe('what an owner leaves to others', () => {
  it.each<Case<LimitId>>([
    ['washing: nothing', {}, {}, {}, []],
    ['an element nobody named', { element: undefined as never }, {}, {}, ['edges', 'overhead']],
    ['somebody may fall', {}, {}, { cautions: ['falls'] }, ['edges']],
    ['by what one step brings', {}, {}, { steps: [step('cover', ['silica', 'falls'])] }, ['edges']],
    ['a soffit, perhaps', { element: ['slab', 'soffit'] }, {}, {}, ['overhead', 'steel']],
    ['something may come down', {}, {}, { cautions: ['overhead'] }, ['overhead']],
    [
      'cables that are there',
      { warnings: { yes: ['buried-services'], maybe: [] } },
      {},
      {},
      ['electricity'],
    ],
    [
      'cables that may be there',
      { warnings: { yes: [], maybe: ['buried-services'] } },
      {},
      {},
      ['electricity'],
    ],
    [
      'leads near water, indoors',
      { setting: ['indoors'] },
      {},
      { cautions: ['electric'] },
      ['electricity'],
    ],
    [
      'leads near water, where nobody said',
      { setting: undefined as never },
      {},
      { cautions: ['electric'] },
      ['electricity'],
    ],
    [
      'leads in the open, perhaps under a roof',
      { setting: ['open', 'sheltered'] },
      {},
      { cautions: ['electric'] },
      ['electricity'],
    ],
    ['leads in the open', {}, {}, { cautions: ['electric'] }, []],
    [
      'nothing said of warnings: all of them may be',
      { warnings: undefined as never },
      {},
      {},
      ['electricity', 'steel', 'old-coating'],
    ],
    ['steel nobody looked for', {}, { steel: undefined as never }, {}, ['steel']],
    ['a stain, perhaps', {}, { steel: ['none-seen', 'rust-stain'] }, {}, ['steel']],
    ['tendons, perhaps', { warnings: { yes: [], maybe: ['tendons-possible'] } }, {}, {}, ['steel']],
    ['what carries load', { element: ['wall'] }, {}, {}, ['steel']],
    ['a saw', {}, {}, { steps: [step('saw-cut')] }, ['break-out']],
    [
      'a saw, among other things',
      {},
      {},
      { steps: [step('make-safe'), step('saw-cut', ['falls']), step('cover')] },
      ['edges', 'break-out'],
    ],
    [
      'dirt nobody looked for',
      {},
      { contamination: undefined as never },
      { cautions: ['lead-asbestos'] },
      [],
    ],
    ['a chased crack', {}, {}, { steps: [step('chase-crack')] }, ['break-out']],
    ['a freed bar', {}, {}, { steps: [step('free-bar')] }, ['break-out']],
    ['breaking out, perhaps', {}, {}, { methods: ['grind', 'break-out'] }, ['break-out']],
    ['a stop', {}, {}, { holds: [hold('stop', 'engineer')] }, ['break-out']],
    ['a stop, perhaps', {}, {}, { possibleHolds: [hold('stop', 'engineer')] }, ['break-out']],
    ['what is only found out first', {}, {}, { holds: [hold('find-out-first', 'laboratory')] }, []],
    ['shot', {}, {}, { methods: ['shotblast'] }, ['blasting']],
    ['grit', {}, {}, { methods: ['abrasive-blast'] }, ['blasting']],
    ['grit after breaking', {}, {}, { steps: [step('blast-clean')] }, ['blasting']],
    ['a jet', {}, {}, { methods: ['water-jet'] }, ['blasting']],
    [
      'an old coating, perhaps',
      { warnings: { yes: [], maybe: ['old-coating-or-adhesive'] } },
      {},
      {},
      ['old-coating'],
    ],
    [
      'a coating in what is ground',
      {},
      { contamination: { yes: ['thin-coating'], maybe: [] } },
      { cautions: ['lead-asbestos'] },
      ['old-coating'],
    ],
    ...(['growth', 'salt-bloom', 'oil'] as const).map((each): Case<LimitId> => [
      `what people put acid on: ${each}`,
      {},
      { contamination: { yes: [each], maybe: [] } },
      {},
      ['cleaners'],
    ]),
    [
      'a coating that only may be there',
      {},
      { contamination: { yes: [], maybe: ['thin-coating'] } },
      { cautions: ['lead-asbestos'] },
      [],
    ],
    [
      'a coating that nothing touches',
      {},
      { contamination: { yes: ['thin-coating'], maybe: [] } },
      {},
      [],
    ],
  ])('%s', (_, moreSite, moreZone, more, expected) => {
    expect(limitsHere({ ...site, ...moreSite }, { ...zone, ...moreZone }, advised(more))).toEqual(
      expected,
    );
  });
  it('gravest first', () => {
    expect(limitIds[0]).toBe('edges');
    const all = limitsHere({}, {}, advised({ methods: ['shotblast', 'break-out'] }));
    expect(all).toEqual(limitIds.filter((id) => id !== 'cleaners'));
  });
});
