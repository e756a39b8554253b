import type { Say } from '$lib/words/types';

/** From here on a person says "nearly all", and no number: what is left is within the measuring. */
const nearly = 0.95;
/** What rounds to the whole. */
const whole = 0.995;
/** Less than this is something, and no percent of it. */
const least = 0.01;

/** A share of a surface as a person would say it. @param share 0 to 1 */
export function shareSaid(share: number, say: Say): string {
  if (share >= whole) return 'all';
  if (share >= nearly) return 'nearly all';
  return share > 0 && share < least ? `less than ${say.share(least)}` : say.share(share);
}
