/**
 * The built site walked in other browsers than the tests drive: `npm run engines` (build first).
 * Ends with 1 where something is wrong; a browser that is not there counts as not run, never as passed.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { firefox } from './firefox';
import { servedSite } from './site';
import { walk } from './walk';
import { webkit } from './webkit';

const { values } = parseArgs({
  options: {
    /** One of them alone. */
    only: { type: 'string' },
    /** The built site. */
    build: { type: 'string', default: fileURLToPath(new URL('../../build', import.meta.url)) },
    /** Where the counts are written to. */
    report: { type: 'string' },
  },
});
const count = { passed: 0, failed: 0, left: 0 };

for (const engine of [webkit, firefox]) {
  if (values.only && values.only !== engine.name.toLowerCase()) continue;
  if (!engine.found()) {
    count.left += 1;
    console.log(`${engine.name}: not run, it is not on this machine. Get it: ${engine.get}`);
    continue;
  }
  const began = Date.now();
  const site = await servedSite(values.build);
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
const { passed, failed, left } = count;
console.log(`other engines: ${passed} passed, ${failed} failed, ${left} not run`);
if (values.report) writeFileSync(values.report, JSON.stringify(count));
process.exit(failed ? 1 : 0);
