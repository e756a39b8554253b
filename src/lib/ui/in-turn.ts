import { flushSync } from 'svelte';

/** Milliseconds of work after which the page looks whether somebody taps. */
const slice = 8;

/** What waits for its turn, first come first. */
const waiting = new Set<() => void>();
let busy = false;
let stands = false;

/** Told once the page that came as HTML has been taken over; before that everything is in it already. */
export function pageStands(): void {
  stands = true;
}
/** Whether what the reader does not see yet may come in its turn. */
export const mayWait = (): boolean => stands;

/** Lets taps, keys and paints go first. */
export const giveWay = (): Promise<void> =>
  // Not in every browser.
  (globalThis as { scheduler?: { yield?: () => Promise<void> } }).scheduler?.yield?.() ??
  new Promise((go) => setTimeout(go));

/**
 * Does something once the browser has painted, a bit at a time and one after the other, so that no
 * tap waits long.
 * @returns a stop, for what has gone meanwhile
 */
export function inTurn(work: () => void): () => void {
  waiting.add(work);
  if (!busy) {
    busy = true;
    requestAnimationFrame(() => setTimeout(() => void goOn()));
  }
  return () => waiting.delete(work);
}

function doNext(): void {
  const [next] = waiting;
  if (!next) return;
  waiting.delete(next);
  next();
  flushSync();
}

async function goOn(): Promise<void> {
  while (waiting.size) {
    const began = performance.now();
    while (waiting.size && performance.now() - began < slice) doNext();
    await giveWay();
  }
  busy = false;
}

/** Does all that waits at once: it is printed, or gone through. */
export function allNow(): void {
  while (waiting.size) doNext();
}
globalThis.addEventListener?.('beforeprint', allNow);
