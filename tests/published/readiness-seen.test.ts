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
    ['sounding', 'clear', 'ready'],
    ['sounding', 'dull', 'not-ready'],
    ['edges', 'square', 'ready'],
    ['edges', 'not-square', 'not-ready'],
    ['bars-clean', 'clean', 'ready'],
    ['bars-clean', 'rusty', 'not-ready'],
    ['water-drop', 'spreads', 'ready'],
    ['water-drop', 'beads', 'not-ready'],
    ['plastic-sheet', 'dry', 'ready'],
    ['plastic-sheet', 'damp', 'not-ready'],
    ['surface-damp', 'damp', 'ready'],
    ['surface-damp', 'dry', 'not-ready'],
    ['surface-damp', 'wet', 'not-ready'],
  ] as const)('%s, %s: %s', (check, choice, state) => {
    expect(judge(check, [choice]).state).toBe(state);
  });
});
