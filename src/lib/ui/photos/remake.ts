import { bounds } from '$lib/keep/bounds';
import { isJpeg, plainJpeg } from '$lib/keep/photos/jpeg';
import type { NotTaken } from '$words/photos';

/** A picture made again: small, upright, and nothing in its bytes but itself. */
export interface Remade {
  readonly ok: true;
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
}
type Result = Remade | { readonly ok: false; readonly why: NotTaken };
const no = (why: NotTaken) => ({ ok: false, why }) as const;

/** How well it is kept, tried until it is small enough. */
const qualities = [0.82, 0.65, 0.45];

/** Makes a picture from a camera or a file again on a canvas. Never throws. */
export async function remake(file: File): Promise<Result> {
  if (!file.size) return no('empty');
  if (file.size > bounds.pictureBytes) return no('too-large');
  const address = URL.createObjectURL(file);
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    // A browser shows what there is of a JPEG that is cut off; half a picture is no proof.
    if (isJpeg(bytes) && !plainJpeg(bytes)) return no('broken');
    const image = new Image();
    image.src = address;
    // Only what stands at its head is read here: the size, turned as the camera was held.
    if (!(await loads(image))) return no(kindOf(file, bytes));
    const { naturalWidth, naturalHeight } = image;
    if (!naturalWidth || naturalWidth * naturalHeight > bounds.picturePixels)
      return no('too-large');
    const scale = Math.min(1, bounds.photoSide / Math.max(naturalWidth, naturalHeight));
    const size = {
      width: Math.max(1, Math.round(naturalWidth * scale)),
      height: Math.max(1, Math.round(naturalHeight * scale)),
    };
    return await drawn(image, file, size);
  } catch {
    return no('broken');
  } finally {
    URL.revokeObjectURL(address);
  }
}

interface Size {
  readonly width: number;
  readonly height: number;
}

async function drawn(
  image: HTMLImageElement,
  file: File,
  { width, height }: Size,
): Promise<Result> {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const pen = canvas.getContext('2d');
  if (!pen) return no('no-memory');
  pen.imageSmoothingQuality = 'high';
  // An image is drawn upright by every browser, whichever way the camera was held.
  pen.drawImage(image, 0, 0, width, height);
  const middle = pen.getImageData(width >> 1, 0, 1, height).data;
  if (middle.every((value) => value === 0)) {
    // A device without memory for the whole draws nothing, and says nothing: read it small.
    const small = await createImageBitmap(file, {
      resizeWidth: width,
      resizeHeight: height,
      resizeQuality: 'high',
      imageOrientation: 'from-image',
    }).catch(() => null);
    if (!small) return no('no-memory');
    pen.drawImage(small, 0, 0, width, height);
    small.close();
  }
  pen.globalCompositeOperation = 'destination-over';
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  for (const quality of qualities) {
    const blob = await new Promise<Blob | null>((done) =>
      canvas.toBlob(done, 'image/jpeg', quality),
    );
    if (!blob) return no('no-memory');
    // Browsers add a colour profile and more of their own.
    const plain = plainJpeg(new Uint8Array(await blob.arrayBuffer()));
    if (!plain) return no('broken');
    if (plain.bytes.length <= bounds.photoBytes)
      return { ok: true, width, height, picture: new Blob([plain.bytes], { type: 'image/jpeg' }) };
  }
  return no('too-large');
}

const loads = (image: HTMLImageElement): Promise<boolean> =>
  new Promise((done) => {
    image.onload = () => done(true);
    image.onerror = () => done(false);
  });

/** Why a browser cannot read it: no picture, one of a form it does not know, or a broken one. */
function kindOf(file: File, bytes: Uint8Array): NotTaken {
  const head = String.fromCharCode(...bytes.subarray(0, 12));
  if (head.slice(4, 8) === 'ftyp') return 'other-form';
  const known = isJpeg(bytes) || /^(\x89PNG|GIF8|RIFF....WEBP|BM)/s.test(head);
  if (known) return 'broken';
  return file.type.startsWith('image/') ? 'other-form' : 'no-picture';
}
