import { describe, expect, it } from 'vitest';
import { asSet, hazardsHere, hazardsIn, hazardsOfHolds } from '$lib/advice/cautions';
import type { Hold } from '$lib/advice/types';
import { choicesOf } from '$lib/answers/questions';
import { hazardIds, hazardsOfStep, type HazardId, type StepId } from '$shared/methods';
import { adviceOn, siteWith, zoneWith, type SiteChange, type ZoneChange } from '../helpers/settled';

const here = (step: StepId, site: SiteChange = {}, zone: ZoneChange = {}) =>
  hazardsHere(siteWith(site), zoneWith(zone))(step);
const has = (hazard: HazardId, step: StepId, site?: SiteChange, zone?: ZoneChange) =>
  here(step, site, zone).includes(hazard);

// Trade page 7. Common practice, no source, but for the engine: NIOSH 96-118.
describe('the hazards of a step at a place', () => {
  it.each<[HazardId, StepId, SiteChange, ZoneChange, boolean]>([
    // Pieces fall from a soffit and off a wall, and from nothing else that is worked.
    ['overhead', 'break-out', { element: 'soffit' }, {}, true],
    ['overhead', 'break-out', { element: 'wall' }, {}, true],
    ['overhead', 'break-out', { element: 'suspended-slab' }, {}, false],
    ['overhead', 'pressure-wash', { element: 'soffit' }, {}, false],
    // No engine indoors, nor in partly enclosed places; in the open it does no harm.
    ['carbon-monoxide', 'scarify', { setting: 'indoors' }, {}, true],
    ['carbon-monoxide', 'scarify', { setting: 'sheltered' }, {}, true],
    ['carbon-monoxide', 'scarify', { setting: 'open' }, {}, false],
    ['carbon-monoxide', 'grind', { setting: 'indoors' }, {}, false],
    // Frost and heat reach what is not indoors.
    ['weather', 'pressure-wash', { setting: 'open' }, {}, true],
    ['weather', 'pressure-wash', { setting: 'sheltered' }, {}, true],
    ['weather', 'pressure-wash', { setting: 'indoors' }, {}, false],
    // Something may come down where it bears a load, or a tendon lets go.
    ['structure', 'break-out', {}, {}, false],
    ['structure', 'break-out', { element: 'wall' }, {}, true],
    ['structure', 'break-out', { warnings: ['holds-something-up'] }, {}, true],
    ['structure', 'break-out', { warnings: ['tendons-possible'] }, {}, true],
    ['structure', 'break-out', { warnings: ['map-cracking'] }, {}, false],
    ['structure', 'scarify', { element: 'suspended-slab' }, {}, false],
    // What an old coating holds comes with whatever throws pieces.
    ['lead-asbestos', 'grind', {}, { contamination: ['thin-coating'] }, true],
    ['lead-asbestos', 'grind', { warnings: ['old-coating-or-adhesive'] }, {}, true],
    ['lead-asbestos', 'grind', {}, { contamination: ['growth'] }, false],
    ['lead-asbestos', 'strip-coating', {}, { contamination: ['rubbery-coating'] }, true],
    ['lead-asbestos', 'cover', {}, { contamination: ['rubbery-coating'] }, false],
    // There is an edge or a ladder everywhere but on a slab on the ground.
    ['falls', 'sound-and-mark', {}, {}, false],
    ['falls', 'sound-and-mark', { element: 'steps' }, {}, true],
    ['falls', 'cover', { element: 'wall' }, {}, true],
    // What a tool brings it brings everywhere.
    ['silica', 'grind', { setting: 'open' }, {}, true],
    ['wash-water', 'pressure-wash', { setting: 'indoors' }, {}, true],
    ['vibration', 'pressure-wash', {}, {}, false],
  ])('%s, %s, %o %o: %s', (hazard, step, site, zone, expected) => {
    expect(has(hazard, step, site, zone)).toBe(expected);
  });

  it('come in one order, and nothing that a step does not bring', () => {
    const all = here(
      'break-out',
      { setting: 'indoors', element: 'soffit' },
      { contamination: ['thin-coating'] },
    );
    expect(all).toEqual(hazardIds.filter((each) => all.includes(each)));
    const own = [...hazardsOfStep['break-out'], 'lead-asbestos', 'overhead', 'falls'];
    expect([...all].sort()).toEqual([...own].sort());
  });
  it('are those of the place asked about, however often another was asked before', () => {
    const known = here('break-out', { setting: 'indoors' });
    for (const setting of choicesOf('setting'))
      for (const element of choicesOf('element')) here('break-out', { setting, element });
    expect(here('break-out', { setting: 'indoors' })).toEqual(known);
  });
});

