import type { Drawing, Mark } from '$lib/drawing/mark';
import { hatch, rectangle } from '$lib/drawing/points';
import type { DayRow, Lane, Piece } from '$lib/plan/day-rows';
import type { StepId } from '$shared/methods';
import { stripWidth, type Label } from './order';

const lane = 15;
const bar = 12;
const head = 17;
const top = 24;
const left = 104;
const night = 22;
const right = stripWidth - night - 14;
/** Narrower than this a block has no room for its number. */
const numbered = 12;
const hatchStep = 6;

export interface DayNames {
  readonly numberOf: (step: StepId) => number;
  readonly row: (row: DayRow) => string;
  readonly lane: (lane: Lane) => string;
  readonly waits: string;
  readonly open: string;
  readonly night: string;
}

/**
 * Days from top to bottom, each with a lane a person, a lane a machine and what dries; hours of work
 * from left to right, and a narrow column for the night. Blocks carry the numbers of the steps.
 */
export function daysStrip(
  rows: readonly DayRow[],
  hoursPerDay: number,
  names: DayNames,
): { height: number; marks: Drawing; labels: readonly Label[] } {
  const scale = (right - left) / hoursPerDay;
  const at = (hour: number) => Math.round((left + Math.min(hour, hoursPerDay) * scale) * 10) / 10;
  const marks: Mark[] = [];
  const labels: Label[] = [];
  for (let hour = 0; hour <= hoursPerDay; hour += 2) {
    marks.push(['fine', `M${at(hour)} ${top - 5}v5`]);
    labels.push({ x: at(hour), y: top - 8, text: String(hour), of: 'zone' });
  }
  labels.push({ x: stripWidth - 2 - night / 2, y: top - 8, text: names.night, of: 'zone' });
  let y = top;
  const lie = ({ from, to }: Pick<Piece, 'from' | 'to'>, height: number): void => {
    if (from < hoursPerDay)
      marks.push(['hatch', hatch(rectangle(at(from), y, at(to), y + height), hatchStep)]);
    // What goes on after work goes on through the night.
    if (to > hoursPerDay + 1e-6)
      marks.push([
        'hatch',
        hatch(rectangle(stripWidth - 2 - night, y, stripWidth - 2, y + height), hatchStep),
      ]);
  };
  for (const row of rows) {
    labels.push({ x: 2, y: y + 13, text: names.row(row), of: 'step' });
    marks.push(['fine', `M2 ${y}H${stripWidth - 2}`]);
    if (row.to > row.from) marks.push(['ink', `M2 ${y + 2.5}H${stripWidth - 2}`]);
    y += head;
    for (const each of row.lanes) {
      labels.push({ x: 8, y: y + 9.5, text: names.lane(each), of: 'lane' });
      for (const { step, from, to } of each.pieces) {
        const [start, end] = [at(from), at(to)];
        marks.push(['form', `M${start} ${y}H${end}V${y + bar}H${start}z`]);
        if (end - start >= numbered)
          labels.push({
            x: (start + end) / 2,
            y: y + 10,
            text: String(names.numberOf(step)),
            of: 'number',
          });
      }
      y += lane;
    }
    if (row.waits.length) {
      labels.push({ x: 8, y: y + 9.5, text: names.waits, of: 'lane' });
      for (const wait of row.waits) lie(wait, bar);
      y += lane;
    }
    if (row.open.length) {
      labels.push({ x: 8, y: y + 9.5, text: names.open, of: 'lane' });
      for (const { from, to } of row.open) {
        const end = to > hoursPerDay ? stripWidth - 2 : at(to);
        marks.push(['ink', `M${at(from)} ${y + 6}H${Math.max(at(from) + 2, end)}`]);
      }
      y += lane;
    }
    y += 4;
  }
  return { height: y + 2, marks, labels };
}
