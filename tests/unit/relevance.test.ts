import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { askedQuestions, skipReasons, whyNotAsked, type SkipReason } from '$lib/advice/relevance';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';

/** Every value a zone question can take once nothing is open. */
const everyChoice: Readonly<Partial<Record<QuestionId, readonly Partial<SettledZone>[]>>> = {
  depth: choicesOf('depth').map((depth) => ({ depth })),
  looseness: choicesOf('looseness').map((looseness) => ({ looseness })),
  contamination: [
    ...choicesOf('contamination').map((one) => ({ contamination: [one] })),
    { contamination: [] },
    { contamination: [...choicesOf('contamination')] },
  ],
  texture: choicesOf('texture').map((texture) => ({ texture })),
  cracks: choicesOf('cracks').map((cracks) => ({ cracks })),
  steel: choicesOf('steel').map((steel) => ({ steel })),
  barLoss: choicesOf('barLoss').map((barLoss) => ({ barLoss })),
  finish: choicesOf('finish').map((finish) => ({ finish })),
};

const outcome = (site: SettledSite, zone: SettledZone) => {
  const { verdict, method, underneath, steps } = adviseSettled(site, zone);
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
    for (const { site, zone } of fc.sample(situations, { numRuns: 12_000, seed: 20_251 })) {
      const [siteAnswers, zoneAnswers] = asAnswers(site, zone);
      const expected = outcome(site, zone);
      for (const [question, changes] of Object.entries(everyChoice)) {
        const reason = whyNotAsked(question as QuestionId, siteAnswers, zoneAnswers);
        if (!reason) continue;
        reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
        for (const change of changes) {
          const { depthMm: measured, ...rest } = zone;
          const other: SettledZone = {
            ...rest,
            ...(measured !== undefined && question !== 'depth' && { depthMm: measured }),
            ...change,
          };
          expect(outcome(site, other), `${question} skipped for ${reason}`).toBe(expected);
        }
      }
    }
    // Crack length is in no settled zone: it sizes the work. Every other reason was met.
    expect([...reasons.keys()].sort()).toEqual(
      skipReasons.filter((reason) => reason !== 'no-cracks').sort(),
    );
  });

  it('is asked again as soon as one possibility needs it', () => {
    const zone: ZoneAnswers = { depth: ['under-3'], looseness: ['hollow'] };
    expect(whyNotAsked('texture', {}, zone)).toBe('broken-out-anyway');
    expect(whyNotAsked('texture', {}, { ...zone, looseness: ['hollow', 'tight'] })).toBe(null);
    expect(whyNotAsked('crackLength', {}, { cracks: ['none', 'hairline'] })).toBe(null);
    expect(whyNotAsked('crackLength', {}, { cracks: ['none'] })).toBe('no-cracks');
    expect(whyNotAsked('barLoss', {}, { steel: ['exposed', 'corroded'] })).toBe(null);
    expect(whyNotAsked('looseness', {}, { depth: ['over-50', 'through'] })).toBe(null);
  });

  it('never rests on an answer that was not given', () => {
    const asked = askedQuestions({}, {});
    expect(asked).toHaveLength(16);
  });

  it('leaves the area, which every plan needs', () => {
    const site: SiteAnswers = { warnings: { yes: ['fire-or-chemical'], maybe: [] } };
    expect(askedQuestions(site, {}).filter((id) => everyChoice[id])).toEqual([]);
    expect(askedQuestions(site, {})).toContain('area');
  });
});
