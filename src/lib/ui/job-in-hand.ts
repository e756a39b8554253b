import type { Job, Zone } from '$lib/answers/job';
import { newJobId, type JobStore, type StoredJob } from '$lib/keep/job-store';
import { preferences } from './preferences.svelte';
import { siteName } from './site-name';

/** A job about which nothing is known. */
export const blankJob = (): Job => ({
  name: '',
  site: {},
  zones: [{ id: 'a', name: '', answers: {} }],
});

/** Whether the reader has answered anything. */
export const isStarted = ({ site, zones }: Job): boolean =>
  [site, ...zones.map(({ answers }) => answers)].some((each) => Object.keys(each).length > 0);

/** A job as it is worked on: with a zone to answer for. */
export const withZone = (job: Job): Job =>
  job.zones.length ? job : { ...job, zones: blankJob().zones };

/** The zone by that id, or none; the first where none is named. Nothing stands in for one that is not there. */
export const zoneOf = ({ zones }: Job, id: string | null): Zone | undefined =>
  id === null ? zones[0] : zones.find((zone) => zone.id === id);

const newKey = 'down-to-sound.new-job';

/** An id for a job that is not on the device yet, the same after a reload of the tab. */
export function unsavedId(fresh = false): string {
  const id = newJobId();
  try {
    const before = fresh ? null : sessionStorage.getItem(newKey);
    if (before) return before;
    sessionStorage.setItem(newKey, id);
  } catch {
    // No storage: it holds as long as the page stands.
  }
  return id;
}

/** The job last worked on; where the browser has forgotten which, the one last changed. */
async function lastJob(store: JobStore): Promise<StoredJob | undefined> {
  const id = preferences.forgotten ? (await store.list())[0]?.id : preferences.job;
  return id ? store.get(id) : undefined;
}

/** Opens the jobs of this device and reads the one last worked on. */
export async function openJobs() {
  // Fetched apart: a question can be read and answered before the store's parser has arrived.
  const { jobsName, memoryStore, openStore } = await import('$lib/keep/store');
  const store = await openStore({ name: siteName(jobsName) });
  try {
    const stored = await lastJob(store);
    // The job of the last visit is named, and not there: an empty one must not pass for it.
    return { store, stored, lost: !stored && store.kind === 'device' && preferences.job !== null };
  } catch {
    // A device that does not give back what it has is not trusted with more.
    store.close();
    return { store: memoryStore('refused'), stored: undefined, lost: false };
  }
}
