import 'fake-indexeddb/auto';
import { cleanup, render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Zone } from '$lib/answers/job';
import type { Photo, WholePhoto } from '$lib/answers/photo';
import { bounds } from '$lib/keep/bounds';
import type { PhotoStore } from '$lib/keep/photos/photo-store';
import PhotosPage from '$lib/ui/photos/PhotosPage.svelte';
import PhotoStrip from '$lib/ui/photos/PhotoStrip.svelte';
import { bringPhotos, shelf, takeBack } from '$lib/ui/photos/shelf';
import SaveBox from '$lib/ui/jobs/SaveBox.svelte';
import { session } from '$lib/ui/session.svelte';
import { tradeJob } from '../helpers/trade-jobs';

/** No canvas here: what makes a picture small is tried in a browser. */
vi.mock('$lib/ui/photos/remake', () => ({
  remake: async ({ name }: File) =>
    name.endsWith('.jpg')
      ? { ok: true, width: 16, height: 8, picture: new Blob(['x']) }
      : { ok: false, why: 'no-picture' },
}));
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup({ applyAccept: false });

beforeEach(async () => {
  // jsdom has no addresses for blobs.
  Object.assign(URL, { createObjectURL: () => 'blob:x', revokeObjectURL: () => undefined });
  await ((await shelf()) as PhotoStore).clear();
  await session.startNew(tradeJob([{ depth: 4 }, { depth: 5 }], {}));
});
afterEach(cleanup);

const zone = () => session.job.zones[0] as Zone;
const whole = (more: Partial<Photo>): WholePhoto => ({
  photo: {
    id: crypto.randomUUID(),
    job: session.id,
    zone: zone().id,
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
  picture: new Blob(['x']),
});
const keep = async (...photos: WholePhoto[]) => ((await shelf()) as PhotoStore).add(photos);
const kept = async () => ((await shelf()) as PhotoStore).of(session.id);

describe('the page of photos', () => {
  it('takes pictures, names what it does not take, and offers a camera without a permission', async () => {
    render(PhotosPage, { zone: zone() });
    const choose = await screen.findByLabelText('Choose photos');
    expect(screen.getByLabelText('Take a photo')).toHaveAttribute('capture', 'environment');
    expect(choose).not.toHaveAttribute('capture');
    await user.upload(choose, [new File(['x'], 'a.jpg'), new File(['x'], 'b.txt')]);
    expect(await screen.findByText('1 photo added.')).toBeInTheDocument();
    expect(screen.getByText('“b.txt” was not added. It is not a picture.')).toBeInTheDocument();
    expect(screen.getByText('Room for 5 more')).toBeInTheDocument();
    expect(await kept()).toMatchObject([
      { job: session.id, stage: 'before', sheet: false, owner: false },
    ]);
  });

  it('keeps what is changed at once, and takes it back', async () => {
    await session.again();
    await keep(whole({ caption: 'Gate' }));
    render(PhotosPage, { zone: zone() });
    await user.click(await screen.findByRole('radio', { name: 'After' }));
    await vi.waitFor(async () => expect((await kept())[0]?.stage).toBe('after'));
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    await vi.waitFor(async () => expect((await kept())[0]?.stage).toBe('before'));
    expect(await screen.findByText('Undone.')).toBeInTheDocument();
  });
});

describe('photos that belong to nothing any more', () => {
  it('are deleted when a page of photos is opened; those of a job that is there stay', async () => {
    await session.again();
    await keep(whole({ caption: 'stays' }), whole({ zone: 'gone' }), whole({ job: 'gone' }));
    render(PhotosPage, { zone: zone() });
    await screen.findByDisplayValue('stays');
    const store = (await shelf()) as PhotoStore;
    expect([await store.count(), (await kept()).length]).toEqual([1, 1]);
  });
});

describe('photos on a sheet', () => {
  it('are those chosen for it, before beside after, zone by zone', async () => {
    const other = session.job.zones[1]?.id ?? '';
    await keep(
      whole({ stage: 'after', owner: true, caption: 'ground' }),
      whole({ owner: true }),
      whole({ sheet: true, caption: 'not here' }),
      whole({ zone: other, stage: 'other', owner: true, caption: 'the steps' }),
    );
    render(PhotoStrip, { where: 'owner' });
    const figures = await screen.findAllByRole('figure');
    expect(figures.map(({ textContent }) => textContent?.trim())).toEqual([
      'Before',
      'After: ground',
      'the steps',
    ]);
    expect(figures[0]?.parentElement).toBe(figures[1]?.parentElement);
    expect(within(figures[2] as HTMLElement).getByRole('img')).toHaveAccessibleName('the steps');
  });
  it('are no part of it where none is chosen', async () => {
    await keep(whole({ sheet: true }));
    const { container } = render(PhotoStrip, { where: 'owner' });
    await new Promise((done) => setTimeout(done, 50));
    expect(container.querySelector('section')).toBeNull();
  });
});

describe('a file with photos', () => {
  // Common practice, no source: what is silently left behind is missed on the site, and what goes
  // along silently may show somebody; so neither is done before it is chosen.
  it('is saved with or without them, each by a button, and without where they are too large', async () => {
    const { rerender } = render(SaveBox, { id: session.id, photos: [whole({})], done: vi.fn() });
    expect(screen.queryByRole('checkbox')).toBeNull();
    expect(screen.getByRole('button', { name: 'With its photo (0.1 MB)' })).toHaveFocus();
    expect(screen.getByRole('button', { name: 'Without photos' })).toBeInTheDocument();
    const large = { ...whole({}), picture: { size: bounds.photosInFile + 1 } as Blob };
    await rerender({ photos: [large] });
    expect(screen.queryByRole('button', { name: /With its photo/ })).toBeNull();
    expect(screen.getByRole('button', { name: 'Without photos' })).toBeInTheDocument();
    expect(screen.getByText(/too large for one file/)).toBeInTheDocument();
  });
});

// Common practice, no source: who brings back from the site what was answered there brings its photos.
describe('a job brought into another', () => {
  it('brings its photos to the zones they belong to, each once, and takes them back', async () => {
    const store = (await shelf()) as PhotoStore;
    await keep(
      whole({ job: 'phone', zone: 'a', caption: 'Gate' }),
      whole({ job: 'phone', zone: 'x' }),
    );
    const zones = new Map([['a', zone().id]]);
    const { came, left } = await bringPhotos('phone', session.id, zones);
    expect(left).toBe(false);
    expect((await store.of(session.id, zone().id)).map(({ caption }) => caption)).toEqual(['Gate']);
    // Of a zone that does not come, nothing does; and nothing comes twice.
    expect(await store.of(session.id)).toHaveLength(1);
    expect((await bringPhotos('phone', session.id, zones)).came).toEqual([]);
    expect(await store.of('phone')).toHaveLength(2);
    await takeBack(came);
    expect(await store.of(session.id)).toEqual([]);
  });
});
