/** The file that holds the whole site, from where the site lies. A `.txt`: hosts pack text on the way. */
export const wholeSite = '_app/whole-site.txt';

/**
 * Instructions to the host, the description of the job file for other programs, data of pages that
 * are never taken over, and the icon the device takes when it installs: no page asks for them.
 */
export const notKept = ['_headers', 'job.schema.json', '__data.json', 'icon-512.png'];
