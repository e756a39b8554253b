import type { Place, Survey } from '$lib/answers/survey';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { pathOf, polygonsPath, type Point } from '$lib/drawing/points';
import { boxOf, distanceToRing, inside, signedArea } from '$lib/survey/geometry';
import { foldsOf, outlineOf } from '$lib/survey/outline';
import type { Sheet } from './sheet';
import { motifAt } from './slab';

/** A part of the surface: outlines and holes, mm, and the place of its zone in the job. */
export interface Part {
  readonly place: number;
  readonly rings: readonly (readonly Place[])[];
  /** It is worked on. */
  readonly now: boolean;
}

const step = 16;

/** The surface with the parts that are worked on toned and in crayon, each with the figure of its zone. */
export function dayDrawing(survey: Survey, parts: readonly Part[], sheet: Sheet): Drawing {
  const line = (places: readonly Place[]): Point[] => places.map(sheet.at);
  const outline = line(outlineOf(survey.slab));
  const marks: Mark[] = [['body', pathOf(outline, true)]];
  const rings = (part: Part) => part.rings.map(line);
  const now = parts.filter((part) => part.now);
  for (const part of now) marks.push(['tone', polygonsPath(rings(part))]);
  for (const part of parts)
    if (!part.now) marks.push(['dashed', polygonsPath(rings(part).filter(outer))]);
  for (const joint of [...(survey.joints ?? []), ...foldsOf(survey.slab)])
    marks.push(['ink', pathOf(line(joint))]);
  marks.push(['heavy', pathOf(outline, true)]);
  for (const part of now) {
    const ground = rings(part);
    marks.push(['ink', motifsOn(ground, part.place)], ['crayon', polygonsPath(ground)]);
  }
  return marks;
}

/** Clear of every outline; one in the middle of each piece that has no room for more. */
function motifsOn(rings: readonly (readonly Point[])[], place: number): string {
  const on = (at: Point) => rings.filter((ring) => inside(at, ring, 0)).length % 2 === 1;
  const clear = (at: Point) => rings.every((ring) => distanceToRing(at, ring) > 4);
  const found: Point[] = [];
  for (const ring of rings.filter(outer)) {
    const { x0, y0, x1, y1 } = boxOf(ring);
    const mine: Point[] = [];
    for (let y = y0 + step / 2; y < y1; y += step)
      for (let x = x0 + step / 2; x < x1; x += step)
        if (inside([x, y], ring, 0) && on([x, y]) && clear([x, y])) mine.push([x, y]);
    found.push(...(mine.length ? mine : [[(x0 + x1) / 2, (y0 + y1) / 2] as const]));
  }
  return found.map((at) => motifAt(place, at)).join('');
}

/** Not a hole. On the sheet y grows downward: what runs anticlockwise on the surface runs clockwise. */
const outer = (ring: readonly Point[]): boolean => signedArea(ring) < 0;
