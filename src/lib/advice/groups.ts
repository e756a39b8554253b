import { methodIds, type MethodId } from '$shared/methods';
import { methodsFor } from './choice';
import { plainSite, plainZone, type Kinds } from './completions';
import { demandsOf, type Demands } from './demands';
import { dirtSteps } from './following';
import { Kept } from './kept';
import { traitsOf, type Fixed } from './kind-traits';
import { tooRough } from './steps/after';
import type { Situation } from './steps/work';
import type { Hold, SettledSite, SettledZone } from './types';

/** The questions that decide the method, in the order they are walked. */
export const choosing = [
  'element',
  'depthAndLooseness',
  'contamination',
  'texture',
  'finish',
] as const;
export type Choosing = (typeof choosing)[number];

/**
 * Completions of the choosing questions, of whether cracks are open and whether a bar shows, between
 * which nothing that follows can tell.
 */
export interface Group {
  /** One of them. */
  readonly site: SettledSite;
  readonly zone: SettledZone;
  readonly demands: Demands;
  readonly method: MethodId;
  /** What the zone needs beside its bars; the method itself where no bar leads. */
  readonly rest: MethodId;
  /** Every method that would do has failed on a test patch. */
  readonly spent: boolean;
  readonly depthHold: Hold | null;
  /** Groups of one number come to the same holds, given the same steps. */
  readonly endsAs: number;
  /** Groups of one number call for the same steps but for those of the dirt, whatever cracks, steel and frost are. */
  readonly worksAs: number;
  /** Steps that dirt calls for in all of them, and in any, as sets of bits. */
  dirtAll: number;
  dirtAny: number;
  /** Whether a coating lies on some of them, and whether on others there is none. */
  coatedSome: boolean;
  coatedNever: boolean;
  /** How many of them. */
  weight: number;
  /** For each choosing question: bit i is set when its i-th kind is among them. */
  readonly seen: Record<Choosing, number>;
}

/** Every combination of indices below the given sizes; the array yielded is reused. */
export function* indices(sizes: readonly number[]): Generator<readonly number[]> {
  const at = sizes.map(() => 0);
  if (sizes.includes(0)) return;
  for (;;) {
    yield at;
    let place = sizes.length - 1;
    while (place >= 0 && (at[place] as number) + 1 === sizes[place]) at[place--] = 0;
    if (place < 0) return;
    at[place] = (at[place] as number) + 1;
  }
}

/** The groups, and one set of demands for each way the choice of method can be told apart. */
export interface Grouped {
  readonly groups: readonly Group[];
  readonly demands: readonly Demands[];
}

const ids = methodIds.length;

/** What the choice comes to, by the place of the methods among all. */
interface Chosen {
  readonly method: number;
  readonly rest: number;
  readonly spent: boolean;
  readonly demands: Demands;
}

/**
 * Walks the choosing questions and gathers what comes to the same.
 * What a kind brings is known before (`traitsOf`), so that a combination is only a few numbers,
 * and nothing is thought through twice. Keys are mixed of parts, each below its own size.
 */
