import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { Advice } from '$lib/advice/types';
import type { Zone } from '$lib/answers/job';
import { typicalOf, isKnown, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { laidWith } from '$lib/plan/with-crew';
import { reckonZone, type AdviceOf, type Around } from '$lib/plan/zone-plan';
import { surveyOf } from '$lib/survey/survey';
import { methodIds } from '$shared/methods';
import { at, doneIn, logged } from '../helpers/crew-log';
import { drawnBay } from '../helpers/drawn-bay';
import { tradeJob } from '../helpers/trade-jobs';

const hollow = { depth: 40, looseness: ['hollow'], area: 4 };
const usual = (amount: Amount | null | undefined) =>
  amount && isKnown(amount) ? typicalOf(amount) : null;
/** Advice, and how often it was asked for. */
const counted = () => {
  let calls = 0;
  const adviceOf: AdviceOf = (site, answers) => {
    calls += 1;
    return adviseZone(site, answers, { margins: false });
  };
  return { adviceOf, calls: () => calls };
};
const zoneOf = (answers: object, site: object = {}, more: object = {}) => {
  const job = tradeJob([answers], site);
  const zone = { ...job.zones[0], ...more } as Zone;
  const around: Around = { site: job.site, whole: undefined, survey: null, own: undefined };
  return { zone, around };
};

describe('a zone that is reckoned again', () => {
  const { zone, around } = zoneOf({ ...hollow, area: 4.01 });
  const { adviceOf, calls } = counted();
  const reckon = (change: Partial<Around> = {}) =>
    reckonZone(zone, zone, { ...around, ...change }, adviceOf);
  it('is the same while nothing it stands on is another, at no cost', () => {
    const first = reckon();
    expect(calls()).toBe(1);
    expect(reckon()).toBe(first);
    expect(calls()).toBe(1);
  });
  it('has other amounts where the whole, the reader’s figures or the drawing is another', () => {
    const most = (of: ReturnType<typeof reckon>) => {
      const area = of.worked?.quantities['patch-area'];
      return area && isKnown(area) ? area.span[1] : null;
    };
    const free = most(reckon());
    // The spots are no more than the whole surface.
    expect(most(reckon({ whole: 4.5 }))).toBe(4.5);
    expect(most(reckon())).toBe(free);
    const dense = (of: ReturnType<typeof reckon>) => usual(of.worked?.quantities['debris-mass']);
    const usualMass = dense(reckon()) ?? 0;
    expect(dense(reckon({ own: { 'concrete.density': 1000 } }))).toBeLessThan(usualMass / 2);
    expect(dense(reckon())).toBe(usualMass);
    const survey = surveyOf(drawnBay(1500));
    expect(reckon({ survey }).patches?.patches).toHaveLength(1);
    expect(reckon().patches).toBeNull();
    // Its answers are the same, so its advice is.
    expect(calls()).toBe(1);
  });
  it('has other advice on another site', () => {
    const { site } = tradeJob([], { element: ['suspended-slab'] });
    expect(reckon().advised.held).toBeNull();
    expect(reckon({ site }).advised.held?.verdict).toBe('stop');
    expect(reckon().advised.held).toBeNull();
  });
});

describe('advice that zones share', () => {
  it('is worked out once for equal answers, and for each zone that has a test patch', () => {
    const one = zoneOf({ ...hollow, area: 4.02 });
    const other = zoneOf({ ...hollow, area: 4.02 });
    const { adviceOf, calls } = counted();
    const first = reckonZone(one.zone, one.zone, one.around, adviceOf);
    const second = reckonZone(other.zone, other.zone, other.around, adviceOf);
    expect(calls()).toBe(1);
    expect(second.advised).toBe(first.advised);
    const trial = [{ method: 'break-out', notch: 1 }];
    const tried = zoneOf({ ...hollow, area: 4.02 }, {}, { trial });
    expect(reckonZone(tried.zone, tried.zone, tried.around, adviceOf).advised).not.toBe(
      first.advised,
    );
    expect(calls()).toBeGreaterThan(1);
  });
  it('is worked out anew for a test patch where the reader’s figures are others', () => {
    const trial = [{ method: 'break-out', notch: 1 }];
    const { zone, around } = zoneOf({ ...hollow, area: 4.05 }, {}, { trial });
    const { adviceOf, calls } = counted();
    const reckon = (change: Partial<Around> = {}) =>
      reckonZone(zone, zone, { ...around, ...change }, adviceOf);
    reckon();
    const once = calls();
    reckon({ whole: 90 });
    expect(calls()).toBe(once);
    reckon({ own: { 'fill.waste': 0.2 } });
    expect(calls()).toBeGreaterThan(once);
  });
});

describe('a zone that is held', () => {
  it('names the open answers that decide, and how many methods they leave', () => {
    const { zone, around } = zoneOf({ ...hollow, area: 4.06 });
    const advice = {
      outcomes: ['grind', 'scarify', 'grind'].map((method) => ({ verdict: 'prepare', method })),
      assumptions: [
        { question: 'depth', matters: true },
        { question: 'texture', matters: false },
      ],
      ...{ holds: [], possibleHolds: [], verdict: 'find-out-first' },
    };
    const { advised, worked } = reckonZone(zone, zone, around, () => advice as never);
    expect(advised.held).toEqual({ verdict: 'find-out-first', open: ['depth'], methods: 2 });
    expect(worked).toBeNull();
  });
});

describe('a zone of which little is said', () => {
  const open = (answers: object) => {
    const { zone, around } = zoneOf({ ...hollow, area: 4.03, ...answers });
    const { adviceOf, calls } = counted();
    const { advised } = reckonZone(zone, zone, around, adviceOf);
    return { advised, held: advised.held, calls: calls() };
  };
  // With whether it is cracked it is open how long the cracks are.
  const three = { cracks: undefined, finish: undefined };
  it('waits for its answers from four open ones on, and no thought is given to what might be', () => {
    const { advised, held, calls } = open({ ...three, contamination: undefined });
    expect(calls).toBe(0);
    expect(held).toMatchObject({ verdict: 'find-out-first', methods: methodIds.length });
    expect(advised).toMatchObject({ advice: null, holds: [], possibleHolds: [] });
    expect(held?.open).toEqual(['contamination', 'cracks', 'crackLength', 'finish']);
    expect(open(three).calls).toBe(1);
  });
  it('does not wait for what nobody needs to measure: how long the bars are, how thick', () => {
    const bars = { steel: ['corroded'], barLoss: ['within-limit'] };
    const unmeasured = { barCover: undefined, barDiameter: undefined, barLength: undefined };
    expect(open({ ...bars, ...unmeasured, finish: undefined, cracks: undefined }).calls).toBe(1);
  });
});

// A jet leaves a hole to be sawn round where it stands in for breaking out; else it takes a skin.
describe('a jet', () => {
  let area = 5;
  const jetted = (steps: readonly string[], beside: string | null = null, method = 'water-jet') => {
    const { zone, around } = zoneOf({ ...hollow, area: (area += 0.01) });
    const example = {
      ...{ underneath: method, beside },
      steps: steps.map((id) => ({ id, why: [] })),
    } as unknown as Advice;
    const outcome = { verdict: 'prepare', method, example };
    const advice = { outcomes: [outcome], holds: [], possibleHolds: [], assumptions: [] };
    return reckonZone(zone, zone, around, () => advice as never).worked?.work;
  };
  it('breaks out where it is sawn round and sounded again', () => {
    expect(jetted(['saw-cut', 'water-jet', 're-sound'])?.breaks).toBe(true);
    expect(jetted(['saw-cut', 'water-jet'])?.breaks).toBe(false);
    expect(jetted(['water-jet', 're-sound'])?.breaks).toBe(false);
    expect(jetted(['saw-cut', 're-sound'], null, 'scarify')?.breaks).toBe(false);
    expect(jetted(['break-out'], null, 'break-out')?.breaks).toBe(true);
  });
  it('works in a slab as thick as answered, or of no known thickness', () => {
    const thick = (site: object) => {
      const { zone, around } = zoneOf({ ...hollow, area: (area += 0.01) }, site);
      return reckonZone(zone, zone, around, adviceOf).worked?.work.thickness;
    };
    const { adviceOf } = counted();
    expect(thick({ thickness: 150 })).toBe(150);
    expect(thick({ thickness: 'unknown' })).toBe('unknown');
  });
  it('and a hammer go along bars where the rest has a method of its own', () => {
    for (const method of ['water-jet', 'break-out']) {
      expect(jetted([method], 'scarify', method)?.alongBars, method).toBe(true);
      expect(jetted([method], null, method)?.alongBars, method).toBe(false);
      expect(jetted([method], 'break-out', method)?.alongBars, method).toBe(false);
    }
    expect(jetted(['scarify'], 'grind', 'scarify')?.alongBars).toBe(false);
  });
});

describe('the same work for another crew', () => {
  const job = tradeJob([hollow, { ...hollow, area: 6 }], {}, { crew: 2, hoursPerDay: 8 });
  const end = (placed: readonly { readonly to: number }[]) =>
    Math.max(...placed.map(({ to }) => to));
  it('lies as planned for as many, and is done sooner by more', () => {
    const plan = planJob(job);
    expect(laidWith(plan, job, 2)).toEqual(plan.schedule.placed);
    expect(end(laidWith(plan, job, 1))).toBeGreaterThan(end(plan.schedule.placed));
  });
  it('begins after what the crew has done', () => {
    const begun = logged(job, [
      [null, 'make-safe', doneIn(at(4, '08:00'), at(4, '09:00'))],
      ['z0', 'sound-and-mark', doneIn(at(4, '09:00'), at(4, '10:00'))],
    ]);
    const plan = planJob(begun);
    expect(laidWith(plan, begun, 2)).toEqual(plan.schedule.placed);
    expect(laidWith(plan, begun, 1).every(({ from, to }) => from < 2 || to >= 2)).toBe(true);
  });
});
