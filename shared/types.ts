/** How far a figure can be trusted, from strongest to weakest. Shown to the reader beside the figure. */
export const bases = ['published', 'reported', 'memory', 'practice', 'derived'] as const;
export type Basis = (typeof bases)[number];

/** Every unit a figure in `shared/figures/` may carry. Engine units only; US units appear at the edges. */
export const units = [
  'mm',
  'm',
  'm2',
  'm3',
  'm3/h',
  'm2/h',
  'm/h',
  'h',
  'h/m3',
  'min',
  'd',
  'y',
  'kg',
  'kg/m3',
  'kg/kg',
  'kgCO2e/m3',
  'kgCO2e/kg',
  'kgCO2e/t km',
  't',
  'km',
  'L',
  'L/m',
  'L/m2',
  'L/min',
  'A',
  'y',
  'dB(A)',
  'dB',
  'm/s2',
  'points',
  'MPa',
  'mV',
  'pH',
  'ppm',
  'ug/m3',
  'percent',
  'CSP',
  'C',
  'degree',
  'count',
  'ratio',
  'm3/min',
  'm3/min per mm',
  'bar',
  'kN',
  'mm water',
  'K',
  'index',
  'MB',
] as const;
export type Unit = (typeof units)[number];

/** How much of the source was read for a figure. */
export const extents = ['whole', 'excerpt', 'second-hand'] as const;
export type Extent = (typeof extents)[number];

/** The numbers a figure can have; each may stand on another basis than the figure as a whole. */
export const figureParts = ['value', 'low', 'high', 'typical'] as const;
export type FigurePart = (typeof figureParts)[number];

/** What is reckoned with: a single `value`, or a `range` with an optional `typical` inside it. */
export interface FigureNumbers {
  readonly unit: Unit;
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly typical?: number;
  readonly basis: Basis;
}

/** One fact of the trade, with where it comes from. */
export interface Figure extends FigureNumbers {
  /** Where a number stands on another basis than `basis`, such as one end of a range, or the typical value. */
  readonly partBasis?: Readonly<Partial<Record<FigurePart, Basis>>>;
  /** How much of the source was read; absent where nobody wrote it down. */
  readonly seen?: Extent;
  /** Ids from `shared/sources/`. Required when the basis is published or reported. */
  readonly source?: readonly string[];
  /** What the reader needs to know to use it; for a derived figure, the arithmetic. */
  readonly note?: string;
}

/** Where a figure comes from. */
export interface Source {
  readonly title: string;
  readonly by: string;
  readonly year?: number;
  readonly kind: 'standard' | 'regulation' | 'guide' | 'research' | 'manual' | 'trade' | 'data';
  readonly note?: string;
}
