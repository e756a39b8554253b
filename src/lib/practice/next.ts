import { authored } from './authored';
import type { Case } from './case';
import { diceFrom } from './dice';
import { generate, generatedId, lastSeed, seedIn } from './generate';
import { levelOf, type Level } from './level';
import type { Standing } from './progress';

/** A case to try now, and why this one. */
export interface Next {
  readonly id: string;
  readonly why: 'comes-back' | 'new';
}

/** How many generated cases are looked at for one of the right level. */
const looks = 60;

/** The case of an id, authored or generated; undefined when there is none. */
export function findCase(id: string): Case | undefined {
  const seed = seedIn(id);
  return seed === null ? authored.find((one) => one.id === id) : generate(seed);
}

/** Cases that have come back by now, the longest overdue first. One that no longer exists is left out. */
export function dueCases({ known }: Standing, now: number): string[] {
  return [...known.values()]
    .filter(({ due, case: id }) => due <= now && exists(id))
    .sort((one, other) => one.due - other.due)
    .map((each) => each.case);
}

const exists = (id: string) => seedIn(id) !== null || authored.some((one) => one.id === id);

/**
 * The case to try next: what has come back first; then an authored one of the learner's level
 * that is new, then one left over from the levels below; then a generated one.
 * @param now ms since 1970
 * @param seed a whole number; the same one gives the same case
 */
export function nextCase(standing: Standing, now: number, seed: number): Next {
  const [due] = dueCases(standing, now);
  if (due) return { id: due, why: 'comes-back' };
  const dice = diceFrom(seed);
  const fresh = authored.filter(({ id }) => !standing.known.has(id));
  for (let level: number = standing.level; level >= 1; level -= 1) {
    const ofLevel = fresh.filter((one) => levelOf(one) === level);
    if (ofLevel.length) return { id: dice.pick(ofLevel).id, why: 'new' };
  }
  return { id: generatedAt(standing, dice.between(0, lastSeed - looks)), why: 'new' };
}

/** A generated case not tried yet whose level is nearest to the learner's, among those from a seed on. */
function generatedAt({ known, level }: Standing, from: number): string {
  const far = (seed: number) => Math.abs(levelOf(generate(seed)) - level);
  let best: { id: string; far: Level | number } | undefined;
  for (let seed = from; seed < from + looks; seed += 1) {
    const id = generatedId(seed);
    if (known.has(id)) continue;
    const found = { id, far: far(seed) };
    if (found.far === 0) return id;
    if (!best || found.far < best.far) best = found;
  }
  return best?.id ?? generatedId(from);
}
