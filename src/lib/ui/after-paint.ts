/**
 * Runs something once the browser has painted what the reader just did, so that a tap is seen at
 * once and the longer work follows. Of several asked for before that, the last is run.
 */
export function afterPaint(): (work: () => void) => void {
  let latest: (() => void) | undefined;
  return (work) => {
    const waiting = latest !== undefined;
    latest = work;
    if (waiting) return;
    requestAnimationFrame(() =>
      setTimeout(() => {
        const now = latest;
        latest = undefined;
        now?.();
      }),
    );
  };
}
