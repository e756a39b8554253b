import { describe, expect, it } from 'vitest';
import { hiredTools, substituteFor } from '$lib/plan/machines';
import { bothHours, leastShare, reachOf, tasksOf } from '$lib/plan/tasks';
import { besideTool, placeOfZone, toolFor, toolingOf, type ToolPlace } from '$lib/plan/tools';
import type { StepId } from '$shared/methods';
import { toolIds } from '$shared/tools';
import { quantitiesWith, reach, workOf } from '../helpers/zone-work';

// Common practice, no source, but for the classes of hammers: FHWA, UFC 3-270-03 and ICRI 310.1R.
const floor: ToolPlace = { place: 'floor', onFloor: true, why: [], steel: false };

describe('the tool of a step', () => {
  const here = (step: StepId, place: Partial<ToolPlace> = {}) => {
    const found = toolFor(step, { ...floor, ...place });
    return [found.tool, ...(found.class ? [found.class] : [])].join(' ');
  };
  const wall: Partial<ToolPlace> = { place: 'off-floor', onFloor: false };
  const spot: Partial<ToolPlace> = { place: 'floor-spot' };
  const recess: Partial<ToolPlace> = { place: 'recess' };
  it.each<[StepId, string, Partial<ToolPlace>]>([
    ['break-out', 'chipping-hammer hammer.large-patch', {}],
    ['break-out', 'chipping-hammer hammer.small-patch', spot],
    ['break-out', 'chipping-hammer hammer.small-patch', wall],
    ['break-out', 'chipping-hammer hammer.above-steel', { why: ['light-hammer-here'] }],
    [
      'break-out',
      'chipping-hammer hammer.above-steel',
      { ...wall, steel: true, why: ['light-hammer-here'] },
    ],
    ['break-out', 'chipping-hammer hammer.at-steel', { ...wall, why: ['light-hammer-here'] }],
    ['free-bar', 'chipping-hammer hammer.at-steel', {}],
    ['chase-crack', 'chipping-hammer hammer.at-steel', { steel: true }],
    ['chase-crack', 'chipping-hammer hammer.small-patch', {}],
    ['grind', 'floor-grinder', {}],
    ['grind', 'hand-grinder', spot],
    ['grind', 'hand-grinder', wall],
    ['grind', 'hand-grinder', recess],
    ['scarify', 'scarifier', {}],
    ['scarify', 'scabbler', spot],
    ['scarify', 'scabbler', wall],
    ['saw-cut', 'walk-behind-saw', {}],
    ['saw-cut', 'walk-behind-saw', recess],
    ['saw-cut', 'hand-saw', spot],
    ['saw-cut', 'hand-saw', wall],
    ['blast-clean', 'shotblaster', { why: ['skin-by-shotblaster'] }],
    ['blast-clean', 'blast-nozzle', {}],
    ['blast-clean', 'blast-nozzle', { ...wall, why: ['skin-by-shotblaster'] }],
    ['edge-work', 'hand-grinder', { why: ['border-by-grinder'] }],
    ['edge-work', 'needle-scaler', {}],
    ['last-clean', 'hand-tools', { why: ['last-look'] }],
    ['last-clean', 'vacuum', {}],
    ['vacuum', 'vacuum', {}],
    ['pressure-wash', 'pressure-washer', wall],
    ['shotblast', 'shotblaster', {}],
    ['route-crack', 'hand-grinder', {}],
    ['sound-and-mark', 'hand-tools', {}],
  ])('%s: %s', (step, tool, place) => expect(here(step, place)).toBe(tool));
  it('is found for each step of the advice, by its own reasons', () => {
    const advice = {
      steps: [
        { id: 'break-out', why: [{ rule: 'light-hammer-here' }] },
        { id: 'free-bar', why: [] },
      ],
    } as never;
    expect([...toolingOf(advice, { place: 'floor', onFloor: true, steel: true })]).toEqual([
      ['break-out', { tool: 'chipping-hammer', class: 'hammer.above-steel' }],
      ['free-bar', { tool: 'chipping-hammer', class: 'hammer.at-steel' }],
    ]);
  });
  it('needs air where it runs on nothing else, and a vacuum for slurry and the dust of a groove', () => {
    expect(toolIds.filter((id) => besideTool('vacuum', id).includes('compressor'))).toEqual([
      ...['scabbler', 'blast-nozzle'],
    ]);
    expect(besideTool('vacuum', 'blast-nozzle')).toEqual(['compressor']);
    expect(besideTool('saw-cut', 'walk-behind-saw')).toEqual(['vacuum']);
    expect(besideTool('route-crack', 'hand-grinder')).toEqual(['vacuum']);
    expect(besideTool('break-out', 'chipping-hammer')).toEqual([]);
  });
});

