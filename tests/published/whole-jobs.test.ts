import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isKnown, typicalOf, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { quantityIds } from '$lib/plan/quantities';
import { readForOwner } from '$lib/plan/conclusion';
import { settledJob } from '../helpers/crew-jobs';
import { tradeJob } from '../helpers/trade-jobs';
import { onTrial, rounds } from '../helpers/rounds';

/*
 * Three whole jobs worked by hand. Every number below is written out from its rate or its source, and
 * nothing is read from the figures. Rates are common practice, no source, unless a line says otherwise.
 * At the task a tool runs 0.7 of the time, usually (common practice). Two people, 8 h a day.
 */
const share = 0.7;

interface Line {
  readonly step: string;
  readonly tool: string;
  /** Usual hours with the tool running. */
  readonly hours: number;
}
const line = (step: string, tool: string, hours: number): Line => ({ step, tool, hours });

/** The crew's tasks of a plan of one zone, against lines worked by hand. */
function expectLines(plan: ReturnType<typeof planJob>, lines: readonly Line[]): void {
  const counted = plan.tasks.filter(({ hours }) => hours);
  expect(counted.map(({ step, tool }) => [step, tool.tool])).toEqual(
    lines.map(({ step, tool }) => [step, tool]),
  );
  for (const [index, { step, hours }] of lines.entries()) {
    expect(counted[index]?.hours?.running.typical, step).toBeCloseTo(hours, 9);
    expect(counted[index]?.hours?.atTask.typical, step).toBeCloseTo(hours / share, 9);
  }
}
const usual = (amount: Amount | null | undefined) => {
  if (!amount || !isKnown(amount)) throw new Error('not known');
  return typicalOf(amount);
};
const placed = (plan: ReturnType<typeof planJob>, step: string) => {
  const found = plan.schedule.placed.find(({ task }) => task.step === step);
  if (!found) throw new Error(step);
  return found;
};

describe('a hollow square of 2 m in a yard, drawn, under a cement overlay', () => {
  const job = tradeJob(
    [{ depth: 40, looseness: ['hollow'], area: 4 }],
    { thickness: 200 },
    { totalArea: 100 },
  );
  const [zone] = job.zones;
  if (!zone) throw new Error('a zone');
  const drawn = {
    ...job,
    zones: [{ ...zone, patches: [{ x: 0, y: 0, length: 2000, width: 2000 }] }],
  };
  const plan = planJob(drawn);
  // FHWA, Partial-depth repairs: 4 in (100 mm) past the damage: 2.2 m a side.
  const patch = 2.2 * 2.2;
  // UFC 3-270-03: 13 mm (1/2 in) into sound concrete.
  const removed = patch * (0.04 + 0.013);

  it('every task', () => {
    expectLines(plan, [
      line('make-safe', 'hand-tools', 1),
      line('sound-and-mark', 'hand-tools', 4 / 60),
      line('saw-cut', 'walk-behind-saw', (4 * 2.2) / 12),
      // A 30 lb hammer (UFC 3-270-03 14.3), 12 h/m3 in patches.
      line('break-out', 'chipping-hammer', removed * 12),
      // From here on the whole patch lies open, not the damage alone.
      line('re-sound', 'hand-tools', patch / 60),
      // In a sawn hole no shotblaster seals: by the nozzle.
      line('blast-clean', 'blast-nozzle', patch / 10),
      line('vacuum', 'vacuum', patch / 80),
      line('final-wash', 'pressure-washer', patch / 40),
      line('check-ready', 'hand-tools', 0.75),
      line('wet-or-dry', 'hand-tools', 0.5),
      line('last-clean', 'hand-tools', patch / 100),
    ]);
  });
  it('every quantity', () => {
    const { quantities } = plan.zones[0] ?? {};
    expect(usual(quantities?.['patch-area'])).toBeCloseTo(patch, 9);
    expect(usual(quantities?.removed)).toBeCloseTo(removed, 9);
    expect(usual(quantities?.['debris-mass'])).toBeCloseTo(removed * 2400, 6);
    expect(usual(quantities?.fill)).toBeCloseTo(removed * 1.07, 9);
    // A bag of 0.5 ft3 is 0.01416 m3; 19.38 of them are 20 to buy.
    expect(usual(quantities?.['fill-bags'])).toBe(Math.ceil((removed * 1.07) / 0.01416));
  });
  it('its three days: blasting waits a day for the water at the hammer to dry', () => {
    expect(placed(plan, 'blast-clean').from).toBeCloseTo(placed(plan, 'break-out').to + 24, 9);
    // What is washed dries before it is checked, and is wetted again on the last day.
    expect(plan.schedule.typicalCount).toBe(3);
    const { last = 0, cover } = plan.schedule.covering.z0 ?? {};
    expect((cover ?? Infinity) - last).toBeLessThanOrEqual(24);
  });
  it('its share of the slab', () => {
    const { shares } = readForOwner(drawn, plan);
    expect(shares.area?.['break-out']).toBeCloseTo(4 / 100, 9);
    // 100 m2 of 200 mm are 20 m3.
    expect(shares.volume?.typical).toBeCloseTo(removed / 20, 9);
  });
});

