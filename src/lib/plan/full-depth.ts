import type { Job } from '$lib/answers/job';
import type { QuestionId } from '$lib/answers/questions';
import { isKnown, product, sum, times, type Amount, type Span } from './amount';

const exact = (value: number): Span => [value, value];

/** None of it, and that is known. */
export const nothing = (unit: Amount['unit']): Amount => ({
  span: [0, 0],
  typical: 0,
  unit,
  working: [],
});

/** m3 of a surface through its full depth. */
export function fullDepth(area: Amount, job: Job): Amount {
  const { thickness } = job.site;
  const missing: QuestionId[] = [...(isKnown(area) ? [] : area.missing)];
  if (thickness === undefined || thickness === 'unknown') missing.push('thickness');
  return missing.length
    ? { missing: [...new Set(missing)], unit: 'm3' }
    : times('m3', area, { what: 'depth', span: exact(Number(thickness) / 1000), unit: 'm' });
}

/** m2 of zones; missing while one of them has no area. */
export function areaOf(job: Job, ids: readonly string[]): Amount {
  return ids.length
    ? sum(
        'm2',
        job.zones
          .filter(({ id }) => ids.includes(id))
          .map(({ answers: { area } }) =>
            typeof area === 'number'
              ? product('m2', [{ what: 'area', span: exact(area), unit: 'm2' }])
              : { missing: ['area'], unit: 'm2' },
          ),
      )
    : nothing('m2');
}
