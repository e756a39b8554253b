/** Where the site lies that is built to be tried below a path of a host. */
export const belowPath = '/deep/down';
