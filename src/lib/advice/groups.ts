import { methodIds, type MethodId } from '$shared/methods';
import { choose, type Methods } from './choice';
import { plainSite, plainZone, type Possibilities } from './completions';
import { demandsOf, type Demands } from './demands';
import { dirtSteps, type Following } from './following';
import { Kept } from './kept';
import { traitsOf, type Fixed, type Numbered } from './traits';
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
  /** Groups of one number have the same. */
  readonly depthAs: number;
  /** Groups of one number come to the same holds, given the same steps. */
  readonly holdsAs: number;
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
  /** For each choosing question: bit i is set when its i-th possibility is among them. */
  readonly seen: Record<Choosing, number>;
  /** The same of the following questions, where the work goes on, and where a surface method stands. */
  readonly going: Record<Following, number>;
  readonly surface: Record<Following, number>;
}

/** What the choice comes to. */
export interface Chosen extends Methods {
  readonly demands: Demands;
  /** The places of both methods among all, as one number. */
  readonly methodsAs: number;
}

export interface Grouped {
  readonly groups: readonly Group[];
  /** More than any `holdsAs`. */
  readonly mostHolds: number;
  /** One for each way the choice of method can be told apart. */
  readonly choices: readonly Chosen[];
}

const ids = methodIds.length;

/**
 * Walks the choosing questions and gathers what comes to the same.
 * What a possibility brings is known before (`traitsOf`), so that a combination is only a few numbers,
 * and nothing is thought through twice. Keys are mixed of parts, each below its own size.
 * @param gather whether groups are asked for, or the demands alone
 */
