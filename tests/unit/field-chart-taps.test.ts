import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { choicesOf } from '$lib/answers/questions';
import { settledOf } from '$lib/learn/chart/cells';
import { fieldChart } from '$lib/learn/chart/spoken';
import Page from '../../src/routes/learn/chart/+page.svelte';
import { untied } from '../helpers/plain-formatter';
import { methodOf } from '../every-route/trade-table';
import type { TradeZone } from '../every-route/trade-types';

/** The chart on a phone, read out of its HTML; what is chosen there is shown by the style sheet alone. */
const css = readFileSync('src/routes/learn/chart/chart-taps.css', 'utf8');
const { body } = render(Page as never, {
  props: { data: { chart: fieldChart(), version: '0.0.0', made: 'today' } } as never,
});
const { document } = new JSDOM(body).window;
const within = (element: ParentNode, selector: string) => [
  ...element.querySelectorAll<HTMLElement>(selector),
];
const has = (element: HTMLElement, name: string, value: string) =>
  (element.dataset[name] ?? '').split(' ').includes(value);
const fitting = (loose: string, deep: string) =>
  within(document, '.answer').filter(
    (answer) => has(answer, 'loose', loose) && has(answer, 'deep', deep),
  );
const pairs = choicesOf('looseness').flatMap((looseness) =>
  choicesOf('depth').map((depth) => ({ looseness, depth })),
);

describe('the field chart in two taps', () => {
  it('has one answer to every two taps, and the style sheet hides all others', () => {
    for (const { looseness, depth } of pairs)
      expect(fitting(looseness, depth).length, `${looseness} ${depth}`).toBe(1);
    for (const value of choicesOf('looseness'))
      expect(css).toContain(`[value='${value}']:checked) .answer:not([data-loose~='${value}'])`);
    for (const value of choicesOf('depth'))
      expect(css).toContain(`[value='${value}']:checked) .answer:not([data-deep~='${value}'])`);
    const tapped = within(document, '.taps fieldset input').map(
      (input) => (input as HTMLInputElement).value,
    );
    expect(tapped).toEqual([...choicesOf('looseness'), ...choicesOf('depth')]);
  });

  it('names the method that the table of the trade lets through, in every place and on every texture', () => {
    for (const { looseness, depth } of pairs)
      for (const place of ['slab', 'steps'] as const)
        for (const texture of choicesOf('texture')) {
          if (depth === 'through') continue;
          const spot = settledOf({ place, looseness, depth, texture, soil: 'clean' });
          const [answer] = fitting(looseness, depth);
          const lines = within(answer as HTMLElement, '.clean section')
            .filter((section) => has(section, 'place', place))
            .flatMap((section) => within(section, 'li'))
            .filter((line) => has(line, 'textures', texture));
          expect(
            lines.map((line) => line.dataset.method),
            `${place} ${looseness} ${depth} ${texture}`,
          ).toEqual([methodOf(spot.site, spot.zone as unknown as TradeZone)]);
        }
  });

  it('lists under what may lie on it what the row of the table says, in its order', () => {
    for (const row of within(document, '.cells tbody tr')) {
      const cells = within(row, 'td');
      const [loose = ''] = (row.dataset.looseness ?? '').split(' ');
      const [deep = ''] = (row.dataset.depths ?? '').split(' ');
      const lines = within(fitting(loose, deep)[0] as HTMLElement, '.soiled dd');
      const methods = cells.map((cell) => cell.dataset.method);
      // One line for all where all say the same.
      const same = new Set(cells.map(({ dataset }) => `${dataset.method} ${dataset.verdict}`)).size;
      expect(lines.length).toBe(same === 1 ? 0 : cells.length);
      lines.forEach((line, index) => {
        const name = cells[index]?.querySelector('.named .screen')?.textContent ?? '?';
        expect(line.textContent.toLowerCase(), methods.join()).toContain(name.toLowerCase());
      });
    }
  });

  // Roughness: ICRI 310.2R as remembered, grinding CSP 1 to 2, scarifying CSP 4 to 7. Dangers: silica
  // comes with all dry cutting of concrete (OSHA 29 CFR 1926.1153, table 1).
  it('tells of every method it names how rough it leaves it and what is dangerous, folded away', () => {
    for (const answer of within(document, '.answer')) {
      const shown = new Set(within(answer, '.clean li').map(({ dataset }) => dataset.method));
      const told = within(answer, '.more > details [data-facts]');
      const names = told.map(({ dataset }) => dataset.facts);
      expect(new Set(names).size).toBe(names.length);
      for (const method of shown) if (method) expect(names).toContain(method);
    }
    const of = (method: string) =>
      untied(document.querySelector(`[data-facts="${method}"]`)?.textContent ?? '').replace(
        /\s+/g,
        ' ',
      );
    expect(of('grind')).toMatch(/CSP 1 to 2 \(from memory\)/);
    expect(of('scarify')).toMatch(/CSP 4 to 7/);
    expect(of('pressure-wash')).toContain('as rough as it was');
    for (const method of ['grind', 'scarify', 'shotblast', 'abrasive-blast', 'break-out'])
      expect(of(method), method).toMatch(/silica dust.*noise/);
  });

  it('says what holds it up, and that the stops come first', () => {
    const [deep] = fitting('hollow', 'over-50');
    expect(deep?.textContent).toContain('Find out first');
    expect(deep?.textContent).toContain('Measure the thickness first');
    expect(fitting('tight', 'through')[0]?.textContent).toContain('Stop');
    // A line to read, not the name of a box to tick.
    expect(document.querySelector('.taps > .first')?.textContent).toContain('The stops come first');
    expect(document.querySelector('.taps .whole')?.textContent.trim()).toBe('Show the whole chart');
  });

  it('changes no letters when a choice is tapped, so that no row jumps', () => {
    const chosen = /\.taps fieldset label:has\(:checked\) \{([^}]*)\}/.exec(css)?.[1];
    expect(chosen).toContain('outline');
    expect(chosen).not.toMatch(/font|letter|padding|border/);
  });
});
