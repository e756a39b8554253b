import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, polygonsPath, rectangle } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { rangeOf, valueOf } from '$shared/figures';
import { coin, face } from './ground';
import { shadow } from './hollow';
import { drawnLoss, scale, stonesIn, type Box } from './scaling';

/** The grades of scaling in words of the trade, and the depth in mm at which each is drawn. */
export const scalingGrades = {
  light: () => valueOf('depth.thin'),
  medium: () => middle(rangeOf('depth.scaling-medium')),
  severe: () => middle(rangeOf('depth.scaling-severe')),
} as const;
export type ScalingGrade = keyof typeof scalingGrades;
/** Chosen so that the loss lies well in the picture. */
const seedOf = { light: 1040, medium: 1020, severe: 1060 } as const;
const middle = ([least, most]: readonly [number, number]) => (least + most) / 2;

const sheet: Box = [0, 0, 120, 72];
const whole = rectangle(...sheet);
const perMm = 0.6;

/**
 * Scaling of a grade over a share of what is seen.
 * @param share 0 to 1, met to within a hundredth
 */
export function scaling(grade: ScalingGrade, share: number, seed: number = seedOf[grade]): Drawing {
  const depth = scalingGrades[grade]() * perMm;
  const loss = scale(sheet, share, { seed, depth, broad: 34 });
  const stones =
    grade === 'light'
      ? []
      : stonesIn(loss, sheet, { seed: seed + 1, radii: [6, 2.2], gap: 1.2, tries: 240 });
  return [
    ...face(seed + 2, 60),
    ...drawnLoss(loss),
    ['sand', dotsPath(strewSand(whole, [], seed + 3, 220).filter((at) => loss.inside(at) > 0.03))],
    // Where the mortar round them has gone too, the stones stand out and throw shade themselves.
    ...(grade === 'severe'
      ? ([
          ['dark', stones.map((stone) => shadow(stone, -2.4)).join('')],
          ['form', polygonsPath(stones)],
        ] as const)
      : ([
          ['stone', polygonsPath(stones)],
          ['fine', polygonsPath(stones)],
        ] as const)),
    ...coin([109, 61], perMm),
  ];
}
