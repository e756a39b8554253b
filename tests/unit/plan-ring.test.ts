import { describe, expect, it } from 'vitest';
import { isKnown } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { tradeJob } from '../helpers/trade-jobs';

const firm = {
  depth: 30,
  looseness: ['tight'],
  texture: ['pitted'],
  finish: ['rebuild'],
  area: 0.5,
};
const told = (zone: object) => {
  const job = tradeJob([zone]);
  const plan = planJob(job);
  return { job, plan, task: plan.tasks.find(({ step }) => step === 'break-out') };
};

// Common practice, no source: round a firm hollow the square cut leaves a ring of sound concrete,
// which a light hammer chips out.
describe('the ring round a firm hollow', () => {
  it('is hammered by hours of its own, over what it takes off, before the washing', () => {
    const { plan, task } = told(firm);
    expect(task?.tool).toEqual({ tool: 'chipping-hammer', class: 'hammer.small-patch' });
    const removed = plan.zones[0]?.quantities.removed;
    expect(task?.amount).toEqual(removed);
    // Figure rate.break-out-light, h for each m3, or the least for one patch, whichever is more.
    expect(task?.labour && isKnown(task.labour) && task.labour.span[0]).toBeGreaterThan(0);
    const steps = plan.steps.map(({ id }) => id);
    expect(steps.indexOf('saw-cut')).toBeLessThan(steps.indexOf('break-out'));
    expect(steps.indexOf('break-out')).toBeLessThan(steps.indexOf('pressure-wash'));
  });
  it('shakes the hands and the ears of whoever does it', () => {
    const { job, plan } = told(firm);
    const hammered = crewDaysOf(plan, job).shifts.flatMap(({ workers }) =>
      workers.flatMap(({ tasks }) => tasks.filter(({ step }) => step === 'break-out')),
    );
    expect(hammered.length).toBeGreaterThan(0);
    for (const { tool, hours } of hammered) {
      expect(tool).toBe('chipping-hammer');
      expect(hours[1]).toBeGreaterThan(0);
    }
  });
  it('is none where nothing is sawn: a sound face is washed', () => {
    expect(told({ ...firm, finish: ['sealer'] }).task).toBeUndefined();
    expect(told({ ...firm, depth: 2 }).task).toBeUndefined();
  });
  it('is no condition of the surface: the hollow is sound, and is filled', () => {
    expect(told(firm).plan.areas.map(({ method }) => method)).toEqual(['pressure-wash']);
  });
});
