import type { Mark as Drawn, Place, Survey } from '$lib/answers/survey';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { ragged } from '$lib/drawing/plan/patches';
import { circlePath, depthInside, dotsPath, hatch, pathOf, type Point } from '$lib/drawing/points';
import { boxOf, piecesOf } from '$lib/survey/geometry';
import { foldsOf, outlineOf } from '$lib/survey/outline';
import { patchNumber, rectangleRing } from '$lib/survey/patches';
import type { DrawnPatch, SurveyResult } from '$lib/survey/survey';
import type { Sheet } from './sheet';

/** A word on the sheet, its middle at x. */
export interface SlabLabel {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly of: 'patch' | 'bay' | 'corner';
}

/** One small figure after the other stands for a zone: told apart in black and white too. */
const motifs: readonly ((at: Point) => string)[] = [
  ([x, y]) => `M${x - 2.5} ${y}h5`,
  ([x, y]) => `M${x} ${y - 2.5}v5`,
  ([x, y]) => `M${x - 2.2} ${y}h4.4M${x} ${y - 2.2}v4.4`,
  ([x, y]) => `M${x - 2.2} ${y + 1.2}l2.2-2.6 2.2 2.6`,
  ([x, y]) => circlePath([x, y], 1.8),
  ([x, y]) => `M${x - 2} ${y + 2}l4-4`,
];
const motifStep = 13;

/** The figure of the zone at this place in the job, at a place on the sheet. */
export const motifAt = (place: number, at: Point): string =>
  (motifs[place % motifs.length] as (at: Point) => string)(at);

function painted(ring: readonly Point[], place: number): string {
  const { x0, y0, x1, y1 } = boxOf(ring);
  const within = depthInside(ring);
  const found: string[] = [];
  for (let y = Math.ceil(y0 / motifStep) * motifStep; y < y1; y += motifStep)
    for (let x = Math.ceil(x0 / motifStep) * motifStep; x < x1; x += motifStep) {
      const at: Point = [x + ((y / motifStep) % 2 ? motifStep / 2 : 0), y];
      if (within(at) > 3) found.push(motifAt(place, at));
    }
  return found.join('');
}

/**
 * Everything that is drawn of a surface, from back to front.
 * @param only ids of the zones whose patches, with the damage in them, are drawn: on the sheet of a day
 *   nobody may read an order to break out what waits
 * @param sawn ids of the zones whose patches may be sawn; crayon is an order, so all others are dashed
 */
export function slabDrawing(
  survey: Survey,
  result: SurveyResult | null,
  sheet: Sheet,
  zones: readonly string[],
  only?: readonly string[],
  sawn?: readonly string[],
): { readonly marks: Drawing; readonly labels: readonly SlabLabel[] } {
  const line = (places: readonly Place[]): Point[] => places.map(sheet.at);
  const outline = line(outlineOf(survey.slab));
  const marks: Mark[] = [['body', pathOf(outline, true)]];
  const labels: SlabLabel[] = [];
  const drawn = survey.marks ?? [];
  for (const mark of drawn)
    if (mark.kind === 'zone') {
      const ring = line(mark.corners);
      const path = pathOf(ring, true);
      // Earlier zones lie on top in the reckoning and cover what is under them here.
      marks.push(['fine', painted(ring, Math.max(0, zones.indexOf(mark.zone)))], ['dashed', path]);
    }
  for (const joint of [...(survey.joints ?? []), ...foldsOf(survey.slab)])
    marks.push(['ink', pathOf(line(joint))]);
  marks.push(['heavy', pathOf(outline, true)]);
  const patches = result?.patches ?? [];
  const isShown = ({ zone }: DrawnPatch) => !only || (zone !== undefined && only.includes(zone));
  const away = patches.flatMap((patch) => (isShown(patch) ? [] : patch.spots));
  for (const [index, mark] of drawn.entries())
    if (!away.includes(index))
      marks.push(...inked(mark, index, line, result?.skipped.includes(index) ?? false));
  for (const [index, patch] of patches.entries()) {
    if (!isShown(patch)) continue;
    const ring = line(patch.corners ?? rectangleRing(patch));
    const now = !sawn || (patch.zone !== undefined && sawn.includes(patch.zone));
    marks.push([now ? 'crayon' : 'dashed', pathOf(ring, true)]);
    const box = boxOf(ring);
    // Above the patch, where no tap or hatching lies under the number.
    labels.push({
      x: box.x0 + 6,
      y: box.y0 - 4,
      text: `${patchNumber(patch, index)}`,
      of: 'patch',
    });
  }
  marks.push(...tapped(drawn, result, sheet));
  if ((result?.bays.length ?? 0) > 1)
    for (const { id, corner } of result?.bays ?? []) {
      const [x, y] = sheet.at(corner);
      labels.push({ x: x + 10, y: y - 6, text: id, of: 'bay' });
    }
  const { x0, y1 } = boxOf(outline);
  labels.push({ x: x0, y: y1 + 13, text: '0', of: 'corner' });
  return { marks, labels };
}

