/** Room up to which a table of numbers is quicker than a map, and still small. */
const tableRoom = 2 ** 20;

/** Numbers keys 0, 1, 2, … in the order in which they come, and makes something once for each. */
export class Kept<T> {
  /** One more than the place of a key; 0 where it has not come yet. */
  readonly #places: Int32Array | Map<number, number>;
  readonly all: T[] = [];

  /** @param room every key is below it */
  constructor(room: number) {
    this.#places = room <= tableRoom ? new Int32Array(room) : new Map();
  }

  /** The number of a key. */
  numberOf(key: number, make: () => T): number {
    const places = this.#places;
    const found = places instanceof Map ? places.get(key) : places[key];
    if (found) return found - 1;
    const place = this.all.push(make());
    if (places instanceof Map) places.set(key, place);
    else places[key] = place;
    return place - 1;
  }

  /** What was made for a key. */
  of(key: number, make: () => T): T {
    return this.all[this.numberOf(key, make)] as T;
  }
}
