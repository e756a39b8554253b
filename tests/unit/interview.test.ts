import fc from 'fast-check';
import { getNextSnapshot } from 'xstate';
import { describe, expect, it } from 'vitest';
import { getAdjacencyMap } from 'xstate/graph';
import { notSure } from '$lib/answers/answers';
import { questionIds, questions, type QuestionId } from '$lib/answers/questions';
import { askedQuestions, missingQuestions } from '$lib/advice/relevance';
import { previousOf, type InterviewContext } from '$lib/interview/context';
import { interview, type InterviewEvent } from '$lib/interview/machine';
import { restsAt } from '$lib/interview/rests-at';
import { placeOf, replay, standAt, type InterviewState } from '$lib/interview/replay';
import { filled, legal } from '../helpers/answers-given';
import { anyAnswer } from '../helpers/any-job';
import { projection } from '../helpers/projection';
import { rounds } from '../helpers/rounds';

const empty: InterviewContext = { site: {}, zone: {} };

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
      { numRuns: rounds(150, 600) },
    );
    expect(restsAt(empty)).toBe('element');
  });
});

describe('a fold of answers', () => {
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
      { numRuns: rounds(15, 60) },
    );
    const answers = filled([{ question: 'cracks', answer: ['none'] }]);
    const asked = askedQuestions(answers.site, answers.zone);
    expect(previousOf(asked, 'steel')).toBe('cracks');
    expect(previousOf(asked, 'element')).toBe(null);
  });
});
