import { bandOf, rangeOfBand } from '$lib/answers/depth';
import { showsBar } from '$lib/advice/demands';
import { holeRange, onlyBreakingReaches } from '$lib/advice/hole';
import type { NumberAnswer, OneAnswer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type {
  Contaminant,
  Cracks,
  Element,
  Looseness,
  Steel,
  Texture,
} from '$lib/answers/questions';
import { valueOf } from '$shared/figures';

/** What preparing is to leave; the target of an advice fits here as it is. */
export interface SectionTarget {
  /** CSP lowest and highest the method leaves. */
  readonly leaves?: readonly [number, number] | null;
  /** Least clear space behind a freed bar, mm. */
  readonly behindBar?: number;
  /** Only what is found is drawn: the hole that breaking out leaves would tell what is to be done. */
  readonly asFound?: boolean;
}

/** What is known of the cross-section so far. Null: not answered, or more than one thing possible. */
export interface SectionState {
  readonly element: Element;
  /** mm; the usual thickness where it is not known */
  readonly thickness: number;
  readonly thicknessKnown: boolean;
  /** Least and most depth of the damage still possible, mm; null before the question. */
  readonly depth: readonly [least: number, most: number] | null;
  readonly looseness: Looseness | null;
  readonly coatings: readonly Contaminant[];
  readonly texture: Texture | null;
  readonly cracks: Cracks | null;
  readonly steel: Steel | null;
  /** Mean CSP that will be left, where the method is known. */
  readonly profile: number | null;
  readonly behindBar: number | null;
  /** mm of concrete over the bar, and the bar's diameter, where they were measured. */
  readonly barCover: number | null;
  readonly barDiameter: number | null;
  /** What is broken out, where it is broken out. */
  readonly hole: Hole | null;
}

/** How deep the finished hole may come to, mm; no deeper than a known thickness. */
export interface Hole {
  readonly least: number;
  readonly most: number;
  /** At its deepest it goes right through. */
  readonly through: boolean;
  /** mm into sound concrete below the damage; the rest of it lies round a bar. */
  readonly beyond: number;
}

const only = <C extends string>(answer: OneAnswer<C> | undefined): C | null =>
  answer?.length === 1 ? answer[0] : null;

const measured = (answer: NumberAnswer | undefined): number | null =>
  typeof answer === 'number' && answer > 0 ? answer : null;

/** The hole that breaking out will leave; null where nothing is surely broken out. */
function holeOf(site: SiteAnswers, zone: ZoneAnswers): Hole | null {
  const looseness = only(zone.looseness);
  const steel = only(zone.steel) ?? 'none-seen';
  const { depth } = zone;
  if (!looseness || depth === undefined) return null;
  const thickness = site.thickness ?? 'unknown';
  const [barCover, barDiameter] = [measured(zone.barCover), measured(zone.barDiameter)];
  const cases = (typeof depth === 'number' ? [bandOf(depth, thickness)] : depth).map((band) => ({
    depth: band,
    ...(typeof depth === 'number' && { depthMm: depth }),
    looseness,
    steel,
    ...(barCover !== null && { barCover }),
    ...(barDiameter !== null && { barDiameter }),
  }));
  const breaks = looseness !== 'tight' && cases.every(onlyBreakingReaches);
  if (cases.some((each) => each.depth === 'through') || !(breaks || showsBar({ steel })))
    return null;
  const ranges = cases.map((each) => holeRange(thickness, each));
  const deepest = typeof thickness === 'number' && thickness > 0 ? thickness : Infinity;
  const most = Math.max(...ranges.map(([, each]) => each));
  return {
    least: Math.min(deepest, ...ranges.map(([least]) => least)),
    most: Math.min(deepest, most),
    through: most >= deepest,
    beyond: breaks ? valueOf('patch.into-sound') : 0,
  };
}

/** Reads what can be drawn from the answers, whatever is still open. */
export function sectionState(
  site: SiteAnswers,
  zone: ZoneAnswers,
  target: SectionTarget = {},
): SectionState {
  const given = site.thickness;
  const known = typeof given === 'number' && given > 0;
  const thickness = known ? given : valueOf('thickness.usual-slab');
  const depth = zone.depth;
  const bands =
    depth === undefined || typeof depth === 'number'
      ? []
      : depth.map((band) => rangeOfBand(band, thickness));
  const open = bands.length > 0;
  return {
    element: only(site.element) ?? 'slab',
    thickness,
    thicknessKnown: known,
    depth:
      typeof depth === 'number'
        ? [Math.min(depth, thickness), Math.min(depth, thickness)]
        : open
          ? [Math.min(...bands.map(([least]) => least)), Math.max(...bands.map(([, most]) => most))]
          : null,
    looseness: only(zone.looseness),
    coatings: zone.contamination?.yes ?? [],
    texture: only(zone.texture),
    cracks: only(zone.cracks),
    steel: only(zone.steel),
    profile: target.leaves ? (target.leaves[0] + target.leaves[1]) / 2 : null,
    behindBar: target.behindBar ?? null,
    barCover: measured(zone.barCover),
    barDiameter: measured(zone.barDiameter),
    hole: target.asFound ? null : holeOf(site, zone),
  };
}
