import { describe, expect, it } from 'vitest';
import { testsFor } from '$lib/advice/find-tests';
import { doubtfulPast, depthDoubt } from '$lib/advice/doubt';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questionIds, type QuestionId } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import { adviceOn, type SiteChange, type ZoneChange } from '../helpers/settled';

const found = (zone: ZoneChange, site: SiteChange) =>
  adviceOn(zone, site).findOut.map(({ question, test }) => `${question} by ${test}`);

// Trade page 5, the last column, and page 4. Common practice, no published source.
describe('what has to be found out', () => {
  const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
  const stopped = (why: string): ZoneChange => ({ stopped: [why] });
  it.each<[string, ZoneChange, SiteChange, readonly string[]]>([
    ['nothing', {}, {}, []],
    ['a map of cracks', {}, { warnings: ['map-cracking'] }, ['warnings by petrography']],
    [
      'an old coating',
      {},
      { warnings: ['old-coating-or-adhesive'] },
      ['warnings by lead-asbestos-test'],
    ],
    ['cables', spall, { warnings: ['buried-services'] }, ['warnings by locate-services']],
    [
      'of a laboratory, both',
      {},
      { warnings: ['map-cracking', 'old-coating-or-adhesive'] },
      ['warnings by petrography', 'warnings by lead-asbestos-test'],
    ],
    [
      'of an engineer, both',
      { cracks: 'moving' },
      { warnings: ['fire-or-chemical'] },
      ['warnings by ask-engineer', 'cracks by ask-engineer'],
    ],
    ['salt where no steel shows', {}, { salts: 'de-icing' }, []],
    ['fire', {}, { warnings: ['fire-or-chemical'] }, ['warnings by ask-engineer']],
    [
      'tendons and something standing on it: one engineer',
      spall,
      { warnings: ['tendons-possible', 'holds-something-up'] },
      ['warnings by ask-engineer'],
    ],
    ['a crack that moves', { cracks: 'moving' }, {}, ['cracks by ask-engineer']],
    [
      'how thick it is, where nobody knows',
      spall,
      { thickness: 'unknown' },
      ['thickness by measure-thickness'],
    ],
    [
      'how deep it is, where the thickness is known',
      spall,
      { thickness: 100 },
      ['depth by measure-depth'],
    ],
    [
      'a hole past half, by its band: how deep, as the thickness is given',
      { ...spall, depth: 'over-50' },
      { thickness: 100 },
      ['depth by measure-depth'],
    ],
    [
      'a hole past half, both measured: nothing more',
      { ...spall, depth: 'over-50', depthMm: 60 },
      { thickness: 100 },
      [],
    ],
    ['damaged through, the thickness given', { depth: 'through' }, { thickness: 100 }, []],
    [
      'damaged through, a thickness that nobody knows',
      { depth: 'through' },
      { thickness: 'unknown' },
      ['thickness by measure-thickness'],
    ],
    [
      'rust and salt',
      { steel: 'rust-stain' },
      { salts: 'de-icing' },
      ['salts by chloride-test', 'steel by sound-round-stain'],
    ],
    [
      'rust at a crack',
      { steel: 'rust-stain', cracks: 'hairline' },
      {},
      ['steel by sound-round-stain'],
    ],
    [
      'rust under a film',
      { steel: 'rust-stain', finish: 'thin-film' },
      {},
      ['steel by sound-round-stain'],
    ],
    ['rust under an overlay', { steel: 'rust-stain' }, {}, ['steel by sound-round-stain']],
    [
      'bloom under a film',
      { contamination: ['salt-bloom'], finish: 'sealer' },
      {},
      ['contamination by find-water'],
    ],
    [
      'a bar past the limit',
      { steel: 'corroded', barLoss: 'one-bar' },
      {},
      ['barLoss by ask-engineer'],
    ],
    ['a rusty bar nobody measured', { steel: 'corroded' }, {}, ['barLoss by measure-bar']],
    ['a rusty bar within the limit', { steel: 'corroded', barLoss: 'within-limit' }, {}, []],
    [
      'a clean bar where salt is',
      { steel: 'exposed' },
      { salts: 'sea-or-pool' },
      ['salts by chloride-test'],
    ],
    [
      'a hairline where it freezes often',
      { cracks: 'hairline' },
      { freezeThaw: 'often' },
      ['cracks by tap-crack'],
    ],
    ['a hairline elsewhere', { cracks: 'hairline' }, {}, []],
    ['an open crack in frost is chased', { cracks: 'open' }, { freezeThaw: 'often' }, []],
    ['oil', { contamination: ['oil'] }, {}, ['contamination by water-drop']],
    ['what goes on', { finish: 'undecided' }, {}, ['finish by ask-maker']],
    ['a bar that a patch came upon', stopped('bar-unexpected'), {}, ['steel by look-at-steel']],
    ['a hollow below it', stopped('hollow-below'), {}, ['looseness by hammer-tap']],
    ['no sound base', stopped('no-sound-base'), {}, ['depth by measure-depth']],
    ['a patch that went too deep', stopped('over-deep'), {}, ['depth by measure-depth']],
    [
      'the same in a slab of a thickness that nobody knows',
      stopped('over-deep'),
      { thickness: 'unknown' },
      ['thickness by measure-thickness'],
    ],
  ])('%s', (_, zone, site, expected) => {
    expect(found(zone, site)).toEqual(expected);
  });
});

