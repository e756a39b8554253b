import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatter } from '../helpers/plain-formatter';
import { roundest } from '$lib/words/round';
import { figures, type FigureId } from '$shared/figures';
import { units } from '$shared/types';
const metric = formatter('metric');
const us = formatter('us');

describe('figures', () => {
  // The US values are those printed in the sources; the figures' notes name them.
  it.each([
    ['csp.needs.overlay', 'CSP 5 to 10', 'CSP 5 to 10'],
    ['hammer.above-steel', '14 kg', '30 lb'],
    ['hammer.at-steel', '7 kg', '15 lb'],
    ['water.low', '340 bar', '5,000 psi'],
    // Gauges of washers and compressors in metric countries are marked in bar: common practice, no source.
    ['wash.prepare', '69 to 138 bar', '1,000 to 2,000 psi'],
    ['blast.pressure', '6.9 bar', '100 psi'],
    ['jet.pressure', '690 to 2,760 bar', '10,000 to 40,000 psi'],
    ['water.high', '340 to 700 bar', '5,000 to 10,000 psi'],
    ['strength.untreated', '0.52 MPa', '75 psi'],
    ['strength.blasted', '1.9 MPa', '275 psi'],
    ['seal.temperature', '10 °C', '50 °F'],
    ['bar.loss-one', '25%', '25%'],
    ['patch.life-good', '80 to 100%', '80 to 100%'],
    ['sawcut.depth', '25 to 51 mm', '1 to 2 in'],
    ['patch.skip-width', '38 mm', '1 1/2 in'],
    ['bar.clear', '19 mm', '3/4 in'],
    ['rout.depth', '6 to 25 mm', '1/4 to 1 in'],
    ['open.limit', '24 hours', '24 hours'],
    ['patch.min-corner', '90°', '90°'],
    ['hazard.water-injection', '7 bar', '100 psi'],
    ['hazard.wash-water-ph', 'pH 12.5', 'pH 12.5'],
  ] satisfies [FigureId, string, string][])('%s', (id, inMetric, inUs) => {
    expect(metric.figure(id)).toBe(inMetric);
    expect(us.figure(id)).toBe(inUs);
  });

  it('says every figure in both systems', () => {
    for (const id of Object.keys(figures) as FigureId[])
      for (const say of [metric, us]) {
        const text = say.figure(id);
        expect(text, id).toMatch(/\d/);
        expect(text, id).not.toMatch(/NaN|undefined|Infinity/);
      }
  });

  it('can say every unit a figure may carry', () => {
    const carried = new Set(Object.values(figures).map(({ unit }) => unit));
    for (const unit of carried) expect(units).toContain(unit);
  });

  it('says the reader’s own value where there is one', () => {
    const own = formatter('metric', { 'bar.clear': 25 });
    expect(own.figure('bar.clear')).toBe('25 mm');
    expect(own.span('bar.clear', 'bar.along')).toBe('25 to 150 mm');
  });

  it('never rounds a figure by more than 3 %', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(roundest(value) - value)).toBeLessThanOrEqual(value * 0.03 + 1e-9);
      }),
    );
    expect(roundest(0)).toBe(0);
  });
});
