import { tick } from 'svelte';
import { allNow } from '$lib/ui/in-turn';
import { siteName } from '$lib/ui/site-name';

const key = siteName('down-to-sound.folds');

const folds = () => [...document.querySelectorAll<HTMLDetailsElement>('main details')];
const nameOf = (fold: HTMLDetailsElement) => fold.querySelector('summary')?.textContent ?? '';

/** Keeps what is open on the page, when the reader leaves it for one outside this code. */
export function keepFolds(): void {
  const open = folds().flatMap((fold, at) => (fold.open ? [[at, nameOf(fold)] as const] : []));
  try {
    sessionStorage.setItem(key, JSON.stringify([location.href, open]));
  } catch {
    // No storage: they open it again themselves.
  }
}

/**
 * Opens again what was open, for a reader who comes back or loads the page anew.
 * @param whole resolves when all parts of the page are there
 */
export async function openFolds(whole: () => Promise<void>): Promise<void> {
  const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  if (!entry || entry.type === 'navigate') return;
  try {
    const kept = JSON.parse(sessionStorage.getItem(key) ?? '[]') as [string?, [number, string][]?];
    const [href, open = []] = kept;
    if (href !== location.href || !open.length) return;
    await whole();
    await tick();
    allNow();
    const now = folds();
    for (const [at, name] of open) {
      const fold = now[at];
      if (fold && nameOf(fold) === name) fold.open = true;
    }
  } catch {
    // What is kept cannot be read: the page stands as it comes.
  }
}
