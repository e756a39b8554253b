import { openDeviceStore } from './device-store';
import type { JobStore } from './job-store';
import { memoryStore } from './memory-store';

export { memoryStore };

/** What the jobs are called on the device, at the root of a host. */
export const jobsName = 'down-to-sound';

/**
 * Opens the jobs on this device; when that cannot be had, a store in memory that says why.
 * Never throws, and never waits longer than `patience` milliseconds.
 */
export async function openStore(
  options: { readonly name?: string; readonly patience?: number } = {},
): Promise<JobStore> {
  const opened = await openDeviceStore(options.name ?? jobsName, options.patience ?? 4000);
  return typeof opened === 'string' ? memoryStore(opened) : opened;
}
