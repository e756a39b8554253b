import { describe, expect, it } from 'vitest';
import { methodOf } from '$lib/trial/aim';
import { figures, rangeOf, type FigureId } from '$shared/figures';
import { ladderIds, numbersOf, settingLadders } from '$shared/ladders';
import { settingFigures } from '$shared/settings';

describe('what a square is tried with, and what the advice names', () => {
  it.each(ladderIds)('%s: a pressure is one of those the advice prints', (id) => {
    const printed = settingFigures(methodOf(id));
    const pressures = settingLadders[id].notches
      .flat()
      .flatMap(({ figure }) => (figure && figures[figure].unit === 'MPa' ? [figure] : []));
    for (const figure of pressures) expect(printed).toContain(figure);
  });

  // Turn it up until it cleans: common practice, no source. The span: figure `wash.prepare`.
  it('washing begins at the gentle end of the span the advice names', () => {
    const { notches, begin } = settingLadders['pressure-wash'];
    const [pressure] = notches[begin] ?? [];
    const [gentle, harsh] = rangeOf('wash.prepare' satisfies FigureId);
    expect(pressure && numbersOf(pressure)).toEqual([gentle, gentle]);
    const highest = notches.flat().filter(({ setting }) => setting === 'pressure');
    expect(Math.max(...highest.flatMap((each) => numbersOf(each) ?? []))).toBe(harsh);
  });

  // Begin gentler: common practice, no source. What a lighter hammer has bruised less cannot be put back.
  it('breaking out begins with the lighter hammer', () => {
    for (const id of ladderIds.filter((each) => methodOf(each) === 'break-out')) {
      const { notches, begin } = settingLadders[id];
      const weights = notches.map((notch) =>
        Math.max(
          ...notch.flatMap((each) => (each.setting === 'hammer' ? (numbersOf(each) ?? []) : [])),
        ),
      );
      expect(weights[begin], id).toBe(Math.min(...weights));
    }
  });
});
