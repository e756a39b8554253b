import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { ZoneAnswers } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import { choicesOf, type Element, type Looseness } from '$lib/answers/questions';
import { planJob } from '$lib/plan/plan';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { adviceDocument } from '../../src/cli/advice-document';
import { rectangle } from '../helpers/drawings';
import { goodDrawing, readDrawn } from '../helpers/drawn-file';

describe('what the command line says of a drawing', () => {
  it('has every promised field', () => {
    const { survey, plan } = JSON.parse(
      JSON.stringify(adviceDocument(readDrawn(goodDrawing), adviseZone)),
    );
    expect(survey.patches).toMatchObject([
      { x: 2500, y: 900, length: 500, width: 700, bay: '1', zone: 'b' },
      { x: 3000, y: 900, length: 500, width: 700, bay: '2', zone: 'b' },
    ]);
    expect(survey.bays).toEqual([
      { id: '1', area: 24, patched: 0.35, saw: 1.7, whole: false, corner: [0, 0] },
      { id: '2', area: 24, patched: 0.35, saw: 1.7, whole: false, corner: [3000, 0] },
    ]);
    // Each 500 + 700 + 500 mm; the joint is there.
    expect(survey.sawCut).toBeCloseTo(3.4, 9);
    expect(survey.spacing).toBe(300);
    expect(survey.found.ninety).toBeCloseTo(0.5575 * 300, 1);
    // Zone b is its spot, 0.8 x 0.5 m; a is what is left of 6 x 8 m.
    expect(survey.areas.b).toBeCloseTo(0.4, 9);
    expect(survey.areas.a).toBeCloseTo(47.6, 6);
    expect(survey.cracks).toEqual({ open: 3.5 });
    expect(survey.cracksByZone.a).toBeCloseTo(3.5, 9);
    expect(survey.upright).toBe(6);
    expect(survey.uprightByZone.a).toBeCloseTo(6, 9);
    expect(survey.bars).toBeCloseTo(0.4, 9);
    // One dull tap by itself is asked for again.
    expect(survey.taps).toEqual({ tapAgain: [13], outline: [] });
    // 0.7 m2 x (40 + 13) mm, of 48 m2 x 200 mm.
    expect(survey.removal.volume).toBeCloseTo(0.0371, 6);
    expect(survey.removal.share).toBeCloseTo(0.0371 / 9.6, 8);
    // The plan saws and breaks out what the drawing lays, not a square of the area.
    const zone = plan.zones.find(({ id }: { id: string }) => id === 'b');
    expect(zone.method).toBe('break-out');
    expect(zone.quantities['patch-area'].span).toEqual([0.7, 0.7]);
    expect(zone.quantities['saw-cut'].span[0]).toBeCloseTo(3.4, 9);
  });

  it('is absent without a drawing', () => {
    expect(adviceDocument(readDrawn(), adviseZone)).not.toHaveProperty('survey');
  });

  it('takes off in the plan what it takes off on the drawing, patch by patch', () => {
    const removed = (marks: unknown[]) => {
      const job = readDrawn({ ...goodDrawing, marks });
      const zone = planJob(job).zones.find(({ id }) => id === 'b');
      const amount = zone?.quantities.removed;
      return {
        volume: surveyOf(job)?.removal.volume,
        span: amount && 'span' in amount && amount.span,
      };
    };
    const spot = (x: number, depth?: number) => ({
      kind: 'spot',
      corners: rectangle(x, 1000, 400, 500),
      zone: 'b',
      ...(depth !== undefined && { depth }),
    });
    // The zone says 40 mm. By hand: 0.6 x 0.7 m, 30 and 45 mm deep, and 13 mm into sound concrete.
    const both = removed([spot(500, 30), spot(4000, 45)]);
    expect(both.volume).toBeCloseTo(0.42 * 0.043 + 0.42 * 0.058, 9);
    expect(both.span).toEqual([
      expect.closeTo(both.volume ?? 0, 9),
      expect.closeTo(both.volume ?? 0, 9),
    ]);
    // Where the drawing does not know, the zone's depth counts.
    const one = removed([spot(500, 30), spot(4000)]);
    expect(one.span && one.span[0]).toBeCloseTo(0.42 * 0.043 + 0.42 * 0.053, 9);
  });

  it('outranks typed areas, in the plan as in the advice', () => {
    const { zones } = planJob(readDrawn(goodDrawing));
    const a = zones.find(({ id }) => id === 'a');
    expect(a?.quantities.area).toMatchObject({
      span: [expect.closeTo(47.6, 6), expect.closeTo(47.6, 6)],
    });
  });

  it('measures areas, cracks and borders zone by zone; what it does not show stays as typed', () => {
    const job = readDrawn(goodDrawing);
    const [a, b] = drawnJob(job, surveyOf(job)).zones;
    expect(a?.answers).toMatchObject({
      area: expect.closeTo(47.6, 6),
      borderLength: expect.closeTo(6, 6),
      crackLength: expect.closeTo(3.5, 6),
      depth: 2,
    });
    expect(b?.answers).toMatchObject({ area: expect.closeTo(0.4, 6), borderLength: 0 });
    const bare = readDrawn({ slab: goodDrawing.slab });
    expect(drawnJob(bare, surveyOf(bare)).zones[0]?.answers).toEqual(bare.zones[0]?.answers);
  });
});

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
