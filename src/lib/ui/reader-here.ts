let here: Promise<void> | undefined;

/** What somebody does who goes on with a page. */
const signs = ['pointerdown', 'pointermove', 'keydown', 'scroll', 'focusin', 'beforeprint'];

/**
 * Resolves when somebody goes on with the page: touches, points, scrolls, presses a key, prints. Or
 * when the whole site lies on the device, where more of it costs nobody anything. What a page does
 * not show at first waits for it.
 */
export const readerHere = (): Promise<void> =>
  (here ??= new Promise((resolve) => {
    const ending = new AbortController();
    const { signal } = ending;
    const go = () => {
      ending.abort();
      resolve();
    };
    for (const sign of signs) addEventListener(sign, go, { capture: true, passive: true, signal });
    globalThis.matchMedia?.('print').addEventListener('change', go, { signal });
    // The worker says so to every page (keep/offline-copy.ts).
    (navigator.serviceWorker as ServiceWorkerContainer | undefined)?.addEventListener(
      'message',
      ({ data }: MessageEvent<{ offline?: string } | null>) => data?.offline === 'whole' && go(),
      { signal },
    );
  }));
