import { describe, expect, it } from 'vitest';
import { diceFrom } from '$lib/practice/dice';
import { baysOf } from '$lib/survey/bays';
import { slip } from '$lib/survey/joints';
import { outlineOf } from '$lib/survey/outline';
import { rectangleRing } from '$lib/survey/patches';
import { surveyOf } from '$lib/survey/survey';
import { anyDrawing, drawn } from '../helpers/drawings';
import { lineOf, past, polygonOf, unionOf } from '../helpers/jsts';
import { onTrial, rounds } from '../helpers/rounds';

/**
 * Random drawings, a thousand at night, held against an independent geometry library (JSTS, a port of the
 * Java Topology Suite), which shares no code with the one the engine clips with.
 */
const drawings = Array.from({ length: onTrial(rounds(40, 1000), 12) }, (_, seed) =>
  anyDrawing(diceFrom(seed + 1)),
);
const results = drawings.map((survey) => {
  const result = surveyOf(drawn(survey, ['a', 'b']));
  if (!result) throw new Error('nothing drawn');
  return result;
});
/** Relative to the surface. */
const exact = 1e-6;

describe(`${drawings.length} random drawings`, () => {
  it('are cut into bays that fill the surface and meet only along joints', () => {
    drawings.forEach((survey) => {
      const slab = outlineOf(survey.slab);
      const whole = polygonOf(slab).getArea();
      const bays = baysOf(slab, survey.joints ?? []);
      const shapes = bays.map(({ ring }) => polygonOf(ring));
      expect(shapes.every((shape) => shape.isValid())).toBe(true);
      const sum = bays.reduce((all, { area }) => all + area * 1e6, 0);
      expect(Math.abs(sum - whole)).toBeLessThan(whole * exact);
      expect(Math.abs(unionOf(shapes).getArea() - whole)).toBeLessThan(whole * exact);
      for (const joint of survey.joints ?? [])
        for (const shape of shapes)
          expect(lineOf(joint).intersection(shape.buffer(-0.1)).getLength()).toBeLessThanOrEqual(
            slip,
          );
    });
  });

  it('have patches that cover every outline with its margin as far as its bay goes, and cross no joint', () => {
    drawings.forEach((survey, index) => {
      const slab = polygonOf(outlineOf(survey.slab));
      const { patches } = results[index] as (typeof results)[number];
      const bays = baysOf(outlineOf(survey.slab), survey.joints ?? []);
      const skipped = results[index]?.skipped ?? [];
      for (const { id, ring } of bays) {
        const bay = polygonOf(ring);
        const mine = patches.filter((patch) => patch.bay === id);
        const shapes = mine.map((patch) => polygonOf(patch.corners ?? rectangleRing(patch)));
        const ground = unionOf(shapes);
        expect(ground.difference(bay).getArea()).toBeLessThan(slab.getArea() * exact);
        for (const [at, mark] of (survey.marks ?? []).entries()) {
          if (mark.kind !== 'spot' || skipped.includes(at)) continue;
          const damage = polygonOf(mark.corners).intersection(bay);
          if (damage.getArea() < 2) continue;
          // No sliver between them may be wider than arithmetic: taken in by a hundredth of a millimetre.
          const wanted = past(damage, 100).intersection(bay).buffer(-0.01);
          expect(wanted.difference(ground).getArea()).toBeLessThan(1);
        }
        for (const joint of survey.joints ?? [])
          for (const shape of shapes)
            expect(lineOf(joint).intersection(shape.buffer(-0.1)).getLength()).toBeLessThanOrEqual(
              slip,
            );
      }
    });
  });

  it('agree with it on areas and on the length to saw', () => {
    drawings.forEach((survey, index) => {
      const result = results[index] as (typeof results)[number];
      const slab = polygonOf(outlineOf(survey.slab));
      const bays = baysOf(outlineOf(survey.slab), survey.joints ?? []);
      const close = (mine: number, theirs: number) =>
        expect(Math.abs(mine - theirs / 1e6)).toBeLessThan((slab.getArea() / 1e6) * exact);
      const shapes = result.patches.map((patch) =>
        polygonOf(patch.corners ?? rectangleRing(patch)),
      );
      // Patches do not overlap, so their sum is their union.
      close(
        result.patches.reduce((sum, { area }) => sum + area, 0),
        unionOf(shapes).getArea(),
      );
      // The library's line along a bay is 0.05 mm wide: each end of a cut may lose a little of it.
      const ends = 0.01 + 0.002 * shapes.length;
      // Sawn: the sides of all patches, less what lies on a bay's outline.
      const sides = unionOf(shapes.map((shape) => shape.getBoundary()));
      const free = unionOf(bays.map(({ ring }) => polygonOf(ring).getBoundary().buffer(0.05)));
      expect(Math.abs(result.sawCut - sides.difference(free).getLength() / 1000)).toBeLessThan(
        ends,
      );
      const spots = (survey.marks ?? []).filter((mark) => mark.kind === 'spot');
      const of = (zone: string) =>
        unionOf(
          spots.filter((spot) => spot.zone === zone).map(({ corners }) => polygonOf(corners)),
        ).intersection(slab);
      const [a, b] = [of('a'), of('b')];
      if (!a.isEmpty() && !b.isEmpty()) {
        close(result.areas.a ?? 0, a.getArea());
        close(result.areas.b ?? 0, b.difference(a).getArea());
        close(result.unclaimed, slab.difference(a.union(b)).getArea());
      }
      close(
        Object.values(result.areas).reduce((sum, area) => sum + area, result.unclaimed),
        slab.getArea(),
      );
    });
  });
});
