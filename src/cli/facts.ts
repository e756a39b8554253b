/**
 * Checks the facts in shared/, says how many there are, and how many of the figures with a source
 * are guarded: each changed by 15 % or one step, to see whether a check that carries the value
 * from outside turns red. Prints every fault and exits 1 when the facts are not sound.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { literalTypes, typedFacts } from '$shared/literal-types';
import { loadFacts } from '$shared/check';
import { figureFiles } from '$shared/figure-notes';
import { sourceFiles } from '$shared/sources';
import { guards, leastShare, unguarded } from '../../tests/published/guards';
import { perturbAll } from '../../tests/published/guards/perturb';

const fail = (message: string): never => {
  console.error(message);
  process.exit(1);
};

try {
  const { figures, sources } = loadFacts(figureFiles, sourceFiles);
  console.log(
    `facts: ${Object.keys(figures).length} figures from ${Object.keys(sources).length} sources are sound`,
  );
} catch (problem) {
  fail((problem as Error).message);
}

for (const name of typedFacts) {
  const path = (ending: string) => `shared/${name}${ending}`;
  const types = literalTypes(readFileSync(path('.json'), 'utf8'));
  if (readFileSync(path('.d.json.ts'), 'utf8') !== types) {
    writeFileSync(path('.d.json.ts'), types);
    console.log(`facts: the types of shared/${name}.json are written anew`);
  }
}

const { sourced, guarded, throughCode, asPrinted, red } = perturbAll(guards);
for (const { says, source } of red) console.error(`not as its source has it: ${says} (${source})`);
console.log(
  `facts: ${guarded.length} of ${sourced.length} figures with a source are guarded: changed by 15 % or one step, each turns a check red ` +
    `(${throughCode.length} through the code that uses them; ${asPrinted.length} only as printed, in the figure's own unit)`,
);
for (const id of sourced)
  if (!guarded.includes(id))
    console.log(`  not guarded: ${id}: ${unguarded[id] ?? 'no check yet'}`);
if (red.length) fail('The figures do not agree with their sources.');
if (guarded.length / sourced.length < leastShare)
  fail(`Expected at least ${leastShare * 100} % guarded.`);
