import { adviseSettled } from '$lib/advice/settle';
import type { Hold, SettledSite, SettledZone } from '$lib/advice/types';
import {
  choicesOf,
  type Cracks,
  type Element,
  type Finish,
  type Looseness,
  type Texture,
  type Warning,
} from '$lib/answers/questions';
import type { MethodId } from '$shared/methods';
import { assumedSite, assumedZone, cellOf, chartPlaces, type ChartPlace, type Spot } from './cells';

/** Where the chart names one of the two gentlest methods: the surfaces it can stand on. */
export interface FinishCase {
  readonly place: ChartPlace;
  /** What the chart says while the finish is left open. */
  readonly says: MethodId;
  /** Absent where the texture makes no difference: the method leaves its own. */
  readonly texture?: Texture;
  /** The loosened states that read the same; absent where they make no difference. */
  readonly looseness?: readonly Looseness[];
}

/** Finishes that ask for the same, and what each case becomes under them. */
export interface FinishRow {
  readonly finishes: readonly Finish[];
  readonly methods: readonly MethodId[];
}

/** A spot at which the chart says what a case stands for. */
const spotOf = ({ place, says, texture = 'smooth', looseness }: FinishCase): Spot => ({
  place,
  depth: 'film',
  looseness: looseness?.[0] ?? 'tight',
  texture,
  soil: says === 'grind' ? 'thin-coating' : 'clean',
});

const underEach = (one: FinishCase): string =>
  choicesOf('finish')
    .map((finish) => cellOf({ ...spotOf(one), finish }).method)
    .join();

/** Washing on one texture: what is firm and what dusts apart, where a finish tells them apart. */
function washing(place: ChartPlace, texture: Texture): FinishCase[] {
  const [firm, dusty] = (['tight', 'powdery'] as const).map((state): FinishCase => ({
    place,
    says: 'pressure-wash',
    texture,
    looseness: [state],
  })) as [FinishCase, FinishCase];
  return underEach(firm) === underEach(dusty)
    ? [{ ...firm, looseness: ['tight', 'powdery'] }]
    : [firm, dusty];
}

/**
 * The cases in which the finish can ask for more than the chart's method leaves: a rougher surface,
 * or one without its skin. That every other cell stands whatever the finish is proven in the tests,
 * but for a firm hole that is filled: the page says what to do with that.
 */
export const finishCases: readonly FinishCase[] = chartPlaces.flatMap((place): FinishCase[] => [
  ...choicesOf('texture').flatMap((texture) => washing(place, texture)),
  { place, says: 'grind' },
]);

/** What goes on next, and what it makes of each case; finishes that ask for the same together. */
export function finishRows(): readonly FinishRow[] {
  const rows: { finishes: Finish[]; methods: MethodId[] }[] = [];
  for (const finish of choicesOf('finish')) {
    const found = finishCases.map((each) => cellOf({ ...spotOf(each), finish }).method as MethodId);
    const row = rows.find(({ methods: known }) => known.join() === found.join());
    if (row) row.finishes.push(finish);
    else rows.push({ finishes: [finish], methods: found });
  }
  return rows;
}

/**
 * Whether off the floor every finish asks for what it asks for on a floor, with grit in place of shot:
 * then one half of the table says both, and paper has room for letters one can read.
 */
export function finishesMirror(): boolean {
  const rows = finishRows();
  const half = finishCases.length / 2;
  const alike = finishCases.slice(0, half).every((one, index) => {
    const other = finishCases[half + index] as FinishCase;
    return JSON.stringify({ ...one, place: '' }) === JSON.stringify({ ...other, place: '' });
  });
  return (
    alike &&
    rows.every(({ methods: found }) =>
      found
        .slice(0, half)
        .every(
          (method, index) =>
            (method === 'shotblast' ? 'abrasive-blast' : method) === found[half + index],
        ),
    )
  );
}

/** Something found on the site that stops the work, or must be found out, whatever the chart says. */
export interface ChartStop {
  readonly found:
    | { readonly question: 'warnings'; readonly choice: Warning }
    | { readonly question: 'element'; readonly choice: Element }
    | { readonly question: 'cracks'; readonly choice: Cracks };
  readonly hold: Hold;
  /** Whether it holds up the gentlest work too, or only breaking out. */
  readonly when: 'always' | 'breaking-out';
}

const site: SettledSite = { ...assumedSite, element: 'slab' };
const zone: SettledZone = {
  ...assumedZone,
  depth: 'film',
  looseness: 'tight',
  texture: 'sandy',
  contamination: [],
};
const rough: SettledZone = { ...zone, depth: '6-to-20', looseness: 'fractured' };

function stopOf(
  found: ChartStop['found'],
  change: Partial<SettledSite>,
  crack: Partial<SettledZone>,
): ChartStop[] {
  const at = (base: SettledZone) =>
    adviseSettled({ ...site, ...change }, { ...base, ...crack }).holds[0];
  const [gentle, breaking] = [at(zone), at(rough)];
  const hold = gentle ?? breaking;
  return hold ? [{ found, hold, when: gentle ? 'always' : 'breaking-out' }] : [];
}

/** Every warning sign, kind of concrete and crack that stops the work by itself, by the engine. */
export const chartStops = (): readonly ChartStop[] =>
  [
    ...choicesOf('warnings').map((choice) =>
      stopOf({ question: 'warnings', choice }, { warnings: [choice] }, {}),
    ),
    ...choicesOf('cracks').map((choice) =>
      stopOf({ question: 'cracks', choice }, {}, { cracks: choice }),
    ),
    ...choicesOf('element').map((choice) =>
      stopOf({ question: 'element', choice }, { element: choice }, {}),
    ),
  ].flat();
