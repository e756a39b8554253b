import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { decisionOf } from '$lib/advice/decision';
import { oftenMisjudged } from '$lib/advice/often-misjudged';
import { pairMarginsOf } from '$lib/advice/pairs';
import { resultsOf } from '$lib/advice/results';
import { adviseSettled } from '$lib/advice/settle';
import { workOrder } from '$lib/advice/steps/work';
import { survey } from '$lib/advice/survey';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf, type Choice } from '$lib/answers/questions';
import { hazardsOfStep } from '$shared/methods';
import { completions } from '../helpers/enumerate';
import { rounds } from '../helpers/rounds';

const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 150,
  warnings: { yes: [], maybe: [] },
};
const zone: ZoneAnswers = {
  depth: ['under-3'],
  looseness: ['flaking'],
  contamination: { yes: [], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['sealer'],
  area: 4,
};

const openZone = fc.record({
  depth: fc.shuffledSubarray([...choicesOf('depth')], { minLength: 1, maxLength: 3 }),
  looseness: fc.shuffledSubarray([...choicesOf('looseness')], { minLength: 1, maxLength: 3 }),
  contamination: fc.constantFrom(
    { yes: [], maybe: [] },
    { yes: ['oil'], maybe: [] },
    { yes: [], maybe: ['oil', 'thick-coating'] },
  ),
  texture: fc.shuffledSubarray([...choicesOf('texture')], { minLength: 1 }),
  cracks: fc.shuffledSubarray([...choicesOf('cracks')], { minLength: 1, maxLength: 2 }),
  steel: fc.constantFrom(['none-seen'], ['none-seen', 'exposed']),
  finish: fc.shuffledSubarray([...choicesOf('finish')], { minLength: 1, maxLength: 2 }),
  area: fc.constant(4),
}) as unknown as fc.Arbitrary<ZoneAnswers>;

describe('how to begin', () => {
  it('does now only what every possibility calls for, before anything one of them calls for and another does not', () => {
    fc.assert(
      fc.property(openZone, fc.constantFrom('none', 'tendons-possible'), (answers, warning) => {
        const warnings = {
          yes: warning === 'none' ? [] : ['tendons-possible' as const],
          maybe: [],
        };
        const all = { ...site, warnings, ...answers };
        const { beginning, cautions } = adviseZone(all, all);
        if (!beginning) return;
        const going = [...completions(all)]
          .map((each) => adviseSettled(each.site, each.zone))
          .filter(({ verdict }) => verdict !== 'stop');
        const called = going.map(({ steps }) => steps.map(({ id }) => id));
        const last = Math.max(-1, ...beginning.now.map((step) => workOrder.indexOf(step)));
        for (const steps of called) {
          expect(steps).toEqual(expect.arrayContaining([...beginning.now]));
          // Nothing that only some call for would have come before.
          for (const step of steps)
            if (workOrder.indexOf(step) < last)
              expect(called.every((others) => others.includes(step))).toBe(true);
        }
        // Before somebody has looked, nothing is cut, washed, proven or covered.
        if (beginning.why === 'may-wait')
          for (const step of beginning.now)
            expect([
              'make-safe',
              'degrease',
              'strip-growth',
              'sound-and-mark',
              'tap-crack',
            ]).toContain(step);
        const held = [...completions(all)].some(
          (each) => adviseSettled(each.site, each.zone).holds.length > 0,
        );
        expect(beginning.why === 'may-wait').toBe(held);
        if (!beginning.tryFirst) return;
        // What is tried is the gentlest of all, and every hazard of it is among the cautions.
        expect(going.some(({ method }) => method === beginning.tryFirst)).toBe(true);
        for (const { rejections } of going)
          for (const { method, rule } of rejections)
            if (method === beginning.tryFirst)
              expect([
                'washing-spreads-oil',
                'glazes-coating',
                'shot-bounces',
                'needs-a-floor',
              ]).not.toContain(rule);
        for (const hazard of ['noise', 'eyes'] as const)
          if (hazardsOfStep[beginning.tryFirst].includes(hazard))
            expect(cautions).toContain(hazard);
      }),
      { numRuns: rounds(30, 120) },
    );
  });

  it('cleans first where oil may be there, and waits where something may stop it', () => {
    const loose = {
      ...zone,
      looseness: ['flaking', 'fractured'],
      texture: ['sandy', 'pitted'],
    } as const;
    const begin = (more: object, where: object = {}) =>
      adviseZone({ ...site, ...where }, { ...loose, ...more }).beginning;
    expect(begin({})).toMatchObject({ tryFirst: 'grind', why: null });
    expect(begin({ contamination: { yes: [], maybe: ['oil'] } })?.why).toBe('clean-first');
    expect(begin({}, { warnings: { yes: [], maybe: ['old-coating-or-adhesive'] } })?.why).toBe(
      'may-wait',
    );
  });

  it('is not needed where nothing that matters is open', () => {
    expect(adviseZone(site, zone).beginning).toBeNull();
  });
});

describe('what each result of a test would mean', () => {
  it('is together what it can come to now, by plain enumeration', () => {
    fc.assert(
      fc.property(openZone, (answers) => {
        const all = { ...site, ...answers };
        for (const question of ['looseness', 'depth', 'texture', 'cracks', 'finish'] as const) {
          const results = resultsOf(question, all, all);
          expect(results.map(({ choice }) => choice)).toEqual(all[question]);
          for (const { choice, outcomes } of results) {
            const then = { ...all, [question]: [choice as Choice<typeof question>] };
            const plain = new Set(
              [...completions(then)].map((each) => {
                const { verdict, underneath } = adviseSettled(each.site, each.zone);
                return `${verdict} ${underneath}`;
              }),
            );
            expect(new Set(outcomes.map(({ verdict, method }) => `${verdict} ${method}`))).toEqual(
              plain,
            );
          }
        }
      }),
      { numRuns: rounds(15, 40) },
    );
  });
  it('looks at each thing that may be there, and at none of them', () => {
    const results = resultsOf('contamination', site, {
      ...zone,
      contamination: { yes: [], maybe: ['oil', 'rubbery-coating'] },
    });
    expect(results.map(({ choice }) => choice)).toEqual([null, 'oil', 'rubbery-coating']);
    expect(results[0]?.outcomes).toEqual([{ verdict: 'prepare', method: 'grind' }]);
    expect(results[2]?.outcomes.map(({ method }) => method)).toContain('scarify');
  });
});

describe('two answers together', () => {
  it('miss no pair of single answers, by plain enumeration', () => {
    const all = {
      ...site,
      ...zone,
      finish: ['overlay'] as const,
      looseness: ['fractured'] as const,
    };
    const now = decisionOf(all);
    const found = pairMarginsOf(all, all);
    const ones = ['looseness', 'texture', 'cracks', 'steel', 'finish', 'element'] as const;
    const strength = { 'pressure-wash': 0, grind: 1, 'abrasive-blast': 1, 'needle-scale': 1 };
    const harsh = (method?: string | null) =>
      strength[method as keyof typeof strength] ?? (method === 'break-out' ? 3 : 2);
    const tells = (ending: ReturnType<typeof decisionOf>) =>
      ending?.verdict === 'stop' ||
      (ending?.verdict === 'prepare' && harsh(ending.method) < harsh(now?.method));
    const set = (question: string, choice: string) => ({ ...all, [question]: [choice] });
    let pairs = 0;
    for (const [index, one] of ones.entries())
      for (const other of ones.slice(index + 1))
        for (const first of choicesOf(one).filter((each) => each !== all[one]?.[0]))
          for (const second of choicesOf(other).filter((each) => each !== all[other]?.[0])) {
            const alone = [set(one, first), set(other, second)].some((each) =>
              tells(decisionOf(each)),
            );
            const expected = !alone && tells(decisionOf({ ...set(one, first), [other]: [second] }));
            const there = found.some(({ changes }) =>
              [first, second].every((to) => changes.some((change) => change.to === to)),
            );
            expect(`${first} ${second} ${there}`).toBe(`${first} ${second} ${expected}`);
            if (expected) pairs += 1;
          }
    expect(pairs).toBeGreaterThan(3);
  });

  it('come likeliest misjudgement first', () => {
    const ranks = pairMarginsOf(site, { ...zone, finish: ['overlay'] }).map(({ changes }) =>
      changes.reduce((sum, { question }) => sum + oftenMisjudged.indexOf(question), 0),
    );
    expect(ranks.length).toBeGreaterThan(2);
    expect(ranks).toEqual([...ranks].sort((one, other) => one - other));
  });
});

describe('all questions open', () => {
  it('loses no possibility, and reaches whatever any one of them comes to', () => {
    const { tallies, total } = survey({}, {});
    expect(tallies.reduce((sum, { weight }) => sum + weight, 0)).toBe(total);
    const known = new Set(tallies.map(({ verdict, method }) => `${verdict} ${method}`));
    const singles = openZone.map((answers) => {
      const first = ([choice]: readonly unknown[]) => [choice];
      const { contamination } = answers;
      return {
        ...Object.fromEntries(
          Object.entries(answers).map(([id, answer]) => [
            id,
            Array.isArray(answer) ? first(answer) : answer,
          ]),
        ),
        contamination: { yes: contamination?.yes ?? [], maybe: [] },
      };
    });
    fc.assert(
      fc.property(singles, fc.constantFrom(...choicesOf('element')), (answers, element) => {
        const all = { ...site, thickness: 'unknown' as const, element: [element] as const };
        const ending = decisionOf({ ...all, ...answers });
        expect(known).toContain(`${ending?.verdict} ${ending?.method}`);
      }),
      { numRuns: rounds(125, 500) },
    );
  });
});
