import type { Sharing } from './share-exact';
import { fewestShares, fits, loadOf, worstLoad, type Pile, type Share } from './share-piles';

/**
 * Sharing by dealing, for jobs too large for the exact way. Every share gets the same whole number of
 * units of each pile; what is left over is dealt one by one, heaviest pile first, to whoever is then
 * worst-off least. No budget of any share passes the even split by more than one unit of each pile:
 * load <= all / places + the sum of one unit of each pile.
 */
export function deal(piles: readonly Pile[], places: number): Share[] {
  const shares = Array.from({ length: places }, () =>
    piles.map(({ units }) => Math.floor(units / places)),
  );
  const heaviestFirst = piles
    .map((pile, index) => ({ index, left: pile.units % places, weight: Math.max(...pile.parts) }))
    .sort((a, b) => b.weight - a.weight || a.index - b.index);
  for (const { index, left } of heaviestFirst) {
    const loads = shares.map((share, place) => ({
      place,
      load: loadWithOneMore(piles, share, index),
    }));
    loads.sort((a, b) => a.load - b.load || a.place - b.place);
    for (const { place } of loads.slice(0, left)) {
      const share = shares[place];
      if (share) share[index] = (share[index] ?? 0) + 1;
    }
  }
  return shares;
}

function loadWithOneMore(piles: readonly Pile[], share: Share, pile: number): number {
  return loadOf(
    piles,
    share.map((units, index) => (index === pile ? units + 1 : units)),
  );
}

/**
 * The fewest shares for which dealing fits, and the deal over all places.
 * As many places as units always fit, since each unit fits a share on its own, so the search ends.
 */
export function shareByDealing(
  piles: readonly Pile[],
  placesFor: (fewest: number) => number,
): Sharing {
  let fewest = fewestShares(piles);
  if (fewest === 0) return { fewest, shares: [] };
  let kept = deal(piles, fewest);
  while (!fits(worstLoad(piles, kept))) {
    fewest += 1;
    kept = deal(piles, fewest);
  }
  const places = Math.max(fewest, placesFor(fewest));
  const wider = deal(piles, places);
  if (worstLoad(piles, wider) <= worstLoad(piles, kept)) return { fewest, shares: wider };
  const idle = piles.map(() => 0);
  return { fewest, shares: [...kept, ...Array.from({ length: places - fewest }, () => idle)] };
}
