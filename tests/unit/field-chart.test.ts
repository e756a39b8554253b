import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf, type Contaminant, type Finish } from '$lib/answers/questions';
import { fieldChart } from '$lib/learn/chart/spoken';
import { methodWords } from '$words/methods';
import { formatter } from '$lib/words/format';
import { methods, type MethodId } from '$shared/methods';
import Page from '../../src/routes/learn/chart/+page.svelte';
import { methodOf } from '../every-route/trade-table';
import type { TradeZone } from '../every-route/trade-types';

/** The page as it is printed: everything here is read out of its HTML, without JavaScript. */
const { body } = render(Page as never, {
  props: { data: { chart: fieldChart(), version: '0.0.0', made: 'today' } } as never,
});
const { document } = new JSDOM(body).window;
const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
const listIn = (element: HTMLElement, name: string) => (element.dataset[name] ?? '').split(' ');

const columns = all('.cells th.soil');
const rows = all('.cells tbody tr');
const cellsOf = (row: HTMLElement) => {
  const found = [...row.querySelectorAll('td')];
  return found.flatMap((cell) => Array.from({ length: cell.colSpan }, () => cell));
};
const known = new Map<string, HTMLElement>();
/** The one cell of a spot, found as a reader finds it; each spot is looked up once. */
function lookUp(place: string, zone: SettledZone, soil: string): HTMLElement {
  const key = [place, zone.looseness, zone.depth, zone.texture, soil].join(' ');
  const cell = known.get(key) ?? findCell(place, zone, soil);
  known.set(key, cell);
  return cell;
}
function findCell(place: string, zone: SettledZone, soil: string): HTMLElement {
  const at = columns.flatMap((column, index) =>
    column.dataset.place === place &&
    listIn(column, 'textures').includes(zone.texture) &&
    listIn(column, 'soils').includes(soil)
      ? [index]
      : [],
  );
  const row = rows.filter(
    (each) =>
      listIn(each, 'looseness').includes(zone.looseness) &&
      listIn(each, 'depths').includes(zone.depth),
  );
  expect([at.length, row.length], `${place} ${soil} ${zone.looseness} ${zone.depth}`).toEqual([
    1, 1,
  ]);
  return cellsOf(row[0] as HTMLElement)[at[0] as number] as HTMLElement;
}

const site = (element: SettledSite['element']): SettledSite => ({
  element,
  setting: 'open',
  salts: 'none',
  freezeThaw: 'rare',
  thickness: 'unknown',
  warnings: [],
});
const soils = ['clean', ...choicesOf('contamination')] as const;
const places = ['slab', 'steps'] as const;
/** An old hole with a firm bottom that is filled: a form, with a rule of its own beside the table. */
const isHole = ({ looseness, depth }: SettledZone, finish: Finish) =>
  looseness === 'tight' &&
  finish === 'rebuild' &&
  ['6-to-20', '20-to-50', 'over-50'].includes(depth);

interface Case {
  readonly place: (typeof places)[number];
  readonly soil: (typeof soils)[number];
  readonly zone: SettledZone;
}
const cases: readonly Case[] = places.flatMap((place) =>
  choicesOf('depth').flatMap((depth) =>
    choicesOf('looseness').flatMap((looseness) =>
      choicesOf('texture').flatMap((texture) =>
        soils.map((soil) => ({
          place,
          soil,
          zone: {
            depth,
            looseness,
            texture,
            contamination: soil === 'clean' ? [] : [soil],
            cracks: 'none' as const,
            steel: 'none-seen' as const,
            finish: 'undecided' as const,
            area: 'unknown' as const,
          },
        })),
      ),
    ),
  ),
);
const spoken = methodWords(formatter('metric'));

