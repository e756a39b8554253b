import { describe, expect, it } from 'vitest';
import { getNextSnapshot, initialTransition } from 'xstate';
import { questionIds } from '$lib/answers/questions';
import { askedQuestions, whyNotAsked } from '$lib/advice/relevance';
import { addressIn, type InterviewContext } from '$lib/interview/context';
import { interview, type InterviewEvent } from '$lib/interview/machine';
import { restsAt } from '$lib/interview/rests-at';
import { give, placeOf, replay, standAt, type InterviewState } from '$lib/interview/replay';
import type { TalkContext } from '$lib/interview/talk-types';
import { legal, toTheEnd } from '../helpers/answers-given';

const empty: InterviewContext = { site: {}, zone: {} };

describe('the machine', () => {
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

/** The ways through the interview, as its map and product design have them. */
describe('a step', () => {
  const step = (state: InterviewState, event: InterviewEvent) =>
    getNextSnapshot(interview, state, event);
  const slab = { question: 'element', answer: ['slab'] } as const;

  it('begins at the first question with nothing known, or with what is known', () => {
    const [state] = initialTransition(interview);
    expect(state.context).toEqual(empty);
    expect(placeOf(state)).toBe('element');
    const known: InterviewContext = { site: { element: ['wall'] }, zone: { cracks: ['none'] } };
    const [later] = initialTransition(interview, known);
    expect(later.context).toEqual(known);
    expect(placeOf(later)).toBe('setting');
  });

  it('writes an answer about the place to the place, one about the damage to its zone', () => {
    expect(give(empty, slab).answers).toEqual({ site: { element: ['slab'] }, zone: {} });
    const cracks = { question: 'cracks', answer: ['none'] } as const;
    expect(give(empty, cracks).answers).toEqual({ site: {}, zone: { cracks: ['none'] } });
  });

  it('leaves the other answers as they were', () => {
    const known: InterviewContext = { site: { setting: ['open'] }, zone: { cracks: ['none'] } };
    expect(give(known, slab).answers).toEqual({
      site: { setting: ['open'], element: ['slab'] },
      zone: { cracks: ['none'] },
    });
  });

  it('goes back over a question that is not asked, and from the first nowhere', () => {
    const [first] = initialTransition(interview);
    expect(placeOf(step(first, { type: 'BACK' }))).toBe('element');
    const none: InterviewContext = {
      site: {},
      zone: { cracks: ['none'], steel: ['none-seen'] },
    };
    expect(placeOf(step(standAt(none, 'steel'), { type: 'BACK' }))).toBe('cracks');
    for (const site of [{ element: ['slab'] }, { element: ['wall'] }] as const) {
      const known: InterviewContext = { site, zone: {} };
      const asked = askedQuestions(known.site, known.zone);
      expect(asked.length).toBeGreaterThan(8);
      for (const [place, question] of asked.entries()) {
        if (place === 0 || question === 'element') continue;
        const back = step(standAt(known, question), { type: 'BACK' });
        expect(placeOf(back), question).toBe(asked[place - 1]);
        expect(back.context).toEqual(known);
      }
    }
  });

  it('goes to any question that is asked, and to no other', () => {
    const known: InterviewContext = { site: {}, zone: { cracks: ['none'] } };
    const state = replay(known);
    for (const question of questionIds) {
      const there = step(state, { type: 'GO_TO', question });
      const asked = whyNotAsked(question, known.site, known.zone) === null;
      expect(placeOf(there), question).toBe(asked ? question : placeOf(state));
      expect(there.context).toEqual(known);
    }
    expect(whyNotAsked('crackLength', known.site, known.zone)).not.toBeNull();
  });

  it('takes no answer to another question, and none at the end', () => {
    const [first] = initialTransition(interview);
    const other = { type: 'ANSWER', question: 'salts', answer: ['none'] } as const;
    expect(step(first, other).context).toEqual(empty);
    expect(placeOf(step(first, other))).toBe('element');
  });

  it('keeps an answer to what is not asked now, and goes on with what is missing', () => {
    const length = { type: 'KEEP', question: 'crackLength', answer: 12 } as const;
    const known: InterviewContext = { site: {}, zone: { cracks: ['none'] } };
    const kept = step(replay(known), length);
    expect(kept.context).toEqual({ site: {}, zone: { cracks: ['none'], crackLength: 12 } });
    expect(placeOf(kept)).toBe('element');
  });

  it('keeps one at the end, too', () => {
    const { answers } = toTheEnd((question) => legal(question)[1]?.answer);
    const known = { ...answers, zone: { ...answers.zone, crackLength: 12 } };
    expect(answers.zone).not.toHaveProperty('crackLength');
    const end = replay(known);
    expect(placeOf(end)).toBe('done');
    expect(end.context).toEqual(known);
  });
});

describe('an answer that is changed', () => {
  it('asks only what became missing when an answer is changed', () => {
    const { answers } = toTheEnd((question) => legal(question)[1]?.answer);
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
});

describe('the zone in an address', () => {
  const job = (...ids: string[]) =>
    ({ job: { zones: ids.map((id) => ({ id })) } }) as unknown as TalkContext;

  it('is named where there are several, and left as it came where there is one or none yet', () => {
    const many = { ...job('A', 'B'), zone: 'B', named: null };
    expect(addressIn(many)).toBe('B');
    const one = { ...job('A'), zone: 'A', named: null };
    expect(addressIn(one)).toBeNull();
    expect(addressIn({ ...one, named: 'A' })).toBe('A');
    expect(addressIn({ ...one, job: null, zone: null, named: 'C' })).toBe('C');
  });
});
