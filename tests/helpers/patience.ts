import { vi } from 'vitest';

/** What is waited for may take a minute on a busy machine; the library gives up after a second. */
const { waitFor } = vi;
vi.waitFor = (what, options = 60_000) => waitFor(what, options);
