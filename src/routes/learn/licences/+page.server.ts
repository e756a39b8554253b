import { existsSync, readFileSync } from 'node:fs';
import { licencesFile, type Licence } from '../../../licences.js';

export const csr = false;

/** What the build has found in the files for browsers; nothing while one works on the site. */
const found = (): readonly Licence[] =>
  existsSync(licencesFile)
    ? (JSON.parse(readFileSync(licencesFile, 'utf8')) as readonly Licence[])
    : [];

/** A text in lines of a set length, as paragraphs of any. */
const paragraphs = (text: string): readonly string[] =>
  text
    .trim()
    .split(/\n\s*\n/)
    .map((each) => each.replace(/\s+/g, ' '));

export const load = () => ({
  own: paragraphs(readFileSync('LICENSE', 'utf8')),
  libraries: found().map(({ text, ...rest }) => ({ ...rest, text: paragraphs(text) })),
});
