import type { Drawing, Mark } from '$lib/drawing/mark';
import { circlePath } from '$lib/drawing/points';

/** One step as the strip shows it. */
export interface StripStep {
  /** Name of the part of the job, where a new part begins. */
  readonly stage?: string;
  readonly name: string;
  /** Drying before it, in a few words. */
  readonly wait?: string;
  /** Whether it is done in each zone, in the order of the job. */
  readonly zones: readonly boolean[];
  /** Places in the strip of the steps it comes after. */
  readonly after: readonly number[];
}

/** A word on the sheet; y is its foot. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly of: 'stage' | 'step' | 'number' | 'wait' | 'zone' | 'lane' | 'day' | 'on';
}

export interface Strip {
  readonly height: number;
  readonly marks: Drawing;
  readonly labels: readonly Label[];
}

/** Sheet units across; on a phone about one to a pixel. */
export const stripWidth = 320;
/** More zones than this are drawn as a share of a bar. */
export const mostColumns = 8;
const row = 30;
const stageRow = 26;
const waitRow = 22;
const nodeX = 46;
const radius = 10;
const textX = 64;
const zonesX = 230;
const column = 11;
const top = 22;

/** The order of work from top to bottom: a node for each step, arrows from what it waits for, a mark for each zone. */
export function orderStrip(steps: readonly StripStep[]): Strip {
  const labels: Label[] = [];
  const marks: Mark[] = [];
  const many = (steps[0]?.zones.length ?? 0) > mostColumns;
  const places: number[] = [];
  let y = top;
  for (const [index, step] of steps.entries()) {
    if (step.stage) {
      labels.push({ x: textX, y: y + 16, text: step.stage, of: 'stage' });
      y += stageRow;
      marks.push(['fine', `M${textX} ${y - 5}H${stripWidth - 2}`]);
    }
    if (step.wait) {
      labels.push({ x: textX, y: y + 14, text: step.wait, of: 'wait' });
      marks.push(['fine', drop(nodeX, y + 4)]);
      y += waitRow;
    }
    const middle = y + row / 2;
    places.push(middle);
    for (const from of step.after) marks.push(...arrow(places[from] ?? middle, middle));
    labels.push({ x: nodeX, y: middle + 4, text: String(index + 1), of: 'number' });
    labels.push({ x: textX, y: middle + 4.5, text: step.name, of: 'step' });
    marks.push(...(many ? shareBar(step.zones, middle) : squares(step.zones, middle)));
    y += row;
  }
  for (const middle of places) marks.push(['form', circlePath([nodeX, middle], radius)]);
  if (!many)
    for (const index of steps[0]?.zones.keys() ?? [])
      labels.push({
        x: zonesX + index * column + 4,
        y: top - 8,
        text: String(index + 1),
        of: 'zone',
      });
  return { height: y + 6, marks, labels };
}

/** A drop of water: time to dry. */
const drop = (x: number, y: number): string => `M${x} ${y}c4 5 5 7 5 9a5 5 0 0 1-10 0c0-2 1-4 5-9z`;

/** From the step before to the next: straight to a neighbour, else round the outside. */
function arrow(from: number, to: number): Mark[] {
  const [start, end] = [from + radius, to - radius];
  const near = to - from <= row + 1;
  const out = Math.min(nodeX - radius - 4, 12 + (to - from) / 12);
  const line = near
    ? `M${nodeX} ${start}V${end}`
    : `M${nodeX - radius} ${from}C${nodeX - radius - out} ${from} ${nodeX - radius - out} ${to} ${nodeX - radius - 3} ${to}`;
  const head = near ? `M${nodeX} ${end}l-3.5-6h7z` : `M${nodeX - radius} ${to}l-6-3.5v7z`;
  return [
    ['fine', line],
    ['solid', head],
  ];
}

/** A filled square for a zone it is done in, a dot for one it is not. */
const squares = (zones: readonly boolean[], middle: number): Mark[] =>
  zones.map((there, index): Mark => {
    const x = zonesX + index * column;
    return there
      ? ['solid', `M${x} ${middle - 4}h8v8h-8z`]
      : ['tone', circlePath([x + 4, middle], 1.5)];
  });

/** How large a part of the zones it is done in. */
function shareBar(zones: readonly boolean[], middle: number): Mark[] {
  const width = stripWidth - 4 - zonesX;
  const share = zones.filter(Boolean).length / zones.length;
  return [
    ['form', `M${zonesX} ${middle - 5}h${width}v10h-${width}z`],
    [
      'solid',
      `M${zonesX} ${middle - 5}h${(width * share).toFixed(1)}v10h-${(width * share).toFixed(1)}z`,
    ],
  ];
}