describe('a painted garage of 24 m2 with 20 m of wall, under a thin film', () => {
  const plan = planJob(
    tradeJob(
      [
        {
          contamination: { yes: ['thin-coating'], maybe: [] },
          texture: ['smooth'],
          finish: ['thin-film'],
          area: 24,
          borderLength: 20,
        },
      ],
      { setting: ['indoors'] },
    ),
  );
  it('every task', () => {
    expectLines(plan, [
      line('make-safe', 'hand-tools', 1),
      line('grind', 'floor-grinder', 24 / 12),
      line('edge-work', 'hand-grinder', 20 / 10),
      line('vacuum', 'vacuum', 24 / 80),
      line('check-ready', 'hand-tools', 0.75),
      line('wet-or-dry', 'hand-tools', 0.5),
      line('moisture-test', 'hand-tools', 0.75),
      line('last-clean', 'vacuum', 24 / 100),
    ]);
  });
  it('its last cleaning waits 16 h for the sheet (ASTM D4263, as reported), and comes next morning', () => {
    const test = placed(plan, 'moisture-test');
    expect(test.to + 16).toBeLessThan(24);
    expect(placed(plan, 'last-clean').from).toBe(24);
  });
});

describe('a dusting yard of 60 m2, shotblasted for an overlay', () => {
  const plan = planJob(
    tradeJob(
      [{ looseness: ['powdery'], contamination: { yes: ['salt-bloom'], maybe: [] }, area: 60 }],
      {
        freezeThaw: ['some'],
      },
    ),
  );
  it('every task', () => {
    expectLines(plan, [
      line('make-safe', 'hand-tools', 1),
      line('sound-and-mark', 'hand-tools', 60 / 60),
      line('shotblast', 'shotblaster', 60 / 15),
      line('vacuum', 'vacuum', 60 / 80),
      line('final-wash', 'pressure-washer', 60 / 40),
      line('check-ready', 'hand-tools', 0.75),
      line('wet-or-dry', 'hand-tools', 0.5),
      line('last-clean', 'hand-tools', 60 / 100),
    ]);
  });
  it('every quantity: a film of up to 1 mm, 5 to 20 L/m2 of water', () => {
    const { quantities } = plan.zones[0] ?? {};
    expect(quantities?.removed).toMatchObject({ span: [0, 60 * 0.001] });
    // 150 lb/ft3 = 2,403 kg/m3 (AASHTO LRFD Table 3.5.1-1, as reported).
    expect(quantities?.['debris-mass']).toMatchObject({ span: [0, 0.06 * 2403] });
    expect(quantities?.['wash-water']).toMatchObject({ span: [300, 1200] });
  });
});

describe('sums', () => {
  it('equal their parts, and usual values lie between the ends', () => {
    fc.assert(
      fc.property(settledJob, (job) => {
        const { tasks, steps, totals, zones } = planJob(job);
        for (const { id, hours } of steps) {
          if (!hours || !isKnown(hours)) continue;
          const mine = tasks.filter(({ step }) => step === id);
          for (const [end, wanted] of [
            ['low', hours.span[0]],
            ['typical', typicalOf(hours)],
            ['high', hours.span[1]],
          ] as const)
            expect(
              mine.reduce((sum, task) => sum + (task.hours?.running[end] ?? 0), 0),
            ).toBeCloseTo(wanted, 6);
        }
        for (const id of quantityIds) {
          const total = totals[id];
          if (!total || !isKnown(total)) continue;
          const parts = zones.flatMap(({ quantities }) => quantities[id] ?? []);
          const sum = parts.reduce((all, part) => all + usual(part), 0);
          // A skip takes what several zones leave: whole once, for the job.
          const wanted = id === 'skips' ? Math.ceil(sum - 1e-9) : sum;
          const least = 1e-9 * Math.max(1, sum);
          expect(Math.abs(usual(total) - wanted), id).toBeLessThanOrEqual(least);
          if (total.unit === 'count')
            for (const end of [...total.span, usual(total)])
              expect(Number.isInteger(end)).toBe(true);
        }
        for (const { hours, step } of tasks)
          for (const { low, typical, high } of hours ? [hours.running, hours.atTask] : []) {
            expect(low, step).toBeLessThanOrEqual(typical * (1 + 1e-9));
            expect(typical, step).toBeLessThanOrEqual(high * (1 + 1e-9));
          }
      }),
      { numRuns: onTrial(rounds(15, 60), 3) },
    );
  });
});
