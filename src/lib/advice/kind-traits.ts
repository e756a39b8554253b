import type { Contaminant } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';
import { kindsOf, plainSite, plainZone, type fixedOf, type Kinds } from './completions';
import {
  demandsOf,
  hasCoating,
  isBonded,
  isFilm,
  isFirmHollow,
  opensBelow,
  showsBar,
  type Demands,
} from './demands';
import { fullDepthHold } from './hole';
import { reachOf } from './holds';
import { judgeProfile, judgeRemoval, judgeTexture } from './methods/judge';
import { moistureOf } from './sheet';
import type { SettledSite, SettledZone } from './types';

export type Fixed = ReturnType<typeof fixedOf>;

/** A number for each value: the same number where the trait is the same. */
function numbered<T>(values: readonly T[], trait: (value: T) => unknown): Int32Array {
  const names = values.map((value) => JSON.stringify(trait(value)) ?? '');
  const different = [...new Set(names)];
  return Int32Array.from(names, (name) => different.indexOf(name));
}

const pairs = <A, B>(ones: readonly A[], others: readonly B[]): (A & B)[] =>
  ones.flatMap((one) => others.map((other) => ({ ...one, ...other })));

/** Growth and salt bloom are cleared by every method; they only ask for something beside it. */
const stubborn = (set: readonly Contaminant[]) =>
  set.filter((each) => each !== 'growth' && each !== 'salt-bloom');

/**
 * What every kind brings to the choice of method, and to what follows it, as numbers: equal numbers
 * are kinds between which that rule cannot tell. Found by asking the rules themselves, one kind at a time.
 */
export function traitsOf(
  kinds: Kinds,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  fixed: Fixed,
) {
  const site = { ...plainSite, ...base };
  const zoneOf = (part: Partial<SettledZone>): SettledZone => ({ ...plainZone, ...fixed, ...part });
  const { element, depthAndLooseness: loose, contamination: dirt, texture, finish } = kinds;
  // Of cracks, only whether they are open takes part in the choice of method; of steel, whether it shows.
  const cracks = kindsOf(
    kinds.cracks.map(({ value }) => value),
    (value) => `${opensBelow(value)}`,
  );
  const bars = kindsOf(
    kinds.steel.map(({ value }) => value),
    (value) => `${showsBar(value)}`,
  );
  const sufficient = (judge: typeof judgeRemoval, demands: Partial<Demands>) =>
    methodIds.map((method) => !judge(method, demands as Demands));
  const textures = texture.map(({ value }) => ({ texture: value }));
  const finishes = finish.map(({ value }) => ({ finish: value }));
  const looks = pairs(textures, finishes);
  const states = loose.map(({ value }) => value);
  /** By element, then depth and looseness, then bar: whether the hole goes too deep. */
  const depthHolds = element.flatMap(({ value }) =>
    states.flatMap((state) =>
      bars.map((bar) =>
        fullDepthHold({ ...site, element: value }, zoneOf({ ...state, ...bar.value })),
      ),
    ),
  );
  return {
    cracks,
    bars,
    /** By element, then depth and looseness, then finish: what can stand there. */
    place: numbered(
      pairs(
        element.map(({ value }) => ({ element: value })),
        pairs(states, finishes),
      ),
      (at) => demandsOf({ ...site, element: at.element }, zoneOf(at)).place,
    ),
    /** Which methods get the loose concrete off. */
    removal: numbered(states, ({ depth: band, looseness }) =>
      sufficient(judgeRemoval, { remove: { band, looseness } }),
    ),
    depthHolds,
    /** The same holds by number. */
    depthAs: numbered(depthHolds, (hold) => [hold?.rule, hold?.facts]),
    /** Whether it goes where tendons may lie, and how it holds: what steps and holds can tell apart. */
    deep: numbered(states, (state) => [
      reachOf(zoneOf(state), null, {}).deep,
      state.looseness === 'tight',
      state.looseness === 'hollow',
      isFirmHollow({ ...state, finish: 'rebuild' }),
    ]),
    cleared: numbered(dirt, ({ value }) => stubborn(value)),
    /** What else the dirt asks for: a degreasing, a stripping, a caution, a hold. */
    dirt: numbered(dirt, ({ value: contamination }) => {
      const { oil, heavyCoating } = demandsOf(plainSite, { ...plainZone, contamination });
      const has = (each: Contaminant) => contamination.includes(each);
      return [oil, heavyCoating, has('growth'), has('salt-bloom'), hasCoating(contamination)];
    }),
    bloom: dirt.map(({ value }) => value.includes('salt-bloom')),
    /** By texture, then finish: which methods leave the roughness wanted. */
    profile: numbered(looks, (look) => [
      sufficient(judgeProfile, demandsOf(site, zoneOf(look))),
      sufficient(judgeTexture, demandsOf(site, zoneOf(look))),
    ]),
    /** By depth and looseness, then texture, then finish: whether washing leaves a skin. */
    skin: numbered(pairs(states, looks), (at) => demandsOf(site, zoneOf(at)).skin),
    /** What the finish changes beside the method: bond, moisture, the hiding of rust, the end of the work. */
    finishing: numbered(finishes, (look) => {
      const zone = zoneOf(look);
      return [
        isBonded(zone),
        isFilm(zone),
        zone.finish === 'sealer',
        moistureOf(zone),
        zone.finish === 'undecided',
        zone.finish === 'rebuild',
      ];
    }),
  };
}
