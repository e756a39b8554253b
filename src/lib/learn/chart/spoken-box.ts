import { questionWords } from '$words/questions';
import { methodWords } from '$words/methods';
import { chartWords, depthRunWords, finishBriefly } from '$words/ui/chart';
import { verdictWords } from '$words/verdicts';
import { lowered } from '$lib/words/by-language';
import { formatter } from '$lib/words/format';
import { choicesOf, type Texture } from '$lib/answers/questions';
import type { MethodId } from '$shared/methods';
import { ruleSentences } from '$words/rules';
import { asksMore, spotOf, stoppedHere, whyNotGentler, type Tapped } from './box';
import { cellOf } from './cells';
import { inOneLine } from './spoken-beside';

const say = formatter('metric');
const asked = questionWords(say);
const named = methodWords(say);

/** The kinds of concrete that are stopped at two taps, in one line; empty where none is. */
export function spokenStopHere(tapped: Tapped) {
  const stop = stoppedHere(tapped);
  return stop
    ? {
        elements: stop.elements,
        verdictName: verdictWords.verdicts[stop.hold.verdict].name,
        line: chartWords.taps.stopped(
          inOneLine(stop.elements.map((element) => asked.element.choices[element].name)),
          verdictWords.who[stop.hold.who].name,
        ),
      }
    : null;
}

/** What goes on next and asks for more at two taps, in one line; null where nothing does. */
export function spokenMore(tapped: Tapped) {
  const { depths, more } = asksMore(tapped);
  if (!more.length) return null;
  const onTextures = (textures: readonly Texture[]) =>
    textures.length === lyingUnder(tapped, textures)
      ? ''
      : inOneLine(textures.map((texture) => lowered(asked.texture.choices[texture].name)));
  const parts = more.map(({ finishes, methods }) =>
    chartWords.taps.more(
      finishes.map((finish) => lowered(finishBriefly[finish])).join(', '),
      say.either(
        methods.map(({ method, textures }) =>
          chartWords.taps.moreOn(lowered(named[method].name), onTextures(textures)),
        ),
      ),
    ),
  );
  const last = depths.at(-1);
  const upTo =
    last && depths.length < tapped.depths.length ? depthRunWords(depths[0] ?? last, last, say) : '';
  return { depths, more, line: chartWords.taps.asksMore(parts, upTo) };
}

/** Why a row names a method and not its gentler neighbour, in a line; null where that is not one thing. */
export function spokenWhyNot(tapped: Tapped, method: MethodId): string | null {
  const found = whyNotGentler(tapped, method);
  return (
    found && chartWords.taps.whyNot(named[found.method].name, ruleSentences[found.rule](found, say))
  );
}

/** On how many textures a row names the method that it names on the first of some. */
function lyingUnder(row: Tapped, [first]: readonly Texture[]): number {
  const methodOn = (texture: Texture) => cellOf(spotOf(row, texture)).method;
  return choicesOf('texture').filter((each) => first && methodOn(each) === methodOn(first)).length;
}
