import { existsSync, readFileSync } from 'node:fs';
import { licencesFile, type Licence } from '../../licences.js';

export const csr = false;

/** What the build has found in the files for browsers; nothing while one works on the site. */
export const load = () => ({
  own: readFileSync('LICENSE', 'utf8'),
  libraries: (existsSync(licencesFile)
    ? JSON.parse(readFileSync(licencesFile, 'utf8'))
    : []) as readonly Licence[],
});
