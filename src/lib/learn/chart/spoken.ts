import type { Hold } from '$lib/advice/types';
import { choicesOf, type DepthBand, type Looseness, type Texture } from '$lib/answers/questions';
import { methodWords } from '$words/methods';
import { questionWords } from '$words/questions';
import { holdSentences } from '$words/rules/holds';
import { stepWords } from '$words/steps';
import { briefly, chartWords, depthRunWords, soilBriefly } from '$words/ui/chart';
import { verdictWords } from '$words/verdicts';
import { lowered } from '$lib/words/by-language';
import { formatter } from '$lib/words/format';
import { methodIds, methods, type StepId } from '$shared/methods';
import {
  assumedSite,
  assumedZone,
  chartPlaces,
  type Cell,
  type ChartPlace,
  type Soil,
} from './cells';
import { chartGrid, type Column, type Row } from './grid';
import { inOneLine, spokenFinishes, spokenRoughness, spokenStops } from './spoken-beside';

const say = formatter('metric');
const american = formatter('us');
const asked = questionWords(say);
const named = methodWords(say);
const steps = stepWords(say);

const nameOfSoil = (soil: Soil) =>
  soil === 'clean' ? chartWords.clean : lowered(asked.contamination.choices[soil].name);
const textureNames = (textures: readonly Texture[]) =>
  inOneLine(textures.map((texture) => asked.texture.choices[texture].name));

/** Sentences that the cells point to by number, in order of first use. */
function noteBook() {
  const notes: string[] = [];
  return {
    notes,
    numberOf(hold: Hold): number {
      const sentence = holdSentences[hold.rule as keyof typeof holdSentences](hold, say);
      if (!notes.includes(sentence)) notes.push(sentence);
      return notes.indexOf(sentence) + 1;
    },
  };
}

/** The contaminants of a column, those that ask for the same work first in one line. */
function spokenColumn({ place, textures, soils, first }: Column) {
  const firstOf = (soil: Soil) =>
    (first[soil] ?? []).map((step) => chartWords.first(steps[step].name));
  const lines = [...new Set(soils.map((soil) => firstOf(soil).join()))];
  return {
    place,
    textures,
    soils,
    brief: soils.map((soil) => soilBriefly[soil]).join(', '),
    lines: lines.map((line) => {
      const own = soils.filter((soil) => firstOf(soil).join() === line);
      return { name: say.either(own.map(nameOfSoil)), first: firstOf(own[0] as Soil).join(', ') };
    }),
  };
}

/** Work that comes before the chart's own, once for all columns: what paper says beside the table. */
function spokenBefore(columns: readonly Column[]): string {
  const soilsOf = (step: StepId, place: ChartPlace): Soil[] => [
    ...new Set(
      columns
        .filter((column) => column.place === place)
        .flatMap(({ soils, first }) => soils.filter((soil) => first[soil]?.includes(step))),
    ),
  ];
  const all = columns.flatMap(({ first }) => Object.values(first).flat());
  const lines = [...new Set(all)].flatMap((step) => {
    const found = chartPlaces.map((place) => [place, soilsOf(step, place)] as const);
    const brief = (soils: readonly Soil[]) => say.either(soils.map((soil) => soilBriefly[soil]));
    const alike = new Set(found.map(([, soils]) => soils.join())).size === 1;
    return alike
      ? [chartWords.before(null, brief(found[0]?.[1] ?? []), steps[step].name)]
      : found
          .filter(([, soils]) => soils.length)
          .map(([place, soils]) =>
            chartWords.before(chartWords.placesBriefly[place], brief(soils), steps[step].name),
          );
  });
  return chartWords.beforeAll(lines.join('; '));
}

const spokenDepths = (depths: readonly DepthBand[]) => {
  const [first, last] = [depths[0] as DepthBand, depths.at(-1) as DepthBand];
  const [metric, us] = [depthRunWords(first, last, say), depthRunWords(first, last, american)];
  return { metric, us: us === metric ? null : us };
};

