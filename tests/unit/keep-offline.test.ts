import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepOffline } from '$lib/keep/offline-copy';

const address = 'https://host.test/service-worker.js';

/** Stands in for the browser's side: a worker that hears orders, its registration, the container. */
class Worker {
  heard: unknown[] = [];
  constructor(readonly scriptURL = address) {}
  postMessage(order: unknown) {
    this.heard.push(order);
  }
}
class Registration extends EventTarget {
  installing: Worker | null = null;
  waiting: Worker | null = null;
  active: Worker | null = null;
}
interface Device {
  /** What is registered before the page asks. */
  readonly there?: Registration;
  readonly saveData?: boolean;
  readonly register?: () => Promise<Registration>;
  readonly getRegistration?: () => Promise<Registration | undefined>;
}
function device({ there, saveData, register, getRegistration }: Device = {}) {
  const fresh = new Registration();
  fresh.installing = new Worker();
  const container = Object.assign(new EventTarget(), {
    getRegistration: getRegistration ?? (async () => there),
    register: vi.fn(register ?? (async () => fresh)),
  });
  vi.stubGlobal('navigator', {
    serviceWorker: container,
    ...(saveData !== undefined && { connection: { saveData } }),
  });
  let stands = () => {};
  const live = new Promise<void>((resolve) => (stands = resolve));
  const told = vi.fn();
  const copy = keepOffline(address, live, told);
  const news = (data: unknown) =>
    container.dispatchEvent(Object.assign(new Event('message'), { data }));
  return { copy, container, fresh, told, news, stands: () => (stands(), settled()) };
}
const running = (scriptURL?: string) => {
  const there = new Registration();
  there.active = new Worker(scriptURL);
  return there;
};
const settled = () => new Promise((resolve) => setTimeout(resolve));
afterEach(() => void vi.unstubAllGlobals());

describe('the copy of the site on the device', () => {
  it('is begun when the page stands, not before, and that is told', async () => {
    const { container, fresh, told, stands } = device();
    await settled();
    expect(container.register).not.toHaveBeenCalled();
    await stands();
    expect(container.register).toHaveBeenCalledExactlyOnceWith(address);
    expect(told.mock.calls).toEqual([['filling']]);
    expect(fresh.installing?.heard).toEqual(['FILL']);
  });

  it('that is there is made up by every worker of it, without a word of filling', async () => {
    const there = running();
    there.installing = new Worker();
    there.waiting = new Worker();
    const { container, told, stands } = device({ there });
    await stands();
    expect(container.register).not.toHaveBeenCalled();
    expect([there.installing, there.waiting, there.active].map((one) => one?.heard)).toEqual([
      ['FILL'],
      ['FILL'],
      ['FILL'],
    ]);
    expect(told).not.toHaveBeenCalled();
  });

  it('is also begun where another site on the host has a worker, which is left alone', async () => {
    const there = running('https://host.test/other/worker.js');
    const { container, fresh, stands } = device({ there });
    await stands();
    expect(container.register).toHaveBeenCalledOnce();
    expect([fresh.installing?.heard, there.active?.heard]).toEqual([['FILL'], []]);
  });

  it('is begun anew where its first worker has not come so far as to run', async () => {
    const there = new Registration();
    there.installing = new Worker();
    const { container, stands } = device({ there });
    await stands();
    expect(container.register).toHaveBeenCalledOnce();
  });

  it('is asked for also of a version that comes while the page is open', async () => {
    const there = running();
    const { stands } = device({ there });
    await stands();
    there.installing = new Worker();
    there.dispatchEvent(new Event('updatefound'));
    expect(there.installing.heard).toEqual(['FILL']);
  });

  it('tells how much of it is there, and passes over what else a worker says', () => {
    const { told, news } = device();
    for (const data of [{ offline: 'partly' }, { offline: 'whole' }, null, {}, 'hello']) news(data);
    expect(told.mock.calls).toEqual([['partly'], ['whole']]);
  });

  it('is not made on a device that saves data, until the reader asks for it', async () => {
    const { copy, container, fresh, told, stands } = device({ saveData: true });
    await stands();
    expect(told.mock.calls).toEqual([['spared']]);
    expect(container.register).not.toHaveBeenCalled();
    copy.keepAnyway();
    await settled();
    expect(container.register).toHaveBeenCalledOnce();
    expect(fresh.installing?.heard).toEqual(['FILL']);
  });

  it('that is there already is only told of on a device that saves data', async () => {
    const there = running();
    const { copy, told, stands } = device({ there, saveData: true });
    await stands();
    expect(there.active?.heard).toEqual(['TELL']);
    expect(told).not.toHaveBeenCalled();
    copy.keepAnyway();
    await settled();
    expect(there.active?.heard).toEqual(['TELL', 'FILL']);
  });

  it('is made where the device says that it saves none', async () => {
    const { container, stands } = device({ saveData: false });
    await stands();
    expect(container.register).toHaveBeenCalledOnce();
  });

  it('is let be after stop', async () => {
    const there = running();
    const { copy, told, news, stands } = device({ there });
    await stands();
    copy.stop();
    there.installing = new Worker();
    there.dispatchEvent(new Event('updatefound'));
    news({ offline: 'whole' });
    expect([there.installing.heard, told.mock.calls]).toEqual([[], []]);
  });

  it('is not asked for when the page was left before it stood', async () => {
    const there = running();
    const { copy, stands } = device({ there });
    copy.stop();
    await stands();
    expect(there.active?.heard).toEqual([]);
  });

  it('is done without where storage is forbidden or the network gone', async () => {
    const gone = async () => {
      throw new Error('not now');
    };
    const { told, container, stands } = device({ register: gone, getRegistration: gone });
    await stands();
    expect(container.register).toHaveBeenCalledOnce();
    expect(told).not.toHaveBeenCalled();
  });

  it.each([
    ['has no workers', {}],
    ['is none', undefined],
  ])('is done without where the browser %s', async (_what, navigator) => {
    vi.stubGlobal('navigator', navigator);
    const told = vi.fn();
    const copy = keepOffline(address, Promise.resolve(), told);
    await settled();
    copy.keepAnyway();
    copy.stop();
    await settled();
    expect(told).not.toHaveBeenCalled();
  });
});
