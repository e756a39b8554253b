/**
 * What a reader typed while checking a prepared surface: plain data, kept with the job.
 * Holds results and circumstances only; every verdict is worked out from it again.
 * A value that could not be read stays as the text that was typed, so that nothing is lost.
 */

/**
 * The checks, in the order in which they are done: what the washed face shows, then, under what
 * wants it damp, the wetting and the last look; under what wants it dry, the moisture test, the
 * last vacuuming and the tape. The clock comes last, since it runs from the last cleaning on.
 */
export const checkIds = [
  'sounding',
  'edges',
  'bars-free',
  'bars-clean',
  'chloride',
  'carbonation',
  'half-cell',
  'slurry-ph',
  'ph',
  'profile',
  'pull-off',
  'water-drop',
  'absorption',
  'fill-cured',
  'plastic-sheet',
  'humidity',
  'dust-tape',
  'surface-damp',
  'dew-point',
  'open-time',
] as const;
export type CheckId = (typeof checkIds)[number];

/** A number in the check's engine unit, the id of a choice, or text that could not be read. */
export type Reading = number | string;

/** A number in engine units, or text that could not be read. */
export type Entry = number | string;

/** The method, depth and looseness that the results were taken under; absent in older records. */
interface Taken {
  readonly under?: readonly string[];
}

export interface CheckResult extends Taken {
  readonly readings: readonly Reading[];
  /** Circumstances a reading is judged by: `cover` mm, `rinse` pH, `aggregate` mm, `air` C, `humidity` percent. */
  readonly given?: Readonly<Partial<Record<GivenId, Entry>>>;
}

export const givenIds = ['cover', 'rinse', 'aggregate', 'air', 'humidity'] as const;
export type GivenId = (typeof givenIds)[number];

/** Where a pulled disc came away. */
export const planes = ['base', 'bond', 'repair', 'glue'] as const;
export type Plane = (typeof planes)[number];

/** One pull-off test: the stress, or the force with the disc's diameter, and where it broke. */
export interface PullOffTest {
  /** MPa */
  readonly stress?: Entry;
  /** kN */
  readonly force?: Entry;
  /** mm */
  readonly disc?: Entry;
  /** Share of the break in each plane, percent; together 100. */
  readonly shares: Readonly<Partial<Record<Plane, Entry>>>;
}

/** Where the strength that is asked for comes from. */
export const requirementIds = [
  'overlay-control',
  'german-repair',
  'own',
  'product-r4',
  'product-r3',
  'product-r2',
] as const;
export type RequirementId = (typeof requirementIds)[number];

export interface Requirement {
  readonly id: RequirementId;
  /** MPa, for `own`: the least mean. */
  readonly mean?: Entry;
  /** MPa: the least single result, where the specification has one. */
  readonly least?: Entry;
}

export interface PullOffRecord extends Taken {
  readonly tests: readonly PullOffTest[];
  readonly requirement?: Requirement;
}

/** What makes a prepared surface stale before its time. */
export const spoilers = ['rain', 'dust', 'traffic'] as const;
export type Spoiler = (typeof spoilers)[number];

export interface ClockRecord {
  /** When the last cleaning ended: date and time, ISO 8601. */
  readonly prepared?: string;
  readonly spoiled: readonly { readonly by: Spoiler; readonly at: string }[];
}

/** Everything typed about one zone. */
export interface ReadinessRecord {
  /** Whole number the test places are drawn from; printed, so that anyone can draw them again. */
  readonly seed: number;
  /** m; absent when only the area is known. */
  readonly length?: Entry;
  readonly width?: Entry;
  /** The reader's own number of tests. */
  readonly counts?: Readonly<Partial<Record<CheckId, Entry>>>;
  /** Checks the specification asks for beyond those the answers call for. */
  readonly asked?: readonly CheckId[];
  readonly results: Readonly<Partial<Record<CheckId, CheckResult>>>;
  readonly pullOff?: PullOffRecord;
  readonly clock?: ClockRecord;
  /** Who checked. */
  readonly by?: string;
  /** When it was checked: date and time, ISO 8601. */
  readonly at?: string;
  readonly note?: string;
}