/** Loosened states by name, or by those that are left out where those are fewer. */
function spokenLooseness(states: readonly Looseness[]): string {
  const nameOf = (state: Looseness) => asked.looseness.choices[state].name;
  const out = choicesOf('looseness').filter((state) => !states.includes(state));
  if (!out.length) return chartWords.anyLooseness;
  return out.length < states.length
    ? chartWords.allBut(say.list(out.map((state) => lowered(nameOf(state)))))
    : inOneLine(states.map(nameOf));
}

function spokenCell(cell: Cell, numberOf: (hold: Hold) => number) {
  return {
    verdict: cell.verdict,
    verdictName: cell.verdict === 'prepare' ? null : verdictWords.verdicts[cell.verdict].name,
    method: cell.method,
    name: cell.method && named[cell.method].name,
    brief: cell.method && briefly[cell.method],
    strength: cell.strength,
    notes: cell.holds.map(numberOf),
  };
}

/** What the chart takes for granted, in the words of the questions. */
const assumed = [
  ...(['setting', 'salts', 'freezeThaw'] as const).map((id) => {
    const choices: Readonly<Record<string, { readonly name: string }>> = asked[id].choices;
    return chartWords.assumed(asked[id].short, choices[assumedSite[id]]?.name ?? '');
  }),
  chartWords.assumed(asked.thickness.short, chartWords.unknown),
  chartWords.assumed(asked.warnings.short, chartWords.noWarnings),
  ...(['cracks', 'steel', 'finish'] as const).map((id) => {
    const choices: Readonly<Record<string, { readonly name: string }>> = asked[id].choices;
    return chartWords.assumed(asked[id].short, choices[assumedZone[id]]?.name ?? '');
  }),
];

function spokenRow(row: Row, rows: readonly Row[], numberOf: (hold: Hold) => number) {
  const group = rows.filter(({ looseness }) => looseness.join() === row.looseness.join());
  return {
    looseness: row.looseness,
    /** How many rows share this loosened state; null where a row above has said it. */
    states: group[0] === row ? { name: spokenLooseness(row.looseness), span: group.length } : null,
    depths: row.depths,
    depth: spokenDepths(row.depths),
    runs: row.runs.map(({ place, span, cell }) => ({
      place,
      span,
      ...spokenCell(cell, numberOf),
    })),
  };
}

/** The methods the chart can name, gentlest first, with their strength. */
const spokenKey = (rows: readonly Row[]) =>
  methodIds
    .filter((id) => rows.some(({ runs }) => runs.some(({ cell }) => cell.method === id)))
    .map((id) => ({ id, name: named[id].name, strength: methods[id].class }))
    .sort((one, other) => one.strength - other.strength);

/** The field chart as a page shows it: data beside the words for it. */
export function fieldChart() {
  const { columns, rows } = chartGrid();
  const { notes, numberOf } = noteBook();
  const spokenRows = rows.map((row) => spokenRow(row, rows, numberOf));
  return {
    places: chartPlaces.map((place: ChartPlace) => {
      const own = columns.filter((column) => column.place === place);
      const textures = [...new Set(own.map((column) => column.textures))];
      return {
        place,
        name: chartWords.places[place],
        span: own.length,
        textures: textures.map((each) => ({
          textures: each,
          name: textureNames(each),
          span: own.filter((column) => column.textures === each).length,
        })),
      };
    }),
    columns: columns.map(spokenColumn),
    before: spokenBefore(columns),
    rows: spokenRows,
    notes,
    key: spokenKey(rows),
    finishes: spokenFinishes(),
    stops: spokenStops(),
    roughness: spokenRoughness(),
    size: {
      spot: chartWords.size.spot(say.figure('place.spot')),
      wide: chartWords.size.wide(say.figure('place.wide')),
    },
    assumed,
  };
}

export type FieldChart = ReturnType<typeof fieldChart>;
