import { describe, expect, it } from 'vitest';
import { hiredTools, substituteFor } from '$lib/plan/machines';
import { besideTool, placeOfZone, toolFor, toolingOf, type ToolPlace } from '$lib/plan/tools';
import type { StepId } from '$shared/methods';
import { toolIds } from '$shared/tools';

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
    expect(costs('needle-scale', 'scarify')).toEqual(['harsher', 'rougher']);
    expect(costs('break-out', 'water-jet')).toEqual([]);
  });
  it('stands as hired where the crew does no method that it belongs to', () => {
    const hire = [{ tool: 'hand-grinder' }, { tool: 'walk-behind-saw' }];
    const hired = (machines?: string[]) => [
      ...hiredTools({ schedule: { hire } } as never, machines ? { machines } : {}),
    ];
    expect(hired(['scarify'])).toEqual(['hand-grinder']);
    expect(hired(['grind'])).toEqual([]);
    expect(hired()).toEqual([]);
  });
});
