import fc from 'fast-check';
import { vi } from 'vitest';
import { nightly } from './rounds';

/** What is waited for may take a minute on a busy machine; the library gives up after a second. */
const { waitFor } = vi;
vi.waitFor = (what, options = 60_000) => waitFor(what, options);

/**
 * The same random cases in every run, so that a red is always the work of the last change; other
 * ones every night, whose seed stands in the failure and goes here until it is mended. The night
 * tries more of them, too.
 */
if (!nightly) fc.configureGlobal({ seed: 20_241_127, numRuns: 40 });
