import { readFileSync } from 'node:fs';
import { filesIn } from '../helpers/texts';
import { pseudoLocale } from './rule';

const forms = (options: Intl.NumberFormatOptions) =>
  [1, 2].map((count) => new Intl.NumberFormat(pseudoLocale, options).format(count));
const dates = (options: Intl.DateTimeFormatOptions) =>
  Array.from({ length: 12 }, (_, month) =>
    new Intl.DateTimeFormat(pseudoLocale, options).format(new Date(2026, month, month + 1)),
  );

/** What the platform says by itself in the locale of the pseudo-language: months, days, units, "and". */
const ofPlatform = new Set(
  [
    ...['hour', 'minute', 'day', 'week'].flatMap((unit) =>
      forms({ style: 'unit', unit, unitDisplay: 'long' }),
    ),
    ...dates({ month: 'long', weekday: 'long' }),
    ...dates({ month: 'short', weekday: 'short' }),
    ...(['conjunction', 'disjunction'] as const).map((type) =>
      new Intl.ListFormat(pseudoLocale, { type }).format(['1', '2']),
    ),
  ].flatMap((text) => text.match(/\p{L}+/gu) ?? []),
);

/** Names and codes that no language translates. */
const names = new Set(['bar', 'psi', 'ppm', 'pH', 'MPa', 'min']);

interface Source {
  readonly title: string;
  readonly by: string;
}

/** Titles and authors of the published sources, which stay as they were printed; the longest first. */
const printed = filesIn('shared/sources', '.json')
  .map((path) => JSON.parse(readFileSync(path, 'utf8')) as Record<string, Source>)
  .flatMap((sources) => Object.values(sources))
  .flatMap(({ title, by }) => [title, by])
  .sort((one, other) => other.length - one.length);

/**
 * Words of a text that were left in English: those with a vowel that has no accent, in neither
 * capitals alone nor a list of what stays.
 */
export function englishIn(text: string): string[] {
  const told = printed.reduce((left, each) => left.replaceAll(each, ' '), text);
  const words = told.replace(/https?:\S+|[\w-]+(?:\.[\w-]+)+/g, ' ').match(/[\p{L}\p{M}]+/gu) ?? [];
  return words.filter(
    (word) =>
      word.length > 1 &&
      /[aeiouy]/i.test(word) &&
      !/[áéíóúý]/i.test(word) &&
      word !== word.toUpperCase() &&
      !names.has(word) &&
      !ofPlatform.has(word),
  );
}
