/**
 * Every rule the advice can name, by group. `words/` holds one sentence for each;
 * a rule without a sentence does not compile.
 */
export const choiceRules = [
  // Why this method.
  'meets-all',
  'nothing-to-remove',
  'thin-weak-skin',
  'skims-to-sound',
  'cuts-to-sound',
  'reaches-into-pits',
  'lifts-coating',
  'lifts-coating-then-pits',
  'profile-without-bruises',
  'steps-up-for-profile',
  'deep-or-loose-in-depth',
  'off-floor-blast',
  'oil-rules-out-washing',
  'after-stripping',
  'takes-off-thin-coating',
] as const;

export const rejectionRules = [
  // Why not that one.
  'leaves-loose',
  'past-its-reach',
  'leaves-contaminant',
  'washing-spreads-oil',
  'glazes-coating',
  'shot-bounces',
  'rides-over-pits',
  'rides-over-cracks',
  'too-smooth-after',
  'needs-a-floor',
  'washing-after-stripping',
  'would-bruise-sound-concrete',
  'harsher-than-needed',
  'not-on-this-ladder',
  'specialist-alternative',
  'held',
] as const;

export const stepRules = [
  // Why a step is there.
  'does-the-removal',
  'oil-before-anything',
  'growth-first',
  'coating-by-scraper',
  'sound-before-cutting',
  'square-edge',
  'shallow-edge-unsawn',
  'past-the-damage',
  'hairline-rout-or-bridge',
  'hairline-tap-first',
  'open-rout-or-chase',
  'open-in-frost-chase',
  'crumbling-chase',
  'bar-undercut',
  'bar-clean-may-stay',
  'bar-follow-rust',
  'bar-light-hammer',
  'stain-look-beneath',
  'salts-at-steel',
  'sound-again',
  'machine-leaves-border',
  'pits-under-coating',
  'bruised-skin-must-go',
  'bruised-skin-should-go',
  'bruised-skin-wash-will-do',
  'dust-off',
  'wash-everything',
  'too-rough-fill-first',
  'prove-it',
  'damp-not-wet',
  'dry-for-coating',
  'finish-undecided',
  'cover-within-a-day',
  'light-hammer-here',
  'several-passes',
  'dry-before-shot',
  'depth-past-third',
  'soaked-oil-must-go',
  'make-safe-first',
  'engine-outside',
  'salt-bloom-off',
  'thickness-unknown',
  'water-jet-alternative',
  'measure-the-bar',
] as const;

export const holdRules = [
  // Why the work must wait.
  'structure-before-removal',
  'tendons-before-depth',
  'settled-or-rocking',
  'moving-crack',
  'fire-or-chemical',
  'map-cracking',
  'old-coating',
  'buried-services',
  'full-depth',
  'through',
  'thickness-decides',
  'bar-section-loss',
  'answers-differ',
] as const;

export type RuleId =
  | (typeof choiceRules)[number]
  | (typeof rejectionRules)[number]
  | (typeof stepRules)[number]
  | (typeof holdRules)[number];

export const ruleIds: readonly RuleId[] = [
  ...choiceRules,
  ...rejectionRules,
  ...stepRules,
  ...holdRules,
];
