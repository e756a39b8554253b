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
 * Those that do not look like the case before, the same kind of concrete damaged as deep; all of them
 * where every one does.
 */
function unlike(before: Case | undefined, ids: readonly string[]): readonly string[] {
  const others = ids.filter((id) => {
    const one = findCase(id);
    return one?.site.element !== before?.site.element || one?.zone.depth !== before?.zone.depth;
  });
  return others.length ? others : ids;
}

/** What the learner wants of the next case. */
export interface Wish {
  /** Cases of this level and no other; left out, the learner's own level counts. */
  readonly level?: Level | null | undefined;
  /** The case just looked at, which does not come again at once. */
  readonly after?: string | undefined;
}

/**
 * The case to try next: what has come back first; then an authored one of the level that is new,
 * then, unless the level was asked for, one left over from the levels below; then a generated one.
 * @param now ms since 1970
 * @param seed a whole number; the same one gives the same case
 */
export function nextCase(
  standing: Standing,
  now: number,
  seed: number,
  { level: asked, after }: Wish = {},
): Next {
  const fits = (one: Case | undefined) => !!one && (!asked || levelOf(one) === asked);
  const before = after === undefined ? undefined : findCase(after);
  const due = dueCases(standing, now).filter((id) => id !== after && fits(findCase(id)));
  const [first] = unlike(before, due);
  if (first) return { id: first, why: 'comes-back' };
  const dice = diceFrom(seed);
  const fresh = authored.filter(({ id }) => id !== after && !standing.known.has(id));
  const own = asked ?? standing.level;
  for (let level: number = own; level >= (asked ?? 1); level -= 1) {
    const ofLevel = fresh.filter((one) => levelOf(one) === level).map(({ id }) => id);
    if (ofLevel.length) return { id: dice.pick(unlike(before, ofLevel)), why: 'new' };
  }
  const from = dice.between(0, lastSeed - looks);
  return { id: generatedAt(standing, own, from, after), why: 'new' };
}

/** A generated case not tried yet whose level is nearest to the one wanted, among those from a seed on. */
function generatedAt({ known }: Standing, level: Level, from: number, after?: string): string {
  const far = (seed: number) => Math.abs(levelOf(generate(seed)) - level);
  let best: { id: string; far: Level | number } | undefined;
  for (let seed = from; seed < from + looks; seed += 1) {
    const id = generatedId(seed);
    if (id === after || known.has(id)) continue;
    const found = { id, far: far(seed) };
    if (found.far === 0) return id;
    if (!best || found.far < best.far) best = found;
  }
  return best?.id ?? generatedId(from);
}
