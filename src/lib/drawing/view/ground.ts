import { coinWidth } from '$lib/drawing/coin';
import type { Drawing } from '$lib/drawing/mark';
import { circlePath, dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';

/** Width and height of the sheet of a view, as of every choice's drawing. */
const [width, height] = [120, 72];
export const all = rectangle(0, 0, width, height);

/** Length in mm of the rule and of the boot. */
export const ruleLength = 300;

/** A sound face looked at straight on: mortar, and a few grains. */
export const face = (seed: number, grains = 70): Drawing => [
  ['air', pathOf(all, true)],
  ['sand', dotsPath(strewSand(all, [], seed, grains))],
];

/** The coin, lying on the concrete. */
export function coin([x, y]: Point, perMm: number): Drawing {
  const radius = (coinWidth / 2) * perMm;
  const mark = radius * 0.42;
  return [
    ['form', circlePath([x, y], radius)],
    ['fine', circlePath([x, y], radius * 0.76)],
    ['ink', `M${x - mark * 0.6} ${y - mark * 0.5}L${x} ${y - mark}V${y + mark}`],
  ];
}

/** The rule of 300 mm: a stroke every 10 mm, a longer one every 50. It lies beside, on nothing. */
export function rule(left: number, top: number, perMm: number, breadth = 7): Drawing {
  const right = left + ruleLength * perMm;
  const ticks = Array.from({ length: ruleLength / 10 - 1 }, (_, index) => {
    const reach = (index + 1) % 5 ? breadth * 0.3 : breadth * 0.6;
    return `M${(left + (index + 1) * 10 * perMm).toFixed(1)} ${top}v${reach.toFixed(1)}`;
  });
  return [
    ['form', `M${left} ${top}H${right}V${top + breadth}H${left}z`],
    ['fine', ticks.join('')],
  ];
}

/** A right boot from above, 300 mm from heel to toe, heel at the origin and toe to the right. */
export function boot([x, y]: Point, perMm: number): Drawing {
  const at = (along: number, across: number) =>
    `${(x + along * perMm).toFixed(1)} ${(y + across * perMm).toFixed(1)}`;
  const lace = (along: number) => `M${at(along, -18)}L${at(along + 14, 16)}`;
  return [
    [
      'form',
      `M${at(0, 0)}C${at(0, -48)} ${at(60, -44)} ${at(110, -36)}S${at(190, -58)} ${at(240, -52)}S${at(300, -26)} ${at(300, 4)}S${at(270, 52)} ${at(220, 52)}S${at(150, 34)} ${at(100, 36)}S${at(0, 46)} ${at(0, 0)}z`,
    ],
    [
      'dark',
      `M${at(16, 0)}C${at(16, -30)} ${at(60, -30)} ${at(92, -24)}V${(y + 24 * perMm).toFixed(1)}C${at(60, 30)} ${at(16, 30)} ${at(16, 0)}z`,
    ],
    ['fine', [104, 128, 152, 176].map(lace).join('')],
    ['ink', `M${at(226, -50)}C${at(206, -24)} ${at(206, 26)} ${at(222, 50)}`],
  ];
}
