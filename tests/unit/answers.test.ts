import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { isOpen, notSure, sure, type Answer, type Answers } from '$lib/answers/answers';
import { bandOf, depthBands, rangeOfBand } from '$lib/answers/depth';
import { parseNumber } from '$lib/answers/parse-number';
import { choicesOf, questionIds, questions } from '$lib/answers/questions';

describe('answers', () => {
  it('do not compile outside their question', () => {
    expectTypeOf<Answer<'texture'>>().toEqualTypeOf<
      readonly ['smooth' | 'sandy' | 'pitted', ...('smooth' | 'sandy' | 'pitted')[]]
    >();
    // @ts-expect-error a texture is not a looseness
    const wrongChoice: Answers = { texture: ['hollow'] };
    // @ts-expect-error nobody asks for the weather
    const notAsked: Answers = { weather: ['rain'] };
    // @ts-expect-error an answer leaves at least one possibility
    const empty: Answers = { texture: [] };
    // @ts-expect-error a sure answer is one of the question's own
    sure('element', 'driveway');
    expect([wrongChoice, notAsked, empty]).toHaveLength(3);
  });

  it('tell not sure from sure', () => {
    for (const id of questionIds) expect(isOpen(notSure(id))).toBe(true);
    expect(isOpen(sure('texture', 'pitted'))).toBe(false);
    expect(isOpen({ yes: ['oil'], maybe: [] })).toBe(false);
    expect(isOpen(12.5)).toBe(false);
  });
});

describe('depth', () => {
  it('of a band is a depth of that band, whatever the thickness', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...depthBands.filter((band) => band !== 'through')),
        fc.constantFrom('unknown' as const, 120, 300),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (band, thickness, share) => {
          const [low, high] = rangeOfBand(band, thickness);
          const depth = low + share * ((Number.isFinite(high) ? high : low + 50) - low);
          expect(bandOf(depth, thickness)).toBe(band);
        },
      ),
    );
  });
  it('at the slab goes through', () => {
    expect(bandOf(100, 100)).toBe('through');
    expect(bandOf(99.9, 100)).toBe('over-50');
  });
});

describe('advice in either system of units', () => {
  const rest = {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['some'],
    warnings: { yes: [], maybe: [] },
    looseness: ['fractured'],
    contamination: { yes: [], maybe: [] },
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['overlay'],
    area: 10,
  } as const;

  it('is the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 320 }), (sixteenths) => {
        const inches = sixteenths / 16;
        const typed = [
          parseNumber('depth', `${inches}`, 'us', 'unknown'),
          parseNumber('depth', `${inches * 25.4}`, 'metric', 'unknown'),
        ].map((parsed) => (parsed.ok ? parsed.value : NaN)) as [number, number];
        expect(typed[0]).toBeCloseTo(typed[1], 9);
        const [us, metric] = typed.map((depth) =>
          adviseZone({ ...rest, thickness: 600 }, { ...rest, depth }, { margins: false }),
        );
        expect(us?.method).toBe(metric?.method);
        expect(us?.steps.map(({ id }) => id)).toEqual(metric?.steps.map(({ id }) => id));
      }),
    );
  });
});

describe('the table of questions', () => {
  it('has every choice once, and a limit for every typed number', () => {
    for (const id of questionIds) {
      expect(new Set(choicesOf(id)).size).toBe(choicesOf(id).length);
      if (questions[id].kind === 'number') expect('limit' in questions[id]).toBe(true);
    }
  });
});
