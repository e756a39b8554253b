import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { questionIds } from '$lib/answers/questions';
import { whyNotAsked } from '$lib/advice/relevance';
import { answerOf, type AnswerGiven, type InterviewContext } from '$lib/interview/context';
import { give, replay } from '$lib/interview/replay';
import { filled, legal } from '../helpers/answers-given';

const empty: InterviewContext = { site: {}, zone: {} };

describe('a fold of answers', () => {
  const anyGiven = fc.constantFrom(...questionIds.flatMap(legal));
  const anyAnswers = fc.array(anyGiven, { maxLength: 24 });

  it('replaying what was replayed changes nothing', () => {
    fc.assert(
      fc.property(anyAnswers, (given) => {
        const once = replay(filled(given));
        const twice = replay(once.context);
        expect(twice.context).toEqual(once.context);
        expect(twice.value).toEqual(once.value);
      }),
    );
  });

  it('keeps every answer, also one whose question is not asked now', () => {
    fc.assert(
      fc.property(anyAnswers, (given) => {
        const answers = filled(given);
        expect(replay(answers).context).toEqual(answers);
      }),
    );
  });

  it('does not care in which order the answers came', () => {
    const order = fc.uniqueArray(anyGiven, { selector: ({ question }) => question, maxLength: 16 });
    fc.assert(
      fc.property(
        order.chain((given) =>
          fc.tuple(fc.constant(given), fc.shuffledSubarray(given, { minLength: given.length })),
        ),
        ([one, other]) => {
          const fold = (all: readonly AnswerGiven[]) =>
            all.reduce<InterviewContext>((answers, each) => {
              const asked = whyNotAsked(each.question, answers.site, answers.zone) === null;
              return asked
                ? give(answers, each).answers
                : replay(filled([...list(answers), each])).context;
            }, empty);
          const list = (answers: InterviewContext) =>
            questionIds
              .filter((id) => answerOf(answers, id) !== undefined)
              .map((id) => ({ question: id, answer: answerOf(answers, id) }) as AnswerGiven);
          expect(fold(other)).toEqual(fold(one));
          expect(replay(fold(other)).value).toEqual(replay(fold(one)).value);
        },
      ),
    );
  });
});
