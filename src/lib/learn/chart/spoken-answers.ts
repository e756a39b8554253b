import { choicesOf, type DepthBand, type Looseness } from '$lib/answers/questions';
import { questionWords } from '$words/questions';
import { chartWords, depthRunWords, soilBriefly } from '$words/ui/chart';
import { hazardShort } from '$words/hazards/short';
import { methodWords } from '$words/methods';
import { capital, lowered } from '$lib/words/by-language';
import { formatter } from '$lib/words/format';
import { methods, type MethodId } from '$shared/methods';
import { chartPlaces, soils, type ChartPlace, type Soil } from './cells';
import type { Column } from './grid';
import { inOneLine, spokenProfile } from './spoken-beside';
import { spokenMore, spokenStopHere, spokenWhyNot } from './spoken-box';
import type { Tapped } from './box';
import type { FieldChart } from './spoken';

const say = formatter('metric');
const american = formatter('us');
const asked = questionWords(say);
const named = methodWords(say);

const textureNames = ({ textures }: Column) =>
  inOneLine(textures.map((each) => asked.texture.choices[each].name));

/** Which part of a place a run of columns stands for; empty where it stands for all of it. */
function whereOf(run: readonly Column[], whole: readonly Column[]): string {
  if (run.length === whole.length) return '';
  return say.list(
    [...new Set(run.map(({ textures }) => textures))].map((textures) => {
      const on = run.filter((column) => column.textures === textures);
      const names = textureNames(on[0] as Column);
      const lying = on.flatMap((column) => column.soils);
      const others = soils.filter((soil) => !lying.includes(soil));
      if (!others.length) return names;
      const brief = (list: readonly Soil[]) => say.either(list.map((soil) => soilBriefly[soil]));
      return others.length < lying.length
        ? chartWords.taps.without(names, brief(others))
        : chartWords.taps.under(names, brief(lying));
    }),
  );
}

type Run = FieldChart['rows'][number]['runs'][number];
/** What runs say apart from where. */
const saying = ({ method, verdict }: Run) => `${verdict} ${method ?? ''}`;

const anyTexture = (run: Run) => ({ ...run, where: '', textures: choicesOf('texture') });

/** Why a row names a method and nothing gentler, what it leaves, and what in it can hurt somebody. */
function factsOf(method: MethodId, row: Tapped) {
  const profile = spokenProfile(method);
  return {
    method,
    name: named[method].name,
    whyNot: spokenWhyNot(row, method),
    rough: profile ? chartWords.taps.rough(profile.csp, profile.basis) : chartWords.taps.asFound,
    dangers: say.list(methods[method].hazards.map((hazard) => lowered(hazardShort[hazard]))),
  };
}

/** What the chart says to each loosened state and depth, place by place: what a phone shows after two taps. */
export const spokenAnswers = ({ rows, columns }: Pick<FieldChart, 'rows' | 'columns'>) =>
  rows.map(({ looseness, depths, runs }) => {
    let at = 0;
    const lines = runs.map((run) => {
      const own = columns.slice(at, (at += run.span)) as readonly unknown[] as readonly Column[];
      return { ...run, own };
    });
    const everywhere = new Set(lines.map(saying)).size === 1;
    const inPlace = (place: ChartPlace) => lines.filter((line) => line.place === place);
    const met = lines.flatMap(({ method }) => method ?? []);
    return {
      looseness,
      depths,
      /** Of every method that any of its lines names, once. */
      facts: [...new Set(met)].map((method) => factsOf(method, { looseness, depths })),
      /** Each once, with the place where it is said of one alone. */
      notes: [...new Set(lines.flatMap(({ notes }) => notes))].map((note) => {
        const where = chartPlaces.filter((place) =>
          inPlace(place).some(({ notes }) => notes.includes(note)),
        );
        return { note, place: where.length === 1 ? (where[0] ?? null) : null };
      }),
      stopped: spokenStopHere({ looseness, depths }),
      more: spokenMore({ looseness, depths }),
      /** With nothing on it: by texture where that makes a difference. What holds everywhere is said once. */
      clean: everywhere
        ? [{ place: null, lines: [anyTexture(lines[0] as Run)] }]
        : chartPlaces.map((place) => {
            const spots = inPlace(place).flatMap((line) =>
              line.own
                .filter((column) => column.soils.includes('clean'))
                .map((column) => ({
                  ...line,
                  where: textureNames(column),
                  textures: column.textures,
                })),
            );
            const one = new Set(spots.map(saying)).size === 1;
            return { place, lines: one ? [anyTexture(spots[0] as Run)] : spots };
          }),
      /** With whatever may lie on it; none where that makes no difference. */
      all: everywhere
        ? []
        : chartPlaces.map((place) => ({
            place,
            lines: inPlace(place).map((line) => ({
              ...line,
              where: whereOf(
                line.own,
                inPlace(place).flatMap(({ own }) => own),
              ),
            })),
          })),
    };
  });

/** What there is to tap: every loosened state, and every depth in both systems of units. */
export const tapChoices = {
  looseness: choicesOf('looseness').map((id: Looseness) => ({
    id,
    name: asked.looseness.choices[id].name,
  })),
  depth: choicesOf('depth').map((id: DepthBand) => {
    const [metric, us] = [say, american].map((each) => capital(depthRunWords(id, id, each)));
    return { id, metric, us: us === metric ? '' : us };
  }),
};
