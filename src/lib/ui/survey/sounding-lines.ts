import type { SurveyResult } from '$lib/survey/survey';
import { surveyResultWords } from '$words/survey-results';
import type { Say } from '$lib/words/types';
import { valueOf, type OwnFigures } from '$shared/figures';

const words = surveyResultWords.soundings;

/** What the taps say and what they can have missed, line by line; `ask` where the reader is to do something. */
export function soundingLines(
  { spacing, found, chained, hollow, untapped, taps }: SurveyResult,
  say: Say,
  own?: OwnFigures,
): readonly { readonly text: string; readonly ask: boolean }[] {
  const tell = (text: string) => ({ text, ask: false });
  const ask = (text: string) => ({ text, ask: true });
  const most = () => say.length(valueOf('sounding.lane', own));
  const chain = !chained
    ? []
    : chained.tooWide
      ? [ask(words.lanesTooWide(say.length(chained.lanes), most()))]
      : [tell(words.chained(say.length(chained.lanes)))];
  if (spacing === null || !found) return chain.length ? chain : [ask(words.none)];
  return [
    ...chain,
    tell(`${words.grid(say.length(spacing))} ${words.found(say.length(found.across))}`),
    tell(words.finer(say.length(found.finer.spacing), say.length(found.finer.across))),
    ...(hollow && 'refused' in hollow ? [ask(words.tooWide)] : []),
    ...(hollow && 'span' in hollow
      ? [
          hollow.span[0] > 0
            ? tell(words.hollow(say.area(hollow.span[0]), say.area(hollow.span[1])))
            : tell(words.noneHollow(say.area(hollow.span[1]))),
        ]
      : []),
    ...(taps.tapAgain.length ? [ask(words.again(taps.tapAgain.length))] : []),
    ...(taps.outline.length ? [ask(words.outline(taps.outline.length))] : []),
    ...(untapped.length ? [ask(words.untapped(say.list(untapped), untapped.length > 1))] : []),
  ];
}
