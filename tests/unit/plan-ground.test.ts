import { describe, expect, it } from 'vitest';
import type { Amount } from '$lib/plan/amount';
import { barsOf, holeTerm, stripOf, undercutOf } from '$lib/plan/bars';
import { groundOf, rimOf, surfaceOf } from '$lib/plan/ground';
import { depthSpan } from '$lib/plan/zone-work';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';

const near = (values: readonly number[]) => values.map((value) => Math.round(value * 1e9) / 1e9);

// How metres follow from spacing and area is arithmetic; bars usually 150 to 300 mm apart, common practice.
describe('metres of bar', () => {
  const bars = (answers: object) => endsOf(barsOf(workOf({}, answers)));
  it('are those measured', () => expect(bars({ barLength: 3 })).toEqual([3, 3, 3]));
  it('else one bar across 9 m2, usually those of one direction, at most of both', () => {
    // 9 m2 at 150 mm: 60 m one way, 120 m both ways.
    expect(bars({ area: 9, barSpacing: 150 })).toEqual([3, 60, 120]);
    // 150 to 300 mm, usually 200: 45 m, and both ways at the closest 120 m.
    expect(bars({ area: 9, barLength: 'unknown' })).toEqual([3, 45, 120]);
    // 0.1 m across, and bars 1 m apart: never less than the one.
    expect(bars({ area: 0.01, barSpacing: 1000 })).toEqual([0.1, 0.1, 0.1]);
  });
  it('are asked for where there is no area either', () => {
    for (const area of [undefined, 'unknown']) expect(bars({ area })).toBe('asks for barLength');
  });
  it('show on what figure they stand, where nobody measured the spacing', () => {
    const term = (answers: object) => {
      const amount = barsOf(workOf({}, answers));
      return 'working' in amount ? amount.working : [];
    };
    expect(term({ area: 9 })).toMatchObject([
      { what: 'bar-length', unit: 'm', figure: 'bar.spacing-usual' },
    ]);
    expect(term({ area: 9, barSpacing: 150 })[0]).not.toHaveProperty('figure');
    expect(term({ barLength: 3 })).toEqual([{ what: 'bar-length', span: [3, 3], unit: 'm' }]);
  });
});

// FHWA, Partial-depth repairs: 75 to 100 mm past the damage, 100 mm in frost; ICRI 310.1R: 19 mm behind the bar.
describe('a strip along a bar', () => {
  const bar = { barLength: 3, barDiameter: 10, barCover: 30 };
  it('is the bar and 75 to 100 mm on both sides, sawn on both', () => {
    const { area, perimeter } = stripOf(workOf({}, bar));
    expect(endsOf(area)).toEqual(near([3 * 0.16, 3 * 0.185, 3 * 0.21]));
    expect(endsOf(perimeter)).toEqual([6, 6, 6]);
    expect('working' in area && area.working.map(({ what, figure }) => [what, figure])).toEqual([
      ['bar-length', undefined],
      ['bar-strip', 'patch.past-damage'],
      ['unit', undefined],
    ]);
    expect('working' in perimeter && perimeter.working.map(({ what }) => what)).toEqual([
      ...['bar-length', 'both-sides'],
    ]);
  });
  it('is 100 mm on both sides in frost, and 10 to 16 mm between where nobody measured the bar', () => {
    const { area } = stripOf(workOf({ frost: 'often' }, { ...bar, barDiameter: 'unknown' }));
    expect(endsOf(area)).toEqual(near([3 * 0.21, 3 * 0.213, 3 * 0.216]));
    expect('working' in area && area.working[1]?.figure).toBe('patch.past-damage-frost');
  });
  it('is never narrower than a patch may be: 100 mm', () => {
    const own = { 'patch.past-damage': 20 };
    expect(endsOf(stripOf(workOf({}, bar), own).area)).toEqual(near([0.3, 0.3, 0.3]));
  });
  it('takes no more than the zone, and of that no working is left', () => {
    const most = (area: unknown) => stripOf(workOf({}, { ...bar, area })).area;
    expect(endsOf(most(0.5))).toEqual([0.48, 0.5, 0.5]);
    expect(most(0.5)).toMatchObject({ working: [] });
    expect(endsOf(most(0.4))).toEqual([0.4, 0.4, 0.4]);
    expect(endsOf(most(0.63))).toEqual(near([0.48, 0.555, 0.63]));
    expect(endsOf(most('unknown'))).toEqual(near([0.48, 0.555, 0.63]));
    const open = stripOf(workOf({}, { area: 4 }));
    expect(endsOf(open.area)).toEqual([0.32, 3.76, 4].map(() => expect.any(Number)));
  });
  it('goes as deep as behind the bar: 30 + 10 + 19 mm; 49 to 85 mm where nothing is measured', () => {
    const term = { what: 'bar-depth', unit: 'm', figure: 'bar.clear' };
    expect(holeTerm(workOf({}, bar))).toEqual({ ...term, span: [0.059, 0.059] });
    expect(holeTerm(workOf())).toEqual({ ...term, span: [0.049, 0.085] });
  });
});

