import { describe, expect, it } from 'vitest';
import { mayBeProbed } from '$lib/advice/sheet';
import { planJob } from '$lib/plan/plan';
import { bothHours, leastShare, reachOf, tasksOf } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { tradeJob } from '../helpers/trade-jobs';
import { quantitiesWith, reach, workOf } from '../helpers/zone-work';

// Common practice, no source: who does a step, what it leaves and what it waits for.
describe('hours at the task', () => {
  // A tool runs 60 to 80 % of the time at a task, usually 70 (figure crew.usable).
  it('are those of the tool by the share it runs', () => {
    expect(bothHours(reach('h', [2.4, 3.5, 6]))).toEqual({
      running: { low: 2.4, typical: 3.5, high: 6 },
      atTask: { low: 2.4 / 0.8, typical: 3.5 / 0.7, high: 10 },
    });
    expect(bothHours(reach('h', [1, 2, 3]), { 'crew.usable': 0.5 })?.atTask).toEqual({
      ...{ low: 2, typical: 4, high: 6 },
    });
    expect(bothHours({ missing: ['area'], unit: 'h' })).toBeNull();
    expect(reachOf('crew.usable')).toEqual({ low: 0.6, typical: 0.7, high: 0.8 });
    expect(reachOf('mortar.density')).toEqual({ low: 2000, typical: 2150, high: 2300 });
    expect(reachOf('crew.usable', { 'crew.usable': 0.5 })).toEqual({
      ...{ low: 0.5, typical: 0.5, high: 0.5 },
    });
    expect(leastShare()).toBe(0.25);
  });
});

