import { describe, expect, it } from 'vitest';
import { figures } from '$shared/figures';
import { published } from './guards/guard';
import { guards, leastShare, unguarded } from './guards';
import { perturbAll, withChange } from './guards/perturb';

/** Every sourced figure, as its source prints it. The tables lie in guards/, by kind. */
describe('figures against their sources', () => {
  it.each(guards.map((guard) => [guard.says, guard.source, guard] as const))(
    '%s (%s)',
    (says, source, guard) => {
      expect(guard.holds(), `${says}: ${source}`).toBe(true);
    },
  );
});

describe('the guards', () => {
  const report = perturbAll(guards);

  it('turn red for four sourced figures of five, each changed by 15 % or one step', () => {
    expect(report.guarded.length / report.sourced.length).toBeGreaterThanOrEqual(leastShare);
  });
  it('name every figure they do not hold, with why, and no other', () => {
    const open = report.sourced.filter((id) => !report.guarded.includes(id));
    expect(Object.keys(unguarded).sort()).toEqual([...open].sort());
  });
  it('leave the figures as they were', () => {
    const before = structuredClone(figures);
    perturbAll(guards);
    expect(figures).toEqual(before);
  });
  it('are not counted where they hold nothing', () => {
    expect(perturbAll([]).guarded).toEqual([]);
    // Held at one end only: a range is guarded by both.
    const half = { ...published('jet.pressure', 0, 'as printed', ''), holds: () => true };
    expect(perturbAll([half]).guarded).toEqual([]);
  });
  it('turn red for a value that is off by 15 %', () => {
    const guard = published('blast.air', 300, 'cfm', '');
    expect(guard.holds()).toBe(true);
    for (const factor of [0.85, 1.15])
      expect(withChange('blast.air', 'value', 8.5 * factor, guard.holds)).toBe(false);
  });
});
