import type { Place } from '$lib/answers/survey';
import type { Bay } from './bays';
import { common, groundArea, joined, less, shared, type Ground } from './clip';
import {
  around,
  between,
  boxOf,
  distance,
  inside,
  meetings,
  piecesOf,
  sidesOf,
  type Box,
  type Ring,
} from './geometry';

/** The ground of one zone. Every place belongs to one zone. */
export interface ZoneGround {
  readonly id: string;
  readonly ground: Ground;
  /** m2 */
  readonly area: number;
}

/** An outline that says its zone. */
export interface Claim {
  readonly zone: string;
  readonly ring: Ring;
}

/**
 * The ground of each zone: what spots claim before what is painted, and in each the zones in the
 * order of the job; what nobody claims falls to the zone of the rest.
 * @param ids zones of the job, in its order
 * @param rest id of the zone that is the rest
 */
export function zoneGrounds(
  slab: Ring,
  ids: readonly string[],
  spots: readonly Claim[],
  painted: readonly Claim[],
  rest: string | undefined,
): { readonly zones: readonly ZoneGround[]; /** m2 nobody claims */ readonly unclaimed: number } {
  const found = new Map<string, Ground>();
  const taken: { ring: Ring; box: Box }[] = [];
  for (const claims of [spots, painted])
    for (const id of ids) {
      const mine = claims
        .filter(({ zone }) => zone === id)
        .flatMap(({ ring }) => common(ring, slab));
      const ground = clumps(mine).flatMap((clump) =>
        less(
          joined(clump.rings),
          taken.filter(({ box }) => meet(box, clump.box)).map(({ ring }) => ring),
        ),
      );
      taken.push(...ground.map((ring) => ({ ring, box: boxOf(ring) })));
      if (ground.length) found.set(id, [...(found.get(id) ?? []), ...ground]);
    }
  const claimed = [...found.values()].reduce((sum, ground) => sum + groundArea(ground), 0);
  const left = Math.max(0, groundArea([slab]) - claimed);
  if (rest !== undefined && left > 1) {
    const others = taken.map(({ ring }) => ring);
    found.set(rest, [...(found.get(rest) ?? []), ...less([slab], others)]);
  }
  return {
    zones: ids.flatMap((id) => {
      const ground = found.get(id);
      return ground ? [{ id, ground, area: groundArea(ground) / 1e6 }] : [];
    }),
    unclaimed: rest !== undefined && ids.includes(rest) ? 0 : left / 1e6,
  };
}

const meet = (one: Box, other: Box): boolean =>
  one.x0 < other.x1 && other.x0 < one.x1 && one.y0 < other.y1 && other.y0 < one.y1;

/** Rings gathered by whether their boxes meet: only those can overlap. */
function clumps(rings: readonly Ring[]): { box: Box; rings: Ring[] }[] {
  const done: { box: Box; rings: Ring[] }[] = [];
  for (const ring of rings) {
    let clump = { box: boxOf(ring), rings: [ring] };
    for (;;) {
      const at = done.findIndex((each) => meet(each.box, clump.box));
      const met = done[at];
      if (!met) break;
      clump = { box: around(met.box, clump.box), rings: [...met.rings, ...clump.rings] };
      done.splice(at, 1);
    }
    done.push(clump);
  }
  return done;
}

/** Whether a place lies in some ground: in a part and in none of its holes. */
const on = (place: Place, ground: Ground): boolean =>
  ground.filter((ring) => inside(place, ring, 0)).length % 2 === 1;

/** The zone a place lies in, or none. */
export const zoneAt = (place: Place, zones: readonly ZoneGround[]): string | undefined =>
  zones.find(({ ground }) => on(place, ground))?.id;

/** The zone a ring lies in most, or none. */
export function zoneOf(ring: Ring, zones: readonly ZoneGround[]): string | undefined {
  const shares = zones.map(({ id, ground }) => ({
    id,
    area: groundArea(shared([ring], ground)),
  }));
  const most = shares.reduce((best, each) => (each.area > best.area ? each : best), {
    id: undefined as string | undefined,
    area: 0,
  });
  return most.id;
}

/**
 * How much of a line lies in each zone, m.
 * @param beside mm to each side at which to look as well: for a line along the outline
 */
export function lengthByZone(
  line: readonly Place[],
  zones: readonly ZoneGround[],
  beside = 0,
): Map<string, number> {
  const sides = zones.flatMap(({ ground }) => ground.flatMap(sidesOf));
  const sums = new Map<string, number>();
  for (const piece of piecesOf(line)) {
    const stops = [0, 1, ...sides.flatMap((side) => meetings(piece, side))].sort((a, b) => a - b);
    const long = distance(...piece);
    for (const [index, to] of stops.slice(1).entries()) {
      const from = stops[index] as number;
      if (to <= from) continue;
      const [x, y] = between(...piece, (from + to) / 2);
      const [nx, ny] = [
        (-(piece[1][1] - piece[0][1]) / long) * beside,
        ((piece[1][0] - piece[0][0]) / long) * beside,
      ];
      const looks: Place[] = beside
        ? [
            [x + nx, y + ny],
            [x - nx, y - ny],
          ]
        : [[x, y]];
      for (const { id, ground } of zones)
        if (looks.some((place) => on(place, ground)))
          sums.set(id, (sums.get(id) ?? 0) + (long * (to - from)) / 1000);
    }
  }
  return sums;
}

/** Ids of the zones that lie in these bays alone. @param heard ids of bays */
export function heardAllOver(
  zones: readonly ZoneGround[],
  bays: readonly Bay[],
  heard: readonly string[],
): string[] {
  const deaf = bays.filter(({ id }) => !heard.includes(id)).map(({ ring }) => ring);
  return zones
    .filter(({ ground }) => !deaf.length || groundArea(shared(deaf, ground)) < 1)
    .map(({ id }) => id);
}
