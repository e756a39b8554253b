import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import { choicesOf, followUps, questionIds, type QuestionId } from '$lib/answers/questions';
import { onlyCompletion } from '$lib/advice/completions';
import {
  askedQuestions,
  skipReasons,
  usuallyAsked,
  whyNotAsked,
  type SkipReason,
} from '$lib/advice/relevance';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { rounds } from '../helpers/rounds';

/** Every certain answer to a zone question; a few lengths where it is a number. */
const everyChoice: Readonly<Partial<Record<QuestionId, readonly ZoneAnswers[]>>> = {
  depth: choicesOf('depth').map((depth) => ({ depth: [depth] })),
  looseness: choicesOf('looseness').map((looseness) => ({ looseness: [looseness] })),
  contamination: [
    ...choicesOf('contamination').map((one) => ({ contamination: { yes: [one], maybe: [] } })),
    { contamination: { yes: [], maybe: [] } },
    { contamination: { yes: [...choicesOf('contamination')], maybe: [] } },
  ],
  texture: choicesOf('texture').map((texture) => ({ texture: [texture] })),
  cracks: choicesOf('cracks').map((cracks) => ({ cracks: [cracks] })),
  crackLength: [{ crackLength: 1 }, { crackLength: 40 }],
  steel: choicesOf('steel').map((steel) => ({ steel: [steel] })),
  barLoss: choicesOf('barLoss').map((barLoss) => ({ barLoss: [barLoss] })),
  barCover: [{ barCover: 10 }, { barCover: 80 }],
  barDiameter: [{ barDiameter: 6 }, { barDiameter: 40 }],
  barSpacing: [{ barSpacing: 100 }, { barSpacing: 300 }],
  barLength: [{ barLength: 1 }, { barLength: 30 }],
  finish: choicesOf('finish').map((finish) => ({ finish: [finish] })),
  makerProfile: choicesOf('makerProfile').map((grade) => ({ makerProfile: [grade] })),
  makerMoisture: choicesOf('makerMoisture').map((moisture) => ({ makerMoisture: [moisture] })),
  borderLength: [{ borderLength: 0 }, { borderLength: 12 }],
};

const outcome = (site: SiteAnswers, zone: ZoneAnswers) => {
  const sure = onlyCompletion({ ...site, ...zone });
  if (!sure) throw new Error('an answer is open');
  const { verdict, method, underneath, steps } = adviseSettled(sure.site, sure.zone);
  return JSON.stringify([verdict, method, underneath, steps.map(({ id }) => id)]);
};

const asAnswers = (site: SettledSite, zone: SettledZone): [SiteAnswers, ZoneAnswers] => [
  {
    element: [site.element],
    setting: [site.setting],
    salts: [site.salts],
    freezeThaw: [site.freezeThaw],
    thickness: site.thickness,
    warnings: { yes: site.warnings, maybe: [] },
  },
  {
    depth: zone.depthMm ?? [zone.depth],
    looseness: [zone.looseness],
    contamination: { yes: zone.contamination, maybe: [] },
    texture: [zone.texture],
    cracks: [zone.cracks],
    steel: [zone.steel],
    finish: [zone.finish],
    area: zone.area,
    // Half of the readers have no sheet at hand; the others it is asked.
    ...(zone.area === 0.5 && { makerProfile: ['no-sheet'] as const }),
  },
];

const one = <T>(...values: readonly T[]) => fc.constantFrom(...values);

const situations = fc
  .record({
    thickness: one<number | 'unknown'>('unknown', 60, 100, 150),
    depthMm: one(undefined, undefined, 2, 12, 48, 55, 80, 140),
    band: one(...choicesOf('depth')),
    element: one(...choicesOf('element')),
    setting: one(...choicesOf('setting')),
    salts: one(...choicesOf('salts')),
    freezeThaw: one(...choicesOf('freezeThaw')),
    warnings: one([], [], [], ...choicesOf('warnings').map((warning) => [warning])),
    looseness: one(...choicesOf('looseness')),
    contamination: fc.subarray([...choicesOf('contamination')]),
    texture: one(...choicesOf('texture')),
    cracks: one(...choicesOf('cracks')),
    steel: one(...choicesOf('steel')),
    finish: one(...choicesOf('finish')),
    area: one<number | 'unknown'>('unknown', 0.5, 40),
  })
  .map((all): { site: SettledSite; zone: SettledZone } => {
    const { thickness, depthMm, band, element, setting, salts, freezeThaw, warnings, ...rest } =
      all;
    return {
      site: { thickness, element, setting, salts, freezeThaw, warnings },
      zone: {
        ...rest,
        depth: depthMm === undefined ? band : bandOf(depthMm, thickness),
        ...(depthMm !== undefined && { depthMm }),
      },
    };
  });

