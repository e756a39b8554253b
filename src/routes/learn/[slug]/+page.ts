import { browser } from '$app/environment';
import type { PageLoad } from './$types';

/**
 * An explainer is a page without JavaScript, so a browser always loads it whole:
 * a link that forgot to ask for that ends here.
 */
export const load: PageLoad = ({ data, url }) => {
  if (!browser) return data;
  location.assign(url);
  return new Promise<typeof data>(() => undefined);
};
