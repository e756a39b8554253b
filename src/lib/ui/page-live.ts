/** Milliseconds in which nothing may have arrived. */
const lull = 700;
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Resolves when the browser has nothing to do, and nothing has been fetched for a while. */
export async function pageLive(): Promise<void> {
  const fetched = () => performance.getEntriesByType('resource').length;
  let before = -1;
  while (document.readyState !== 'complete' || fetched() !== before) {
    before = fetched();
    await pause(lull);
  }
  // Not in every browser.
  if ('requestIdleCallback' in window)
    await new Promise((idle) => requestIdleCallback(idle, { timeout: 10_000 }));
}
