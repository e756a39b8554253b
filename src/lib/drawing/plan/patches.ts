import type { Drawing, Mark } from '$lib/drawing/mark';
import { roughLine } from '$lib/drawing/lines';
import { hatch, pathOf, type Point } from '$lib/drawing/points';
import type { Rectangle } from '$lib/answers/job';
import { usFactor, type UnitSystem } from '$lib/answers/units';
import { patchNumber, type PatchLayout } from '$lib/survey/patches';
import { stripWidth, type Label } from './order';

const margin = 16;
const most = 300;
const hatchStep = 7;

export interface PatchPlan {
  readonly height: number;
  readonly marks: Drawing;
  readonly labels: readonly Label[];
  /** Length of the scale bar: on the sheet, and in mm. */
  readonly bar: { readonly length: number; readonly mm: number };
}

/** The surface seen from above, to scale: damage hatched, the saw cut round each patch in crayon. */
export function patchPlan(
  spots: readonly Rectangle[],
  { patches, skipped }: PatchLayout,
  units: UnitSystem = 'metric',
): PatchPlan {
  const all = [...spots, ...patches];
  const left = Math.min(...all.map(({ x }) => x));
  const low = Math.min(...all.map(({ y }) => y));
  const wide = Math.max(...all.map(({ x, length }) => x + length)) - left;
  const high = Math.max(...all.map(({ y, width }) => y + width)) - low;
  const scale = Math.min((stripWidth - 2 * margin) / wide, (most - 2 * margin) / high);
  const height = high * scale + 2 * margin;
  // The reader's y grows away from them: up on the sheet.
  const place = (x: number, y: number): Point => [
    margin + (x - left) * scale,
    height - margin - (y - low) * scale,
  ];
  const corners = ({ x, y, length, width }: Rectangle): Point[] => [
    place(x, y),
    place(x + length, y),
    place(x + length, y + width),
    place(x, y + width),
  ];
  const marks: Mark[] = [];
  const labels: Label[] = [];
  for (const patch of patches) marks.push(['body', pathOf(corners(patch), true)]);
  for (const [index, spot] of spots.entries()) {
    if (skipped.includes(index)) marks.push(['dashed', pathOf(corners(spot), true)]);
    else
      marks.push(
        ['wash', ragged(corners(spot), index)],
        ['hatch', hatch(corners(spot), hatchStep)],
        ['fine', ragged(corners(spot), index)],
      );
  }
  for (const [index, patch] of patches.entries()) {
    marks.push(['crayon', pathOf(corners(patch), true)]);
    const [x, y] = place(patch.x, patch.y + patch.width);
    labels.push({ x: x + 11, y: y + 14, text: String(patchNumber(patch, index)), of: 'number' });
  }
  const mm = niceLength(wide * 0.4, units);
  return { height: height + 18, marks, labels, bar: { length: mm * scale, mm } };
}

/** The outline of broken concrete over a rectangle: its corners kept, its sides uneven inwards. */
export const ragged = (corners: readonly Point[], seed: number): string =>
  pathOf(
    corners.flatMap((from, index) =>
      roughLine(
        from,
        corners[(index + 1) % corners.length] as Point,
        2.4,
        9,
        seed * 4 + index,
      ).slice(0, -1),
    ),
    true,
  );

const inchesPerFoot = 12;

/** The longest of 1, 2 or 5 times a power of ten that is not longer, mm; in feet, or inches below one. */
export function niceLength(longest: number, units: UnitSystem = 'metric'): number {
  if (units === 'us') {
    const inches = longest / usFactor.mm;
    const one = inches >= inchesPerFoot ? inchesPerFoot : 1;
    return niceLength(inches / one) * one * usFactor.mm;
  }
  const power = 10 ** Math.floor(Math.log10(longest));
  return ([5, 2, 1].find((lead) => lead * power <= longest) ?? 1) * power;
}
