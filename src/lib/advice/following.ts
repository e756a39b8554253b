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

/** Combinations that cut alike and come to the same holds: to the same verdicts, whatever steps they call for. */
export interface Works {
  /** One of them. */
  readonly next: Next;
  /** What of their steps tells how deep and how hard the work goes; below `mostCuts`. */
  readonly cuts: number;
  /** How many completions of the following questions they stand for. */
  weight: number;
  readonly seen: Record<Following, number>;
  /** The steps that all of them call for, and any, as sets. */
  all: number;
  any: number;
}

/** The steps of a group but for what its dirt asks for, with the combinations that go with it. */
export function worksFor(group: Group, nexts: readonly Next[]): readonly Works[] {
  const { site, zone, demands, method, rest } = group;
  const stepsOf = new Map<number, number>();
  const works = new Map<number, Works>();
  const bare = { ...demands, ...clean };
  for (const next of nexts) {
    let steps = stepsOf.get(next.worksAs);
    if (steps === undefined) {
      steps = stepsCalled({
        site: { ...site, ...next.site },
        zone: { ...zone, ...next.zone, contamination: [] },
        demands: bare,
        method,
        rest,
      });
      stepsOf.set(next.worksAs, steps);
    }
    const cuts = cutsAs(steps);
    const key = cuts * mostHoldsAs + next.holdsAs;
    const same = works.get(key);
    if (same) {
      same.weight += next.weight;
      noteFollowing(same.seen, next.seen);
      same.all &= steps;
      same.any |= steps;
    } else {
      const { weight } = next;
      works.set(key, { next, cuts, weight, seen: { ...next.seen }, all: steps, any: steps });
    }
  }
  return [...works.values()];
}

/** Written out: it is called tens of thousands of times. */
export function noteFollowing(
  seen: Record<Following, number>,
  more: Readonly<Record<Following, number>>,
): void {
  seen.cracks |= more.cracks;
  seen.steel |= more.steel;
  seen.freezeThaw |= more.freezeThaw;
  seen.salts |= more.salts;
}

/** The steps that dirt adds to the work, whatever else is asked for. */
export function dirtSteps(situation: Situation): number {
  const { zone, demands } = situation;
  const without = { zone: { ...zone, contamination: [] }, demands: { ...demands, ...clean } };
  return stepsCalled(situation) & ~stepsCalled({ ...situation, ...without });
}
