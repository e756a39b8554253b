import { explainerFor } from '$lib/learn/links';
import { interviewMap } from '$lib/interview/map';
import { questions, type QuestionId } from '$lib/answers/questions';
import { questionWords } from '$words/questions';
import { skipWords } from '$words/ui/question';
import { mapWords } from '$words/ui/interview-map';
import { dayWords, lowered } from '$lib/words/by-language';
import { formatter } from '$lib/words/format';
import { version } from '../../../../package.json';
import { layOut } from './places';

export const csr = false;

const say = formatter('metric');
const asked = questionWords(say);
const nameOf = (place: QuestionId | 'done') =>
  place === 'done' ? mapWords.done : asked[place].short;

/** The map, by the machine of this build, as a drawing and in words. */
export const load = () => {
  const map = interviewMap();
  const isBack = (from: QuestionId, to: QuestionId | 'done') =>
    to !== 'done' && map.questions.indexOf(to) < map.questions.indexOf(from);
  return {
    drawing: layOut(map),
    names: Object.fromEntries(map.questions.map((id) => [id, asked[id].short])),
    list: map.questions.map((id) => ({
      id,
      scope: questions[id].scope,
      ask: asked[id].ask,
      short: asked[id].short,
      explainer: explainerFor('question', id),
      on: map.arrows
        .filter(({ from }) => from === id)
        .map(({ to, why, skipped }) => ({
          to,
          why,
          line: why
            ? mapWords.jumps(
                skipWords[why],
                nameOf(to),
                say.list(skipped.map(({ question }) => lowered(asked[question].short))),
              )
            : mapWords[isBack(id, to) ? 'back' : 'goes'](nameOf(to)),
        })),
    })),
    version,
    made: dayWords(new Date()),
  };
};
