import type { Unavailable } from './job-store';

/**
 * Opens something in the browser's storage, or says why it cannot be had.
 * Never throws, and never waits longer than `patience` milliseconds.
 * @param open gets what to call when another tab stands in the way
 */
export async function openPatiently<T>(
  open: (blocked: () => void) => Promise<T>,
  patience: number,
): Promise<T | Unavailable> {
  try {
    // Where storage is forbidden even asking for it can throw.
    if (typeof indexedDB === 'undefined' || indexedDB === null) return 'no-storage';
    return await new Promise((resolve, reject) => {
      const timer = setTimeout(() => resolve('slow'), patience);
      open(() => resolve('blocked'))
        .then(resolve, reject)
        .finally(() => clearTimeout(timer));
    });
  } catch {
    return 'refused';
  }
}
