import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
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
