import { atLeast } from '$lib/answers/depth';
import type { DepthBand } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import { methods, type MethodId } from '$shared/methods';
import type { Demands } from '$lib/advice/demands';
import type { Reason } from '$lib/advice/types';

/** The demand a method fails, and the reason in the terms of `words/`. */
export interface Shortfall extends Reason {
  readonly demand: 'place' | 'removal' | 'contaminant' | 'texture' | 'profile';
}

/** One method as a rule: the first demand it fails, or null when it is sufficient. */
export interface MethodRule {
  readonly id: MethodId;
  readonly shortfall: (demands: Demands) => Shortfall | null;
}

/**
 * The profile a method leaves here, CSP lowest and highest.
 * Methods that only clean leave the texture as they found it.
 */
export function profileLeft(
  method: MethodId,
  texture: Demands['texture'],
): readonly [number, number] {
  const figure = methods[method].profile;
  return rangeOf(figure === 'as-found' ? `csp.found.${texture}` : figure);
}

/** Walk-behind machines need a floor that holds them and room to turn. */
export function judgePlace(method: MethodId, demands: Demands): Shortfall | null {
  return methods[method].floorsOnly && !demands.floor
    ? { demand: 'place', rule: 'needs-a-floor' }
    : null;
}

/** Loose concrete must go to the depth of the damage; `tight` concrete asks for none, however deep the hollow. */
export function judgeRemoval(method: MethodId, demands: Demands): Shortfall | null {
  const { band, looseness } = demands.remove;
  if (looseness === 'tight') return null;
  const reach = methods[method].removes[looseness] as DepthBand | undefined;
  if (!reach) return { demand: 'removal', rule: 'leaves-loose', facts: { looseness } };
  // A slab damaged right through is judged before any method is; here it counts as the deepest band.
  return atLeast(reach, band === 'through' ? 'over-50' : band)
    ? null
    : { demand: 'removal', rule: 'past-its-reach', facts: { looseness, depth: band, reach } };
}

/** Every contaminant the steps before it leave behind must be one it clears. */
export function judgeContaminants(method: MethodId, demands: Demands): Shortfall | null {
  const cleared = methods[method].contaminants;
  const left = demands.contaminants.filter((contaminant) => !cleared.includes(contaminant));
  return left.length
    ? { demand: 'contaminant', rule: 'leaves-contaminant', facts: { contamination: left } }
    : null;
}

/** A flat tool rides over low spots: pits and open cracks ask for one that reaches below the plane. */
export function judgeTexture(method: MethodId, demands: Demands): Shortfall | null {
  if (!demands.belowPlane || methods[method].textures.includes('pitted')) return null;
  return {
    demand: 'texture',
    rule: demands.belowPlane === 'pits' ? 'rides-over-pits' : 'rides-over-cracks',
  };
}

/** What is left must be rough enough for the finish; too rough is cured by filling, too smooth is not. */
export function judgeProfile(method: MethodId, demands: Demands): Shortfall | null {
  if (!demands.profile) return null;
  const [, roughest] = profileLeft(method, demands.texture);
  const [least] = demands.profile;
  if (roughest >= least) return null;
  const figure = methods[method].profile;
  return {
    demand: 'profile',
    rule: 'too-smooth-after',
    facts: { leaves: roughest, needs: least },
    figures: [figure === 'as-found' ? `csp.found.${demands.texture}` : figure],
  };
}

/** The demands in the order a foreman checks them; the first that fails is the one to tell. */
export function judge(method: MethodId, demands: Demands): Shortfall | null {
  return (
    judgePlace(method, demands) ??
    judgeRemoval(method, demands) ??
    judgeContaminants(method, demands) ??
    judgeTexture(method, demands) ??
    judgeProfile(method, demands)
  );
}
