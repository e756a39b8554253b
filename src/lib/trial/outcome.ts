/** Why a try goes on as it does. Sentences are in `words/`. */
export const whyIds = [
  'meets-all',
  'too-smooth',
  'too-rough',
  'rough-as-found',
  'still-dusts',
  'still-loose',
  'stones-pulled-out',
  'bruised',
  'too-deep',
  'over-deep',
  'bar-heavy-hammer',
  'bar-unexpected',
  'hollow-below',
  'no-sound-base',
  'past-partial-depth',
] as const;
export type WhyId = (typeof whyIds)[number];

export const outcomeKinds = [
  'go-on',
  'finer',
  'harsher',
  'another-pass',
  'other-method',
  'stop',
] as const;
export type OutcomeKind = (typeof outcomeKinds)[number];

/** How grave an outcome is: 0 goes on, 1 tries again with one change, 2 another method, 3 stops. */
export const graveness: Readonly<Record<OutcomeKind, 0 | 1 | 2 | 3>> = {
  'go-on': 0,
  finer: 1,
  harsher: 1,
  'another-pass': 1,
  'other-method': 2,
  stop: 3,
};

/** What a patch comes to. */
export interface Outcome {
  readonly kind: OutcomeKind;
  /** Most telling first; never empty. */
  readonly why: readonly [WhyId, ...WhyId[]];
  /** The notch and the passes of the next try; absent where there is none. */
  readonly next?: { readonly notch: number; readonly passes: number };
  /** Another method because this takes off too much, too little, or both at once. */
  readonly because?: 'too-much' | 'too-little' | 'both';
  /** The ladder had no notch left on that side, or a notch already tried lies there. */
  readonly ladderEnded?: true;
}
