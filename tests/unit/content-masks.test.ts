import { explainers } from '$lib/learn/library.server';
import { figuresIn } from '$lib/learn/check';
import { respiratorIds } from '$lib/safety/duties';
import { beginMask } from '$lib/safety/masks';
import { figures, valueOf, type FigureId } from '$shared/figures';
import { silicaOptions, silicaRowIds } from '$shared/silica-table';
import { render } from 'svelte/server';
import type { Component } from 'svelte';
import { describe, expect, it } from 'vitest';

const pages = import.meta.glob<Component>('/content/explainers/*.md', {
  import: 'default',
  eager: true,
});
const htmlOf = (slug: string): string => {
  const page = pages[`/content/explainers/${slug}.md`];
  if (!page) throw new Error(`no page ${slug}`);
  return render(page).body.replaceAll('\u00a0', ' ');
};
const bodyOf = (slug: string) => explainers.find((page) => page.slug === slug)?.body ?? '';

describe('which mask', () => {
  it('is named for every factor that the site asks for or a kind of mask has', () => {
    const asked = new Set([
      valueOf(beginMask),
      ...silicaRowIds.flatMap((row) =>
        silicaOptions(row).flatMap(({ outdoors, enclosed }) => [
          ...(outdoors ?? []),
          ...(enclosed ?? []),
        ]),
      ),
      ...respiratorIds.map((id) => valueOf(`silica.apf.${id}`)),
    ]);
    asked.delete(0);
    // 29 CFR 1926.1153 Table 1 asks for 10 and 25, Great Britain for 20; a full face mask has 50 (29 CFR 1910.134).
    expect([...asked].sort((one, other) => one - other)).toEqual([10, 20, 25, 50]);
    const ids = [...bodyOf('respirators').matchAll(/\*\*Factor <Fig id="([^"]+)"/g)];
    const named = ids.map(([, id]) => valueOf(id as FigureId));
    expect(named).toEqual([10, 20, 25, 50]);
  });

  it('rests on British factors that are marked as from memory', () => {
    expect(figuresIn(bodyOf('respirators'))).toContain('mask.gb-full');
    expect(figures['mask.gb-full'].basis).toBe('memory');
    expect(bodyOf('respirators')).toMatch(/from memory/);
  });
});

describe('the dust table', () => {
  // 29 CFR 1926.1153 Table 1, rows (ii), (x) and (xii).
  it('stands whole on the page of silica dust, with the mask outdoors and indoors', () => {
    const html = htmlOf('silica-dust').replace(/<!--.*?-->/g, '');
    expect(html).toContain('id="dust-table"');
    const cells = (of: RegExp) =>
      [...html.matchAll(/<tr>(.*?)<\/tr>/gs)]
        .map(([, row = '']) => [...row.matchAll(/<td>(.*?)<\/td>/gs)].map(([, cell]) => cell))
        .find(([tool = '']) => of.test(tool))
        ?.slice(1);
    expect(cells(/hand-held power saws/)).toEqual(['no mask; over 4 hours factor 10', 'factor 10']);
    expect(cells(/row \(xii\).*water on the wheel/i)).toEqual(['no mask', 'not allowed']);
    expect(cells(/row \(xii\).*shroud/i)).toEqual(['no mask', 'no mask; over 4 hours factor 10']);
    const rows = silicaRowIds.flatMap((row) => silicaOptions(row));
    expect(html.match(/<tr>/g)).toHaveLength(rows.length + 1);
  });

  it('is led to wherever a page sends somebody to it', () => {
    for (const { slug, body } of explainers)
      for (const [line] of body.matchAll(/^.*dust table.*$/gm))
        if (slug !== 'silica-dust')
          expect(line, slug).toContain('[dust table](../silica-dust/#dust-table)');
  });
});
