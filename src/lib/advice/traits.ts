import type { Contaminant } from '$lib/answers/questions';
import { methodIds } from '$shared/methods';
import { gather, plainSite, plainZone, type fixedOf, type Possibilities } from './completions';
import {
  demandsOf,
  hasCoating,
  isBonded,
  isFilm,
  isFirmHollow,
  isStiff,
  opensBelow,
  showsBar,
  type Demands,
} from './demands';
import { fullDepthHold, onlyBreakingReaches } from './hole';
import { isDeep, isHollowUnmeasured } from './holds';
import { judgeProfile, judgeRemoval, judgeTexture } from './methods/judge';
import { isFloor } from './place';
import { moistureOf } from './sheet';
import type { SettledSite, SettledZone } from './types';

export type Fixed = ReturnType<typeof fixedOf>;

/** A number for each value, the same number where the trait is the same; and how many there are. */
export interface Numbered {
  readonly of: Int32Array;
  readonly size: number;
}

function numbered<T>(values: readonly T[], trait: (value: T) => unknown): Numbered {
  const names = values.map((value) => JSON.stringify(trait(value)));
  const different = new Map<string, number>();
  for (const name of names) if (!different.has(name)) different.set(name, different.size);
  return {
    of: Int32Array.from(names, (name) => different.get(name) as number),
    size: different.size,
  };
}

const pairs = <A, B>(ones: readonly A[], others: readonly B[]): (A & B)[] =>
  ones.flatMap((one) => others.map((other) => ({ ...one, ...other })));

/** Dirt that the holds cannot tell apart. */
interface AlikeDirt {
  /** 1 where salt bloom lies on them that the finish hates. */
  readonly hated: 0 | 1;
  /** Place of one of them among all; a bit for each of them; how many they stand for. */
  readonly place: number;
  bits: number;
  weight: number;
  /** What they ask for in steps of their own, as a number each, with the place of one that asks for it. */
  readonly dirts: { readonly dirtAs: number; readonly place: number }[];
}

/** Dirt that stands in the way of the same methods; those that hold coatings are never among the rest. */
interface DirtsAlike {
  readonly clearedAs: number;
  readonly coated: boolean;
  readonly members: AlikeDirt[];
}

/** All dirt by what it stands in the way of, under a finish that wants it dry or one that does not. */
function dirtsAlike(
  dirt: Possibilities['contamination'],
  cleared: Numbered,
  asks: Numbered,
  dry: boolean,
): readonly DirtsAlike[] {
  const all: DirtsAlike[] = [];
  dirt.forEach(({ value, weight }, place) => {
    const clearedAs = cleared.of[place] as number;
    const { members } = (all[clearedAs] ??= { clearedAs, coated: hasCoating(value), members: [] });
    const hated = dry && value.includes('salt-bloom') ? 1 : 0;
    let member = members.find((each) => each.hated === hated);
    if (!member) members.push((member = { hated, place, bits: 0, weight: 0, dirts: [] }));
    member.bits |= 1 << place;
    member.weight += weight;
    const dirtAs = asks.of[place] as number;
    if (!member.dirts.some((each) => each.dirtAs === dirtAs)) member.dirts.push({ dirtAs, place });
  });
  return all;
}

/** Growth and salt bloom are cleared by every method; they only ask for something beside it. */
const stubborn = (set: readonly Contaminant[]) =>
  set.filter((each) => each !== 'growth' && each !== 'salt-bloom');

/**
 * What every possibility brings to the choice of method, and to what follows it, as numbers: equal
 * numbers are possibilities between which that rule cannot tell. Found by asking the rules
 * themselves, one possibility at a time, so that a walk over all combinations only adds numbers up.
 */
