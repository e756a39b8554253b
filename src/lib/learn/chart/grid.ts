import { choicesOf, type DepthBand, type Looseness, type Texture } from '$lib/answers/questions';
import type { StepId } from '$shared/methods';
import {
  cellOf,
  chartPlaces,
  sameCell,
  soils,
  type Cell,
  type ChartPlace,
  type Soil,
} from './cells';

/** A column: textures and contaminants that read the same in every row. */
export interface Column {
  readonly place: ChartPlace;
  readonly textures: readonly Texture[];
  readonly soils: readonly Soil[];
  /** Work that comes before the method, by contaminant. */
  readonly first: Readonly<Partial<Record<Soil, readonly StepId[]>>>;
}

/** A run of cells along a row that read the same, over one or more columns of a place. */
export interface Run {
  readonly cell: Cell;
  readonly place: ChartPlace;
  /** How many columns it spans. */
  readonly span: number;
}

/** A row: loosened states and depths that read the same in every column. */
export interface Row {
  readonly looseness: readonly Looseness[];
  readonly depths: readonly DepthBand[];
  readonly runs: readonly Run[];
}

export interface Grid {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

interface Line {
  readonly looseness: Looseness;
  readonly depth: DepthBand;
}
/** What every place to be read on the chart says, line by line. */
type Reading = readonly Cell[];

const lines: readonly Line[] = choicesOf('looseness').flatMap((looseness) =>
  choicesOf('depth').map((depth) => ({ looseness, depth })),
);

const same = (one: Reading, other: Reading): boolean =>
  one.every((cell, index) => sameCell(cell, other[index] as Cell));

/** Puts things that read the same together, in the order of the first of each. */
function gathered<T>(items: readonly T[], alike: (one: T, other: T) => boolean): readonly T[][] {
  const groups: T[][] = [];
  for (const item of items) {
    const group = groups.find(([first]) => alike(first as T, item));
    if (group) group.push(item);
    else groups.push([item]);
  }
  return groups;
}

function columnsOf(place: ChartPlace): Column[] {
  const read = new Map(
    choicesOf('texture').flatMap((texture) =>
      soils.map((soil): [string, Reading] => [
        `${texture} ${soil}`,
        lines.map((line) => cellOf({ place, texture, soil, ...line })),
      ]),
    ),
  );
  const down = (texture: Texture, soil: Soil) => read.get(`${texture} ${soil}`) as Reading;
  const textures = gathered(choicesOf('texture'), (one, other) =>
    soils.every((soil) => same(down(one, soil), down(other, soil))),
  );
  return textures.flatMap((alike) => {
    const texture = alike[0] as Texture;
    return gathered(soils, (one, other) => same(down(texture, one), down(texture, other))).map(
      (group): Column => ({
        place,
        textures: alike,
        soils: group,
        first: Object.fromEntries(
          group.map((soil) => [soil, [...new Set(down(texture, soil).flatMap((c) => c.first))]]),
        ),
      }),
    );
  });
}

/** Neighbours that say the same become one run; a run does not reach into another place. */
function runsOf(cells: Reading, columns: readonly Column[]): Run[] {
  const runs: Run[] = [];
  cells.forEach((cell, index) => {
    const { place } = columns[index] as Column;
    const last = runs.at(-1);
    if (last && last.place === place && sameCell(last.cell, cell))
      runs.splice(-1, 1, { ...last, span: last.span + 1 });
    else runs.push({ cell, place, span: 1 });
  });
  return runs;
}

/**
 * The whole chart, by the engine: every depth and loosened state against every texture and
 * contaminant, on a floor and off it. What reads the same is put together, so that it fits a page.
 */
export function chartGrid(): Grid {
  const columns = chartPlaces.flatMap(columnsOf);
  const across = ({ looseness, depth }: Line): Reading =>
    columns.map(({ place, textures, soils: [soil] }) =>
      cellOf({
        place,
        looseness,
        depth,
        texture: textures[0] as Texture,
        soil: soil as Soil,
      }),
    );
  const read = new Map(lines.map((line) => [`${line.looseness} ${line.depth}`, across(line)]));
  const at = (looseness: Looseness, depth: DepthBand) =>
    read.get(`${looseness} ${depth}`) as Reading;
  const states = choicesOf('looseness');
  // A depth at which looseness makes no difference is one row at the foot.
  const alone = choicesOf('depth').filter((depth) =>
    states.every((state) => same(at(state, depth), at(states[0] as Looseness, depth))),
  );
  const others = choicesOf('depth').filter((depth) => !alone.includes(depth));
  const alike = (depths: readonly DepthBand[]) => (one: Looseness, other: Looseness) =>
    depths.every((depth) => same(at(one, depth), at(other, depth)));
  const row = (looseness: readonly Looseness[], depths: readonly DepthBand[]): Row => ({
    looseness,
    depths,
    runs: runsOf(at(looseness[0] as Looseness, depths[0] as DepthBand), columns),
  });
  const rowsOf = (looseness: readonly Looseness[], depths: readonly DepthBand[]): Row[] => {
    const [state] = looseness as [Looseness];
    return gathered(depths, (one, other) => same(at(state, one), at(state, other))).map((found) =>
      row(looseness, found),
    );
  };
  // What does not change with depth is one row; where all the rest agree, they share one too.
  const steady = states.filter((state) =>
    others.every((depth) => same(at(state, depth), at(state, others[0] as DepthBand))),
  );
  const changing = states.filter((state) => !steady.includes(state));
  const shared = others.filter((depth) =>
    changing.every((state) => alike([depth])(state, changing[0] as Looseness)),
  );
  const apart = others.filter((depth) => !shared.includes(depth));
  return {
    columns,
    rows: [
      ...gathered(steady, alike(others)).flatMap((group) => rowsOf(group, others)),
      ...gathered(changing, alike(apart)).flatMap((group) => rowsOf(group, apart)),
      ...(changing.length ? rowsOf(changing, shared) : []),
      ...alone.map((depth) => row(states, [depth])),
    ],
  };
}
