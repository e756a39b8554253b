import Papa from 'papaparse';
import type { Answer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { notSure } from '$lib/answers/answers';
import { parseNumber, type TypedQuestion } from '$lib/answers/parse-number';
import { choicesOf, questions, zoneQuestionIds, type ZoneQuestion } from '$lib/answers/questions';
import { bounds } from '$lib/keep/bounds';
import { cellText } from '$lib/keep/export-csv';
import { isName } from '$lib/keep/names';
import { choiceIn } from '$lib/ui/choice-words';
import { zonesTableWords as words } from '$words/plan/zones-table';
import { questionWords } from '$words/questions';
import { spokenLimit } from '$words/ui/typing';
import { formatter } from '$lib/words/format';
import type { Say } from '$lib/words/types';
import { rangeOf, valueOf } from '$shared/figures';
import { between, unitOf } from './zones-table';

export interface NewZone {
  readonly name: string;
  readonly answers: ZoneAnswers;
}
/** What a table comes to. Where anything is wrong with it, no zone of it is to be taken. */
export interface ReadZones {
  readonly zones: readonly NewZone[];
  /** Each names its row and column, and what was expected there. */
  readonly problems: readonly string[];
}

/** The words of both systems of units: a table may have been saved in the other. */
const systems = (['metric', 'us'] as const).map((units) => questionWords(formatter(units)));
/** Tables saved before depths were told as a ruler shows them have the limits to a tenth: "3.2 to 6.4 mm". */
const depths = [
  'depth.film',
  'depth.thin',
  'depth.shallow',
  'depth.spall-small',
  'depth.deep',
] as const;
const toTheTenth = questionWords(
  formatter('metric', Object.fromEntries(depths.map((id) => [id, valueOf(id)]))),
);
const spoken = [...systems, toTheTenth];

const bare = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[“”"]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[?:.]$/, '');

/** What parts the cells: whatever the row of names has most of, outside quotes. */
export function delimiterOf(text: string): string {
  const [first = ''] = text
    .trimStart()
    .replace(/"[^"]*"/g, '')
    .split('\n');
  const counted = ['\t', ',', ';', '|'].map((sign) => [sign, first.split(sign).length] as const);
  return counted.reduce((most, each) => (each[1] > most[1] ? each : most))[0];
}

interface Column {
  /** A question, the name of the zone, or nothing to be read. */
  readonly of: ZoneQuestion | 'name' | 'place';
  /** As the table has it. */
  readonly heading: string;
  /** The unit in its heading. */
  readonly unit: string;
}

const questionNamed = new Map(
  zoneQuestionIds.flatMap((id) =>
    [id, ...spoken.flatMap((each) => [each[id].short, each[id].ask])].map(
      (name) => [bare(name), id] as const,
    ),
  ),
);

function columnOf(heading: string): Column | null {
  const parts = /^(.*?)\s*[([]([^)\]]*)[)\]]\s*$/.exec(heading);
  const name = bare(parts?.[1] ?? heading);
  const of =
    name === bare(words.zone) || name === 'name'
      ? 'name'
      : name === bare(words.place)
        ? 'place'
        : (questionNamed.get(name) ?? questionNamed.get(bare(heading)));
  return of ? { of, heading: heading.trim(), unit: parts?.[2] ?? '' } : null;
}

/** Choices by their id and by their names in either system of units. */
const choiceNamed = (id: ZoneQuestion): ReadonlyMap<string, string> =>
  new Map(
    choicesOf(id).flatMap((choice) => [
      [bare(choice), choice] as const,
      ...spoken.map((each) => [bare(choiceIn(each[id], choice).name), choice] as const),
    ]),
  );
const choices = new Map(zoneQuestionIds.map((id) => [id, choiceNamed(id)]));

type Read = { readonly answer: Answer<ZoneQuestion> } | { readonly expected: string };

/** What a cell of this question may hold, in words. */
export function expectedOf(id: ZoneQuestion, say: Say): string {
  const { kind } = questions[id];
  const asked = questionWords(say)[id];
  const names = choicesOf(id)
    .map((choice) => choiceIn(asked, choice).name)
    .join(', ');
  const unit = unitOf(id);
  const number = () => {
    const [least, most] = rangeOf(questions[id as TypedQuestion].limit);
    const shown = (value: number) => spokenLimit(unit ?? 'mm', value, say);
    return words.expects.number(say.unitOf(unit ?? 'mm'), shown(least), shown(most));
  };
  if (kind === 'number') return number();
  if (kind === 'depth') return words.expects.depth(number(), names);
  return words.expects[kind](names);
}

