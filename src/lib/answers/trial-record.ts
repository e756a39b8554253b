import type { MethodId } from '$shared/methods';
import type { ZoneAnswers } from './answers';
import type { Entry } from './readiness-record';

/**
 * What a reader found on a square metre tried before the work: plain data, kept with its zone.
 * Holds findings only; what follows from them is worked out again each time. Everything is
 * optional, so that a patch half typed in is kept as it stands.
 */

/** What became of the stones in the face. */
export const stoneIds = ['none-seen', 'cut', 'pulled-out', 'torn'] as const;
export type StoneId = (typeof stoneIds)[number];

/** What the scraper and a wiping hand still take off the cleaned patch. */
export const leftIds = ['nothing', 'dust', 'more'] as const;
export type LeftId = (typeof leftIds)[number];

/** How the patch sounds under the hammer afterwards. */
export const afterSounds = ['clear', 'dull'] as const;
export type AfterSound = (typeof afterSounds)[number];

export const barSeen = ['no', 'yes'] as const;
export type BarSeen = (typeof barSeen)[number];

/** One patch as it was tried. */
export interface PatchTried {
  /** Id of the method. */
  readonly method: string;
  /** Place on the method's ladder of settings, gentlest 0. */
  readonly notch: number;
  /** Passes over it in all. */
  readonly passes: number;
  /** m2; a square metre when absent. */
  readonly area?: Entry;
  /** Minutes the tool ran, all passes together. */
  readonly minutes?: Entry;
  /** mm below the old surface, at up to five places. */
  readonly depths?: readonly Entry[];
  /** CSP of the chip that comes nearest, 1 to 10. */
  readonly profile?: number;
  readonly stones?: StoneId;
  readonly left?: LeftId;
  readonly bar?: BarSeen;
  readonly sound?: AfterSound;
}

/** A method that test patches have settled not to be the one here. Never kept: read anew from the patches. */
export interface TriedOut {
  readonly method: MethodId;
  /** It takes off too much at its gentlest, too little at its harshest, or both at once. */
  readonly because: 'too-much' | 'too-little' | 'both';
  /** What the patch showed, most telling first: ids of `trial/outcome.ts`. */
  readonly why: readonly string[];
}

/** Whether what keeps people off a part is sure, or only possible. */
export type PartInDoubt = 'surely' | 'perhaps';

/** The answers of a zone with what its test patches, and the other zones of its part, have settled beside them. */
export type TriedAnswers = ZoneAnswers & {
  /**
   * Another zone of the same part keeps people off all of it, surely or by answers still open there.
   * Never kept: worked out anew.
   */
  readonly partInDoubt?: PartInDoubt;
  readonly triedOut?: readonly TriedOut[];
  /** Why a test patch of the advised method stopped: ids of `trial/outcome.ts`; absent where none did. */
  readonly stopped?: readonly string[];
};
