import { SvelteMap } from 'svelte/reactivity';
import type { Photo, PhotoMark, WholePhoto } from '$lib/answers/photo';
import { bounds } from '$lib/keep/bounds';
import type { Unavailable } from '$lib/keep/job-store';
import type { PhotoPut, PhotoStore } from '$lib/keep/photos/photo-store';
import { session } from '$lib/ui/session.svelte';
import { photoWords as words } from '$words/photos';
import { askToKeep, whetherKept, type Kept } from './persist';
import { remake } from './remake';
import { shelf, sweep } from './shelf';

interface Said {
  readonly bad: boolean;
  readonly text: string;
}
interface Undo {
  readonly done: string;
  readonly undo: (store: PhotoStore) => Promise<PhotoPut>;
}

/** What can be done with the photos of one zone. Each step is kept at once and can be undone; none throws. */
export class PhotosState {
  photos = $state.raw<readonly Photo[]>([]);
  said = $state.raw<readonly Said[]>([]);
  busy = $state(false);
  ready = $state(false);
  closed = $state<Unavailable>();
  kept = $state<Kept>();
  /** Steps that can be taken back, last first: until the page is left. */
  undos = $state.raw<readonly Undo[]>([]);
  /** Addresses of the pictures, while the page stands. */
  readonly addresses = new SvelteMap<string, string>();
  #store: PhotoStore | undefined;
  #stop = () => {};
  readonly #zone: string;

  constructor(zone: string) {
    this.#zone = zone;
  }

  async open(): Promise<void> {
    const store = await shelf();
    if (typeof store === 'string') {
      this.closed = store;
    } else {
      this.#store = store;
      await sweep(store).catch(() => undefined);
      this.#stop = store.onChange(() => void this.#refresh());
      await this.#refresh();
      if (this.photos.length) this.kept = await whetherKept();
    }
    this.ready = true;
  }
  close(): void {
    this.#stop();
    for (const address of this.addresses.values()) URL.revokeObjectURL(address);
    this.addresses.clear();
  }

  get room(): number {
    return bounds.photosInZone - this.photos.length;
  }
  say(text: string, bad = false): void {
    this.said = [...this.said, { text, bad }];
  }
  hush(): void {
    this.said = [];
  }

  async #refresh(): Promise<void> {
    const store = this.#store;
    if (!store) return;
    try {
      const photos = await store.of(session.id, this.#zone);
      for (const { id } of photos) {
        if (this.addresses.has(id)) continue;
        const picture = await store.picture(id);
        if (picture) this.addresses.set(id, URL.createObjectURL(picture));
      }
      this.photos = photos;
    } catch {
      this.say(words.changeRefused.unavailable, true);
    }
  }

  /** Takes in pictures one after the other: two large ones at once are too much for a small phone. */
  async add(files: readonly File[]): Promise<void> {
    const store = this.#store;
    if (!store || this.busy) return;
    this.hush();
    this.busy = true;
    let added = 0;
    // A job that was only begun is kept first, or its photos would belong to none.
    session.update((job) => job);
    await session.settled();
    if (!session.kept) this.say(words.unsaved, true);
    else
      for (const file of files) {
        const why = await this.#addOne(store, file);
        if (why) this.say(words.refused(file.name, why), true);
        else added += 1;
      }
    await this.#refresh();
    this.busy = false;
    if (added) {
      this.say(words.added(added));
      this.kept = await askToKeep();
    }
  }
  async #addOne(store: PhotoStore, file: File) {
    const made = await remake(file);
    if (!made.ok) return made.why;
    const { width, height, picture } = made;
    const last = (await store.of(session.id, this.#zone).catch(() => [])).at(-1);
    const photo: Photo = {
      id: crypto.randomUUID(),
      job: session.id,
      zone: this.#zone,
      place: (last?.place ?? -1) + 1,
      stage: 'before',
      caption: '',
      marks: [],
      sheet: false,
      owner: false,
      width,
      height,
      addedAt: Date.now(),
    };
    const put = await store.add([{ photo, picture }]);
    if (put.ok) return null;
    return put.why === 'gone' ? 'unavailable' : put.why;
  }

  /** Writes photos over those that are there; what they were can be put back. */
  async #write(photos: readonly Photo[], done: string): Promise<void> {
    const store = this.#store;
    if (!store) return;
    this.hush();
    const ids = photos.map(({ id }) => id);
    const before = this.photos.filter(({ id }) => ids.includes(id));
    const put = await store.change(photos);
    if (put.ok) this.undos = [{ done, undo: (now) => now.change(before) }, ...this.undos];
    else this.say(words.changeRefused[put.why], true);
    await this.#refresh();
  }
  change(
    photo: Photo,
    change: Partial<Pick<Photo, 'stage' | 'caption' | 'sheet' | 'owner'>>,
  ): Promise<void> {
    const [what] = Object.keys(change) as (keyof typeof change)[];
    return this.#write([{ ...photo, ...change }], what ? words.changed[what] : '');
  }
  mark(photo: Photo, marks: readonly PhotoMark[]): Promise<void> {
    return this.#write([{ ...photo, marks }], words.changed.marks);
  }
  /** Moves a photo by one place; where two had the same place, all get one of their own. */
  move(photo: Photo, by: 1 | -1): Promise<void> {
    const at = this.photos.findIndex(({ id }) => id === photo.id);
    const order = [...this.photos];
    const [moved] = order.splice(at, 1);
    if (!moved) return Promise.resolve();
    order.splice(at + by, 0, moved);
    return this.#write(
      order.map((each, place) => ({ ...each, place })),
      words.changed.place,
    );
  }
  /** Deletes a photo from the device at once; this tab holds it for the undo alone. */
  async remove(photo: Photo): Promise<void> {
    const store = this.#store;
    if (!store) return;
    this.hush();
    const place = this.photos.indexOf(photo) + 1;
    try {
      const removed: readonly WholePhoto[] = await store.remove([photo.id]);
      const address = this.addresses.get(photo.id);
      if (address) URL.revokeObjectURL(address);
      this.addresses.delete(photo.id);
      this.undos = [{ done: words.deleted(place), undo: (now) => now.add(removed) }, ...this.undos];
    } catch {
      this.say(words.changeRefused.unavailable, true);
    }
    await this.#refresh();
  }
  async undo(): Promise<void> {
    const [last, ...rest] = this.undos;
    if (!last || !this.#store) return;
    this.hush();
    const put = await last.undo(this.#store);
    if (put.ok || put.why === 'gone') this.undos = rest;
    if (put.ok) this.say(words.undone);
    else this.say(words.changeRefused[put.why], true);
    await this.#refresh();
  }
}
