import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { inLine } from '../helpers/settled';
import { maybe, slab, type AllAnswers } from '../helpers/sure-answers';

const advise = (more: AllAnswers) => {
  const answers = { ...slab, ...more };
  return adviseZone(answers, answers, { margins: false });
};
const flakes: AllAnswers = { depth: ['under-3'], looseness: ['flaking'], finish: ['undecided'] };

// Common practice, no source: begin with what can be taken further, never with what cannot be undone.
describe('how to begin while answers are open', () => {
  it.each<[string, AllAnswers, ReturnType<typeof advise>['beginning']]>([
    [
      'the gentlest that does no harm',
      { ...flakes, texture: ['smooth', 'pitted'] },
      { now: ['make-safe', 'sound-and-mark'], tryFirst: 'grind', why: null },
    ],
    [
      'washing, where it may be all',
      { looseness: ['powdery', 'flaking'] },
      { now: ['make-safe', 'sound-and-mark'], tryFirst: 'pressure-wash', why: null },
    ],
    [
      'nothing on what may be a coating: it would smear',
      { ...flakes, contamination: maybe('thick-coating') },
      { now: ['make-safe', 'sound-and-mark'], tryFirst: null, why: 'may-harm' },
    ],
    [
      'nothing where oil may be: it is found first',
      { ...flakes, texture: ['smooth', 'pitted'], contamination: maybe('oil') },
      { now: ['make-safe'], tryFirst: null, why: 'clean-first' },
    ],
    [
      'what is surely oily is degreased first',
      { ...flakes, texture: ['smooth', 'pitted'], contamination: { yes: ['oil'], maybe: [] } },
      { now: ['make-safe', 'degrease', 'sound-and-mark'], tryFirst: 'grind', why: null },
    ],
    [
      'nothing where something may stop it',
      { ...flakes, looseness: ['flaking', 'fractured'], warnings: maybe('map-cracking') },
      { now: ['make-safe', 'sound-and-mark'], tryFirst: null, why: 'may-wait' },
    ],
    [
      'nor past what takes nothing off: oil and growth come off, the tool waits',
      {
        ...flakes,
        looseness: ['flaking', 'fractured'],
        cracks: ['hairline'],
        freezeThaw: ['often'],
        warnings: maybe('map-cracking'),
        contamination: { yes: ['oil', 'growth'], maybe: [] },
      },
      {
        now: ['make-safe', 'degrease', 'strip-growth', 'sound-and-mark', 'tap-crack'],
        tryFirst: null,
        why: 'may-wait',
      },
    ],
    [
      'not even the one tool that it comes to either way',
      { finish: ['overlay'], warnings: maybe('map-cracking') },
      { now: ['make-safe'], tryFirst: null, why: 'may-wait' },
    ],
    [
      'washing, where it may be all and nobody has tapped it yet',
      { depth: ['under-3'], looseness: ['tight', 'flaking'] },
      { now: ['make-safe'], tryFirst: 'pressure-wash', why: null },
    ],
    [
      'washing, though it may leave a thin coating',
      { contamination: maybe('thin-coating') },
      { now: ['make-safe'], tryFirst: 'pressure-wash', why: null },
    ],
    [
      'and no more than what harms nobody',
      {
        texture: ['smooth', 'sandy'],
        finish: ['build-coat'],
        steel: ['rust-stain'],
        contamination: { yes: ['growth'], maybe: [] },
      },
      { now: ['make-safe'], tryFirst: null, why: 'may-wait' },
    ],
    [
      'a thin coating that the gentlest takes off harms nothing',
      { looseness: ['tight', 'flaking'], contamination: maybe('growth') },
      { now: ['make-safe'], tryFirst: null, why: 'clean-first' },
    ],
    [
      'where it is stopped, nothing',
      { warnings: { yes: ['fire-or-chemical'], maybe: [] }, looseness: ['tight', 'rotten'] },
      null,
    ],
    [
      'where nothing that matters is open, nothing either',
      { contamination: maybe('growth') },
      null,
    ],
  ])('%s', (_, answers, expected) => {
    expect(advise(answers).beginning).toEqual(expected);
  });
});

