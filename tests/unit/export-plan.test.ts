import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvOf } from '$lib/keep/export-csv';
import { markdownOf, markdownText } from '$lib/keep/export-markdown';
import { demoFiles, demoIds, demoJob } from '$lib/keep/demos';
import { isDemo } from '$lib/ui/is-demo';
import { isKnown } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { quantityIds, zoneQuantityIds } from '$lib/plan/quantities';
import { formatter } from '$lib/words/format';
import { spanWords } from '$words/plan/amounts';
import { planDocument } from '$words/plan/document';
import { quantityNames } from '$words/plan/quantities';
import { quantityRows, tableHead } from '$words/plan/table';
import { toolWords } from '$words/safety/tools';
import { boatShed } from '../helpers/boat-shed';
import { drawnBay } from '../helpers/drawn-bay';

const say = formatter('metric');
const exported = (id: (typeof demoIds)[number]) => {
  const job = demoJob(id);
  const plan = planJob(job);
  const nameOf = (zone: string) => job.zones.find((each) => each.id === zone)?.name ?? zone;
  return { job, plan, nameOf };
};
/** A table read back by a library of its own, which takes the byte order mark off itself. */
const reread = (text: string) =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });

describe('the example jobs', () => {
  it.each(demoIds)('%s is a job file, is marked as invented, and can be planned', (id) => {
    const { job, plan } = exported(id);
    expect(isDemo(job)).toBe(true);
    expect(demoFiles[id].site.name).toBe(job.name);
    expect(plan.zones.length).toBeGreaterThan(0);
    expect(plan.steps.length).toBeGreaterThan(3);
  });
});

// Common practice, no source: on paper too, keeping away from what may fall comes before any work.
describe('the plan as text', () => {
  const told = (element: string) => {
    const job = boatShed({ element: [element] }, { looseness: ['hollow'], depth: 40 });
    const about = { date: '2026-01-02', nameOf: (zone: string) => zone };
    return markdownOf(planDocument(job, planJob(job), say, about));
  };
  const line = 'Keep people off it and from under it. Call a licensed structural engineer.';
  it('says at its head to keep away from a hollow balcony, and of the same on the ground nothing', () => {
    const balcony = told('suspended-slab');
    expect(balcony).toContain(line);
    expect(balcony.indexOf(line)).toBeLessThan(balcony.indexOf('##'));
    expect(told('slab')).not.toContain('Keep people');
  });
});

describe('the quantities as a table', () => {
  it.each(demoIds)('%s has the days of every machine, as the plan has them', (id) => {
    const { job, plan, nameOf } = exported(id);
    const { data } = reread(
      csvOf(tableHead, quantityRows(job, plan, say, { date: '2026-01-02', nameOf })),
    );
    for (const { tool, days } of plan.schedule.hire) {
      const row = data.find(({ Quantity }) => Quantity === `Days of hire: ${toolWords[tool].name}`);
      expect([row?.['At least'], row?.['At most']]).toEqual([
        String(days.length),
        String(days.length),
      ]);
    }
    const days = data.find(({ Quantity }) => Quantity === 'Working days');
    expect([days?.['At least'], days?.['At most']]).toEqual(plan.schedule.count.map(String));
  });
  it('has a bay that is offered whole both ways: a bay of 2 by 2 m is 4 m2 whole', () => {
    const job = drawnBay(1500);
    const plan = planJob(job);
    const rows = quantityRows(job, plan, say, { date: '2026-01-02', nameOf: (zone) => zone });
    const of = (what: string) => rows.find((row) => row[3] === what);
    expect(of('Treated whole: Area')?.slice(4, 7)).toEqual([4, 4, 'm²']);
    expect(Number(of('Patched: Area')?.[4])).toBeLessThan(4);
    expect(Number.isInteger(of('Treated whole: Bags of repair material')?.[5])).toBe(true);
  });
  it.each(demoIds)('%s reads back to the numbers of the plan', (id) => {
    const { job, plan, nameOf } = exported(id);
    const text = csvOf(tableHead, quantityRows(job, plan, say, { date: '2026-01-02', nameOf }));
    const { data, errors, meta } = reread(text);
    expect(errors).toEqual([]);
    expect(meta.fields).toEqual(tableHead);
    for (const zone of plan.zones)
      for (const what of zoneQuantityIds) {
        const amount = zone.quantities[what];
        const row = data.find(
          (each) => each.Zone === nameOf(zone.id) && each.Quantity === quantityNames[what].name,
        );
        expect(!!row).toBe(!!amount);
        if (!amount || !row) continue;
        if (!isKnown(amount)) {
          expect([row['At least'], row['At most']]).toEqual(['', '']);
          expect(row.Missing).not.toBe('');
          continue;
        }
        const engine = { L: amount.unit === 'm3' ? 1000 : 1, t: 0.001 }[row.Unit ?? ''] ?? 1;
        expect(Number(row['At least'])).toBeCloseTo(amount.span[0] * engine, 3);
        expect(Number(row['At most'])).toBeCloseTo(amount.span[1] * engine, 3);
      }
  });

  it('keeps commas, quotes and line ends, and runs nothing as a formula', () => {
    const text = csvOf(['a', 'b'], [['=1+1', 'one, "two"\nthree']]);
    const [row] = reread(text).data;
    expect(row).toEqual({ a: "'=1+1", b: 'one, "two"\nthree' });
  });
});

describe('the plan as text', () => {
  it.each(demoIds)('%s tells every step, every zone and every total', (id) => {
    const { job, plan, nameOf } = exported(id);
    const text = markdownOf(planDocument(job, plan, say, { date: '2 January 2026', nameOf }));
    expect(text.match(/^# /gm)).toHaveLength(1);
    const order = text.slice(text.indexOf('## Order'), text.indexOf('## Days'));
    expect(order.match(/^\d+\. /gm)).toHaveLength(plan.steps.length);
    for (const { id: zone } of [...plan.zones, ...plan.held])
      expect(text).toContain(markdownText(nameOf(zone)));
    for (const what of quantityIds)
      if (plan.totals[what])
        expect(text).toContain(`| ${markdownText(quantityNames[what].name)} |`);
    expect(text).toContain('2 January 2026');
    expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('leaves nothing for Markdown to take as its own', () => {
    expect(markdownText('# *a* [b](c) | <d>\n2. e')).toBe(
      '\\# \\*a\\* \\[b\\](c) \\| \\<d\\> 2. e',
    );
    expect(markdownText('1. one')).toBe('1\\. one');
  });
});

describe('ranges in words', () => {
  it.each([
    [[0.412, 0.918], 'm3', '0.41 to 0.92 m³'],
    [[0.0905, 0.0905], 'm3', '90.5 L'],
    [[370.2, 414], 'kg', '370 to 420 kg'],
    [[1430, 2920], 'kg', '1.4 to 3 t'],
    [[6.2, 7.3], 'count', '7 to 8'],
    [[0.36, 1.2], 'h', '0.25 to 1.25 hours'],
    [[0.1, 0.4], 'h', '5 to 25 minutes'],
    [[1, 1], 'h', '1 hour'],
  ] as const)('%j %s', (span, unit, text) => {
    expect(spanWords(span, unit, say)).toBe(text);
  });
});
