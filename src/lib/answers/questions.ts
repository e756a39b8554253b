/**
 * Every question of the interview, as one table: what it is about, how it is answered,
 * and the choices it has. Everything else about answers (types, file format, state machine)
 * is derived from here. Sentences live in `words/`, rules in `advice/`.
 */
export const questions = {
  element: {
    scope: 'site',
    kind: 'one',
    choices: ['slab', 'steps', 'suspended-steps', 'suspended-slab', 'wall', 'soffit'],
  },
  setting: { scope: 'site', kind: 'one', choices: ['indoors', 'sheltered', 'open'] },
  salts: { scope: 'site', kind: 'one', choices: ['none', 'de-icing', 'sea-or-pool'] },
  freezeThaw: { scope: 'site', kind: 'one', choices: ['rare', 'some', 'often'] },
  thickness: { scope: 'site', kind: 'number', unit: 'mm', limit: 'limit.thickness' },
  warnings: {
    scope: 'site',
    kind: 'many',
    choices: [
      'settled-or-rocking',
      'holds-something-up',
      'tendons-possible',
      'fire-or-chemical',
      'map-cracking',
      'old-coating-or-adhesive',
      'buried-services',
    ],
  },
  depth: {
    scope: 'zone',
    kind: 'depth',
    choices: ['film', 'under-3', '3-to-6', '6-to-20', '20-to-50', 'over-50', 'through'],
    unit: 'mm',
    limit: 'limit.depth',
  },
  looseness: {
    scope: 'zone',
    kind: 'one',
    choices: ['tight', 'powdery', 'flaking', 'fractured', 'hollow', 'rotten'],
  },
  contamination: {
    scope: 'zone',
    kind: 'many',
    choices: ['oil', 'thin-coating', 'thick-coating', 'rubbery-coating', 'salt-bloom', 'growth'],
  },
  texture: { scope: 'zone', kind: 'one', choices: ['smooth', 'sandy', 'pitted'] },
  cracks: {
    scope: 'zone',
    kind: 'one',
    choices: ['none', 'hairline', 'open', 'crumbling', 'moving'],
  },
  crackLength: { scope: 'zone', kind: 'number', unit: 'm', limit: 'limit.crack-length' },
  steel: {
    scope: 'zone',
    kind: 'one',
    choices: ['none-seen', 'rust-stain', 'exposed', 'corroded'],
  },
  barLoss: { scope: 'zone', kind: 'one', choices: ['within-limit', 'one-bar', 'neighbours'] },
  barCover: { scope: 'zone', kind: 'number', unit: 'mm', limit: 'limit.bar-cover' },
  barDiameter: { scope: 'zone', kind: 'number', unit: 'mm', limit: 'limit.bar-diameter' },
  barSpacing: { scope: 'zone', kind: 'number', unit: 'mm', limit: 'limit.bar-spacing' },
  barLength: { scope: 'zone', kind: 'number', unit: 'm', limit: 'limit.bar-length' },
  finish: {
    scope: 'zone',
    kind: 'one',
    choices: [
      'sealer',
      'thin-film',
      'build-coat',
      'self-levelling',
      'thin-overlay',
      'overlay',
      'rebuild',
      'undecided',
    ],
  },
  /** The least roughness the maker's data sheet asks for; the file has the grade as a number. */
  makerProfile: {
    scope: 'zone',
    kind: 'one',
    choices: [
      'no-sheet',
      'csp-1',
      'csp-2',
      'csp-3',
      'csp-4',
      'csp-5',
      'csp-6',
      'csp-7',
      'csp-8',
      'csp-9',
      'csp-10',
    ],
  },
  makerMoisture: { scope: 'zone', kind: 'one', choices: ['no-sheet', 'damp', 'dry'] },
  area: { scope: 'zone', kind: 'number', unit: 'm2', limit: 'limit.area' },
  borderLength: { scope: 'zone', kind: 'number', unit: 'm', limit: 'limit.border-length' },
} as const;

export type Questions = typeof questions;
export type QuestionId = keyof Questions;

type OfKind<K extends string> = {
  [Q in QuestionId]: Questions[Q]['kind'] extends K ? Q : never;
}[QuestionId];
type OfScope<S extends string> = {
  [Q in QuestionId]: Questions[Q]['scope'] extends S ? Q : never;
}[QuestionId];

export type OneQuestion = OfKind<'one'>;
export type ManyQuestion = OfKind<'many'>;
export type NumberQuestion = OfKind<'number'>;
export type DepthQuestion = OfKind<'depth'>;
export type SiteQuestion = OfScope<'site'>;
export type ZoneQuestion = OfScope<'zone'>;

/** The choices of a question that has choices. */
export type Choice<Q extends QuestionId> = Questions[Q] extends {
  choices: readonly (infer C extends string)[];
}
  ? C
  : never;

export type Element = Choice<'element'>;
export type Setting = Choice<'setting'>;
export type Salts = Choice<'salts'>;
export type FreezeThaw = Choice<'freezeThaw'>;
export type Warning = Choice<'warnings'>;
export type DepthBand = Choice<'depth'>;
export type Looseness = Choice<'looseness'>;
export type Contaminant = Choice<'contamination'>;
export type Texture = Choice<'texture'>;
export type Cracks = Choice<'cracks'>;
export type Steel = Choice<'steel'>;
export type BarLoss = Choice<'barLoss'>;
export type Finish = Choice<'finish'>;
export type MakerProfile = Choice<'makerProfile'>;
export type MakerMoisture = Choice<'makerMoisture'>;

export const questionIds = Object.keys(questions) as QuestionId[];
/** Asked only after a rarer answer: a crack, a bar that shows, a data sheet at hand. */
export const followUps: readonly QuestionId[] = [
  'crackLength',
  'barLoss',
  'barCover',
  'barDiameter',
  'barSpacing',
  'barLength',
  'makerMoisture',
];
export const siteQuestionIds = questionIds.filter(
  (id) => questions[id].scope === 'site',
) as SiteQuestion[];
export const zoneQuestionIds = questionIds.filter(
  (id) => questions[id].scope === 'zone',
) as ZoneQuestion[];

/** The choices of a question, in the order they are shown; empty for a typed number. */
export function choicesOf<Q extends QuestionId>(id: Q): readonly Choice<Q>[] {
  const question = questions[id];
  return ('choices' in question ? question.choices : []) as unknown as readonly Choice<Q>[];
}
