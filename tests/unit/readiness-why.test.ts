import { describe, expect, it } from 'vitest';
import type { CheckId } from '$lib/answers/readiness-record';
import { checksFor, type CheckSituation } from '$lib/readiness/needs';

type Change = {
  site?: Partial<CheckSituation['site']>;
  zone?: Partial<CheckSituation['zone']>;
  steps?: CheckSituation['steps'];
};
const needOf = (check: CheckId, { site, zone, steps = [] }: Change) =>
  checksFor({
    site: { element: 'slab', setting: 'open', salts: 'none', ...site },
    zone: { steel: 'none-seen', finish: 'overlay', area: 5, contamination: [], ...zone },
    steps,
  }).find((need) => need.check === check);

/** What a senior gives as the reason. Common practice, no source. */
describe('why a check is called for', () => {
  it.each<[CheckId, Change, string, string]>([
    ['sounding', {}, 'needed', 'sound-everywhere'],
    ['edges', { steps: ['saw-cut'] }, 'needed', 'edge-square'],
    ['bars-free', { zone: { steel: 'exposed' } }, 'needed', 'bar-gripped-round'],
    ['bars-clean', { zone: { steel: 'corroded' } }, 'needed', 'rust-off'],
    [
      'chloride',
      { site: { salts: 'de-icing' }, zone: { steel: 'rust-stain' } },
      'needed',
      'salts-reach-steel',
    ],
    [
      'half-cell',
      { site: { salts: 'de-icing' }, zone: { steel: 'rust-stain' } },
      'if-specified',
      'potential-if-specified',
    ],
    ['carbonation', { zone: { steel: 'corroded' } }, 'needed', 'air-reaches-steel'],
    ['carbonation', { zone: { steel: 'rust-stain' } }, 'if-specified', 'air-if-specified'],
    ['profile', { zone: { makerProfile: 3 } }, 'needed', 'profile-from-sheet'],
    ['profile', {}, 'needed', 'profile-for-finish'],
    ['profile', { zone: { finish: 'undecided' } }, 'needed', 'finish-open'],
    ['pull-off', { zone: { finish: 'undecided', area: 99 } }, 'if-specified', 'finish-open'],
    ['pull-off', { zone: { finish: 'thin-film', area: 99 } }, 'if-specified', 'thin-if-specified'],
    ['pull-off', { zone: { finish: 'sealer', area: 99 } }, 'if-specified', 'thin-if-specified'],
    ...(['build-coat', 'self-levelling', 'thin-overlay', 'overlay', 'rebuild'] as const).flatMap(
      (finish): [CheckId, Change, string, string][] => [
        ['pull-off', { zone: { finish, area: 99 } }, 'needed', 'bond-carries-finish'],
        ['pull-off', { zone: { finish } }, 'if-specified', 'small-if-specified'],
      ],
    ),
    ['ph', { zone: { contamination: ['oil'] } }, 'needed', 'chemicals-left'],
    ['dust-tape', {}, 'needed', 'dust-breaks-bond'],
    ['water-drop', {}, 'needed', 'drop-shows-film'],
    ['absorption', {}, 'needed', 'must-drink'],
    ['plastic-sheet', { zone: { makerMoisture: 'dry' } }, 'needed', 'sheet-wants-dry'],
    ['plastic-sheet', { zone: { finish: 'undecided' } }, 'if-specified', 'finish-open'],
    ['plastic-sheet', { zone: { finish: 'sealer' } }, 'if-specified', 'sealer-if-specified'],
    ['plastic-sheet', { zone: { finish: 'thin-film' } }, 'needed', 'coating-hates-damp'],
    ...(['build-coat', 'self-levelling'] as const).map(
      (finish): [CheckId, Change, string, string] => [
        'humidity',
        { site: { setting: 'indoors' }, zone: { finish } },
        'needed',
        'film-traps-moisture',
      ],
    ),
    ['surface-damp', {}, 'needed', 'damp-for-cement'],
    ['surface-damp', { zone: { makerMoisture: 'damp' } }, 'needed', 'sheet-wants-damp'],
    ['slurry-ph', { steps: ['saw-cut'] }, 'needed', 'slurry-harms'],
    ['fill-cured', { steps: ['fill-level'] }, 'needed', 'fill-cures-apart'],
    ['dew-point', {}, 'needed', 'cold-under-cement'],
    ['dew-point', { zone: { finish: 'build-coat' } }, 'needed', 'dew-under-cover'],
    ['dew-point', { site: { setting: 'indoors' } }, 'if-specified', 'dew-if-specified'],
    ['open-time', {}, 'needed', 'stale-after-a-day'],
  ])('%s with %j: %s, %s', (check, change, level, rule) => {
    expect(needOf(check, change)).toMatchObject({ level, why: { rule } });
  });

  it.each<[CheckId, Change]>([
    ['humidity', { site: { setting: 'indoors' }, zone: { finish: 'thin-film' } }],
    [
      'humidity',
      { site: { setting: 'indoors' }, zone: { finish: 'build-coat', makerMoisture: 'damp' } },
    ],
    ['humidity', { site: { setting: 'sheltered' }, zone: { finish: 'build-coat' } }],
    ['plastic-sheet', { zone: { finish: 'build-coat', makerMoisture: 'damp' } }],
    ['surface-damp', { zone: { makerMoisture: 'dry' } }],
    ['bars-clean', { zone: { steel: 'none-seen' } }],
    ['fill-cured', { steps: ['saw-cut'] }],
    ['edges', { steps: ['fill-level'] }],
  ])('%s is not called for with %j', (check, change) => {
    expect(needOf(check, change)).toBeUndefined();
  });

  it('says what it is judged by, and what it hangs on', () => {
    expect(needOf('profile', {})?.passes).toEqual(['csp.needs.overlay']);
    expect(needOf('profile', {})?.why).toEqual({
      rule: 'profile-for-finish',
      facts: { finish: 'overlay', steel: 'none-seen' },
      figures: ['csp.needs.overlay'],
    });
    expect(needOf('profile', { zone: { makerProfile: 3 } })).toMatchObject({
      passes: [],
      why: { facts: { finish: 'overlay', steel: 'none-seen', least: 3 } },
    });
    expect(needOf('pull-off', {})).toMatchObject({
      passes: ['pulloff.least-tests', 'pulloff.glue-void', 'pulloff.confidence'],
      why: { figures: ['pulloff.large-area'] },
    });
    expect(needOf('pull-off', { zone: { area: 50 } })?.why.figures).toEqual(['pulloff.large-area']);
    expect(needOf('dust-tape', {})?.passes).toEqual(['dust.most', 'dust.scale']);
    expect(needOf('sounding', {})?.why).not.toHaveProperty('figures');
  });
});
