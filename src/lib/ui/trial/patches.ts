import { fromUs, toUs, type UnitSystem } from '$lib/answers/units';
import type { Job, Zone } from '$lib/answers/job';
import type { QuestionId } from '$lib/answers/questions';
import type { PatchTried } from '$lib/answers/trial-record';
import type { AnswerGiven } from '$lib/interview/context';
import type { Disproved } from '$lib/trial/follow';
import { changeBack, changeInPlace, answerNow, type Changed } from '$lib/ui/job/in-place';
import { rangeOf, valueOf } from '$shared/figures';

/** The size a square is begun with, m2: `trial.area`, as a round number in the reader's units. */
export const squareSize = (units: UnitSystem): number =>
  units === 'us'
    ? fromUs('m2', Number(toUs('m2', valueOf('trial.area')).toPrecision(1)))
    : valueOf('trial.area');

/** A square begun: a size of its own only where it is not the one a square has by itself. */
export const begun = (
  method: string,
  next: Pick<PatchTried, 'notch' | 'passes'>,
  units: UnitSystem,
): PatchTried => ({ method, ...next, ...(units === 'us' && { area: squareSize(units) }) });

/** The job with another list of squares for a zone; the zone has none where the list is empty. */
function withTrial(
  job: Job,
  zone: string,
  change: (trial: readonly PatchTried[]) => readonly PatchTried[],
): Job {
  return {
    ...job,
    zones: job.zones.map((each): Zone => {
      if (each.id !== zone) return each;
      const { trial = [], ...rest } = each;
      const next = change(trial);
      return next.length ? { ...rest, trial: next } : rest;
    }),
  };
}

/** The job with one square written at its place; one more where the place is the next. */
export const withPatch = (job: Job, zone: string, index: number, patch: PatchTried): Job =>
  withTrial(job, zone, (trial) =>
    index < trial.length
      ? trial.map((each, place) => (place === index ? patch : each))
      : [...trial, patch],
  );

export const withoutPatch = (job: Job, zone: string, index: number): Job =>
  withTrial(job, zone, (trial) => trial.filter((_, place) => place !== index));

/** The job with a square back at the place it had. */
export const withPatchBack = (job: Job, zone: string, index: number, patch: PatchTried): Job =>
  withTrial(job, zone, (trial) => trial.toSpliced(Math.min(index, trial.length), 0, patch));

/** Whether another square may be kept. */
export const hasRoom = (zone: Zone): boolean =>
  (zone.trial?.length ?? 0) < rangeOf('limit.trial-patches')[1];

/** A field of a square without a value, or with one. */
export function withField<K extends keyof PatchTried>(
  patch: PatchTried,
  field: K,
  value: PatchTried[K] | undefined,
): PatchTried {
  const others = Object.fromEntries(Object.entries(patch).filter(([key]) => key !== field));
  return { ...others, ...(value !== undefined && { [field]: value }) } as unknown as PatchTried;
}

/**
 * The answers a patch has disproved, changed as answers are; and what is needed to change them back.
 * A question that is not asked any more once another has changed is left as it was.
 */
export function changeDisproved(
  job: Job,
  zone: string,
  disproved: Disproved,
): { readonly job: Job; readonly changed: readonly Changed[] } {
  const changed: Changed[] = [];
  let next = job;
  for (const [id, answer] of Object.entries(disproved)) {
    const question = id as QuestionId;
    const seen = answerNow(next, zone, question);
    const result = changeInPlace(next, zone, { question, answer } as AnswerGiven, seen);
    if ('refused' in result) continue;
    next = result.job;
    changed.push(result.changed);
  }
  return { job: next, changed };
}

/** The answers as they were before; where one has been changed since, it stays. */
export function changeAllBack(job: Job, changed: readonly Changed[]): Job {
  return changed.toReversed().reduce((now, each) => {
    const back = changeBack(now, each);
    return 'refused' in back ? now : back.job;
  }, job);
}
