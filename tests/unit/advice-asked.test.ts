import { describe, expect, it } from 'vitest';
import {
  askedQuestions,
  missingQuestions,
  neverInTheWay,
  usuallyAsked,
  whyNotAsked,
  type SkipReason,
} from '$lib/advice/relevance';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questionIds, type QuestionId, type Warning } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';

const warned = (...yes: Warning[]): SiteAnswers => ({ warnings: { yes, maybe: [] } });
const into = valueOf('patch.into-sound');
const half = 100 * valueOf('depth.full-limit');
const site: SiteAnswers = { thickness: 100 };

// Nobody is asked what can no longer change anything; that no skipped answer would have is proven in
// `relevance.test.ts`. Common practice, no source.
describe('why a question is not asked', () => {
  it.each<[QuestionId, SiteAnswers, ZoneAnswers, SkipReason | null]>([
    ['depth', warned('fire-or-chemical'), {}, 'concrete-itself-harmed'],
    ['finish', warned('fire-or-chemical'), {}, 'concrete-itself-harmed'],
    ['area', warned('fire-or-chemical'), {}, null],
    ['salts', warned('fire-or-chemical'), {}, null],
    ['depth', { warnings: { yes: [], maybe: ['fire-or-chemical'] } }, {}, null],
    ['depth', warned('settled-or-rocking'), { finish: ['overlay'] }, 'ground-first'],
    ['depth', warned('settled-or-rocking'), {}, 'ground-first'],
    ['depth', warned('settled-or-rocking'), { finish: ['sealer'] }, null],
    ['finish', warned('settled-or-rocking'), { finish: ['overlay'] }, null],
    ['depth', warned('settled-or-rocking'), { finish: ['overlay', 'sealer'] }, null],
    ['texture', { element: ['wall'] }, {}, null],
    ['depth', warned('map-cracking'), { finish: ['overlay'] }, null],
    ['looseness', {}, { depth: ['through'] }, 'damaged-through'],
    ['depth', {}, { depth: ['through'] }, null],
    ['looseness', {}, { depth: ['through', 'over-50'] }, null],
    ['looseness', site, { depth: 100 }, 'damaged-through'],
    ['looseness', site, { depth: 99 }, null],
    ['texture', site, { depth: half - into, looseness: ['hollow'] }, 'past-half-thickness'],
    ['looseness', site, { depth: half, looseness: ['hollow'] }, null],
    ['steel', site, { depth: half - into - 1, looseness: ['hollow'] }, null],
    ['steel', site, { depth: half - into, looseness: ['hollow', 'tight'] }, null],
    ['steel', {}, { depth: half, looseness: ['hollow'] }, null],
    ['steel', site, { depth: ['over-50'], looseness: ['hollow'] }, 'past-half-thickness'],
    ['steel', site, { depth: ['20-to-50', 'over-50'], looseness: ['hollow'] }, null],
    ['steel', site, { looseness: ['hollow'] }, null],
    ['steel', site, { depth: ['over-50'] }, null],
    ['texture', {}, { depth: ['6-to-20'], looseness: ['hollow'] }, 'broken-out-anyway'],
    ['texture', {}, { depth: ['6-to-20'], looseness: ['tight'] }, null],
    ['steel', {}, { depth: ['6-to-20'], looseness: ['hollow'] }, null],
    ['crackLength', {}, { cracks: ['none'] }, 'no-cracks'],
    ['crackLength', {}, { cracks: ['hairline'] }, null],
    ['cracks', {}, { cracks: ['none'] }, null],
    ['barLoss', {}, { steel: ['rust-stain'] }, 'no-bar-shows'],
    ['barCover', {}, { steel: ['none-seen'] }, 'no-bar-shows'],
    ['barDiameter', {}, { steel: ['none-seen'] }, 'no-bar-shows'],
    ['barSpacing', {}, { steel: ['none-seen'] }, 'no-bar-shows'],
    ['barLength', {}, { steel: ['none-seen'] }, 'no-bar-shows'],
    ['barLength', {}, { steel: ['none-seen', 'corroded'] }, null],
    ['barLoss', {}, {}, null],
    ['barCover', {}, {}, null],
    ['steel', {}, { steel: ['none-seen'] }, null],
    ['makerProfile', {}, { finish: ['undecided'] }, 'no-finish-yet'],
    ['makerMoisture', {}, { finish: ['undecided'] }, 'no-finish-yet'],
    ['makerMoisture', {}, { finish: ['undecided', 'overlay'] }, null],
    ['makerMoisture', {}, { makerProfile: ['no-sheet'] }, 'no-sheet'],
    ['makerProfile', {}, { makerProfile: ['no-sheet'] }, null],
    ['makerMoisture', {}, { makerProfile: ['no-sheet', 'csp-3'] }, null],
    ['borderLength', { element: ['wall', 'steps'] }, {}, 'no-floor-machine'],
    ['borderLength', { element: ['wall', 'slab'] }, {}, null],
    ['borderLength', {}, {}, null],
    ['area', { element: ['wall'] }, {}, null],
  ])('%s, %j %j: %s', (question, here, zone, expected) => {
    expect(whyNotAsked(question, here, zone)).toBe(expected);
  });

  it.each(['element', 'setting', 'salts', 'freezeThaw', 'thickness', 'warnings', 'area'] as const)(
    '%s is asked whatever the rest says',
    (question) => {
      expect(whyNotAsked(question, warned('fire-or-chemical'), { depth: ['through'] })).toBeNull();
    },
  );
});

describe('the questions asked', () => {
  it('are told in the order of the interview, without those that no longer count', () => {
    const zone: ZoneAnswers = { cracks: ['none'], steel: ['none-seen'], finish: ['undecided'] };
    const skipped = [
      'crackLength',
      'barLoss',
      'barCover',
      'barDiameter',
      'barSpacing',
      'barLength',
      'makerProfile',
      'makerMoisture',
    ];
    expect(askedQuestions({}, zone)).toEqual(questionIds.filter((id) => !skipped.includes(id)));
    expect(
      usuallyAsked({}, { steel: ['exposed'], cracks: ['open'], makerProfile: ['csp-3'] }),
    ).toEqual(questionIds);
    for (const id of ['crackLength', 'barLoss', 'barLength', 'makerMoisture'] as const)
      expect(usuallyAsked({}, {})).not.toContain(id);
    expect(usuallyAsked({}, {})).toContain('makerProfile');
  });
  it('are missing while nothing was said; not sure is an answer', () => {
    expect(missingQuestions({}, {})).toEqual(questionIds);
    const missing = missingQuestions(
      { thickness: 'unknown', element: ['wall', 'soffit'] },
      { cracks: ['none'], area: 5 },
    );
    for (const id of [
      'thickness',
      'element',
      'cracks',
      'area',
      'crackLength',
      'borderLength',
    ] as const)
      expect(missing).not.toContain(id);
    expect(missing).toContain('depth');
  });
  it('stand in nobody’s way where what is not measured is taken as usual', () => {
    expect([...neverInTheWay].sort()).toEqual([
      'barCover',
      'barDiameter',
      'barLength',
      'barSpacing',
      'borderLength',
      'makerMoisture',
      'makerProfile',
    ]);
  });
});
