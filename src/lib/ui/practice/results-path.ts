import { paths } from '$lib/ui/paths';

/** Where results are gathered. Not among `paths`, which the first question waits for. */
export const resultsPath = (): string => `${paths.practice()}results/`;
