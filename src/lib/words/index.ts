import { allWords } from '$words';
import type { Words } from './types';

/**
 * Every sentence of the site that is not an explainer, in the reader's language.
 * Another language is a second folder beside `en/` that provides the same `Words`,
 * with a `Language` for the formatter.
 *
 * Importing this brings in everything; a page that needs only its questions imports
 * `$words/questions`, and so on for each part.
 */
export const words: Words = allWords;

export { formatter } from './format';
export type { Formatter, Say, Words } from './types';
