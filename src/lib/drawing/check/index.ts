import type { CheckId } from '$lib/answers/readiness-record';
import type { Drawing } from '$lib/drawing/mark';
import * as inside from './inside';
import * as surface from './surface';

/** A drawing for every check before covering, on a sheet of 120 by 72: a missing one does not compile. */
export const checkDrawings: Readonly<Record<CheckId, () => Drawing>> = {
  sounding: surface.sounding,
  edges: surface.edges,
  'bars-free': inside.barsFree,
  'bars-clean': inside.barsClean,
  chloride: inside.chloride,
  carbonation: inside.carbonation,
  'half-cell': inside.halfCell,
  profile: surface.profile,
  'pull-off': surface.pullOff,
  ph: surface.ph,
  'dust-tape': surface.dustTape,
  'water-drop': surface.waterDrop,
  absorption: surface.absorption,
  'plastic-sheet': inside.plasticSheet,
  humidity: inside.humidity,
  'surface-damp': inside.surfaceDamp,
  'slurry-ph': inside.slurryPh,
  'fill-cured': surface.fillCured,
  'dew-point': surface.dewPoint,
  'open-time': surface.openTime,
};
