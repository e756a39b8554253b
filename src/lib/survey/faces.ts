import {
  between,
  meetings,
  near,
  piecesOf,
  sidesOf,
  tidy,
  type Place,
  type Ring,
} from './geometry';

/**
 * The faces of the net that an outline and lines across it make: a way is followed from corner to
 * corner, each time along the next line to the right of the one come by, until it closes.
 * Loose ends and lines that hang on nothing part no ground.
 */
export function facesOf(outline: Ring, lines: readonly (readonly Place[])[]): Ring[] {
  const corners = new Corners();
  const ways = new Ways();
  const pieces = [...sidesOf(outline), ...lines.flatMap(piecesOf)];
  for (const piece of pieces) {
    const shares = [
      0,
      1,
      ...pieces.flatMap((other) => (other === piece ? [] : meetings(piece, other))),
    ];
    const stops = [...new Set(shares)]
      .sort((a, b) => a - b)
      .map((share) => corners.at(share === 1 ? piece[1] : between(...piece, share)));
    for (const [index, stop] of stops.slice(1).entries()) ways.add(stops[index] as number, stop);
  }
  ways.keepHeld(outline.map((place) => corners.at(place)));
  return ways
    .rounds(corners.places)
    .map((round) => tidyRound(round.map((corner) => corners.places[corner] as Place)))
    .filter((ring): ring is Ring => ring !== null);
}

/** A round that runs anticlockwise; the one round the outside does not. */
function tidyRound(round: readonly Place[]): Ring | null {
  let area = 0;
  for (const [[ax, ay], [bx, by]] of sidesOf(round)) area += ax * by - bx * ay;
  return area > 0 ? tidy(round) : null;
}

/** Corners by number; places nearer than arithmetic can tell apart are one. */
class Corners {
  readonly places: Place[] = [];
  readonly #cells = new Map<string, number[]>();

  at(place: Place): number {
    const [column, row] = [Math.round(place[0] / near), Math.round(place[1] / near)];
    for (let dx = -1; dx <= 1; dx += 1)
      for (let dy = -1; dy <= 1; dy += 1)
        for (const known of this.#cells.get(`${column + dx},${row + dy}`) ?? []) {
          const [x, y] = this.places[known] as Place;
          if (Math.hypot(x - place[0], y - place[1]) < near) return known;
        }
    const number = this.places.push(place) - 1;
    const cell = `${column},${row}`;
    this.#cells.set(cell, [...(this.#cells.get(cell) ?? []), number]);
    return number;
  }
}

class Ways {
  readonly #to = new Map<number, Set<number>>();

  add(one: number, other: number): void {
    if (one === other) return;
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const)
      this.#to.set(from, (this.#to.get(from) ?? new Set()).add(to));
  }

  #drop(corner: number): void {
    for (const other of this.#to.get(corner) ?? []) this.#to.get(other)?.delete(corner);
    this.#to.delete(corner);
  }

  /** Drops what does not hang together with these corners, and then loose ends. */
  keepHeld(from: readonly number[]): void {
    const held = new Set(from);
    for (const corner of held) for (const next of this.#to.get(corner) ?? []) held.add(next);
    for (const corner of [...this.#to.keys()]) if (!held.has(corner)) this.#drop(corner);
    let loose = [...this.#to].filter(([, to]) => to.size < 2).map(([corner]) => corner);
    while (loose.length) {
      const next = loose.flatMap((corner) => [...(this.#to.get(corner) ?? [])]);
      for (const corner of loose) this.#drop(corner);
      loose = [...new Set(next)].filter((corner) => (this.#to.get(corner)?.size ?? 2) < 2);
    }
  }

  /** Every way is walked once in each direction. */
  rounds(places: readonly Place[]): number[][] {
    const angle = (from: number, to: number) => {
      const [[ax, ay], [bx, by]] = [places[from] as Place, places[to] as Place];
      return Math.atan2(by - ay, bx - ax);
    };
    const next = new Map<string, number>();
    for (const [corner, others] of this.#to) {
      const turned = [...others].sort((a, b) => angle(corner, a) - angle(corner, b));
      for (const [index, from] of turned.entries())
        next.set(`${from},${corner}`, turned.at(index - 1) as number);
    }
    const found: number[][] = [];
    const walked = new Set<string>();
    for (const start of next.keys()) {
      if (walked.has(start)) continue;
      const round: number[] = [];
      let [from, to] = start.split(',').map(Number) as [number, number];
      while (!walked.has(`${from},${to}`)) {
        walked.add(`${from},${to}`);
        round.push(from);
        [from, to] = [to, next.get(`${from},${to}`) as number];
      }
      found.push(round);
    }
    return found;
  }
}
