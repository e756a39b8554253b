import type { Drawing, Mark } from '$lib/drawing/mark';
import { hatch, rectangle } from '$lib/drawing/points';
import type { DayRow, Lane, Piece } from '$lib/plan/day-rows';
import type { StepId } from '$shared/methods';
import { stripWidth, type Label } from './order';

const left = 78;
const right = stripWidth - 2;
const lane = 25;
const bar = 18;
const head = 18;
/** A further line of a day's name. */
const headLine = 11;
const gap = 12;
/** The part of a column that is the night, after the hours of work. */
const nightPart = 0.08;
/** Columns side by side; what comes after them stands in a band below. */
const mostAcross = 4;
/** A column on which nobody works is as wide as this part of another. */
const idle = 0.45;
/** A letter of a number in a block is about this wide. */
const digit = 6.5;
/** A letter of a day's name is about this wide, and its neighbour this far off. */
const letter = 6.2;
const apart = 4;
/** Least room between two numbers, so that 11 and 12 are not read as 1112. */
const between = 4;
const hatchStep = 6;
const longestLine = 13;

export interface DayNames {
  readonly numberOf: (step: StepId) => number;
  readonly row: (row: DayRow) => string;
  readonly lane: (lane: Lane) => string;
  readonly waits: string;
  readonly open: string;
}

interface Column {
  readonly row: DayRow;
  readonly x: number;
  readonly width: number;
}

const weightOf = (row: DayRow): number => (row.work.length ? 1 : idle);

/** Days side by side, in as many bands as they take. */
function bandsOf(rows: readonly DayRow[]): Column[][] {
  const groups: DayRow[][] = [];
  let used = Infinity;
  for (const row of rows) {
    if (used + weightOf(row) > mostAcross + 1e-9) {
      groups.push([]);
      used = 0;
    }
    groups.at(-1)?.push(row);
    used += weightOf(row);
  }
  const weights = groups.map((group) => group.reduce((sum, row) => sum + weightOf(row), 0));
  const unit = (right - left) / Math.max(1, ...weights);
  return groups.map((group) => {
    let x = left;
    return group.map((row) => {
      const width = weightOf(row) * unit;
      x += width;
      return { row, x: x - width, width };
    });
  });
}

/** A name on two lines where it is too long for one. */
function lines(name: string): readonly string[] {
  if (name.length <= longestLine) return [name];
  const at = Math.max(name.lastIndexOf(' ', longestLine), name.lastIndexOf('-', longestLine - 1));
  if (at < 0) return [name];
  return [name.slice(0, at + 1).trim(), name.slice(at + 1)];
}

/** A day's name on as many lines as its column asks for, so that it never runs into the next. */
function headLines(name: string, width: number): readonly string[] {
  const found: string[] = [];
  for (const word of name.split(' ')) {
    const joined = found.length ? `${found.at(-1) ?? ''} ${word}` : word;
    if (found.length && joined.length * letter <= width - apart) found[found.length - 1] = joined;
    else found.push(word);
  }
  return found;
}

const keyOf = (each: Lane): string => (each.of === 'person' ? `p${each.person}` : each.tool);

/** Everybody and every machine of some days, once: people first, machines as they come. */
function lanesOf(columns: readonly Column[]): Lane[] {
  const found = new Map<string, Lane>();
  for (const { row } of columns)
    for (const each of row.lanes) if (!found.has(keyOf(each))) found.set(keyOf(each), each);
  const people = [...found.values()].filter((each) => each.of === 'person');
  return [
    ...people.toSorted((one, other) => one.person - other.person),
    ...[...found.values()].filter((each) => each.of === 'machine'),
  ];
}

/**
 * The whole job as one picture: days side by side, a lane a person, a lane a machine, what dries, and
 * how long a cleaned surface lies open. Blocks carry the numbers of the steps.
 */
export function daysChart(
  rows: readonly DayRow[],
  hoursPerDay: number,
  names: DayNames,
): {
  height: number;
  marks: Drawing;
  labels: readonly Label[];
  /** Steps of which no block is wide enough for its number. */
  short: readonly StepId[];
} {
  const marks: Mark[] = [];
  const labels: Label[] = [];
  const at = ({ x, width }: Column, hour: number): number => {
    const day = (width - 4) * (1 - nightPart);
    const part =
      hour <= hoursPerDay
        ? (hour / hoursPerDay) * day
        : day + ((hour - hoursPerDay) / (24 - hoursPerDay)) * (width - 4) * nightPart;
    return Math.round((x + 2 + part) * 10) / 10;
  };
  const shown = new Set<StepId>();
  const narrow = new Set<StepId>();
  let y = 0;
  const named = (text: string): void => {
    const said = lines(text);
    for (const [place, line] of said.entries())
      labels.push({ x: 2, y: y + (said.length > 1 ? 9 : 14) + place * 10, text: line, of: 'lane' });
  };
  /** Where the last number of a lane ends; lanes are told apart by their height. */
  const numbered = new Map<number, number>();
  const block = (column: Column, piece: Piece, of: Lane['of']): void => {
    const [start, end] = [at(column, piece.from), at(column, piece.to)];
    const solid = of === 'person';
    // A hair is left between two blocks that touch.
    marks.push([
      solid ? 'solid' : 'form',
      `M${start} ${y + 1}H${Math.max(start + 1, end - 0.8)}v${bar}H${start}z`,
    ]);
    const text = String(names.numberOf(piece.step));
    narrow.add(piece.step);
    const [x, half] = [(start + end) / 2, (digit * text.length) / 2];
    if (end - start < 2 * half + 1 || x - half < (numbered.get(y) ?? 0) + between) return;
    shown.add(piece.step);
    labels.push({ x, y: y + 14, text, of: solid ? 'on' : 'number' });
    numbered.set(y, x + half);
  };
  for (const columns of bandsOf(rows)) {
    const from = y;
    const heads = columns.map(({ row, x, width }) => ({
      x: x + width / 2,
      said: headLines(names.row(row), width),
    }));
    const tall = Math.max(...heads.map(({ said }) => said.length));
    for (const { x, said } of heads)
      for (const [place, text] of said.entries())
        labels.push({ x, y: y + 12 + place * headLine, text, of: 'day' });
    y += head + (tall - 1) * headLine;
    marks.push(['ink', `M2 ${y - 1}H${right}`]);
    for (const each of lanesOf(columns)) {
      named(names.lane(each));
      for (const column of columns)
        for (const there of column.row.lanes)
          if (keyOf(there) === keyOf(each))
            for (const piece of there.pieces) block(column, piece, there.of);
      y += lane;
    }
    if (columns.some(({ row }) => row.waits.length)) {
      named(names.waits);
      for (const column of columns)
        for (const wait of column.row.waits)
          marks.push([
            'hatch',
            hatch(
              rectangle(at(column, wait.from), y + 1, at(column, wait.to), y + 1 + bar),
              hatchStep,
            ),
          ]);
      y += lane;
    }
    if (columns.some(({ row }) => row.open.length)) {
      named(names.open);
      for (const column of columns)
        for (const each of column.row.open) {
          const start = at(column, each.from);
          const end = Math.max(start + 3, at(column, each.to));
          marks.push(['crayon', `M${start} ${y + 10}H${end}`]);
        }
      y += lane;
    }
    for (const { x } of columns) marks.push(['fine', `M${x} ${from + 4}V${y - 3}`]);
    y += gap;
  }
  const short = [...narrow].filter((step) => !shown.has(step));
  return { height: Math.max(1, y - gap + 2), marks, labels, short };
}
