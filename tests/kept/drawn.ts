/** Writes the cases of some seeds, as they are drawn now: `npx tsx tests/kept/drawn.ts`, for a drawing with a new name. */
import { writeFileSync } from 'node:fs';
import { drawing, generate, lastSeed } from '$lib/practice/generate';

const seeds = [...Array.from({ length: 56 }, (_, seed) => seed), 77, 31_000, 123_456_789, lastSeed];
const cases = seeds.map((seed) => ({ what: `${drawing}-${seed}`, means: generate(seed) }));
writeFileSync(
  new URL(`drawn-${drawing}.json`, import.meta.url),
  `[\n${cases.map((each) => JSON.stringify(each)).join(',\n')}\n]\n`,
);