describe('the tasks of a job', () => {
  const quantities = quantitiesWith({ area: reach('m2', [30, 30, 30]) });
  const tasks = (
    steps: readonly StepId[],
    {
      dryFinish = true,
      probed = false,
      tools = {},
      zones = ['a'],
    }: { dryFinish?: boolean; probed?: boolean; tools?: object; zones?: string[] } = {},
  ) => {
    const work = workOf({
      tools: new Map(Object.entries(tools).map(([id, tool]) => [id, { tool }])),
    });
    return tasksOf(
      steps.map((id) => ({ id, zones, after: [] })),
      new Map(zones.map((id) => [id, { work, quantities, dryFinish, probed }])),
    );
  };
  it('are one for each zone, and one for the job where it is one set-up', () => {
    const two = tasks(['make-safe', 'sound-and-mark'], { zones: ['a', 'b'] });
    expect(two.map(({ step, zone, zones }) => [step, zone, zones])).toEqual([
      ['make-safe', null, ['a', 'b']],
      ['sound-and-mark', 'a', ['a']],
      ['sound-and-mark', 'b', ['b']],
    ]);
    expect(tasks(['vacuum'], { zones: [] })).toEqual([]);
  });
  it('tell why they have no hours', () => {
    const [edge, cover, mark] = tasks(['edge-work', 'cover', 'sound-and-mark']);
    expect(edge).toMatchObject({ hours: null, without: 'missing', labour: { unit: 'h' } });
    expect(cover).toMatchObject({ hours: null, without: 'not-counted', labour: null });
    expect(mark).not.toHaveProperty('without');
    expect(mark).toMatchObject({ tool: { tool: 'hand-tools' }, amount: { span: [30, 30] } });
  });
  it('are shared by hands, but not where one has the nozzle, the saw or the checking, or walks behind', () => {
    const steps: StepId[] = [
      ...(['saw-cut', 'blast-clean', 'abrasive-blast', 'water-jet', 'check-ready'] as const),
      ...(['moisture-test', 'break-out', 'vacuum', 'sound-and-mark'] as const),
    ];
    const shared = tasks(steps).filter((task) => task.shared);
    expect(shared.map(({ step }) => step)).toEqual(['break-out', 'vacuum', 'sound-and-mark']);
    const behind = tasks(['grind', 'scarify'], { tools: { grind: 'floor-grinder' } });
    expect(behind.map((task) => task.shared)).toEqual([false, true]);
  });
  it('leave it wet, rough or dusty', () => {
    const tools = {
      ...{ grind: 'floor-grinder', vacuum: 'vacuum', 'last-clean': 'vacuum' },
      ...{ shotblast: 'shotblaster', scarify: 'scarifier' },
    };
    const steps = [
      ...(['degrease', 'saw-cut', 'pressure-wash', 'final-wash', 'water-jet'] as const),
      ...(['break-out', 'chase-crack', 'free-bar', 'scarify', 'needle-scale'] as const),
      ...(['grind', 'shotblast', 'vacuum', 'last-clean', 'cover'] as const),
    ];
    expect(tasks(steps, { tools }).map(({ leaves }) => leaves)).toEqual([
      ...['wet', 'wet', 'wet', 'wet', 'wet', 'rough', 'rough', 'rough', 'rough', 'rough'],
      ...['dusty', 'dusty', null, null, null],
    ]);
  });
  it('go on by themselves: cement 7 to 14 days until cars, a coat 1 to 7, a fill 1 to 7', () => {
    const lasting = (dryFinish: boolean) =>
      tasks(['fill-cure', 'cure', 'cover'], { dryFinish }).map((task) => task.lasting);
    const fill = { low: 24, typical: 72, high: 168, figure: 'fill-level.cure' };
    const coat = { low: 24, typical: 72, high: 168, figure: 'traffic.coated' };
    const cement = { low: 168, typical: 168, high: 336, figure: 'traffic.cars' };
    expect(lasting(true)).toEqual([fill, coat, undefined]);
    expect(lasting(false)).toEqual([fill, cement, undefined]);
  });
  // ASTM F2170 since 2018, as reported: probes stand 24 hours before they are read, by the same figure
  // as on the page that proves it ready; a sheet stands 16 (ASTM D4263, as reported).
  it.each([
    ['self-levelling', 'indoors', 'slab', 'humidity.wait', 24],
    ['build-coat', 'indoors', 'suspended-slab', 'humidity.wait', 24],
    ['build-coat', 'open', 'slab', 'sheet.time', 16],
    ['thin-film', 'indoors', 'slab', 'sheet.time', 16],
    ['build-coat', 'indoors', 'wall', 'sheet.time', 16],
  ])('%s %s on a %s: the test stands by %s', (finish, setting, element, figure, typical) => {
    const job = tradeJob([{ finish: [finish], looseness: ['powdery'] }], {
      setting: [setting],
      element: [element],
    });
    const after = planJob(job).tasks.find(({ wait }) => wait?.after === 'moisture-test');
    expect(after?.wait).toMatchObject({ figure, hours: { typical } });
  });
  it('where the place is open the longer test is reckoned with', () => {
    const job = tradeJob([{ finish: ['build-coat'] }], { setting: ['open', 'indoors'] });
    const tests = tasks(['moisture-test', 'last-clean'], {
      probed: mayBeProbed(job.site, job.zones[0]?.answers ?? {}),
    });
    expect(tests[1]?.wait?.figure).toBe('humidity.wait');
  });
  it('wait for what dries in their zone, and for a sheet left to stand: 16 hours', () => {
    const waits = (steps: StepId[], dryFinish = true) =>
      tasks(steps, { dryFinish }).map(({ wait }) => wait);
    const drying = { low: 12, typical: 24, high: 48 };
    expect(waits(['saw-cut', 'break-out', 'blast-clean', 'shotblast'])).toEqual([
      ...[undefined, undefined],
      { hours: drying, after: 'break-out', figure: 'dry.before-blasting' },
      undefined,
    ]);
    expect(
      waits(['final-wash', 'wet-or-dry', 'moisture-test', 'last-clean'], true).slice(1),
    ).toEqual([
      {
        ...{ hours: { low: 24, typical: 48, high: 72 }, after: 'final-wash' },
        figure: 'dry.before-coating',
      },
      undefined,
      {
        ...{ hours: { low: 16, typical: 16, high: 16 }, after: 'moisture-test' },
        figure: 'sheet.time',
      },
    ]);
    expect(waits(['final-wash', 'wet-or-dry'], false)).toEqual([undefined, undefined]);
    expect(waits(['moisture-test', 'wet-or-dry', 'last-clean'])[2]).toBeUndefined();
  });
});
