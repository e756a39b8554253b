import type { TestId } from '$lib/advice/types';
import type { Say } from '$lib/words/types';

/** How long a test takes, from its figure, with what has to be said besides. */
export const takes = (say: Say, test: TestId, besides = ''): string =>
  `About ${say.duration(say.valueOf(`test.${test}`))}${besides}.`;
