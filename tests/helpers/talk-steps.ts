import fc from 'fast-check';
import { notSure } from '$lib/answers/answers';
import { choicesOf, questions, type QuestionId } from '$lib/answers/questions';
import type { AnswerGiven } from '$lib/interview/context';
import type { TalkEvent } from '$lib/interview/talk-types';

export const asked: readonly QuestionId[] = [
  'element',
  'depth',
  'looseness',
  'texture',
  'cracks',
  'area',
];
export const answersTo = (question: QuestionId): unknown[] => {
  if (questions[question].kind === 'number') return [12, 'unknown'];
  return [notSure(question), ...choicesOf(question).map((choice) => [choice])];
};
const anyGiven: fc.Arbitrary<AnswerGiven> = fc.constantFrom(
  ...asked.flatMap((question) =>
    answersTo(question).map((answer) => ({ question, answer }) as AnswerGiven),
  ),
);
const anyZone = fc.constantFrom(null, 'a', 'b', 'c', 'zz');

export type Step =
  | { readonly do: 'open'; readonly question: QuestionId; readonly zone: string | null }
  | { readonly do: 'answer'; readonly given: AnswerGiven }
  | { readonly do: 'send'; readonly event: TalkEvent }
  | {
      readonly do: 'there';
      readonly what: 'delete' | 'answer' | 'add' | 'remove';
      readonly zone: string;
      readonly given: AnswerGiven;
    }
  | { readonly do: 'here'; readonly what: 'delete' | 'move' | 'copy' | 'theirs' | 'again' | 'new' }
  | { readonly do: 'device'; readonly what: 'full' | 'broken' | 'slow' | 'well' }
  | { readonly do: 'wait' };
const plain = (event: TalkEvent) => ({ do: 'send', event }) as const;
export const anyStep: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant('open' as const),
      question: fc.constantFrom(...asked),
      zone: anyZone,
    }),
  },
  { weight: 8, arbitrary: fc.record({ do: fc.constant('answer' as const), given: anyGiven }) },
  {
    weight: 6,
    arbitrary: fc.constantFrom<Step>(
      plain({ type: 'BACK' }),
      plain({ type: 'CLOSE' }),
      plain({ type: 'DROP' }),
      plain({ type: 'GO_TO', question: 'texture' }),
      plain({ type: 'KEEP_MINE' }),
      plain({ type: 'TAKE_THEIRS' }),
      plain({ type: 'LEAVE', to: '/', kept: false }),
      plain({ type: 'LEAVE', to: '/', kept: true }),
      plain({ type: 'STAY' }),
      plain({ type: 'GO' }),
      plain({ type: 'LATE' }),
      plain({ type: 'CONTINUE', given: null }),
    ),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant('there' as const),
      what: fc.constantFrom(
        'delete' as const,
        'answer' as const,
        'add' as const,
        'remove' as const,
      ),
      zone: fc.constantFrom('a', 'b', 'c'),
      given: anyGiven,
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('here' as const),
      what: fc.constantFrom(
        'delete' as const,
        'move' as const,
        'copy' as const,
        'theirs' as const,
        'again' as const,
        'new' as const,
      ),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('device' as const),
      what: fc.constantFrom('full' as const, 'broken' as const, 'slow' as const, 'well' as const),
    }),
  },
  { weight: 4, arbitrary: fc.constant<Step>({ do: 'wait' }) },
);
