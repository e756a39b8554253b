import { describe, expect, it } from 'vitest';
import { choicesOf } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';
import { themes } from './case';
import { disagreements } from './judge';

describe.each(themes)('$theme', ({ cases }) => {
  it.each(cases)('$id: $title', (one) => {
    const lines = disagreements(one);
    if (lines.length)
      expect.fail([one.title, ...lines, `why: ${one.reason} (${one.source})`].join('\n  '));
  });
});

describe('the cases themselves', () => {
  const all = themes.flatMap(({ cases }) => cases);

  it('have a reason and a source each, and no two share an id', () => {
    const ids = all.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, title, reason, source, expect: wanted } of all) {
      expect(title && reason && source, id).toBeTruthy();
      expect(Object.keys(wanted.zones).length, id).toBeGreaterThan(0);
    }
    expect(all.length).toBeGreaterThanOrEqual(60);
  });

  it('come to every method but water jetting, every place and every verdict', () => {
    const wanted = all.flatMap(({ expect: { zones } }) => Object.values(zones));
    // Of several that would do, the first is what the senior would take.
    const methods = new Set(wanted.map(({ methods: [first] = [] }) => first));
    expect(methodIds.filter((id) => id !== 'water-jet' && !methods.has(id))).toEqual([]);
    const places = new Set(all.map(({ site }) => (site as { element: string }).element));
    expect([...choicesOf('element')].filter((id) => !places.has(id))).toEqual([]);
    const verdicts = new Set(wanted.flatMap(({ verdict = [] }) => verdict));
    expect([...verdicts].sort()).toEqual(['find-out-first', 'prepare', 'stop']);
  });
});
