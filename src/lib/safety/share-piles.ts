/**
 * The sharing-out as plain arithmetic. Work comes in piles of equal units (quarter hours of one tool);
 * a unit takes the same part of each budget whoever does it; a share is what one person does in one day,
 * and may take at most 1 of every budget.
 */

/** One kind of work: how many units there are, and the part of each budget one unit takes. */
export interface Pile {
  readonly units: number;
  readonly parts: readonly number[];
}

/** Units of each pile that one person does in one day. */
export type Share = readonly number[];

/** Room for rounding when parts that should meet a budget exactly are added up. */
const roundOff = 1e-9;

/** Whether a load stays within the budgets. */
export const fits = (load: number): boolean => load <= 1 + roundOff;

/** The fullest budget of a share: 1 is full. */
export function loadOf(piles: readonly Pile[], share: Share): number {
  const budgets = piles[0]?.parts.length ?? 0;
  let fullest = 0;
  for (let budget = 0; budget < budgets; budget += 1) {
    let filled = 0;
    for (let pile = 0; pile < piles.length; pile += 1)
      filled += (share[pile] ?? 0) * (piles[pile]?.parts[budget] ?? 0);
    fullest = Math.max(fullest, filled);
  }
  return fullest;
}

/** The fullest budget of the worst-off share. */
export const worstLoad = (piles: readonly Pile[], shares: readonly Share[]): number =>
  shares.reduce((worst, share) => Math.max(worst, loadOf(piles, share)), 0);

/** Piles of which not even one unit fits into a day: sharing out cannot help there. */
export const unshareable = (piles: readonly Pile[]): number[] =>
  piles.flatMap((pile, index) =>
    pile.units > 0 && !pile.parts.every((part) => fits(part)) ? [index] : [],
  );

/**
 * A number of shares below which it cannot be done, whatever the way: the work of each budget
 * must fit in all shares together, and each pile in shares that hold nothing else.
 */
export function fewestShares(piles: readonly Pile[]): number {
  const budgets = piles[0]?.parts.length ?? 0;
  let fewest = piles.some((pile) => pile.units > 0) ? 1 : 0;
  for (let budget = 0; budget < budgets; budget += 1) {
    const all = piles.reduce((sum, pile) => sum + pile.units * (pile.parts[budget] ?? 0), 0);
    fewest = Math.max(fewest, Math.ceil(all - roundOff * Math.max(1, all)));
  }
  for (const { units, parts } of piles) {
    const part = Math.max(0, ...parts);
    if (units > 0 && part > 0)
      fewest = Math.max(fewest, Math.ceil(units / Math.floor((1 + roundOff) / part)));
  }
  return fewest;
}
