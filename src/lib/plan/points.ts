import type { FigureId } from '$shared/figures';
import type { Conditions } from './conditions';
import type { Lighter } from './compare';
import { measureIds, type CourseId, type MeasureId } from './courses';
import type { Plan } from './plan';
import type { Signs } from './signs';

export const pointIds = [
  'mostly-sound',
  'sound-broken-out',
  'surface-only',
  'less',
  'more',
  'full-depth-parts',
  'parts-made-new',
  'mostly-gone',
  'depth-past-third',
  'settled',
  'fire-or-chemical',
  'structure',
  'map-cracking',
  'moving-crack',
  'bar-loss',
  'cause-stays',
  'open-answers',
  'unmeasured',
  'whole-unknown',
  'not-entered',
  'thickness-unknown',
  'patch-life',
  'no-one-percentage',
] as const;
export type PointId = (typeof pointIds)[number];

/** One thing that speaks for or against a course, or is not known, with what it was seen from. */
export interface Point {
  readonly id: PointId;
  readonly share?: number;
  readonly zones?: readonly string[];
  readonly measures?: readonly MeasureId[];
  readonly figures?: readonly FigureId[];
}

export interface ForAndAgainst {
  readonly speaksFor: readonly Point[];
  readonly against: readonly Point[];
}
export type PointsOfCourses = Readonly<Partial<Record<CourseId, ForAndAgainst>>>;

const roundOff = 1e-9;
const some = (point: Point): Point[] => (point.zones?.length ? [point] : []);
const when = (given: boolean, point: Point): Point[] => (given ? [point] : []);

/** What makes any repair of it doubtful until somebody has looked. */
const causes = ({ held, warned }: Signs): Point[] => [
  ...when(warned('settled-or-rocking'), { id: 'settled' }),
  ...when(warned('fire-or-chemical'), { id: 'fire-or-chemical' }),
  ...some({ id: 'structure', zones: held('structure-before-removal') }),
  ...some({ id: 'map-cracking', zones: held('map-cracking') }),
  ...some({ id: 'moving-crack', zones: held('moving-crack') }),
  ...some({ id: 'bar-loss', zones: held('bar-section-loss') }),
];

/** Measures by which a course surely takes less than replacing all, or more. */
function measuresOf(lighter: Readonly<Record<MeasureId, Lighter>>, which: Lighter): Point[] {
  const measures = measureIds.filter((id) => lighter[id] === which);
  return measures.length ? [{ id: which === 'first' ? 'less' : 'more', measures }] : [];
}

/**
 * What speaks for and against each course that there is. Restoring and replacing parts are held
 * against replacing all. Source: common practice, no published source.
 */
export function pointsOf(
  signs: Signs,
  { share }: Conditions,
  lighter: Readonly<Partial<Record<'restore' | 'parts', Readonly<Record<MeasureId, Lighter>>>>>,
): PointsOfCourses {
  const gone = some({
    id: 'full-depth-parts',
    zones: signs.zonesIn('replace'),
    ...(share && { share: share.replace }),
    figures: ['depth.full-limit'],
  });
  const past = some({
    id: 'depth-past-third',
    zones: signs.doubtful,
    figures: ['depth.partial-limit'],
  });
  const mostlyGone = when(signs.mostlyGone, {
    id: 'mostly-gone',
    share: signs.gone,
    figures: ['compare.mostly'],
  });
  const why = causes(signs);
  const sound = share !== null && share.sound > signs.mostly;
  const surface = share !== null && share.sound + share.surface > 1 - roundOff;
  const weighed = (id: 'restore' | 'parts', which: Lighter) => {
    const compared = lighter[id];
    return compared ? measuresOf(compared, which) : [];
  };
  const poor: Point = { id: 'patch-life', figures: ['patch.life-poor'] };
  const good: Point = { id: 'patch-life', figures: ['patch.life-good'] };
  const moves = signs.warned('settled-or-rocking') || signs.held('moving-crack').length > 0;
  return {
    ...(lighter.restore && {
      restore: {
        speaksFor: [
          ...when(sound, { id: 'mostly-sound', share: share?.sound ?? 0 }),
          ...when(surface, { id: 'surface-only' }),
          ...weighed('restore', 'first'),
          good,
        ],
        against: [...gone, ...mostlyGone, ...past, ...why, ...weighed('restore', 'second'), poor],
      },
    }),
    ...(lighter.parts && {
      parts: {
        speaksFor: [
          ...some({
            id: 'parts-made-new',
            zones: [...new Set([...signs.zonesIn('break-out', 'replace')])],
          }),
          ...weighed('parts', 'first'),
        ],
        against: [...mostlyGone, ...why, ...weighed('parts', 'second')],
      },
    }),
    replace: {
      speaksFor: [...gone, ...mostlyGone, ...past, ...why, ...replaceLighter(lighter.restore)],
      against: [
        ...when(sound, { id: 'sound-broken-out', share: share?.sound ?? 0 }),
        ...when(surface, { id: 'surface-only' }),
        ...when(moves, { id: 'cause-stays' }),
        ...(lighter.restore ? turned(measuresOf(lighter.restore, 'first')) : []),
      ],
    },
  };
}

const turned = (points: readonly Point[]): Point[] =>
  points.map((point) => ({ ...point, id: point.id === 'less' ? 'more' : 'less' }));

const replaceLighter = (lighter: Readonly<Record<MeasureId, Lighter>> | undefined): Point[] =>
  lighter ? turned(measuresOf(lighter, 'second')) : [];

/** What nobody has found out or said yet. */
export function notKnownYet(plan: Plan, signs: Signs, conditions: Conditions): Point[] {
  const { share, whole, unmeasured } = conditions;
  return [
    ...some({ id: 'open-answers', zones: signs.zonesIn('not-known') }),
    ...some({ id: 'unmeasured', zones: unmeasured }),
    ...when(whole === null, { id: 'whole-unknown' }),
    ...when(share !== null && share['not-entered'] > roundOff, {
      id: 'not-entered',
      share: share?.['not-entered'] ?? 0,
    }),
    ...when((plan.drawn.site.thickness ?? 'unknown') === 'unknown', { id: 'thickness-unknown' }),
    {
      id: 'no-one-percentage',
      figures: ['rule.galion', 'rule.lauderhill', 'rule.sioux-falls', 'rule.pleasant-hill'],
    },
  ];
}
