import { resolve } from '$app/paths';

/**
 * What something is called on the device. Two copies of the site on one origin, at two paths, must
 * never touch each other's: names carry the path; at the root they stay what they always were.
 */
export const siteName = (name: string): string => name + resolve('/').replace(/\/$/, '');

/** Where the reader's choices are kept. */
export const preferencesKey = siteName('down-to-sound.preferences');