describe('the place of a zone', () => {
  const place = (site: object, answers: object) => placeOfZone(site as never, answers as never);
  const sound = { steel: ['none-seen'], area: 20 };
  it('is that of the hardest element possible, and a slab where nobody has said', () => {
    const onFloor = { place: 'floor', onFloor: true, steel: false };
    expect(place({}, sound)).toEqual(onFloor);
    expect(place({ element: [] }, sound)).toEqual(onFloor);
    expect(place({ element: ['slab'] }, sound)).toEqual(onFloor);
    expect(place({ element: ['slab', 'wall'] }, sound)).toMatchObject({ onFloor: false });
    expect(place({ element: ['slab'] }, { ...sound, area: 0.1 }).place).toBe('floor-spot');
    expect(place({}, { steel: ['none-seen'] }).place).toBe('floor');
  });
  it('has steel unless it is sure that none shows', () => {
    expect(place({}, { ...sound, steel: ['none-seen', 'corroded'] }).steel).toBe(true);
    expect(place({}, {}).steel).toBe(true);
  });
  it('is a recess where a firm hollow is rebuilt, as far as is known', () => {
    const hollow = { ...sound, looseness: ['tight'], finish: ['rebuild'], depth: 40 };
    expect(place({}, hollow).place).toBe('recess');
    expect(place({}, { ...hollow, depth: ['6-to-20', '20-to-50'] }).place).toBe('recess');
    for (const other of [
      { depth: ['film', '20-to-50'] },
      { depth: 2 },
      { depth: undefined },
      { looseness: ['tight', 'hollow'] },
      { finish: ['rebuild', 'overlay'] },
    ])
      expect(place({}, { ...hollow, ...other }).place, JSON.stringify(other)).toBe('floor');
  });
});

describe('a machine the crew has not', () => {
  const advice = (wanted: string | null, ...able: string[]) =>
    ({
      underneath: wanted,
      rejections: [
        ...able.map((method) => ({ method, wouldDo: true })),
        { method: 'water-jet', wouldDo: false },
      ],
    }) as never;
  const instead = (wanted: string | null, machines: string[], ...able: string[]) =>
    substituteFor('a', advice(wanted, ...able), machines);
  it('is missed only where it is advised', () => {
    expect(instead('shotblast', ['shotblast'], 'grind')).toBeNull();
    expect(instead(null, [])).toBeNull();
  });
  it('gives way to the gentlest they have that would do; else it is hired', () => {
    const none = { zone: 'a', wanted: 'shotblast', instead: null, costs: [] };
    expect(instead('shotblast', [])).toEqual(none);
    expect(instead('shotblast', ['water-jet'], 'grind')).toEqual(none);
    const all = ['break-out', 'needle-scale', 'scarify', 'abrasive-blast'];
    expect(instead('shotblast', all, ...all)?.instead).toBe('abrasive-blast');
    expect(instead('shotblast', all, 'break-out', 'needle-scale')?.instead).toBe('needle-scale');
    expect(instead('water-jet', all, 'needle-scale', 'abrasive-blast')?.instead).toBe(
      'abrasive-blast',
    );
  });
  it('costs bruises, roughness, time or harshness, each where it is so', () => {
    const costs = (wanted: string, other: string) => instead(wanted, [other], other)?.costs;
    expect(costs('grind', 'shotblast')).toEqual(['harsher', 'bruises-more']);
    expect(costs('shotblast', 'scarify')).toEqual(['bruises-more', 'rougher']);
    expect(costs('shotblast', 'abrasive-blast')).toEqual(['slower']);
    expect(costs('shotblast', 'needle-scale')).toEqual(['bruises-more', 'slower']);
    expect(costs('scarify', 'break-out')).toEqual(['harsher', 'bruises-more', 'rougher', 'slower']);
    expect(costs('abrasive-blast', 'grind')).toEqual(['bruises-more']);
    expect(costs('scarify', 'shotblast')).toEqual([]);
    expect(costs('break-out', 'water-jet')).toEqual([]);
  });
  it('stands as hired with the tool its zone is planned with', () => {
    const zones = [{ id: 'a', tools: new Map([['grind', { tool: 'hand-grinder' }]]) }] as never;
    const lack = (zone: string, wanted: string) => ({ zone, wanted, instead: null, costs: [] });
    const hired = (...substitutes: object[]) => [...hiredTools({ zones, substitutes } as never)];
    expect(hired(lack('a', 'grind'))).toEqual(['hand-grinder']);
    expect(hired(lack('b', 'grind'), lack('a', 'scarify'))).toEqual([]);
  });
});

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
      tools = {},
      zones = ['a'],
    }: { dryFinish?: boolean; tools?: object; zones?: string[] } = {},
  ) => {
    const work = workOf({
      tools: new Map(Object.entries(tools).map(([id, tool]) => [id, { tool }])),
    });
    return tasksOf(
      steps.map((id) => ({ id, zones, after: [] })),
      new Map(zones.map((id) => [id, { work, quantities, dryFinish }])),
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
  it('wait for what dries in their zone, and for a sheet left to stand: 16 hours', () => {
    const waits = (steps: StepId[], dryFinish = true) =>
      tasks(steps, { dryFinish }).map(({ wait }) => wait);
    const drying = { low: 12, typical: 24, high: 48 };
    expect(waits(['saw-cut', 'break-out', 'blast-clean', 'shotblast'])).toEqual([
      ...[undefined, undefined],
      { hours: drying, after: 'saw-cut', figure: 'dry.before-blasting' },
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
