import { atLeast } from '$lib/answers/depth';
import { rangeOf } from '$shared/figures';
import { methods, type MethodId } from '$shared/methods';
import { removalFacts, type Demands } from '$lib/advice/demands';
import type { Reason } from '$lib/advice/types';
import { methodFits } from './fits';

/** The demand a method fails, and the reason in the terms of `words/`. */
export interface Shortfall extends Reason {
  readonly demand: 'place' | 'removal' | 'contaminant' | 'texture' | 'skin' | 'profile' | 'trial';
}

/** One method as a rule: the first demand it fails, or null when it is sufficient. */
export interface MethodRule {
  readonly shortfall: (demands: Demands) => Shortfall | null;
}

/**
 * The profile a method leaves here, CSP lowest and highest.
 * Methods that only clean leave the texture as they found it.
 */
export function profileLeft(
  method: MethodId,
  demands: Pick<Demands, 'texture'>,
): readonly [number, number] {
  const figure = methods[method].profile;
  return rangeOf(figure === 'as-found' ? `csp.found.${demands.texture}` : figure);
}

/** Tools held in the hand that nobody works a large area with. */
const byHand: ReadonlySet<MethodId> = new Set(['grind', 'needle-scale']);

/**
 * Walk-behind machines need a floor that holds them, room to turn, and enough to do there; they
 * seal on flat concrete, so no hole will do.
 * Source: common practice, no published source (figures `place.spot`, `place.wide`).
 */
export function judgePlace(method: MethodId, { place }: Demands): Shortfall | null {
  const { floorsOnly } = methods[method];
  if (place === 'recess' && (floorsOnly || method === 'grind'))
    return { demand: 'place', rule: 'no-machine-in-a-hole' };
  if (place === 'floor-spot' && floorsOnly)
    return { demand: 'place', rule: 'too-small-for-machine', figures: ['place.spot'] };
  if (place !== 'floor' && floorsOnly) return { demand: 'place', rule: 'needs-a-floor' };
  if (place === 'off-floor-wide' && byHand.has(method))
    return { demand: 'place', rule: 'too-large-by-hand', figures: ['place.wide'] };
  return null;
}

/** Loose concrete must go to the depth of the damage; `tight` concrete asks for none, however deep the hollow. */
export function judgeRemoval(method: MethodId, demands: Demands): Shortfall | null {
  const { looseness } = demands.remove;
  if (looseness === 'tight') return null;
  const reach = methodFits[method].removes[looseness];
  if (!reach) return { demand: 'removal', rule: 'leaves-loose', facts: { looseness } };
  const { band } = demands.remove;
  // A slab damaged right through is judged before any method is; here it counts as the deepest band.
  return atLeast(reach, band === 'through' ? 'over-50' : band)
    ? null
    : { demand: 'removal', rule: 'past-its-reach', facts: { ...removalFacts(demands), reach } };
}

/** Every contaminant the steps before it leave behind must be one it clears. */
export function judgeContaminants(method: MethodId, demands: Demands): Shortfall | null {
  const cleared = methodFits[method].contaminants;
  const left = demands.contaminants.filter((contaminant) => !cleared[contaminant]);
  return left.length
    ? { demand: 'contaminant', rule: 'leaves-contaminant', facts: { contamination: left } }
    : null;
}

/** A flat tool rides over pits: they ask for one that reaches below the plane. */
export function judgeTexture(method: MethodId, demands: Demands): Shortfall | null {
  if (!demands.belowPlane || methodFits[method].textures.pitted) return null;
  return { demand: 'texture', rule: 'rides-over-pits' };
}

/** A skin that is closed, or weak, comes off by machine: what only cleans leaves it. */
export function judgeSkin(method: MethodId, { skin }: Demands): Shortfall | null {
  return skin && methods[method].profile === 'as-found'
    ? {
        demand: 'skin',
        rule: skin === 'dusting' ? 'washing-leaves-weak-skin' : 'washing-leaves-closed-skin',
      }
    : null;
}

/**
 * What is left must be rough enough for what goes on; too rough is cured by filling, too smooth is
 * not. A machine is set, so the roughest it leaves counts; what only cleans leaves a texture that is
 * guessed at, so the smoothest of it counts.
 */
export function judgeProfile(method: MethodId, demands: Demands): Shortfall | null {
  if (!demands.profile) return null;
  const figure = methods[method].profile;
  const found = figure === 'as-found';
  const leaves = profileLeft(method, demands)[found ? 0 : 1];
  const [least] = demands.profile;
  if (leaves >= least) return null;
  return {
    demand: 'profile',
    rule: found ? 'texture-not-sure-enough' : 'too-smooth-after',
    facts: { leaves, needs: least },
    figures: [found ? `csp.found.${demands.texture}` : figure],
  };
}

/** The demands in the order a foreman checks them; the first that fails is the one to tell. */
export function judge(method: MethodId, demands: Demands): Shortfall | null {
  return (
    judgePlace(method, demands) ??
    judgeRemoval(method, demands) ??
    judgeContaminants(method, demands) ??
    judgeTexture(method, demands) ??
    judgeSkin(method, demands) ??
    judgeProfile(method, demands)
  );
}
