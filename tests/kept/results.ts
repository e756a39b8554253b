/** Writes the results of the list before as their codes are written now: `npx tsx tests/kept/results.ts`, for a new table. */
import { readFileSync, writeFileSync } from 'node:fs';
import { resultCode } from '$lib/keep/practice/result-code';
import { resultTables } from '$lib/keep/practice/result-tables';
import type { SetResult } from '$lib/practice/given';

interface Kept {
  readonly what: string;
  readonly means: SetResult;
}
const list = (version: number) => new URL(`results-${version}.json`, import.meta.url);
const version = resultTables.length;
const before = JSON.parse(readFileSync(list(version - 1), 'utf8')) as Kept[];
const lines = before.map(({ what, means }) =>
  JSON.stringify({ what, link: `#${resultCode(means)}`, means }),
);
writeFileSync(list(version), `[\n${lines.join(',\n')}\n]\n`);
