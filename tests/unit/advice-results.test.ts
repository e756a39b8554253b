import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resultsOf } from '$lib/advice/results';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questions } from '$lib/answers/questions';
import { resultRows } from '$lib/ui/advice/result-rows';
import { formatter } from '../helpers/plain-formatter';
import { sealedSlab } from '../helpers/sealed-slabs';
import { rounds } from '../helpers/rounds';

const say = formatter('metric');
const unsure: SiteAnswers = { warnings: { yes: [], maybe: questions.warnings.choices } };
const rowsOf = (site: SiteAnswers, zone: ZoneAnswers) => {
  const [s, z] = [
    { ...sealedSlab.site, ...unsure, ...site },
    { ...sealedSlab.zone, ...zone },
  ];
  return resultRows(resultsOf('warnings', s, z), say);
};
const rowOf = (rows: ReturnType<typeof rowsOf>, choice: string | null) =>
  rows.find(({ choices }) => choices.includes(choice));

// What each sign calls for is the holds' own (`advice-holds.test.ts`); that no sign reads as leave
// to go ahead is common practice, no source.
describe('what each warning sign would mean', () => {
  const scaled: ZoneAnswers = { depth: 5, looseness: ['fractured'], finish: ['overlay'] };
  const broken: ZoneAnswers = { depth: 30, looseness: ['hollow'], finish: ['overlay'] };
  it.each<[string, ZoneAnswers, string, string]>([
    [
      'a floor that rocks',
      broken,
      'settled-or-rocking',
      'Stop: call a licensed structural engineer',
    ],
    ['fire', scaled, 'fire-or-chemical', 'Stop: call a licensed structural engineer'],
    ['a map of cracks', scaled, 'map-cracking', 'First: a testing laboratory'],
    ['old paint', scaled, 'old-coating-or-adhesive', 'First: a testing laboratory'],
    ['cables where it is broken', broken, 'buried-services', 'First: have cables and pipes marked'],
    [
      'a post on what is broken',
      broken,
      'holds-something-up',
      'Stop: call a licensed structural engineer',
    ],
    [
      'tendons under breaking',
      broken,
      'tendons-possible',
      'Stop: call a licensed structural engineer',
    ],
  ])('%s', (_, zone, sign, line) => {
    const row = rowOf(rowsOf({}, zone), sign);
    expect(row?.brings).toEqual([line]);
    expect(row?.choices).not.toContain(null);
  });

  it('tells the method after what has to come first, and none where there is none', () => {
    const rows = rowsOf({}, scaled);
    expect(rowOf(rows, 'map-cracking')?.means).toBe('Then scarifying');
    expect(rowOf(rows, 'fire-or-chemical')?.means).toBe('');
    expect(rowOf(rows, null)).toMatchObject({ means: 'Scarifying', brings: [] });
  });

  it('tells of a depth what it alone would stop, by whom', () => {
    const site = { ...sealedSlab.site, element: ['suspended-slab'] } as const;
    const zone = { ...sealedSlab.zone, ...scaled, depth: ['3-to-6', '20-to-50'] } as const;
    const rows = resultRows(resultsOf('depth', site, zone), say);
    expect(rowOf(rows, '20-to-50')?.brings).toEqual(['Stop: call a licensed structural engineer']);
    expect(rowOf(rows, '3-to-6')?.brings).toEqual([]);
  });

  // UFC 3-270-03 and 3-270-04: 62 mm of damage and 13 mm into sound concrete are half of 150 mm.
  it('tells from which depth on it stops, within a band that else has to be measured', () => {
    const site = { ...sealedSlab.site, thickness: 150 } as const;
    const zone = { ...sealedSlab.zone, ...broken, depth: ['20-to-50', 'over-50'] } as const;
    const means = (of: SiteAnswers) =>
      rowOf(resultRows(resultsOf('depth', of, zone), say), 'over-50')?.means;
    expect(means(site)).toMatch(/^Then breaking out; from 62.mm on: stop$/);
    expect(means({ ...site, thickness: 'unknown' })).not.toContain('stop');
  });
});

/** Any answers of a zone, each settled or open, and any place. */
const one = <Q extends 'element' | 'looseness' | 'texture' | 'cracks' | 'finish' | 'steel'>(
  id: Q,
) => fc.constantFrom(undefined, ...questions[id].choices.map((choice) => [choice]));
const anything = fc.record({
  element: one('element'),
  looseness: one('looseness'),
  texture: one('texture'),
  cracks: one('cracks'),
  finish: one('finish'),
  steel: one('steel'),
  depth: fc.constantFrom(undefined, 2, 5, 15, 40, 80),
});

it('puts no result that may stop or hold the work with “none of them”', () => {
  fc.assert(
    fc.property(anything, (given) => {
      const answers = { ...sealedSlab.site, ...sealedSlab.zone, ...unsure, ...given };
      const results = resultsOf('warnings', answers as never, answers as never);
      const row = rowOf(resultRows(results, say), null);
      for (const choice of row?.choices ?? []) {
        if (choice === null) continue;
        const told = { yes: [choice], maybe: [] };
        const { holds, possibleHolds } = adviseZone(
          { ...answers, warnings: told } as never,
          answers as never,
          { margins: false },
        );
        expect([...holds, ...possibleHolds], choice).toEqual([]);
      }
    }),
    { numRuns: rounds(15, 100) },
  );
});
