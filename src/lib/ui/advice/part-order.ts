import type { QuestionId } from '$lib/answers/questions';
import { isMadeNew } from '$lib/advice/made-new';
import { partTitles } from '$words/ui/reader';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Reader } from '$lib/ui/preferences.svelte';

/** The parts of the advice, each of them there for every reader. */
export type PartId = keyof typeof partTitles;

/** What stands together, folded, for a reader who is not the owner. */
export const forOwner = [
  'may',
  'limits',
  'ask',
  'quote',
  'sheet',
] as const satisfies readonly PartId[];

/** What a reader sees first, and what stands open. Nothing is left out, and holds are never folded. */
export interface PartOrder {
  readonly order: readonly PartId[];
  /** The rest is one line each, that opens. */
  readonly open: readonly PartId[];
}

/** Before anything else for everybody: what holds the work, or the test that decides. */
const first = ['holds', 'possible', 'find-out', 'begin'] as const;
const last = ['left-open', 'numbers', 'answers'] as const;

/** The same parts for each way of reading. */
export const partOrders: Readonly<Record<Reader, PartOrder>> = {
  work: {
    order: [
      ...first,
      'cautions',
      'steps',
      'outcomes',
      'reasons',
      'others',
      'margins',
      'target',
      'owner',
      ...last,
    ],
    open: [...first, 'cautions', 'steps'],
  },
  own: {
    order: [
      'may',
      'limits',
      ...first,
      'cautions',
      'ask',
      'quote',
      'sheet',
      'outcomes',
      'reasons',
      'steps',
      'others',
      'margins',
      'target',
      ...last,
    ],
    open: ['holds', 'possible', 'may', 'limits', 'cautions'],
  },
  explain: {
    order: [
      ...first,
      'sheet',
      'reasons',
      'others',
      'margins',
      'outcomes',
      'cautions',
      'steps',
      'target',
      'owner',
      ...last,
    ],
    open: [...first, 'sheet', 'reasons', 'cautions'],
  },
};

/** Whether a strip along whatever stands upright is to be done, of a length nobody has said. */
export const borderOpen = ({ steps }: ZoneAdvice): boolean =>
  steps.some(({ why }) => why.some(({ rule }) => rule === 'border-if-upright'));

/** Parts that have something to say only sometimes. */
const said: Readonly<Partial<Record<PartId, (advice: ZoneAdvice) => boolean>>> = {
  holds: ({ holds }) => holds.length > 0,
  'find-out': ({ findOut }) => findOut.length > 0,
  possible: ({ possibleHolds }) => possibleHolds.length > 0,
  begin: ({ beginning }) => beginning !== null,
  outcomes: ({ outcomes }) => outcomes.length > 1,
  // What holds the work is told with its reasons above.
  reasons: ({ verdict }) => verdict === 'prepare',
  margins: ({ outcomes }) => outcomes.length === 1,
  'left-open': (advice) => advice.assumptions.length > 0 || borderOpen(advice),
  cautions: ({ cautions }) => cautions.length > 0,
  // Of a part that is made new no surface is prepared.
  others: ({ holds }) => !isMadeNew(holds),
  target: ({ holds }) => !isMadeNew(holds),
};

/** Stopped whichever it turns out to be, though nothing is sure to stop it: what it may be is the reason. */
export const stopsEitherWay = ({ verdict, holds }: ZoneAdvice): boolean =>
  verdict === 'stop' && !holds.some((hold) => hold.verdict === 'stop');

/** An owner whom the page tells to keep off is told of no test and no step to do there. */
export const isKeptAway = (reader: Reader, kept: boolean): boolean => kept && reader === 'own';

/**
 * Whether the reader calls the crew, and calls nobody before a test of their own: whoever has not said
 * that they do the work, nothing chosen included.
 */
export const callsTheCrew = (chosen: Reader | null): boolean => chosen !== 'work';

/**
 * The parts of this advice in the order of the reader. The test that decides stands before what
 * only may hold the work, and last where it only stands beside it.
 * @param kept whether people are kept away from it
 */
export function partsFor(
  reader: Reader,
  advice: ZoneAdvice,
  kept: boolean = false,
): readonly PartId[] {
  const away = isKeptAway(reader, kept);
  const parts = partOrders[reader].order
    .filter((id) => said[id]?.(advice) ?? true)
    .filter((id) => !away || id !== 'begin');
  const front = (id: PartId) => [id, ...parts.filter((each) => each !== id)];
  // Why they keep away comes first; what others test there is a row.
  if (away) {
    const why = (['holds', 'possible'] as const).filter((id) => parts.includes(id));
    return [...why, ...parts.filter((id) => !(why as PartId[]).includes(id))];
  }
  if (stopsEitherWay(advice)) return front('possible');
  if (!parts.includes('find-out')) return parts;
  if (advice.verdict === 'find-out-first') return front('find-out');
  const end = parts.findIndex((id) => id === 'answers' || id === 'numbers');
  const rest = parts.filter((id) => id !== 'find-out');
  return [...rest.slice(0, end - 1), 'find-out', ...rest.slice(end - 1)];
}

/** So many of the tests to do next are told with what their results would mean. */
const told = 2;

/** What those tests ask. */
export const nextTests = ({ findOut }: ZoneAdvice): readonly QuestionId[] =>
  findOut.slice(0, told).map(({ question }) => question);
