import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { choicesOf, type DepthBand, type Finish, type Looseness } from '$lib/answers/questions';
import { settledOf } from '$lib/learn/chart/cells';
import { spokenAnswers } from '$lib/learn/chart/spoken-answers';
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
const answers = spokenAnswers(fieldChart());
const answerOf = (looseness: Looseness, depth: DepthBand) =>
  answers.find(
    (each) => each.looseness.includes(looseness) && each.depths.includes(depth),
  ) as (typeof answers)[number];
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

  // What carries, or hangs, is weakened by breaking out: an engineer says first what may go.
  // Source: common practice, no published source; the table of the trade holds it a second time.
  it('names beside the method the kinds of concrete on which breaking out is stopped', () => {
    const carrying = ['suspended-steps', 'suspended-slab', 'wall', 'soffit'];
    for (const { looseness, depth } of pairs) {
      const [answer] = fitting(looseness, depth);
      const told = within(answer as HTMLElement, '[data-stopped]');
      const breaks = within(answer as HTMLElement, '.clean li').some(
        ({ dataset }) => dataset.method === 'break-out',
      );
      expect(
        told.flatMap(({ dataset }) => (dataset.stopped ?? '').split(' ')),
        `${looseness} ${depth}`,
      ).toEqual(breaks ? carrying : []);
      for (const line of told)
        expect(line.textContent).toMatch(/Stop.*wall or soffit: a licensed structural engineer/s);
    }
  });

  it('says of a note that is for one place only which that is', () => {
    const note = (depth: string) =>
      within(fitting('hollow', depth)[0] as HTMLElement, 'p').find(({ textContent }) =>
        textContent.includes('Measure the thickness first'),
      )?.textContent;
    expect(note('20-to-50')).toMatch(/^On a floor: where the finished hole/);
    expect(note('over-50')).toMatch(/^Where the finished hole/);
  });

  it('names under the method what goes on next and asks for more, as the table of the trade does', () => {
    const shown = new Map<string, readonly string[]>();
    for (const { looseness, depth } of pairs) {
      if (depth === 'through') continue;
      const { more } = answerOf(looseness, depth);
      const asks = (texture: string, finish: Finish) =>
        more?.depths.includes(depth)
          ? more.more
              .find(({ finishes }) => finishes.includes(finish))
              ?.methods.find(({ textures }) => (textures as readonly string[]).includes(texture))
              ?.method
          : undefined;
      // A firm hole that is filled has a line of its own beside the chart.
      const hole = looseness === 'tight' && !more?.depths.includes(depth);
      for (const place of ['slab', 'steps'] as const)
        for (const texture of choicesOf('texture'))
          for (const finish of choicesOf('finish')) {
            if (hole) continue;
            const spot = { place, looseness, depth, texture, soil: 'clean' } as const;
            const methodAt = (found: ReturnType<typeof settledOf>) =>
              methodOf(found.site, found.zone as unknown as TradeZone);
            const charted = methodAt(settledOf(spot));
            const told = asks(texture, finish);
            const wanted = place === 'steps' && told === 'shotblast' ? 'abrasive-blast' : told;
            expect(
              methodAt(settledOf({ ...spot, finish })),
              `${place} ${looseness} ${depth} ${texture} ${finish}`,
            ).toBe(wanted ?? charted);
          }
      if (more) shown.set(`${looseness} ${depth}`, [more.line]);
      const line = within(fitting(looseness, depth)[0] as HTMLElement, '[data-more]');
      expect(line.map(({ textContent }) => textContent)).toEqual(more ? [more.line] : []);
    }
    expect(untied(shown.get('flaking under-3')?.[0] ?? '')).toBe(
      'What goes on next may ask for more. Build coat, self-level, overlay, patch, pour: shotblasting. Off the floor: grit in place of shot.',
    );
    expect(untied(shown.get('tight film')?.[0] ?? '')).toBe(
      'What goes on next may ask for more, under 6 mm deep. Thin paint: grinding (smooth). Build coat: shotblasting (smooth). Self-level, overlay, patch, pour: shotblasting (smooth or sandy). Off the floor: grit in place of shot.',
    );
    expect(untied(shown.get('powdery film')?.[0] ?? '')).toBe(
      'What goes on next may ask for more. Thin paint: grinding (smooth or sandy) or shotblasting (pitted). Build coat, self-level: shotblasting. Overlay, patch, pour: shotblasting (smooth or sandy). Off the floor: grit in place of shot.',
    );
  });

  it('changes no letters when a choice is tapped, so that no row jumps', () => {
    const chosen = /\.taps fieldset label:has\(:checked\) \{([^}]*)\}/.exec(css)?.[1];
    expect(chosen).toContain('outline');
    expect(chosen).not.toMatch(/font|letter|padding|border/);
  });
});
