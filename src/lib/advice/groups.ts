import { methodIds, type MethodId } from '$shared/methods';
import { restFor } from './choice';
import { plainSite, plainZone, type Kinds } from './completions';
import { demandsOf, type Demands } from './demands';
import { traitsOf, type Fixed } from './kind-traits';
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

/** A number made of parts, each below its own size, so that different parts make different numbers. */
class Key {
  #key = 0;
  #room = 1;

  /** @throws Error when a part does not fit its size, or the parts no longer fit a number exactly */
  with(part: number, size: number): this {
    if (part >= size || this.#room * size > Number.MAX_SAFE_INTEGER)
      throw new Error('A part of a key is larger than its room.');
    this.#key = this.#key * size + part;
    this.#room *= size;
    return this;
  }

  get value(): number {
    return this.#key;
  }
}

const sizeOf = (numbers: Int32Array): number => 1 + numbers.reduce((a, b) => Math.max(a, b), 0);

/** A combination: the index of its kind for each choosing question, of whether cracks open, and whether a bar shows. */
type At = readonly [number, number, number, number, number, number, number];

/**
 * Walks the choosing questions and gathers what comes to the same.
 * What a kind brings is known before (`traitsOf`), so that a combination is only a few numbers,
 * and nothing is thought through twice.
 */
export function groupsOf(
  kinds: Kinds,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  fixed: Fixed,
): Group[] {
  const traits = traitsOf(kinds, base, fixed);
  const { cracks, bars } = traits;
  const { element, depthAndLooseness, contamination, texture, finish } = kinds;
  const kind = <T>(list: ArrayLike<T>, index: number) => list[index] as T;
  const siteAt = ([ei]: At): SettledSite => ({
    ...plainSite,
    ...base,
    element: kind(element, ei).value,
  });
  const zoneAt = ([, di, ci, ti, fi, ki, bi]: At): SettledZone => ({
    ...plainZone,
    ...fixed,
    ...kind(depthAndLooseness, di).value,
    contamination: kind(contamination, ci).value,
    texture: kind(texture, ti).value,
    cracks: kind(cracks, ki).value,
    ...kind(bars, bi).value,
    finish: kind(finish, fi).value,
  });
  const demandsAt = (at: At) => demandsOf(siteAt(at), zoneAt(at));
  const room = {
    place: sizeOf(traits.place),
    removal: sizeOf(traits.removal),
    cleared: sizeOf(traits.cleared),
    profile: sizeOf(traits.profile),
    skin: sizeOf(traits.skin),
    deep: sizeOf(traits.deep),
    dirt: sizeOf(traits.dirt),
    finishing: sizeOf(traits.finishing),
    depthAs: sizeOf(traits.depthAs),
    methods: methodIds.length,
  };

  const chosen = new Map<number, { method: number; rest: number }>();
  const rough = new Map<number, number>();
  const groups = new Map<number, Group>();
  const sizes = [...choosing.map((name) => kinds[name].length), cracks.length, bars.length];
  if (sizes.some((size) => size > 32))
    throw new Error('More kinds of an answer than a set of bits holds.');
  for (const each of indices(sizes)) {
    const at = each as At;
    const [ei, di, ci, ti, fi, ki, bi] = at;
    const finishes = finish.length;
    const look = ti * finishes + fi;
    const place = kind(traits.place, (ei * depthAndLooseness.length + di) * finishes + fi);
    const skin = kind(traits.skin, di * texture.length * finishes + look);
    const dirt = kind(traits.dirt, ci);
    const deep = kind(traits.deep, di);
    const finishing = kind(traits.finishing, fi);
    const choice = new Key()
      .with(place, room.place)
      .with(kind(traits.removal, di), room.removal)
      .with(kind(traits.cleared, ci), room.cleared)
      .with(dirt, room.dirt)
      .with(kind(traits.profile, look), room.profile)
      .with(skin, room.skin)
      .with(ki, cracks.length)
      .with(bi, bars.length).value;
    let found = chosen.get(choice);
    if (found === undefined) {
      const demands = demandsAt(at);
      const rest = restFor(demands);
      const method = demands.bar ? 'break-out' : rest;
      found = { method: methodIds.indexOf(method), rest: methodIds.indexOf(rest) };
      chosen.set(choice, found);
    }
    const { method, rest } = found;
    const leaves = new Key()
      .with(method, room.methods)
      .with(rest, room.methods)
      .with(look, texture.length * finishes).value;
    let filled = rough.get(leaves);
    if (filled === undefined) {
      filled = +!!tooRough({
        zone: zoneAt(at),
        demands: demandsAt(at),
        method: kind(methodIds, method),
      });
      rough.set(leaves, filled);
    }
    const goesTo = (ei * depthAndLooseness.length + di) * bars.length + bi;
    // What the steps see, without the dirt; what dirt adds to them; what the holds see.
    const works = () =>
      new Key()
        .with(ei, element.length)
        .with(place, room.place)
        .with(ki, cracks.length)
        .with(bi, bars.length)
        .with(method, room.methods)
        .with(rest, room.methods)
        .with(deep, room.deep)
        .with(finishing, room.finishing)
        .with(filled as number, 2);
    const dirtyAs = works().with(dirt, room.dirt).value;
    const endsAs = works()
      .with(+kind(traits.bloom, ci), 2)
      .with(kind(traits.depthAs, goesTo), room.depthAs).value;
    const key = works()
      .with(dirt, room.dirt)
      .with(kind(traits.depthAs, goesTo), room.depthAs).value;
    let group = groups.get(key);
    if (group === undefined) {
      const site = siteAt(at);
      const zone = zoneAt(at);
      group = {
        site,
        zone,
        demands: demandsOf(site, zone),
        method: kind(methodIds, method),
        rest: kind(methodIds, rest),
        depthHold: kind(traits.depthHolds, goesTo),
        endsAs,
        worksAs: works().value,
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
