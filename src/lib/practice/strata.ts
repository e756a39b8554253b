import type {
  BarLoss,
  Contaminant,
  Cracks,
  DepthBand,
  Element,
  Finish,
  Looseness,
  Steel,
  Texture,
  Warning,
} from '$lib/answers/questions';
import type { holdRules } from '$lib/advice/rules';
import type { Advice } from '$lib/advice/types';
import type { MethodId } from '$shared/methods';
import { adviceOn, type Case } from './case';

/** What to draw among, so that a case of some kind is found soon. */
export interface Lean {
  readonly element?: readonly Element[];
  readonly depth?: readonly DepthBand[];
  readonly looseness?: readonly Looseness[];
  readonly contamination?: readonly Contaminant[];
  readonly texture?: readonly Texture[];
  readonly cracks?: readonly Cracks[];
  readonly steel?: readonly Steel[];
  readonly barLoss?: readonly BarLoss[];
  readonly finish?: readonly Finish[];
  readonly warning?: Warning;
  readonly thickness?: 'known' | 'unknown';
  /** A spot by hand, what no hand grinds, or a size between. */
  readonly size?: Size;
  /** Whether the reader has the data sheet of what goes on. */
  readonly sheet?: boolean;
}

/** How large a zone is, by the limits the ladders turn on. */
export type Size = 'spot' | 'usual' | 'wide';

const floors = ['slab', 'suspended-slab'] as const;
const deep = ['20-to-50', 'over-50'] as const;
const carrying = ['suspended-slab', 'suspended-steps', 'wall', 'soffit'] as const;
const loose = ['fractured', 'hollow', 'rotten'] as const;

/**
 * The methods the advice can come to, each with where it is found.
 * Water jetting is never first advice, so no case has it as its answer.
 */
export const methodLeans = {
  'pressure-wash': { depth: ['film'], looseness: ['tight', 'powdery'] },
  grind: { depth: ['film', 'under-3'], looseness: ['tight', 'powdery', 'flaking'] },
  'abrasive-blast': {
    element: ['steps', 'suspended-steps', 'wall', 'soffit'],
    depth: ['film', 'under-3', '3-to-6'],
    looseness: ['tight', 'powdery', 'flaking', 'fractured'],
  },
  'needle-scale': {
    element: ['steps', 'suspended-steps', 'wall', 'slab', 'suspended-slab'],
    depth: ['under-3', '3-to-6'],
    looseness: ['flaking', 'fractured', 'hollow'],
    size: 'spot',
  },
  scarify: {
    element: floors,
    depth: ['film', 'under-3', '3-to-6'],
    looseness: ['tight', 'powdery', 'flaking', 'fractured'],
    contamination: ['thick-coating', 'rubbery-coating', 'salt-bloom', 'oil'],
    texture: ['smooth', 'sandy'],
  },
  shotblast: {
    element: floors,
    depth: ['film', 'under-3', '3-to-6'],
    texture: ['sandy', 'pitted'],
  },
  'break-out': { element: ['slab', 'steps'], depth: ['6-to-20', ...deep], looseness: loose },
} as const satisfies Partial<Record<MethodId, Lean>>;

/** In a case for practice nothing is open, every depth has been measured, and there is one zone. */
export const neverPractised = [
  'answers-differ',
  'hollow-unmeasured',
  'same-part-in-doubt',
] as const;
type HoldRule = Exclude<(typeof holdRules)[number], (typeof neverPractised)[number]>;

