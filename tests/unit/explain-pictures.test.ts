import { letterWidth } from '$lib/drawing/explain/letters';
import { depths } from '$lib/drawing/explain/hole-depth';
import { drawnFinishes, overlayRough } from '$lib/drawing/explain/finish-scale';
import { render } from 'svelte/server';
import type { Component } from 'svelte';
import { describe, expect, it } from 'vitest';

const files = import.meta.glob<Component>('$lib/drawing/explain/*.svelte', {
  import: 'default',
  eager: true,
});
const pictures = Object.entries(files)
  .map(([path, picture]) => [path.replace(/^.*\/|\.svelte$/g, ''), picture] as const)
  .filter(([name]) => name !== 'Sketch' && name !== 'Word');

describe('the drawings of the explainers', () => {
  it.each(pictures)('%s says what it shows, and its words stay on the sheet', (_, picture) => {
    const html = render(picture).body;
    expect(/aria-label="([^"]+)"/.exec(html)?.[1]?.length).toBeGreaterThan(60);
    expect(/<figcaption[^>]*>([^<]+)/.exec(html)?.[1]?.length).toBeGreaterThan(40);
    expect(html).not.toMatch(/\sstyle=|NaN|undefined/);
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(html) ?? [];
    for (const [, attributes = '', text = ''] of html.matchAll(/<text([^>]*)>([^<]*)/g)) {
      const [x, y] = ['x', 'y'].map((name) =>
        Number(new RegExp(`\\s${name}="([\\d.]+)"`).exec(attributes)?.[1]),
      ) as [number, number];
      const middle = attributes.includes('text-anchor="middle"');
      const length = text.trim().length * letterWidth;
      expect(x - (middle ? length / 2 : 0), text).toBeGreaterThanOrEqual(0);
      expect(x + (middle ? length / 2 : length), text).toBeLessThanOrEqual(Number(width) + 4);
      expect(y, text).toBeLessThanOrEqual(Number(height));
    }
  });
});

describe('a freed bar', () => {
  // ACI 364.6, as `bar.along` prints it: 6 in past the last rust, which is no hand's width (75 to 100 mm).
  it('is told by the length of the steps, in both units', () => {
    const picture = pictures.find(([name]) => name === 'UndercutBar')?.[1];
    if (!picture) throw new Error('no picture of a freed bar');
    const html = render(picture).body;
    expect(html).toMatch(/at least 150\smm \(6\sin\) past the last rust/);
    expect(html).not.toMatch(/hand/);
  });
});

describe('a finished hole against a third and a half', () => {
  // Common practice, with the published space behind a bar: 40 + 12 + 19 mm in a slab of 150 mm.
  it('is deeper than the damage by cover, bar and the space behind it: past the third, above half', () => {
    expect(depths.hole).toBe(40 + 12 + 19);
    expect(depths.damage).toBeLessThan(depths.third);
    expect(depths.third).toBeCloseTo(50, 0);
    expect(depths.half).toBe(75);
    expect(depths.hole).toBeGreaterThan(depths.third);
    expect(depths.hole).toBeLessThan(depths.half);
  });
});

describe('the finishes to one scale', () => {
  // ICRI 310.2R as remembered: sealer to 3 mil, film to 10, build coat to 40, self-levelling to 1/8 in, overlay to 1/4 in.
  it('stand in their true thickness, and each wants it at least as rough as the thinner one', () => {
    const mm = drawnFinishes.map(({ thickness }) => thickness);
    [3 * 0.0254, 10 * 0.0254, 40 * 0.0254, 25.4 / 8, 25.4 / 4].forEach((published, index) =>
      // The figures are rounded to a tenth of a millimetre.
      expect(Math.abs((mm[index] ?? 0) - published)).toBeLessThan(0.06),
    );
    const rough = [...drawnFinishes.map((finish) => finish.rough), overlayRough];
    expect(rough).toEqual([...rough].sort((one, other) => one - other));
  });
});
