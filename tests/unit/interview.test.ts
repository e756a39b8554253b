import fc from 'fast-check';
import { getNextSnapshot } from 'xstate';
import { describe, expect, it } from 'vitest';
import { getAdjacencyMap } from 'xstate/graph';
import { notSure } from '$lib/answers/answers';
import { choicesOf, questionIds, questions, type QuestionId } from '$lib/answers/questions';
import { askedQuestions, missingQuestions, whyNotAsked } from '$lib/advice/relevance';
import {
  answerOf,
  previousOf,
  type AnswerGiven,
  type InterviewContext,
} from '$lib/interview/context';
import { interview, type InterviewEvent } from '$lib/interview/machine';
import { restsAt } from '$lib/interview/rests-at';
import { give, placeOf, replay, standAt, type InterviewState } from '$lib/interview/replay';
import { anyAnswer } from '../helpers/any-job';
import { projection } from '../helpers/projection';

const empty: InterviewContext = { site: {}, zone: {} };

/** The answers that the guards can tell apart, for each question. */
function legal(question: QuestionId): AnswerGiven[] {
  const { kind } = questions[question];
  const answers: unknown[] =
    kind === 'number'
      ? ['unknown', 100]
      : kind === 'many'
        ? [
            notSure(question),
            { yes: [], maybe: [] },
            ...choicesOf(question).map((choice) => ({ yes: [choice], maybe: [] })),
          ]
        : [notSure(question), ...choicesOf(question).map((choice) => [choice])];
  if (kind === 'depth') answers.push(4, 60, 100);
  return answers.map((answer) => ({ question, answer }) as AnswerGiven);
}

const eventsOf = (state: InterviewState): InterviewEvent[] => {
  const place = placeOf(state);
  if (place === 'done') return [];
  return [
    ...(telling[place] ?? [notSure(place)]).map(
      (answer) => ({ type: 'ANSWER', question: place, answer }) as InterviewEvent,
    ),
    { type: 'BACK' },
  ];
};

/** Of those, one of each kind that the guards can tell apart: choices of the rest all steer alike. */
const telling: Readonly<Partial<Record<QuestionId, readonly unknown[]>>> = {
  thickness: ['unknown', 100],
  warnings: [
    { yes: [], maybe: [] },
    { yes: ['fire-or-chemical'], maybe: [] },
    { yes: ['settled-or-rocking'], maybe: [] },
  ],
  depth: [['under-3'], ['through'], 60],
  looseness: [['tight'], ['hollow']],
  cracks: [['none'], ['open']],
  steel: [['none-seen'], ['corroded']],
};

