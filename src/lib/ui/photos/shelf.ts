import type { Unavailable } from '$lib/keep/job-store';
import type { WholePhoto } from '$lib/answers/photo';
import type { FilePhoto } from '$lib/keep/photos/photo-file';
import { openPhotoStore, photosName, type PhotoStore } from '$lib/keep/photos/photo-store';
import { session } from '$lib/ui/session.svelte';
import { siteName } from '$lib/ui/site-name';

/** The photos of this device, opened once; and what becomes of them when jobs and zones are moved about. */

let opening: Promise<PhotoStore | Unavailable> | undefined;

/** Opens the photos, or says why they cannot be had. */
export const shelf = (): Promise<PhotoStore | Unavailable> => (opening ??= open());

async function open(): Promise<PhotoStore | Unavailable> {
  const store = await openPhotoStore({ name: siteName(photosName) });
  // Where it did not open, the next who asks tries again.
  if (typeof store === 'string') opening = undefined;
  return store;
}

/** Takes a step on the photos; what the step gives, or `otherwise` where the device does not answer. */
async function on<T>(step: (store: PhotoStore) => Promise<T>, otherwise: T): Promise<T> {
  const store = await shelf();
  if (typeof store === 'string') return otherwise;
  try {
    return await step(store);
  } catch {
    return otherwise;
  }
}

/**
 * Deletes photos whose job or zone is not there any more: a tab may close before it has done so. Only
 * where neither can just be on its way out: what is taken out there comes back by an undo.
 */
export async function sweep(store: PhotoStore): Promise<void> {
  const ids = await store.jobs();
  if (!ids.length) return;
  const jobs = await session.store();
  if (jobs.kind !== 'device') return;
  const listed = new Map((await jobs.list()).map((summary) => [summary.id, summary]));
  for (const id of ids) {
    // A job that cannot be read may still be mended.
    if (listed.get(id)?.damaged) continue;
    const zones = (await jobs.get(id))?.job.zones.map((zone) => zone.id) ?? [];
    const lost = (await store.of(id)).filter(({ zone }) => !zones.includes(zone));
    if (lost.length) await store.remove(lost.map((photo) => photo.id));
  }
}

/** Photos and pictures of a job, or of one zone of it. */
async function wholeOf(store: PhotoStore, job: string, zone?: string): Promise<WholePhoto[]> {
  const found = await Promise.all(
    (await store.of(job, zone)).map(async (photo) => {
      const picture = await store.picture(photo.id);
      return picture ? [{ photo, picture }] : [];
    }),
  );
  return found.flat();
}

/** All of a job, with their pictures. */
export const wholePhotos = (job: string): Promise<readonly WholePhoto[]> =>
  on((store) => wholeOf(store, job), []);

/** Deletes the photos of a job, or of one zone of it, and gives them back for an undo. */
export const takePhotos = (job: string, zone?: string): Promise<readonly WholePhoto[]> =>
  on(async (store) => store.remove((await store.of(job, zone)).map(({ id }) => id)), []);

/** Whether all of them are there again. */
export const putPhotosBack = (photos: readonly WholePhoto[], zone?: string): Promise<boolean> =>
  put(
    photos.map(({ photo, picture }) => ({ photo: { ...photo, ...(zone && { zone }) }, picture })),
  );

const put = async (photos: readonly WholePhoto[]): Promise<boolean> =>
  !photos.length || on(async (store) => (await store.add(photos)).ok, false);

/** Whether the copy of a job has a copy of each photo. */
export const copyPhotos = async (from: string, to: string): Promise<boolean> =>
  addPhotos(to, await wholePhotos(from));

/** Whether all photos that came with a job are kept with it. */
export const addPhotos = (job: string, photos: readonly FilePhoto[]): Promise<boolean> =>
  put(
    photos.map(({ photo, picture }) => ({
      photo: { ...photo, id: crypto.randomUUID(), job },
      picture,
    })),
  );

/** The same photo, brought before: its id is another on each device, what it was made from is not. */
const alike = (one: FilePhoto['photo'], other: FilePhoto['photo']): boolean =>
  one.zone === other.zone &&
  one.addedAt === other.addedAt &&
  one.width === other.width &&
  one.height === other.height;

/**
 * Copies the photos of one job to another into which it was brought, zone by zone; a photo that is
 * there already is left out, and so is a zone that would be too full.
 * @param zoneOf the zone there, by the zone it comes from
 * @returns ids of those that came along, and whether any had to stay
 */
export const bringPhotos = (
  from: string,
  to: string,
  zoneOf: ReadonlyMap<string, string>,
): Promise<{ readonly came: readonly string[]; readonly left: boolean }> =>
  on(
    async (store) => {
      const there = await store.of(to);
      const came: string[] = [];
      let left = false;
      for (const [zone, other] of zoneOf) {
        const photos = (await wholeOf(store, from, zone))
          .map(({ photo, picture }) => ({
            photo: { ...photo, id: crypto.randomUUID(), job: to, zone: other },
            picture,
          }))
          .filter(({ photo }) => !there.some((each) => alike(each, photo)));
        if (!photos.length) continue;
        if ((await store.add(photos)).ok) came.push(...photos.map(({ photo }) => photo.id));
        else left = true;
      }
      return { came, left };
    },
    { came: [], left: true },
  );

/** Deletes photos by their ids. */
export const takeBack = (ids: readonly string[]): Promise<unknown> =>
  on((store) => store.remove(ids), []);
