import type { Answer } from '$lib/answers/answers';
import { gradeOf, sheetMoisture } from '$lib/advice/sheet';
import type { Job, Zone } from '$lib/answers/job';
import {
  choicesOf,
  siteQuestionIds,
  zoneQuestionIds,
  type QuestionId,
} from '$lib/answers/questions';
import { currentVersion, formatName, jobExtras, siteExtras, take, zoneExtras } from './job-shape';

/** The job file as JSON values. */
export interface JobFile {
  readonly format: typeof formatName;
  readonly version: typeof currentVersion;
  readonly site: Readonly<Record<string, unknown>>;
  readonly zones: readonly Readonly<Record<string, unknown>>[];
  readonly [extra: string]: unknown;
}

/** An answer as the file has it: the shortest form that reads back as the same answer. */
export function writeAnswer(id: QuestionId, answer: Answer<QuestionId>): unknown {
  const all = choicesOf(id);
  if (typeof answer !== 'object') return answer;
  if ('yes' in answer) {
    if (answer.maybe.length === 0) return [...answer.yes];
    if (answer.yes.length === 0 && answer.maybe.length === all.length) return 'not-sure';
    return { yes: [...answer.yes], maybe: [...answer.maybe] };
  }
  if (id === 'makerProfile') return gradeOf(answer as Answer<'makerProfile'>) ?? 'no-sheet';
  if (id === 'makerMoisture') return sheetMoisture(answer as Answer<'makerMoisture'>) ?? 'no-sheet';
  if (answer.length === 1) return answer[0];
  return answer.length === all.length ? 'not-sure' : [...answer];
}

const writeAnswers = (
  ids: readonly QuestionId[],
  answers: Readonly<Partial<Record<QuestionId, Answer<QuestionId>>>>,
): Record<string, unknown> =>
  Object.fromEntries(
    ids
      .filter((id) => answers[id] !== undefined)
      .map((id) => [id, writeAnswer(id, answers[id] as Answer<QuestionId>)]),
  );

const writeZone = (zone: Zone): Record<string, unknown> => ({
  id: zone.id,
  name: zone.name,
  ...writeAnswers(zoneQuestionIds, zone.answers),
  ...take(zone, Object.keys(zoneExtras)),
});

/** A job as the values of a job file; `parseJob` gives the same job back. */
export function writeJob(job: Job): JobFile {
  return {
    format: formatName,
    version: currentVersion,
    site: {
      name: job.name,
      ...writeAnswers(siteQuestionIds, job.site),
      ...take(job, Object.keys(siteExtras)),
    },
    zones: job.zones.map(writeZone),
    ...take(job, Object.keys(jobExtras)),
  };
}
