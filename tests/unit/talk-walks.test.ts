import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { questions } from '$lib/answers/questions';
import { answerOf, type AnswerGiven } from '$lib/interview/context';
import { standsAt, type TalkState } from '$lib/interview/refusal';
import { talk } from '$lib/interview/talk';
import type { TalkEvent, TalkOrder } from '$lib/interview/talk-types';
import { openStore, memoryStore } from '$lib/keep/store';
import { Session } from '$lib/ui/session.svelte';
import { Talker } from '$lib/ui/question/talker';
import { withChange, withoutZone, withZone } from '$lib/ui/job/edits';
import { answersTo, anyStep, asked, type Step } from '../helpers/talk-steps';
import { nightly, rounds } from '../helpers/rounds';

/**
 * Walks of random events through the machine, the job in hand and the real store, while a second
 * tab changes the same job and the device fails. Beside them stands a ledger that knows nothing of
 * the machine: which answer the reader gave to which zone of which job.
 */
const kept = new Map<string, string>();
vi.stubGlobal('localStorage', {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, value: string) => kept.set(key, value),
});
vi.stubGlobal('sessionStorage', { getItem: () => null, setItem: () => undefined });
vi.stubGlobal('navigator', { language: 'en-GB' });

vi.mock('$lib/keep/store', async (original) => {
  const real = await original<typeof import('$lib/keep/store')>();
  return { ...real, openStore: vi.fn(real.openStore) };
});
const real = (await vi.importActual<typeof import('$lib/keep/store')>('$lib/keep/store')).openStore;

const start: Job = {
  name: 'Marrow Quay steps (invented)',
  site: { element: ['slab'] },
  zones: ['a', 'b', 'c'].map((id) => ({ id, name: `Zone ${id}`, answers: {} })),
};
const rest = (ms = 3) => new Promise((resolve) => setTimeout(resolve, ms));
let count = { walks: 0, events: 0, taken: 0, refused: 0, faults: 0, writes: 0 };
const reached = new Set<string>();
let round = 0;

