import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { memoryStore } from '$lib/keep/memory-store';
import { memoryProgress } from '$lib/keep/practice/progress-store';

const job = (name: string): Job => ({ name, site: {}, zones: [] });
const revisionOf = (put: { readonly ok: boolean; readonly revision?: number }) => {
  if (!put.ok || put.revision === undefined) throw new Error('not saved');
  return put.revision;
};
afterEach(() => void vi.useRealTimers());

describe('jobs held in the tab alone', () => {
  it('are listed with the last changed first', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    const store = memoryStore('refused');
    const changed: [string, number][] = [
      ['a', 20],
      ['b', 30],
      ['c', 10],
    ];
    for (const [id, at] of changed) {
      vi.setSystemTime(at);
      await store.put(id, job(id), 0);
    }
    expect((await store.list()).map(({ id }) => id)).toEqual(['b', 'a', 'c']);
  });

  it('are had back one by one, and none where there is none', async () => {
    const store = memoryStore('slow');
    const revision = revisionOf(await store.put('a', job('Ramp'), 0));
    expect(await store.get('a')).toMatchObject({ id: 'a', job: job('Ramp'), revision });
    expect(await store.get('b')).toBeUndefined();
    expect(await store.remove('b')).toBeUndefined();
  });

  it('take no write over what is newer, and say what that is where there is some', async () => {
    const store = memoryStore('slow');
    const first = revisionOf(await store.put('a', job('first'), 0));
    const second = revisionOf(await store.put('a', job('second'), first));
    expect(await store.put('a', job('late'), first)).toMatchObject({
      ok: false,
      why: 'newer',
      stored: { revision: second, job: { name: 'second' } },
    });
    expect(await store.put('b', job('gone'), 7)).toEqual({ ok: false, why: 'newer' });
  });

  it('take nothing that could not be read back', async () => {
    const store = memoryStore('slow');
    expect(await store.put('a', job('turned \u202e round'), 0)).toMatchObject({
      ok: false,
      why: 'invalid',
      problem: { path: 'site.name' },
    });
    expect(await store.list()).toEqual([]);
  });

  it('come back when deleting is undone, but not over a job that is there again', async () => {
    const store = memoryStore('slow');
    const revision = revisionOf(await store.put('a', job('before'), 0));
    const removed = await store.remove('a');
    if (!removed) throw new Error('nothing was removed');
    expect(await store.list()).toEqual([]);
    expect(await store.restore(removed)).toEqual({ ok: true, revision });
    expect(await store.get('a')).toEqual(removed);
    expect(await store.restore({ ...removed, job: job('other') })).toEqual({
      ok: false,
      why: 'newer',
      stored: removed,
    });
    expect((await store.get('a'))?.job.name).toBe('before');
  });

  it('are taken away as text, and are all deleted at once', async () => {
    const store = memoryStore('blocked');
    await store.put('a', job('Ramp'), 0);
    await store.put('b', job('Kerb'), 0);
    expect(JSON.parse((await store.raw('a')) ?? '')).toMatchObject({ site: { name: 'Ramp' } });
    expect(await store.raw('a')).toContain('\n  "site"');
    expect(await store.raw('c')).toBeUndefined();
    expect(await store.clear()).toBe(2);
    expect([await store.list(), await store.clear()]).toEqual([[], 0]);
  });

  it('say that they are and why, and hear of no other tab', () => {
    const store = memoryStore('blocked');
    expect([store.kind, store.why]).toEqual(['memory', 'blocked']);
    store.onChange(() => undefined)();
    store.close();
  });
});

describe('what was practised, held in the tab alone', () => {
  const one = { case: 'bakery-dust', at: 5, rating: 'good' } as const;
  const two = { case: 'larch-row-oil', at: 6, rating: 'again' } as const;

  it('comes together with what is brought, is taken away as text, and is forgotten', async () => {
    const store = memoryProgress('refused');
    expect([store.kind, store.why]).toEqual(['memory', 'refused']);
    expect(await store.add(two)).toEqual({ ok: true, progress: [two] });
    expect(await store.merge([one, two])).toEqual({ ok: true, progress: [one, two] });
    expect(JSON.parse((await store.raw()) ?? '')).toMatchObject({
      format: 'down-to-sound.practice',
      results: [one, two],
    });
    expect(await store.forget()).toEqual([one, two]);
    expect([await store.read(), await store.forget()]).toEqual([{ ok: true, value: [] }, []]);
    store.close();
  });
});