describe('what comes off behind a bar', () => {
  const bar = { barLength: 3, barDiameter: 10, barCover: 30 };
  // 3 m, 10 + 2 x 19 = 48 mm wide; down to 59 mm, of which 40 + 13 mm are broken out anyway.
  const off = (mm: number) => Math.round(3 * 0.048 * (mm / 1000) * 1e9) / 1e9;
  const under = (change: object, answers: object = {}) =>
    endsOf(undercutOf(workOf(change, { ...bar, ...answers })));
  it('is what lies below the hole', () => {
    expect(under({})).toEqual([off(6), off(6), off(6)]);
    expect(under({ breaks: false })).toEqual([off(19), off(19), off(19)]);
  });
  it('goes by the depth of the damage, most with least; with all of it while that is open', () => {
    expect(under({}, { depth: ['6-to-20'] })).toEqual([off(26), off(32.8), off(39.6)]);
    expect(under({}, { depth: undefined })).toEqual([off(46), off(46), off(46)]);
    expect(under({}, { depth: 100 })).toEqual([0, 0, 0]);
    expect(under({}, { depth: ['20-to-50'] })[0]).toBe(0);
  });
  it('shows each factor', () => {
    const amount = undercutOf(workOf({}, bar));
    expect('working' in amount && amount.working).toMatchObject([
      { what: 'bar-length' },
      { what: 'bar-room', span: [48, 48], unit: 'mm', figure: 'bar.clear' },
      { what: 'unit', span: [0.001, 0.001], unit: 'ratio' },
      { what: 'bar-depth', unit: 'm', figure: 'bar.clear' },
    ]);
  });
});

describe('the ring inside the square cut round a firm hollow', () => {
  const m2 = (value: number) => reach('m2', [value, value, value]);
  const rim = (area: Amount, patches: object[] | null = [{ area: 5, saw: 9 }], answers = {}) =>
    endsOf(rimOf(workOf({ patches }, answers), area));
  it('is what the patches take in beside the zone; none where they take in no more', () => {
    expect(rim(m2(3))).toEqual([2, 2, 2]);
    expect(rim(m2(5))).toBe('none');
    expect(rim(m2(6))).toBe('none');
  });
  it('is not known while the zone, or the cut round it, is not', () => {
    expect(rim({ missing: ['area'], unit: 'm2' })).toBe('none');
    expect(rim(m2(3), null, { area: 'unknown' })).toBe('none');
  });
});

describe('the depth of a zone', () => {
  const of = (depth: unknown, thickness: unknown = 150) =>
    depthSpan(workOf({ thickness }, { depth }));
  it('is what was measured, or what the bands leave open; none where they have no end', () => {
    expect(of(40)).toEqual([0.04, 0.04]);
    expect(of(['6-to-20', '20-to-50'])?.map((each) => each.toFixed(4))).toEqual([
      '0.0064',
      '0.0500',
    ]);
    expect(of(['over-50'])?.[1]).toBe(0.15);
    expect(of(['over-50'], 'unknown')).toBeNull();
    expect(of(undefined)).toBeNull();
  });
});