function inked(
  mark: Drawn,
  index: number,
  line: (places: readonly Place[]) => Point[],
  skipped: boolean,
): Mark[] {
  if (mark.kind === 'spot') {
    const ring = line(mark.corners);
    if (skipped) return [['dashed', pathOf(ring, true)]];
    return [
      ['wash', ragged(ring, index)],
      ['hatch', hatch(ring, 6)],
      ['fine', ragged(ring, index)],
    ];
  }
  if (mark.kind === 'crack') {
    const pieces = piecesOf(line(mark.line)).flatMap(([from, to], at) =>
      roughLine(from, to, 4, 7, index * 8 + at).slice(at ? 1 : 0),
    );
    const ink = mark.crack === 'hairline' ? 'fine' : mark.crack === 'moving' ? 'heavy' : 'ink';
    return [[ink, pathOf(pieces)]];
  }
  if (mark.kind === 'bar')
    return [
      ['ink', pathOf(line(mark.line))],
      ['fine', strokes(line(mark.line), 5, 3, 3)],
    ];
  if (mark.kind === 'upright')
    return [
      ['heavy', pathOf(line(mark.line))],
      ['ink', strokes(line(mark.line), 7, 6, 0)],
    ];
  return [];
}

/** Short strokes along a line, `out` to its right and `back` to its left. */
function strokes(line: readonly Point[], step: number, out: number, back: number): string {
  return piecesOf(line)
    .flatMap(([from, to]) => {
      const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
      const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
      return Array.from({ length: Math.floor(long / step) + 1 }, (_, index) => {
        const [x, y] = [from[0] + dx * step * index, from[1] + dy * step * index];
        return pathOf([
          [x + dy * back, y - dx * back],
          [x - dy * out - dx * 2, y + dx * out - dy * 2],
        ]);
      });
    })
    .join('');
}

/** Rings: an open ring; dull: a full disc; to be tapped again: a second ring round it. */
function tapped(marks: readonly Drawn[], result: SurveyResult | null, sheet: Sheet): Mark[] {
  const radius = Math.min(5, Math.max(1.8, sheet.scale * 45));
  const paths = { rings: '', dull: '', again: '' };
  for (const [index, mark] of marks.entries()) {
    if (mark.kind !== 'tap') continue;
    paths[mark.rings ? 'rings' : 'dull'] += circlePath(
      sheet.at(mark.at),
      mark.rings ? radius * 0.7 : radius,
    );
    if (result?.taps.tapAgain.includes(index))
      paths.again += circlePath(sheet.at(mark.at), radius + 3);
  }
  return [
    ['fine', paths.rings],
    ['solid', paths.dull],
    ['ink', paths.again],
  ];
}

/** Where to tap and has not been tapped yet. */
export const untappedPath = (places: readonly Place[], sheet: Sheet): string =>
  dotsPath(places.map(sheet.at));