describe('the field chart', () => {
  it('says what the engine says, in every cell, and says it in words', () => {
    expect(cases.length).toBe(2 * 7 * 6 * 3 * 7);
    for (const { place, soil, zone } of cases) {
      const cell = lookUp(place, zone, soil);
      const advice = adviseSettled(site(place), zone);
      const name = `${place} ${soil} ${zone.texture} ${zone.looseness} ${zone.depth}`;
      expect(cell.dataset.verdict, name).toBe(advice.verdict);
      expect(cell.dataset.method, name).toBe(advice.underneath ?? '');
      if (advice.underneath)
        expect(cell.textContent, name).toContain(spoken[advice.underneath].name);
      if (advice.verdict === 'stop') expect(cell.textContent, name).toContain('Stop');
      if (advice.verdict === 'find-out-first')
        expect(cell.textContent, name).toContain('Find out first');
    }
  });

  it('names in every cell the gentlest method that the table of the trade lets through', () => {
    for (const { place, soil, zone } of cases) {
      if (zone.depth === 'through') continue;
      const method = lookUp(place, zone, soil).dataset.method as MethodId;
      expect(method, `${place} ${soil} ${zone.texture} ${zone.looseness} ${zone.depth}`).toBe(
        methodOf(site(place), zone as TradeZone),
      );
    }
  });

  it('says for every cell and every finish, with the second table, what the engine says', () => {
    const finishes = all('.finishes th[data-finishes]').map((head) => listIn(head, 'finishes'));
    const lines = all('.finishes tr[data-says]').map((line) => ({
      place: line.dataset.place,
      says: line.dataset.says,
      texture: line.dataset.texture,
      looseness: line.dataset.looseness,
      cells: [...line.querySelectorAll('td')].map((cell) => cell.dataset.method),
    }));
    const read = (
      place: string,
      method: string,
      { texture, looseness }: SettledZone,
      finish: Finish,
    ) => {
      if (method !== 'pressure-wash' && method !== 'grind') return method;
      const found = lines.filter(
        (line) =>
          line.place === place &&
          line.says === method &&
          (!line.texture || line.texture === texture) &&
          (!line.looseness || line.looseness.split(' ').includes(looseness)),
      );
      expect(found.length, `${place} ${method} ${texture}`).toBe(1);
      return found[0]?.cells[finishes.findIndex((each) => each.includes(finish))];
    };
    for (const { place, soil, zone } of cases)
      for (const finish of choicesOf('finish')) {
        const charted = lookUp(place, zone, soil).dataset.method ?? '';
        const engine = adviseSettled(site(place), { ...zone, finish }).underneath ?? '';
        const name = `${place} ${soil} ${zone.texture} ${zone.looseness} ${zone.depth} ${finish}`;
        if (isHole(zone, finish))
          expect(['abrasive-blast', 'pressure-wash'], name).toContain(engine);
        else expect(read(place, charted, zone, finish), name).toBe(engine);
      }
  });

  it('is right that two contaminants read as the column furthest to the right', () => {
    for (const { place, soil, zone } of cases)
      for (const other of choicesOf('contamination')) {
        if (soil === 'clean' || soil === other) continue;
        const both = { ...zone, contamination: [soil, other] as Contaminant[] };
        const placeOf = (each: string) =>
          columns.findIndex(
            (column) =>
              column.dataset.place === place &&
              listIn(column, 'textures').includes(zone.texture) &&
              listIn(column, 'soils').includes(each),
          );
        const right = placeOf(soil) > placeOf(other) ? soil : other;
        expect(lookUp(place, zone, right).dataset.method).toBe(
          adviseSettled(site(place), both).underneath ?? '',
        );
      }
  });

  it('is right that cracks change only scarifying, to shotblasting, where no heavy coating lies', () => {
    for (const { place, soil, zone } of cases)
      for (const cracks of ['hairline', 'open', 'crumbling'] as const) {
        const charted = lookUp(place, zone, soil).dataset.method ?? '';
        const heavy = soil === 'thick-coating' || soil === 'rubbery-coating';
        const spared = charted === 'scarify' && cracks !== 'hairline' && !heavy;
        expect(spared ? 'shotblast' : charted, `${place} ${soil} ${zone.texture} ${cracks}`).toBe(
          adviseSettled(site(place), { ...zone, cracks }).underneath ?? '',
        );
      }
  });

  it('is right about spots and about large faces', () => {
    expect(document.body.textContent).toMatch(/Smaller than 1\sm[2²]\? Use hand tools\./);
    expect(document.body.textContent).toMatch(/Off the floor and larger than 10\sm[2²]\?/);
    const hand = ['pressure-wash', 'grind', 'needle-scale', 'abrasive-blast', 'break-out', ''];
    const cut = ['scarify', 'shotblast'];
    for (const { place, soil, zone } of cases) {
      const name = `${place} ${soil} ${zone.texture} ${zone.looseness} ${zone.depth}`;
      const charted = lookUp(place, zone, soil).dataset.method ?? '';
      const spot = adviseSettled(site(place), { ...zone, area: 0.5 }).underneath ?? '';
      expect(hand, name).toContain(spot);
      const scraped = soil === 'thick-coating' || soil === 'rubbery-coating';
      if (place === 'slab' && cut.includes(charted) && !scraped)
        expect(['needle-scale', 'abrasive-blast'], name).toContain(spot);
      else if (place === 'slab' && !scraped) expect(spot, name).toBe(charted);
      if (place !== 'steps') continue;
      const wide = adviseSettled(site(place), { ...zone, area: 20 }).underneath ?? '';
      expect(wide, name).toBe(charted === 'grind' ? 'abrasive-blast' : charted);
    }
  });

  it('lists every warning sign, crack and kind of concrete that stops or waits', () => {
    // The table of stops of the trade. Common practice, no source.
    const listed = all('.stops li').flatMap((line) => listIn(line, 'choices'));
    expect([...listed].sort()).toEqual(
      [
        ...choicesOf('warnings'),
        'moving',
        'suspended-steps',
        'suspended-slab',
        'wall',
        'soffit',
      ].sort(),
    );
  });

  it('marks strength by count as well as tone, as the facts of the methods have it', () => {
    for (const cell of all('.cells td[data-method]:not([data-method=""])')) {
      const strength = methods[cell.dataset.method as MethodId].class;
      expect(cell.querySelectorAll('.pips .full').length).toBe(strength);
      expect(cell.classList).toContain(`strength-${String(strength)}`);
    }
  });

  it('defers to local codes and licensed practice, and needs neither script nor inline style', () => {
    expect(document.body.textContent).toContain('local codes');
    expect(body).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/);
  });
});
