import type { Entry } from '$lib/answers/readiness-record';
import type { AfterSound, BarSeen, LeftId, PatchTried, StoneId } from '$lib/answers/trial-record';
import { rangeOf, valueOf, type FigureId } from '$shared/figures';

/** A patch about which enough is known to say what comes next. */
export interface Found {
  readonly notch: number;
  readonly passes: number;
  /** m2 */
  readonly area: number;
  /** Absent where nobody timed it: the result counts all the same, the rate learns nothing. */
  readonly minutes?: number;
  /** mm, one to five */
  readonly depths: readonly number[];
  readonly profile?: number;
  readonly stones: StoneId;
  readonly left: LeftId;
  readonly bar: BarSeen;
  readonly sound: AfterSound;
}

/** What has still to be looked at before a patch can be read. */
export type Missing = 'depths' | 'stones' | 'left' | 'bar' | 'sound';

/** The limits of what is typed; outside them it is a slip of the keyboard, and counts as not typed. */
export const entryLimits = {
  area: 'limit.trial-area',
  minutes: 'limit.trial-minutes',
  depth: 'limit.depth',
} as const satisfies Record<string, FigureId>;

/** An entry that is a number within its limits; undefined otherwise. */
export function numberIn(
  entry: Entry | undefined,
  what: keyof typeof entryLimits,
): number | undefined {
  const [low, high] = rangeOf(entryLimits[what]);
  return typeof entry === 'number' && entry >= low && entry <= high ? entry : undefined;
}

/**
 * A patch as it can be read, or what is missing. Minutes and chip may be left out; depths may not,
 * since only they tell too deep from too little: a pass that took nothing is 0.
 */
export function foundOn(patch: PatchTried): Found | { readonly missing: readonly Missing[] } {
  const depths = patch.depths?.flatMap((depth) => numberIn(depth, 'depth') ?? []) ?? [];
  const { stones, left, bar, sound, notch, passes, profile } = patch;
  if (!depths.length || !stones || !left || !bar || !sound) {
    const missing: Missing[] = [];
    if (!depths.length) missing.push('depths');
    if (!stones) missing.push('stones');
    if (!left) missing.push('left');
    if (!bar) missing.push('bar');
    if (!sound) missing.push('sound');
    return { missing };
  }
  const minutes = numberIn(patch.minutes, 'minutes');
  return {
    notch,
    passes,
    area: numberIn(patch.area, 'area') ?? valueOf('trial.area'),
    ...(minutes !== undefined && { minutes }),
    depths,
    ...(profile !== undefined && { profile }),
    stones,
    left,
    bar,
    sound,
  };
}

export const isFound = (found: ReturnType<typeof foundOn>): found is Found => 'depths' in found;

/** Mean of the depths measured, mm. */
export const meanDepth = ({ depths }: Pick<Found, 'depths'>): number =>
  depths.reduce((sum, depth) => sum + depth, 0) / depths.length;

export const deepest = ({ depths }: Pick<Found, 'depths'>): number => Math.max(...depths);
