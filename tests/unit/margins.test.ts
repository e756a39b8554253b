import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marginsOf } from '$lib/advice/margins';
import { pairMarginsOf } from '$lib/advice/pairs';
import { adviseSettled } from '$lib/advice/settle';
import type { Answers } from '$lib/answers/answers';
import { depthBands } from '$lib/answers/depth';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { completions } from '../helpers/enumerate';
import { rounds } from '../helpers/rounds';

const one = (id: QuestionId) => fc.constantFrom(...choicesOf(id)).map((choice) => [choice]);
const many = (id: QuestionId, max: number) =>
  fc.subarray([...choicesOf(id)], { maxLength: max }).map((yes) => ({ yes, maybe: [] }));
const sureAnswers = fc
  .record({
    element: one('element'),
    setting: one('setting'),
    salts: one('salts'),
    freezeThaw: one('freezeThaw'),
    thickness: fc.constantFrom('unknown' as const, 60, 100, 150, 200),
    warnings: fc.oneof(fc.constant({ yes: [], maybe: [] }), many('warnings', 1)),
    depth: fc.oneof(one('depth'), fc.constantFrom(0.5, 2, 3.2, 5, 6.4, 12, 40, 50, 90)),
    looseness: one('looseness'),
    contamination: many('contamination', 2),
    texture: one('texture'),
    cracks: one('cracks'),
    steel: one('steel'),
    finish: one('finish'),
    area: fc.constant(10),
  })
  .map((raw) => raw as unknown as Answers);

/** What sure answers come to, the slow way. */
function plainly(answers: Answers): string {
  const [only] = completions(answers);
  if (!only) throw new Error('no completion');
  const { verdict, underneath } = adviseSettled(only.site, only.zone);
  return `${verdict} ${underneath}`;
}

/** What it comes to for whoever stands there: behind a stop no method counts. */
const gist = (ending: string): string => (ending.startsWith('stop') ? 'stop' : ending);

const apply = (
  answers: Answers,
  question: QuestionId,
  to: string,
  atMm?: number,
  deeper = true,
): Answers => {
  if (question === 'warnings' || question === 'contamination') {
    const { yes } = answers[question] as { yes: readonly string[] };
    const off = to.startsWith('no ') ? to.slice(3) : null;
    return {
      ...answers,
      [question]: { yes: off ? yes.filter((each) => each !== off) : [...yes, to], maybe: [] },
    } as Answers;
  }
  if (question === 'depth' && typeof answers.depth === 'number' && atMm !== undefined)
    return { ...answers, depth: deeper ? atMm + 0.02 : atMm - 0.02 };
  return { ...answers, [question]: [to] } as Answers;
};

describe('margins', () => {
  it('flip the advice when applied, and name what it becomes', () => {
    fc.assert(
      fc.property(sureAnswers, (answers) => {
        const now = plainly(answers);
        for (const { question, from, to, atMm, verdict, method } of marginsOf(answers, answers)) {
          // At the very edge only the bands tell which side the change is on.
          const place = (band: string) => depthBands.indexOf(band as never);
          const deeper =
            place(to) > place(from) || (to === from && Number(atMm) > Number(answers.depth));
          const then = plainly(apply(answers, question, to, atMm, deeper));
          expect(gist(then)).not.toBe(gist(now));
          expect(then).toBe(`${verdict} ${method}`);
        }
      }),
      { numRuns: rounds(25, 150) },
    );
  });

  it('miss no single change, and no nearer depth, by plain enumeration', () => {
    fc.assert(
      fc.property(sureAnswers, (answers) => {
        const now = plainly(answers);
        const margins = marginsOf(answers, answers);
        for (const question of [
          'looseness',
          'texture',
          'cracks',
          'steel',
          'finish',
          'element',
        ] as const)
          for (const to of choicesOf(question)) {
            const flips = gist(plainly({ ...answers, [question]: [to] } as Answers)) !== gist(now);
            expect(margins.some((each) => each.question === question && each.to === to)).toBe(
              flips,
            );
          }
        const { depth } = answers;
        if (typeof depth === 'number') return;
        const from = depthBands.indexOf(depth?.[0] as never);
        for (const way of [1, -1]) {
          const seen = new Set<string>();
          for (let place = from + way; depthBands[place]; place += way) {
            const ending = gist(plainly({ ...answers, depth: [depthBands[place] as never] }));
            const expected = ending !== gist(now) && !seen.has(ending);
            const found = margins.some(
              (each) => each.question === 'depth' && each.to === depthBands[place],
            );
            expect(found).toBe(expected);
            if (ending !== gist(now)) seen.add(ending);
          }
        }
      }),
      { numRuns: rounds(25, 150) },
    );
  });

  it('name the edge in millimetres: 5 mm of broken concrete becomes breaking out from 6.4 mm', () => {
    const answers = {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['often'],
      thickness: 100,
      warnings: { yes: [], maybe: [] },
      depth: 5,
      looseness: ['fractured'],
      contamination: { yes: [], maybe: [] },
      texture: ['sandy'],
      cracks: ['none'],
      steel: ['none-seen'],
      finish: ['overlay'],
      area: 12.5,
    } as const;
    const depths = marginsOf(answers, answers).filter(({ question }) => question === 'depth');
    expect(depths[0]).toMatchObject({ atMm: 6.4, verdict: 'prepare', method: 'break-out' });
    // Half of the slab less 13 mm (1/2 in) into sound concrete: UFC 3-270-03.
    expect(depths[1]).toMatchObject({ atMm: 37, deeper: true, verdict: 'stop', method: null });
  });

  // Past half of the slab nobody is asked for texture, cracks and steel: a hole of half the slab is
  // 47 mm of damage and 13 mm (1/2 in) into sound concrete, of 120 mm. UFC 3-270-03 and 3-270-04.
  it('lift a stop also where questions are open behind it: 70 mm rotten in a slab of 120 mm', () => {
    const site = {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['often'],
      thickness: 120,
      warnings: { yes: [], maybe: [] },
    } as const;
    const zone = { depth: 70, looseness: ['rotten'], area: 10 } as const;
    const lifting = marginsOf(site, zone).filter(({ question }) => question === 'depth');
    expect(lifting).toEqual([
      {
        question: 'depth',
        from: 'over-50',
        to: '20-to-50',
        atMm: 47,
        deeper: false,
        verdict: 'find-out-first',
        method: null,
      },
    ]);
  });

  it('in pairs flip only together', () => {
    fc.assert(
      fc.property(sureAnswers, (answers) => {
        const strip = (each: string) => each.split(' ')[0];
        for (const { changes, verdict, method, effect } of pairMarginsOf(answers, answers).slice(
          0,
          40,
        )) {
          const [one, other] = changes;
          if (one.question === 'depth' || other.question === 'depth') continue;
          const alone = [one, other].map((each) => plainly(apply(answers, each.question, each.to)));
          const together = plainly(
            apply(apply(answers, one.question, one.to), other.question, other.to),
          );
          expect(together).toBe(`${verdict} ${method}`);
          if (effect === 'stops') expect(alone.map(strip)).not.toContain('stop');
          for (const each of alone) expect(each).not.toBe(together);
        }
      }),
      { numRuns: rounds(12, 60) },
    );
  });
});
