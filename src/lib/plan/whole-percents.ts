/** What is less than this stays what it is: it is told as "less than 1%", and leaves no other the whole. */
const least = 0.01;

/**
 * Shares of one whole in whole percents that add up to 100, by the largest remainder: each is rounded
 * down, and what is missing goes to those that lost most. Source: Hamilton's method, by arithmetic.
 * @param shares 0 to 1, together 1
 * @returns 0 to 1
 */
export function wholePercents(shares: readonly number[]): readonly number[] {
  const small = (share: number) => share > 0 && share < least;
  const percents = shares.map((share) => (small(share) ? 0 : 100 * share));
  // What arithmetic left a hair below a whole number is that number.
  const down = percents.map((percent) => Math.floor(percent + 1e-9));
  const tiny = 100 * shares.filter(small).reduce((sum, share) => sum + share, 0);
  const all = tiny > 0 ? 100 - Math.max(1, Math.round(tiny)) : 100;
  const missing = Math.max(0, all - down.reduce((sum, percent) => sum + percent, 0));
  const next = percents
    .map((percent, place) => ({ place, lost: percent - (down[place] ?? 0) }))
    .filter(({ place }) => (percents[place] ?? 0) > 0)
    .sort((one, other) => other.lost - one.lost || one.place - other.place)
    .slice(0, missing);
  const up = new Set(next.map(({ place }) => place));
  return shares.map((share, place) =>
    small(share) ? share : ((down[place] ?? 0) + (up.has(place) ? 1 : 0)) / 100,
  );
}
