import { describe, expect, it } from 'vitest';
import { redoFor, type RedoContext } from '$lib/readiness/redo';
import { verdictRules, type VerdictRule } from '$lib/readiness/rules';

const broken: RedoContext = { method: 'break-out', floor: true };
const nobody: RedoContext = { method: null, floor: true };

/**
 * What a senior sends the crew back to, in order; which answers were wrong; whom to ask.
 * Common practice, no source. Bruised by the breaker: blast the skin off first (ICRI 310.1R).
 */
const back: Readonly<Partial<Record<VerdictRule, readonly [string[], string[], string?]>>> = {
  'sounds-dull': [
    ['sound-and-mark', 'saw-cut', 'break-out', 're-sound'],
    ['looseness', 'depth'],
  ],
  'edge-not-square': [['saw-cut'], []],
  'bar-too-close': [['free-bar', 'clean-bar'], []],
  'bar-must-be-freed': [['free-bar', 'clean-bar'], []],
  'bar-rusty': [['clean-bar', 'free-bar'], []],
  // Salt in the depth does not rinse out: ACI 364.6T leaves the way on to the engineer.
  'chloride-high': [[], [], 'engineer'],
  'chloride-between': [[], [], 'engineer'],
  'chloride-tendons': [[], [], 'engineer'],
  'carbonated-to-bar': [['free-bar'], ['steel'], 'engineer'],
  'potential-high': [[], ['steel'], 'engineer'],
  'potential-between': [[], [], 'engineer'],
  'too-smooth': [
    ['break-out', 'vacuum'],
    ['finish', 'texture'],
  ],
  'too-rough': [['fill-level'], ['finish']],
  'profile-unknown': [[], ['finish'], 'maker'],
  'ph-off': [['final-wash'], []],
  'dust-left': [['last-clean'], []],
  'drop-beads': [['degrease', 'last-clean'], ['contamination']],
  'drinks-too-slowly': [['degrease', 'break-out', 'last-clean'], ['contamination']],
  'sheet-damp': [['wet-or-dry', 'moisture-test'], [], 'maker'],
  'too-humid': [['wet-or-dry', 'moisture-test'], [], 'maker'],
  'surface-dry': [['wet-or-dry'], []],
  'surface-wet': [['wet-or-dry'], []],
  'fill-young': [['fill-cure'], []],
  'fill-dull': [['break-out', 'fill-level', 'fill-cure'], []],
  'fill-closed': [['fill-cure', 'last-clean'], []],
  'too-near-dew': [['wet-or-dry'], []],
  'too-cold': [[], [], 'maker'],
  'too-hot': [[], [], 'maker'],
  cool: [[], [], 'maker'],
  'gone-stale': [['last-clean'], []],
  spoiled: [['last-clean', 'check-ready'], []],
  'mean-low-base': [
    ['blast-clean', 'break-out', 're-sound'],
    ['looseness', 'depth'],
  ],
  'single-low': [
    ['blast-clean', 'break-out', 're-sound'],
    ['looseness', 'depth'],
  ],
  'mean-low-mixed': [
    ['blast-clean', 'break-out', 're-sound'],
    ['looseness', 'depth'],
  ],
  'mean-low-bond': [['wet-or-dry', 'last-clean'], []],
  'mean-low-repair': [[], [], 'maker'],
};

describe('the way back from what a check found', () => {
  it.each(verdictRules)('%s', (rule) => {
    const [steps, ask, who] = back[rule] ?? [[], []];
    expect(redoFor(rule, broken)).toEqual({ steps, ask, ...(who && { who }) });
  });

  // Common practice, no source: what washed or ground too smooth goes to the machine that cuts a
  // profile there; on a wall the shot is not caught, so it is blasted.
  it.each([
    ['pressure-wash', true, 'shotblast'],
    ['pressure-wash', false, 'abrasive-blast'],
    ['grind', true, 'shotblast'],
    ['grind', false, 'abrasive-blast'],
    ['scarify', true, 'scarify'],
    ['shotblast', true, 'shotblast'],
    ['abrasive-blast', false, 'abrasive-blast'],
    [null, true, 'shotblast'],
    [null, false, 'abrasive-blast'],
  ] as const)('too smooth after %s, on a floor: %s: %s', (method, floor, step) => {
    expect(redoFor('too-smooth', { method, floor }).steps).toEqual([step, 'vacuum']);
    expect(redoFor('drinks-too-slowly', { method, floor }).steps[1]).toBe(step);
  });

  // ICRI 310.1R, by the methods' own facts: what strikes bruises, what blasts or washes does not.
  it.each([
    ['scarify', ['blast-clean', 'scarify', 're-sound']],
    ['shotblast', ['shotblast', 're-sound']],
    ['abrasive-blast', ['shotblast', 're-sound']],
    ['pressure-wash', ['shotblast', 're-sound']],
  ] as const)('weak concrete after %s', (method, steps) => {
    expect(redoFor('mean-low-base', { method, floor: true }).steps).toEqual(steps);
  });
  it('weak concrete where no method was advised is not taken for bruised', () => {
    expect(redoFor('mean-low-base', nobody).steps).toEqual(['shotblast', 're-sound']);
  });
});