export function groupsOf(
  kinds: Kinds,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  fixed: Fixed,
): Grouped {
  const traits = traitsOf(kinds, base, fixed);
  const { cracks, bars, place, removal, cleared, profile, skin, finishing, dirt } = traits;
  const { element, depthAndLooseness, contamination, texture, finish } = kinds;
  const [E, D, C, T, F] = choosing.map((name) => kinds[name].length) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const [K, B] = [cracks.length, bars.length];
  if (Math.max(E, D, C, T, F) > 32) throw new Error('More kinds of an answer than 32 bits hold.');
  const looks = T * F;
  // The largest key there can be still has to be a whole number.
  const choiceRoom = place.size * removal.size * cleared.size * profile.size * skin.size * K * B;
  const worksRoom = place.size * traits.looseAs.size * finishing.size * K * B * ids * ids * 2;
  const endsRoom = E * traits.deep.size * traits.covering.size * 4 * traits.depthAs.size * ids;
  const dirtRoom = place.size * dirt.size * profile.size * finishing.size * 2 * ids * ids;
  if (Math.max(choiceRoom, worksRoom, endsRoom, dirtRoom) > Number.MAX_SAFE_INTEGER)
    throw new Error('A key of the walk no longer fits a whole number.');

  const at = <T>(list: ArrayLike<T>, index: number) => list[index] as T;
  const choices = new Kept<Chosen>(choiceRoom);
  const rough = new Kept<number>(ids * looks);
  const dirty = new Kept<number>(dirtRoom);
  const workings = new Kept<Group[]>(worksRoom);
  const endings = new Kept<null>(endsRoom);
  const groups: Group[] = [];
  const nothing = () => null;
  const noGroups = (): Group[] => [];

  // Where the walk stands, and what was found there: shared, so that a step of it makes nothing new.
  let [ei, di, ci, ti, fi, ki, bi] = [0, 0, 0, 0, 0, 0, 0];
  let chosen = {} as Chosen;
  let [endsAs, worksAs] = [0, 0];
  const siteHere = (): SettledSite => ({ ...plainSite, ...base, element: at(element, ei).value });
  const zoneHere = (): SettledZone => ({
    ...plainZone,
    ...fixed,
    ...at(depthAndLooseness, di).value,
    contamination: at(contamination, ci).value,
    texture: at(texture, ti).value,
    cracks: at(cracks, ki).value,
    ...at(bars, bi).value,
    finish: at(finish, fi).value,
  });
  const chooseHere = (): Chosen => {
    const demands = demandsOf(siteHere(), zoneHere());
    const { method, rest, spent } = methodsFor(demands);
    return { method: methodIds.indexOf(method), rest: methodIds.indexOf(rest), spent, demands };
  };
  const situationHere = (): Situation => {
    const [site, zone] = [siteHere(), zoneHere()];
    const { method, rest } = chosen;
    return {
      site,
      zone,
      demands: demandsOf(site, zone),
      method: at(methodIds, method),
      rest: at(methodIds, rest),
    };
  };
  const filledHere = () => +!!tooRough(situationHere());
  const dirtHere = () => dirtSteps(situationHere());
  const goesTo = () => (ei * D + di) * B + bi;
  const groupHere = (): Group => {
    const group: Group = {
      ...situationHere(),
      spent: chosen.spent,
      depthHold: at(traits.depthHolds, goesTo()),
      endsAs,
      worksAs,
      dirtAll: -1,
      dirtAny: 0,
      coatedNever: false,
      coatedSome: false,
      weight: 0,
      seen: { element: 0, depthAndLooseness: 0, contamination: 0, texture: 0, finish: 0 },
    };
    groups.push(group);
    return group;
  };

  for (ei = 0; ei < E; ei += 1)
    for (di = 0; di < D; di += 1)
      for (fi = 0; fi < F; fi += 1) {
        const placeAs = at(place.of, (ei * D + di) * F + fi);
        const looseAs = at(traits.looseAs.of, di * F + fi);
        const covered = at(traits.covering.of, fi);
        const weightHere =
          at(element, ei).weight * at(depthAndLooseness, di).weight * at(finish, fi).weight;
        for (ti = 0; ti < T; ti += 1) {
          const look = ti * F + fi;
          const skinAs = at(skin.of, di * looks + look);
          const roughness = at(profile.of, look);
          const pits = at(traits.pits, ti) ? 1 : 0;
          for (ci = 0; ci < C; ci += 1) {
            const weight = weightHere * at(contamination, ci).weight * at(texture, ti).weight;
            const bloom = at(traits.bloom, ci) && at(traits.dryFinish, fi) ? 1 : 0;
            const coated = at(traits.coated, ci);
            let open = placeAs * removal.size + at(removal.of, di);
            open = open * cleared.size + at(cleared.of, ci);
            open = (open * profile.size + roughness) * skin.size + skinAs;
            for (ki = 0; ki < K; ki += 1)
              for (bi = 0; bi < B; bi += 1) {
                chosen = choices.of((open * K + ki) * B + bi, chooseHere);
                const { method, rest } = chosen;
                const filled = rough.of(method * looks + look, filledHere);
                // What the steps see, but for the dirt.
                let works = (placeAs * traits.looseAs.size + looseAs) * finishing.size;
                works = ((works + at(finishing.of, fi)) * K + ki) * B + bi;
                works = ((works * ids + method) * ids + rest) * 2 + filled;
                worksAs = workings.numberOf(works, noGroups);
                // What the holds see.
                let ends = ei * traits.deep.size + at(traits.deep.of, di);
                ends = (ends * traits.covering.size + covered) * 4 + bloom + (chosen.spent ? 2 : 0);
                ends =
                  (ends * traits.depthAs.size + at(traits.depthAs.of, goesTo())) * ids + method;
                endsAs = endings.numberOf(ends, nothing);
                const group = ((workings.all[worksAs] as Group[])[endsAs] ??= groupHere());
                // What dirt adds depends on what the finish asks for anyway.
                let dirtKey = (placeAs * dirt.size + at(dirt.of, ci)) * profile.size + roughness;
                dirtKey = (dirtKey * finishing.size + at(finishing.of, fi)) * 2 + pits;
                dirtKey = (dirtKey * ids + method) * ids + rest;
                const steps = dirty.of(dirtKey, dirtHere);
                group.dirtAll &= steps;
                group.dirtAny |= steps;
                if (coated) group.coatedSome = true;
                else group.coatedNever = true;
                group.weight += weight;
                const { seen } = group;
                seen.element |= 1 << ei;
                seen.depthAndLooseness |= 1 << di;
                seen.contamination |= 1 << ci;
                seen.texture |= 1 << ti;
                seen.finish |= 1 << fi;
              }
          }
        }
      }
  return { groups, demands: choices.all.map(({ demands }) => demands) };
}
