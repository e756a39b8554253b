import { sveltekit } from '@sveltejs/kit/vite';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';
import { numbersOnly } from './shared/numbers-only.js';
import { licences } from './src/licences.js';
import { explainers } from './src/lib/learn/markdown/plugin.js';

export default defineConfig({
  plugins: [numbersOnly(), explainers(), licences(), sveltekit()],
  worker: { plugins: () => [numbersOnly(), licences()] },
  build: {
    rollupOptions: {
      output: {
        // Small chunks pack worse than one, and the first question waits for all of these.
        codeSplitting: {
          groups: [
            // The layout with all it imports is needed on every page: one chunk instead of thirty.
            { name: 'everywhere', test: /src\/routes\/\+layout\.svelte$/, priority: 9 },
            // What every answer is said with, and what every drawing is made with.
            {
              name: 'said',
              priority: 8,
              test: /src\/lib\/(ui\/(speech\.svelte|choice-words|zone-in-address|question\/unsure-choice|terms\/Told)|answers\/(units|answers)|interview\/context|words\/en\/ui\/question)\.(ts|svelte)$/,
            },
            {
              name: 'drawn',
              priority: 8,
              test: /src\/lib\/drawing\/(Picture\.svelte|mark\.ts|motif\/(concrete|bar|people)\.ts|choice\/not-sure\.ts)$/,
            },
            // A page for each question, with nothing in it that others need.
            {
              name: 'question',
              priority: 7,
              test: /src\/lib\/ui\/question\/(QuestionPage\.svelte|load\.ts)$/,
            },
            // What keeps a job, opens it and reads it.
            { name: 'kept', priority: 6, test: /src\/lib\/keep\/store\.ts$/ },
            { name: 'talk', priority: 8, test: /src\/lib\/ui\/question\/talk\.svelte\.ts$/ },
            { name: 'later', priority: 6, test: /src\/lib\/ui\/frame\/Later\.svelte$/ },
            // What leaves a question out.
            { name: 'relevance', priority: 6, test: /src\/lib\/advice\/relevance\.ts$/ },
            // The engine for one zone.
            {
              name: 'advice',
              priority: 5,
              test: /src\/lib\/advice\/(advise|relevance|margins|owner-may|owner-limits)\.ts$/,
            },
            {
              name: 'asked-first',
              priority: 5,
              test: /src\/lib\/words\/en\/questions\/first\.ts$/,
            },
            { name: 'asked', priority: 3, test: /src\/lib\/words\/en\/(questions|rules)\.ts$/ },
            {
              name: 'machine',
              priority: 5,
              test: /src\/lib\/interview\/(machine|replay|talk)\.ts$/,
            },
            { name: 'section', priority: 4, test: /src\/lib\/ui\/Section\.svelte$/ },
            // The sentences that advice, plan and sheets are said with.
            {
              name: 'words',
              priority: 4,
              test: /src\/lib\/words\/en\/(rules\/holds|rules\/choice|verdicts|methods|names|settings|steps\/here|ui\/advice|steps)\.ts$/,
            },
            {
              name: 'frames',
              priority: 2,
              test: /src\/lib\/drawing\/(Frames|MethodDrawing)\.svelte$/,
            },
            { name: 'while-open', priority: 1, test: /src\/lib\/ui\/advice\/while-open\.ts$/ },
            { name: 'rest', priority: 1, test: /src\/lib\/ui\/advice\/rest\.ts$/ },
            { name: 'advice-page', priority: 2, test: /src\/lib\/ui\/advice\/AdvicePage\.svelte$/ },
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
