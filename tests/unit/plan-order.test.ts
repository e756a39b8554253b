import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { edgesAmong } from '$lib/plan/order';
import { tradeJob } from '../helpers/trade-jobs';

// What a senior of the trade does in which order. Common practice, no source, but for the crack:
// UFGS 03931 (as reported) has it sealed on the same day, dry.

const stepsOf = (zone: object, site: object = {}) => planJob(tradeJob([zone], site)).steps;
const orderOf = (zone: object, site: object = {}) => stepsOf(zone, site).map(({ id }) => id);
const begins = (zone: object, site: object = {}) => {
  const { placed } = planJob(tradeJob([zone], site)).schedule;
  return (step: string) => placed.find(({ task }) => task.step === step);
};

describe('a crack that is routed', () => {
  const zone = { cracks: ['hairline'], crackLength: 6, finish: ['sealer'], area: 18 };
  it('is washed, dried, and routed and sealed in one step', () => {
    expect(orderOf(zone)).toEqual([
      ...['make-safe', 'pressure-wash', 'route-crack', 'check-ready'],
      ...['wet-or-dry', 'moisture-test', 'last-clean', 'cover', 'cure'],
    ]);
    const rout = stepsOf(zone).find(({ id }) => id === 'route-crack');
    // 24 to 72 h, as under a coating: the crack holds the water longest.
    expect(rout?.wait?.hours).toEqual([24, 72]);
    expect(stepsOf(zone).find(({ id }) => id === 'wet-or-dry')?.wait).toBeUndefined();
    const at = begins(zone);
    expect((at('route-crack')?.from ?? 0) - (at('pressure-wash')?.to ?? 0)).toBeGreaterThan(47);
  });
  it('comes after every machine, and before the last wash', () => {
    const order = orderOf({ ...zone, looseness: ['powdery'], finish: ['overlay'] });
    expect(order).toContain('shotblast');
    expect(order.indexOf('route-crack')).toBeGreaterThan(order.indexOf('shotblast'));
    expect(order.indexOf('route-crack')).toBeLessThan(order.indexOf('final-wash'));
  });
});

describe('drying', () => {
  const oily = { contamination: { yes: ['oil'], maybe: [] }, looseness: ['powdery'] };
  it('after degreasing, before a dry grinder and a scarifier', () => {
    for (const [zone, step] of [
      [{ ...oily, finish: ['sealer'] }, 'grind'],
      [{ ...oily, depth: ['3-to-6'], looseness: ['flaking'], finish: ['sealer'] }, 'scarify'],
    ] as const) {
      expect(stepsOf(zone).find(({ id }) => id === step)?.wait?.hours, step).toEqual([12, 48]);
      const at = begins(zone);
      const from = at(step)?.from ?? 0;
      expect(from - (at('degrease')?.to ?? 0), step).toBeGreaterThanOrEqual(24);
    }
  });
  it('nothing dries where nothing was wetted, and the order says what the days say', () => {
    const dry = { contamination: { yes: ['thin-coating'], maybe: [] }, finish: ['thin-film'] };
    expect(orderOf(dry)).toContain('wet-or-dry');
    expect(stepsOf(dry).map(({ wait }) => wait)).not.toContainEqual(expect.anything());
    for (const job of [tradeJob([dry]), tradeJob([oily]), tradeJob([oily, dry])]) {
      const { steps, tasks } = planJob(job);
      for (const { id, wait } of steps)
        expect(!!wait, id).toBe(
          tasks.some((task) => task.step === id && task.wait?.figure.startsWith('dry.')),
        );
    }
  });
});

describe('what comes before what', () => {
  const before = (one: string, other: string) =>
    edgesAmong([one, other] as never).some((edge) => edge.before === one && edge.after === other);
  it('the saw, before anything that cleans, and before bars are freed', () => {
    for (const step of ['abrasive-blast', 'blast-clean', 'shotblast', 'scarify', 'pressure-wash'])
      expect(before('saw-cut', step), step).toBe(true);
    expect(before('saw-cut', 'free-bar')).toBe(true);
    expect(before('break-out', 'free-bar')).toBe(true);
  });
  it('tapping along a crack, before any machine goes over it', () => {
    for (const step of ['shotblast', 'scarify', 'grind', 'abrasive-blast'])
      expect(before('tap-crack', step), step).toBe(true);
  });
});

describe('a border struck by hand', () => {
  it('is blasted too, by the metre, where what goes on is bonded', () => {
    const zone = { looseness: ['powdery'], area: 40, borderLength: 10 };
    const { steps, tasks } = planJob(tradeJob([zone], { freezeThaw: ['often'] }));
    expect(steps.map(({ id }) => id)).toContain('edge-work');
    const blast = tasks.find(({ step }) => step === 'blast-clean');
    expect(blast?.tool.tool).toBe('blast-nozzle');
    // 10 m at 12 to 50 m/h.
    expect(blast?.hours?.running.low).toBeCloseTo(10 / 50, 9);
    expect(blast?.hours?.running.high).toBeCloseTo(10 / 12, 9);
  });
});

describe('what is brought', () => {
  const hollow = { depth: 40, looseness: ['hollow'], area: 4 };
  const { schedule, dayRows, steps } = planJob(
    tradeJob([hollow], { freezeThaw: ['often'], thickness: 200 }),
  );
  it('air for the nozzle, and a vacuum for the slurry of the saw', () => {
    const days = (tool: string) => schedule.hire.find((each) => each.tool === tool)?.days;
    expect(days('compressor')).toEqual(days('blast-nozzle'));
    for (const day of days('walk-behind-saw') ?? []) expect(days('vacuum')).toContain(day);
    expect(dayRows.find(({ bring }) => bring.includes('blast-nozzle'))?.bring).toContain(
      'compressor',
    );
  });
  it('the hammer by its class, and nothing to vacuum a damp face with', () => {
    expect(schedule.hire.find(({ tool }) => tool === 'chipping-hammer')?.classes).toEqual([
      'hammer.large-patch',
    ]);
    expect(steps.find(({ id }) => id === 'break-out')?.tooling).toEqual([
      { tool: 'chipping-hammer', class: 'hammer.large-patch' },
    ]);
    expect(steps.find(({ id }) => id === 'last-clean')?.tools).toEqual(['hand-tools']);
  });
});
