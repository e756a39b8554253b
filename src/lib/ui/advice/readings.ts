import { partTitles } from '$lib/words/en/ui/reading';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Reader } from '$lib/ui/preferences.svelte';

/** The parts of the advice, each of them there for every reader. */
export type PartId = keyof typeof partTitles;

/** What a reader sees first, and what is folded. Nothing is left out, and holds are never folded. */
export interface Reading {
  readonly order: readonly PartId[];
  readonly folded: readonly PartId[];
}

/** The same parts for each way of reading. */
export const readings: Readonly<Record<Reader, Reading>> = {
  work: {
    order: [
      'holds',
      'find-out',
      'begin',
      'outcomes',
      'possible',
      'steps',
      'cautions',
      'target',
      'reasons',
      'others',
      'margins',
      'left-open',
      'limits',
      'ask',
      'quote',
      'sheet',
      'numbers',
      'answers',
    ],
    folded: ['limits', 'ask', 'quote', 'numbers'],
  },
  own: {
    order: [
      'holds',
      'limits',
      'find-out',
      'begin',
      'outcomes',
      'possible',
      'ask',
      'quote',
      'sheet',
      'cautions',
      'steps',
      'reasons',
      'others',
      'left-open',
      'margins',
      'target',
      'numbers',
      'answers',
    ],
    folded: ['steps', 'others', 'margins', 'target', 'numbers'],
  },
  explain: {
    order: [
      'sheet',
      'holds',
      'reasons',
      'others',
      'outcomes',
      'possible',
      'margins',
      'find-out',
      'left-open',
      'begin',
      'numbers',
      'target',
      'steps',
      'cautions',
      'ask',
      'quote',
      'limits',
      'answers',
    ],
    folded: ['steps', 'cautions', 'target', 'ask', 'quote', 'limits'],
  },
};

/** Whether a strip along whatever stands upright is to be done, of a length nobody has said. */
export const borderOpen = ({ steps }: ZoneAdvice): boolean =>
  steps.some(({ why }) => why.some(({ rule }) => rule === 'border-if-upright'));

/** Parts that have something to say only sometimes. */
const said: Readonly<Partial<Record<PartId, (advice: ZoneAdvice) => boolean>>> = {
  'find-out': ({ findOut }) => findOut.length > 0,
  possible: ({ possibleHolds }) => possibleHolds.length > 0,
  begin: ({ beginning }) => beginning !== null,
  outcomes: ({ outcomes }) => outcomes.length > 1,
  // What holds the work is told with its reasons above.
  reasons: ({ verdict }) => verdict === 'prepare',
  margins: ({ outcomes }) => outcomes.length === 1,
  'left-open': (advice) => advice.assumptions.length > 0 || borderOpen(advice),
  cautions: ({ cautions }) => cautions.length > 0,
};

/** Stopped whichever it turns out to be, though nothing is sure to stop it: what it may be is the reason. */
export const stopsEitherWay = ({ verdict, holds }: ZoneAdvice): boolean =>
  verdict === 'stop' && !holds.some((hold) => hold.verdict === 'stop');

/**
 * The parts of this advice in the order of the reader. What is to be found out comes early while it
 * decides, and late where it only stands beside the work.
 */
export function partsFor(reader: Reader, advice: ZoneAdvice): readonly PartId[] {
  const parts = readings[reader].order.filter((id) => said[id]?.(advice) ?? true);
  if (stopsEitherWay(advice)) return ['possible', ...parts.filter((id) => id !== 'possible')];
  if (advice.verdict !== 'prepare' || !parts.includes('find-out')) return parts;
  return [
    ...parts.filter((id) => id !== 'find-out' && id !== 'answers' && id !== 'numbers'),
    'find-out',
    ...parts.filter((id) => id === 'answers' || id === 'numbers'),
  ];
}
