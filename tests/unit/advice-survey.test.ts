import { describe, expect, it } from 'vitest';
import { possibilitiesFor } from '$lib/advice/completions';
import { adviseSettled } from '$lib/advice/settle';
import { survey, type Walked } from '$lib/advice/survey';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { Answers } from '$lib/answers/answers';
import { completions } from '../helpers/enumerate';
import { maybe, slab } from '../helpers/sure-answers';

type Open = ReturnType<typeof possibilitiesFor>;
const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** For each question walked, the place among its possibilities of how it comes out here. */
function placesOf(open: Open, site: SettledSite, zone: SettledZone): Record<Walked, number> {
  const { depth, depthMm, looseness, steel, barLoss } = zone;
  const here = {
    ...{ element: site.element, freezeThaw: site.freezeThaw, salts: site.salts },
    depthAndLooseness: { depth, ...(depthMm !== undefined && { depthMm }), looseness },
    contamination: zone.contamination,
    ...{ texture: zone.texture, finish: zone.finish, cracks: zone.cracks },
    steel: { steel, ...(barLoss && { barLoss }) },
  };
  return Object.fromEntries(
    Object.entries(here).map(([name, value]) => {
      const all = open[name as Walked] as readonly { readonly members: readonly unknown[] }[];
      return [name, all.findIndex(({ members }) => members.some((each) => same(each, value)))];
    }),
  ) as Record<Walked, number>;
}

const cases: readonly (readonly [string, Answers])[] = [
  [
    'depth, looseness, cracks and bars',
    {
      ...slab,
      thickness: 100,
      warnings: maybe('holds-something-up', 'tendons-possible'),
      depth: ['under-3', '20-to-50', 'over-50'],
      looseness: ['powdery', 'tight', 'rotten'],
      cracks: ['hairline', 'crumbling', 'moving'],
      steel: ['rust-stain', 'corroded'],
      barLoss: ['within-limit', 'neighbours'],
      salts: ['none', 'de-icing', 'sea-or-pool'],
      finish: ['overlay', 'rebuild'],
    },
  ],
  [
    'place, dirt, texture and finish',
    {
      ...slab,
      element: ['wall', 'slab', 'soffit'],
      setting: ['indoors', 'open'],
      contamination: { yes: ['growth'], maybe: ['oil', 'thin-coating', 'salt-bloom'] },
      texture: ['smooth', 'pitted'],
      finish: ['sealer', 'build-coat', 'undecided'],
      freezeThaw: ['rare', 'often'],
      warnings: { yes: ['old-coating-or-adhesive'], maybe: ['fire-or-chemical', 'map-cracking'] },
    },
  ],
  [
    // Its coating is scraped off the wall alone, and there nothing goes on.
    'what stops on a wall and not on a floor',
    {
      ...slab,
      element: ['slab', 'wall'],
      contamination: { yes: ['thick-coating'], maybe: [] },
      looseness: ['rotten', 'flaking', 'powdery'],
      depth: ['20-to-50'],
      cracks: ['none', 'moving'],
    },
  ],
];

describe.each(cases)('the survey, against every completion: %s', (_, answers) => {
  const quick = survey(answers, answers);
  const all = [...completions(answers)].map(({ site, zone }) => {
    const { verdict, underneath, steps } = adviseSettled(site, zone);
    return {
      ...{ verdict, method: underneath, steps: steps.map(({ id }) => id) },
      places: placesOf(quick.possibilities, site, zone),
      warnings: quick.warningSets.findIndex((set) => same(set, site.warnings)),
    };
  });

  it('knows how each answer can come out where it comes to this, and by which warnings', () => {
    for (const { verdict, method, seen, warnings } of quick.tallies) {
      const here = all.filter((each) => each.verdict === verdict && each.method === method);
      const bits = (name: Walked) => here.reduce((sum, { places }) => sum | (1 << places[name]), 0);
      const names = Object.keys(seen) as Walked[];
      expect(seen, `${verdict} ${method}`).toEqual(
        Object.fromEntries(names.map((name) => [name, bits(name)])),
      );
      expect([...warnings].sort((one, other) => one - other)).toEqual(
        [...new Set(here.map((each) => each.warnings))].sort((one, other) => one - other),
      );
    }
  });
  it('gives one completion that comes to it', () => {
    for (const { verdict, method, site, zone } of quick.tallies) {
      expect(adviseSettled(site, zone)).toMatchObject({ verdict, underneath: method });
      expect(all.map(({ places }) => places)).toContainEqual(
        placesOf(quick.possibilities, site, zone),
      );
    }
  });
  it('knows every step that some completion which is not stopped calls for', () => {
    const going = all.filter(({ verdict }) => verdict !== 'stop');
    expect(new Set(quick.anySteps)).toEqual(new Set(going.flatMap(({ steps }) => steps)));
  });
});

it('the likeliest comes first, whatever was ticked first', () => {
  const answers: Answers = { ...slab, looseness: ['rotten', 'tight', 'powdery'] };
  expect(survey(answers, answers).tallies.map(({ method, weight }) => [method, weight])).toEqual([
    ['pressure-wash', 2],
    ['break-out', 1],
  ]);
});

describe('what is told of a hold', () => {
  const facts = (answers: Answers, rule: string) => {
    const { holds, possibleHolds } = survey(answers, answers);
    return [...holds, ...possibleHolds].find((hold) => hold.rule === rule)?.facts;
  };
  const cutting: Answers = { ...slab, looseness: ['rotten'], depth: ['20-to-50'] };
  it('names the wall or the soffit only where it is known which', () => {
    expect(facts({ ...cutting, element: ['wall'] }, 'structure-before-removal')).toHaveProperty(
      'element',
      'wall',
    );
    expect(
      facts({ ...cutting, element: ['wall', 'soffit'] }, 'structure-before-removal'),
    ).not.toHaveProperty('element');
  });
});

// Chasing a crack cuts into what may hold something up, and no engineer is asked for that alone.
describe('the hazards of the work', () => {
  const chased: Answers = {
    ...slab,
    cracks: ['crumbling'],
    finish: ['overlay'],
    looseness: ['tight', 'flaking'],
  };
  it.each<[string, NonNullable<Answers['warnings']>, boolean]>([
    ['what is told', { yes: ['holds-something-up'], maybe: [] }, true],
    ['what may be', maybe('holds-something-up', 'map-cracking'), true],
    ['neither', maybe('map-cracking'), false],
  ])('grow with the warnings: %s', (_, warnings, structure) => {
    const answers = { ...chased, warnings };
    const { cautions } = survey(answers, answers);
    const plain = [...completions(answers)].flatMap(
      ({ site, zone }) => adviseSettled(site, zone).cautions,
    );
    expect(new Set(cautions)).toEqual(new Set(plain));
    expect(cautions.includes('structure')).toBe(structure);
  });
});
