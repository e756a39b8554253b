import { siteName } from '$lib/ui/site-name';

const key = siteName('down-to-sound.place');

/** Keeps how far down the page the reader was, when they leave it for one outside this code. */
export function keepPlace(): void {
  try {
    sessionStorage.setItem(key, JSON.stringify([location.href, scrollY]));
  } catch {
    // No storage: they find their place again themselves.
  }
}

/**
 * Takes a reader who comes back, or loads the page anew, to where they were. The router does so
 * before what the device keeps has come in, when the page is still short: call this when it stands.
 */
export function returnToPlace(): void {
  const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  if (!entry || entry.type === 'navigate') return;
  try {
    const [href, y] = JSON.parse(sessionStorage.getItem(key) ?? '[]') as [string?, number?];
    if (href === location.href && y) scrollTo(0, y);
  } catch {
    // What is kept cannot be read: the page stands at its top.
  }
}
