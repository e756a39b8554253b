/** Orders in which the combinations of answers are walked. */

/** What is varied: a list of values for each name. */
type Axes = Readonly<Record<string, readonly unknown[]>>;
type Point<A extends Axes> = { readonly [K in keyof A]: A[K][number] };

/** How many combinations there are. */
export const sizeOf = (axes: Axes): number =>
  Object.values(axes).reduce((product, list) => product * list.length, 1);

/** Every combination; the last name varies fastest. */
export function* every<A extends Axes>(axes: A): Generator<Point<A>> {
  const lists = Object.entries(axes).reverse();
  const size = sizeOf(axes);
  for (let index = 0; index < size; index += 1) {
    const point: Record<string, unknown> = {};
    let left = index;
    for (const [name, list] of lists) {
      point[name] = list[left % list.length];
      left = Math.floor(left / list.length);
    }
    yield point as Point<A>;
  }
}

const primes = [
  2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89,
];

/**
 * So many combinations, the same every time and spread evenly over all: each name goes round its
 * values by the root of a prime of its own, so that every value of every name, and every pair and
 * triple of them, comes up as often as its share (Weyl: such steps are equidistributed).
 */
export function* spread<A extends Axes>(axes: A, count: number): Generator<Point<A>> {
  const lists = Object.entries(axes).map(
    ([name, list], place) => [name, list, Math.sqrt(primes[place] as number) % 1] as const,
  );
  for (let n = 1; n <= count; n += 1) {
    const point: Record<string, unknown> = {};
    for (const [name, list, step] of lists)
      point[name] = list[Math.floor(((n * step) % 1) * list.length)];
    yield point as Point<A>;
  }
}
