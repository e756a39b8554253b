import type { StepId } from '$shared/methods';
import { opensBelow, showsBar, type Demands } from './demands';
import type { Possibilities } from './completions';
import type { Group } from './groups';
import { stepsCalled } from './steps/all';
import { workOrder, type Situation } from './steps/work';
import type { SettledSite, SettledZone } from './types';

/** The questions that do not take part in the choice of method, or only by half, but in what stands round it. */
export const following = ['cracks', 'steel', 'freezeThaw', 'salts'] as const;
export type Following = (typeof following)[number];

/** One combination of the possibilities of the following questions. */
export interface Next {
  readonly site: Pick<SettledSite, 'freezeThaw' | 'salts'>;
  readonly zone: Pick<SettledZone, 'cracks' | 'steel' | 'barLoss'>;
  /** How many completions of these questions it stands for. */
  readonly weight: number;
  /** Combinations of one number come to the same holds, given the same steps; below `mostHoldsAs`. */
  readonly holdsAs: number;
  /** Combinations of one number call for the same steps. */
  readonly worksAs: number;
  readonly opens: boolean;
  readonly bar: boolean;
  /** For each question: the bit of its possibility. */
  readonly seen: Readonly<Record<Following, number>>;
}

/** What the holds see of cracks: none, some, moving. */
const crackStates = 3;
const crackState = (cracks: SettledZone['cracks']): number =>
  cracks === 'none' ? 0 : cracks === 'moving' ? 2 : 1;

const mostSteel = 8;
/** More than any `holdsAs`: the possibilities of steel, with and without salts, and the cracks. */
export const mostHoldsAs = mostSteel * 2 * crackStates;

/** Combinations between which neither steps nor holds can tell are one. */
export function followingOf(possibilities: Possibilities): readonly Next[] {
  if (possibilities.steel.length > mostSteel)
    throw new Error(`Steel has more than ${mostSteel} possibilities.`);
  const merged = new Map<string, Next>();
  for (const next of combined(possibilities)) {
    const key = `${next.worksAs} ${next.holdsAs}`;
    const same = merged.get(key);
    if (!same) merged.set(key, next);
    else
      merged.set(key, {
        ...same,
        weight: same.weight + next.weight,
        seen: mapped((name) => same.seen[name] | next.seen[name]),
      });
  }
  return [...merged.values()];
}

const mapped = (bits: (name: Following) => number): Record<Following, number> => ({
  cracks: bits('cracks'),
  steel: bits('steel'),
  freezeThaw: bits('freezeThaw'),
  salts: bits('salts'),
});

const combined = (possibilities: Possibilities): readonly Next[] =>
  possibilities.cracks.flatMap((cracks, ki) =>
    possibilities.steel.flatMap((steel, si) =>
      possibilities.freezeThaw.flatMap((frost, ri) =>
        possibilities.salts.map((salts, ai): Next => {
          const bar = showsBar(steel.value);
          const rust = bar ? 2 : steel.value.steel === 'rust-stain' ? 1 : 0;
          // Salts count only where steel or its rust shows.
          const salty = rust && salts.value !== 'none' ? 1 : 0;
          return {
            site: { freezeThaw: frost.value, salts: salts.value },
            zone: { cracks: cracks.value, ...steel.value },
            weight: cracks.weight * steel.weight * frost.weight * salts.weight,
            holdsAs: (si * 2 + salty) * crackStates + crackState(cracks.value),
            worksAs:
              ((rust * 2 + salty) * possibilities.cracks.length + ki) *
                possibilities.freezeThaw.length +
              ri,
            opens: opensBelow(cracks.value),
            bar,
            seen: { cracks: 1 << ki, steel: 1 << si, freezeThaw: 1 << ri, salts: 1 << ai },
          };
        }),
      ),
    ),
  );

/** The set of all steps. */
export const everyStep = -1;

/** The steps of a set, in order. */
export const stepsIn = (set: number): StepId[] =>
  workOrder.filter((_, place) => (set & (1 << place)) !== 0);

/** The places of the steps that tell how deep and how hard the work goes. */
const cuttingPlaces = (['saw-cut', 'chase-crack', 'free-bar', 'route-crack'] as const).map((id) =>
  workOrder.indexOf(id),
);
/** The cutting steps of a set as a number below `mostCuts`. */
const cutsAs = (set: number): number =>
  cuttingPlaces.reduce((sum, place, index) => sum | (((set >>> place) & 1) << index), 0);
export const mostCuts = 2 ** cuttingPlaces.length;

const clean = { oil: false, stripped: false, heavyCoating: false, contaminants: [] };

/** The combinations that go with demands: as many cracks open, and a bar showing, as these say. */
export function followingFor(nexts: readonly Next[]): (demands: Demands) => readonly Next[] {
  const lists = [0, 1, 2, 3].map((sort) =>
    nexts.filter(({ opens, bar }) => +opens * 2 + +bar === sort),
  );
  return ({ openCracks, bar }) => lists[+openCracks * 2 + +bar] as readonly Next[];
}

/** The steps called for, as a set, and what of them tells how deep and how hard the work goes. */
export interface Called {
  readonly steps: number;
  /** Below `mostCuts`. */
  readonly cuts: number;
}

/** The steps of a group but for what its dirt asks for, with each combination that goes with it. */
export function worksFor(group: Group, nexts: readonly Next[]): readonly Called[] {
  const { site, zone, demands, method, rest } = group;
  const known = new Map<number, Called>();
  const bare = { ...demands, ...clean };
  return nexts.map((next) => {
    let called = known.get(next.worksAs);
    if (!called) {
      const steps = stepsCalled({
        site: { ...site, ...next.site },
        zone: { ...zone, ...next.zone, contamination: [] },
        demands: bare,
        method,
        rest,
      });
      known.set(next.worksAs, (called = { steps, cuts: cutsAs(steps) }));
    }
    return called;
  });
}

/** The steps that dirt adds to the work, whatever else is asked for. */
export function dirtSteps(situation: Situation): number {
  const { zone, demands } = situation;
  const without = { zone: { ...zone, contamination: [] }, demands: { ...demands, ...clean } };
  return stepsCalled(situation) & ~stepsCalled({ ...situation, ...without });
}
