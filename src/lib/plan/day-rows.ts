import type { StepId } from '$shared/methods';
import { tools, type ToolId } from '$shared/tools';
import { dayOf } from './clock';
import { joined, type Laid, type Schedule } from './days';
import type { Placed } from './schedule';
import type { Task } from './tasks';
import { besideTool } from './tools';

/** A stretch of hours on a day; past the end of work it is evening and night. */
export type Piece = Laid;

/** What one person, or one machine, does on a day. */
export type Lane = { readonly pieces: readonly Piece[] } & (
  | { readonly of: 'person'; readonly person: number }
  | { readonly of: 'machine'; readonly tool: ToolId }
);

/** Days that look the same, as one row of the chart. */
export interface DayRow {
  readonly from: number;
  readonly to: number;
  /** Nobody works, by the reader's own calendar. */
  readonly off: boolean;
  /** What is done, piece by piece, whoever does it. */
  readonly work: readonly Piece[];
  readonly lanes: readonly Lane[];
  /** What dries, hardens or stands and is waited for, to 24 where it goes on through the night. */
  readonly waits: readonly Piece[];
  /** From a last cleaning to its covering. */
  readonly open: readonly { readonly from: number; readonly to: number }[];
  readonly bring: readonly ToolId[];
  readonly people: number;
  /** Begun that day, with hours that nobody has said: what is placed by whoever places it, a specialist’s. */
  readonly untimed: readonly StepId[];
  /** Of all these, steps that only zones have that day which must wait. */
  readonly waiting: readonly StepId[];
}

const hoursInDay = 24;
const roundOff = 1e-6;

/** The part of a stretch that falls on a day. */
function onDay(day: number, from: number, to: number): { from: number; to: number } | null {
  const morning = (day - 1) * hoursInDay;
  const begin = Math.max(0, from - morning);
  const end = Math.min(hoursInDay, to - morning);
  return end - begin > roundOff ? { from: begin, to: end } : null;
}

/** Whether somebody else’s work, or work nobody has timed, begins that day. What cures by itself is told as a wait. */
export const untimedOn = ({ task, from, stretches }: Placed, day: number): boolean =>
  !stretches.length && !task.lasting && dayOf(from) === day;

/** What is waited for: drying before a step, and what cures by itself, named by its own step. */
const waitsAmong = (placed: readonly Placed[]): (Piece & { readonly key: string })[] =>
  placed.flatMap(({ task, from, to }) => {
    const key = task.zones[0] ?? '';
    if (task.lasting) return [{ step: task.step, from, to, key }];
    const { wait } = task;
    if (!wait) return [];
    const before = placed.find(
      ({ task: other }) => other.step === wait.after && other.zones.includes(key),
    );
    return before
      ? [{ step: task.step, from: before.to, to: before.to + wait.hours.typical, key }]
      : [];
  });

/**
 * The days of a schedule as rows, each with a lane a person and a lane a machine. The last row is the
 * last day on which somebody works; a cure that goes on after it is told with the plan.
 */
export function dayRows(
  schedule: Schedule,
  off: (day: number) => boolean = () => false,
  mustWait: (task: Task) => boolean = () => false,
): DayRow[] {
  const { placed, days, covering } = schedule;
  const waits = waitsAmong(placed);
  const rows: DayRow[] = [];
  for (const { number, people } of days) {
    const byPerson = new Map<number, Piece[]>();
    const byTool = new Map<ToolId, Piece[]>();
    const work: Piece[] = [];
    const bring = new Set<ToolId>();
    const there = placed.filter(
      (each) =>
        untimedOn(each, number) ||
        each.stretches.some(({ day, from, to }) => day === number && onDay(number, from, to)),
    );
    const free = new Set(there.flatMap(({ task }) => (mustWait(task) ? [] : [task.step])));
    for (const { task, people: hands, stretches } of placed)
      for (const { day, from, to } of stretches) {
        const part = day === number && onDay(number, from, to);
        if (!part) continue;
        const piece = { step: task.step, ...part };
        const { tool } = task.tool;
        work.push(piece);
        for (const each of [tool, ...besideTool(task.step, tool)]) bring.add(each);
        for (const person of hands) byPerson.set(person, [...(byPerson.get(person) ?? []), piece]);
        if (tools[tool].power.length) byTool.set(tool, [...(byTool.get(tool) ?? []), piece]);
      }
    const row: DayRow = {
      from: number,
      to: number,
      off: off(number),
      work: joined(work),
      lanes: [
        ...[...byPerson]
          .sort(([one], [other]) => one - other)
          .map(([person, pieces]) => ({
            of: 'person' as const,
            person: person + 1,
            pieces: joined(pieces),
          })),
        ...[...byTool].map(([tool, pieces]) => ({
          of: 'machine' as const,
          tool,
          pieces: joined(pieces),
        })),
      ],
      waits: joined(
        waits.flatMap(({ step, from, to }) => {
          const part = onDay(number, from, to);
          return part ? [{ step, ...part }] : [];
        }),
      ),
      open: Object.values(covering).flatMap(({ last, cover }) =>
        cover === null ? [] : (onDay(number, last, cover) ?? []),
      ),
      bring: [...bring],
      people,
      untimed: [
        ...new Set(placed.flatMap((each) => (untimedOn(each, number) ? [each.task.step] : []))),
      ],
      waiting: [...new Set(there.map(({ task }) => task.step))].filter((step) => !free.has(step)),
    };
    const last = rows.at(-1);
    if (last && alike(last, row)) rows[rows.length - 1] = { ...last, to: number };
    else rows.push(row);
  }
  return rows;
}

const alike = (one: DayRow, other: DayRow): boolean =>
  JSON.stringify({ ...one, from: 0, to: 0 }) === JSON.stringify({ ...other, from: 0, to: 0 });
