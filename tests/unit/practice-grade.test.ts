import { describe, expect, it } from 'vitest';
import { moistureOf } from '$lib/advice/sheet';
import { rejectionRules } from '$lib/advice/rules';
import { authored } from '$lib/practice/authored';
import { adviceOn, calls, isMethod, type Case } from '$lib/practice/case';
import { callKinds } from '$lib/practice/call';
import { generate } from '$lib/practice/generate';
import { grade, type Attempt } from '$lib/practice/grade';
import { hazardsOffered } from '$lib/practice/hazards';
import {
  calledFor,
  decided,
  spareRules,
  stepsOffered,
  type DecidedStep,
} from '$lib/practice/steps';
import { hazardIds } from '$shared/methods';

const generated = Array.from({ length: 360 }, (_, seed) => generate(seed));
const all: readonly Case[] = [...authored, ...generated];
const caseOf = (id: string) => authored.find((one) => one.id === id) as Case;

/** The attempt that is right in everything. */
function perfect(one: Case): Attempt {
  const advice = adviceOn(one);
  return {
    call:
      advice.method ??
      advice.holds.find(({ verdict }) => verdict === advice.verdict)?.who ??
      'crew',
    steps: calledFor(advice).map(({ id }) => id as DecidedStep),
    hazards: advice.cautions,
  };
}

describe('grading', () => {
  it('takes the advice itself as right in every case', () => {
    for (const one of all) {
      const result = grade(one, perfect(one));
      expect(result.call.kind, one.id).toBe('right');
      expect(result.rating, one.id).toBe('good');
      expect(result.call.against).toEqual([]);
    }
  });

  it('never takes another call as right, and always says why', () => {
    const kinds = new Set<string>();
    const rules = new Set<string>();
    for (const one of all) {
      const advice = adviceOn(one);
      for (const call of calls) {
        const result = grade(one, { ...perfect(one), call });
        const holdsNow = advice.holds.filter(({ verdict }) => verdict === advice.verdict);
        // Nobody replaces a part before whoever has to look at it first.
        const tooSoon = call === 'concrete-contractor' && holdsNow.some(({ who }) => who !== call);
        const right = isMethod(call)
          ? call === advice.method
          : holdsNow.some(({ who }) => who === call) && !tooSoon;
        expect(result.call.kind === 'right', `${one.id} ${call}`).toBe(right);
        expect(result.call.reasons.length, one.id).toBeGreaterThan(0);
        kinds.add(result.call.kind);
        if (right) continue;
        expect(result.rating).toBe('again');
        if (isMethod(call)) expect(result.call.against, `${one.id} ${call}`).toHaveLength(1);
        // Whatever must wait is told as that, however fitting the method would be later.
        if (isMethod(call) && advice.verdict !== 'prepare')
          expect(result.call.kind).toBe('must-wait');
        for (const { rule } of result.call.against) rules.add(rule);
      }
    }
    expect(callKinds.filter((kind) => !kinds.has(kind))).toEqual([]);
    // Every reason against a method comes up, so every one of its explanations is spoken.
    expect(rejectionRules.filter((rule) => !rules.has(rule))).toEqual([]);
  });

  it('tells too gentle from too harsh as the trade does', () => {
    const kind = (id: string, call: Attempt['call']) =>
      grade(caseOf(id), { ...perfect(caseOf(id)), call }).call.kind;
    // Rides over the pits; bounces off; bruises; cuts where an engineer comes first.
    expect(kind('larch-row-pits', 'scarify')).toBe('too-gentle');
    expect(kind('net-loft-membrane', 'shotblast')).toBe('wrong-tool');
    expect(kind('hall-steps-nosing', 'scarify')).toBe('wrong-tool');
    expect(kind('museum-floor', 'scarify')).toBe('harsher');
    expect(kind('rope-walk-hole', 'break-out')).toBe('harsher');
    expect(kind('fish-market-rot', 'water-jet')).toBe('would-do');
    expect(kind('gannet-court-balcony', 'break-out')).toBe('must-wait');
    expect(kind('gannet-court-balcony', 'concrete-contractor')).toBe('someone-else');
    expect(kind('bakery-dust', 'locator')).toBe('need-not-wait');
  });

  it('says what is called for and was left out, and what is not called for', () => {
    const one = caseOf('larch-row-oil');
    const result = grade(one, { ...perfect(one), steps: ['saw-cut', 'edge-work'] });
    expect(result.rating).toBe('hard');
    expect(result.steps?.missed.map(({ id }) => id)).toEqual([
      // Damage on a floor begins with sounding all of it; a sealer goes on a dry face, unwashed.
      'degrease',
      'sound-and-mark',
      'vacuum',
      'moisture-test',
    ]);
    expect(result.steps?.missed[0]?.why.map(({ rule }) => rule)).toContain('oil-before-anything');
    expect(result.steps?.spare).toEqual([
      { step: 'saw-cut', rule: 'nothing-broken-out' },
      { step: 'edge-work', rule: 'nothing-upright' },
    ]);
  });

  it('judges nothing but the call before a stop is cleared: nobody can leave out a danger of no work', () => {
    const one = caseOf('gannet-court-balcony');
    for (const call of ['engineer', 'break-out'] as const) {
      const result = grade(one, { call, steps: [], hazards: [] });
      expect([result.steps, result.hazards]).toEqual([null, null]);
    }
    expect(grade(one, { call: 'engineer', steps: [], hazards: [] }).rating).toBe('good');
  });

  it('is hard where one thing around the call was wrong, and where one stands against another', () => {
    const one = caseOf('larch-row-oil');
    const all = perfect(one);
    const steps = all.steps ?? [];
    const rating = (change: Partial<Attempt>) => grade(one, { ...all, ...change }).rating;
    expect(rating({})).toBe('good');
    expect(rating({ steps: [...steps, 'edge-work'] })).toBe('hard');
    expect(rating({ steps: steps.slice(1) })).toBe('hard');
    expect(rating({ steps: [...steps.slice(1), 'edge-work'] })).toBe('hard');
    expect(rating({ hazards: [] })).toBe('hard');
    expect(rating({ steps: null, hazards: null })).toBe('good');
  });

  it('gives each step that is not called for a reason that is true', () => {
    const seen = new Set<string>();
    for (const one of all) {
      if (adviceOn(one).verdict !== 'prepare') continue;
      const { zone } = one;
      const has = (id: string) => (zone.contamination as readonly string[]).includes(id);
      const heavy = has('thick-coating') || has('rubbery-coating');
      const bar = zone.steel === 'exposed' || zone.steel === 'corroded';
      const truth: Partial<Record<(typeof spareRules)[number], boolean>> = {
        'no-oil': !has('oil'),
        'no-growth': !has('growth'),
        'wash-takes-growth': has('growth'),
        'no-heavy-coating': !heavy,
        'machine-lifts-coating': heavy,
        'no-crack': zone.cracks === 'none',
        'crack-not-chased': zone.cracks !== 'none',
        'crack-not-routed': zone.cracks !== 'none',
        'no-bar-shows': !bar,
        'no-fine-crack-in-frost': zone.cracks !== 'hairline' || one.site.freezeThaw !== 'often',
        'sealer-forgives': zone.finish === 'sealer',
        'nothing-upright': zone.border === undefined || zone.border === 0,
        'no-wash-under-dry': moistureOf(zone) === 'dry',
        'damp-finish': moistureOf(zone) !== 'dry',
      };
      for (const { step, rule } of grade(one, { ...perfect(one), steps: decided }).steps?.spare ??
        []) {
        seen.add(rule);
        expect(truth[rule] ?? true, `${one.id}: ${step} ${rule}`).toBe(true);
      }
    }
    expect(spareRules.filter((rule) => !seen.has(rule))).toEqual([]);
  });

  it('judges no steps where none may be done yet', () => {
    const one = caseOf('mill-path-rocks');
    expect(grade(one, { ...perfect(one), call: 'grind', steps: decided }).steps).toBeNull();
    expect(grade(one, { ...perfect(one), steps: decided }).rating).toBe('good');
  });

  it('counts a missed hazard, and never holds care against anybody', () => {
    // The same wall, of which no laboratory has spoken.
    const { cleared, ...one } = caseOf('harbour-office-wall');
    expect(cleared).toEqual(['lead-asbestos']);
    const none = grade(one, { ...perfect(one), hazards: [] });
    expect(none.rating).toBe('hard');
    expect(none.hazards?.missed.map(({ hazard }) => hazard)).toContain('lead-asbestos');
    expect(none.hazards?.missed.find(({ hazard }) => hazard === 'silica')?.steps).toContain(
      'grind',
    );
    const careful = grade(one, { ...perfect(one), hazards: hazardIds });
    expect(careful.rating).toBe('good');
    expect(careful.hazards?.missed).toEqual([]);
  });
});

