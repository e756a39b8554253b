/**
 * How much of the site is on the device. `spared`: nothing is fetched, because the device saves data.
 */
export type OfflineState = 'filling' | 'whole' | 'partly' | 'spared';

/** What a page says to the worker: fetch what is missing, or only tell how much is there. */
export type OfflineOrder = 'FILL' | 'TELL';
/** What the worker says to pages. */
export interface OfflineNews {
  readonly offline: 'whole' | 'partly';
}

export interface OfflineCopy {
  /** Keeps the site on the device although it saves data. */
  keepAnyway(): void;
  stop(): void;
}

/** Whether the reader asked their device to spend little. Some browsers do not tell. */
const savesData = (): boolean =>
  (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;

/**
 * Keeps the site on the device, and makes up what is missing there at every visit.
 * @param worker address of the service worker
 * @param live resolves when the page stands and has fetched what it needs; before, nothing is done
 * @param told hears how much is there, whenever that changes
 */
export function keepOffline(
  worker: string,
  live: Promise<unknown>,
  told: (state: OfflineState) => void,
): OfflineCopy {
  const container = typeof navigator === 'undefined' ? undefined : navigator.serviceWorker;
  if (!container) return { keepAnyway: () => undefined, stop: () => undefined };
  const ending = new AbortController();
  const { signal } = ending;
  let anyway = false;

  container.addEventListener(
    'message',
    ({ data }: MessageEvent<Partial<OfflineNews> | null>) => {
      if (data?.offline) told(data.offline);
    },
    { signal },
  );

  const begin = async (): Promise<void> => {
    const spare = savesData() && !anyway;
    const there = await container.getRegistration(worker).catch(() => undefined);
    const own = there?.active?.scriptURL === worker ? there : undefined;
    if (spare && !own) return told('spared');
    const order: OfflineOrder = spare ? 'TELL' : 'FILL';
    const registration = own ?? (await container.register(worker));
    if (!registration || signal.aborted) return;
    if (!registration.active) told('filling');
    const give = () => {
      for (const each of [registration.installing, registration.waiting, registration.active])
        each?.postMessage(order);
    };
    give();
    registration.addEventListener('updatefound', give, { signal });
  };
  // Storage may be forbidden, the network gone: the site works without a copy.
  const start = () => void begin().catch(() => undefined);
  void live.then(start);
  return {
    keepAnyway() {
      anyway = true;
      start();
    },
    stop: () => ending.abort(),
  };
}