// The cheapest test of each: common practice, no published source.
describe('the test of a question', () => {
  const none = { yes: [], maybe: [] } as const;
  const tests = (question: QuestionId, site: SiteAnswers = {}, zone: ZoneAnswers = {}) =>
    testsFor(question, site, zone).join(' ');
  it.each<[QuestionId, string]>([
    ['element', 'look-round'],
    ['setting', 'look-round'],
    ['salts', 'ask-owner'],
    ['freezeThaw', 'local-weather'],
    ['thickness', 'measure-thickness'],
    ['depth', 'measure-depth'],
    ['looseness', 'hammer-tap'],
    ['texture', 'look-close'],
    ['crackLength', 'measure-area'],
    ['steel', 'look-at-steel'],
    ['barLoss', 'measure-bar'],
    ['barCover', 'measure-bar'],
    ['barDiameter', 'measure-bar'],
    ['barSpacing', 'measure-bar'],
    ['barLength', 'measure-bar'],
    ['finish', 'ask-owner'],
    ['makerProfile', 'ask-maker'],
    ['makerMoisture', 'ask-maker'],
    ['area', 'measure-area'],
    ['borderLength', 'measure-area'],
    // Nothing said yet: all of what tells.
    ['cracks', 'tap-crack crack-gauge'],
    ['warnings', 'look-round lead-asbestos-test'],
    ['contamination', 'water-drop look-close'],
  ])('%s: %s', (question, expected) => {
    expect(tests(question)).toBe(expected);
    expect(questionIds).toContain(question);
  });
  it('watches a crack only where it may move', () => {
    expect(tests('cracks', {}, { cracks: ['hairline', 'open'] })).toBe('tap-crack');
    expect(tests('cracks', {}, { cracks: ['hairline', 'moving'] })).toBe('tap-crack crack-gauge');
  });
  it('sends to a laboratory only what may be an old coating', () => {
    expect(tests('warnings', { warnings: { yes: [], maybe: ['map-cracking'] } })).toBe(
      'look-round',
    );
    expect(tests('warnings', { warnings: { yes: [], maybe: ['old-coating-or-adhesive'] } })).toBe(
      'look-round lead-asbestos-test',
    );
  });
  it('drops water on what beads it, and looks at what a look can find', () => {
    const on = (maybe: NonNullable<ZoneAnswers['contamination']>['maybe']) =>
      tests('contamination', {}, { contamination: { ...none, maybe } });
    expect(on(['oil'])).toBe('water-drop');
    expect(on(['thin-coating'])).toBe('water-drop look-close');
    expect(on(['growth'])).toBe('look-close');
    expect(on(['oil', 'growth'])).toBe('water-drop look-close');
  });
});

// FHWA checklist 9 (figure `depth.partial-limit`).
it('the depth past which a patch is doubtful is a third of the slab', () => {
  const { steps } = adviceOn({ depth: '20-to-50', looseness: 'hollow' }, { thickness: 150 });
  expect(doubtfulPast(steps)).toBe(150 * valueOf('depth.partial-limit'));
  expect(depthDoubt(steps)?.rule).toBe('depth-past-third');
  expect(doubtfulPast(adviceOn().steps)).toBeNull();
  expect(depthDoubt(adviceOn().steps)).toBeUndefined();
});
