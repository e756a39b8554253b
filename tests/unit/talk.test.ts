import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { questionIds } from '$lib/answers/questions';
import { askedQuestions, whyNotAsked } from '$lib/advice/relevance';
import { previousOf } from '$lib/interview/context';
import { placeOf, replay } from '$lib/interview/replay';
import { refusalOf, standsAt, type TalkPlace } from '$lib/interview/refusal';
import { talk } from '$lib/interview/talk';
import { refusals, type Refusal, type TalkJob } from '$lib/interview/talk-types';
import { ab, after, events, fails, from, goesOn, hears, job, leave } from '../helpers/talk';
import { open, pitted, places, ticks, ways, withTexture, zone } from '../helpers/talk';

/** Why things are refused there. */
const refusedAt = (place: TalkPlace): Refusal[] => {
  const state = after(...ways[place]).state();
  return events.flatMap((event) => refusalOf(state, event) ?? []);
};

describe('the interview as its reader has it', () => {
  it('has a way to every state, and no state but these', () => {
    for (const place of places) expect(after(...ways[place]).at(), place).toBe(place);
    const passing = ['settle', 'adopted'];
    expect([...places, ...passing].sort()).toEqual(Object.keys(talk.states).sort());
    for (const state of Object.values(talk.states)) expect(state.description).toBeTruthy();
  });

  it('takes every event in every state, or refuses it with a reason and stays as it was', () => {
    let [legal, refused] = [0, 0];
    for (const place of places) {
      const before = after(...ways[place]).state();
      for (const event of events) {
        const { actor, state, orders } = from(before);
        const why = refusalOf(before, event);
        actor.send(event);
        if (why === null) legal += 1;
        else {
          refused += 1;
          expect(refusals).toContain(why);
          expect(state().value, `${event.type} at ${place}`).toBe(before.value);
          expect(state().context).toEqual(before.context);
          expect(orders).toEqual([]);
        }
        expect(places).toContain(standsAt(state()));
      }
    }
    console.log(
      `interview: ${places.length} states, ${events.length} forms of ${new Set(events.map(({ type }) => type)).size} events: ${legal} taken, ${refused} refused with a reason`,
    );
  });

  it('has a use for each reason', () => {
    const first = after(hears(ab), open(null, 'element')).state();
    const used = new Set([
      refusalOf(first, { type: 'BACK' }),
      ...places.flatMap((place) => refusedAt(place)),
    ]);
    expect([...refusals].filter((why) => !used.has(why))).toEqual([]);
  });

  it('writes only where the question can be answered', () => {
    const writes = places.filter((place) => {
      const { actor, orders } = after(...ways[place]);
      const before = orders.filter(({ type }) => type === 'write').length;
      actor.send(goesOn);
      return orders.filter(({ type }) => type === 'write').length > before;
    });
    expect(writes).toEqual(['reading', 'drafting']);
  });

  it('writes into the zone that was opened, whatever becomes of the list', () => {
    const moved = job('b', 'a', 'c');
    const { orders, actor } = after(hears(ab), open(null), ticks, hears(moved), goesOn);
    expect(orders.at(-1)).toEqual({ type: 'write', zone: 'a', given: pitted });
    actor.send({ type: 'SAVED' });
    expect(orders.at(-1)).toMatchObject({ type: 'go', zone: 'a' });
  });

  it('writes nothing for a zone that is gone, keeps what was ticked, and takes it when it is back', () => {
    const { actor, orders, at, state } = after(...ways.zoneGone);
    actor.send(goesOn);
    expect(orders.filter(({ type }) => type === 'write')).toEqual([]);
    expect(state().context.draft).toBe('pitted');
    actor.send(hears(ab));
    expect(at()).toBe('drafting');
    actor.send(goesOn);
    expect(orders.at(-1)).toEqual({ type: 'write', zone: 'b', given: pitted });
  });

  it('asks when another zone has come under the same letter', () => {
    const { actor, at, state } = after(...ways.zoneGone);
    actor.send(hears(withTexture('sandy')));
    expect(at()).toBe('changed');
    actor.send({ type: 'KEEP_MINE' });
    expect([at(), state().context.draft]).toEqual(['drafting', 'pitted']);
  });

  it('takes the other tab’s answer when the reader says so, and nothing of it before', () => {
    const { actor, at, state, orders } = after(...ways.changed);
    expect(refusalOf(state(), goesOn)).toBe('choose-first');
    actor.send({ type: 'TAKE_THEIRS' });
    expect([at(), state().context.draft]).toEqual(['reading', null]);
    expect(orders.at(-1)).toEqual({ type: 'keep', question: 'texture', zone: 'b', draft: null });
  });

  it('asks about the place when another tab changed the place, and not for its zones', () => {
    const wallTicked = { type: 'DRAFT', draft: 'wall', holds: true } as const;
    const begun = [hears(ab), open(null, 'element'), wallTicked] as const;
    const moved = { ...ab, site: { element: ['soffit'] as const } };
    expect(after(...begun, hears(moved)).at()).toBe('changed');
    expect(after(...begun, hears(withTexture('sandy'))).at()).toBe('drafting');
  });

  it('takes no other job for the one it is writing to, though that has the same answer', () => {
    expect(after(...ways.waiting, hears(withTexture('pitted', 2))).at()).toBe('otherJob');
  });

  it('forgets what was in the way once all is on the device', () => {
    const { state, actor } = after(fails('quota'));
    expect(state().context.trouble).toBe('quota');
    actor.send({ type: 'SAVED' });
    expect(state().context.trouble).toBeNull();
  });

  it('hears of other zones without a word', () => {
    const other = { ...ab, zones: [zone('a', { texture: ['sandy'] }), zone('b')] };
    expect(after(hears(ab), open(), ticks, hears(other)).at()).toBe('drafting');
  });

  it('goes on when it is saved, when it is told not to be, and when it takes too long; once', () => {
    for (const place of ['saved', 'late', 'notSaved'] as const) {
      const { actor, orders } = after(...ways[place]);
      for (const event of [{ type: 'SAVED' }, fails('quota')] as const) actor.send(event);
      expect(orders.filter(({ type }) => type === 'go')).toHaveLength(1);
    }
    for (const place of ['jobChanged', 'jobGone'] as const) {
      const { actor, orders, at } = after(...ways[place]);
      expect(orders.filter(({ type }) => type === 'go')).toHaveLength(0);
      actor.send({ type: 'SAVED' });
      expect([at(), orders.at(-1)?.type]).toEqual(['saved', 'go']);
    }
  });

  it('keeps an answer given before the job was there for the job that comes', () => {
    const early = after(open(), ticks, goesOn, hears(ab));
    expect(early.at()).toBe('waiting');
    expect(early.orders.at(-1)).toEqual({ type: 'write', zone: 'b', given: pitted });
    const lost = after(open('zz'), ticks, goesOn, hears(ab));
    expect([lost.at(), lost.state().context.draft]).toEqual(['zoneGone', 'pitted']);
    lost.actor.send(hears({ ...ab, zones: [...ab.zones, zone('zz')] }));
    expect(lost.at()).toBe('drafting');
  });

  it('leads to the question whose answer came from elsewhere', () => {
    const { orders } = after(
      hears(ab),
      open(null),
      { type: 'BRING', given: pitted },
      { type: 'SAVED' },
    );
    expect(orders.at(-1)).toMatchObject({ type: 'go', place: 'texture' });
  });

  it('asks before it lets go of what is ticked, and only then', () => {
    expect(after(...ways.leaving).at()).toBe('leaving');
    expect(after(...ways.drafting, leave(true)).at()).toBe('drafting');
    expect(after(...ways.reading, leave(false)).at()).toBe('reading');
    const opened = { type: 'DRAFT', draft: 'several', holds: false } as const;
    expect(after(...ways.reading, opened, leave(false)).at()).toBe('drafting');
    expect(after(...ways.leaving, { type: 'STAY' }).at()).toBe('drafting');
    const gone = after(...ways.leaving, { type: 'GO' });
    expect([gone.at(), gone.orders.at(-1)]).toEqual(['away', { type: 'depart', to: '/job/' }]);
  });

  it('leads back, on and to any question as the questions that count say', () => {
    const depths = [['film'], ['through'], 60] as const;
    const anyJob = fc
      .record({
        depth: fc.option(fc.constantFrom(...depths), { nil: undefined }),
        cracks: fc.option(fc.constantFrom(['none'], ['open']), { nil: undefined }),
        fire: fc.boolean(),
      })
      .map(({ depth, cracks, fire }) => ({
        hand: 1,
        site: fire ? { warnings: { yes: ['fire-or-chemical'], maybe: [] } } : {},
        zones: [zone('a', { ...(depth && { depth }), ...(cracks && { cracks }) } as never)],
      }));
    fc.assert(
      fc.property(anyJob, fc.constantFrom(...questionIds), (any, question) => {
        const heard = any as unknown as TalkJob;
        const answers = { site: heard.site, zone: heard.zones[0]?.answers ?? {} };
        const asked = askedQuestions(answers.site, answers.zone);
        const there = after(hears(heard), open('a', question));
        expect(there.at()).toBe(
          whyNotAsked(question, answers.site, answers.zone) ? 'notAsked' : 'reading',
        );
        if (there.at() === 'notAsked') return;
        const back = previousOf(asked, question);
        there.actor.send({ type: 'BACK' });
        if (back) expect(there.orders.at(-1)).toEqual({ type: 'go', place: back, zone: 'a' });
        else expect(there.orders).toEqual([]);
        const first = asked.find((id) => !(id in answers.site) && !(id in answers.zone));
        expect(placeOf(replay(answers))).toBe(first ?? 'done');
      }),
    );
  });
});
