import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, type Polygon } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { barAlong } from '$lib/drawing/motif/bar';
import { air, concrete, evenSurface, section } from '$lib/drawing/motif/concrete';

const surface = evenSurface(22);
const slab = (seed: number): Drawing => [...section(surface, seed)];

const noneSeen = (): Drawing => [
  ...slab(91),
  ['heavy', pathOf(surface)],
  ['ink', 'M42 12C50 1 70 1 78 12C70 21 50 21 42 12z'],
  ['solid', 'M56 11.5a4 4 0 1 0 8 0a4 4 0 1 0-8 0z'],
];

function rustStain(): Drawing {
  const stain: Polygon = [
    [48, 22],
    [74, 22],
    [70, 34],
    [64, 46],
    [58, 46],
    [53, 34],
  ];
  return [
    ...air,
    ...concrete(
      [
        [0, 0],
        [120, 0],
        [120, 72],
        [0, 72],
      ],
      92,
      { tries: 60, radii: [3, 1.2] },
    ),
    // A face looked at straight on: crack, and rust that ran down from it.
    [
      'tone',
      'M32 26C40 22 84 24 92 27C90 38 87 34 84 52C82 60 80 60 79 50C77 40 73 44 71 62C69 71 65 70 64 60C63 48 58 46 55 56C53 62 49 60 48 50C46 38 40 44 38 38C36 33 34 31 32 26z',
    ],
    ['grain', dotsPath(strewSand(stain, [], 12, 26))],
    ['ink', 'M12 24l14 3 8-3 12 4 14-5 13 4 12-2 10 3 14-4'],
    [
      'fine',
      'M38 38C36 33 34 31 32 26M48 50C46 38 40 44 38 38M55 56C53 62 49 60 48 50M64 60C63 48 58 46 55 56M71 62C69 71 65 70 64 60M79 50C77 40 73 44 71 62M84 52C82 60 80 60 79 50M92 27C90 38 87 34 84 52',
    ],
  ];
}

/** A spall down to a bar, open to the air. */
function spalled(seed: number, bar: Drawing): Drawing {
  const floor = roughLine([28, 46], [92, 46], 3, 8, seed);
  const hole: Polygon = [[22, 20], [22, 22], ...floor, [98, 22], [98, 20]];
  return [
    ...slab(seed),
    ['air', pathOf(hole, true)],
    ...bar,
    ['heavy', `M0 22H22M98 22H120`],
    ['ink', pathOf([[22, 22], ...floor, [98, 22]])],
  ];
}
const hidden: Drawing = [['dashed', 'M0 36.8H22M0 43.2H22M98 36.8H120M98 43.2H120']];

const exposed = (): Drawing => [...spalled(93, barAlong(24, 96, 40)), ...hidden];

const corroded = (): Drawing => [
  ...spalled(94, [
    [
      'form',
      'M24 36.8H34L40 38 46 37.4 52 39 58 38.6 64 39.4 70 38 78 38.4 86 36.8H96V43.2H86L80 42 72 43 66 41.4 58 42 52 41.2 46 42.6 40 42 34 43.2H24z',
    ],
    [
      'grain',
      dotsPath(
        strewSand(
          [
            [28, 34],
            [92, 34],
            [92, 46],
            [28, 46],
          ],
          [],
          19,
          70,
        ),
      ),
    ],
    ['solid', 'M40 38l6-3 3 3zM62 39.4l5-4 4 3zM50 41.2l5 4 4-3zM76 42l4 3 4-3z'],
    ['form', 'M34 30l6-2 4 3-5 2zM70 30l5-3 6 2-5 3z'],
  ]),
  ...hidden,
];

/** What is to be seen of the steel. */
export const steel: Record<Choice<'steel'>, () => Drawing> = {
  'none-seen': noneSeen,
  'rust-stain': rustStain,
  exposed,
  corroded,
};
