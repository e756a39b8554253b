import type { Answer } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import {
  choicesOf,
  questions,
  siteQuestionIds,
  zoneQuestionIds,
  type QuestionId,
} from '$lib/answers/questions';
import { currentVersion, formatName, jobExtras, siteExtras, take, zoneExtras } from './job-shape';

/**
 * A job in few characters, for a link: answers as numbers in the order of the questions table,
 * zones column by column because like stands beside like then and packs better.
 * It unfolds into the values of a job file and so passes the one parser.
 *
 * The order of questions and of their choices is part of links already sent: new ones go to the
 * end, anything else needs a new link version. A kept link in the tests holds that.
 */
type Code = number | string | null;
type Row = Readonly<Record<string, unknown>>;

const maskOf = (all: readonly string[], some: readonly string[]): number =>
  some.reduce((mask, choice) => mask + 2 ** all.indexOf(choice), 0);
const ofMask = (all: readonly string[], mask: number): string[] =>
  all.filter((_, index) => Math.floor(mask / 2 ** index) % 2 === 1);

/** Missing is null; an unknown number "?"; choices a sum of powers of two, for a depth below zero. */
function fold(id: QuestionId, answer: Answer<QuestionId> | undefined): Code {
  const all = choicesOf(id);
  if (answer === undefined) return null;
  if (answer === 'unknown') return '?';
  if (typeof answer === 'number') return answer;
  if ('yes' in answer) return maskOf(all, answer.yes) + maskOf(all, answer.maybe) * 2 ** all.length;
  const mask = maskOf(all, answer);
  return questions[id].kind === 'depth' ? -mask : mask;
}

/** The file's value of a code. What is no code of this question is passed on for the parser to refuse. */
function unfold(id: QuestionId, code: unknown): unknown {
  const { kind } = questions[id];
  const all = choicesOf(id);
  if (code === '?') return kind === 'number' ? 'unknown' : code;
  if (typeof code !== 'number' || kind === 'number') return code;
  if (kind === 'depth' && code >= 0) return code;
  const mask = kind === 'depth' ? -code : code;
  const top = 2 ** all.length;
  if (!Number.isInteger(mask) || mask < 0 || mask >= (kind === 'many' ? top * top : top))
    return code;
  if (kind !== 'many') return ofMask(all, mask);
  return { yes: ofMask(all, mask % top), maybe: ofMask(all, Math.floor(mask / top)) };
}

const extrasOf = (from: object, fields: object): Row | 0 => {
  const taken = take(from, Object.keys(fields));
  return Object.keys(taken).length > 0 ? taken : 0;
};

export function compact(job: Job): readonly unknown[] {
  const zoneExtra = job.zones.map((zone) => extrasOf(zone, zoneExtras));
  return [
    job.name,
    siteQuestionIds.map((id) => fold(id, job.site[id])),
    job.zones.map(({ id }) => id),
    job.zones.map(({ name }) => name),
    zoneQuestionIds.map((id) => job.zones.map(({ answers }) => fold(id, answers[id]))),
    extrasOf(job, siteExtras),
    zoneExtra.some((extra) => extra !== 0) ? zoneExtra : 0,
    extrasOf(job, jobExtras),
  ];
}

const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const asRow = (value: unknown): Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Row) : {};

/** Answers that are there, as fields of the file. */
const answersOf = (ids: readonly QuestionId[], codeOf: (index: number) => unknown): Row =>
  Object.fromEntries(
    ids
      .map((id, index) => [id, unfold(id, codeOf(index))] as const)
      .filter(([, value]) => value !== null && value !== undefined),
  );

/** A compact job as the values of a job file. Takes anything; what it makes of it is for the parser. */
export function spread(value: readonly unknown[]): Row {
  const [name, siteCodes, ids, names, columns, siteExtra, zoneExtra, jobExtra] = value;
  return {
    format: formatName,
    version: currentVersion,
    site: {
      ...asRow(siteExtra),
      name,
      ...answersOf(siteQuestionIds, (index) => asList(siteCodes)[index]),
    },
    zones: asList(ids).map((id, row) => ({
      ...asRow(asList(zoneExtra)[row]),
      id,
      name: asList(names)[row],
      ...answersOf(zoneQuestionIds, (index) => asList(asList(columns)[index])[row]),
    })),
    ...asRow(jobExtra),
  };
}
