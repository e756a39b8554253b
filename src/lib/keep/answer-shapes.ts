import * as v from 'valibot';
import type { Answer } from '$lib/answers/answers';
import { notSure } from '$lib/answers/answers';
import {
  choicesOf,
  questions,
  type Choice,
  type DepthQuestion,
  type ManyQuestion,
  type NumberQuestion,
  type OneQuestion,
  type QuestionId,
} from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import type { Expected } from './problem';
import { list, object, picked, says, unique, whole, within } from './shapes';

const notSureText = v.literal('not-sure');

/** Choices in the order of the question, whatever order the file has them in. */
export function inOrder<Q extends QuestionId>(id: Q, some: readonly Choice<Q>[]): Choice<Q>[] {
  return choicesOf(id).filter((choice) => some.includes(choice));
}

/** Some choices of a question, none of them twice. */
const someOf = <Q extends QuestionId>(id: Q, expected: Expected) =>
  v.pipe(list(picked(choicesOf(id), expected), choicesOf(id).length), unique<Choice<Q>>());

/** What is left of a question with one answer: an id, several ids, or "not-sure". */
const oneShape = <Q extends OneQuestion>(id: Q) => {
  const expected: Expected = { id: 'choice', choices: choicesOf(id) };
  return v.pipe(
    v.union(
      [
        picked(choicesOf(id), expected),
        notSureText,
        v.pipe(someOf(id, expected), v.nonEmpty(says(expected))),
      ],
      says(expected),
    ),
    v.transform((given) => possible(id, given)),
  );
};

function possible<Q extends OneQuestion | DepthQuestion>(
  id: Q,
  given: string | readonly string[],
): Answer<Q> {
  if (given === 'not-sure') return notSure(id);
  return inOrder(id, [given].flat() as Choice<Q>[]) as unknown as Answer<Q>;
}

/** What is there, and what may be there: ids, "not-sure", or both lists by name. */
const manyShape = <Q extends ManyQuestion>(id: Q) => {
  const expected: Expected = { id: 'choices', choices: choicesOf(id) };
  const both = v.pipe(
    object({
      yes: v.exactOptional(someOf(id, expected), []),
      maybe: v.exactOptional(someOf(id, expected), []),
    }),
    v.check(
      ({ yes, maybe }) => !yes.some((choice) => maybe.includes(choice)),
      says({ id: 'unique' }),
    ),
  );
  return v.pipe(
    v.union([someOf(id, expected), notSureText, both], says(expected)),
    v.transform((given): Answer<Q> => {
      if (given === 'not-sure') return notSure(id);
      const { yes, maybe } = 'yes' in given ? given : { yes: given, maybe: [] };
      return { yes: inOrder(id, yes), maybe: inOrder(id, maybe) } as unknown as Answer<Q>;
    }),
  );
};

const numberShape = (id: NumberQuestion) => {
  const { unit, limit } = questions[id];
  const expected: Expected = { id: 'number', unit, range: rangeOf(limit) };
  return v.pipe(
    v.union([within(rangeOf(limit), expected), v.literal('unknown'), notSureText], says(expected)),
    v.transform((given): number | 'unknown' => (given === 'not-sure' ? 'unknown' : given)),
  );
};

const depthShape = (id: DepthQuestion) => {
  const { unit, limit } = questions[id];
  const expected: Expected = { id: 'depth', choices: choicesOf(id), unit, range: rangeOf(limit) };
  return v.pipe(
    v.union(
      [
        within(rangeOf(limit), expected),
        picked(choicesOf(id), expected),
        notSureText,
        v.pipe(someOf(id, expected), v.nonEmpty(says(expected))),
      ],
      says(expected),
    ),
    v.transform((given): Answer<DepthQuestion> =>
      typeof given === 'number' ? given : possible(id, given),
    ),
  );
};

/**
 * The least roughness by the data sheet: a whole grade as a number, or none. Several grades, or
 * "not-sure", are nothing the sheet says.
 */
const gradeShape = () => {
  const grades = choicesOf('makerProfile').filter((choice) => choice !== 'no-sheet');
  const range = [1, grades.length] as const;
  const expected: Expected = { id: 'number', unit: 'CSP', range };
  return v.pipe(
    v.union(
      [whole(range), v.literal('no-sheet'), notSureText, v.literal('unknown')],
      says(expected),
    ),
    v.transform((given): Answer<'makerProfile'> =>
      typeof given === 'number' ? [grades[given - 1] as (typeof grades)[number]] : ['no-sheet'],
    ),
  );
};

/** Damp or dry by the data sheet, or nothing said: an open answer says nothing either. */
const sheetMoistureShape = () => {
  const expected: Expected = { id: 'choice', choices: choicesOf('makerMoisture') };
  return v.pipe(
    v.union([picked(choicesOf('makerMoisture'), expected), notSureText], says(expected)),
    v.transform((given): Answer<'makerMoisture'> => [given === 'not-sure' ? 'no-sheet' : given]),
  );
};

type AnswerShape<Q extends QuestionId> = v.ExactOptionalSchema<
  v.GenericSchema<unknown, Answer<Q>>,
  undefined
>;

/** The shape of one question's answer in the file. A missing field means not answered. */
function answerShape(id: QuestionId): v.GenericSchema {
  const { kind } = questions[id];
  if (id === 'makerProfile') return gradeShape();
  if (id === 'makerMoisture') return sheetMoistureShape();
  if (kind === 'one') return oneShape(id as OneQuestion);
  if (kind === 'many') return manyShape(id as ManyQuestion);
  if (kind === 'number') return numberShape(id as NumberQuestion);
  return depthShape(id as DepthQuestion);
}

/** The fields of the answers to these questions. */
export function answerFields<Q extends QuestionId>(ids: readonly Q[]) {
  return Object.fromEntries(ids.map((id) => [id, v.exactOptional(answerShape(id))])) as unknown as {
    readonly [K in Q]: AnswerShape<K>;
  };
}
