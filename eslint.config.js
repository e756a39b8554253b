import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import fullSvelteConfig from './svelte.config.js';

/** Without its functions, which a cache of what was checked could not hold. */
const svelteConfig = JSON.parse(JSON.stringify(fullSvelteConfig));

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
/** The house has floors, and imports only go down: what each room of `src/lib` may use besides `shared/`. */
const below = {
  answers: [],
  survey: ['answers'],
  climate: ['answers'],
  advice: ['answers', 'survey'],
  trial: ['answers', 'survey', 'advice'],
  plan: ['answers', 'survey', 'advice', 'trial'],
  safety: ['answers', 'survey', 'advice', 'trial', 'plan'],
  readiness: ['answers', 'survey', 'advice', 'trial', 'plan'],
  practice: ['answers', 'survey', 'advice', 'trial', 'plan', 'safety', 'readiness'],
  interview: ['answers', 'survey', 'advice', 'trial'],
  keep: ['answers', 'survey', 'advice', 'trial', 'practice'],
  words: 'answers survey climate advice trial plan safety readiness practice keep learn'.split(' '),
  drawing: 'answers survey climate advice trial plan safety readiness words'.split(' '),
  learn: ['answers', 'advice', 'drawing', 'words'],
};
const rooms = [...Object.keys(below), 'ui'];
/** The sentences have a name of their own, since a build speaks one language. */
const namesOf = (room) => [
  `$lib/${room}`,
  `$lib/${room}/*`,
  ...(room === 'words' ? ['$words', '$words/*'] : []),
];
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

const layers = Object.entries(below).map(([room, downstairs]) => ({
  files: [`src/lib/${room}/**/*.{ts,svelte}`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            group: rooms
              .filter((other) => other !== room && !downstairs.includes(other))
              .flatMap(namesOf),
            message: `src/lib/${room} may use only: ${downstairs.join(', ')} (eslint.config.js).`,
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
      // The compiler tells it, four times as fast (noUnusedLocals, noUnusedParameters).
      '@typescript-eslint/no-unused-vars': 'off',
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