export function groupsOf(
  possibilities: Possibilities,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  fixed: Fixed,
  gather = true,
): Grouped {
  const traits = traitsOf(possibilities, base, fixed);
  const { cracks, bars, place, removal, cleared, profile, skin, finishing, dirt } = traits;
  const { element, depthAndLooseness, contamination, texture, finish } = possibilities;
  const [E, D, C, T, F] = choosing.map((name) => possibilities[name].length) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const [K, B] = [cracks.length, bars.length];
  if (Math.max(E, D, C, T, F) > 32)
    throw new Error('More possibilities of an answer than 32 bits hold.');
  const looks = T * F;
  const choiceRoom = place.size * removal.size * cleared.size * profile.size * skin.size * K * B;
  const worksRoom = place.size * traits.looseAs.size * finishing.size * K * B * ids * ids * 2;
  const holdsRoom = E * traits.deep.size * traits.covering.size * 4 * traits.depthAs.size * ids;
  const dirtRoom = place.size * dirt.size * profile.size * finishing.size * ids * ids;
  if (Math.max(choiceRoom, worksRoom * holdsRoom, dirtRoom) > Number.MAX_SAFE_INTEGER)
    throw new Error('The largest key there can be is no whole number any more.');

  const at = <T>(list: readonly T[], index: number) => list[index] as T;
  // Not by `at`, so that each reads lists of one sort and the walk stays quick.
  const part = ({ of }: Numbered, index: number) => of[index] as number;
  const choices = new Kept<Chosen>(choiceRoom);
  const rough = new Kept<number>(ids * looks);
  const dirty = new Kept<number>(dirtRoom);
  const workings = new Kept<null>(worksRoom);
  const states = new Kept<null>(holdsRoom);
  const groups = new Map<number, Group>();
  const nothing = () => null;

  // Where the walk stands, and what was found there: shared, so that a step of it makes nothing new.
  let [ei, di, ci, ti, fi, ki, bi] = [0, 0, 0, 0, 0, 0, 0];
  let chosen = {} as Chosen;
  let [holdsAs, worksAs] = [0, 0];
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
    const { method, rest, spent } = choose(demands);
    const methodsAs = methodIds.indexOf(method) * ids + methodIds.indexOf(rest);
    return { demands, method, rest, spent, methodsAs };
  };
  const situationHere = (): Situation => {
    const [site, zone] = [siteHere(), zoneHere()];
    const { method, rest } = chosen;
    return { site, zone, demands: demandsOf(site, zone), method, rest };
  };
  const filledHere = () => +!!tooRough(situationHere());
  const dirtHere = () => dirtSteps(situationHere());
  const goesTo = () => (ei * D + di) * B + bi;
  const groupHere = (): Group => {
    const { site, zone, demands, method, rest } = situationHere();
    const group: Group = {
      site,
      zone,
      demands,
      method,
      rest,
      spent: chosen.spent,
      depthHold: at(traits.depthHolds, goesTo()),
      depthAs: part(traits.depthAs, goesTo()),
      holdsAs,
      worksAs,
      dirtAll: -1,
      dirtAny: 0,
      coatedNever: false,
      coatedSome: false,
      weight: 0,
      seen: { element: 0, depthAndLooseness: 0, contamination: 0, texture: 0, finish: 0 },
      going: { cracks: 0, steel: 0, freezeThaw: 0, salts: 0 },
      surface: { cracks: 0, steel: 0, freezeThaw: 0, salts: 0 },
    };
    groups.set(worksAs * holdsRoom + holdsAs, group);
    return group;
  };

  for (ei = 0; ei < E; ei += 1)
    for (di = 0; di < D; di += 1)
      for (fi = 0; fi < F; fi += 1) {
        const placeAs = part(place, (ei * D + di) * F + fi);
        const finishAs = part(finishing, fi);
        const dries = traits.dryFinish[fi];
        const weightHere =
          at(element, ei).weight * at(depthAndLooseness, di).weight * at(finish, fi).weight;
        const opens = placeAs * removal.size + part(removal, di);
        const works =
          (placeAs * traits.looseAs.size + part(traits.looseAs, di * F + fi)) * finishing.size +
          finishAs;
        const holds =
          (ei * traits.deep.size + part(traits.deep, di)) * traits.covering.size +
          part(traits.covering, fi);
        for (ti = 0; ti < T; ti += 1) {
          const look = ti * F + fi;
          const skinAs = part(skin, di * looks + look);
          const roughness = part(profile, look);
          const weight = weightHere * at(texture, ti).weight;
          for (const { clearedAs, coated, members } of dries ? traits.dirtsDry : traits.dirtsDamp) {
            ci = (members[0] as (typeof members)[0]).place;
            const open =
              ((opens * cleared.size + clearedAs) * profile.size + roughness) * skin.size + skinAs;
            for (ki = 0; ki < K; ki += 1)
              for (bi = 0; bi < B; bi += 1) {
                chosen = choices.of((open * K + ki) * B + bi, chooseHere);
                if (!gather) continue;
                const tools = chosen.methodsAs;
                const method = Math.floor(tools / ids);
                const filled = rough.of(method * looks + look, filledHere);
                // What the steps see, but for the dirt.
                worksAs = workings.numberOf(
                  (((works * K + ki) * B + bi) * ids * ids + tools) * 2 + filled,
                  nothing,
                );
                const depthAs = part(traits.depthAs, goesTo());
                const spentAs = chosen.spent ? 2 : 0;
                for (const { hated, bits, weight: times, place: first, dirts } of members) {
                  ci = first;
                  // What the holds see.
                  const sees = (holds * 4 + hated + spentAs) * traits.depthAs.size + depthAs;
                  holdsAs = states.numberOf(sees * ids + method, nothing);
                  const group = groups.get(worksAs * holdsRoom + holdsAs) ?? groupHere();
                  // What dirt adds hangs on what the finish asks for anyway.
                  for (const asking of dirts) {
                    ci = asking.place;
                    const asked = (placeAs * dirt.size + asking.dirtAs) * profile.size + roughness;
                    const dirtKey = asked * finishing.size + finishAs;
                    const steps = dirty.of(dirtKey * ids * ids + tools, dirtHere);
                    group.dirtAll &= steps;
                    group.dirtAny |= steps;
                  }
                  if (coated) group.coatedSome = true;
                  else group.coatedNever = true;
                  group.weight += weight * times;
                  const { seen } = group;
                  seen.element |= 1 << ei;
                  seen.depthAndLooseness |= 1 << di;
                  seen.contamination |= bits;
                  seen.texture |= 1 << ti;
                  seen.finish |= 1 << fi;
                }
              }
          }
        }
      }
  return {
    groups: [...groups.values()],
    mostHolds: states.all.length,
    choices: choices.all,
  };
}
