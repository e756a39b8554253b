import { describe, expect, it } from 'vitest';
import type { Advice } from '$lib/advice/types';
import type { Case } from '$lib/practice/case';
import { gradeHazards, hazardsOffered } from '$lib/practice/hazards';
import { hazardIds, type HazardId } from '$shared/methods';

const caseOf = (id: string) => ({ id }) as unknown as Case;
const one = caseOf('tin-yard');
const advice = (cautions: readonly HazardId[], steps: object[] = []) =>
  ({ cautions, steps }) as unknown as Advice;
const inOrder = (ids: readonly HazardId[]) => hazardIds.filter((id) => ids.includes(id));

/** What hangs on the place or on one step is overlooked, and asked first. Common practice, no source. */
const overlooked = [
  ...(['lead-asbestos', 'structure', 'overhead', 'carbon-monoxide'] as const),
  ...(['chemicals', 'water-injection', 'silica', 'wash-water'] as const),
];
const plain = hazardIds.filter((id) => !(overlooked as readonly HazardId[]).includes(id));

const ids = ['net-loft', 'rope-walk', 'fish-market', 'bath-house', 'museum', 'tin-yard'];

describe('the hazards that are offered', () => {
  it('are five that are there, the overlooked before the others, and three that are not', () => {
    for (const first of overlooked) {
      // One that is overlooked among many that are not: it is always asked.
      const there = advice([...plain.slice(0, 7), first]);
      for (const id of ids) expect(hazardsOffered(caseOf(id), there)).toContain(first);
      const offered = hazardsOffered(one, there);
      expect(offered.filter((id) => there.cautions.includes(id))).toHaveLength(5);
      expect(offered).toHaveLength(8);
      expect(offered).toEqual(inOrder(offered));
    }
    const all = advice([...plain.slice(0, 3), ...overlooked]);
    expect(hazardsOffered(one, all).filter((id) => all.cautions.includes(id))).toEqual(
      inOrder(overlooked.slice(0, 5)),
    );
  });

  it('are the same each time, and others for another case', () => {
    const there = advice(plain.slice(0, 7));
    expect(hazardsOffered(one, there)).toEqual(hazardsOffered(one, there));
    const several = ids.map((id) => hazardsOffered(caseOf(id), there).join());
    expect(new Set(several).size).toBeGreaterThan(2);
  });

  it('are all of them, where hardly one is missing from the work', () => {
    const [last, ...rest] = hazardIds;
    const offered = hazardsOffered(one, advice(rest));
    expect(offered).toContain(last);
    expect(offered).toHaveLength(6);
  });
});

describe('the hazards that were picked', () => {
  it('are found, missed with the steps that bring them, spare, or were not asked about', () => {
    const there = advice(
      [...overlooked.slice(0, 5), 'noise'],
      [
        { id: 'saw-cut', hazards: ['noise', 'carbon-monoxide'] },
        { id: 'break-out', hazards: ['carbon-monoxide', 'structure'] },
        { id: 'vacuum', hazards: [] },
      ],
    );
    expect(gradeHazards(['structure', 'weather', 'chemicals'], one, there)).toEqual({
      found: ['structure', 'chemicals'],
      missed: [
        { hazard: 'lead-asbestos', steps: [] },
        { hazard: 'overhead', steps: [] },
        { hazard: 'carbon-monoxide', steps: ['saw-cut', 'break-out'] },
      ],
      extra: ['weather'],
      besides: ['noise'],
    });
    // Picked, though nobody had asked about it.
    const careful = gradeHazards(['noise'], one, there);
    expect([careful.found, careful.besides]).toEqual([['noise'], []]);
  });
});
