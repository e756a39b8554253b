import { test, type Page, type Request } from '@playwright/test';
import ExifReader from 'exifreader';
import { sizeOfPlain } from '../../src/lib/keep/photos/jpeg';
import { asTaken } from '../helpers/jpeg';
import { expect } from '../helpers/jobs-page';
import { addPhotos, asFile, cards, openPhotos, photosKept, picture } from '../helpers/photos-page';
import { press, reach } from './keyboard';
import { noFaultsInBoth, noSideways } from './page-checks';

/** Photos on the smallest phone, with real files. */
test.use({ viewport: { width: 320, height: 640 } });

/** Whether a request reads the built site or the page's own memory, and can carry nothing: a slow page may still fetch its parts. */
const isOwnFile = (request: Request): boolean =>
  request.url().startsWith('blob:') ||
  (request.method() === 'GET' &&
    request.postData() === null &&
    /\/_app\/immutable\/[^?#]+\.(js|css|woff2)$/.test(request.url()));

/** The colour of a spot of a shown photo, as red, green and blue. */
const colour = (page: Page, x: number, y: number) =>
  cards(page)
    .first()
    .locator('img')
    .first()
    .evaluate(
      async (image: HTMLImageElement, [across, down]) => {
        await image.decode();
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
        const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
        pen.drawImage(image, 0, 0);
        return [
          ...pen.getImageData(across * canvas.width, down * canvas.height, 1, 1).data.slice(0, 3),
        ];
      },
      [x, y] as const,
    );

test('a phone’s photo is turned upright, made small, and says nothing of place or camera; offline, with nothing sent', async ({
  page,
  context,
}) => {
  await openPhotos(page);
  const taken = asTaken(await picture(page, 3000, 2000), 6);
  expect(ExifReader.load(taken.buffer).GPSLatitude).toBeDefined();
  const sent: string[] = [];
  page.on('request', (request) => {
    if (!isOwnFile(request)) sent.push(`${request.method()} ${request.url()}`);
  });
  await context.setOffline(true);
  await addPhotos(page, asFile('IMG_1.jpg', taken), 1);
  await expect(page.getByText('1 photo added.')).toBeVisible();
  await context.setOffline(false);
  expect(sent).toEqual([]);

  const [kept] = await photosKept(page);
  const bytes = kept?.bytes as Uint8Array<ArrayBuffer>;
  expect(sizeOfPlain(bytes)).toEqual({ width: 1067, height: 1600 });
  const told = ExifReader.load(bytes.buffer, { expanded: true });
  for (const kind of ['exif', 'gps', 'xmp', 'iptc', 'icc'] as const)
    expect(told[kind], kind).toBeUndefined();
  for (const trace of ['Exif', 'Marrow Quay', 'Invented Camera', 'ns.adobe.com', 'ICC_PROFILE'])
    expect(Buffer.from(bytes).includes(trace), trace).toBe(false);
  // Held upright, what was on the left is above: red above on the right, blue below on the left.
  const [red] = await colour(page, 0.75, 0.25);
  const [, , blue] = await colour(page, 0.25, 0.75);
  expect([red, blue].every((value) => (value ?? 0) > 180)).toBe(true);

  await noSideways(page, 'photos at 320 px');
  await noFaultsInBoth(page, 'photos');
});

test('what is no picture, broken, strange or empty is told, and the rest stays @nightly', async ({
  page,
}) => {
  await openPhotos(page);
  const jpeg = await picture(page, 400, 300);
  await addPhotos(
    page,
    [
      asFile('notes.txt', Buffer.from('no picture'), 'text/plain'),
      asFile('broken.jpg', jpeg.subarray(0, jpeg.length / 2)),
      asFile('named.jpg', Buffer.from('%PDF-1.7 not a picture')),
      asFile('phone.heic', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic'), 'image/heic'),
      asFile('empty.jpg', Buffer.alloc(0)),
      asFile('good.png', await picture(page, 400, 300, 'image/png'), 'image/png'),
      asFile('good.webp', await picture(page, 400, 300, 'image/webp'), 'image/webp'),
    ],
    2,
  );
  for (const [file, why] of [
    ['notes.txt', 'not a picture'],
    ['broken.jpg', 'broken or cut off'],
    ['phone.heic', 'HEIC'],
    ['empty.jpg', 'The file is empty.'],
  ] as const)
    await expect(page.getByText(`“${file}” was not added.`)).toContainText(why);
  await expect(page.getByText('“named.jpg” was not added.')).toBeVisible();
  // What was clear in the PNG is white, and not black.
  expect(await colour(page, 0.75, 0.25)).toEqual([255, 255, 255]);
});

test('48 megapixels on a small phone @nightly', async ({ page }) => {
  await openPhotos(page);
  const large = await picture(page, 8000, 6000);
  await addPhotos(page, asFile('large.jpg', large), 1);
  const [kept] = await photosKept(page);
  expect(sizeOfPlain(kept?.bytes as Uint8Array)).toEqual({ width: 1600, height: 1200 });
});

test('six a zone; storage that is full is told, and what was there stays @nightly', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
      if ('full' in globalThis && this.name === 'pictures')
        throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
  await openPhotos(page);
  const jpeg = await picture(page, 400, 300);
  const five = ['1', '2', '3', '4', '5'].map((each) => asFile(`${each}.jpg`, jpeg));
  await addPhotos(page, five, 5);
  await page.evaluate(() => Object.assign(globalThis, { full: true }));
  await addPhotos(page, asFile('late.jpg', jpeg), 5);
  await expect(page.getByText('“late.jpg” was not added.')).toContainText('no room left');
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'full'));
  await addPhotos(page, [asFile('6.jpg', jpeg), asFile('7.jpg', jpeg)], 6);
  await expect(page.getByText('“7.jpg” was not added.')).toContainText('six photos');
  await expect(page.locator('#choose-photos')).toBeDisabled();
  await page.reload();
  await expect(cards(page)).toHaveCount(6);
});

