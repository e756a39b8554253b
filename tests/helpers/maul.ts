/** One of a list, round and round. */
export const pick = <T>(list: readonly T[], index: number): T => list[index % list.length] as T;

/** A stream of dice from one seed; a linear congruential generator is enough to spoil files. */
function* diceFrom(start: number): Generator<number, never> {
  for (let state = start >>> 0; ;) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state >>> 8;
  }
}
const scraps = [
  '{',
  '}',
  '[',
  ']',
  '"',
  ',',
  ':',
  '\\',
  '\\u202e',
  '\\ud800',
  '1e999',
  '-',
  'NaN',
  'Infinity',
  'null',
  '"__proto__":{"polluted":1},',
  '\u0000',
  '\u202e',
  '/*',
  '//',
];

/** Dice from one seed, and what cuts a text by them, doubles it, puts a scrap in or takes a stretch out. */
export function mauler(seed: number) {
  const dice = diceFrom(seed);
  const next = (sides: number): number => dice.next().value % sides;
  function maul(text: string): string {
    const at = next(text.length + 1);
    const to = at + next(40);
    return pick(
      [
        () => text.slice(0, at),
        () => text.slice(at),
        () => text.slice(0, at) + pick(scraps, next(1000)) + text.slice(at),
        () => text.slice(0, at) + text.slice(to),
        () => text.slice(0, at) + pick(scraps, next(1000)) + text.slice(to),
        () => text + text.slice(at, to),
        () => text.slice(0, at) + text.slice(at, to).repeat(3) + text.slice(to),
      ],
      next(1000),
    )();
  }
  return { dice, next, maul };
}
