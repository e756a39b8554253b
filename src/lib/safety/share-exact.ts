import { fewestShares, fits, loadOf, type Pile, type Share } from './share-piles';

/**
 * Exact sharing for small jobs, by dynamic programming over what is left of each pile:
 * best(k, rest) = min over first share of max(load(first), best(k - 1, rest - first)).
 * Every rest is one number in mixed radix, so a rest less a share is a subtraction.
 */
interface Table {
  readonly piles: readonly Pile[];
  /** Number of rests: the product of units + 1. */
  readonly size: number;
  /** The share that each number stands for. */
  readonly shares: readonly Share[];
  /** Load of one person doing all of a rest: best(1, rest). */
  readonly alone: Float64Array;
}

function tableOf(piles: readonly Pile[]): Table {
  const size = restsOf(piles);
  const shares: Share[] = [];
  for (let code = 0; code < size; code += 1) {
    let left = code;
    shares.push(
      piles.map(({ units }) => {
        const digit = left % (units + 1);
        left = (left - digit) / (units + 1);
        return digit;
      }),
    );
  }
  return { piles, size, shares, alone: Float64Array.from(shares, (share) => loadOf(piles, share)) };
}

/** How many rests there are: what the work of the exact way grows with, squared. */
export const restsOf = (piles: readonly Pile[]): number =>
  piles.reduce((product, { units }) => product * (units + 1), 1);

const contains = (rest: Share, share: Share): boolean =>
  share.every((units, pile) => units <= (rest[pile] ?? 0));

/** The best first share of a rest, given the best for one share fewer. */
function bestFirst(
  { shares, alone }: Table,
  rest: number,
  before: Float64Array,
): { load: number; first: number } {
  const whole = shares[rest] ?? [];
  let load = Infinity;
  let first = 0;
  for (let code = 0; code <= rest; code += 1) {
    const own = alone[code] ?? Infinity;
    if (own >= load || !contains(whole, shares[code] ?? [])) continue;
    const both = Math.max(own, before[rest - code] ?? Infinity);
    if (both < load) {
      load = both;
      first = code;
    }
  }
  return { load, first };
}

/** The next row of best loads, for one share more. */
const nextRow = (table: Table, before: Float64Array): Float64Array =>
  Float64Array.from({ length: table.size }, (_, rest) => bestFirst(table, rest, before).load);

/** Reads the shares back out of the rows. */
function unfold(table: Table, rows: readonly Float64Array[], count: number): Share[] {
  const shares: Share[] = [];
  let rest = table.size - 1;
  for (let left = count; left > 1; left -= 1) {
    const before = rows[left - 2];
    if (!before) throw new Error('a row of the sharing table is missing');
    const { first } = bestFirst(table, rest, before);
    shares.push(table.shares[first] ?? []);
    rest -= first;
  }
  return [...shares, table.shares[rest] ?? []];
}

/** A sharing-out and how it was found. */
export interface Sharing {
  /** Fewest shares that keep everybody within the budgets. */
  readonly fewest: number;
  /** The shares, for as many places as there were to fill. */
  readonly shares: readonly Share[];
}

/**
 * The fewest shares that fit, and then the split over all places that spares the worst-off most.
 * @param piles each unit fits a share on its own
 * @param placesFor how many places there are to fill when so many shares are needed (crew x days)
 */
export function shareExactly(
  piles: readonly Pile[],
  placesFor: (fewest: number) => number,
): Sharing {
  const table = tableOf(piles);
  const rows: Float64Array[] = [table.alone];
  const all = table.size - 1;
  const loadWith = (count: number): number => {
    if (count === 1) return table.alone[all] ?? 0;
    while (rows.length < count - 1) rows.push(nextRow(table, rows[rows.length - 1] ?? table.alone));
    return bestFirst(table, all, rows[count - 2] ?? table.alone).load;
  };
  let fewest = fewestShares(piles);
  if (fewest === 0) return { fewest, shares: [] };
  while (!fits(loadWith(fewest))) fewest += 1;
  const places = Math.max(fewest, placesFor(fewest));
  loadWith(places);
  return { fewest, shares: unfold(table, rows, places) };
}
