import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/**
 * The house has floors, and imports only go down.
 * Each room lists what it may NOT reach: everything above it, and (for the engine) any framework.
 */
const frameworks = [
  'svelte',
  'svelte/*',
  '$app/*',
  'xstate',
  '@xstate/*',
  'idb',
  'mdsvex',
  'papaparse',
];
const above = {
  answers: [
    'survey',
    'advice',
    'trial',
    'plan',
    'safety',
    'readiness',
    'climate',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  survey: [
    'advice',
    'trial',
    'plan',
    'safety',
    'readiness',
    'climate',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  advice: [
    'trial',
    'plan',
    'safety',
    'readiness',
    'climate',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  trial: [
    'plan',
    'safety',
    'readiness',
    'climate',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  climate: [
    'advice',
    'trial',
    'plan',
    'safety',
    'readiness',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  plan: [
    'safety',
    'readiness',
    'climate',
    'practice',
    'interview',
    'keep',
    'words',
    'drawing',
    'ui',
  ],
  safety: ['readiness', 'climate', 'practice', 'interview', 'keep', 'words', 'drawing', 'ui'],
  readiness: ['safety', 'climate', 'practice', 'interview', 'keep', 'words', 'drawing', 'ui'],
  practice: ['interview', 'keep', 'words', 'drawing', 'ui'],
  interview: ['practice', 'keep', 'words', 'drawing', 'ui'],
  keep: ['words', 'drawing', 'ui'],
  words: ['interview', 'drawing', 'ui'],
  drawing: ['keep', 'interview', 'learn', 'ui'],
  learn: ['keep', 'interview', 'ui'],
};
const engine = [
  'answers',
  'survey',
  'advice',
  'trial',
  'climate',
  'plan',
  'safety',
  'readiness',
  'practice',
];

const layers = Object.entries(above).map(([room, upstairs]) => ({
  files: [`src/lib/${room}/**/*.{ts,svelte}`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            group: upstairs.flatMap((name) => [`$lib/${name}`, `$lib/${name}/*`]),
            message: `src/lib/${room} may not import from a room above it.`,
          },
          {
            group: ['../*', '../../*'],
            message: 'Leave a room by its name: use $lib/… or $shared/….',
          },
          ...(engine.includes(room)
            ? [
                {
                  group: frameworks,
                  message: 'The engine is plain TypeScript: no framework, no DOM.',
                },
              ]
            : []),
        ],
      },
    ],
    ...(engine.includes(room)
      ? {
          'no-restricted-globals': [
            'error',
            'window',
            'document',
            'localStorage',
            'navigator',
            'performance',
            'fetch',
          ],
          'no-restricted-properties': [
            'error',
            {
              object: 'Date',
              property: 'now',
              message: 'The engine has no clock: pass the time in.',
            },
            {
              object: 'Math',
              property: 'random',
              message: 'The engine has no dice: pass a seed in.',
            },
          ],
        }
      : {}),
  },
}));

export default ts.config(
  { ignores: ['build/', 'shared/*.d.json.ts', '.svelte-kit/', 'node_modules/', 'test-results/'] },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      'no-undef': 'off',
      'max-lines': ['error', { max: 250, skipBlankLines: false, skipComments: false }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'svelte/no-navigation-without-resolve': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: {
      parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig },
    },
  },
  {
    files: ['shared/**/*.ts'],
    rules: {
      'no-restricted-imports': ['error', { patterns: [{ group: ['$lib/*', 'svelte', 'xstate'] }] }],
    },
  },
  ...layers,
);
