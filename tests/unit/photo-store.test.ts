import 'fake-indexeddb/auto';
import { IDBObjectStore } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { inPairs, type Photo, type WholePhoto } from '$lib/answers/photo';
import { openPhotoStore, type PhotoStore } from '$lib/keep/photos/photo-store';
import { tinyJpeg } from '../helpers/jpeg';

let store: PhotoStore;
let name = '';
let round = 0;
const opened = async () => {
  const open = await openPhotoStore({ name });
  if (typeof open === 'string') throw new Error(open);
  return open;
};
beforeEach(async () => {
  name = `photos-${(round += 1)}`;
  store = await opened();
});
afterEach(() => {
  vi.restoreAllMocks();
  store.close();
});

const whole = (id: string, more: Partial<Photo> = {}): WholePhoto => ({
  photo: {
    id,
    job: 'j',
    zone: 'a',
    place: 0,
    stage: 'before',
    caption: '',
    marks: [],
    sheet: false,
    owner: false,
    width: 16,
    height: 8,
    addedAt: 5,
    ...more,
  },
  picture: new Blob([tinyJpeg() as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' }),
});
const ids = async (job: string, zone?: string) => (await store.of(job, zone)).map(({ id }) => id);

describe('photos on the device', () => {
  it('come back with their picture, by job and zone, in their order', async () => {
    await store.add([
      whole('1', { place: 2 }),
      whole('2', { place: 1 }),
      whole('3', { zone: 'b' }),
    ]);
    await store.add([whole('4', { job: 'k' })]);
    expect(await ids('j', 'a')).toEqual(['2', '1']);
    expect((await ids('j')).length).toBe(3);
    expect(await store.jobs()).toEqual(['j', 'k']);
    const picture = await store.picture('1');
    expect(new Uint8Array(await (picture as Blob).arrayBuffer())).toEqual(tinyJpeg());
  });

  it('are six a zone, whoever adds them; one too many adds none', async () => {
    for (const id of ['1', '2', '3', '4', '5']) await store.add([whole(id)]);
    expect(await store.add([whole('6'), whole('7')])).toEqual({ ok: false, why: 'full' });
    expect(await store.count()).toBe(5);
    expect(await store.add([whole('6')])).toEqual({ ok: true });
    expect(await store.add([whole('7')])).toEqual({ ok: false, why: 'full' });
    expect(await store.add([whole('7', { zone: 'b' })])).toEqual({ ok: true });
  });

  it('are put over themselves also where a zone is full', async () => {
    const all = ['1', '2', '3', '4', '5', '6'].map((id) => whole(id));
    expect(await store.add(all)).toEqual({ ok: true });
    expect(await store.add([whole('3', { caption: 'By the gate' })])).toEqual({ ok: true });
    expect(await store.count()).toBe(6);
  });

  it('of which the picture is lost go, and do not come back as half a photo', async () => {
    await store.add([whole('1'), whole('2')]);
    const database = await openDB(name, 1);
    await database.delete('pictures', '1');
    await database.delete('photos', '2');
    database.close();
    expect(await store.remove(['1', '2'])).toEqual([]);
    expect([await store.count(), await store.picture('2')]).toEqual([0, undefined]);
  });

  it('deleted are gone from the device, picture and all, and can be put back from the tab', async () => {
    await store.add([whole('1'), whole('2')]);
    const removed = await store.remove(['1', 'nothing']);
    expect(removed.map(({ photo }) => photo.id)).toEqual(['1']);
    store.close();
    store = await opened();
    expect(await ids('j')).toEqual(['2']);
    expect(await store.picture('1')).toBeUndefined();
    await store.add(removed);
    expect(await ids('j')).toEqual(['1', '2']);
    await store.clear();
    expect([await store.count(), await store.picture('2')]).toEqual([0, undefined]);
  });

  it('change without their picture, and not when they are gone', async () => {
    const { photo } = whole('1');
    await store.add([whole('1')]);
    expect(await store.change([{ ...photo, caption: 'By the gate' }])).toEqual({ ok: true });
    expect((await store.of('j'))[0]?.caption).toBe('By the gate');
    await store.remove(['1']);
    expect(await store.change([photo])).toEqual({ ok: false, why: 'gone' });
    expect(await store.count()).toBe(0);
  });

  it('say when the device is full, and nothing is half there', async () => {
    await store.add([whole('1')]);
    const real = IDBObjectStore.prototype.put;
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...given
    ) {
      if (this.name === 'pictures' && given[1] === '3')
        throw new DOMException('full', 'QuotaExceededError');
      return real.apply(this, given);
    });
    expect(await store.add([whole('2'), whole('3')])).toEqual({ ok: false, why: 'quota' });
    put.mockRestore();
    expect(await ids('j')).toEqual(['1']);
    expect(await store.add([whole('2')])).toEqual({ ok: true });
  });

  it('are told of to another tab', async () => {
    const other = await opened();
    const heard = vi.fn();
    const stop = other.onChange(heard);
    await store.add([whole('1')]);
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(1));
    await store.remove(['1']);
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(2));
    await store.clear();
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(3));
    stop();
    await store.add([whole('2')]);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(heard).toHaveBeenCalledTimes(3);
    other.close();
  });

  it('are not told of to another site on the same host, nor of what was not written', async () => {
    const elsewhere = (await openPhotoStore({ name: `${name}/below` })) as PhotoStore;
    const [far, near] = [vi.fn(), vi.fn()];
    const other = await opened();
    elsewhere.onChange(far);
    other.onChange(near);
    expect(await store.change([whole('9').photo])).toEqual({ ok: false, why: 'gone' });
    await store.add([whole('1')]);
    await vi.waitFor(() => expect(near).toHaveBeenCalled());
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect([far.mock.calls.length, near.mock.calls.length]).toEqual([0, 1]);
    elsewhere.close();
    other.close();
  });

  it('cannot be had where the browser keeps nothing, which says so', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await openPhotoStore()).toBe('no-storage');
    vi.unstubAllGlobals();
  });

  it('that cannot be written for another reason are told as out of reach', async () => {
    store.close();
    expect(await store.add([whole('1')])).toEqual({ ok: false, why: 'unavailable' });
    store = await opened();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('broken', 'DataError');
    });
    expect(await store.add([whole('1')])).toEqual({ ok: false, why: 'unavailable' });
  });
});

describe('before and after', () => {
  it('stand side by side in their order; what has no other stands alone', () => {
    const photos = [
      whole('b1').photo,
      whole('a1', { stage: 'after' }).photo,
      whole('x', { stage: 'other' }).photo,
      whole('b2').photo,
    ];
    expect(inPairs(photos).map((row) => row.map(({ id }) => id))).toEqual([
      ['b1', 'a1'],
      ['b2'],
      ['x'],
    ]);
    expect(inPairs([])).toEqual([]);
  });
});