describe('a question that is not asked', () => {
  it('could not have changed verdict, method or steps, whatever its answer', () => {
    const reasons = new Map<SkipReason, number>();
    for (const { site, zone } of fc.sample(situations, {
      numRuns: rounds(400, 12_000),
      seed: 20_251,
    })) {
      const [siteAnswers, zoneAnswers] = asAnswers(site, zone);
      const expected = outcome(siteAnswers, zoneAnswers);
      for (const [question, changes] of Object.entries(everyChoice)) {
        const reason = whyNotAsked(question as QuestionId, siteAnswers, zoneAnswers);
        if (!reason) continue;
        reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
        for (const change of changes)
          expect(
            outcome(siteAnswers, { ...zoneAnswers, ...change }),
            `${question} skipped for ${reason}`,
          ).toBe(expected);
      }
    }
    expect([...reasons.keys()].sort()).toEqual([...skipReasons].sort());
  });

  it('is asked again as soon as one possibility needs it', () => {
    const zone: ZoneAnswers = { depth: ['6-to-20'], looseness: ['hollow'] };
    expect(whyNotAsked('texture', {}, zone)).toBe('broken-out-anyway');
    expect(whyNotAsked('texture', {}, { ...zone, looseness: ['hollow', 'tight'] })).toBe(null);
    // A skin of a few millimetres that let go is cut or shot off, and the texture says which.
    expect(whyNotAsked('texture', {}, { ...zone, depth: ['3-to-6', '6-to-20'] })).toBe(null);
    expect(whyNotAsked('crackLength', {}, { cracks: ['none', 'hairline'] })).toBe(null);
    expect(whyNotAsked('crackLength', {}, { cracks: ['none'] })).toBe('no-cracks');
    expect(whyNotAsked('barLoss', {}, { steel: ['exposed', 'rust-stain'] })).toBe(null);
    expect(whyNotAsked('barCover', {}, { steel: ['exposed', 'rust-stain'] })).toBe(null);
    expect(whyNotAsked('barCover', {}, { steel: ['rust-stain'] })).toBe('no-bar-shows');
    // Under what is not stiff, ground that moved is found out about, and the rest still counts.
    const moved: SiteAnswers = { warnings: { yes: ['settled-or-rocking'], maybe: [] } };
    expect(whyNotAsked('steel', moved, { finish: ['overlay', 'sealer'] })).toBe(null);
    expect(whyNotAsked('steel', moved, { finish: ['overlay'] })).toBe('ground-first');
    expect(whyNotAsked('looseness', {}, { depth: ['over-50', 'through'] })).toBe(null);
  });

  it('never rests on an answer that was not given', () => {
    expect(askedQuestions({}, {})).toEqual(questionIds);
  });

  // Common practice, no source: most surfaces show no bar and no crack, and few people have the sheet.
  it('counts at the start what most are asked, and what a rarer answer brings once it is given', () => {
    const start = usuallyAsked({}, {});
    expect(start).toEqual(questionIds.filter((id) => !followUps.includes(id)));
    expect(start).toHaveLength(16);
    const bar = usuallyAsked({}, { steel: ['corroded'] });
    expect(bar.length - start.length).toBe(5);
    // Never more than are asked in the end, never fewer than with every answer given.
    expect(
      usuallyAsked({}, { steel: ['corroded'], cracks: ['hairline'], makerProfile: ['csp-3'] }),
    ).toEqual(
      askedQuestions({}, { steel: ['corroded'], cracks: ['hairline'], makerProfile: ['csp-3'] }),
    );
  });

  it('leaves the area, which every plan needs', () => {
    const site: SiteAnswers = { warnings: { yes: ['fire-or-chemical'], maybe: [] } };
    expect(askedQuestions(site, {}).filter((id) => everyChoice[id])).toEqual([]);
    expect(askedQuestions(site, {})).toContain('area');
  });
});