function readNumberCell(cell: string, column: Column, site: SiteAnswers, say: Say): Read {
  const id = column.of as TypedQuestion & ZoneQuestion;
  // A unit in the heading counts where the cell has none of its own.
  const text = /[a-z'"′″²]/i.test(cell) || !column.unit ? cell : `${cell} ${column.unit}`;
  const read = parseNumber(id, text, say.units, site.thickness);
  if (read.ok) return { answer: read.value };
  if (read.ways) {
    const [one, other] = read.ways.map((way) => way.text);
    return { expected: words.expects.ways(one ?? '', other ?? '') };
  }
  if (read.problem === 'deeper-than-slab')
    return { expected: words.expects.slab(say.length(read.limit ?? 0)) };
  return { expected: expectedOf(id, say) };
}

function readCell(cell: string, column: Column, site: SiteAnswers, say: Say): Read {
  const id = column.of as ZoneQuestion;
  const { kind } = questions[id];
  const text = bare(cell);
  if (text === words.notSure || text === 'unknown') return { answer: notSure(id) };
  if (kind === 'number') return readNumberCell(cell, column, site, say);
  if (kind === 'many' && (text === words.none || text === '-'))
    return { answer: { yes: [], maybe: [] } };
  const named = choices.get(id);
  const maybes = words.maybe('');
  const parts = cell.split(between.trim()).map((part) => bare(part));
  const found = parts.map((part) => {
    const unsure = kind === 'many' && part.startsWith(maybes) && !named?.has(part);
    return { unsure, choice: named?.get(unsure ? part.slice(maybes.length) : part) };
  });
  if (found.some(({ choice }) => choice === undefined))
    return kind === 'depth'
      ? readNumberCell(cell, column, site, say)
      : { expected: expectedOf(id, say) };
  const inOrder = (some: typeof found) =>
    choicesOf(id).filter((each) => some.some(({ choice }) => choice === each));
  if (kind !== 'many') {
    const [first, ...more] = inOrder(found);
    // A data sheet says one thing or nothing.
    return more.length && (id === 'makerProfile' || id === 'makerMoisture')
      ? { expected: expectedOf(id, say) }
      : { answer: [first, ...more] as never };
  }
  const yes = inOrder(found.filter(({ unsure }) => !unsure));
  const maybe = inOrder(found.filter(({ unsure }) => unsure));
  return yes.some((each) => maybe.includes(each))
    ? { expected: expectedOf(id, say) }
    : { answer: { yes, maybe } as never };
}

const problem = (text: string, expected: string): string =>
  `${text ? `${words.unread(text)} ` : ''}${words.expected(expected)}`;

function columnsOf(row: readonly string[], rows: readonly (readonly string[])[], say: Say) {
  const problems: string[] = [];
  const seen = new Set<string>();
  const columns = row.map((heading, at): Column | null => {
    const column = columnOf(heading);
    const empty = !heading.trim() && rows.every((each) => !each[at]?.trim());
    if (empty) return null;
    const where = words.columnOf(at + 1);
    if (!column) {
      const names = zoneQuestionIds.map((id) => questionWords(say)[id].short).join(', ');
      problems.push(where + problem(heading, words.expects.column(names)));
    } else if (seen.has(column.of)) problems.push(where + problem(heading, words.expects.once));
    if (column) seen.add(column.of);
    return column;
  });
  if (!seen.size || (seen.size === 1 && seen.has('place')))
    problems.push(words.cellOf(1, words.zone) + words.expected(words.expects.zone));
  return { columns, problems };
}

/**
 * Reads a table of zones: tabs, commas or semicolons, a row of names, then one row a zone.
 * @param site the answers about the site, against which a depth has to fit
 * @param room how many zones the job still takes
 */
export function readZones(text: string, site: SiteAnswers, say: Say, room: number): ReadZones {
  if (text.length > bounds.fileLength)
    return { zones: [], problems: [words.expected(words.expects.size)] };
  const whole = text.replace(/^\uFEFF/, '');
  const { data } = Papa.parse<string[]>(whole, { delimiter: delimiterOf(whole) });
  const rows = data
    .map((cells, at) => ({ number: at + 1, cells: cells.map(cellText) }))
    .filter(({ cells }) => cells.some((cell) => cell.trim()));
  const [head, ...body] = rows;
  if (!head) return { zones: [], problems: [] };
  const { columns, problems } = columnsOf(
    head.cells,
    body.map(({ cells }) => cells),
    say,
  );
  const zones = problems.length
    ? []
    : body.map((row) => zoneFrom(row, columns, site, say, problems));
  const most = rangeOf('limit.zones')[1];
  if (body.length > room)
    problems.push(words.expected(words.expects.zones(say.number(most), say.number(room))));
  return { zones, problems };
}

function zoneFrom(
  { number, cells }: { number: number; cells: readonly string[] },
  columns: readonly (Column | null)[],
  site: SiteAnswers,
  say: Say,
  problems: string[],
): NewZone {
  let name = '';
  const answers: Record<string, unknown> = {};
  cells.forEach((cell, at) => {
    const column = columns[at];
    if (!cell.trim() && column?.of !== 'name') return;
    const where = words.cellOf(number, column?.heading ?? String(at + 1));
    if (!column) problems.push(where + problem(cell, words.expects.cells));
    else if (column.of === 'name') {
      if (isName(cell)) name = cell;
      else problems.push(where + problem(cell, words.expects.name(bounds.nameLength)));
    } else if (column.of !== 'place') {
      const read = readCell(cell, column, site, say);
      if ('answer' in read) answers[column.of] = read.answer;
      else problems.push(where + problem(cell, read.expected));
    }
  });
  return { name, answers };
}