async function walk(kind: 'device' | 'memory', steps: readonly Step[]): Promise<void> {
  const name = `walk-${(round += 1)}`;
  kept.clear();
  const theirs = await real({ name });
  const own = kind === 'device' ? await real({ name }) : memoryStore('refused');
  let slow = false;
  const { put: putting } = own;
  own.put = async (...args) => {
    if (slow) await rest(12);
    const result = await putting(...args);
    if (result.ok) acknowledged.push(args[1]);
    return result;
  };
  /** What the store has said to be written, by either tab. */
  const acknowledged: Job[] = [start];
  const falsely: unknown[] = [];
  /** Saved is said of an answer only when it is written, in its zone. */
  const seen = (state: TalkState) => {
    reached.add(standsAt(state));
    const { given, zone } = state.context;
    if (standsAt(state) !== 'saved' || !given) return;
    const stands = ({ site, zones }: Job) => {
      const answers = zones.find(({ id }) => id === zone)?.answers ?? {};
      const answer = answerOf({ site, zone: answers }, given.question);
      return JSON.stringify(answer) === JSON.stringify(given.answer);
    };
    if (!acknowledged.some(stands)) falsely.push({ given, zone, at: session.job });
  };
  vi.mocked(openStore).mockResolvedValue(own);
  const first = await own.put('job', start, 0);
  if (!first.ok) throw new Error('the walk did not begin');
  kept.set('down-to-sound.preferences', JSON.stringify({ job: 'job' }));
  const session = new Session();
  await session.open();
  const orders: TalkOrder[] = [];
  /** Every answer the machine ordered to be written: the only ones that may turn up. */
  const writes: { hand: number; zone: string; given: AnswerGiven }[] = [];
  const talker: Talker = new Talker(
    session,
    {
      go: (order) => orders.push(order),
      keep: (order) => orders.push(order),
      depart: (order) => orders.push(order),
      seen,
    },
    4,
  );
  talker.send({ type: 'OPEN', question: 'texture', zone: 'b' });
  talker.hear();
  /** What this tab's zones may hold: by hand, what was there, plus what was given here. */
  let put = vi.spyOn(IDBObjectStore.prototype, 'put');
  put.mockRestore();
  const failing = (error: Error) => {
    put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw error;
    });
  };
  let broken = false;
  const send = (event: TalkEvent) => {
    const { context } = talker.state;
    const before = session.job;
    const answered = talker.send(event);
    count.events += 1;
    if (answered) count.refused += 1;
    else count.taken += 1;
    // Only an answer that was taken changes the job, and only in the zone that was opened.
    if (session.job === before) return;
    expect(['CONTINUE', 'BRING', 'STAY', 'KEEP_MINE']).toContain(event.type);
    expect(answered).toBeNull();
    const { zone } = talker.state.context;
    const given = talker.state.context.given ?? (event as { given: AnswerGiven }).given;
    writes.push({ hand: session.hand, zone: zone ?? '', given });
    count.writes += 1;
    expect(context.named === null || zone === context.named).toBe(true);
    expect(session.job.zones.map(({ id }) => id)).toEqual(before.zones.map(({ id }) => id));
    for (const [place, each] of session.job.zones.entries()) {
      const was = before.zones[place]?.answers;
      if (each.id !== zone) expect(each.answers, `zone ${each.id}`).toEqual(was);
    }
    const now = { site: session.job.site, zone: session.zone(zone)?.answers ?? {} };
    expect(answerOf(now, given.question)).toEqual(given.answer);
  };
  const there = async (step: Extract<Step, { do: 'there' }>) => {
    const stored = await theirs.get('job');
    if (!stored) return;
    count.faults += 1;
    if (step.what === 'remove') return void (await theirs.remove('job'));
    const { job } = stored;
    const changed =
      step.what === 'delete'
        ? withoutZone(job, step.zone)?.job
        : step.what === 'add'
          ? job.zones.some(({ id }) => id === step.zone)
            ? undefined
            : withZone(job, { id: step.zone, name: 'new', answers: {} })
          : questions[step.given.question].scope === 'zone'
            ? withChange(job, step.zone, (zone) => ({
                ...zone,
                answers: { ...zone.answers, [step.given.question]: step.given.answer },
              }))
            : undefined;
    if (changed && (await theirs.put('job', changed, stored.revision)).ok)
      acknowledged.push(changed);
  };
  await rest();
  for (const step of steps) {
    if (step.do === 'open') send({ type: 'OPEN', question: step.question, zone: step.zone });
    else if (step.do === 'send') send(step.event);
    else if (step.do === 'answer') {
      // To the question that stands open, as a page would; now and then to another.
      const { question } = talker.state.context;
      const [answer] = question ? answersTo(question).slice(-1) : [];
      const given =
        question && asked.includes(question) && step.given.question !== question
          ? ({ question, answer } as AnswerGiven)
          : step.given;
      send({ type: 'DRAFT', draft: given, holds: true });
      send({ type: 'CONTINUE', given });
    } else if (step.do === 'there' && kind === 'device' && !broken) await there(step);
    else if (step.do === 'device' && (kind === 'device' || step.what === 'slow')) {
      put.mockRestore();
      slow = step.what === 'slow';
      broken = step.what === 'full' || step.what === 'broken';
      if (step.what === 'full') failing(new DOMException('full', 'QuotaExceededError'));
      if (step.what === 'broken') failing(new Error('the disk is gone'));
      count.faults += 1;
    } else if (step.do === 'here') {
      const { trouble, gone } = session;
      if (step.what === 'delete')
        session.update((job) => withoutZone(job, job.zones[0]?.id ?? '')?.job ?? job);
      else if (step.what === 'move')
        session.update((job) => ({ ...job, zones: [...job.zones].reverse() }));
      else if (step.what === 'again' && trouble && trouble !== 'newer') session.again();
      else if (step.what === 'copy' && trouble === 'newer') await session.keepAsCopy();
      else if (step.what === 'theirs' && trouble === 'newer' && !gone) await session.takeTheirs();
      else if (step.what === 'new' && !trouble) await session.startNew();
    } else if (step.do === 'wait') {
      await session.settled();
      await rest();
    }
    talker.hear();
  }
  put.mockRestore();
  await session.settled();
  await rest();
  talker.hear();
  // What the page calls saved is on the device, whatever came before; it hears of it in its time.
  if (kind === 'device')
    await vi.waitFor(async () => {
      const there = (await theirs.get(session.id))?.job;
      if (session.kept) expect(there).toEqual(session.job);
    });
  expect(falsely).toEqual([]);
  // Nothing of the machine is ever kept.
  expect([...kept.keys()].sort()).toEqual(['down-to-sound.preferences']);
  theirs.close();
  own.close();
  count.walks += 1;
}

afterEach(() => vi.restoreAllMocks());
afterAll(() => vi.unstubAllGlobals());

describe('walks through the interview, on the real store', () => {
  for (const kind of ['device', 'memory'] as const)
    it(`end with every answer in its own zone: ${kind}`, async () => {
      count = { walks: 0, events: 0, taken: 0, refused: 0, faults: 0, writes: 0 };
      await fc.assert(
        fc.asyncProperty(fc.array(anyStep, { minLength: 5, maxLength: 60, size: 'max' }), (steps) =>
          walk(kind, steps),
        ),
        { numRuns: kind === 'device' ? rounds(60, 300) : rounds(30, 100), endOnFailure: false },
      );
      console.log(
        `walks (${kind}): ${count.walks}, ${count.events} events, ${count.taken} taken, ${count.refused} refused with a reason, ${count.writes} answers written, ${count.faults} faults and changes by another tab; ${reached.size} states reached`,
      );
      expect(count.writes).toBeGreaterThan(count.walks);
    });

  // So few of a day may miss one; a way to each stands in talk.test.ts.
  it.runIf(nightly)('reach every state, but the one before the device has answered', () => {
    const all = Object.keys(talk.states).filter(
      (state) => !['settle', 'adopted', 'opening'].includes(state),
    );
    expect([...reached].filter((state) => state !== 'opening').sort()).toEqual(all.sort());
  });
});
