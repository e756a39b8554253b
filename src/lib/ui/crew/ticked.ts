import { siteName } from '$lib/ui/site-name';

const key = siteName('down-to-sound.ticked');
const all = (): Record<string, readonly string[]> =>
  JSON.parse(sessionStorage.getItem(key) ?? '{}');
const placeOf = (job: string, day: string) => JSON.stringify([job, day]);

/** The steps of a day that are ticked off in this tab; none where the browser keeps nothing. */
export function tickedOn(job: string, day: string): readonly string[] {
  try {
    return all()[placeOf(job, day)] ?? [];
  } catch {
    return [];
  }
}

export function keepTicked(job: string, day: string, steps: readonly string[]): void {
  try {
    sessionStorage.setItem(key, JSON.stringify({ ...all(), [placeOf(job, day)]: steps }));
  } catch {
    // It holds as long as the page stands.
  }
}
