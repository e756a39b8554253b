import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openProgressStore, type ProgressStore } from '$lib/keep/practice/progress-store';
import {
  parseProgress,
  progressText,
  readProgressText,
  writeProgress,
} from '$lib/keep/practice/progress-file';
import { authored } from '$lib/practice/authored';
import { ratings } from '$lib/practice/grade';
import {
  latestMoment,
  merged,
  mostResults,
  standingOf,
  type Progress,
  type Result,
} from '$lib/practice/progress';
import { problemSentence } from '$words/keep';
import { spoil } from '../helpers/spoil';
import { onTrial, rounds } from '../helpers/rounds';

const start = Date.UTC(2026, 0, 5, 9);
const result = (id: string, at: number, rating: Result['rating']): Result => ({
  case: id,
  at,
  rating,
});
const ids = authored.map(({ id }) => id);

const anyProgress: fc.Arbitrary<Progress> = fc
  .array(
    fc.record(
      {
        case: fc.constantFrom(...ids, 'g1-5', 'g1-77', 'one-of-tomorrow'),
        at: fc.integer({ min: 0, max: latestMoment }),
        rating: fc.constantFrom(...ratings),
      },
      { noNullPrototype: true },
    ),
    { maxLength: 30 },
  )
  .map((all) => [...all].sort((one, other) => one.at - other.at));

describe('the progress file', () => {
  it('comes back as it was written', async () => {
    await fc.assert(
      fc.asyncProperty(anyProgress, async (progress) => {
        expect(await readProgressText(progressText(progress))).toEqual({
          ok: true,
          value: progress,
        });
      }),
      { numRuns: rounds(25, 100) },
    );
  });

  it.each([
    ['', 'a job file'],
    ['{', 'line 1'],
    ['[]', 'format, version, results'],
    ['{"format":"down-to-sound.job"}', '"down-to-sound.practice"'],
    ['{"format":"down-to-sound.practice","version":2,"results":[]}', 'version: expected a version'],
    ['{"format":"down-to-sound.practice","version":1,"results":[],"name":"x"}', '"name"'],
    [
      '{"format":"down-to-sound.practice","version":1,"results":[{"case":"a b","at":0,"rating":"good"}]}',
      'results[0].case',
    ],
    [
      '{"format":"down-to-sound.practice","version":1,"results":[{"case":"ab","at":1e15,"rating":"good"}]}',
      'before the year 2100',
    ],
    [
      '{"format":"down-to-sound.practice","version":1,"results":[{"case":"ab","at":0.5,"rating":"good"}]}',
      'results[0].at',
    ],
    [
      '{"format":"down-to-sound.practice","version":1,"results":[{"case":"ab","at":0,"rating":"easy"}]}',
      '"again", "hard", "good"',
    ],
  ])('says what is wrong with %s', async (text, said) => {
    const read = await readProgressText(text);
    if (read.ok) throw new Error('taken');
    expect(problemSentence(read.problem)).toContain(said);
  });

  it('refuses a longer list than is kept', () => {
    const results = Array.from({ length: mostResults + 1 }, (_, at) => result('ab', at, 'good'));
    expect(parseProgress(writeProgress(results)).ok).toBe(false);
    expect(parseProgress(writeProgress(results.slice(1))).ok).toBe(true);
  });

  it('takes nothing that is spoilt, or takes it whole', () => {
    let state = 7;
    const dice = (function* () {
      for (;;) yield (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) >>> 8;
    })();
    const samples = fc.sample(anyProgress, { seed: 3, numRuns: 60 });
    for (let turn = 0; turn < onTrial(3000, 100); turn += 1) {
      const whole = structuredClone(writeProgress(samples[turn % 60] ?? []));
      const read = parseProgress(spoil(whole, dice as Iterator<number>));
      if (read.ok) {
        expect(parseProgress(writeProgress(read.value))).toEqual(read);
        standingOf(read.value);
      } else expect(problemSentence(read.problem)).toMatch(/expected .{4,}/);
    }
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  it('is merged without doubles, in order, whichever comes first', () => {
    fc.assert(
      fc.property(anyProgress, anyProgress, (one, other) => {
        const both = merged(one, other);
        expect(merged(both, one)).toEqual(both);
        expect(new Set(both.map((each) => JSON.stringify(each))).size).toBe(both.length);
        expect(new Set(merged(other, one).map((each) => JSON.stringify(each)))).toEqual(
          new Set(both.map((each) => JSON.stringify(each))),
        );
      }),
      { numRuns: rounds(25, 100) },
    );
  });
});

describe('progress on the device', () => {
  const opened: ProgressStore[] = [];
  const open = async (name: string) => {
    const store = await openProgressStore({ name });
    opened.push(store);
    return store;
  };
  afterEach(() => {
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
    for (const store of opened.splice(0)) store.close();
  });
  const one = result('bakery-dust', start, 'again');
  const two = result('larch-row-oil', start + 1, 'good');

  it('keeps results, also from two tabs at once, and forgets them with a way back', async () => {
    const [here, there] = [await open('progress-tabs'), await open('progress-tabs')];
    expect(here.kind).toBe('device');
    expect(await here.read()).toEqual({ ok: true, value: [] });
    await Promise.all([here.add(one), there.add(two)]);
    const both = await here.read();
    expect(both.ok && both.value.map((each) => each.case).sort()).toEqual([
      'bakery-dust',
      'larch-row-oil',
    ]);
    const forgotten = await here.forget();
    expect(await there.read()).toEqual({ ok: true, value: [] });
    expect(await here.merge(forgotten ?? [])).toEqual({ ok: true, progress: [one, two] });
  });

  it('leaves a damaged record alone until it is cleared, and hands it out as it is', async () => {
    const store = await open('progress-damaged');
    const database = await openDB('progress-damaged', 1);
    await database.put('progress', { results: 'soup' }, 'mine');
    database.close();
    expect((await store.read()).ok).toBe(false);
    expect(await store.add(one)).toEqual({ ok: false, why: 'damaged' });
    expect(await store.raw()).toContain('soup');
    expect(await store.forget()).toEqual([]);
    expect(await store.add(one)).toEqual({ ok: true, progress: [one] });
  });

  it('says that a write failed, and why', async () => {
    const store = await open('progress-full');
    const full = new DOMException('full', 'QuotaExceededError');
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw full;
    });
    expect(await store.add(one)).toEqual({ ok: false, why: 'quota' });
    vi.restoreAllMocks();
    expect(await store.add(one)).toEqual({ ok: true, progress: [one] });
    store.close();
    expect(await store.add(two)).toEqual({ ok: false, why: 'unavailable' });
    expect(await store.forget()).toBeNull();
  });

  it('works in this tab only where there is no storage, and says so', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const store = await openProgressStore({ name: 'none' });
    expect([store.kind, store.why]).toEqual(['memory', 'no-storage']);
    expect(await store.add(one)).toEqual({ ok: true, progress: [one] });
    expect(await store.forget()).toEqual([one]);
    expect(await store.read()).toEqual({ ok: true, value: [] });
  });
});
