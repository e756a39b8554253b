import { keepOffline as keep, type OfflineCopy, type OfflineState } from '$lib/keep/offline-copy';
import { pageLive } from './page-live';

/** Keeps the site on the device from when the page stands on. */
export const keepOffline = (worker: string, told: (state: OfflineState) => void): OfflineCopy =>
  keep(worker, pageLive(), told);
