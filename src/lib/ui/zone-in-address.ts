import { browser } from '$app/environment';
import { page } from '$app/state';

/** The zone the address names, or null; prerendered pages name none. Read it inside a derived value. */
export const zoneInAddress = (): string | null =>
  browser ? page.url.searchParams.get('zone') : null;
