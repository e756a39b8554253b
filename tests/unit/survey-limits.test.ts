import { slowness } from '../helpers/slowness';
import { describe, expect, it } from 'vitest';
import type { Mark, Survey } from '$lib/answers/survey';
import { diceFrom } from '$lib/practice/dice';
import { baysOf } from '$lib/survey/bays';
import { evenJoints, outlineOf } from '$lib/survey/outline';
import { layPatches } from '$lib/survey/patches';
import { surveyOf, type SurveyResult } from '$lib/survey/survey';
import { anyDrawing, drawn, rectangle } from '../helpers/drawings';
import { nightly, onTrial, rounds } from '../helpers/rounds';

const spot = (x: number, y: number, length: number, width: number, more = {}): Mark => ({
  kind: 'spot',
  corners: rectangle(x, y, length, width),
  ...more,
});
const of = (survey: Survey): SurveyResult => surveyOf(drawn(survey, ['a', 'b'])) as SurveyResult;

/** A random drawing, the same with its marks and joints in another order, and where each mark was. */
function shuffled(seed: number, most: number) {
  const dice = diceFrom(seed);
  const survey = anyDrawing(dice, most);
  const marks = survey.marks ?? [];
  const order = dice.shuffle([...marks.keys()]);
  const other: Survey = {
    ...survey,
    joints: dice.shuffle(survey.joints ?? []),
    marks: order.map((index) => marks[index] as Mark),
  };
  const asBefore = (indices: readonly number[]) =>
    indices.map((index) => order[index] as number).sort((a, b) => a - b);
  return { survey, other, asBefore };
}

describe('the order of marks never matters', () => {
  const layouts = onTrial(rounds(250, 10_000), 40);
  it(`to patches: ${layouts} layouts`, () => {
    const lay = ({ slab, joints = [], marks = [] }: Survey) =>
      layPatches(
        marks.map((mark) => ('corners' in mark ? mark.corners : [])),
        'often',
        undefined,
        baysOf(outlineOf(slab), joints),
      );
    for (let seed = 1; seed <= layouts; seed += 1) {
      const { survey, other, asBefore } = shuffled(seed, 8);
      const { patches, skipped } = lay(other);
      expect({
        patches: patches.map((patch) => ({ ...patch, spots: asBefore(patch.spots) })),
        skipped: asBefore(skipped),
      }).toEqual(lay(survey));
    }
  });

  const drawings = onTrial(rounds(40, 1000), 12);
  it(`to anything a drawing comes to: ${drawings} drawings`, () => {
    for (let seed = 1; seed <= drawings; seed += 1) {
      const { survey, other, asBefore } = shuffled(seed, 14);
      // Remarks stand in the order of the marks, for a list beside them.
      const mine = { ...of(other), remarks: [] };
      const before = { ...of(survey), remarks: [] };
      expect({
        ...mine,
        skipped: asBefore(mine.skipped),
        patches: mine.patches.map((patch) => ({ ...patch, spots: asBefore(patch.spots) })),
        damage: Object.fromEntries(
          Object.entries(mine.damage).map(([zone, { deepestMark, ...rest }]) => [
            zone,
            {
              ...rest,
              ...(deepestMark !== undefined && { deepestMark: asBefore([deepestMark])[0] }),
            },
          ]),
        ),
      }).toEqual(before);
    }
  });
});

describe('speed', () => {
  it.runIf(nightly)('works 400 spots out in under 50 ms', () => {
    const dice = diceFrom(4);
    const marks = Array.from({ length: 400 }, () =>
      spot(
        dice.between(0, 19_000),
        dice.between(0, 29_000),
        dice.between(100, 600),
        dice.between(100, 600),
        { zone: dice.pick(['a', 'b']), depth: 30 },
      ),
    );
    const large = { length: 20_000, width: 30_000 };
    const joints = evenJoints(large, 4000, 4000);
    // Enough turns that the code has been compiled, whatever ran before.
    const times = Array.from({ length: 20 }, (_, turn) => {
      const survey: Survey = {
        slab: large,
        joints,
        marks: marks.with(0, spot(turn * 100, 100, 200, 200)),
      };
      // Time of the processor, not of the clock: other programs may run.
      const start = process.cpuUsage();
      of(survey);
      return process.cpuUsage(start).user / 1000;
    }).sort((a, b) => a - b);
    console.log(
      `400 spots in 40 bays: ${times[10]?.toFixed(1)} ms (middle), ${times[0]?.toFixed(1)} ms (best)`,
    );
    expect(times[0]).toBeLessThan(50 * slowness());
  });
});