describe('the machine', () => {
  const options = { events: eventsOf, serializeState: projection, limit: 200_000 };
  const map = Object.values(getAdjacencyMap(interview, options));
  const seen = new Set(map.map(({ state }) => placeOf(state)));

  it('reaches every question, and its end', () => {
    const states = Object.keys(interview.states).filter((id) => id !== 'next');
    expect([...seen].sort()).toEqual(states.sort());
  });

  it('never rests in the state that only picks', () => {
    expect([...seen]).not.toContain('next');
  });

  it('ends from everywhere', () => {
    const ended = new Set(
      map.filter(({ state }) => state.status === 'done').map(({ state }) => projection(state)),
    );
    expect(ended.size).toBeGreaterThan(0);
    for (let before = 0; before !== ended.size;) {
      before = ended.size;
      for (const { state, transitions } of map)
        if (
          Object.values(transitions as Record<string, { state: InterviewState }>).some(
            ({ state: next }) => ended.has(projection(next)),
          )
        )
          ended.add(projection(state));
    }
    expect(map.filter(({ state }) => !ended.has(projection(state)))).toEqual([]);
  });

  it('misses nothing where it ends', () => {
    const ends = map.filter(({ state }) => state.status === 'done');
    expect(ends.length).toBeGreaterThan(3);
    for (const { state } of ends)
      expect(missingQuestions(state.context.site, state.context.zone)).toEqual([]);
  });

  it('rests where the pages that need no machine say that it does', () => {
    const given = fc.record(Object.fromEntries(questionIds.map((id) => [id, anyAnswer(id)])), {
      requiredKeys: [],
    });
    fc.assert(
      fc.property(given, (all) => {
        const of = (scope: 'site' | 'zone') =>
          Object.fromEntries(
            Object.entries(all).filter(([id]) => questions[id as QuestionId].scope === scope),
          );
        const answers = { site: of('site'), zone: of('zone') } as InterviewContext;
        expect(restsAt(answers)).toBe(placeOf(replay(answers)));
      }),
      { numRuns: 600 },
    );
    expect(restsAt(empty)).toBe('element');
  });

  it('passes over a question that an answer given earlier leaves nothing to ask for', () => {
    // The ground moves, so only the finish would count; but rotten to half the thickness is replaced.
    const answers: InterviewContext = {
      site: {
        ...{
          element: ['soffit'],
          setting: ['open'],
          salts: ['sea-or-pool'],
          freezeThaw: ['often'],
        },
        ...{ thickness: 30, warnings: { yes: ['settled-or-rocking'], maybe: [] } },
      },
      zone: { depth: 2, looseness: ['rotten'] },
    };
    expect(placeOf(replay(answers))).toBe('area');
    expect(restsAt(answers)).toBe('area');
  });

  it('describes each of its states', () => {
    for (const state of Object.values(interview.states)) expect(state.description).toBeTruthy();
  });

  it('refuses an answer to another question than the one it stands at', () => {
    const state = standAt(empty, 'element');
    const given = { question: 'salts', answer: ['none'] } as const;
    expect(give(empty, { question: 'element', answer: ['slab'] }).next).toBe('setting');
    expect(placeOf(state)).toBe('element');
    expect(replay(empty).can({ type: 'ANSWER', ...given })).toBe(false);
  });
});

describe('a fold of answers', () => {
  const anyGiven = fc.constantFrom(...questionIds.flatMap(legal));
  const anyAnswers = fc.array(anyGiven, { maxLength: 24 });
  const filled = (given: readonly AnswerGiven[]): InterviewContext => {
    const answers = { site: {}, zone: {} } as Record<'site' | 'zone', Record<string, unknown>>;
    for (const { question, answer } of given) answers[questions[question].scope][question] = answer;
    return answers as unknown as InterviewContext;
  };

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

  it('asks only what became missing when an answer is changed', () => {
    let answers = empty;
    let place = placeOf(replay(answers));
    while (place !== 'done') {
      const given = { question: place, answer: legal(place)[1]?.answer } as AnswerGiven;
      ({ answers, next: place } = give(answers, given));
    }
    expect(answers.zone.cracks).toEqual(['none']);
    const changed = give(answers, { question: 'cracks', answer: ['crumbling'] });
    expect(changed.next).toBe('crackLength');
    expect({ ...changed.answers.zone, cracks: undefined }).toEqual({
      ...answers.zone,
      cracks: undefined,
    });
    const sized = give(changed.answers, { question: 'crackLength', answer: 12 });
    expect(sized.next).toBe('done');
    const undone = give(sized.answers, { question: 'cracks', answer: ['none'] });
    expect(undone.next).toBe('done');
    expect(undone.answers.zone.crackLength).toBe(12);
  });

  it('goes back to the question asked before, as pages that do without the machine reckon it', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...questionIds.flatMap(legal))), (given) => {
        const answers = filled(given);
        const asked = askedQuestions(answers.site, answers.zone);
        for (const question of questionIds) {
          const there = standAt(answers, question);
          const stands = asked.includes(question);
          if (stands) expect(placeOf(there)).toBe(question);
          const back = getNextSnapshot(interview, there, { type: 'BACK' });
          // It stands there with its own answer open, which may leave others out: what goes on next
          // decides whether the rest counts where the ground moved.
          const { site, zone } = there.context;
          const earlier = previousOf(askedQuestions(site, zone), question);
          if (stands) expect(placeOf(back)).toBe(earlier ?? question);
          else expect(previousOf(asked, question)).toBe(null);
        }
      }),
      { numRuns: 60 },
    );
    const answers = filled([{ question: 'cracks', answer: ['none'] }]);
    const asked = askedQuestions(answers.site, answers.zone);
    expect(previousOf(asked, 'steel')).toBe('cracks');
    expect(previousOf(asked, 'element')).toBe(null);
  });
});
