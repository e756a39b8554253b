import type { Looseness } from '$lib/answers/questions';
import { methodWords } from '$words/methods';
import { questionWords } from '$words/questions';
import { briefly, chartWords, finishBriefly } from '$words/ui/chart';
import { settingBases } from '$words/settings';
import { verdictWords } from '$words/verdicts';
import { capital, lowered } from '$lib/words/by-language';
import { formatter } from '$lib/words/format';
import { figures } from '$shared/figures';
import { methodIds, methods, type MethodId } from '$shared/methods';
import {
  chartStops,
  finishCases,
  finishesMirror,
  finishRows,
  type ChartStop,
  type FinishCase,
} from './beside';

const say = formatter('metric');
const asked = questionWords(say);
const named = methodWords(say);

/** Names in a row, the first one with a capital. */
export const inOneLine = (names: readonly string[]) =>
  say.either(names.map((name, index) => (index ? lowered(name) : name)));
/** The profile a method leaves and what that rests on; null where it leaves what it finds. */
export function spokenProfile(method: MethodId) {
  const { profile } = methods[method];
  if (profile === 'as-found') return null;
  return { csp: say.figure(profile), basis: settingBases[figures[profile].basis] };
}

/** How rough every method leaves it, those too that only the notes of the chart name; by what that rests on. */
export function spokenRoughness() {
  const all = [...methodIds]
    .sort((one, other) => methods[one].class - methods[other].class)
    .map((method) => ({ method, name: named[method].name, left: spokenProfile(method) }));
  const basisOf = ({ left }: (typeof all)[number]) => left?.basis ?? chartWords.roughness.asFound;
  return [...new Set(all.map(basisOf))].map((basis) => ({
    basis: capital(basis),
    methods: all
      .filter((each) => basisOf(each) === basis)
      .map(({ method, name, left }) => ({ method, name: lowered(name), csp: left?.csp ?? '' })),
  }));
}

/** The stops; what has the same verdict, the same person and the same time stands together. */
export function spokenStops() {
  const groups: ChartStop[][] = [];
  for (const stop of chartStops()) {
    const kin = groups.find(
      ([first]) =>
        first?.hold.verdict === stop.hold.verdict &&
        first.hold.who === stop.hold.who &&
        first.when === stop.when,
    );
    if (kin) kin.push(stop);
    else groups.push([stop]);
  }
  return groups.map((stops) => {
    const { hold, when } = stops[0] as ChartStop;
    const nameOf = ({ found }: ChartStop): string => {
      const choices: Readonly<Record<string, { readonly name: string }>> =
        asked[found.question].choices;
      return lowered(choices[found.choice]?.name ?? '');
    };
    const signs = stops.filter(({ found }) => found.question === 'warnings').map(nameOf);
    const others = (['cracks', 'element'] as const).flatMap((question) => {
      const names = stops.filter(({ found }) => found.question === question).map(nameOf);
      return names.length ? [`${lowered(asked[question].short)}: ${say.either(names)}`] : [];
    });
    return {
      choices: stops.map((stop) => stop.found.choice),
      name: [...signs, ...others].join('; '),
      verdict: hold.verdict,
      verdictName: verdictWords.verdicts[hold.verdict].name,
      who: verdictWords.who[hold.who].name,
      when,
    };
  });
}

/** A method with what it stands on, as far as that makes a difference. */
const onWhat = (
  method: string,
  {
    texture,
    looseness,
  }: { readonly [Key in 'texture' | 'looseness']: FinishCase[Key] | undefined },
) =>
  chartWords.finish.on(
    method,
    texture && lowered(asked.texture.choices[texture].name),
    looseness?.length === 1 && lowered(asked.looseness.choices[looseness[0] as Looseness].name),
  );

/** A row for each case in which the finish may ask for more, a column for finishes that ask alike. */
export function spokenFinishes() {
  const rows = finishRows();
  return {
    hole: chartWords.finish.hole(say.figure('depth.shallow')),
    mirrored: finishesMirror(),
    finishes: rows.map(({ finishes }) => ({
      finishes,
      name: inOneLine(finishes.map((finish) => asked.finish.choices[finish].name)),
      brief: finishes.map((finish) => finishBriefly[finish]).join(', '),
    })),
    cases: finishCases.map(({ place, says, texture, looseness }, index) => ({
      place,
      says,
      texture,
      looseness,
      name: onWhat(named[says].name, { texture, looseness }),
      brief: onWhat(briefly[says], { texture, looseness }),
      becomes: rows.map(({ methods: found }) => {
        const method = found[index] ?? says;
        return { method, name: method === says ? null : named[method].name };
      }),
    })),
  };
}
