import { describe, expect, it } from 'vitest';
import { choicesOf } from '$lib/answers/questions';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { checksFor, isCement, type CheckSituation } from '$lib/readiness/needs';

const plain: CheckSituation = {
  site: { element: 'slab', setting: 'open', salts: 'none' },
  zone: { steel: 'none-seen', finish: 'overlay', area: 5, contamination: [] },
  steps: [],
};
const zone = (change: Partial<CheckSituation['zone']>) => ({
  ...plain,
  zone: { ...plain.zone, ...change },
});
const levels = (situation: CheckSituation) =>
  Object.fromEntries(checksFor(situation).map(({ check, level }) => [check, level]));

describe('the checks a settled zone calls for', () => {
  it('always: sound, rough enough, clean, open, fresh', () => {
    for (const finish of choicesOf('finish'))
      expect(levels(zone({ finish }))).toMatchObject({
        sounding: 'needed',
        ...(finish !== 'sealer' && { profile: 'needed' }),
        'dust-tape': 'needed',
        'water-drop': 'needed',
        absorption: 'needed',
        'open-time': 'needed',
      });
  });

  // A sealer soaks in: common practice, no source.
  it('no roughness under a sealer but where a machine leaves one, or a sheet asks for it', () => {
    expect(levels(zone({ finish: 'sealer' }))).not.toHaveProperty('profile');
    expect(levels({ ...zone({ finish: 'sealer' }), steps: ['grind'] }).profile).toBe('needed');
    expect(levels(zone({ finish: 'sealer', makerProfile: 2 })).profile).toBe('needed');
  });

  it('of what is not decided yet nobody says that damp spoils it', () => {
    expect(levels(zone({ finish: 'undecided' }))['plastic-sheet']).toBe('if-specified');
  });

  it('bars where they show, rust where they show', () => {
    for (const steel of ['exposed', 'corroded'] as const)
      expect(levels(zone({ steel }))).toMatchObject({
        'bars-free': 'needed',
        'bars-clean': 'needed',
      });
    expect(levels(zone({ steel: 'rust-stain' }))).not.toHaveProperty('bars-free');
  });

  it('chloride and half-cell only where steel and salt meet', () => {
    for (const steel of choicesOf('steel'))
      for (const salts of choicesOf('salts')) {
        const found = levels({ ...zone({ steel }), site: { ...plain.site, salts } });
        const meet = steel !== 'none-seen' && salts !== 'none';
        expect('chloride' in found).toBe(meet);
        expect('half-cell' in found).toBe(meet);
      }
  });

  it('carbonation by need where a bar has corroded, on request where steel is near', () => {
    expect(levels(zone({ steel: 'corroded' })).carbonation).toBe('needed');
    expect(levels(zone({ steel: 'exposed' })).carbonation).toBe('if-specified');
    expect(levels(zone({ steel: 'none-seen' }))).not.toHaveProperty('carbonation');
  });

  it('pull-off under a bonded build-up on a large area, otherwise where it is specified', () => {
    expect(levels(zone({ area: 10 }))['pull-off']).toBe('needed');
    expect(levels(zone({ area: 'unknown' }))['pull-off']).toBe('needed');
    expect(levels(zone({ area: 9.9 }))['pull-off']).toBe('if-specified');
    expect(levels(zone({ area: 50, finish: 'sealer' }))['pull-off']).toBe('if-specified');
  });

  it('dry under coatings, damp under cement', () => {
    const coating = levels(zone({ finish: 'build-coat' }));
    expect(coating['plastic-sheet']).toBe('needed');
    expect(coating).not.toHaveProperty('surface-damp');
    const cement = levels(zone({ finish: 'overlay' }));
    expect(cement['surface-damp']).toBe('needed');
    expect(cement).not.toHaveProperty('plastic-sheet');
  });

  it('cement is what is placed like concrete', () => {
    const cements = choicesOf('finish').filter((finish) => isCement({ finish }));
    expect(cements).toEqual(['thin-overlay', 'overlay', 'rebuild']);
  });

  it('humidity in the slab only under a tight film on an indoor floor', () => {
    const indoors = { ...plain.site, setting: 'indoors' } as const;
    expect(levels({ ...zone({ finish: 'build-coat' }), site: indoors })).toHaveProperty('humidity');
    expect(levels(zone({ finish: 'build-coat' }))).not.toHaveProperty('humidity');
    const wall = { ...indoors, element: 'wall' } as const;
    expect(levels({ ...zone({ finish: 'build-coat' }), site: wall })).not.toHaveProperty(
      'humidity',
    );
  });

  it('pH after degreasing, square edges after sawing', () => {
    expect(levels(zone({ contamination: ['oil'] })).ph).toBe('needed');
    expect(levels(plain)).not.toHaveProperty('ph');
    expect(levels({ ...plain, steps: ['saw-cut'] }).edges).toBe('needed');
    expect(levels(plain)).not.toHaveProperty('edges');
  });

  // Common practice, no source; the margin itself is ISO 8502-4's, as reported.
  it('dew and cold at covering: outdoors and in unheated places, indoors where it is specified', () => {
    for (const setting of ['open', 'sheltered'] as const)
      for (const finish of choicesOf('finish'))
        expect(levels({ ...zone({ finish }), site: { ...plain.site, setting } })).toMatchObject({
          'dew-point': 'needed',
        });
    const indoors = { ...plain.site, setting: 'indoors' } as const;
    for (const finish of choicesOf('finish').filter((id) => id !== 'sealer'))
      expect(levels({ ...zone({ finish }), site: indoors })['dew-point']).toBe('if-specified');
    expect(levels({ ...zone({ finish: 'sealer' }), site: indoors })).not.toHaveProperty(
      'dew-point',
    );
  });

  it('slurry where something wet is cut or washed, a fill where one is laid', () => {
    for (const step of ['saw-cut', 'final-wash', 'pressure-wash', 'degrease', 'water-jet'] as const)
      expect(levels({ ...plain, steps: [step] })['slurry-ph']).toBe('needed');
    expect(levels({ ...plain, steps: ['shotblast', 'vacuum'] })).not.toHaveProperty('slurry-ph');
    expect(levels({ ...plain, steps: ['fill-level'] })['fill-cured']).toBe('needed');
    expect(levels(plain)).not.toHaveProperty('fill-cured');
  });

  // trade.md of this project: the maker's word replaces the table's in the checks too.
  it('what the data sheet asks for counts for more than the table', () => {
    const rough = checksFor(zone({ finish: 'overlay', makerProfile: 3 }));
    expect(rough.find(({ check }) => check === 'profile')).toStrictEqual({
      check: 'profile',
      level: 'needed',
      why: {
        rule: 'profile-from-sheet',
        facts: { finish: 'overlay', steel: 'none-seen', least: 3 },
      },
      passes: [],
    });
    const [sound] = checksFor(plain);
    expect(sound?.why.facts).toStrictEqual({ finish: 'overlay', steel: 'none-seen' });
    const dryOverlay = checksFor(zone({ finish: 'overlay', makerMoisture: 'dry' }));
    expect(dryOverlay.find(({ check }) => check === 'plastic-sheet')?.why.rule).toBe(
      'sheet-wants-dry',
    );
    expect(dryOverlay.some(({ check }) => check === 'surface-damp')).toBe(false);
    const dampCoat = checksFor({
      ...zone({ finish: 'build-coat', makerMoisture: 'damp' }),
      site: { ...plain.site, setting: 'indoors' },
    });
    expect(dampCoat.find(({ check }) => check === 'surface-damp')?.why.rule).toBe(
      'sheet-wants-damp',
    );
    for (const id of ['plastic-sheet', 'humidity'] as const)
      expect(dampCoat.some(({ check }) => check === id)).toBe(false);
    const undecided = checksFor(zone({ finish: 'undecided', makerProfile: 5 }));
    expect(undecided.find(({ check }) => check === 'profile')?.why.rule).toBe('profile-from-sheet');
  });

  // trade.md of this project: damp: sound, profile, pull-off, then wet, then the last look; dry:
  // the same, then the moisture test, then the last vacuuming and the tape; the clock after both.
  it('in the order of the trade, whichever goes on', () => {
    const place = (check: CheckId) => checkIds.indexOf(check);
    const rising = (...ids: CheckId[]) =>
      expect(ids.map(place)).toEqual(ids.map(place).toSorted((one, other) => one - other));
    rising('sounding', 'profile', 'pull-off', 'absorption', 'surface-damp', 'open-time');
    rising('sounding', 'profile', 'pull-off', 'plastic-sheet', 'humidity', 'dust-tape');
    rising('fill-cured', 'plastic-sheet');
    rising('dust-tape', 'dew-point', 'open-time');
  });

  it('comes in the order the checks are done, each once', () => {
    const found = checksFor(zone({ steel: 'corroded', contamination: ['oil'] })).map(
      ({ check }) => check,
    );
    expect(found).toEqual(checkIds.filter((id) => found.includes(id)));
  });
});
