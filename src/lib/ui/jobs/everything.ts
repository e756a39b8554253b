import { deleteEverything, inventory, type Places } from '$lib/keep/everything';
import { openProgressStore } from '$lib/keep/practice/progress-store';
import { openResultStore, resultsName } from '$lib/keep/practice/result-store';
import { shelf } from '$lib/ui/photos/shelf';
import { session } from '$lib/ui/session.svelte';
import { siteName } from '$lib/ui/site-name';
import { jobsState } from './jobs-state.svelte';

const name = siteName('down-to-sound');
const ending = name.slice('down-to-sound'.length);

/** Where this site, at its path, keeps things on this device. */
const places: Places = {
  name,
  jobs: () => session.store(),
  photos: shelf,
  progress: () => openProgressStore({ name: siteName('down-to-sound.practice') }),
  given: () => openResultStore({ name: siteName(resultsName) }),
  settings: (key) => {
    const [, plain, end] = /^down-to-sound(\.[a-z-]+)(.*)$/.exec(key) ?? [];
    return plain !== undefined && end === ending;
  },
  caches: `${name} `,
  scope: `${ending}/`,
};

export const whatIsKept = () => inventory(places);

/** Deletes all of it, here and in what this tab holds. Says what could not be deleted. */
export async function deleteAll() {
  // Fetched while there still is a copy to fetch it from.
  const [{ practice }, { given }] = await Promise.all([
    import('$lib/ui/practice/practice.svelte'),
    import('$lib/ui/practice/results/given.svelte'),
  ]);
  await jobsState.forget();
  const left = await deleteEverything(places);
  if (!left.includes('results')) practice.drop();
  if (!left.includes('given')) given.drop();
  await jobsState.refresh();
  return left;
}