/** What can stand before the work, each with where it is found. */
export const holdLeans = {
  'structure-before-removal': { element: carrying, depth: deep, looseness: loose },
  'tendons-before-depth': {
    element: ['slab'],
    depth: ['6-to-20', ...deep],
    looseness: loose,
    warning: 'tendons-possible',
  },
  'settled-or-rocking': { element: ['slab', 'steps'], warning: 'settled-or-rocking' },
  'moving-crack': { cracks: ['moving'] },
  'rust-with-salts': { steel: ['rust-stain'], depth: ['film', 'under-3'] },
  'rust-at-crack': { steel: ['rust-stain'], cracks: ['hairline', 'open'], depth: ['film'] },
  'nothing-over-rust': {
    steel: ['rust-stain'],
    cracks: ['none'],
    finish: ['sealer', 'thin-film', 'build-coat'],
    depth: ['film'],
  },
  'bloom-under-dry-finish': {
    contamination: ['salt-bloom'],
    finish: ['sealer', 'thin-film', 'build-coat', 'self-levelling'],
    depth: ['film', 'under-3'],
  },
  'fire-or-chemical': { warning: 'fire-or-chemical' },
  'map-cracking': { cracks: ['hairline', 'open'], warning: 'map-cracking' },
  'old-coating': {
    depth: ['film', 'under-3'],
    contamination: ['thin-coating', 'thick-coating', 'rubbery-coating'],
    warning: 'old-coating-or-adhesive',
  },
  'buried-services': { element: ['slab', 'steps'], warning: 'buried-services' },
  'full-depth': { element: ['slab', 'steps'], depth: deep, looseness: loose, thickness: 'known' },
  through: { element: ['slab', 'steps'], depth: ['through'], looseness: loose },
  'thickness-decides': {
    element: ['slab', 'steps'],
    depth: ['20-to-50', 'over-50'],
    looseness: loose,
    thickness: 'unknown',
  },
  'bar-section-loss': {
    depth: deep,
    steel: ['corroded'],
    barLoss: ['one-bar', 'neighbours'],
    element: ['slab', 'steps'],
  },
} as const satisfies Record<HoldRule, Lean>;

/** What else there is to learn, each with where it is found; all of it work that may be done. */
export const turnLeans = {
  'sheet-decides': { depth: ['film'], looseness: ['tight', 'powdery'], sheet: true },
  'spot-by-hand': { element: floors, depth: ['film', 'under-3', '3-to-6'], size: 'spot' },
  'wide-off-floor': {
    element: ['wall', 'soffit', 'suspended-steps'],
    depth: ['film', 'under-3'],
    size: 'wide',
  },
  'suspended-steps': { element: ['suspended-steps'], depth: ['film', 'under-3', '3-to-6'] },
  'bar-leads': {
    element: ['slab', 'steps'],
    depth: ['20-to-50'],
    looseness: ['tight'],
    texture: ['pitted'],
    steel: ['exposed', 'corroded'],
    thickness: 'known',
  },
} as const satisfies Record<string, Lean>;
export type Turn = keyof typeof turnLeans;

/** A kind of case: what its advice has to come to. */
export type Stratum =
  | { readonly kind: 'turn'; readonly id: Turn }
  | { readonly kind: 'method'; readonly id: keyof typeof methodLeans }
  | { readonly kind: 'hold'; readonly id: HoldRule };

const methodStrata = (Object.keys(methodLeans) as (keyof typeof methodLeans)[]).map(
  (id): Stratum => ({ kind: 'method', id }),
);
const holdStrata = (Object.keys(holdLeans) as HoldRule[]).map((id): Stratum => ({
  kind: 'hold',
  id,
}));

const turnStrata = (Object.keys(turnLeans) as Turn[]).map((id): Stratum => ({ kind: 'turn', id }));

/** One round of kinds: every method three times, every turn and every hold once, so that most cases are worked on. */
export const round: readonly Stratum[] = [
  ...methodStrata,
  ...methodStrata,
  ...methodStrata,
  ...turnStrata,
  ...holdStrata,
];

export const leanOf = ({ kind, id }: Stratum): Lean =>
  kind === 'method' ? methodLeans[id] : kind === 'turn' ? turnLeans[id] : holdLeans[id];

/** Whether a case takes such a turn, and may be worked on. */
const turns: Readonly<Record<Turn, (one: Case, advice: Advice) => boolean>> = {
  'sheet-decides': (one, advice) => sheetDecides(one, advice),
  'spot-by-hand': (_, advice) =>
    advice.rejections.some(({ rule }) => rule === 'too-small-for-machine'),
  'wide-off-floor': (_, advice) =>
    advice.rejections.some(({ rule }) => rule === 'too-large-by-hand'),
  'suspended-steps': ({ site }) => site.element === 'suspended-steps',
  'bar-leads': (_, { beside }) => beside !== null,
};

/** Whether the usual table would have come to another method than the data sheet does. */
export function sheetDecides(one: Case, advice: Advice): boolean {
  const { makerProfile, makerMoisture, ...zone } = one.zone;
  if (makerProfile === undefined && makerMoisture === undefined) return false;
  return adviceOn({ ...one, zone }).method !== advice.method;
}

/** Whether a case is of that kind: for a hold, the gravest one counts. */
export function isOf(one: Case, { kind, id }: Stratum): boolean {
  const advice = adviceOn(one);
  if (kind === 'hold') return advice.holds[0]?.rule === id;
  if (kind === 'method') return advice.method === id;
  return advice.verdict === 'prepare' && turns[id](one, advice);
}
