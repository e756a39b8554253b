import type { Plugin } from 'vite';

/** The chunk a file goes into, by the pages that need it; null where the bundler may choose. */
export function chunkOf(): (
  id: string,
  context: {
    getModuleInfo(
      id: string,
    ): { importedIds: readonly string[]; dynamicallyImportedIds: readonly string[] } | null;
  },
) => string | null;
/** What the framework does not reckon with where files are put together. */
export function forChunks(): Plugin;
