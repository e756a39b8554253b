import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { toolFor, type ToolPlace } from '$lib/plan/tools';
import type { StepId } from '$shared/methods';
import { tools } from '$shared/tools';
import { isKnown } from '$lib/plan/amount';
import { tradeJob } from '../helpers/trade-jobs';

const floor: ToolPlace = { place: 'floor', onFloor: true, why: [], steel: false };
const tool = (step: StepId, place: Partial<ToolPlace> = {}) =>
  toolFor(step, { ...floor, ...place }).tool;

// Common practice, no source, but for the classes: FHWA, UFC 3-270-03 and ICRI 310.1R (figures hammer.*).
describe('tools fit the place', () => {
  it('nothing on wheels on a spot, in a recess or off floors', () => {
    for (const place of ['floor-spot', 'off-floor', 'off-floor-spot', 'off-floor-wide', 'recess'])
      for (const step of ['grind', 'scarify', 'blast-clean', 'edge-work'] as const) {
        const found = tool(step, { place: place as never, onFloor: place.startsWith('floor') });
        expect(tools[found].held, `${step} at ${place}`).toBe('hand-held');
      }
  });
  it('a shotblaster takes the bruised skin off a flat floor only', () => {
    expect(tool('blast-clean', { why: ['skin-by-shotblaster'] })).toBe('shotblaster');
    expect(tool('blast-clean', { why: ['skin-by-grit-or-water'] })).toBe('blast-nozzle');
  });
  it('a patch gets a light hammer, heavier only where there is no steel', () => {
    expect(toolFor('break-out', { ...floor, why: ['light-hammer-here'], steel: true })).toEqual({
      tool: 'chipping-hammer',
      class: 'hammer.above-steel',
    });
    expect(toolFor('free-bar', floor)).toEqual({
      tool: 'chipping-hammer',
      class: 'hammer.at-steel',
    });
    expect(toolFor('break-out', floor)).toEqual({
      tool: 'chipping-hammer',
      class: 'hammer.large-patch',
    });
    expect(toolFor('break-out', { ...floor, place: 'floor-spot' })).toEqual({
      tool: 'chipping-hammer',
      class: 'hammer.small-patch',
    });
  });
  it('the border gets what reaches the roughness of the rest', () => {
    expect(tool('edge-work', { why: ['border-by-grinder'] })).toBe('hand-grinder');
    expect(tool('edge-work', { why: ['border-by-bush-hammer'] })).toBe('needle-scaler');
  });
});

describe('in the plan', () => {
  it('a border takes the hours of its metres, and there is none without', () => {
    // 12 m at 5 to 15 m/h (figure rate.edge-work): 0.8 to 2.4 h.
    const scaled = { depth: ['3-to-6'], looseness: ['flaking'], texture: ['smooth'], area: 20 };
    const plan = planJob(tradeJob([{ ...scaled, borderLength: 12 }]));
    const edge = plan.steps.find(({ id }) => id === 'edge-work');
    if (!edge?.hours || !isKnown(edge.hours)) throw new Error('expected a border');
    expect(edge.hours.span[0]).toBeCloseTo(0.8, 9);
    expect(edge.hours.span[1]).toBeCloseTo(2.4, 9);
    expect(edge.tools).toEqual(['needle-scaler']);
    for (const borderLength of [0, 'unknown'])
      expect(
        planJob(tradeJob([{ ...scaled, borderLength }])).steps.map(({ id }) => id),
      ).not.toContain('edge-work');
  });
  it('round a bar the plan has the hammer the advice names', () => {
    const bar = {
      ...{ depth: 30, looseness: ['fractured'], area: 6 },
      ...{ steel: ['corroded'], barLoss: ['within-limit'], barCover: 30, barDiameter: 10 },
    };
    const plan = planJob(tradeJob([bar], { thickness: 300 }));
    const [zone] = plan.zones;
    expect(zone?.tools.get('free-bar')).toMatchObject({ class: 'hammer.at-steel' });
    for (const { id, tools: found } of plan.steps) expect(found, id).not.toContain('jackhammer');
  });
});
