import { rangeOf } from '$shared/figures';
import type { Contaminant, Cracks, DepthBand, Looseness, Texture } from '$lib/answers/questions';
import type { SettledSite, SettledZone } from './types';

/** What the zone asks of a method. A method is sufficient when it meets every one of these. */
export interface Demands {
  /** Floors carry walk-behind machines; steps, walls and soffits get hand tools. */
  readonly floor: boolean;
  /** How deep loose concrete goes, and how it holds. Nothing is to be removed where it is `tight`. */
  readonly remove: { readonly band: DepthBand; readonly looseness: Looseness };
  /** What has to be cleared by the method itself, after the steps before it have done their part. */
  readonly contaminants: readonly Contaminant[];
  /** Oil, coatings: what was there before any step, since it can rule a method out all the same. */
  readonly oil: boolean;
  readonly stripped: boolean;
  readonly heavyCoating: boolean;
  /** The low spots must be reached too: pits, or cracks that are open. */
  readonly belowPlane: 'pits' | 'cracks' | null;
  readonly texture: Texture;
  /** CSP the finish accepts; null while undecided. */
  readonly profile: readonly [number, number] | null;
}

const floors = {
  slab: true,
  'suspended-slab': true,
  steps: false,
  wall: false,
  soffit: false,
} as const;

const profileFigure = {
  sealer: 'csp.needs.sealer',
  'thin-film': 'csp.needs.thin-film',
  'build-coat': 'csp.needs.build-coat',
  'self-levelling': 'csp.needs.self-levelling',
  'thin-overlay': 'csp.needs.thin-overlay',
  overlay: 'csp.needs.overlay',
  rebuild: 'csp.needs.rebuild',
} as const;

/** The figure that says which profile a finish needs; null while the finish is undecided. */
export const profileFigureOf = (finish: SettledZone['finish']) =>
  finish === 'undecided' ? null : profileFigure[finish];

/** Whether a crack is a low spot that a flat tool rides over. */
export const opensBelow = (cracks: Cracks): boolean => cracks === 'open' || cracks === 'crumbling';

/** Whether any coating, thin or heavy, is among what is on it. */
export const hasCoating = (contamination: readonly Contaminant[]): boolean =>
  contamination.some((contaminant) => contaminant.endsWith('-coating'));

/** Whether walk-behind machines can stand and turn here. */
export const isFloor = (element: SettledSite['element']): boolean => floors[element];

/**
 * The demands of a zone, from its answers.
 * Source: common practice, no published source, except the profile (figures `csp.needs.*`).
 */
export function demandsOf(site: SettledSite, zone: SettledZone): Demands {
  const floor = isFloor(site.element);
  const has = (contaminant: Contaminant) => zone.contamination.includes(contaminant);
  const heavyCoating = has('thick-coating') || has('rubbery-coating');
  const figure = profileFigureOf(zone.finish);
  return {
    floor,
    remove: { band: zone.depth, looseness: zone.looseness },
    // Degreasing comes before any method, and off floors a heavy coating is scraped off before.
    contaminants: zone.contamination.filter(
      (contaminant) =>
        contaminant !== 'oil' &&
        (floor || (contaminant !== 'thick-coating' && contaminant !== 'rubbery-coating')),
    ),
    oil: has('oil'),
    stripped: !floor && heavyCoating,
    heavyCoating: floor && heavyCoating,
    belowPlane: zone.texture === 'pitted' ? 'pits' : opensBelow(zone.cracks) ? 'cracks' : null,
    texture: zone.texture,
    profile: figure && rangeOf(figure),
  };
}
