import type { Drawing, Mark } from '$lib/drawing/mark';
import { hatch, rectangle } from '$lib/drawing/points';
import type { Day } from '$lib/plan/days';
import type { StepId } from '$shared/methods';
import { stripWidth, type Label } from './order';

/** Days that look the same, drawn as one row. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly laid: Day['laid'];
  /** Spans of the row, in hours, in which the surface dries. */
  readonly drying: readonly (readonly [number, number])[];
  /** The steps that drying is for, in order. */
  readonly dryingFor: readonly StepId[];
}

/** The days as rows: what is laid, what dries when, and days without a difference taken together. */
export function runsOf(days: readonly Day[], hoursPerDay: number): Run[] {
  const runs: Run[] = [];
  let waitsFor: StepId | null = null;
  for (const day of days) {
    const dryingFor: StepId[] = waitsFor ? [waitsFor] : [];
    const drying: (readonly [number, number])[] = [];
    let hour = 0;
    for (const piece of day.laid) {
      const begins = day.waiting.find(({ before }) => before === piece.step);
      if (begins && !dryingFor.includes(piece.step)) dryingFor.push(piece.step);
      if (piece.from - hour > 1e-6 && (waitsFor || begins)) drying.push([hour, piece.from]);
      if (waitsFor === piece.step) waitsFor = null;
      hour = piece.to;
    }
    // A wait that its step does not end on the same day goes on until that step is laid.
    const open = day.waiting.findLast(
      ({ before }) => !day.laid.some(({ step, from }) => step === before && from >= 0),
    );
    if (open) {
      waitsFor = open.before;
      dryingFor.push(open.before);
    }
    if (waitsFor && hoursPerDay - hour > 1e-6) drying.push([hour, hoursPerDay]);
    const last = runs.at(-1);
    const next: Run = { from: day.number, to: day.number, laid: day.laid, drying, dryingFor };
    if (last && alike(last, next)) runs[runs.length - 1] = { ...last, to: day.number };
    else runs.push(next);
  }
  return runs;
}

const alike = (one: Run, other: Run): boolean =>
  JSON.stringify([one.laid, one.drying, one.dryingFor]) ===
  JSON.stringify([other.laid, other.drying, other.dryingFor]);

const row = 34;
const top = 24;
const left = 66;
const right = stripWidth - 4;
const bar = 22;
/** Narrower than this a block has no room for its number. */
const numbered = 15;
const hatchStep = 6;

/** Working days from top to bottom, hours from left to right; blocks carry the numbers of the steps. */
export function daysStrip(
  runs: readonly Run[],
  hoursPerDay: number,
  numberOf: (step: StepId) => number,
  nameOf: (run: Run) => string,
): { height: number; marks: Drawing; labels: readonly Label[] } {
  const scale = (right - left) / hoursPerDay;
  const at = (hour: number) => Math.round((left + hour * scale) * 10) / 10;
  const marks: Mark[] = [];
  const labels: Label[] = [];
  const height = top + runs.length * row + 4;
  for (let hour = 0; hour <= hoursPerDay; hour += 2) {
    marks.push(['fine', `M${at(hour)} ${top - 5}v5`]);
    labels.push({ x: at(hour), y: top - 8, text: String(hour), of: 'zone' });
  }
  for (const [index, run] of runs.entries()) {
    const y = top + index * row + 4;
    labels.push({ x: 2, y: y + bar / 2 + 4.5, text: nameOf(run), of: 'step' });
    marks.push(['fine', `M${left} ${y + bar}H${right}`]);
    for (const [from, to] of run.drying)
      marks.push(['hatch', hatch(rectangle(at(from), y, at(to), y + bar), hatchStep)]);
    for (const { step, from, to } of run.laid) {
      const [start, end] = [at(from), at(to)];
      marks.push(['form', `M${start} ${y}H${end}V${y + bar}H${start}z`]);
      if (end - start >= numbered)
        labels.push({
          x: (start + end) / 2,
          y: y + bar / 2 + 4,
          text: String(numberOf(step)),
          of: 'number',
        });
    }
    if (run.to > run.from) marks.push(['ink', `M${left} ${y + bar + 3.5}H${right}`]);
  }
  return { height, marks, labels };
}
