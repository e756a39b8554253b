import * as v from 'valibot';
import { choicesOf } from '$lib/answers/questions';
import type { CrackKind, Place, Survey } from '$lib/answers/survey';
import { faultOf } from '$lib/survey/faults';
import { rangeOf } from '$shared/figures';
import { list, measured, object, picked, says, whole, within, zoneId } from './shapes';

const coordinate = measured('limit.spot-place');
const place = v.pipe(
  list(coordinate, 2),
  v.length(2, says({ id: 'place' })),
  v.transform(([x, y]): Place => [x as number, y as number]),
);
const places = list(place, rangeOf('limit.corners')[1]);
const line = v.pipe(places, v.minLength(2, says({ id: 'line' })));

/**
 * A side of the surface. Small numbers pass here and are told of as another unit by the check of
 * the whole drawing, which says more than a range.
 */
const side = within([0, rangeOf('limit.spot-place')[1]], {
  id: 'amount',
  unit: 'mm',
  range: rangeOf('limit.slab-side'),
});

const crackKinds = choicesOf('cracks').filter((kind): kind is CrackKind => kind !== 'none');
const zone = v.exactOptional(zoneId);
const truth = v.boolean(says({ id: 'truth' }));

const slab = v.union(
  [
    object({ length: side, width: side }),
    object({ corners: places }),
    object({
      steps: object({
        count: whole(rangeOf('limit.steps')),
        tread: measured('limit.step-side'),
        riser: measured('limit.step-side'),
        width: side,
      }),
    }),
  ],
  says({ id: 'slab' }),
);

const markShapes = {
  spot: object({
    kind: v.literal('spot'),
    corners: places,
    depth: v.exactOptional(measured('limit.depth')),
    zone,
  }),
  zone: object({ kind: v.literal('zone'), corners: places, zone: zoneId }),
  crack: object({
    kind: v.literal('crack'),
    line,
    crack: v.exactOptional(picked(crackKinds, { id: 'one-of', choices: crackKinds })),
    zone,
  }),
  bar: object({ kind: v.literal('bar'), line, zone }),
  upright: object({ kind: v.literal('upright'), line }),
  tap: object({
    kind: v.literal('tap'),
    at: place,
    rings: truth,
    again: v.exactOptional(truth),
  }),
};
const mark = v.variant(
  'kind',
  [
    markShapes.spot,
    markShapes.zone,
    markShapes.crack,
    markShapes.bar,
    markShapes.upright,
    markShapes.tap,
  ],
  says({ id: 'one-of', choices: Object.keys(markShapes) }),
);

/** The surface as drawn. What cannot be a drawing is refused at the mark at fault. */
export const surveyShape = v.pipe(
  object({
    slab,
    joints: v.exactOptional(list(line, rangeOf('limit.joints')[1])),
    marks: v.exactOptional(list(mark, rangeOf('limit.marks')[1])),
    spacing: v.exactOptional(measured('limit.grid-spacing')),
    lanes: v.exactOptional(measured('limit.grid-spacing')),
  }),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const fault = faultOf(dataset.value as Survey);
    if (!fault) return;
    addIssue({
      message: says({ id: 'drawing', fault: fault.fault }),
      path: pathIn(dataset.value, fault.path),
    });
  }),
  v.transform((given): Survey => given as Survey),
);

/** A path as the library's issues carry it. */
function pathIn(
  root: unknown,
  keys: readonly (string | number)[],
): [v.IssuePathItem, ...v.IssuePathItem[]] {
  let input = root as never;
  return keys.map((key) => {
    const value = input[key] as never;
    const item = { type: 'unknown', origin: 'value', input, key, value } as v.IssuePathItem;
    input = value;
    return item;
  }) as [v.IssuePathItem, ...v.IssuePathItem[]];
}
