/** Writes the pseudo-language into the folder named: its words and its content, for a build with SITE_TEXTS. */
import { rmSync } from 'node:fs';
import { writeContent } from './content';
import { pseudoLocale } from './rule';
import { writeWords } from './words';

const [to = 'test-results/pseudo'] = process.argv.slice(2);
rmSync(to, { recursive: true, force: true });
writeWords(`${to}/words`, pseudoLocale);
writeContent(`${to}/content`);
