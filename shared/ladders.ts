import { figures, type FigureId } from './figures';
import facts from './ladders.json';
import type { Basis } from './types';

/** What is set on a tool before it is tried. */
export const settingIds = [
  'pressure',
  'fan',
  'distance',
  'grit',
  'segments',
  'nozzle-pressure',
  'angle',
  'cutters',
  'pass-depth',
  'shot',
  'travel',
  'needles',
  'hammer',
  'chisel',
] as const;
export type SettingId = (typeof settingIds)[number];

/** Settings that have no number worth printing: by kind, as the trade says them. */
export const settingWords = ['star', 'tipped', 'walking', 'slow'] as const;
export type SettingWord = (typeof settingWords)[number];

/** One setting of a notch: a number of the trade by id, or a word where there is no number. */
export interface Setting {
  readonly setting: SettingId;
  readonly figure?: FigureId;
  /** Which number of a range; absent where the figure is one number, or the whole range is meant. */
  readonly end?: 'low' | 'typical' | 'high';
  readonly word?: SettingWord;
}

/**
 * Settings of a method from gentle to harsh. Neighbours differ in one setting only, so that a try
 * changes one thing. Coarse: what a person can set by hand and see on a square metre. Never a
 * maker's setting. Source: numbers by figure; their order is common practice, no published source.
 */
export interface Ladder {
  /** What stays as it is on every notch. */
  readonly kept: readonly Setting[];
  /** The notch a try begins with. */
  readonly begin: number;
  readonly notches: readonly (readonly Setting[])[];
}

export type LadderId = keyof typeof facts;
export const ladderIds = Object.keys(facts) as LadderId[];

export const settingLadders = facts as Readonly<Record<string, unknown>> as Readonly<
  Record<LadderId, Ladder>
>;

/** The number, or numbers, of a setting, in its figure's unit; null where a word says it. */
export function numbersOf({ figure, end }: Setting): readonly [number, number] | null {
  if (!figure) return null;
  const { value, range, typical } = figures[figure];
  if (value !== undefined) return [value, value];
  const [low, high] = range as readonly [number, number];
  const one = { low, high, typical: typical ?? (low + high) / 2 };
  return end ? [one[end], one[end]] : [low, high];
}

/** How far a setting can be trusted; a word of the trade is common practice. */
export const basisOf = ({ figure }: Setting): Basis =>
  figure ? figures[figure].basis : 'practice';
