import { beforeAll, describe, expect, it } from 'vitest';
import { choose, type Methods } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import type { Look } from '$lib/advice/open-answers';
import { Reached, type Need } from '$lib/advice/reached';
import { adviseSettled } from '$lib/advice/settle';
import { survey, type Survey } from '$lib/advice/survey';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { completions } from '../helpers/enumerate';
import { slab } from '../helpers/sure-answers';

const cases: Readonly<Record<string, Answers>> = {
  'depth, cracks and bars': {
    ...slab,
    thickness: 100,
    depth: ['3-to-6', 'over-50', 'through'],
    looseness: ['tight', 'rotten'],
    cracks: ['none', 'open', 'moving'],
    steel: ['none-seen', 'corroded'],
    barLoss: ['within-limit', 'neighbours'],
  },
  'place, dirt and finish': {
    ...slab,
    element: ['slab', 'wall'],
    contamination: { yes: ['growth'], maybe: ['oil', 'thick-coating'] },
    texture: ['smooth', 'pitted'],
    finish: ['sealer', 'overlay'],
    salts: ['none', 'de-icing'],
    freezeThaw: ['rare', 'often'],
    steel: ['none-seen', 'rust-stain'],
  },
  'a method that has failed on a patch': {
    ...slab,
    texture: ['smooth', 'pitted'],
    looseness: ['tight', 'flaking'],
    depth: ['film', 'under-3'],
    triedOut: [{ method: 'grind', because: 'too-little', why: ['still-loose'] }],
  } as Answers,
};

/** One completion: how each answer comes out, what it is worked with, and what stands. */
function comesTo({ site, zone }: { site: SettledSite; zone: SettledZone }) {
  const { verdict, underneath } = adviseSettled(site, zone);
  const { element, salts, freezeThaw } = site;
  const { contamination, depth, looseness, texture, cracks, steel, barLoss, finish } = zone;
  const dirt = choicesOf('contamination').map((each) => [each, contamination.includes(each)]);
  const answers: Readonly<Record<string, unknown>> = {
    ...{ element, salts, freezeThaw, depth, looseness, texture, cracks, steel, barLoss, finish },
    ...Object.fromEntries(dirt),
  };
  return {
    answers,
    tools: toolsAs(choose(demandsOf(site, zone))),
    fits: { any: true, surface: underneath !== null, goesOn: verdict !== 'stop' },
  };
}
const toolsAs = ({ method, rest, spent }: Methods) => `${method} ${rest} ${spent}`;

const look = ([name, value]: readonly [string, unknown]): Look => ({
  ...{ name, value },
  ...{ place: 0, among: [] },
});
const isDirt = (name: string) => choicesOf('contamination').some((each) => each === name);
/** Cracks, bars, frost and salts are gone through after the method is chosen. */
const isAfter = (name: string) => /^(cracks|steel|barLoss|freezeThaw|salts)$/.test(name);

describe.each(Object.entries(cases))('where the survey has been: %s', (_, answers) => {
  let surveyed: Survey;
  let reached: Reached;
  let all: readonly ReturnType<typeof comesTo>[];
  /** Every way an answer can come out, in some completion or in none. */
  let every: readonly (readonly [string, unknown])[];
  beforeAll(() => {
    surveyed = survey(answers, answers);
    reached = new Reached(surveyed.groups, surveyed.possibilities);
    all = [...completions(answers)].map(comesTo);
    every = Object.keys(all[0]?.answers ?? {}).flatMap((name) =>
      (isDirt(name) ? [true, false] : choicesOf(name as 'texture')).map(
        (value) => [name, value] as const,
      ),
    );
  });
  const some = (looks: readonly (readonly [string, unknown])[], tools: string | null, need: Need) =>
    all.some(
      (each) =>
        each.fits[need] &&
        (tools === null || each.tools === tools) &&
        looks.every(([name, value]) => each.answers[name] === value),
    );

  it.each(['any', 'surface', 'goesOn'] as const)(
    'one answer is found where a completion has it and nowhere else (%s)',
    (need) => {
      for (const one of every)
        // Whatever the cracks are, they may be so while it is not asked whether the work goes on.
        if (need !== 'any' || !isAfter(one[0]))
          expect(reached.mayBe([look(one)], null, need), one.join(' ')).toBe(
            some([one], null, need),
          );
    },
  );

  it('by its tools no more and no less', () => {
    for (const tools of surveyed.choices)
      for (const one of every.filter(([name]) => !isAfter(name)))
        for (const need of ['any', 'surface', 'goesOn'] as const)
          expect(reached.mayBe([look(one)], tools, need), `${one.join(' ')} ${need}`).toBe(
            some([one], toolsAs(tools), need),
          );
    const tools = surveyed.choices[0] as Methods;
    for (const other of [{ method: 'water-jet' }, { rest: 'water-jet' }, { spent: true }] as const)
      expect(reached.mayBe([], { ...tools, ...other }, 'any')).toBe(false);
  });

  it('two answers are never missed where one completion has both', () => {
    for (const one of every)
      for (const other of every)
        for (const need of ['any', 'surface', 'goesOn'] as const)
          if (some([one, other], null, need))
            expect(reached.mayBe([look(one), look(other)], null, need)).toBe(true);
  });

  it('what is no question of the survey may always be', () => {
    expect(reached.mayBe([look(['setting', 'indoors']), look(['warnings', []])], null, 'any')).toBe(
      true,
    );
  });
});
