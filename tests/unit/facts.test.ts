import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rateFigureOf } from '$lib/plan/hours';
import { figureFaults, loadFacts } from '$shared/check';
import { figureFiles, wholeFigures } from '$shared/figure-notes';
import { figures, rangeOf, valueOf } from '$shared/figures';
import { literalTypes, typedFacts } from '$shared/literal-types';
import { aspects, looked } from '$shared/looked-for';
import { methodIds, stepIds } from '$shared/methods';
import { sourceFiles } from '$shared/sources';
import { toolIds, tools } from '$shared/tools';
import { sourcedParts } from '../published/guards/perturb';

/** The figures the plan and the crew's day reckon hours, levels and vibration with. */
const rateIds = new Set<unknown>([
  ...stepIds.map(rateFigureOf),
  'rate.break-out',
  'rate.break-out-reinforced',
  'rate.break-out-least',
]);
const toolFigures = new Set<unknown>(
  toolIds.flatMap((id) => [tools[id].noise, tools[id].vibration]),
);

describe('the facts in shared/', () => {
  it('are sound', () => {
    const { figures, sources } = loadFacts(figureFiles, sourceFiles);
    expect(Object.keys(figures).length).toBeGreaterThan(80);
    expect(Object.keys(sources).length).toBeGreaterThan(15);
  });

  const sources = { handbook: { title: 'A handbook', by: 'Nobody', kind: 'guide' } };
  it.each([
    [{ unit: 'mm', value: 3 }, 'basis'],
    [{ unit: 'mm', value: 3, basis: 'hearsay' }, 'basis'],
    [{ unit: 'mm', value: 3, basis: 'published' }, 'needs a source'],
    [{ unit: 'mm', value: 3, basis: 'published', source: ['gossip'] }, 'unknown source "gossip"'],
    [{ unit: 'mm', range: [9, 3], basis: 'practice' }, 'wrong way round'],
    [{ unit: 'mm', value: 3, range: [1, 4], basis: 'practice' }, 'either value or range'],
    [{ unit: 'mm', basis: 'practice' }, 'either value or range'],
    [{ unit: 'mm', range: [1, 4], typical: 7, basis: 'practice' }, 'typical lies outside'],
    [{ unit: 'furlong', value: 3, basis: 'practice' }, 'unit'],
    [{ unit: 'mm', value: 3, basis: 'derived' }, 'arithmetic'],
    [{ unit: 'mm', value: Infinity, basis: 'practice' }, 'finite'],
    [{ unit: 'mm', value: 3, basis: 'practice', colour: 'red' }, 'colour'],
    [{ unit: 'mm', value: 3, basis: 'published', source: ['handbook'], seen: 'half' }, 'seen'],
    [{ unit: 'mm', value: 3, basis: 'practice', seen: 'whole' }, 'seen is said of no source'],
    [{ unit: 'mm', value: 3, basis: 'practice', partBasis: { high: 'memory' } }, 'does not have'],
    [{ unit: 'mm', value: 3, basis: 'practice', partBasis: { top: 'memory' } }, 'top'],
    [
      { unit: 'mm', range: [1, 3], basis: 'practice', partBasis: { high: 'published' } },
      'needs a source',
    ],
  ])('refuses %j', (figure, fault) => {
    const faults = figureFaults('a.figure', figure, sources).join('\n');
    expect(faults).toContain('a.figure');
    expect(faults).toContain(fault);
  });

  it('refuses an id used in two files', () => {
    const figure = { unit: 'mm', value: 3, basis: 'practice' };
    expect(() => loadFacts([{ twice: figure }, { twice: figure }], [sources])).toThrow(
      'used twice',
    );
  });

  it('gives one number only of a figure that is one number', () => {
    expect(valueOf('depth.thin')).toBe(3.2);
    expect(() => valueOf('csp.grind')).toThrow('range');
    expect(valueOf('depth.thin', { 'depth.thin': 4 })).toBe(4);
    expect(rangeOf('csp.grind', { 'csp.grind': 2 })).toEqual([2, 2]);
  });
});

describe('what every method wants to have in print', () => {
  const asked = methodIds.flatMap((method) => aspects.map((aspect) => [method, aspect] as const));
  it.each(asked)(
    '%s: %s has a figure with a source, or says where it was looked for',
    (...[method, aspect]) => {
      const { figures: found = [], looked: tried } = looked[method]?.[aspect] ?? {};
      for (const id of found) {
        expect(figures).toHaveProperty([id]);
        expect(sourcedParts(wholeFigures[id]), id).not.toEqual([]);
      }
      expect(found.length > 0 || (tried ?? '').length > 20).toBe(true);
    },
  );

  // Rates, levels and vibration have a typical value wherever they are a range to reckon with.
  it.each(
    (Object.keys(figures) as (keyof typeof figures)[]).filter(
      (id) => figures[id].range && (rateIds.has(id) || toolFigures.has(id)),
    ),
  )('%s says what is typical', (id) => {
    expect(figures[id].typical).toBeDefined();
  });
});

describe('the types of facts', () => {
  it.each(typedFacts)('of shared/%s.json are those that `npm run facts` writes', (name) => {
    const read = (ending: string) => readFileSync(`shared/${name}${ending}`, 'utf8');
    expect(read('.d.json.ts')).toBe(literalTypes(read('.json')));
  });
});
