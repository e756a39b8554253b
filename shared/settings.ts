import { figures, type FigureId } from './figures';
import type { MethodId } from './methods';
import facts from './settings.json';
import type { Basis } from './types';

/** What a crew wants to know before it starts a machine. */
export const settingParts = ['tool', 'setting', 'pass', 'stop'] as const;
export type SettingPart = (typeof settingParts)[number];

/** How far a setting can be trusted; where nobody has published one, a trial on the spot sets it. */
export type SettingBasis = Basis | 'test-patch';

/** One line of a method's settings. */
export interface SettingFacts {
  /** The numbers it prints; each has a basis and sources of its own. */
  readonly figures: readonly FigureId[];
  /** What the rest of it rests on, where it says more than its numbers. */
  readonly beyond?: SettingBasis;
  /** Ids from `shared/sources/`; required where the rest is published or reported. */
  readonly source?: readonly string[];
}

/**
 * How each method is set, by id: tool, setting, pass, sign to stop. Numbers stand in
 * `figures/settings.json`; the sentences are in `words/`.
 */
export const settings = facts as Readonly<Record<string, unknown>> as Readonly<
  Record<MethodId, Readonly<Record<SettingPart, SettingFacts>>>
>;

/** A line without numbers that rests on common practice alone. */
export const practised: SettingFacts = { figures: [], beyond: 'practice' };

/** What a line rests on, its numbers first, each basis once. */
export const basesOf = ({
  figures: printed,
  beyond,
}: Pick<SettingFacts, 'figures' | 'beyond'>): readonly SettingBasis[] => [
  ...new Set([...printed.map((id) => figures[id].basis), ...(beyond ? [beyond] : [])]),
];

/** Every figure that the settings of a method print, each once. */
export const settingFigures = (method: MethodId): readonly FigureId[] => [
  ...new Set(settingParts.flatMap((part) => settings[method][part].figures)),
];