test('the browser is asked once to keep them @nightly', async ({ page }) => {
  await page.addInitScript(() => {
    navigator.storage.persist = async () => {
      sessionStorage.setItem('asked', `${sessionStorage.getItem('asked') ?? ''}.`);
      return false;
    };
  });
  const asked = () => page.evaluate(() => sessionStorage.getItem('asked'));
  await openPhotos(page);
  expect(await asked()).toBeNull();
  const jpeg = await picture(page, 40, 30);
  await addPhotos(page, asFile('1.jpg', jpeg), 1);
  await expect(page.getByText('This browser may delete them')).toBeVisible();
  await page.reload();
  await expect(cards(page)).toHaveCount(1);
  await addPhotos(page, asFile('2.jpg', jpeg), 2);
  expect(await asked()).toBe('.');
});

test('marks, order, deletion and undo by keys alone; deleted is gone from the device @nightly', async ({
  page,
}) => {
  await openPhotos(page);
  const jpeg = await picture(page, 400, 300);
  await addPhotos(page, [asFile('1.jpg', jpeg), asFile('2.jpg', jpeg)], 2);
  const first = cards(page).first();
  await first.getByLabel('Caption').fill('By the gate');
  await press(page, first.locator('summary').first());
  const board = first.getByRole('application');
  await reach(page, board);
  for (const key of ['Enter', 'ArrowRight', 'Shift+ArrowDown', 'Enter'])
    await page.keyboard.press(key);
  await expect(first.getByText('Arrow 1', { exact: true })).toBeVisible();
  await first.getByRole('radio', { name: 'Label' }).focus();
  await page.keyboard.press('Space');
  await press(page, board);
  await expect(first.getByText('Type the text of the label first.')).toBeVisible();
  await page.keyboard.type('hollow');
  await press(page, board);
  await expect(first.getByText('Label “hollow”', { exact: true })).toBeVisible();
  await noFaultsInBoth(page, 'marks');
  await noSideways(page, 'marks at 320 px');
  await press(page, page.locator('#undo-photo'));
  await expect(first.getByText('Label “hollow”', { exact: true })).toBeHidden();
  expect((await photosKept(page)).map(({ photo }) => photo.marks.length).sort()).toEqual([0, 1]);

  await press(page, first.getByRole('button', { name: 'Later: photo 1' }));
  await expect(cards(page).nth(1).getByLabel('Caption')).toHaveValue('By the gate');
  await press(page, cards(page).nth(1).getByRole('button', { name: 'Delete: photo 2' }));
  await expect(cards(page)).toHaveCount(1);
  await expect(page.locator('#undo-photo')).toBeFocused();
  expect(await photosKept(page)).toHaveLength(1);
  await page.keyboard.press('Enter');
  await expect(cards(page)).toHaveCount(2);
  await press(page, cards(page).nth(1).getByRole('button', { name: 'Delete: photo 2' }));
  await expect(cards(page)).toHaveCount(1);
  await page.reload();
  await expect(cards(page)).toHaveCount(1);
  await expect(page.locator('#undo-photo')).toBeHidden();
  expect((await photosKept(page)).map(({ photo }) => photo.caption)).toEqual(['']);
});
