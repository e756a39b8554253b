/** What the second table of the trade is asked and what it answers; see `trade-table.ts`. */
export const elements = [
  'slab',
  'steps',
  'suspended-steps',
  'suspended-slab',
  'wall',
  'soffit',
] as const;
export const depths = [
  'film',
  'under-3',
  '3-to-6',
  '6-to-20',
  '20-to-50',
  'over-50',
  'through',
] as const;
export const loosenesses = [
  'tight',
  'powdery',
  'flaking',
  'fractured',
  'hollow',
  'rotten',
] as const;
export const contaminants = [
  'oil',
  'thin-coating',
  'thick-coating',
  'rubbery-coating',
  'salt-bloom',
  'growth',
] as const;
export const textures = ['smooth', 'sandy', 'pitted'] as const;
export const crackStates = ['none', 'hairline', 'open', 'crumbling', 'moving'] as const;
export const steelStates = ['none-seen', 'rust-stain', 'exposed', 'corroded'] as const;
export const finishes = [
  'sealer',
  'thin-film',
  'build-coat',
  'self-levelling',
  'thin-overlay',
  'overlay',
  'rebuild',
  'undecided',
] as const;

export type TradeMethod =
  | 'pressure-wash'
  | 'grind'
  | 'abrasive-blast'
  | 'scarify'
  | 'shotblast'
  | 'needle-scale'
  | 'break-out';
type Depth = (typeof depths)[number];
export type Looseness = (typeof loosenesses)[number];
export type Contaminant = (typeof contaminants)[number];
export type Texture = (typeof textures)[number];
export type Finish = (typeof finishes)[number];
export type Profile = readonly [least: number, most: number];

export interface TradeSite {
  readonly element: (typeof elements)[number];
  readonly salts: 'none' | 'de-icing' | 'sea-or-pool';
  readonly freezeThaw: 'rare' | 'some' | 'often';
  /** mm */
  readonly thickness: number | 'unknown';
  readonly warnings: readonly string[];
}

export interface TradeZone {
  /** m of wall or post at the edge of a floor. */
  readonly border?: number;
  readonly depth: Depth;
  /** mm, where somebody measured */
  readonly depthMm?: number;
  readonly looseness: Looseness;
  readonly contamination: readonly Contaminant[];
  readonly texture: Texture;
  readonly cracks: (typeof crackStates)[number];
  readonly steel: (typeof steelStates)[number];
  readonly barLoss?: 'within-limit' | 'one-bar' | 'neighbours';
  /** mm */
  readonly barCover?: number | 'unknown';
  /** mm */
  readonly barDiameter?: number | 'unknown';
  readonly finish: Finish;
  /** Least CSP by the data sheet, 1 to 10. */
  readonly makerProfile?: number | 'no-sheet';
  readonly makerMoisture?: 'damp' | 'dry' | 'no-sheet';
  /** m2 */
  readonly area: number | 'unknown';
}

export interface TradeHold {
  readonly what: string;
  readonly verdict: 'stop' | 'find-out-first';
}

export interface TradeSays {
  /** What the page leads with, or will once the holds are cleared. */
  readonly method: TradeMethod;
  /** What the zone needs apart from its bars; the same as `method` where none has to be freed. */
  readonly surface: TradeMethod;
  /** A coated, pitted floor, or one whose profile is past the cutter: shot follows the cutter. */
  readonly thenShotblast: boolean;
  readonly before: readonly ('degrease' | 'strip-coating')[];
  readonly strength: 0 | 1 | 2 | 3;
  readonly verdict: 'prepare' | 'find-out-first' | 'stop';
  readonly holds: readonly TradeHold[];
  /** Whether any step hammers or cuts the face that is bonded to. */
  readonly hammered: boolean;
  readonly bruisedSkin: 'must-go' | 'should-go' | 'may-stay';
  /** With what the bruised skin comes off; empty where there is none, or it may stay. */
  readonly skinOff: readonly ('shotblast' | 'abrasive-or-water' | 'pressure-wash')[];
  /** Least CSP; null while nobody knows what goes on. */
  readonly profileLeast: number | null;
  readonly moisture: 'saturated-surface-dry' | 'dry' | 'ask-maker';
}
