import type { StepId } from '$shared/methods';
import { opensBelow, showsBar } from './demands';
import type { Kinds } from './completions';
import type { Group } from './groups';
import { workFor } from './settle';
import { workOrder, type Work } from './steps/work';
import type { SettledSite, SettledZone } from './types';

/** The questions that do not take part in the choice of method, only in what stands round it. */
export const following = ['cracks', 'steel', 'freezeThaw', 'salts'] as const;
export type Following = (typeof following)[number];

/** One combination of the kinds of the following questions. */
export interface Next {
  readonly site: Pick<SettledSite, 'freezeThaw' | 'salts'>;
  readonly zone: Pick<SettledZone, 'cracks' | 'steel' | 'barLoss'>;
  /** How many completions of these questions it stands for. */
  readonly weight: number;
  /** Combinations of one number come to the same holds, given the same work. */
  readonly holdsAs: number;
  /** For each question: the bit of its kind. */
  readonly seen: Readonly<Record<Following, number>>;
}

/** More than any `holdsAs`: at most 8 kinds of steel, 5 of cracks, 2 of salts. */
export const mostHoldsAs = 100;

export const followingOf = (kinds: Kinds): readonly Next[] =>
  kinds.cracks.flatMap((cracks, ki) =>
    kinds.steel.flatMap((steel, si) =>
      kinds.freezeThaw.flatMap((frost, ri) =>
        kinds.salts.map((salts, ai): Next => ({
          site: { freezeThaw: frost.value, salts: salts.value },
          zone: { cracks: cracks.value, ...steel.value },
          weight: cracks.weight * steel.weight * frost.weight * salts.weight,
          holdsAs: (si * 5 + ki) * 2 + ai,
          seen: { cracks: 1 << ki, steel: 1 << si, freezeThaw: 1 << ri, salts: 1 << ai },
        })),
      ),
    ),
  );

/** The work of one combination, and its steps as a set: bit i is the i-th of the order of work. */
export interface Done {
  readonly work: Work;
  readonly steps: number;
}

/** The set of all steps. */
export const everyStep = 2 ** workOrder.length - 1;

const setOf = (work: object): number =>
  workOrder.reduce((set, id, place) => (id in work ? set | (1 << place) : set), 0);

/** The steps of a set, in order. */
export const stepsIn = (set: number): StepId[] =>
  workOrder.filter((_, place) => (set & (1 << place)) !== 0);

/** Of a set, the steps that tell how deep and how hard the work goes. */
const cutting = setOf({ 'saw-cut': 0, 'chase-crack': 0, 'route-crack': 0, 'free-bar': 0 });
export const cutsIn = (set: number): number => set & cutting;

/**
 * The work of a group but for what its dirt asks for, with each combination; null where cracks or
 * steel are not those of the group.
 */
export const worksFor = (group: Group, nexts: readonly Next[]): readonly (Done | null)[] => {
  const clean = { oil: false, stripped: false, heavyCoating: false, contaminants: [] };
  return nexts.map((next) => {
    if (opensBelow(next.zone.cracks) !== opensBelow(group.zone.cracks)) return null;
    if (showsBar(next.zone) !== showsBar(group.zone)) return null;
    const work = workFor({
      site: { ...group.site, ...next.site },
      zone: { ...group.zone, ...next.zone, contamination: [] },
      demands: { ...group.demands, ...clean },
      method: group.method,
      rest: group.rest,
    });
    return { work, steps: setOf(work) };
  });
};

/**
 * The steps a group calls for where nothing follows that asks for more. What dirt asks for, it asks
 * for whatever cracks, steel and frost are, so this and `worksFor` together are all its steps.
 */
export const stepsOfDirt = (group: Group): number =>
  setOf(
    workFor({
      ...group,
      site: { ...group.site, freezeThaw: 'rare', salts: 'none' },
      zone: { ...group.zone, cracks: 'none', steel: 'none-seen' },
      demands: { ...group.demands, bar: false },
    }),
  );
