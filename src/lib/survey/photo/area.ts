import type { Place } from '$lib/answers/survey';
import { outlineFault } from '$lib/survey/faults';
import { distance, sidesOf, signedArea } from '$lib/survey/geometry';
import { photoValue } from '$shared/photo-figures';
import { homography, seen } from './homography';
import { isConvex, layoutOf, pairs } from './taped';

/** What was tapped on a photo of a flat surface, and taped on it. */
export interface PhotoMeasure {
  /** Pixels of the picture. */
  readonly width: number;
  readonly height: number;
  /** Four chalk marks in their order round, pixels from the upper left. */
  readonly marks: readonly Place[];
  /** Between them, mm, in the order of `pairs`. */
  readonly taped: readonly number[];
  /** Corners of what is measured, pixels. */
  readonly outline: readonly Place[];
  /** How wide the picture was on the screen when it was tapped, mm. */
  readonly shown: number;
}

export type Refusal =
  /** Fewer than four marks, six distances or three corners. */
  | 'unfinished'
  /** The marks were not tapped one after the other round, or lie almost on a line. */
  | 'marks-cross'
  /** No four marks lie as taped. */
  | 'no-shape'
  /** The second diagonal does not go with the rest: a distance is read or typed wrong. */
  | 'tape-differs'
  | 'outline-crosses'
  /** The outline reaches to where the surface runs out towards the horizon. */
  | 'too-far'
  | 'reference-small'
  | 'too-unsure';

export type PhotoArea =
  | {
      readonly ok: true;
      /** m2 */ readonly area: number;
      readonly range: readonly [number, number];
    }
  | { readonly ok: false; readonly why: Refusal };

const no = (why: Refusal) => ({ ok: false, why }) as const;

/** Standard deviations to each side: about 95 of 100 where errors are as assumed. */
const wide = 2;
/** Standard deviations past which two tapings do not mean the same shape. */
const apart = 3;
/** Nearer to the horizon than this share of the nearest mark's depth, a pixel is metres. */
const horizon = 0.1;
const perM2 = 1e6;

/** The area of an outline on a photo, as a range, or why it cannot be had. */
export function photoArea(measure: PhotoMeasure): PhotoArea {
  const { marks, taped, outline, shown, width } = measure;
  if (marks.length !== 4 || taped.length !== pairs.length || outline.length < 3)
    return no('unfinished');
  if (!isConvex(marks)) return no('marks-cross');
  if (outlineFault(outline)) return no('outline-crosses');
  const layout = layoutOf(taped);
  if (!layout) return no('no-shape');
  // The misfit is spread over six distances; on one of them it would be this many times as large.
  if (layout.misfit * Math.sqrt(pairs.length) > apart * photoValue('photo.tape-error'))
    return no('tape-differs');
  const surface = onSurface(measure, layout.marks);
  if (!surface) return no('too-far');
  if (!spans(layout.marks, surface)) return no('reference-small');
  const area = Math.abs(signedArea(surface)) / perM2;
  const spread = spreadOf(measure, layout.marks, (photoValue('photo.tap-error') / shown) * width);
  if (spread === null || wide * spread > photoValue('photo.most-spread') * area)
    return no('too-unsure');
  return { ok: true, area, range: [area - wide * spread, area + wide * spread] };
}

/**
 * The outline on the surface, mm; null where it reaches the horizon.
 * @param laid the four marks as they lie, mm
 * @param bend how far a corner of the picture is shifted by the lens, share of its distance
 */
function onSurface(
  { marks, outline, width, height }: PhotoMeasure,
  laid: readonly Place[],
  bend = 0,
): readonly Place[] | null {
  const middle: Place = [width / 2, height / 2];
  const radius = Math.hypot(...middle);
  const straight = (place: Place): Place => {
    const out = 1 + bend * (distance(place, middle) / radius) ** 2;
    return [middle[0] + (place[0] - middle[0]) * out, middle[1] + (place[1] - middle[1]) * out];
  };
  const taken = homography(marks.map(straight), laid);
  if (!taken) return null;
  const depths = marks.map((mark) => seen(taken, straight(mark)).depth);
  const nearest = depths.reduce((best, each) => (Math.abs(each) > Math.abs(best) ? each : best));
  const found = outline.map((corner) => seen(taken, straight(corner)));
  const far = ({ depth }: { depth: number }) => depth / nearest < horizon;
  return found.some(far) || depths.some((depth) => far({ depth }))
    ? null
    : found.map(({ place }) => place);
}

/** How far places reach in a direction. */
function extent(places: readonly Place[], [u, v]: Place): number {
  const along = places.map(([x, y]) => x * u + y * v);
  return Math.max(...along) - Math.min(...along);
}

/** Whether the marks span enough of the outline, along and across the rectangle that fits round it best. */
function spans(marks: readonly Place[], outline: readonly Place[]): boolean {
  // A rectangle round a ring is least where it lies along one of its sides.
  const boxes = sidesOf(outline).map(([from, to]) => {
    const long = distance(from, to);
    const way: Place = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
    const across: Place = [-way[1], way[0]];
    return { ways: [way, across], size: extent(outline, way) * extent(outline, across) };
  });
  const { ways } = boxes.reduce((best, each) => (each.size < best.size ? each : best));
  const share = photoValue('photo.reference-share');
  return ways.every((way) => extent(marks, way) >= share * extent(outline, way));
}

/**
 * The standard deviation of the area, m2, from that of each tap, each taped distance and the lens,
 * as far as errors are small (law of propagation: JCGM 100:2008, 5.1.2).
 * @param tap standard deviation of a tap, pixels
 */
function spreadOf(measure: PhotoMeasure, laid: readonly Place[], tap: number): number | null {
  const tape = photoValue('photo.tape-error');
  const moved = (places: readonly Place[], index: number, by: Place) =>
    places.with(index, [(places[index] as Place)[0] + by[0], (places[index] as Place)[1] + by[1]]);
  const ways: readonly Place[] = [
    [1, 0],
    [0, 1],
  ];
  /** Each way to be off, by one standard deviation times `by`. */
  const off: ((by: number) => readonly Place[] | null)[] = [
    ...(['marks', 'outline'] as const).flatMap((which) =>
      measure[which].flatMap((_, index) =>
        ways.map(
          ([x, y]) =>
            (by: number) =>
              onSurface(
                { ...measure, [which]: moved(measure[which], index, [x * by * tap, y * by * tap]) },
                laid,
              ),
        ),
      ),
    ),
    ...measure.taped.map((distance, index) => (by: number) => {
      const layout = layoutOf(measure.taped.with(index, distance + by * tape));
      return layout && onSurface(measure, layout.marks);
    }),
    (by) => onSurface(measure, laid, by * photoValue('photo.lens-bend')),
  ];
  let variance = 0;
  for (const way of off) {
    const [more, less] = [way(1), way(-1)];
    if (!more || !less) return null;
    variance += ((Math.abs(signedArea(more)) - Math.abs(signedArea(less))) / 2 / perM2) ** 2;
  }
  return Math.sqrt(variance);
}
