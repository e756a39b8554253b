import { describe, expect, it } from 'vitest';
import { choicesOf } from '$lib/answers/questions';
import { bodyStones } from '$lib/drawing/section/body';
import { frameOf } from '$lib/drawing/section/frame';
import { roundLength, ticks } from '$lib/drawing/section/ruler';
import { sceneOf } from '$lib/drawing/section/scene';
import { sectionState } from '$lib/drawing/section/state';
import { formatter } from '$lib/words/format';
import { sectionHole } from '$words/ui/advice';

describe('ruler', () => {
  it('numbers round lengths of the reader’s system', () => {
    const metric = ticks(100, 1.5, 'metric').filter(({ label }) => label);
    expect(metric.map(({ label }) => label)).toEqual(['0', '20', '40', '60', '80', '100']);
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
    const us = ticks(101.6, 1.5, 'us').filter(({ label }) => label);
    expect(us.map(({ at }) => at)).toEqual(
      [0, 25.4, 50.8, 76.2, 101.6].map((at) => expect.closeTo(at, 6)),
    );
    expect(us.map(({ label }) => label)).toEqual(['0', '1', '2', '3', '4']);
  });

  it('keeps ticks and numbers apart at any thickness', () => {
    for (const units of ['metric', 'us'] as const)
      for (let thickness = 30; thickness <= 2000; thickness += 35) {
        const scale = 150 / thickness;
        const all = ticks(thickness, scale, units);
        const numbered = all.filter(({ label }) => label !== null);
        expect(((all[1]?.at ?? 0) - 0) * scale).toBeGreaterThanOrEqual(7 - 1e-9);
        expect(numbered.length).toBeGreaterThan(1);
        expect((numbered[1]?.at ?? 0) * scale).toBeGreaterThan(14);
      }
  });

  it('finds the next round length up', () => {
    expect(roundLength(3, 'metric')).toBe(5);
    expect(roundLength(3, 'us')).toBeCloseTo(3.175);
  });
});

const draw = (...answers: Parameters<typeof sectionState>) => {
  const state = sectionState(...answers);
  return sceneOf(state, 'metric', bodyStones(frameOf(state.element, state.thickness)));
};

describe('cross-section', () => {
  it('draws every depth and thickness the questions allow', () => {
    for (const thickness of [30, 75, 300, 2000])
      for (const depth of [0, 0.1, 1, 6.4, 29, 1000])
        for (const element of choicesOf('element')) {
          const scene = draw(
            { element: [element], thickness },
            { depth, steel: ['corroded'], looseness: ['rotten'], cracks: ['crumbling'] },
            { behindBar: 19, leaves: [7, 10] },
          );
          const paths = [
            ...scene.layers.flatMap(({ marks }) => marks),
            ...(scene.lens?.inside ?? []),
          ]
            .map(([, path]) => path)
            .join('');
          expect(paths).not.toMatch(/NaN|Infinity|undefined/);
        }
  });

  it('of a case to practise no hole is drawn before it is answered: it would tell the answer', () => {
    const rotten = [{ thickness: 150 }, { depth: 40, looseness: ['rotten'] }] as const;
    expect(sectionState(...rotten).hole).not.toBeNull();
    expect(sectionState(...rotten, { asFound: true }).hole).toBeNull();
  });
  it('shows the range of a depth that is not settled, and a tight hollow as empty', () => {
    const marks = (zone: Parameters<typeof sectionState>[1]) =>
      draw({ element: ['slab'], thickness: 100 }, zone).layers.flatMap((layer) =>
        layer.marks.map(([ink]) => ink),
      );
    expect(marks({ depth: ['6-to-20', '20-to-50'] })).toContain('crayon-open');
    expect(marks({ depth: ['6-to-20', '20-to-50'] })).not.toContain('crayon');
    expect(marks({ depth: 30 })).toContain('crayon');
    expect(marks({ depth: 30 })).toContain('wash');
    expect(marks({ depth: 30, looseness: ['tight'] })).not.toContain('wash');
    expect(marks({})).not.toContain('crayon');
  });
});

// Arithmetic: nothing is deeper than the slab is thick, and what gets there goes right through.
describe('the finished hole, as it is told', () => {
  const say = formatter('metric');
  const told = (thickness: number | 'unknown', depth: number) => {
    const { hole } = sectionState(
      { thickness },
      { depth, looseness: ['hollow'], steel: ['corroded'] },
    );
    return hole && sectionHole(hole, say).replaceAll('\u00A0', ' ');
  };
  it('ends at the underside of a slab that is known', () => {
    expect(told(180, 100)).toBe('finished hole: 113 to 141 mm');
    expect(told(135, 100)).toBe('finished hole: 113 mm to right through');
    expect(told(110, 100)).toBe('finished hole: right through');
    expect(told('unknown', 100)).toBe('finished hole: 113 to 141 mm');
  });
});
