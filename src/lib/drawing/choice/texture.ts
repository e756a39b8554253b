import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, polygonsPath, type Point } from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { block } from '$lib/drawing/motif/concrete';

const smooth = (): Drawing => [
  ...block.drawing(71),
  ['fine', 'M38 34 56 19M45 36 67 18M84 30 92 21'],
  ...block.edges,
];

function sandy(): Drawing {
  const grains = strewSand(block.top, [], 73, 260);
  const lines = [0.16, 0.32, 0.48, 0.64, 0.8].map((across) =>
    pathOf([block.onTop(0.04, across), block.onTop(0.96, across)]),
  );
  return [
    ...block.drawing(72),
    ['fine', lines.join('')],
    ['grain', dotsPath(grains.slice(0, 110))],
    ...block.edges,
  ];
}

function pitted(): Drawing {
  const holes = packStones(block.top, { seed: 76, radii: [6, 2.4], gap: 1.4, tries: 220 });
  // A hollow is a pebble's shape with its far rim in shade.
  const shade = holes
    .filter((_, index) => index % 3 === 0)
    .map(({ corners, centre }) =>
      corners.map(([x, y]): Point => [
        centre[0] + (x - centre[0]) * 0.7,
        centre[1] + (y - centre[1]) * 0.45 - 0.6,
      ]),
    );
  const flat = holes.map(({ corners, centre }) =>
    corners.map(([x, y]): Point => [x, centre[1] + (y - centre[1]) * 0.62]),
  );
  return [
    ...block.drawing(74),
    ['form', polygonsPath(flat)],
    ['solid', polygonsPath(shade)],
    ['body', 'M4 44C10 44 11 48 15 48S20 44 25 44H44C47 44 48 49 53 49S60 44 64 44H88z'],
    ['ink', 'M4 44C10 44 11 48 15 48S20 44 25 44H44C47 44 48 49 53 49S60 44 64 44H88'],
    ['ink', 'M88 44V68H4V44L32 14H116V38L88 68M88 44 116 14'],
  ];
}

/** How the surface feels under the hand. */
export const texture: Record<Choice<'texture'>, () => Drawing> = { smooth, sandy, pitted };
