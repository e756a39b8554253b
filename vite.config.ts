import { sveltekit } from '@sveltejs/kit/vite';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';
import { factsForPages } from './shared/facts-for-pages.js';
import { chunkOf, forChunks } from './src/chunks.js';
import { licences } from './src/licences.js';
import { explainers } from './src/lib/learn/markdown/plugin.js';
import { textsInData } from './src/texts-in-data.js';

/** Tests of what happens when a page is the first one opened: nothing may have run before in their modules. */
const firstOpened = ['photos', 'practice'].map((name) => `tests/components/${name}.test.ts`);
const components = {
  extends: true as const,
  plugins: [svelteTesting()],
  test: {
    environment: 'jsdom',
    setupFiles: ['tests/helpers/components.ts', 'tests/helpers/patience.ts'],
  },
};

export default defineConfig({
  plugins: [factsForPages(), textsInData(), explainers(), licences(), sveltekit(), forChunks()],
  worker: { plugins: () => [factsForPages(), textsInData(), licences()] },
  environments: {
    client: {
      build: {
        rollupOptions: {
          output: {
            codeSplitting: {
              groups: [
                // The layout with all it imports is needed on every page: one chunk instead of thirty.
                { name: 'everywhere', test: /src\/routes\/\+layout\.svelte$/ },
                // What every answer is said with, and what every drawing is made with.
                {
                  name: 'said',
                  test: /src\/lib\/(ui\/(focus|speech\.svelte|choice-words|zone-in-address|reckoned-first\.svelte|question\/unsure-choice)|answers\/(units|answers|depth|elements)|advice\/approach-asked|words\/(by-language|\w+\/ui\/approach)|interview\/context)\.ts$/,
                },
                {
                  name: 'drawn',
                  test: /src\/lib\/drawing\/(Picture\.svelte|mark\.ts|motif\/(concrete|bar|people|lens|small)\.ts|choice\/not-sure\.ts)$/,
                },
                { name: chunkOf(), includeDependenciesRecursively: false },
              ],
            },
          },
        },
      },
    },
  },
  server: { fs: { allow: ['content', 'shared'] } },
  test: {
    // All cores: what runs beside them by day waits more than it works.
    maxWorkers: '100%',
    // Long, so that a busy machine turns nothing red; the rates are printed and judged by eye.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'engine',
          environment: 'node',
          // One set of modules for all files: the engine keeps no state between them.
          isolate: false,
          setupFiles: ['tests/helpers/patience.ts'],
          include: ['tests/{unit,published,every-route,hostile,cases}/**/*.test.ts'],
        },
      },
      {
        ...components,
        test: {
          ...components.test,
          name: 'components',
          // Also one set of modules: whatever a test needs of session and reader it sets itself.
          isolate: false,
          include: ['tests/components/**/*.test.ts'],
          exclude: firstOpened,
        },
      },
      {
        ...components,
        test: { ...components.test, name: 'components opened first', include: firstOpened },
      },
    ],
  },
});
