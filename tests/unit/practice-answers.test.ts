import { describe, expect, it } from 'vitest';
import { answersOf, type Case } from '$lib/practice/case';

const bare = {
  id: 'tin-yard',
  site: {
    ...{ element: 'slab', setting: 'open', salts: 'none', freezeThaw: 'rare' },
    ...{ thickness: 'unknown', warnings: ['map-cracking'] },
  },
  zone: {
    ...{ depth: 'film', looseness: 'tight', contamination: ['growth'], texture: 'sandy' },
    ...{ cracks: 'none', steel: 'none-seen', finish: 'sealer', area: 30 },
  },
};
const site = {
  ...{ element: ['slab'], setting: ['open'], salts: ['none'], freezeThaw: ['rare'] },
  ...{ thickness: 'unknown', warnings: { yes: ['map-cracking'], maybe: [] } },
};
const zone = {
  ...{ depth: ['film'], looseness: ['tight'], contamination: { yes: ['growth'], maybe: [] } },
  ...{ texture: ['sandy'], cracks: ['none'], steel: ['none-seen'], finish: ['sealer'], area: 30 },
};

describe('the truth of a case as answers', () => {
  it('is one choice each, and nothing of what there is nothing of', () => {
    expect(answersOf(bare as unknown as Case)).toStrictEqual({ site, zone });
  });
  it('has the depth as it was measured, the bar, the sheet and the border', () => {
    const more = {
      ...{ depth: '20-to-50', depthMm: 40, steel: 'corroded', barLoss: 'within-limit' },
      ...{ barCover: 30, barDiameter: 12, makerProfile: 3, makerMoisture: 'dry', border: 0 },
    };
    const measured = { ...bare, zone: { ...bare.zone, ...more } };
    expect(answersOf(measured as unknown as Case)).toStrictEqual({
      site,
      zone: {
        ...{ ...zone, depth: 40, steel: ['corroded'], barLoss: ['within-limit'] },
        ...{ barCover: 30, barDiameter: 12, borderLength: 0 },
        ...{ makerProfile: ['csp-3'], makerMoisture: ['dry'] },
      },
    });
  });
});
