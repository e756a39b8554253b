import * as v from 'valibot';
import type { Job } from '$lib/answers/job';
import { bounds } from '$lib/keep/bounds';
import { refuse, type Checked } from '$lib/keep/problem';
import { problemOf } from '$lib/keep/refusal';
import { list, name, object, picked, says, whole, within, zoneId } from '$lib/keep/shapes';
import { rangeOf } from '$shared/figures';
import { sizeOfPlain } from './jpeg';
import { stages, type Photo, type Spot, type WholePhoto } from '$lib/answers/photo';

/** Photos in a job file: said once each, the picture as base64 of a JPEG that is nothing else. */

const share = within([0, 1], { id: 'amount', unit: 'ratio', range: [0, 1] });
const spot = v.pipe(
  list(share, 2),
  v.length(2, says({ id: 'spot' })),
  v.transform(([x, y]): Spot => [x as number, y as number]),
);
const text = (most: number) => v.pipe(name, v.maxLength(most, says({ id: 'name', most })));
const kinds = ['arrow', 'ring', 'label'] as const;
const mark = v.variant(
  'kind',
  [
    object({ kind: v.literal('arrow'), from: spot, to: spot }),
    object({ kind: v.literal('ring'), from: spot, to: spot }),
    object({ kind: v.literal('label'), at: spot, text: text(bounds.photoLabel) }),
  ],
  says({ id: 'one-of', choices: kinds }),
);
const truth = v.boolean(says({ id: 'truth' }));

const photo = object({
  zone: zoneId,
  stage: picked(stages, { id: 'one-of', choices: stages }),
  caption: text(bounds.nameLength),
  marks: list(mark, bounds.photoMarks),
  sheet: truth,
  owner: truth,
  addedAt: whole([0, Date.UTC(2100, 0)]),
  picture: v.pipe(
    v.string(says({ id: 'plain-jpeg' })),
    v.maxLength(Math.ceil(bounds.photoBytes / 3) * 4, says({ id: 'plain-jpeg' })),
  ),
});

export const photosShape = list(photo, bounds.photosInZone * rangeOf('limit.zones')[1]);

/** A photo out of a file: it has no job and no id of its own yet. */
export type FilePhoto = Omit<WholePhoto, 'photo'> & { readonly photo: Omit<Photo, 'id' | 'job'> };

function bytesOf(base64: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}

const jpeg = (bytes: Uint8Array<ArrayBuffer>) => new Blob([bytes], { type: 'image/jpeg' });

/**
 * The photos of a file, beside its job.
 * @param raw what stands under `photos`
 */
export function readPhotos(raw: unknown, { zones }: Job): Checked<readonly FilePhoto[]> {
  const shape = v.object({ photos: photosShape });
  const read = v.safeParse(shape, { photos: raw }, { abortEarly: true });
  if (!read.success) return { ok: false, problem: problemOf(read.issues[0], { photos: raw }) };
  const ids = zones.map(({ id }) => id);
  const inZone = new Map<string, number>();
  const photos: FilePhoto[] = [];
  for (const [place, { picture, ...said }] of read.output.photos.entries()) {
    const { zone } = said;
    if (!ids.includes(zone))
      return refuse(
        ['photos', place, 'zone'],
        { id: 'one-of', choices: ids },
        { id: 'text', text: zone },
      );
    const count = (inZone.get(zone) ?? 0) + 1;
    inZone.set(zone, count);
    if (count > bounds.photosInZone)
      return refuse(
        ['photos', place],
        { id: 'list', most: bounds.photosInZone },
        { id: 'list', length: count },
      );
    const bytes = bytesOf(picture);
    const size = bytes && sizeOfPlain(bytes);
    if (!bytes || !size || Math.max(size.width, size.height) > bounds.photoSide)
      return refuse(
        ['photos', place, 'picture'],
        { id: 'plain-jpeg' },
        { id: 'long-text', length: picture.length },
      );
    photos.push({ photo: { ...said, ...size, place }, picture: jpeg(bytes) });
  }
  return { ok: true, value: photos };
}

/** Bytes as base64, in pieces that fit the arguments of one call. */
function base64Of(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += 0x8000)
    binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(binary);
}

/** Photos as the file has them; `readPhotos` gives the same back. */
export function writePhotos(photos: readonly WholePhoto[]): Promise<readonly object[]> {
  return Promise.all(
    photos.map(async ({ photo, picture }) => {
      const { zone, stage, caption, marks, sheet, owner, addedAt } = photo;
      const bytes = new Uint8Array(await picture.arrayBuffer());
      return { zone, stage, caption, marks, sheet, owner, addedAt, picture: base64Of(bytes) };
    }),
  );
}
