import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { circlePath, pathOf } from '$lib/drawing/points';
import { barAlong } from '$lib/drawing/motif/bar';
import { air } from '$lib/drawing/motif/concrete';
import { slice } from '$lib/drawing/motif/lens';

const radius = 6;
const rows = [14, 36, 58] as const;

/** A bar whose section is eaten away in its middle by a share of its width, with its cut end beside it. */
function bar(y: number, loss: number): Drawing {
  const bite = radius * 2 * loss;
  const end = circlePath([106, y], radius + 1);
  if (!loss) return [...barAlong(4, 88, y, radius), ['form', end]];
  return [
    ...barAlong(4, 88, y, radius),
    [
      'air',
      `M28 ${y - radius - 1.5}H64V${y - radius}L58 ${y - radius + bite * 0.8} 51 ${y - radius + bite} 46 ${y - radius + bite * 0.8} 40 ${y - radius + bite} 33 ${y - radius + bite * 0.7} 28 ${y - radius}z`,
    ],
    [
      'ink',
      `M28 ${y - radius}l5 ${bite * 0.7} 7 ${bite * 0.3} 6 ${-bite * 0.2} 5 ${bite * 0.2} 7 ${-bite * 0.2} 6 ${-bite * 0.8}`,
    ],
    ['dashed', `M28 ${y - radius}H64`],
    ['form', end],
    ['solid', pathOf(slice([106, y], radius + 1, 0, y - radius - 1 + bite), true)],
  ];
}

/** Three neighbouring bars: how much of the section rust has taken, and of how many. */
export const barLoss: Record<Choice<'barLoss'>, () => Drawing> = {
  'within-limit': () => [...air, ...bar(rows[0], 0), ...bar(rows[1], 0.2), ...bar(rows[2], 0)],
  'one-bar': () => [...air, ...bar(rows[0], 0), ...bar(rows[1], 0.62), ...bar(rows[2], 0)],
  neighbours: () => [...air, ...bar(rows[0], 0.5), ...bar(rows[1], 0.55), ...bar(rows[2], 0)],
};