// Simulated, figures `patch.scattered*`: hollow spots of 0.4 m come to 2.8 to 3.4 times their area.
describe('ground to break out', () => {
  const ground = (change: object, answers: object = {}) => {
    const { area, perimeter } = groundOf(workOf(change, answers));
    return [endsOf(area), endsOf(perimeter)];
  };
  const mean = (low: number, high: number) => near([low, Math.sqrt(low * high), high]);
  it('is the patches that were laid', () => {
    const patches = [
      { area: 2, saw: 6 },
      { area: 0.5, saw: 3 },
    ];
    expect(ground({ patches })).toEqual([
      [2.5, 2.5, 2.5],
      [9, 9, 9],
    ]);
    const { area, perimeter } = groundOf(workOf({ patches }));
    expect([area, perimeter]).toMatchObject([
      { unit: 'm2', working: [{ what: 'patches' }] },
      { unit: 'm', working: [{ what: 'perimeter' }] },
    ]);
  });
  it('is the strip, where only bars are broken out', () =>
    expect(ground({ alongBars: true }, { barLength: 3, barDiameter: 10 })[1]).toEqual([6, 6, 6]));
  it('of an area alone lies between one square and many spots, usually the geometric mean', () => {
    expect(ground({}, { area: 1 })).toEqual([mean(1.15 ** 2, 3.4), mean(4.6, 15)]);
    // Less than one spot: a square of 0.3 m, 75 to 100 mm past on each side.
    expect(ground({}, { area: 0.09 })).toEqual([mean(0.45 ** 2, 0.09 * 3.4), mean(1.8, 2)]);
    // Nine spots, and the other 28.56 m2 in one piece.
    const rest = Math.sqrt(28.56) + 0.2;
    expect(ground({}, { area: 30 })).toEqual([
      mean((Math.sqrt(30) + 0.15) ** 2, 1.44 * 3.4 + rest ** 2),
      mean(4 * (Math.sqrt(30) + 0.15), 9 * 2.4 + 4 * rest),
    ]);
  });
  it('is no more than the whole surface, and no less than the damage', () => {
    expect(ground({ whole: 2 }, { area: 1 })[0]).toEqual(mean(1.3225, 2));
    expect(ground({ whole: 1.2 }, { area: 1 })[0]).toEqual(mean(1.2, 1.2));
    expect(ground({ whole: 0.5 }, { area: 1 })[0]).toEqual(mean(1, 1));
  });
  it('names the figures it stands on', () => {
    const { area, perimeter } = groundOf(workOf());
    expect([area, perimeter]).toMatchObject([
      { unit: 'm2', working: [{ what: 'patch-area', figure: 'patch.scattered' }] },
      { unit: 'm', working: [{ what: 'perimeter', figure: 'patch.scattered-spot' }] },
    ]);
  });
  it('asks for the area', () => {
    for (const area of [undefined, 'unknown']) {
      expect(ground({}, { area })).toEqual(['asks for area', 'asks for area']);
      const open = groundOf(workOf({}, { area }));
      expect([open.area.unit, open.perimeter.unit]).toEqual(['m2', 'm']);
    }
  });
  it('is what is cleaned, unless the zone has a method of its own beside the bars', () => {
    const both = quantitiesWith({
      area: reach('m2', [30, 30, 30]),
      'patch-area': reach('m2', [5, 6, 8]),
    });
    expect(endsOf(surfaceOf({ alongBars: false }, both))).toEqual([5, 6, 8]);
    expect(endsOf(surfaceOf({ alongBars: true }, both))).toEqual([30, 30, 30]);
    expect(surfaceOf({ alongBars: false }, quantitiesWith({}))).toEqual({
      ...{ missing: ['area'], unit: 'm2' },
    });
  });
});

// Common practice, no source: a second pass takes as long as the first.
