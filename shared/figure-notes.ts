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
import type { FigureId } from './figures';
import type { Figure } from './types';

/** The files of figures as they stand in `figures/`, for the check. */
export const figureFiles = [
  carbon,
  climate,
  options,
  covering,
  cracks,
  depth,
  dust,
  explain,
  hazards,
  life,
  limits,
  noise,
  pace,
  pages,
  photo,
  profile,
  quantities,
  rates,
  readiness,
  removal,
  settings,
  silica,
  survey,
  tests,
  trial,
  vibration,
];

/** Every figure whole, with its note and its sources, by id. Larger than `figures`: import it where notes are shown. */
export const wholeFigures = Object.assign({}, ...figureFiles) as Readonly<Record<FigureId, Figure>>;
