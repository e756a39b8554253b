/** The answers that are varied in the walks, and what they are put together to. */
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { bandOf } from '$lib/answers/depth';
import { choicesOf, type Contaminant } from '$lib/answers/questions';

/** Every set of some choices; bit i stands for the i-th. */
export const setsOf = <C>(choices: readonly C[]): C[][] =>
  Array.from({ length: 1 << choices.length }, (_, bits) =>
    choices.filter((_each, index) => bits & (1 << index)),
  );

export const element = choicesOf('element');
export const depth = choicesOf('depth');
export const looseness = choicesOf('looseness');
export const texture = choicesOf('texture');
export const finish = choicesOf('finish');
export const contaminants = choicesOf('contamination');
export const contamination = setsOf<Contaminant>(contaminants);
/** m2: under 1, 1 to 10, over 10, each at its edge, so that an edge that moves is seen; and nobody knows. */
export const area = [0.99, 1, 10.1, 'unknown'] as const;
/** mm */
export const thickness = [60, 80, 100, 150, 'unknown'] as const;
/** mm, where somebody measured: with 13 mm into sound concrete just short of half of one of those, or at it. */
export const measured = [2, 5, 16.5, 17, 26, 27, 36.5, 37, 61, 62, 90] as const;
export const grades = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;
export const moistures = [undefined, 'damp', 'dry'] as const;

export const plainSite: SettledSite = {
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'some',
  thickness: 'unknown',
  warnings: [],
};
export const plain: SettledZone = {
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  area: 4,
};

export type Answers = Partial<SettledSite & SettledZone>;

/** A site and a zone from some answers; the rest is plain, and what is undefined was not said. */
export function settled(answers: { readonly [K in keyof Answers]: Answers[K] | undefined }): {
  site: SettledSite;
  zone: SettledZone;
} {
  const said: Answers = Object.fromEntries(
    Object.entries(answers).filter(([, one]) => one !== undefined),
  );
  const { depthMm } = said;
  if (depthMm !== undefined)
    Object.assign(said, { depth: bandOf(depthMm, said.thickness ?? 'unknown') });
  const { element, setting, salts, freezeThaw, thickness, warnings, ...zone } = {
    ...plainSite,
    ...plain,
    ...said,
  } as SettledSite & SettledZone;
  return { site: { element, setting, salts, freezeThaw, thickness, warnings }, zone };
}