describe('advice while answers are open', () => {
  it('is find out first, with the methods left, gentlest first, and the likeliest case first', () => {
    const advice = advise({ looseness: ['flaking', 'rotten', 'fractured'], depth: ['3-to-6'] });
    expect(advice).toMatchObject({ verdict: 'find-out-first', method: null, beside: null });
    expect(advice.methods).toEqual(['scarify', 'break-out']);
    expect(advice.outcomes.map(({ method }) => method)).toEqual(['scarify', 'break-out']);
    expect(advice.outcomes[0]?.share).toBeCloseTo(2 / 3);
    const other = advise({ looseness: ['tight', 'rotten'] });
    expect(other.reasons.map(inLine)).toEqual(['answers-differ methods=pressure-wash+break-out']);
    expect(other.outcomes.map(({ method, share }) => `${method} ${share}`)).toEqual([
      'pressure-wash 0.5',
      'break-out 0.5',
    ]);
  });
  it('is a stop where every way it turns out is one', () => {
    const advice = advise({
      warnings: { yes: ['fire-or-chemical'], maybe: ['map-cracking'] },
      looseness: ['tight', 'rotten'],
    });
    expect(advice).toMatchObject({
      verdict: 'stop',
      method: null,
      methods: [],
      steps: [],
      margins: [],
    });
    expect(advice.reasons.map(inLine)).toEqual(['fire-or-chemical']);
    expect(advice.possibleHolds.map(inLine)).toEqual(['map-cracking']);
  });
  it('is told as sure where only what changes nothing is open, and its margins only where all is', () => {
    const painted = advise({ finish: ['overlay'], contamination: maybe('thin-coating') });
    expect(painted).toMatchObject({ verdict: 'prepare', method: 'shotblast', beside: null });
    const answers = { ...slab };
    expect(adviseZone(answers, answers).margins.length).toBeGreaterThan(3);
    expect(advise({}).margins).toEqual([]);
    expect(advise({ steel: ['exposed'] })).toMatchObject({
      method: 'break-out',
      beside: 'pressure-wash',
    });
  });
  it('where it is held in any case, the holds are the reasons', () => {
    const advice = advise({ warnings: { yes: ['map-cracking'], maybe: [] } });
    expect(advice).toMatchObject({ verdict: 'find-out-first', methods: ['pressure-wash'] });
    expect(advice.reasons.map(inLine)).toEqual(['map-cracking']);
    const open = advise({
      warnings: { yes: ['map-cracking'], maybe: [] },
      looseness: ['tight', 'rotten'],
    });
    expect(open.reasons.map(inLine)).toEqual([
      'answers-differ methods=pressure-wash+break-out',
      'map-cracking',
    ]);
  });

  // Common practice, no source: no tool drives oil in that nobody has looked for.
  it('a drop of water comes before the first tool, where oil may be there or not', () => {
    const drops = ({ steps }: ReturnType<typeof advise>) =>
      steps
        .filter(({ why }) => why.some(({ rule }) => rule === 'drop-before-tools'))
        .map(({ id }) => id);
    expect(drops(advise({ finish: ['overlay'], contamination: maybe('oil') }))).toEqual([
      'shotblast',
    ]);
    expect(drops(advise({ ...flakes, contamination: maybe('oil') }))).toEqual(['sound-and-mark']);
    expect(
      drops(advise({ finish: ['overlay'], contamination: { yes: ['oil'], maybe: [] } })),
    ).toEqual([]);
    expect(drops(advise({ finish: ['overlay'] }))).toEqual([]);
    // Where no tool is common to all cases it comes before everything.
    expect(drops(advise({ contamination: maybe('oil') }))).toEqual(['make-safe']);
    // Grinding and shot part here, and what sucks up their dust drives no oil in.
    expect(
      drops(
        advise({
          texture: ['smooth'],
          finish: ['thin-film', 'overlay'],
          contamination: maybe('oil'),
        }),
      ),
    ).toEqual(['make-safe']);
  });
});

// Nothing is broken out of a wall before an engineer has seen it: common practice, no source.
describe('advice where some of it is stopped', () => {
  const wall: AllAnswers = { element: ['wall'], depth: ['20-to-50'], looseness: ['rotten'] };
  it('tells the work as where it goes on, though a stop is likelier', () => {
    const advice = advise({ ...wall, looseness: ['rotten', 'fractured', 'tight'] });
    expect(advice).toMatchObject({ verdict: 'find-out-first', methods: ['pressure-wash'] });
    expect(advice.outcomes.map(({ verdict }) => verdict)).toEqual(['stop', 'prepare']);
    expect(advice.steps.map(({ id }) => id)).toEqual([
      'make-safe',
      'pressure-wash',
      'check-ready',
      'wet-or-dry',
      'moisture-test',
      'last-clean',
      'cover',
      'cure',
    ]);
    expect(advice.steps[1]?.why.map(inLine)).toEqual([
      'does-the-removal depth=20-to-50 looseness=tight',
      'slurry-caught',
    ]);
    expect(advice.rejections.find(({ method }) => method === 'abrasive-blast') ?? {}).toMatchObject(
      { rule: 'harsher-than-needed', facts: { chosen: 'pressure-wash' } },
    );
  });
  it('is a stop where it is stopped whichever way, though not for the same', () => {
    const advice = advise({ ...wall, warnings: maybe('fire-or-chemical') });
    expect(advice).toMatchObject({ verdict: 'stop', methods: [], steps: [], beginning: null });
    expect(advice.outcomes).toHaveLength(2);
    expect(advice.reasons.map(inLine)).toEqual(['structure-before-removal element=wall told=no']);
    expect(advice.possibleHolds.map(inLine)).toEqual(['fire-or-chemical']);
  });
  it('names nothing beside a bar before it is found out whether the work may go on', () => {
    const bar = { steel: ['exposed'] } as const;
    expect(advise(bar).beside).toBe('pressure-wash');
    const held = advise({ ...bar, warnings: { yes: ['map-cracking'], maybe: [] } });
    expect(held).toMatchObject({ verdict: 'find-out-first', method: null, beside: null });
  });
});
