import { describe, expect, it } from 'vitest';
import { context, judgeCheck as judge } from '../helpers/readiness';

describe('profile', () => {
  // Source: ICRI 310.2R through the figure csp.needs.overlay: CSP 5 to 10 (as reported).
  it.each([
    [[5, 6, 7], 'ready', 'passed'],
    [[5, 4, 7], 'not-ready', 'too-smooth'],
  ])('%j under an overlay: %s', (readings, state, rule) => {
    expect(judge('profile', readings)).toMatchObject({ state, rule });
  });
  it('is too rough for a thin film', () => {
    const film = { ...context, profile: [1, 3] as const };
    expect(judge('profile', [4], {}, film).rule).toBe('too-rough');
  });
});

describe('dust on tape', () => {
  // Scale 0 to 5: ISO 8502-3, written for steel (from memory). That no more than a trace may stay:
  // common practice, no source.
  it.each([
    [0, 'ready'],
    [1, 'ready'],
    [2, 'not-ready'],
    [5, 'not-ready'],
  ])('rating %i: %s', (rating, state) => {
    expect(judge('dust-tape', [rating]).state).toBe(state);
  });
});

describe('what is looked at', () => {
  // Common practice, no source.
  it.each([
    ['sounding', 'clear', 'ready', 'passed'],
    ['sounding', 'dull', 'not-ready', 'sounds-dull'],
    ['edges', 'square', 'ready', 'passed'],
    ['edges', 'not-square', 'not-ready', 'edge-not-square'],
    ['bars-clean', 'clean', 'ready', 'passed'],
    ['bars-clean', 'rusty', 'not-ready', 'bar-rusty'],
    ['water-drop', 'spreads', 'ready', 'passed'],
    ['water-drop', 'beads', 'not-ready', 'drop-beads'],
    ['plastic-sheet', 'dry', 'ready', 'passed'],
    ['plastic-sheet', 'damp', 'not-ready', 'sheet-damp'],
    ['surface-damp', 'damp', 'ready', 'passed'],
    ['surface-damp', 'dry', 'not-ready', 'surface-dry'],
    ['surface-damp', 'wet', 'not-ready', 'surface-wet'],
  ] as const)('%s, %s: %s', (check, choice, state, rule) => {
    expect(judge(check, [choice])).toMatchObject({ state, rule });
  });
});
