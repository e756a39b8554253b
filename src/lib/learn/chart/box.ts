import {
  choicesOf,
  type DepthBand,
  type Element,
  type Finish,
  type Looseness,
  type Texture,
} from '$lib/answers/questions';
import { adviseSettled } from '$lib/advice/settle';
import type { Hold, Rejection } from '$lib/advice/types';
import { methods, type MethodId } from '$shared/methods';
import { cellOf, chartPlaces, settledOf, type Spot } from './cells';

/** A row of the chart, as two taps find it. */
export interface Tapped {
  readonly looseness: readonly Looseness[];
  readonly depths: readonly DepthBand[];
}

/** Kinds of concrete that are stopped here, though the row only prepares or waits. */
export interface StoppedHere {
  readonly elements: readonly Element[];
  readonly hold: Hold;
}

/** The first of a row on a clean floor; all of a row read the same while the finish is left open. */
export const spotOf = ({ looseness, depths }: Tapped, texture: Texture): Spot => ({
  place: 'slab',
  looseness: looseness[0] as Looseness,
  depth: depths[0] as DepthBand,
  texture,
  soil: 'clean',
});

/** What the advice stops at this row for the kind of concrete alone; null where it is nothing more. */
export function stoppedHere(row: Tapped): StoppedHere | null {
  const { site, zone } = settledOf(spotOf(row, 'smooth'));
  const stopOf = (element: Element) =>
    adviseSettled({ ...site, element }, zone).holds.find(({ verdict }) => verdict === 'stop');
  // Where every kind is stopped alike, the row says so itself.
  if (stopOf('slab')) return null;
  const elements = choicesOf('element').filter((element) => stopOf(element));
  const hold = elements[0] && stopOf(elements[0]);
  return hold ? { elements, hold } : null;
}

/**
 * Why not the gentler neighbour of a method that the row names somewhere: of what is one strength
 * or more below it, the nearest that would not do. Null where the row has no one reason for all it holds.
 */
export function whyNotGentler(row: Tapped, method: MethodId): Rejection | null {
  const spots = chartPlaces.flatMap((place) =>
    row.looseness.flatMap((looseness) =>
      row.depths.flatMap((depth) =>
        choicesOf('texture').map((texture) =>
          settledOf({ place, looseness, depth, texture, soil: 'clean' }),
        ),
      ),
    ),
  );
  const own = methods[method].class;
  const found = spots
    .map(({ site, zone }) => adviseSettled(site, zone))
    .filter(({ underneath }) => underneath === method)
    .map(({ rejections }) =>
      rejections
        .filter((each) => !each.wouldDo && methods[each.method].class < own)
        .reduce<Rejection | null>(
          (best, each) =>
            best && methods[best.method].class >= methods[each.method].class ? best : each,
          null,
        ),
    );
  const [first] = found;
  const alike = found.every((each) => JSON.stringify(each) === JSON.stringify(first));
  return first && alike ? first : null;
}

/** Finishes that ask for more than the row says, and for which method on which textures. */
export interface AsksMore {
  readonly finishes: readonly Finish[];
  readonly methods: readonly { readonly method: MethodId; readonly textures: readonly Texture[] }[];
}

/**
 * What goes on next and asks for more than a row says, on a clean floor; and the depths of the row to
 * which that applies: a firm hole that is filled is a case of its own.
 */
export function asksMore(row: Tapped): {
  readonly depths: readonly DepthBand[];
  readonly more: readonly AsksMore[];
} {
  const { depths } = row;
  const at = (depth: DepthBand): AsksMore[] => {
    const found: { finishes: Finish[]; methods: AsksMore['methods'] }[] = [];
    for (const finish of choicesOf('finish')) {
      const changed = choicesOf('texture').flatMap((texture) => {
        const spot = { ...spotOf(row, texture), depth };
        const { method } = cellOf({ ...spot, finish });
        return method && method !== cellOf(spot).method ? [{ method, texture }] : [];
      });
      const methods = [...new Set(changed.map(({ method }) => method))].map((method) => ({
        method,
        textures: changed.filter((each) => each.method === method).map(({ texture }) => texture),
      }));
      const known = found.find((each) => JSON.stringify(each.methods) === JSON.stringify(methods));
      if (known) known.finishes.push(finish);
      else if (methods.length) found.push({ finishes: [finish], methods });
    }
    return found;
  };
  const first = at(depths[0] as DepthBand);
  const same = (depth: DepthBand) => JSON.stringify(at(depth)) === JSON.stringify(first);
  return { depths: depths.filter(same), more: first };
}