describe('hazards as a set', () => {
  it('are the same as the list, whatever its order', () => {
    expect(hazardsIn(asSet(['weather', 'silica', 'falls']))).toEqual([
      'silica',
      'falls',
      'weather',
    ]);
    expect(hazardsIn(asSet([]))).toEqual([]);
    expect(hazardsIn(asSet([...hazardIds, 'silica']))).toEqual([...hazardIds]);
    for (const hazard of hazardIds) expect(hazardsIn(asSet([hazard]))).toEqual([hazard]);
  });
});

// Common practice, no source: before a stop no step is listed, yet whoever goes near has to know.
describe('the hazards of what stands before the work', () => {
  const hold = (rule: Hold['rule'], who: Hold['who']): Hold => ({ rule, verdict: 'stop', who });
  it.each<[string, readonly Hold[], SiteChange, readonly HazardId[]]>([
    ['nothing stands before it', [], { element: 'soffit' }, []],
    [
      'what an engineer looks at may come down',
      [hold('fire-or-chemical', 'engineer')],
      {},
      ['structure'],
    ],
    ['a coating that is tested', [hold('old-coating', 'laboratory')], {}, ['lead-asbestos']],
    ['cables that are looked for', [hold('buried-services', 'locator')], {}, ['electric']],
    ['a map of cracks harms nobody', [hold('map-cracking', 'laboratory')], {}, []],
    ['a wall', [hold('map-cracking', 'laboratory')], { element: 'wall' }, ['overhead', 'falls']],
    [
      'a suspended slab',
      [hold('map-cracking', 'laboratory')],
      { element: 'suspended-slab' },
      ['falls'],
    ],
  ])('%s', (_, holds, site, expected) => {
    expect(hazardsOfHolds(holds, siteWith(site), zoneWith())).toEqual(expected);
  });
});

describe('the cautions of advice', () => {
  it('are those of all its steps and holds, each once', () => {
    const { steps, cautions } = adviceOn({ depth: '20-to-50', looseness: 'hollow' });
    expect(cautions).toEqual(
      hazardIds.filter((id) => steps.some(({ hazards }) => hazards.includes(id))),
    );
    expect(cautions.length).toBeGreaterThan(6);
  });
  it('before a stop that leaves a method name what its steps would bring', () => {
    const { steps, cautions } = adviceOn(
      { depth: '20-to-50', looseness: 'hollow' },
      { element: 'soffit' },
    );
    expect(steps).toEqual([]);
    expect(cautions).toEqual(expect.arrayContaining(['silica', 'structure', 'overhead', 'falls']));
  });
  it('where no surface method stands, those of going near', () => {
    expect(adviceOn({}, { warnings: ['fire-or-chemical'] }).cautions).toEqual(['structure']);
  });
});

// Silica is what concrete sheds (29 CFR 1926.1153 is about cutting, grinding, blasting it): washing moss
// off sound concrete raises none, nor does the vacuum after it. Common practice, no source.
describe('silica where dust is taken up', () => {
  const silicaIn = (zone: ZoneChange) => adviceOn(zone).cautions.includes('silica');
  const washed: ZoneChange = {
    depth: 'film',
    looseness: 'tight',
    texture: 'sandy',
    contamination: ['growth'],
    finish: 'sealer',
  };
  it('is told of only where a step has thrown it', () => {
    expect(adviceOn(washed).method).toBe('pressure-wash');
    expect(adviceOn(washed).steps.map(({ id }) => id)).toContain('last-clean');
    expect(silicaIn(washed)).toBe(false);
    expect(silicaIn({ ...washed, texture: 'smooth', finish: 'thin-film' })).toBe(true);
  });
});