export function traitsOf(
  possibilities: Possibilities,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  fixed: Fixed,
) {
  const site = { ...plainSite, ...base };
  const zoneOf = (part: Partial<SettledZone>): SettledZone => ({ ...plainZone, ...fixed, ...part });
  const { element, depthAndLooseness: loose, contamination: dirt, texture, finish } = possibilities;
  // Of cracks, only whether they are open takes part in the choice of method; of steel, whether it shows.
  const cracks = gather(
    possibilities.cracks.map(({ value }) => value),
    (value) => `${opensBelow(value)}`,
  );
  const bars = gather(
    possibilities.steel.map(({ value }) => value),
    (value) => `${showsBar(value)}`,
  );
  const sufficient = (judge: typeof judgeRemoval, demands: Partial<Demands>) =>
    methodIds.map((method) => !judge(method, demands as Demands));
  const textures = texture.map(({ value }) => ({ texture: value }));
  const finishes = finish.map(({ value }) => ({ finish: value }));
  const elements = element.map(({ value }) => ({ element: value }));
  const states = loose.map(({ value }) => value);
  const looks = pairs(textures, finishes);
  const statesAndFinishes = pairs(states, finishes);
  const depthHolds = elements.flatMap((place) =>
    states.flatMap((state) =>
      bars.map((bar) => fullDepthHold({ ...site, ...place }, zoneOf({ ...state, ...bar.value }))),
    ),
  );
  const cleared = numbered(dirt, ({ value }) => stubborn(value));
  const asks = numbered(dirt, ({ value: contamination }) => {
    const { oil, heavyCoating } = demandsOf(plainSite, { ...plainZone, contamination });
    return [oil, heavyCoating, contamination.includes('growth')];
  });
  return {
    cracks,
    bars,
    /** By element, then depth and looseness, then finish: what can stand there, and on what. */
    place: numbered(pairs(elements, statesAndFinishes), (at) => [
      demandsOf({ ...site, element: at.element }, zoneOf(at)).place,
      isFloor(at.element),
    ]),
    /** Which methods get the loose concrete off. */
    removal: numbered(states, ({ depth: band, looseness }) =>
      sufficient(judgeRemoval, { remove: { band, looseness } }),
    ),
    /** By element, then depth and looseness, then bar: whether the hole goes too deep. */
    depthHolds,
    depthAs: numbered(depthHolds, (hold) => [hold?.rule, hold?.facts]),
    /** Whether it goes where tendons may lie, and whether a hollow layer has been measured. */
    deep: numbered(states, (state) => [isDeep(state), isHollowUnmeasured(state)]),
    /** By depth and looseness, then finish: what steps can tell apart. */
    looseAs: numbered(statesAndFinishes, (at) => [
      at.looseness === 'tight',
      at.looseness === 'hollow',
      isFirmHollow(at),
      // A jet in the place of a hammer makes a hole only there; without a test patch it is never chosen.
      fixed.triedOut !== undefined && onlyBreakingReaches(at),
    ]),
    /** What stands in the way of a method. */
    cleared,
    /** What dirt asks for in steps of its own. */
    dirt: asks,
    /** All dirt, under a finish that wants it dry, and under any other. */
    dirtsDry: dirtsAlike(dirt, cleared, asks, true),
    dirtsDamp: dirtsAlike(dirt, cleared, asks, false),
    /** By texture, then finish: which methods leave the roughness wanted, and reach it all. */
    profile: numbered(looks, (look) => [
      sufficient(judgeProfile, demandsOf(site, zoneOf(look))),
      sufficient(judgeTexture, demandsOf(site, zoneOf(look))),
    ]),
    /** By depth and looseness, then texture, then finish: whether washing leaves a skin. */
    skin: numbered(pairs(states, looks), (at) => demandsOf(site, zoneOf(at)).skin),
    /** What the finish changes in the steps: its bond, damp or dry, whether it is decided. */
    finishing: numbered(finishes, (look) => {
      const zone = zoneOf(look);
      return [isBonded(zone), moistureOf(zone), zone.finish === 'undecided'];
    }),
    /** What the finish changes in the holds, but for bloom under a dry one: a film hides rust, a sealer is not stiff. */
    covering: numbered(finishes, (look) => {
      const zone = zoneOf(look);
      return [isFilm(zone), zone.finish === 'sealer', isStiff(zone)];
    }),
    dryFinish: finishes.map((look) => moistureOf(zoneOf(look)) === 'dry'),
  };
}
