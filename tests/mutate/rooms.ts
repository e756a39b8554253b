import { readdirSync } from 'node:fs';

/** A room whose rules are changed one at a time, and the tests that should notice. */
export interface Room {
  readonly name: string;
  /** Beginnings of the names of its tests, with their folder; without one, in `unit` and `published`. */
  readonly tests: readonly string[];
}

const room = (name: string, ...tests: string[]): Room => ({ name, tests: [name, ...tests] });

/**
 * The rooms of the engine, and the sentences of its rules. No file of a room is left out; of the
 * tests those are that take minutes for each change: every route, the walks, the possibilities.
 */
export const rooms: readonly Room[] = [
  room('climate', 'hostile/weather-rows'),
  room('readiness', 'dew-point'),
  room('trial', 'ladder-settings', 'practice-patches', 'tried-out'),
  room('interview', 'talk'),
  room('safety'),
  room(
    'plan',
    'courses',
    'owner-options',
    'owner-drawn',
    'owner-first-points',
    'waiting-zones',
    'goes-ahead',
    'trial-plan',
    'so-far',
    'pace',
    'begun-days',
    'whole-jobs',
    'survey-advice',
  ),
  room('survey', 'photo-area', 'photo-geometry', 'photo-cameras', 'plan', 'example-slab'),
  room(
    'advice',
    'rejections',
    'keep-clear',
    'approach',
    'same-part',
    'hollow',
    'goes-ahead',
    'untested-coating',
    'margin-words',
    'relevance',
    'step-reasons',
    'find-order',
    'not-sure',
    'margins',
    'methods-left',
    'owner-limits',
    'owner-may',
    'answers',
    'cases/cases',
    'whole-jobs',
  ),
  room(
    'keep',
    'photo',
    'export-plan',
    'merge',
    'practice-abacus',
    'practice-keep',
    'practice-result',
    'practice-set',
    'code',
    'whole-site',
    'zones-table',
    'survey-file',
    'survey-link',
    'readiness-record',
    'day-log',
    'hostile/practice-links',
    'hostile/repeats',
    'hostile/exports',
  ),
  room('practice'),
  room(
    'answers',
    'format',
    'parse-number',
    'units',
    'zones-table',
    'day-log',
    'readiness-record',
    'settings',
  ),
  room(
    'words/en/rules',
    'step-reasons',
    'words',
    'spoken',
    'rejections',
    'keep-clear',
    'approach',
    'same-part',
    'hollow',
    'goes-ahead',
    'untested-coating',
    'margin-words',
    'plan',
    'readiness',
    'safety',
    'cases/',
  ),
];

const folders = ['unit', 'published', 'hostile', 'cases'] as const;
const tooLong = /possibilities|walks|loop|interview\.test/;

/** Paths of the tests of a room, the short kinds before the whole jobs. */
export function testsOf({ tests }: Room): string[] {
  const wanted = tests.flatMap((test) =>
    test.includes('/') ? [test] : [`unit/${test}`, `published/${test}`],
  );
  return folders.flatMap((folder) =>
    readdirSync(`tests/${folder}`)
      .map((file) => `${folder}/${file}`)
      .filter((path) => path.endsWith('.test.ts') && !tooLong.test(path))
      .filter((path) => wanted.some((start) => path.startsWith(start)))
      .map((path) => `tests/${path}`),
  );
}
