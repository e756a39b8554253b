import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { adviseZone } from '$lib/advice/advise';
import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { reasonsFor } from '$lib/advice/steps/all';
import { workOrder } from '$lib/advice/steps/work';
import { choiceReasons } from '$lib/advice/why-this';
import type { Answers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { methodIds } from '$shared/methods';
import { anyAnswers } from '../helpers/any-answers';
import { expectSure } from '../helpers/by-enumeration';
import { completions, countCompletions } from '../helpers/enumerate';
import { inLine } from '../helpers/settled';
import { maybe, slab, type AllAnswers } from '../helpers/sure-answers';

const advise = (more: AllAnswers) => {
  const answers = { ...slab, ...more };
  return adviseZone(answers, answers, { margins: false });
};
const told = (reasons: readonly (Parameters<typeof inLine>[0] & { likeliest?: true })[]) =>
  reasons.map((each) => `${inLine(each)}${each.likeliest ? ', likeliest' : ''}`);

const washFailed = [
  { method: 'pressure-wash', because: 'too-much', why: ['bruised'] },
] as const satisfies TriedAnswers['triedOut'];
const cases: Readonly<Record<string, Answers & TriedAnswers>> = {
  'tools that would fit one way it may be and not the other': {
    ...slab,
    contamination: maybe('rubbery-coating'),
    texture: ['smooth'],
    triedOut: washFailed,
  },
  'a crack and a finish that is open, after a wash that failed': {
    ...slab,
    depth: ['film'],
    looseness: ['hollow'],
    cracks: ['open'],
    texture: ['smooth'],
    finish: ['undecided', 'self-levelling'],
    triedOut: washFailed,
  },
  'a warning that stops it, beside one that only asks for a test': {
    ...slab,
    element: ['soffit'],
    texture: ['smooth'],
    warnings: { yes: ['old-coating-or-adhesive'], maybe: ['fire-or-chemical'] },
    stopped: ['hollow-below'],
  },
  'a crack with a warning that may stop what cuts': {
    ...slab,
    cracks: ['hairline'],
    warnings: { yes: ['map-cracking'], maybe: ['tendons-possible'] },
    triedOut: [{ method: 'scarify', because: 'too-much', why: ['bruised'] }],
  },
  'signs of danger and a setting nobody was asked about': {
    ...slab,
    setting: undefined as never,
    warnings: undefined as never,
    looseness: ['tight', 'rotten'],
  },
  'a thin layer broken through': {
    ...slab,
    thickness: 60,
    depth: 60,
    looseness: ['fractured', 'rotten'],
    finish: ['overlay', 'rebuild'],
  },
  'a measured depth under a slab nobody measured': {
    ...slab,
    thickness: undefined as never,
    depth: 60,
    looseness: ['tight', 'rotten'],
    texture: ['smooth', 'sandy'],
  },
  'a sheet under finishes of which one is not bonded': {
    ...slab,
    texture: ['smooth'],
    finish: ['overlay', 'sealer', 'thin-film'],
    makerProfile: ['csp-2'],
  },
};

describe('what is told as sure is what every completion says', () => {
  it.each(Object.entries(cases))('%s', (_, answers) => {
    expectSure(answers);
  });
});

// Each rule is asked by itself whether its reason holds everywhere.
it('no two rules of one step, nor of the choice, give the same reason', () => {
  const givers = new Map<string, Set<number>>();
  const note = (key: string, place: number) =>
    givers.set(key, (givers.get(key) ?? new Set()).add(place));
  const rules = workOrder.map((id) => ({ id, reasons: reasonsFor(id) }));
  const few = anyAnswers.filter((answers) => countCompletions(answers) <= 24);
  for (const answers of fc.sample(few, { seed: 3, numRuns: 60 }))
    for (const { site, zone } of completions(answers)) {
      const choice = choose(demandsOf(site, zone));
      const situation = { site, zone, ...choice };
      for (const { id, reasons } of rules)
        reasons.forEach((rule, place) => {
          const reason = rule(situation);
          if (reason) note(`${id} ${inLine(reason)}`, place);
        });
      choiceReasons.forEach((rule, place) => {
        const reason = rule(choice);
        if (reason) note(`choice ${inLine(reason)}`, place);
      });
    }
  expect(givers.size).toBeGreaterThan(100);
  expect([...givers].filter(([, { size }]) => size > 1)).toEqual([]);
});

it('a reason for the method that holds in the likeliest case only is told as that', () => {
  // What is trowelled smooth is closed; a broomed floor is shot for its roughness alone.
  expect(told(advise({ finish: ['overlay'], texture: ['smooth', 'sandy'] }).reasons)).toEqual([
    'nothing-to-remove depth=film looseness=tight',
    'trowelled-is-closed, likeliest',
    'profile-without-bruises spared=scarify',
    'meets-all method=shotblast',
  ]);
});

describe('why not another way, while answers are open', () => {
  it('is said of every method that no case advises, and of no other', () => {
    for (const more of [{}, { looseness: ['tight', 'rotten'] }, { element: ['wall'] }] as const) {
      const { methods, method, rejections } = advise(more);
      const left = method ? [method] : methods;
      expect(rejections.map((each) => each.method)).toEqual(
        methodIds.filter((id) => !left.includes(id)),
      );
    }
  });
  // Common practice, no source: nothing is broken out of a wall before an engineer has seen it.
  it('a method that only a stop keeps back waits; the others are told of as where the work goes on', () => {
    const { rejections } = advise({
      element: ['wall'],
      looseness: ['tight', 'rotten'],
      depth: ['20-to-50'],
    });
    expect(told(rejections).map((line, place) => `${rejections[place]?.method}: ${line}`)).toEqual([
      'grind: too-large-by-hand place.wide',
      'abrasive-blast: harsher-than-needed chosen=pressure-wash bruises=no, likeliest',
      'scarify: needs-a-floor',
      'shotblast: needs-a-floor',
      'needle-scale: too-large-by-hand place.wide',
      'break-out: held holds=structure-before-removal',
      // A jet would do for what is rotten, and there it waits: that is nothing else to say against it.
      'water-jet: harsher-than-needed chosen=pressure-wash bruises=no',
    ]);
  });
  it('where all of it is stopped, what a method cannot do is told before what holds it', () => {
    const { rejections } = advise({
      element: ['wall'],
      looseness: ['rotten'],
      depth: ['20-to-50'],
      warnings: maybe('fire-or-chemical', 'settled-or-rocking'),
    });
    const rules = Object.fromEntries(rejections.map(({ method, rule }) => [method, rule]));
    expect(rules).toEqual({
      'pressure-wash': 'leaves-loose',
      grind: 'too-large-by-hand',
      'abrasive-blast': 'leaves-loose',
      scarify: 'needs-a-floor',
      shotblast: 'needs-a-floor',
      'needle-scale': 'too-large-by-hand',
      'break-out': 'held',
      'water-jet': 'held',
    });
    expect(rejections.every(({ likeliest }) => likeliest === undefined)).toBe(true);
  });
});
