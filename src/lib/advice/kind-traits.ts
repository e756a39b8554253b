import type { Contaminant } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';
import { kindsOf, plainSite, plainZone, type DepthState, type Kinds } from './completions';
import { demandsOf, hasCoating, isFloor, opensBelow, type Demands } from './demands';
import { fullDepthHold, reachOf } from './holds';
import { judgeProfile, judgeRemoval } from './methods/judge';
import { isBonded } from './steps/work';
import type { SettledSite } from './types';

/** A number for each value: the same number where the trait is the same. */
function numbered<T>(values: readonly T[], trait: (value: T) => unknown): Int32Array {
  const names = values.map((value) => JSON.stringify(trait(value)) ?? '');
  const different = [...new Set(names)];
  return Int32Array.from(names, (name) => different.indexOf(name));
}

const pairs = <A, B>(ones: readonly A[], others: readonly B[]): (A & B)[] =>
  ones.flatMap((one) => others.map((other) => ({ ...one, ...other })));

/** Growth is cleared by every method; it only asks for a step before. */
const notGrowth = (set: readonly Contaminant[]) => set.filter((each) => each !== 'growth');

/**
 * What every kind brings to the choice of method, and to what follows it, as numbers: equal numbers
 * are kinds between which that rule cannot tell. Found by asking the rules themselves, one kind at a time.
 */
export function traitsOf(kinds: Kinds, base: Pick<SettledSite, 'thickness' | 'setting'>) {
  const site = { ...plainSite, ...base };
  const { element, depthAndLooseness: loose, contamination: dirt, texture, finish } = kinds;
  // Of cracks, only whether they open below the plane takes part in the choice of method.
  const cracks = kindsOf(
    kinds.cracks.map(({ value }) => value),
    (value) => `${opensBelow(value)}`,
  );
  const sufficient = (judge: typeof judgeRemoval, demands: Partial<Demands>) =>
    methodIds.map((method) => !judge(method, demands as Demands));
  const holdOf = (state: DepthState) => fullDepthHold(site, { ...plainZone, ...state });
  const textures = texture.map(({ value }) => ({ texture: value }));
  const finishes = finish.map(({ value }) => ({ finish: value }));
  const opens = cracks.map(({ value }) => ({ cracks: value }));
  return {
    cracks,
    floor: numbered(element, ({ value }) => isFloor(value)),
    /** Which methods get the loose concrete off. */
    removal: numbered(loose, ({ value: { depth: band, looseness } }) =>
      sufficient(judgeRemoval, { remove: { band, looseness } }),
    ),
    depthHold: loose.map(({ value }) => holdOf(value)),
    /** Whether it is past a surface repair, and whether it goes where tendons may lie. */
    deep: numbered(loose, ({ value }) => [
      holdOf(value)?.rule,
      reachOf({ ...plainZone, ...value }, null, {}).deep,
    ]),
    cleared: numbered(dirt, ({ value }) => notGrowth(value)),
    /** What else the dirt asks for: a degreasing, a stripping, a caution. */
    dirt: numbered(dirt, ({ value: contamination }) => {
      const { oil, heavyCoating } = demandsOf(plainSite, { ...plainZone, contamination });
      return [oil, heavyCoating, contamination.includes('growth'), hasCoating(contamination)];
    }),
    /** By texture, then crack. */
    below: numbered(
      pairs(textures, opens),
      (low) => demandsOf(plainSite, { ...plainZone, ...low }).belowPlane,
    ),
    /** By texture, then finish: which methods leave the roughness wanted. */
    profile: numbered(pairs(textures, finishes), (look) =>
      sufficient(judgeProfile, demandsOf(plainSite, { ...plainZone, ...look })),
    ),
    bonded: numbered(finishes, (look) => isBonded({ ...plainZone, ...look })),
  };
}
