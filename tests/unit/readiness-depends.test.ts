import { describe, expect, it } from 'vitest';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import type { CheckId } from '$lib/answers/readiness-record';
import { needsOf } from '$lib/readiness/open-needs';
import type { StepId } from '$shared/methods';

const site = {
  ...{ element: ['slab'], setting: ['open'], salts: ['none'] },
  warnings: { yes: [], maybe: [] },
};
const zone = {
  ...{ steel: ['none-seen'], finish: ['overlay'], area: 5 },
  contamination: { yes: [], maybe: [] },
};
/** What a zone needs with some answers changed, some work certain, some only possible. */
function needs(change: object = {}, certain: StepId[] = [], perhaps: StepId[] = []) {
  const all = { ...site, ...zone, ...change };
  const steps = (ids: StepId[]) => ids.map((id) => ({ id }));
  return needsOf(all as unknown as SiteAnswers, all as unknown as ZoneAnswers, {
    steps: steps(certain),
    outcomes: [{ example: { steps: steps([...certain, ...perhaps]) } }],
  });
}
const one = (check: CheckId, ...of: Parameters<typeof needs>) => {
  const found = needs(...of).needs.find((need) => need.check === check);
  return found && [found.level, found.certain, found.depends];
};

/** Which answer would settle whether it is needed. Common practice, no source. */
describe('a check that may be needed', () => {
  const coat = { finish: ['build-coat'] };
  it.each<[CheckId, string, object]>([
    ['humidity', 'element', { ...coat, setting: ['indoors'], element: ['slab', 'wall', 'soffit'] }],
    ['humidity', 'setting', { ...coat, setting: ['indoors', 'sheltered', 'open'] }],
    ['dew-point', 'setting', { setting: ['indoors', 'open'] }],
    ['chloride', 'salts', { steel: ['exposed'], salts: ['none', 'de-icing', 'sea-or-pool'] }],
    ['bars-clean', 'steel', { steel: ['none-seen', 'exposed'] }],
    ['surface-damp', 'finish', { finish: ['overlay', 'build-coat'] }],
    ['ph', 'contamination', { contamination: { yes: [], maybe: ['oil'] } }],
    ['ph', 'contamination', { contamination: undefined }],
  ])('%s hangs on %s', (check, question, change) => {
    expect(one(check, change)).toEqual(['needed', false, [question]]);
  });
  it.each<[CheckId, StepId]>([
    ['edges', 'saw-cut'],
    ['slurry-ph', 'saw-cut'],
    ['slurry-ph', 'final-wash'],
    ['fill-cured', 'fill-level'],
  ])('%s hangs on how loose it is, where only that calls for %s', (check, step) => {
    expect(one(check, {}, [], ['vacuum', step])).toEqual(['needed', false, ['looseness']]);
    expect(one(check, {}, ['vacuum', step])).toEqual(['needed', true, []]);
    expect(one(check, {}, ['vacuum'])).toBeUndefined();
  });
  it('is asked for slurry that the jet may make where a grinder is sure', () => {
    expect(one('slurry-ph', {}, ['grind'], ['water-jet'])?.slice(0, 2)).toEqual(['needed', false]);
  });
  it('hangs on nothing else that is open', () => {
    const open = { finish: ['overlay', 'build-coat'] };
    expect(one('surface-damp', open, [], ['saw-cut'])).toEqual(['needed', false, ['finish']]);
  });
  it('is none where every answer rules it out', () => {
    expect(
      one('ph', { contamination: { yes: ['growth'], maybe: ['salt-bloom'] } }),
    ).toBeUndefined();
    expect(one('ph', { contamination: { yes: ['oil'], maybe: [] } })).toEqual([
      ...['needed', true, []],
    ]);
  });
});

describe('what a zone is judged by', () => {
  it('goes by the worst that is possible: rust, tendons, a finish that wants it dry', () => {
    const of = (change: object) => {
      const { corroded, tendons, wantsDry, cement, finishes } = needs(change);
      return { corroded, tendons, wantsDry, cement, finishes };
    };
    const plain = { corroded: false, tendons: false, wantsDry: false, cement: true };
    expect(of({})).toEqual({ ...plain, finishes: ['overlay'] });
    expect(of({ steel: ['exposed'] }).corroded).toBe(false);
    expect(of({ steel: ['exposed', 'corroded'] }).corroded).toBe(true);
    expect(of({ steel: undefined }).corroded).toBe(true);
    expect(of({ warnings: { yes: ['tendons-possible'], maybe: [] } }).tendons).toBe(true);
    expect(of({ finish: ['overlay', 'build-coat'] })).toMatchObject({
      ...{ wantsDry: true, cement: false },
      finishes: ['overlay', 'build-coat'],
    });
    expect(of({ finish: ['build-coat'] })).toMatchObject({ wantsDry: true, cement: false });
    expect(of({ finish: undefined }).finishes).toEqual(choicesOf('finish'));
  });
});
