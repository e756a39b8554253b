import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { fieldChart } from '$lib/learn/chart/spoken';
import { untied } from '../helpers/plain-formatter';
import { methodIds } from '$shared/methods';
import Page from '../../src/routes/learn/chart/+page.svelte';

const printed = readFileSync('src/routes/learn/chart/chart-print.css', 'utf8');
const { body } = render(Page as never, {
  props: { data: { chart: fieldChart(), version: '0.0.0', made: 'today' } } as never,
});
const { document } = new JSDOM(body).window;
const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];

describe('the field chart on paper', () => {
  it('leaves out on paper only what the rest of the second table says', () => {
    const lines = all('.finishes tr[data-says]');
    const methodsOf = (line: HTMLElement) =>
      [...line.querySelectorAll('td')].map((cell) => cell.dataset.method ?? '');
    const mirrored = lines.filter((line) => line.classList.contains('mirror'));
    expect(mirrored.length).toBe(lines.length / 2);
    const onFloor = lines.filter((line) => !mirrored.includes(line));
    mirrored.forEach((line, index) => {
      const other = onFloor[index] as HTMLElement;
      expect([line.dataset.says, line.dataset.texture, line.dataset.looseness]).toEqual([
        other.dataset.says,
        other.dataset.texture,
        other.dataset.looseness,
      ]);
      // "The same, with grit in place of shot": a shotblaster needs a floor to seal on.
      expect(methodsOf(line)).toEqual(
        methodsOf(other).map((method) => (method === 'shotblast' ? 'abrasive-blast' : method)),
      );
    });
    const same = lines.filter((line) => line.classList.contains('as-charted'));
    expect(same.length).toBeGreaterThan(0);
    for (const line of same)
      expect(methodsOf(line).every((method) => method === line.dataset.says)).toBe(true);
    for (const cell of all('.finishes td.as-charted'))
      expect(cell.dataset.method).toBe(cell.closest('tr')?.dataset.says);
  });

  // ICRI 310.2R as remembered; a reader of paper has no tap that opens the rest.
  it('tells of every method how rough it leaves it, and on what that rests', () => {
    const lines = all('li:has([data-roughness])').map((line) =>
      untied(line.textContent).trim().replace(/\s+/g, ' '),
    );
    expect(lines).toEqual([
      'As it was: pressure washing.',
      'From memory: grinding CSP 1 to 2, needle scaling CSP 2 to 4, scarifying CSP 4 to 7, shotblasting CSP 2 to 9, breaking out CSP 7 to 10, water jetting CSP 3 to 10.',
      'As reported: abrasive blasting CSP 2 to 7.',
    ]);
    expect(all('[data-roughness]').length).toBe(methodIds.length);
  });

  it('prints in letters of 9 points or more', () => {
    const sizes = [...printed.matchAll(/font-size:\s*([^;]+);/g)].map(([, size]) => size ?? '');
    expect(sizes.length).toBeGreaterThan(2);
    for (const size of sizes) {
      expect(size).toMatch(/^[\d.]+pt$/);
      expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(9);
    }
  });

  it('says in short what has to come before, for every column that asks for something', () => {
    // Degrease first; growth comes off first; off the floor a coat is stripped. Common practice.
    const before = document.querySelector('.on-paper')?.textContent ?? '';
    expect(before).toMatch(/moss: take off growth/);
    expect(before).toMatch(/oil: degrease/);
    expect(before).toMatch(/off the floor, thick coat or rubbery coat: strip the coating/);
    expect(before.match(/;/g)?.length).toBe(2);
  });

  it('gives every cell and every head a short name beside the whole one', () => {
    for (const cell of all('.cells .named, .cells th.soil, .finishes tbody td'))
      for (const side of ['.screen', '.paper'])
        expect(cell.querySelector(side)?.textContent.trim(), cell.outerHTML).not.toBe('');
  });
});
