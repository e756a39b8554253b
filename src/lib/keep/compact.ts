import type { Answer } from '$lib/answers/answers';
import type { Job } from '$lib/answers/job';
import type { QuestionId } from '$lib/answers/questions';
import { foldTaps, unfoldTaps } from './compact-taps';
import { formatName, jobExtras, siteExtras, take, zoneExtras } from './job-shape';
import { refuse, type Checked } from './problem';
import { rowsOf, type Table, type TableRow } from './tables/table';
import { newest } from './tables/tables';
import { writeAnswer } from './write-job';

/**
 * A job in few characters, for a link: answers as numbers in the order of a version's table,
 * zones column by column because like stands beside like then and packs better. What a job carries
 * besides answers goes by name, so a part that comes later needs no place of its own here and is
 * refused by name where it is not known. It unfolds into the values of a job file of the same
 * version and so passes the one parser.
 */
type Code = number | string | null;
type Row = Readonly<Record<string, unknown>>;

/** Choices as a sum of powers of two. */
function maskOf({ id, choices = [] }: TableRow, some: readonly string[]): number {
  return some.reduce((mask, choice) => {
    const place = choices.indexOf(choice);
    if (place < 0) throw new Error(`${id}: "${choice}" has no place in a link.`);
    return mask + 2 ** place;
  }, 0);
}
const ofMask = (all: readonly string[], mask: number): string[] =>
  all.filter((_, index) => Math.floor(mask / 2 ** index) % 2 === 1);

/** Missing is null; an unknown number "?"; choices a sum of powers of two, for a depth below zero; a sheet's word its place. */
function fold(row: TableRow, answer: Answer<QuestionId> | undefined): Code {
  if (answer === undefined) return null;
  if (answer === 'unknown') return '?';
  if (typeof answer === 'number') return answer;
  const { choices = [] } = row;
  if (row.sheet) {
    const said = writeAnswer(row.id as QuestionId, answer);
    return typeof said === 'number' ? said : choices.indexOf(String(said));
  }
  if ('yes' in answer)
    return maskOf(row, answer.yes) + maskOf(row, answer.maybe) * 2 ** choices.length;
  const mask = maskOf(row, answer);
  return row.kind === 'depth' ? -mask : mask;
}

/** What a code says, as a job file of that version has it; nothing where it is no code. */
function unfold({ kind, choices = [], sheet }: TableRow, code: unknown): unknown {
  if (kind === 'number') return code === '?' ? 'unknown' : typeof code === 'number' ? code : null;
  if (typeof code !== 'number') return null;
  if (sheet) {
    const word = choices[code];
    return sheet === 'grade' && word !== undefined && code > 0 ? code : (word ?? null);
  }
  if (kind === 'depth' && code >= 0) return code;
  const mask = kind === 'depth' ? -code : code;
  const top = 2 ** choices.length;
  if (!Number.isInteger(mask) || mask < 0 || mask >= (kind === 'many' ? top * top : top))
    return null;
  if (kind !== 'many') return ofMask(choices, mask);
  return { yes: ofMask(choices, mask % top), maybe: ofMask(choices, Math.floor(mask / top)) };
}

const extrasOf = (from: object, fields: object): Row | 0 => {
  const taken = take(from, Object.keys(fields));
  return Object.keys(taken).length > 0 ? taken : 0;
};

/** A job as a link of the newest version carries it. */
export function compact(job: Job): readonly unknown[] {
  const zoneExtra = job.zones.map((zone) => extrasOf(zone, zoneExtras));
  const codes = (scope: TableRow['scope'], answers: object) => {
    const given = new Map<string, Answer<QuestionId>>(Object.entries(answers));
    return rowsOf(newest, scope).map((row) => fold(row, given.get(row.id)));
  };
  const ofZones = job.zones.map(({ answers }) => codes('zone', answers));
  return [
    job.name,
    codes('site', job.site),
    job.zones.map(({ id }) => id),
    job.zones.map(({ name }) => name),
    rowsOf(newest, 'zone').map((_, column) => ofZones.map((row) => row[column])),
    extrasOf(job, siteExtras),
    zoneExtra.some((extra) => extra !== 0) ? zoneExtra : 0,
    extrasOf(job.survey ? { ...job, survey: foldTaps(job.survey) } : job, jobExtras),
  ];
}

const parts = 8;
const isList = (value: unknown, length?: number): value is readonly unknown[] =>
  Array.isArray(value) && (length === undefined || value.length === length);
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is said by name, when it says nothing that has a place of its own. */
function named(value: unknown, placed: readonly string[]): Row | undefined {
  if (value === 0) return {};
  return isRow(value) && !placed.some((field) => Object.hasOwn(value, field)) ? value : undefined;
}

/** Answers that are there, as fields of the file; nothing when one of the codes is none. */
function answersOf(rows: Table, codes: readonly unknown[]): Row | undefined {
  const answers: [string, unknown][] = [];
  for (const [index, row] of rows.entries()) {
    const code = codes[index];
    if (code === null) continue;
    const value = unfold(row, code);
    if (value === null) return undefined;
    answers.push([row.id, value]);
  }
  return Object.fromEntries(answers);
}

/**
 * A compact job of a version as the values of a job file of that version, for the parser. Takes
 * anything; what is not built as that version builds it is refused whole, never read in part.
 * @param tables the questions of every version, version 1 first
 */
export function spread(value: unknown, version: number, tables: readonly Table[]): Checked<Row> {
  const refused = refuse([], { id: 'whole-link' }, { id: 'broken' });
  const table = tables[version - 1];
  if (!table || !isList(value, parts)) return refused;
  const [name, siteCodes, ids, names, columns, siteExtra, zoneExtra, jobExtra] = value;
  const [siteRows, zoneRows] = [rowsOf(table, 'site'), rowsOf(table, 'zone')];
  const places = (rows: Table, ...others: string[]) => [...rows.map(({ id }) => id), ...others];
  if (!isList(siteCodes, siteRows.length) || !isList(ids) || !isList(names, ids.length))
    return refused;
  if (!isList(columns, zoneRows.length)) return refused;
  if (!columns.every((column) => isList(column, ids.length))) return refused;
  if (zoneExtra !== 0 && !isList(zoneExtra, ids.length)) return refused;
  const site = answersOf(siteRows, siteCodes);
  const siteNamed = named(siteExtra, places(siteRows, 'name'));
  const jobNamed = named(jobExtra, ['format', 'version', 'site', 'zones']);
  if (!site || !siteNamed || !jobNamed) return refused;
  const zones: Row[] = [];
  for (const [row, id] of ids.entries()) {
    const answers = answersOf(
      zoneRows,
      columns.map((column) => (column as readonly unknown[])[row]),
    );
    const extra = named(zoneExtra === 0 ? 0 : zoneExtra[row], places(zoneRows, 'id', 'name'));
    if (!answers || !extra) return refused;
    zones.push({ ...extra, id, name: names[row], ...answers });
  }
  const drawing = jobNamed.survey !== undefined && { survey: unfoldTaps(jobNamed.survey) };
  const file = { ...jobNamed, ...drawing, format: formatName, version, zones };
  return { ok: true, value: { ...file, site: { ...siteNamed, name, ...site } } };
}