// Common practice, no source: what the laboratory of the case has found none of is no danger of it.
describe('a coating that was tested', () => {
  const tested = authored.filter(({ told }) =>
    told.some(({ text }) => /no lead, no asbestos/i.test(text)),
  );
  it('brings neither lead nor asbestos, and only such a one is cleared of them', () => {
    expect(tested.map(({ id }) => id)).toContain('harbour-office-wall');
    expect(authored.filter(({ cleared }) => cleared)).toEqual(tested);
    for (const one of tested) {
      const advice = adviceOn(one);
      expect(advice.cautions, one.id).not.toContain('lead-asbestos');
      for (const { hazards } of advice.steps) expect(hazards).not.toContain('lead-asbestos');
      expect(advice.cautions, one.id).toContain('silica');
    }
  });
});

describe('what is offered', () => {
  it('holds all that is called for, some that is not, and the same each time', () => {
    for (const one of all) {
      const advice = adviceOn(one);
      const steps = stepsOffered(one, advice);
      const called = calledFor(advice).map(({ id }) => id);
      expect(
        called.filter((id) => !(steps as readonly string[]).includes(id)),
        one.id,
      ).toEqual([]);
      expect(steps.length - called.length, one.id).toBeGreaterThanOrEqual(3);
      expect(stepsOffered(one, advice)).toEqual(steps);
      const hazards = hazardsOffered(one, advice);
      const there = hazards.filter((id) => advice.cautions.includes(id));
      expect(there.length, one.id).toBe(Math.min(5, advice.cautions.length));
      // Fewer only where hardly a hazard is missing from the work itself.
      const absent = hazardIds.length - advice.cautions.length;
      expect(hazards.length - there.length, one.id).toBeGreaterThanOrEqual(Math.min(2, absent));
    }
  });
});
