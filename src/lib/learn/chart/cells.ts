import { adviseSettled } from '$lib/advice/settle';
import type { Hold, SettledSite, SettledZone, Verdict } from '$lib/advice/types';
import {
  choicesOf,
  type Contaminant,
  type DepthBand,
  type Finish,
  type Looseness,
  type Texture,
} from '$lib/answers/questions';
import { methods, type MethodId, type StepId } from '$shared/methods';

/** What the chart tells apart: a floor that carries machines, and a place for hand tools. */
export const chartPlaces = ['slab', 'steps'] as const;
export type ChartPlace = (typeof chartPlaces)[number];

/** One contaminant, or none. */
export const soils = ['clean', ...choicesOf('contamination')] as const;
export type Soil = 'clean' | Contaminant;

/** One spot of the chart: everything it asks for. */
export interface Spot {
  readonly place: ChartPlace;
  readonly depth: DepthBand;
  readonly looseness: Looseness;
  readonly texture: Texture;
  readonly soil: Soil;
  readonly finish?: Finish;
}

/** What stands in a cell. */
export interface Cell {
  readonly verdict: Verdict;
  /** The method, or what it will be once what holds it is cleared; null where no surface method applies. */
  readonly method: MethodId | null;
  /** Strength of the method, 0 washing to 3 breaking; null without one. */
  readonly strength: 0 | 1 | 2 | 3 | null;
  /** What holds it up. */
  readonly holds: readonly Hold[];
  /** Work on the contaminant that comes before the method. */
  readonly first: readonly StepId[];
}

/** What the chart takes for granted; it is printed beside it. */
export const assumedSite = {
  setting: 'open',
  salts: 'none',
  freezeThaw: 'rare',
  thickness: 'unknown',
  warnings: [],
} as const satisfies Omit<SettledSite, 'element'>;
export const assumedZone = {
  cracks: 'none',
  steel: 'none-seen',
  finish: 'undecided',
  area: 'unknown',
} as const satisfies Partial<SettledZone>;

const beforeAnything: readonly StepId[] = ['degrease', 'strip-growth', 'strip-coating'];

/** A spot as the engine takes it. */
export const settledOf = ({ place, depth, looseness, texture, soil, finish }: Spot) => ({
  site: { ...assumedSite, element: place } satisfies SettledSite,
  zone: {
    ...assumedZone,
    depth,
    looseness,
    texture,
    contamination: soil === 'clean' ? [] : [soil],
    ...(finish && { finish }),
  } satisfies SettledZone,
});

/** The cell of a spot, by the engine. */
export function cellOf(spot: Spot): Cell {
  const { site, zone } = settledOf(spot);
  const { verdict, underneath: method, holds, steps } = adviseSettled(site, zone);
  return {
    verdict,
    method,
    strength: method && methods[method].class,
    holds,
    first: steps.map(({ id }) => id).filter((id) => beforeAnything.includes(id)),
  };
}

const rulesOf = ({ holds }: Cell): string => holds.map(({ rule }) => rule).join();

/** Two cells that read the same; work on the contaminant stands with its column. */
export const sameCell = (one: Cell, other: Cell): boolean =>
  one.verdict === other.verdict && one.method === other.method && rulesOf(one) === rulesOf(other);
