import carbon from './figures/carbon.json';
import climate from './figures/climate.json';
import options from './figures/owner-options.json';
import covering from './figures/covering.json';
import cracks from './figures/cracks.json';
import depth from './figures/depth.json';
import dust from './figures/dust.json';
import explain from './figures/explain.json';
import hazards from './figures/hazards.json';
import life from './figures/life.json';
import limits from './figures/limits.json';
import noise from './figures/noise.json';
import pace from './figures/pace.json';
import pages from './figures/pages.json';
import photo from './figures/photo.json';
import profile from './figures/profile.json';
import quantities from './figures/quantities.json';
import rates from './figures/rates.json';
import readiness from './figures/readiness.json';
import removal from './figures/removal.json';
import settings from './figures/settings.json';
import silica from './figures/silica.json';
import survey from './figures/survey.json';
import tests from './figures/tests.json';
import trial from './figures/trial.json';
import vibration from './figures/vibration.json';
import type { FigureNumbers } from './types';

const all = {
  ...carbon,
  ...climate,
  ...options,
  ...covering,
  ...cracks,
  ...depth,
  ...dust,
  ...explain,
  ...hazards,
  ...life,
  ...limits,
  ...noise,
  ...pace,
  ...pages,
  ...photo,
  ...profile,
  ...quantities,
  ...rates,
  ...readiness,
  ...removal,
  ...settings,
  ...silica,
  ...survey,
  ...tests,
  ...trial,
  ...vibration,
};
export type FigureId = keyof typeof all;

/**
 * Every figure's number, unit and basis, by id; notes and sources are in `figure-notes.ts`, which
 * a page loads only when it shows them. Checked by `check.ts` at build and in a test.
 */
export const figures = all as Readonly<Record<string, unknown>> as Readonly<
  Record<FigureId, FigureNumbers>
>;

/** A reader's own values, laid over the figures. */
export type OwnFigures = Readonly<Partial<Record<FigureId, number>>>;

/**
 * The single value of a figure, in the figure's unit; the reader's own value wins.
 * @throws Error when the figure is a range: asking for one number of a range would hide its spread.
 */
export function valueOf(id: FigureId, own?: OwnFigures): number {
  const value = own?.[id] ?? figures[id].value;
  if (value === undefined) throw new Error(`${id} is a range; use rangeOf`);
  return value;
}

/** The range of a figure, in the figure's unit; a single value is a range of no width. */
export function rangeOf(id: FigureId, own?: OwnFigures): readonly [number, number] {
  const given = own?.[id];
  if (given !== undefined) return [given, given];
  const { range, value } = figures[id];
  if (range) return range;
  if (value !== undefined) return [value, value];
  throw new Error(`${id} has neither value nor range`);
}
