import 'fake-indexeddb/auto';
import { deleteDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openOwn, openPatiently, whyNot } from '$lib/keep/patience';

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
const never = () => new Promise<never>(() => undefined);

describe('opening the browser’s storage', () => {
  it('gives what was opened, and waits for nothing any more', async () => {
    vi.useFakeTimers();
    expect(await openPatiently(async () => 'open', 50)).toBe('open');
    expect(vi.getTimerCount()).toBe(0);
  });

  it('waits so long and no longer', async () => {
    vi.useFakeTimers();
    const heard = vi.fn();
    void openPatiently(never, 50).then(heard);
    await vi.advanceTimersByTimeAsync(49);
    expect(heard).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    expect(heard).toHaveBeenCalledWith('slow');
  });

  it('says when another tab stands in the way', async () => {
    const opening = openPatiently((blocked) => {
      blocked();
      return never();
    }, 1000);
    expect(await opening).toBe('blocked');
  });

  it('says when the browser refuses, at once or later', async () => {
    const refusal = new DOMException('private', 'SecurityError');
    expect(await openPatiently(() => Promise.reject(refusal), 50)).toBe('refused');
    const thrown = () => {
      throw refusal;
    };
    expect(await openPatiently(thrown, 50)).toBe('refused');
  });

  it.each([undefined, null])('says when there is none: %s', async (none) => {
    vi.stubGlobal('indexedDB', none);
    expect(await openPatiently(async () => 'open', 50)).toBe('no-storage');
  });

  it('lets go when everything is deleted from outside', async () => {
    await openOwn('patience', () => undefined, {});
    const blocked = vi.fn();
    await deleteDB('patience', { blocked });
    expect(blocked).not.toHaveBeenCalled();
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain('patience');
  });
});

describe('a write that failed', () => {
  it('means a full device by its name alone, and else that it is out of reach', () => {
    expect(whyNot(new DOMException('full', 'QuotaExceededError'))).toBe('quota');
    expect(whyNot(new DOMException('quota', 'UnknownError'))).toBe('unavailable');
  });
});
