/** Values that have made programs stumble, in the shapes JSON can carry. */
export const nasty: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  -0,
  1e300,
  0.1 + 0.2,
  '',
  'not-sure',
  'unknown',
  '__proto__',
  'constructor',
  'toString',
  'NaN',
  'Infinity',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  'javascript:alert(1)',
  '${7*7}{{7*7}}',
  'a\u202egnp.exe',
  '\u2066hidden\u2069',
  '\u0000',
  '\u001b[2J',
  '\ud800',
  '\u{1f9f1}'.repeat(60),
  'x'.repeat(5000),
  [],
  [[]],
  ['oil', 'oil'],
  ['open', 'hairline'],
  {},
  { yes: ['oil'], maybe: ['oil'] },
  { yes: 1 },
  { length: 3, 0: 'a' },
  { toString: 1, valueOf: 2 },
  JSON.parse('{"__proto__": {"polluted": true}}'),
  JSON.parse('{"constructor": {"prototype": {"polluted": true}}}'),
];

const names = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'depht',
  'Depth',
  '',
  '\u202e',
  'id',
  'own',
];

type Dice = Iterator<number>;
const roll = (dice: Dice, sides: number): number => Number(dice.next().value) % sides;

/** A part of a JSON value to change, with the way to it: the container and its key. */
function places(value: unknown): [Record<string, unknown>, string][] {
  if (typeof value !== 'object' || value === null) return [];
  const container = value as Record<string, unknown>;
  return Object.keys(container).flatMap((key) => [
    [container, key] as [Record<string, unknown>, string],
    ...places(container[key]),
  ]);
}

/** Sets a field as JSON.parse would, so that `__proto__` is a field like any other. */
function set(container: object, key: string, value: unknown): void {
  Object.defineProperty(container, key, {
    value,
    enumerable: true,
    configurable: true,
    writable: true,
  });
}

/** A JSON value with one to three parts replaced, removed, moved, doubled or added. */
export function spoil(whole: unknown, dice: Dice): unknown {
  const box = { whole };
  for (let changes = 1 + roll(dice, 3); changes > 0; changes -= 1) {
    const all = places(box);
    const [container, key] = all[roll(dice, all.length)] as [Record<string, unknown>, string];
    const other = all[roll(dice, all.length)] as [Record<string, unknown>, string];
    const value = structuredClone(nasty[roll(dice, nasty.length)]);
    const kind = roll(dice, 6);
    const inside = container[key];
    if (kind === 0 && container !== box) {
      if (Array.isArray(container)) container.splice(Number(key), 1);
      else Reflect.deleteProperty(container, key);
    } else if (kind === 1) set(container, key, structuredClone(other[0][other[1]]));
    else if (kind === 2 && Array.isArray(inside))
      inside.push(structuredClone(inside[0] ?? value) as never);
    else if (kind === 3 && typeof inside === 'object' && inside !== null && !Array.isArray(inside))
      set(inside, names[roll(dice, names.length)] ?? '', value);
    else set(container, key, value);
  }
  return box.whole;
}
