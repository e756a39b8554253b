import { sveltekit } from '@sveltejs/kit/vite';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';
import { factsForPages } from './shared/facts-for-pages.js';
import { licences } from './src/licences.js';
import { explainers } from './src/lib/learn/markdown/plugin.js';
import { textsInData } from './src/texts-in-data.js';

export default defineConfig({
  plugins: [factsForPages(), textsInData(), explainers(), licences(), sveltekit()],
  worker: { plugins: () => [factsForPages(), textsInData(), licences()] },
  build: {
    rollupOptions: {
      output: {
        // Small chunks pack worse than one, and the first question waits for all of these.
        codeSplitting: {
          groups: [
            // The layout with all it imports is needed on every page: one chunk instead of thirty.
            { name: 'everywhere', test: /src\/routes\/\+layout\.svelte$/ },
            // What every answer is said with, and what every drawing is made with.
            {
              name: 'said',
              test: /src\/lib\/(ui\/(speech\.svelte|choice-words|zone-in-address|question\/unsure-choice)|answers\/units|interview\/context)\.ts$/,
            },
            {
              name: 'drawn',
              test: /src\/lib\/drawing\/(Picture\.svelte|mark\.ts|motif\/(concrete|bar|people)\.ts|choice\/not-sure\.ts)$/,
            },
          ],
        },
      },
    },
  },
  server: { fs: { allow: ['content', 'shared'] } },
  test: {
    // All cores: nothing else runs beside the tests.
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'engine',
          environment: 'node',
          // One set of modules for all files: the engine keeps no state between them.
          isolate: false,
          include: ['tests/{unit,published,every-route,hostile,cases}/**/*.test.ts'],
          // Long, so that a busy machine turns nothing red; the rates are printed and judged by eye.
          testTimeout: 600_000,
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'components',
          environment: 'jsdom',
          include: ['tests/components/**/*.test.ts'],
          setupFiles: ['tests/helpers/components.ts'],
        },
      },
    ],
  },
});
