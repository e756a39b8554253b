import { paths } from '$lib/ui/paths';
import { preferences } from '$lib/ui/preferences.svelte';

/**
 * The page that a link to a job opens, with the units its sender reads. They are an offer: whoever
 * has chosen keeps their own, since a length means the same in both and only the reader knows which
 * they measure with. They stand before the `#`, where a copy of the site that does not know them
 * still reads the job, and they say nothing of the job to the host.
 */
export const linkPage = (): string =>
  `${new URL(paths.jobs(), location.href).href}?units=${preferences.units}`;
