import { afterEach, describe, expect, it, vi } from 'vitest';
import { watchUpdates } from '$lib/keep/updates';

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
function browser({ controlled }: { controlled: boolean }) {
  const registration = new Registration();
  const container = Object.assign(new EventTarget(), {
    controller: controlled ? new Worker('activated') : null,
    ready: Promise.resolve(registration),
    getRegistration: async () => registration,
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
    const { registration, heard, updates } = browser({ controlled: true });
    await settled();
    await updates.take();
    await updates.look();
    expect(registration.looked).toBe(1);
    updates.stop();
    registration.find().become('installed');
    expect([heard.waits.mock.calls.length, heard.reload.mock.calls.length]).toEqual([0, 0]);
  });

  it('cannot be where the browser has no service workers', async () => {
    vi.stubGlobal('navigator', {});
    const updates = watchUpdates({ waits: vi.fn(), taken: vi.fn() }, vi.fn());
    await Promise.all([updates.take(), updates.look()]);
    updates.stop();
  });
});
