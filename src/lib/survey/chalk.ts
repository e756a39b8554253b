import type { Rectangle } from '$lib/answers/job';
import type { Bay } from './bays';
import { isBox } from './geometry';

/** How far one side of a patch lies from an edge or joint it runs along, mm. */
export interface TapeRead {
  /** Which side of the bay is measured from: the one at the low or at the high end. */
  readonly from: 'low' | 'high';
  readonly distance: number;
}

/**
 * Where to chalk a patch on: along and across, each from the nearer side of its bay. In a bay that
 * is no rectangle both are from the reader's own corner.
 */
export interface Chalk {
  readonly along: TapeRead;
  readonly across: TapeRead;
  readonly measuredIn: 'bay' | 'slab';
}

export function chalkOf({ x, y, length, width }: Rectangle, { ring, box }: Bay): Chalk {
  if (!isBox(ring))
    return {
      along: { from: 'low', distance: x },
      across: { from: 'low', distance: y },
      measuredIn: 'slab',
    };
  return {
    along: nearer(x - box.x0, box.x1 - x - length),
    across: nearer(y - box.y0, box.y1 - y - width),
    measuredIn: 'bay',
  };
}

const nearer = (low: number, high: number): TapeRead =>
  low <= high ? { from: 'low', distance: low } : { from: 'high', distance: high };
