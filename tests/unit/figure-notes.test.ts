import { describe, expect, it } from 'vitest';
import { wholeFigures } from '$shared/figure-notes';

// A note stands on the page: it speaks of the trade, not of how this project keeps its numbers.
describe('the note of a figure', () => {
  const notes = Object.entries(wholeFigures).map(([id, { note = '' }]) => [id, note] as const);
  const inside = /\b[a-z][a-z-]*\.[a-z*][a-z-]*|\bfigures?\b|\boutvotes?\b|simulat/;
  it('is there to be looked at', () =>
    expect(notes.filter(([, note]) => note).length).toBeGreaterThan(100));
  it('finds an id in a note', () => {
    for (const bad of ['(rate.shotblast-any; 280)', 'rules of figures patch.* over', 'see ph.most'])
      expect(bad).toMatch(inside);
    expect('About 0.4 m. Common practice, 1.2 to 1.4.').not.toMatch(inside);
  });
  it('names no id and nothing of the inside', () =>
    expect(notes.filter(([, note]) => inside.test(note))).toEqual([]));
});
