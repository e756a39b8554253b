import type { Contaminant, DepthBand, Looseness, Texture } from '$lib/answers/questions';
import methodFacts from '$shared/methods.json';
import type { MethodId } from '$shared/methods';

/** What of the answers a method is equal to. */
interface MethodFit {
  /** The deepest band from which it clears concrete so loosened; null where it does not. */
  readonly removes: Readonly<Record<Exclude<Looseness, 'tight'>, DepthBand | null>>;
  readonly contaminants: Readonly<Record<Contaminant, boolean>>;
  /** Surface textures it reaches all of. */
  readonly textures: Readonly<Record<Texture, boolean>>;
}

/** Keys of the facts that no answer has any more; the compiler wants there to be none. */
type Gone<Part extends keyof MethodFit> = {
  [M in MethodId]: Exclude<keyof (typeof methodFacts)[M][Part], keyof MethodFit[Part]>;
}[MethodId];
const noneGone = <T extends never>(..._gone: readonly T[]): void => undefined;
noneGone<Gone<'removes'> | Gone<'contaminants'> | Gone<'textures'>>();

/**
 * The facts about methods, as far as they speak of answers. A choice that is added to the answers
 * and not to `shared/methods.json`, or the other way round, does not compile here.
 */
export const methodFits: Readonly<Record<MethodId, MethodFit>> = methodFacts;
