import { createActor } from 'xstate';
import type { QuestionId } from '$lib/answers/questions';
import type { AnswerGiven } from '$lib/interview/context';
import { standsAt, type TalkPlace, type TalkState } from '$lib/interview/refusal';
import { talk } from '$lib/interview/talk';
import type { TalkEvent, TalkJob, TalkOrder } from '$lib/interview/talk-types';

export const zone = (id: string, answers: TalkJob['zones'][number]['answers'] = {}) => ({
  id,
  name: '',
  answers,
});
export const job = (...ids: string[]): TalkJob => ({
  hand: 1,
  site: { element: ['slab'] },
  zones: ids.map((id) => zone(id)),
});
export const pitted: AnswerGiven = { question: 'texture', answer: ['pitted'] };
export const wall: AnswerGiven = { question: 'element', answer: ['wall'] };
export const ab = job('a', 'b');
export const withTexture = (texture: 'sandy' | 'pitted', hand = 1): TalkJob => ({
  ...ab,
  hand,
  zones: [zone('a'), zone('b', { texture: [texture] })],
});
export const through: TalkJob = { ...ab, zones: [zone('a'), zone('b', { depth: ['through'] })] };

export const open = (id: string | null = 'b', question: QuestionId = 'texture'): TalkEvent => ({
  type: 'OPEN',
  question,
  zone: id,
});
export const hears = (heard: TalkJob): TalkEvent => ({ type: 'JOB', job: heard });
export const ticks: TalkEvent = { type: 'DRAFT', draft: 'pitted', holds: true };
export const goesOn: TalkEvent = { type: 'CONTINUE', given: pitted };
export const fails = (why: string): TalkEvent => ({ type: 'NOT_SAVED', why });
export const leave = (kept: boolean): TalkEvent => ({ type: 'LEAVE', to: '/job/', kept });

/** A machine that has heard some events, and the orders it gave. */
export const after = (...events: readonly TalkEvent[]) => heard(createActor(talk), events);

/** A machine as it stands in a state, and the orders it gives from there on. */
export const from = (state: TalkState) => heard(createActor(talk, { snapshot: state }), []);

function heard(actor: ReturnType<typeof createActor<typeof talk>>, events: readonly TalkEvent[]) {
  const orders: TalkOrder[] = [];
  actor.on('*', (order) => orders.push(order as TalkOrder));
  actor.start();
  for (const event of events) actor.send(event);
  const state = (): TalkState => actor.getSnapshot();
  return { actor, orders, state, at: () => standsAt(state()) };
}

/** Every state, and a way there. */
export const written = withTexture('pitted');
export const ways: Readonly<Record<TalkPlace, readonly TalkEvent[]>> = {
  away: [],
  opening: [open()],
  reading: [hears(ab), open()],
  drafting: [hears(ab), open(), ticks],
  changed: [hears(ab), open(), ticks, hears(withTexture('sandy'))],
  waiting: [hears(ab), open(), ticks, goesOn],
  saved: [hears(ab), open(), ticks, goesOn, hears(written), { type: 'SAVED' }],
  late: [hears(ab), open(), ticks, goesOn, hears(written), { type: 'LATE' }],
  notSaved: [hears(ab), open(), ticks, goesOn, hears(written), fails('quota')],
  jobChanged: [hears(ab), open(), ticks, goesOn, hears(written), fails('newer')],
  jobGone: [hears(ab), open(), ticks, goesOn, hears(written), fails('gone')],
  zoneGone: [hears(ab), open(), ticks, hears(job('a'))],
  notAsked: [hears(ab), open(), ticks, hears(through)],
  otherJob: [hears(ab), open(), ticks, hears({ ...ab, hand: 2 })],
  leaving: [hears(ab), open(), ticks, leave(false)],
};

/** Every event, in the forms that the machine tells apart. */
export const events: readonly TalkEvent[] = [
  open(),
  open('zz'),
  open(null, 'element'),
  { type: 'CLOSE' },
  hears(ab),
  hears(job('a')),
  hears(through),
  hears(written),
  hears(withTexture('sandy')),
  hears({ ...ab, hand: 2 }),
  ticks,
  { type: 'DRAFT', draft: null, holds: false },
  { type: 'DROP' },
  goesOn,
  { type: 'CONTINUE', given: null },
  { type: 'CONTINUE', given: wall },
  { type: 'BRING', given: pitted },
  { type: 'BACK' },
  { type: 'GO_TO', question: 'element' },
  { type: 'GO_TO', question: 'barLoss' },
  { type: 'SAVED' },
  fails('quota'),
  fails('newer'),
  fails('gone'),
  { type: 'LATE' },
  { type: 'KEEP_MINE' },
  { type: 'TAKE_THEIRS' },
  leave(true),
  leave(false),
  { type: 'STAY' },
  { type: 'GO' },
];
export const places = Object.keys(ways) as TalkPlace[];
