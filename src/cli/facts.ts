/** Checks the facts in shared/ and says how many there are; prints every fault and exits 1 when they are not sound. */
import { loadFacts } from '$shared/check';
import { figureFiles } from '$shared/figure-notes';
import { sourceFiles } from '$shared/sources';

try {
  const { figures, sources } = loadFacts(figureFiles, sourceFiles);
  console.log(
    `facts: ${Object.keys(figures).length} figures from ${Object.keys(sources).length} sources are sound`,
  );
} catch (problem) {
  console.error((problem as Error).message);
  process.exit(1);
}
