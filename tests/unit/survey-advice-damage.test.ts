import { describe, expect, it } from 'vitest';
import type { ZoneAnswers } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import { choicesOf, type Element, type Looseness } from '$lib/answers/questions';
import { planJob } from '$lib/plan/plan';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { rectangle } from '../helpers/drawings';
import { goodDrawing, readDrawn } from '../helpers/drawn-file';

describe('the damage that is drawn, where it is worse than what was answered', () => {
  // Common practice, no source: whoever draws has looked; the worse of two tellings is worked by.
  const answersOf = (marks: unknown[], of: 'a' | 'b') => {
    const job = readDrawn({ ...goodDrawing, marks });
    return drawnJob(job, surveyOf(job)).zones.find(({ id }) => id === of)?.answers;
  };
  const spot = (depth?: number) => ({
    kind: 'spot',
    corners: rectangle(500, 1000, 400, 500),
    zone: 'b',
    ...(depth !== undefined && { depth }),
  });
  const line = [
    [500, 3000],
    [1500, 3000],
  ];

  it('counts the deepest spot of the zone, and none that is shallower', () => {
    expect(answersOf([spot(100), spot(45)], 'b')?.depth).toBe(100);
    expect(answersOf([spot(20)], 'b')?.depth).toBe(40);
    expect(answersOf([spot()], 'b')?.depth).toBe(40);
    expect(answersOf([spot(100)], 'a')?.depth).toBe(2);
  });

  it('closes a depth that nobody could say, once every spot is measured; else it leaves what is deeper', () => {
    const of = (depth: ZoneAnswers['depth'], ...marks: unknown[]) => {
      const { site } = readDrawn(goodDrawing);
      const job = readDrawn({ ...goodDrawing, marks });
      const zones = job.zones.map((zone) =>
        zone.id === 'b' ? { ...zone, answers: { ...zone.answers, depth } } : zone,
      );
      const open = { ...job, site, zones } as Job;
      return drawnJob(open, surveyOf(open)).zones.find(({ id }) => id === 'b')?.answers.depth;
    };
    const all = choicesOf('depth') as unknown as NonNullable<ZoneAnswers['depth']>;
    expect(of(undefined, spot(40), spot(90))).toBe(90);
    expect(of(all, spot(40), spot(90))).toBe(90);
    expect(of(all, spot(40), spot())).toEqual(['20-to-50', 'over-50', 'through']);
    expect(of(undefined, spot())).toBeUndefined();
    expect(of(['3-to-6', '20-to-50'], spot(40))).toEqual(['20-to-50']);
    expect(of(['3-to-6'], spot(40))).toBe(40);
  });

  // What sounds dull is drawn as a spot: over somebody's head it is nobody's guess how deep it goes.
  it('leaves open whether what carries is hollow where a spot is drawn, and how deep where none measured it', () => {
    const on = (element: Element, looseness: Looseness, ...marks: unknown[]) => {
      const job = readDrawn({ ...goodDrawing, marks });
      const zones = job.zones.map((zone) =>
        zone.id === 'b'
          ? { ...zone, answers: { ...zone.answers, looseness: [looseness] as const } }
          : zone,
      );
      const open = { ...job, site: { ...job.site, element: [element] as const }, zones };
      return drawnJob(open, surveyOf(open)).zones.find(({ id }) => id === 'b')?.answers;
    };
    expect(on('suspended-slab', 'tight', spot(60))).toMatchObject({
      looseness: ['tight', 'hollow'],
      depth: 60,
    });
    const unmeasured = on('soffit', 'flaking', spot());
    expect(unmeasured?.looseness).toEqual(['flaking', 'hollow']);
    expect(unmeasured).not.toHaveProperty('depth');
    expect(on('wall', 'rotten', spot(60))?.looseness).toEqual(['rotten']);
    expect(on('suspended-slab', 'tight')?.looseness).toEqual(['tight']);
    // On the ground it stays what it was answered.
    expect(on('slab', 'tight', spot(60))?.looseness).toEqual(['tight']);
    // Two dull taps beside each other that nobody has outlined are such a spot; a lone one is tapped again.
    const taps = (...at: number[][]) => [
      { kind: 'zone', zone: 'b', corners: rectangle(0, 0, 3000, 3000) },
      ...at.map((each) => ({ kind: 'tap', at: each, rings: false })),
    ];
    const two = on('suspended-slab', 'tight', ...taps([600, 1200], [800, 1200]));
    expect(two?.looseness).toEqual(['tight', 'hollow']);
    expect(two).not.toHaveProperty('depth');
    expect(on('suspended-slab', 'tight', ...taps([600, 1200]))?.looseness).toEqual(['tight']);
    expect(on('slab', 'tight', ...taps([600, 1200], [800, 1200]))?.looseness).toEqual(['tight']);
  });

  it('counts the worst crack; one of unknown kind may be any', () => {
    const crack = (kind?: string) => ({
      kind: 'crack',
      line,
      zone: 'a',
      ...(kind && { crack: kind }),
    });
    expect(answersOf([crack('moving'), crack('hairline')], 'a')?.cracks).toEqual(['moving']);
    expect(answersOf([crack('hairline')], 'a')?.cracks).toEqual(['open']);
    expect(answersOf([crack('hairline')], 'b')?.cracks).toEqual(['none']);
    expect(answersOf([crack()], 'a')?.cracks).toEqual(['open', 'crumbling', 'moving']);
  });

  it('counts a bar that shows', () => {
    const bar = { kind: 'bar', line, zone: 'a' };
    expect(answersOf([], 'a')?.steel).toEqual(['none-seen']);
    expect(answersOf([bar], 'a')?.steel).toEqual(['exposed', 'corroded']);
  });

  it('reaches verdict and owner’s amounts alike: a spot past half the slab stops it', () => {
    const job = readDrawn({ ...goodDrawing, marks: [spot(100)] });
    const held = planJob(job).held.find(({ id }) => id === 'b');
    expect(held?.holds.map(({ rule }) => rule)).toContain('full-depth');
  });
});
