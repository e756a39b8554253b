import { afterEach, describe, expect, it, vi } from 'vitest';
import { tellCleared, watchCleared, watchUpdates } from '$lib/keep/updates';

/** Stands in for the browser's side: a worker with its state, a registration, a container. */
class Worker extends EventTarget {
  posted: unknown[] = [];
  constructor(public state: string) {
    super();
  }
  become(state: string) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
  postMessage(message: unknown) {
    this.posted.push(message);
  }
}
class Registration extends EventTarget {
  waiting: Worker | null = null;
  installing: Worker | null = null;
  looked = 0;
  update = async () => {
    this.looked += 1;
    throw new Error('offline');
  };
  find() {
    this.installing = new Worker('installing');
    this.dispatchEvent(new Event('updatefound'));
    return this.installing;
  }
}
function browser({ controlled, nowhere }: { controlled: boolean; nowhere?: boolean }) {
  const registration = new Registration();
  const container = Object.assign(new EventTarget(), {
    controller: controlled ? new Worker('activated') : null,
    ready: Promise.resolve(registration),
    getRegistration: async () => (nowhere ? undefined : registration),
  });
  vi.stubGlobal('navigator', { serviceWorker: container });
  const heard = { waits: vi.fn(), taken: vi.fn(), reload: vi.fn() };
  const updates = watchUpdates(heard, heard.reload);
  return { registration, container, heard, updates };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));
afterEach(() => void vi.unstubAllGlobals());

describe('a new version of the site', () => {
  it('is told when it waits, and started only when it is taken', async () => {
    const { registration, container, heard, updates } = browser({ controlled: true });
    await settled();
    const worker = registration.find();
    expect(heard.waits).not.toHaveBeenCalled();
    registration.waiting = worker;
    worker.become('installed');
    expect(heard.waits).toHaveBeenCalledOnce();
    expect(worker.posted).toEqual([]);
    await updates.take();
    expect(worker.posted).toEqual(['SKIP_WAITING']);
    expect(heard.reload).not.toHaveBeenCalled();
    container.dispatchEvent(new Event('controllerchange'));
    expect([heard.reload.mock.calls.length, heard.taken.mock.calls.length]).toEqual([1, 0]);
  });

  it('that waited already when the page opened is told', async () => {
    const { registration, container, heard } = browser({ controlled: true });
    registration.waiting = new Worker('installed');
    await settled();
    expect(heard.waits).toHaveBeenCalledOnce();
    container.dispatchEvent(new Event('controllerchange'));
    expect([heard.reload.mock.calls.length, heard.taken.mock.calls.length]).toEqual([0, 1]);
  });

  it('that was taken loads the page anew', async () => {
    const { registration, container } = browser({ controlled: true });
    const reload = vi.fn();
    vi.stubGlobal('location', { reload });
    const updates = watchUpdates({ waits: vi.fn(), taken: vi.fn() });
    registration.waiting = new Worker('installed');
    await updates.take();
    container.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledOnce();
  });

  it('is not what the very first visit brings', async () => {
    const { registration, container, heard } = browser({ controlled: false });
    await settled();
    registration.find().become('installed');
    container.dispatchEvent(new Event('controllerchange'));
    expect([heard.waits, heard.taken, heard.reload].map(({ mock }) => mock.calls.length)).toEqual([
      0, 0, 0,
    ]);
    container.dispatchEvent(new Event('controllerchange'));
    expect(heard.taken).toHaveBeenCalledOnce();
  });

  it('is not listened for any more after stop, nor taken when none waits', async () => {
    const { registration, container, heard, updates } = browser({ controlled: true });
    await settled();
    await updates.take();
    await updates.look();
    expect(registration.looked).toBe(1);
    const found = registration.find();
    updates.stop();
    found.become('installed');
    registration.find().become('installed');
    container.dispatchEvent(new Event('controllerchange'));
    expect([heard.waits, heard.taken, heard.reload].map(({ mock }) => mock.calls.length)).toEqual([
      0, 0, 0,
    ]);
  });

  it('is told once it is on the device, not on the way there', async () => {
    const { registration, heard } = browser({ controlled: true });
    await settled();
    const worker = registration.find();
    worker.become('installing');
    expect(heard.waits).not.toHaveBeenCalled();
    worker.become('installed');
    worker.become('activating');
    expect(heard.waits).toHaveBeenCalledOnce();
  });

  it('that was on its way when the page opened is told when it waits', async () => {
    const { registration, heard } = browser({ controlled: true });
    registration.installing = new Worker('installing');
    await settled();
    registration.installing.become('installed');
    expect(heard.waits).toHaveBeenCalledOnce();
  });

  it('is not what waits where no page runs by a worker yet', async () => {
    const { registration, heard } = browser({ controlled: false });
    registration.waiting = new Worker('installed');
    await settled();
    expect(heard.waits).not.toHaveBeenCalled();
  });

  it('is not looked at by a page that was left before the worker was ready', async () => {
    const { registration, container, heard, updates } = browser({ controlled: true });
    registration.waiting = new Worker('installed');
    updates.stop();
    await settled();
    container.dispatchEvent(new Event('controllerchange'));
    expect([heard.waits, heard.taken].map(({ mock }) => mock.calls.length)).toEqual([0, 0]);
  });

  it('of which nothing is known any more is neither taken nor looked for', async () => {
    const { registration, heard, updates } = browser({ controlled: true, nowhere: true });
    registration.waiting = new Worker('installed');
    await updates.take();
    await updates.look();
    expect([registration.waiting.posted, registration.looked]).toEqual([[], 0]);
    expect(heard.reload).not.toHaveBeenCalled();
  });

  it.each([
    ['has no service workers', {}],
    ['is none', undefined],
  ])('cannot be where the browser %s', async (_what, navigator) => {
    vi.stubGlobal('navigator', navigator);
    const updates = watchUpdates({ waits: vi.fn(), taken: vi.fn() }, vi.fn());
    await Promise.all([updates.take(), updates.look()]);
    updates.stop();
  });
});

describe('that everything was deleted', () => {
  it('is told to the other tabs of this site, and to no other site', async () => {
    const [here, elsewhere, left] = [vi.fn(), vi.fn(), vi.fn()];
    const stops = [watchCleared('site', here), watchCleared('site/below', elsewhere)];
    watchCleared('site', left)();
    tellCleared('site');
    await vi.waitFor(() => expect(here).toHaveBeenCalledOnce());
    expect([elsewhere.mock.calls.length, left.mock.calls.length]).toEqual([0, 0]);
    for (const stop of stops) stop();
  });

  it('leaves no channel open in the tab that tells it', () => {
    const close = vi.spyOn(BroadcastChannel.prototype, 'close');
    tellCleared('site');
    expect(close).toHaveBeenCalledOnce();
    close.mockRestore();
  });

  it('cannot be told where tabs do not hear each other, and that is no fault', () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const stop = watchCleared('site', vi.fn());
    tellCleared('site');
    stop();
  });
});
