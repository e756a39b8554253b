import { describe, expect, it } from 'vitest';
import { figureFaults, loadFacts } from '$shared/check';
import { figureFiles } from '$shared/figure-notes';
import { rangeOf, valueOf } from '$shared/figures';
import { sourceFiles } from '$shared/sources';

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
