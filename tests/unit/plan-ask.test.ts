import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { askedInZone } from '$lib/plan/ask';
import type { ZoneAnswers } from '$lib/answers/answers';
import { mossyPatio } from '../helpers/sealed-slabs';

const { site, zone } = mossyPatio;
const asked = (more: ZoneAnswers) =>
  askedInZone(adviseZone(site, { ...zone, ...more }, { margins: false }));

// Common practice, no source: nobody bruises, breaks or props where it is only washed.
describe('what an owner asks a contractor about one zone', () => {
  it('a sound patio that is washed: nothing on bruised skin, breaking, or engineers', () => {
    const here = asked({});
    for (const id of ['bruise', 'find', 'far', 'engineer'] as const) expect(here).not.toContain(id);
    expect(here).toEqual(expect.arrayContaining(['method', 'tests', 'closed']));
  });
  it.each<[string, ZoneAnswers]>([
    ['hollow', { depth: 30, looseness: ['hollow'], finish: ['overlay'] }],
    ['perhaps hollow', { depth: 30, looseness: ['tight', 'hollow'], finish: ['overlay'] }],
    [
      'with a bar that lost too much',
      {
        depth: 30,
        looseness: ['hollow'],
        finish: ['overlay'],
        steel: ['corroded'],
        barLoss: ['one-bar'],
      },
    ],
  ])('%s: how the bruised skin comes off, and how far', (_, more) => {
    expect(asked(more)).toEqual(expect.arrayContaining(['find', 'far', 'bruise']));
  });
});
