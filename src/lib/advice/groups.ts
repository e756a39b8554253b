import { choose } from './choice';
import { kindsOf, plainSite, plainZone, type Kinds } from './completions';
import { demandsOf, opensBelow, type Demands } from './demands';
import { fullDepthHold, reachOf } from './holds';
import { tooRough } from './steps/after';
import { isBonded } from './steps/work';
import type { MethodId } from '$shared/methods';
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

/** Walks the choosing questions and gathers what comes to the same. */
export function groupsOf(
  kinds: Kinds,
  base: Pick<SettledSite, 'thickness' | 'setting'>,
  area: SettledZone['area'],
): Group[] {
  const groups = new Map<string, Group>();
  const chosen = new Map<string, MethodId>();
  // Of cracks, only whether they open below the plane takes part in the choice of method.
  const cracksEachWay = kindsOf(
    kinds.cracks.map(({ value }) => value),
    (cracks) => `${opensBelow(cracks)}`,
  );
  const sizes = [...choosing.map((name) => kinds[name].length), cracksEachWay.length];
  for (const at of indices(sizes)) {
    const [ei, di, ci, ti, fi, ki] = at as [number, number, number, number, number, number];
    const element = kinds.element[ei] as Kinds['element'][number];
    const loose = kinds.depthAndLooseness[di] as Kinds['depthAndLooseness'][number];
    const dirt = kinds.contamination[ci] as Kinds['contamination'][number];
    const texture = kinds.texture[ti] as Kinds['texture'][number];
    const cracks = cracksEachWay[ki] as (typeof cracksEachWay)[number];
    const finish = kinds.finish[fi] as Kinds['finish'][number];
    const site = { ...plainSite, ...base, element: element.value };
    const zone: SettledZone = {
      ...plainZone,
      ...loose.value,
      contamination: dirt.value,
      texture: texture.value,
      cracks: cracks.value,
      finish: finish.value,
      area,
    };
    const demands = demandsOf(site, zone);
    const choiceKey = `${demands.floor} ${di} ${ci} ${ti} ${fi} ${demands.belowPlane}`;
    let method = chosen.get(choiceKey);
    if (!method) chosen.set(choiceKey, (method = choose(demands).method));
    const depthHold = fullDepthHold(site, zone);
    const key = [
      ei,
      ki,
      method,
      depthHold?.rule,
      reachOf(zone, null, {}).deep,
      demands.oil,
      demands.stripped,
      demands.heavyCoating && demands.belowPlane,
      zone.contamination.includes('growth'),
      zone.contamination.some((contaminant) => contaminant.endsWith('-coating')),
      isBonded(zone),
      !!tooRough({ zone, demands, method }),
    ].join();
    const weight = element.weight * loose.weight * dirt.weight * texture.weight * finish.weight;
    let group = groups.get(key);
    if (!group) {
      const seen = Object.fromEntries(choosing.map((name) => [name, 0])) as Group['seen'];
      groups.set(key, (group = { site, zone, demands, method, depthHold, weight: 0, seen }));
    }
    group.weight += weight;
    choosing.forEach((name, place) => (group.seen[name] |= 1 << (at[place] as number)));
  }
  return [...groups.values()];
}
