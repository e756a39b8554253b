import type { Drawing } from '$lib/drawing/mark';
import type { StepId } from '$shared/methods';
import * as breaking from './break';
import * as check from './check';
import * as cover from './cover';
import * as skim from './skim';
import * as water from './water';

/** A drawing for every method and every step around it: a missing one does not compile. */
export const methodDrawings: Readonly<Record<StepId, () => Drawing>> = {
  'pressure-wash': water.pressureWash,
  grind: skim.grind,
  'abrasive-blast': skim.abrasiveBlast,
  scarify: skim.scarify,
  shotblast: skim.shotblast,
  'needle-scale': skim.needleScale,
  'break-out': breaking.breakOut,
  'water-jet': water.waterJet,
  'make-safe': check.makeSafe,
  degrease: water.degrease,
  'strip-growth': water.stripGrowth,
  'strip-coating': breaking.stripCoating,
  'sound-and-mark': check.soundAndMark,
  'tap-crack': breaking.tapCrack,
  'saw-cut': breaking.sawCut,
  'chase-crack': breaking.chaseCrack,
  'route-crack': breaking.routeCrack,
  'free-bar': breaking.freeBar,
  're-sound': check.reSound,
  'edge-work': skim.edgeWork,
  'blast-clean': skim.blastClean,
  'clean-bar': breaking.cleanBar,
  vacuum: check.vacuum,
  'final-wash': water.finalWash,
  'fill-level': check.fillLevel,
  'check-ready': check.checkReady,
  'wet-or-dry': water.wetOrDry,
  'fill-cure': cover.fillCure,
  'moisture-test': cover.moistureTest,
  'last-clean': cover.lastClean,
  cover: cover.cover,
  cure: cover.cure,
};
