import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { valueOf } from '$shared/figures';
import { coin } from './ground';

/** Sheet units per mm. */
const perMm = 0.8;
/** Diameter of the bars drawn, in mm. They stand closer than bars do, so that three fit beside the coin. */
const thick = 16;
const half = (thick / 2) * perMm;
const beside = coin([105, 58], perMm);

/** How wide what is left is, as a share of the diameter, when a share of the section is gone. */
export const leftOf = (loss: number): number => Math.sqrt(1 - loss);
/** Share of the section that is gone from each of three bars; past its limit by half as much again. */
export const lost = {
  'within-limit': [0, valueOf('bar.loss-one') * 0.5, 0],
  'one-bar': [0, valueOf('bar.loss-one') * 2.2, 0],
  neighbours: [valueOf('bar.loss-neighbours') * 2.5, valueOf('bar.loss-neighbours') * 2.5, 0],
} as const satisfies Record<Choice<'barLoss'>, readonly number[]>;

/** An upright bar, thinner in its middle; what it was stands dashed. */
function bar(x: number, loss: number, seed: number): Drawing {
  const thin = half * leftOf(loss);
  const side = (sign: number): Point[] =>
    loss
      ? [
          [x + sign * half, 4],
          [x + sign * half, 16],
          [x + sign * (half * 0.4 + thin * 0.6), 24],
          [x + sign * thin, 31],
          [x + sign * thin * 1.06, 38],
          [x + sign * thin, 45],
          [x + sign * (half * 0.4 + thin * 0.6), 52],
          [x + sign * half, 59],
          [x + sign * half, 68],
        ]
      : [
          [x + sign * half, 4],
          [x + sign * half, 68],
        ];
  const ribs = Array.from({ length: 10 }, (_, index) => 7 + index * 6.4)
    .filter((y) => !loss || y < 18 || y > 56)
    .map(
      (y) =>
        `M${(x - half).toFixed(1)} ${(y + 1.6).toFixed(1)}L${(x + half).toFixed(1)} ${(y - 1.6).toFixed(1)}`,
    );
  return [
    ['form', pathOf([...side(-1), ...side(1).reverse()], true)],
    ['fine', ribs.join('')],
    ...(loss
      ? ([
          ['grain', dotsPath(strewSand(rectangle(x - thin, 24, x + thin, 52), [], seed, 40))],
          ['dashed', `M${x - half} 16V59M${x + half} 16V59`],
        ] as const)
      : []),
  ];
}

const three = (choice: Choice<'barLoss'>) => (): Drawing => [
  ['tone', 'M0 0H120V72H0z'],
  ['sand', dotsPath(strewSand(rectangle(0, 0, 120, 72), [], 741, 60))],
  ...lost[choice].flatMap((loss, index) => bar(20 + index * 32, loss, 742 + index)),
  ...beside,
];

/** Three neighbouring bars looked at from in front: how much thinner they are, and how many. */
export const barLoss: Record<Choice<'barLoss'>, () => Drawing> = {
  'within-limit': three('within-limit'),
  'one-bar': three('one-bar'),
  neighbours: three('neighbours'),
};
