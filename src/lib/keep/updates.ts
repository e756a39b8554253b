/** What a page needs to know about versions of the site. */
export interface Updates {
  /** Starts the waiting version and reloads this tab. Nothing happens when none waits. */
  take(): Promise<void>;
  /** Looks for a new version now, without waiting for the browser to do so. */
  look(): Promise<void>;
  stop(): void;
}

export interface UpdateListener {
  /** A new version is on the device and waits. It may be called again for a later one. */
  readonly waits: () => void;
  /**
   * Another tab has taken a new version. This tab still runs the old one: load the next page
   * from the start instead of by the router. Nothing is lost by that, work is saved as it is made.
   */
  readonly taken: () => void;
}

/**
 * Watches for a new version of the site. It never takes one by itself: `take` is for a button.
 * Does nothing where the browser has no service workers.
 * @param reload how to load the tab anew; given by tests
 */
export function watchUpdates(
  { waits, taken }: UpdateListener,
  reload = () => location.reload(),
): Updates {
  const container = typeof navigator === 'undefined' ? undefined : navigator.serviceWorker;
  if (!container) {
    const nothing = async () => undefined;
    return { take: nothing, look: nothing, stop: () => undefined };
  }
  const ending = new AbortController();
  const { signal } = ending;
  let consented = false;
  let first = container.controller === null;

  /** A worker that has been installed beside a running one waits; the very first does not. */
  const follow = (worker: ServiceWorker | null) => {
    worker?.addEventListener(
      'statechange',
      () => {
        if (worker.state === 'installed' && container.controller) waits();
      },
      { signal },
    );
  };
  void container.ready.then((registration) => {
    if (signal.aborted) return;
    if (registration.waiting && container.controller) waits();
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing), { signal });
  });
  container.addEventListener(
    'controllerchange',
    () => {
      if (consented) reload();
      else if (first) first = false;
      else taken();
    },
    { signal },
  );
  return {
    async take() {
      const waiting = (await container.getRegistration())?.waiting;
      if (!waiting) return;
      consented = true;
      waiting.postMessage('SKIP_WAITING');
    },
    async look() {
      // Offline there is nothing to find.
      await (await container.getRegistration())?.update().catch(() => undefined);
    },
    stop: () => ending.abort(),
  };
}

/** This tab among the others: a channel brings a message to every other channel, in the same tab too. */
const thisTab = `${performance.timeOrigin} ${Math.random()}`;

/** The channel on which one tab tells the others that everything was deleted. */
const clearing = (name: string): BroadcastChannel | undefined =>
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(`${name}.everything`);

/** Tells every tab of this site that everything kept on the device was deleted. */
export function tellCleared(name: string): void {
  const channel = clearing(name);
  channel?.postMessage(thisTab);
  channel?.close();
}

/**
 * Calls back when everything was deleted, in this tab or another. What is shown is not kept any more;
 * the store refuses to write over what is gone, so nothing comes back by itself.
 * @param name the site's name on this device
 * @param deleted hears whether it was this tab
 * @returns the way to stop
 */
export function watchCleared(name: string, deleted: (here: boolean) => void): () => void {
  const channel = clearing(name);
  channel?.addEventListener('message', ({ data }) => deleted(data === thisTab));
  return () => channel?.close();
}
