/**
 * Prints ratios of one run, in time of this process on its processor: the engine against a rules
 * engine and a rules language on the same decisions; how plan and survey grow; and what the built
 * site weighs; how long the command line takes. It runs as one file, as the site does: a loader that
 * names every function as it is made takes a third of the time. Red where answers differ. `tests/unit/bench.test.ts` has the budgets.
 */
import { adviseZone } from '$lib/advice/advise';
import { compare } from './compare';
import { cpuOf } from './cpu';
import { planGrowth, surveyGrowth, type Grown } from './growth';
import { adviseLines, commandTime } from '../helpers/command-time';
import { isBuilt, scriptsOf, sheetsOf, wholeSite } from './site';

const counts = [10, 50, 200, 1000, 5000];
const pages = ['', 'assess/element', 'advice', 'job', 'job/plan', 'crew', 'owner', 'ready'];
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

const { compared, differing, ours, engine, language } = await compare(3000);
console.log(`decisions compared: ${compared}, differing: ${differing}`);
console.log(`this engine, with steps, reasons, holds and cautions: ${ours.toFixed(1)} us each`);
console.log(`json-rules-engine, the method alone: ${(engine / ours).toFixed(1)} times that`);
console.log(`publicodes, the method alone: ${(language / ours).toFixed(1)} times that`);

let depth = 0;
// Another thickness each time: what was advised before is remembered.
const open = await cpuOf(() => void adviseZone({ thickness: 100 + (depth += 1) }, {}));
console.log(
  `one advice with everything open: ${open.toFixed(0)} ms, ${((open * 1000) / ours).toFixed(0)} settled ones`,
);

const told = (name: string, unit: string, rows: readonly Grown[]) => {
  console.log(`${name}, from nothing:`);
  for (const { count, ms, power } of rows)
    console.log(
      `  ${String(count).padStart(5)} ${unit}: ${ms.toFixed(1)} ms${power === null ? '' : `, grows like ${unit}^${power.toFixed(2)}`}`,
    );
};
told('plan of a whole job', 'zones', await planGrowth(counts));
told('what a drawing comes to', 'marks', await surveyGrowth(counts));

const advised = commandTime(adviseLines.alone);
for (const { status, stderr } of advised.runs)
  if (status !== 0) throw new Error(`advise ended with ${String(status)}: ${stderr}`);
console.log(
  `advise, one settled zone: ${advised.best.toFixed(0)} ms from call to end, best of ${advised.runs.length}`,
);

if (isBuilt()) {
  // What is timed in a browser, and what jumps there: tests/browser/speed.spec.ts and shift.spec.ts.
  for (const path of pages) {
    const { files, bytes } = scriptsOf(path);
    console.log(`JavaScript /${path} cannot do without: ${kB(bytes)} gzip in ${files} files`);
  }
  for (const path of ['', 'assess/element', 'advice', 'job/plan', 'learn/grinding'])
    console.log(`style sheets of /${path}: ${sheetsOf(path)}`);
  const { sent, kept } = wholeSite();
  console.log(
    `the whole site: ${(sent / 1e6).toFixed(2)} MB sent in brotli, ${(kept / 1e6).toFixed(2)} MB on the device`,
  );
} else console.log('Nothing is built: what the site weighs is not told.');
process.exit(differing === 0 && compared > 1000 ? 0 : 1);
