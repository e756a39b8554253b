import type { Page } from '@playwright/test';
import { expect, withJob } from './jobs-page';

/** A picture made by the browser: upper left quarter red, lower right blue, the rest grey. */
export async function picture(
  page: Page,
  width: number,
  height: number,
  type = 'image/jpeg',
): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([wide, high, kind]) => {
      const canvas = document.createElement('canvas');
      Object.assign(canvas, { width: wide, height: high });
      const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
      if (kind === 'image/jpeg') {
        pen.fillStyle = '#999';
        pen.fillRect(0, 0, wide, high);
      }
      pen.fillStyle = '#e00000';
      pen.fillRect(0, 0, wide / 2, high / 2);
      pen.fillStyle = '#0000e0';
      pen.fillRect(wide / 2, high / 2, wide / 2, high / 2);
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, kind, 0.8));
      const bytes = new Uint8Array(await (blob as Blob).arrayBuffer());
      let text = '';
      for (let at = 0; at < bytes.length; at += 0x8000)
        text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
      return btoa(text);
    },
    [width, height, type] as const,
  );
  return Buffer.from(base64, 'base64');
}

export const asFile = (name: string, buffer: Uint8Array, mimeType = 'image/jpeg') => ({
  name,
  mimeType,
  buffer: Buffer.from(buffer),
});

/** What is on the device: each photo with the bytes of its picture. */
export async function photosKept(page: Page) {
  const found = await page.evaluate(
    () =>
      new Promise<
        { photo: { zone: string; caption: string; marks: unknown[] }; bytes: number[] }[]
      >((resolve, reject) => {
        const request = indexedDB.open('down-to-sound.photos');
        request.onerror = () => reject(new Error('closed'));
        request.onsuccess = () => {
          const from = request.result.transaction(['photos', 'pictures']);
          const photos = from.objectStore('photos').getAll();
          const pictures = from.objectStore('pictures').getAllKeys();
          const blobs = from.objectStore('pictures').getAll();
          from.oncomplete = async () => {
            request.result.close();
            const pairs = photos.result.map(async (photo) => {
              const blob = blobs.result[pictures.result.indexOf(photo.id)] as Blob;
              return { photo, bytes: [...new Uint8Array(await blob.arrayBuffer())] };
            });
            // A picture without its photo would be one that cannot be deleted.
            if (pictures.result.length !== photos.result.length) reject(new Error('orphans'));
            resolve(await Promise.all(pairs));
          };
        };
      }),
  );
  return found.map(({ photo, bytes }) => ({ photo, bytes: new Uint8Array(bytes) }));
}

/** A job with two zones in hand, and the photos of its first zone open. */
export async function openPhotos(page: Page): Promise<void> {
  await withJob(page);
  await page.goto('/photos/?zone=a');
  await expect(page.getByText('No photo yet.')).toBeVisible();
}

export const cards = (page: Page) => page.locator('main > ol > li');

export async function addPhotos(
  page: Page,
  files: Parameters<ReturnType<Page['locator']>['setInputFiles']>[0],
  count: number,
): Promise<void> {
  await page.locator('#choose-photos').setInputFiles(files);
  await expect(cards(page)).toHaveCount(count);
  await expect(page.getByText('Making it smaller')).toBeHidden();
}
