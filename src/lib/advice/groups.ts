import { methodIds, type MethodId } from '$shared/methods';
import { methodFor } from './choice';
import { plainSite, plainZone, type Kinds } from './completions';
import { demandsOf, type Demands } from './demands';
import { traitsOf } from './kind-traits';
import { tooRough } from './steps/after';
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
 * Completions of the choosing questions, and of whether cracks open below the plane, between which
 * nothing that follows can tell.
 */
export interface Group {
  /** One of them. */
  readonly site: SettledSite;
  readonly zone: SettledZone;
  readonly demands: Demands;
  readonly method: MethodId;
  readonly depthHold: Hold | null;
  /** Groups of one number come to the same holds, whatever cracks, steel and frost are. */
  readonly endsAs: number;
  /** Groups of one number call for the same steps but for those of the dirt, whatever cracks, steel and frost are. */
  readonly worksAs: number;
  /** Groups of one number call for the same steps, whatever cracks, steel and frost are. */
  readonly dirtyAs: number;
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

/** A combination: the index of its kind for each choosing question, and of whether cracks open. */
type At = readonly [number, number, number, number, number, number];

/**
 * Walks the choosing questions and gathers what comes to the same.
 * What a kind brings is known before (`traitsOf`), so that a combination is only a few numbers,
 * and nothing is thought through twice.
 */
export function groupsOf(
  kinds: Kinds,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  area: SettledZone['area'],
): Group[] {
  const traits = traitsOf(kinds, base);
  const { cracks } = traits;
  const { element, depthAndLooseness, contamination, texture, finish } = kinds;
  const kind = <T>(list: ArrayLike<T>, index: number) => list[index] as T;
  const siteAt = ([ei]: At): SettledSite => ({
    ...plainSite,
    ...base,
    element: kind(element, ei).value,
  });
  const zoneAt = ([, di, ci, ti, fi, ki]: At): SettledZone => ({
    ...plainZone,
    ...kind(depthAndLooseness, di).value,
    contamination: kind(contamination, ci).value,
    texture: kind(texture, ti).value,
    cracks: kind(cracks, ki).value,
    finish: kind(finish, fi).value,
    area,
  });
  const demandsAt = (at: At) => demandsOf(siteAt(at), zoneAt(at));

  const chosen = new Map<number, number>();
  const rough = new Map<number, number>();
  const groups = new Map<number, Group>();
  const sizes = [...choosing.map((name) => kinds[name].length), cracks.length];
  for (const each of indices(sizes)) {
    const at = each as At;
    const ei = at[0];
    const di = at[1];
    const ci = at[2];
    const ti = at[3];
    const fi = at[4];
    const ki = at[5];
    const floor = kind(traits.floor, ei);
    const below = kind(traits.below, ti * cracks.length + ki);
    const look = ti * finish.length + fi;
    // Keys are small whole numbers, each trait in bits of its own: nothing is allocated to look one up.
    let key = (floor << 6) | kind(traits.removal, di);
    key = (key << 4) | kind(traits.cleared, ci);
    key = (((key << 2) | below) << 5) | kind(traits.profile, look);
    let method = chosen.get(key);
    if (method === undefined) {
      method = methodIds.indexOf(methodFor(demandsAt(at)));
      chosen.set(key, method);
    }
    key = (method << 6) | look;
    let filled = rough.get(key);
    if (filled === undefined) {
      const leaves = { zone: zoneAt(at), demands: demandsAt(at), method: kind(methodIds, method) };
      filled = +!!tooRough(leaves);
      rough.set(key, filled);
    }
    // What the holds see; what the steps see, without the dirt; what dirt adds to the steps.
    const endsAs = (((((ei << 1) | ki) << 3) | method) << 4) | kind(traits.deep, di);
    const finishing = (kind(traits.bonded, fi) << 1) | filled;
    const worksAs = (((((floor << 1) | ki) << 3) | method) << 2) | finishing;
    const dirty = (kind(traits.dirt, ci) << 2) | below;
    const dirtyAs = (dirty << 7) | worksAs;
    key = (((endsAs << 6) | dirty) << 2) | finishing;
    let group = groups.get(key);
    if (group === undefined) {
      const site = siteAt(at);
      const zone = zoneAt(at);
      group = {
        site,
        zone,
        demands: demandsOf(site, zone),
        method: kind(methodIds, method),
        depthHold: kind(traits.depthHold, di),
        endsAs,
        worksAs,
        dirtyAs,
        weight: 0,
        seen: { element: 0, depthAndLooseness: 0, contamination: 0, texture: 0, finish: 0 },
      };
      groups.set(key, group);
    }
    group.weight +=
      kind(element, ei).weight *
      kind(depthAndLooseness, di).weight *
      kind(contamination, ci).weight *
      kind(texture, ti).weight *
      kind(finish, fi).weight;
    const { seen } = group;
    seen.element |= 1 << ei;
    seen.depthAndLooseness |= 1 << di;
    seen.contamination |= 1 << ci;
    seen.texture |= 1 << ti;
    seen.finish |= 1 << fi;
  }
  return [...groups.values()];
}
