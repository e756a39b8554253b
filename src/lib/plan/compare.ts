import { isKnown, type Amount } from './amount';
import {
  courseIds,
  measureIds,
  type Course,
  type CourseId,
  type Courses,
  type MeasureId,
} from './courses';

export type Lighter = 'first' | 'second' | 'alike' | 'not-known';

/** Which of two courses takes less, measure by measure. Ranges that overlap are alike: no thumb on the scale. */
export function compareCourses(
  first: Course | null,
  second: Course | null,
): Readonly<Record<MeasureId, Lighter>> {
  const lighter = (one: Amount | null, other: Amount | null): Lighter => {
    if (!one || !other || !isKnown(one) || !isKnown(other)) return 'not-known';
    if (one.span[1] < other.span[0]) return 'first';
    return other.span[1] < one.span[0] ? 'second' : 'alike';
  };
  return Object.fromEntries(
    measureIds.map((id) => [id, lighter(first?.[id] ?? null, second?.[id] ?? null)]),
  ) as Record<MeasureId, Lighter>;
}

/** Courses whose ranges cross, measure by measure: of these none is said to take less. */
export function overlapsOf(
  courses: Courses,
): Readonly<Record<MeasureId, readonly (readonly [CourseId, CourseId])[]>> {
  const pairs = courseIds.flatMap((one, place) =>
    courseIds.slice(place + 1).map((other) => [one, other] as const),
  );
  return Object.fromEntries(
    measureIds.map((id) => [
      id,
      pairs.filter(([one, other]) => compareCourses(courses[one], courses[other])[id] === 'alike'),
    ]),
  ) as Record<MeasureId, (readonly [CourseId, CourseId])[]>;
}
