/**
 * The built site walked in other browsers than the tests drive: `npm run engines` (build first).
 * Ends with 1 where something is wrong or nothing could be walked; a browser that is not there
 * counts as not run, never as passed.
 */
import { fileURLToPath } from 'node:url';
import { firefox } from './firefox';
import { servedSite } from './site';
import { walk } from './walk';
import { webkit } from './webkit';

const named = process.argv[2];
const build = process.argv[3] ?? fileURLToPath(new URL('../../build', import.meta.url));
const count = { passed: 0, failed: 0, 'not run': 0 };

for (const engine of [webkit, firefox]) {
  if (named && named !== engine.name.toLowerCase()) continue;
  if (!engine.found()) {
    count['not run'] += 1;
    console.log(`${engine.name}: not run, it is not on this machine. Get it: ${engine.get}`);
    continue;
  }
  const began = Date.now();
  const site = await servedSite(build);
  try {
    const tab = await engine.open();
    const { done, faults, missing } = await walk(tab, site).finally(() => tab.close());
    count[faults.length ? 'failed' : 'passed'] += 1;
    const seconds = ((Date.now() - began) / 1000).toFixed(0);
    console.log(
      `${engine.name}: ${tab.version}, ${faults.length ? 'FAILED' : 'passed'} in ${seconds} s`,
    );
    for (const each of done) console.log(`  done: ${each}`);
    for (const each of missing) console.log(`  not there: ${each}`);
    for (const each of faults) console.log(`  FAULT: ${each}`);
  } finally {
    await site.end();
  }
}
console.log(
  `other engines: ${Object.entries(count)
    .map(([what, many]) => `${many} ${what}`)
    .join(', ')}`,
);
process.exit(count.failed || !count.passed ? 1 : 0);
