import { describe, expect, it } from 'vitest';
import { workOrder } from '$lib/advice/steps/work';
import { areaOf } from '$lib/plan/full-depth';
import { groundOf } from '$lib/plan/ground';
import { amountOf, hoursOf } from '$lib/plan/hours';
import type { Amount } from '$lib/plan/amount';
import { quantitiesOf, quantityIds } from '$lib/plan/quantities';
import { wholeBays } from '$lib/plan/whole-bays';
import { tradeJob } from '../helpers/trade-jobs';
import { workOf } from '../helpers/zone-work';

// Dimensions by hand: what a working multiplies and divides has to come to the unit of its amount.
const powers: Readonly<Record<string, readonly [string, number]>> = {
  ...{ mm: ['m', 1], m: ['m', 1], m2: ['m', 2], m3: ['m', 3], L: ['m', 3] },
  ...{ kg: ['kg', 1], h: ['h', 1], ratio: ['m', 0], count: ['m', 0] },
};
function dimension(units: readonly (readonly [string, 1 | -1])[]): string {
  const found: Record<string, number> = { m: 0, kg: 0, h: 0 };
  for (const [unit, sign] of units)
    for (const [place, part] of unit.split('/').entries()) {
      const [base, power] = powers[part] ?? ['unknown unit', 1];
      found[base] = (found[base] ?? 0) + power * sign * (place ? -1 : 1);
    }
  return JSON.stringify(found);
}
function check(amount: Amount | null, unit: string, name: string): void {
  if (!amount) return;
  expect(amount.unit, name).toBe(unit);
  if (!('span' in amount) || !amount.working.length) return;
  for (const { what } of amount.working) expect(what, name).toMatch(/^[a-z-]+$/);
  // Bags and skips are a volume or a mass by that of one; a volume of millimetres is given in metres.
  const terms = amount.working.map((term): [string, 1 | -1] => [
    term.unit,
    term.by === 'over' ? -1 : 1,
  ]);
  const squared = amount.working.some((term) => term.what === 'unit' && term.span[0] === 1e-6);
  if (!squared) expect(dimension(terms), name).toBe(dimension([[unit, 1]]));
}

const units = {
  ...{ area: 'm2', 'patch-area': 'm2', removed: 'm3', 'debris-mass': 'kg', 'debris-loose': 'm3' },
  ...{ skips: 'count', 'rubble-bags': 'count', fill: 'm3', 'fill-bags': 'count', 'saw-cut': 'm' },
  ...{ 'crack-chased': 'm', 'crack-routed': 'm', 'bars-freed': 'm', 'crack-filler': 'L' },
  'wash-water': 'L',
} as const;
const known = { crackLength: 6, borderLength: 12, barLength: 3, barDiameter: 10, barCover: 30 };
/** Nobody knows how deep. */
const endless = { ...known, depth: ['over-50'] };
const open = { area: 'unknown', depth: undefined };
const patches = [{ area: 2, saw: 6, depth: 37 }];
const works = [
  workOf({}, known),
  workOf({}, open),
  workOf({ patches }, known),
  workOf({ patches: [{ area: 2, saw: 6 }] }, known),
  workOf({ alongBars: true, steps: ['free-bar'] }, known),
  workOf({ steps: ['free-bar', 'saw-cut', 'degrease', 'final-wash'] }, known),
  workOf({ steps: ['free-bar', 'saw-cut', 'degrease', 'final-wash', 'chase-crack'] }, open),
  workOf({ breaks: false, method: 'scarify', steps: ['saw-cut', 'chase-crack'] }, known),
  workOf({ breaks: false, tight: true, method: 'grind', steps: ['route-crack'] }, known),
  workOf({ breaks: false, tight: true, method: 'pressure-wash', steps: ['chase-crack'] }, known),
  workOf({ breaks: false, tight: true, method: 'grind', steps: ['saw-cut'] }, known),
  workOf({ breaks: false, tight: true, thickness: 'unknown' }, endless),
  workOf({ breaks: false, tight: true, steps: ['saw-cut'], thickness: 'unknown' }, endless),
  workOf({ breaks: false, method: 'scarify' }, known),
  workOf({ breaks: false, method: 'scarify' }, open),
  workOf({ breaks: false, method: 'pressure-wash', steps: ['pressure-wash'] }, known),
  workOf({ breaks: false, method: 'pressure-wash', steps: ['degrease'] }, known),
  workOf({ breaks: false, method: 'pressure-wash', steps: ['degrease'] }, open),
];

describe('units come out right', () => {
  it.each(works.map((work, place) => [place, work] as const))('in zone %i', (_, work) => {
    const quantities = quantitiesOf(work);
    for (const id of quantityIds) check(quantities[id], units[id], id);
    for (const step of workOrder) {
      check(hoursOf(step, work, quantities), 'h', step);
      const amount = amountOf(step, work, quantities);
      if (amount) check(amount, amount.unit, step);
      if (amount) expect(['m', 'm2', 'm3'], step).toContain(amount.unit);
    }
    const ground = groundOf(work);
    check(ground.area, 'm2', 'ground');
    check(ground.perimeter, 'm', 'perimeter');
  });
  it('of a bay treated whole', () => {
    const survey = {
      bays: [{ id: '1', whole: true, patched: 3, area: 4 }],
      patches: [{ bay: '1', zone: 'z' }],
    };
    for (const change of [{ patches }, { patches: [{ area: 2, saw: 6 }] }]) {
      const quantities = quantitiesOf(workOf(change, { depth: undefined }));
      const [bay] = wholeBays(survey as never, [{ id: 'z', quantities }] as never);
      for (const amounts of [bay?.patched, bay?.whole]) {
        check(amounts?.area ?? null, 'm2', 'area');
        check(amounts?.removed ?? null, 'm3', 'removed');
        check(amounts?.bags ?? null, 'count', 'bags');
      }
    }
  });
  it('of zones added', () => {
    check(areaOf(tradeJob([{ area: 4 }]), ['z0']), 'm2', 'one');
    check(areaOf(tradeJob([{ area: 4 }, { area: 'unknown' }]), ['z0', 'z1']), 'm2', 'two');
  });
});
