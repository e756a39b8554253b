import type { Photo } from '$lib/answers/photo';
import { shelf } from './shelf';

/** A photo with the address of its picture. */
export interface Shown {
  readonly photo: Photo;
  readonly address: string;
}

/** The photos of a job that are chosen for a purpose, ready to be shown; none where they cannot be had. */
export async function chosenPhotos(
  job: string,
  chosen: (photo: Photo) => boolean,
): Promise<readonly Shown[]> {
  const store = await shelf();
  if (typeof store === 'string') return [];
  try {
    const shown = (await store.of(job)).filter(chosen).map(async (photo) => {
      const picture = await store.picture(photo.id);
      return picture ? [{ photo, address: URL.createObjectURL(picture) }] : [];
    });
    return (await Promise.all(shown)).flat();
  } catch {
    return [];
  }
}

export const letGo = (shown: readonly Shown[]): void => {
  for (const { address } of shown) URL.revokeObjectURL(address);
};
