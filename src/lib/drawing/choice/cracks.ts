import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { block } from '$lib/drawing/motif/concrete';

const none = (): Drawing => [...block.drawing(81), ...block.edges];

const hairline = (): Drawing => [
  ...block.drawing(82),
  ...block.edges,
  ['fine', 'M78 14l-5 6 1 5-9 6-1 6-12 7M52 44l2 7-3 6 2 11'],
];

const open = (): Drawing => [
  ...block.drawing(83),
  ...block.edges,
  [
    'dark',
    'M76 14H82L78 21 79 26 69 33 68 38 56 44V51L54 58 56 68H49L49 57 51 51 48 44 62 36 63 30 73 24 72 19z',
  ],
];

const crumbling = (): Drawing => [
  ...block.drawing(84),
  ...block.edges,
  [
    'wash',
    'M68 14H92L88 22 90 27 80 34 79 40 68 44 66 52 60 55 57 62H50L46 54 42 52 40 44 52 36 50 31 63 25 62 20z',
  ],
  [
    'hatch',
    'M66 22l8-6M60 30l10-8M54 36l12-9M80 30l8-6M72 38l10-8M46 42l9-6M62 44l10-7M46 50l5-5M60 51l5-5',
  ],
  [
    'dark',
    'M76 15H83L79 21 81 26 71 33 70 38 59 45 57 52 54 60 50 52 50 44 60 36 62 30 72 24 71 19z',
  ],
  [
    'ink',
    'M68 14 62 20 63 25 50 31 52 36 40 44 42 52 46 54 50 62M92 14 88 22 90 27 80 34 79 40 68 44 66 52 60 55 57 62',
  ],
  [
    'form',
    'M58 26l5-3 4 3-3 4-5 0zM84 24l4-2 3 3-4 3zM46 38l5-2 3 3-5 3zM72 38l4-2 3 3-4 3zM98 30l4-2 3 3-4 3zM32 32l4-2 3 3-4 3z',
  ],
];

const moving = (): Drawing => [
  ...block.drawing(85),
  ['air', 'M46 44 76 14H120V72H46z'],
  ['body', 'M54 52 82 22H116V46L96 72H54z'],
  ['tone', 'M96 52 118 28V52L96 74z'],
  ['tone', 'M46 44 76 14V22L54 46V72H46z'],
  ['dark', 'M46 44 76 14 82 22 54 52V72H46z'],
  ['stone', 'M60 60l5-3 5 3-2 5-6 1zM76 57l5-1 3 4-4 4-4-2zM84 67l4-2 3 3-3 3z'],
  ['ink', 'M46 68H4V44L32 14H76L46 44H4M46 44V68M54 72V52L82 22H118L96 52H54M96 52V72M118 28V50'],
  ['heavy', 'M24 34V20M20.5 24 24 19.5 27.5 24M102 28V42M98.5 38 102 42.5 105.5 38'],
];

/** Cracks, on a block seen from above: how wide, how firm their edges, whether they still work. */
export const cracks: Record<Choice<'cracks'>, () => Drawing> = {
  none,
  hairline,
  open,
  crumbling,
  moving,
};
